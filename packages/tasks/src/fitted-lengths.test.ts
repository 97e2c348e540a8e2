import { describe, expect, it } from 'vitest';
import grandTruth from '../../../examples/grand/truth.json' with { type: 'json' };
import { openDemoJob } from './demo/open-demo-job.ts';
import { fittedLengths } from './fitted-lengths.ts';
import { recordReadings } from './record-reading.ts';
import { memoryContext } from './testing/memory-context.ts';

/** The plan of the invented grand: where its strings truly run. */
const truth = new Map(grandTruth.notes.map(({ key, speakingLength_m }) => [key, speakingLength_m]));

describe('fittedLengths()', () => {
  it('fills the two lengths that were never read with intervals that hold the true ones, and marks them as not read', async () => {
    const sections = fittedLengths(await openDemoJob(memoryContext()));
    const filled = sections.flatMap(({ notes }) => notes.filter(({ read }) => read === undefined));
    expect(filled.map(({ note }) => note)).toEqual(['G#2', 'D6']);
    for (const { key, fitted } of filled) {
      expect(fitted?.hasReading).toBe(false);
      expect(fitted!.low).toBeLessThan(truth.get(key)!);
      expect(fitted!.high).toBeGreaterThan(truth.get(key)!);
    }
  });

  it('names a length that a finger slip put off the line', async () => {
    const context = memoryContext();
    const demo = await openDemoJob(context);
    const before = demo.readings.find(
      ({ quantity, place }) => quantity === 'speaking-length' && place.key === 55,
    )!;
    const { job } = await recordReadings(context, demo.id, [
      {
        quantity: 'speaking-length',
        place: { key: 55 },
        value: before.value_si * 1000 + 20,
        unit: 'mm',
        replaces: before.entry,
        reason: 'a slip for the test',
      },
    ]);
    const named = fittedLengths(job).flatMap(({ notes }) => notes.filter(({ outlier }) => outlier));
    expect(named.map(({ key }) => key)).toContain(55);
    expect(named.find(({ key }) => key === 55)?.outlier?.sentence).toContain('more than the rest');
  });

  it('has no line where fewer than five notes are read, and says why', async () => {
    const context = memoryContext();
    const demo = await openDemoJob(context);
    const lengths = demo.readings.filter(({ quantity }) => quantity === 'speaking-length');
    const treble = { ...demo, readings: lengths.filter(({ place }) => (place.key ?? 0) > 85) };
    const [bass] = fittedLengths(treble);
    expect(bass?.reason).toContain('found 0');
    expect(bass?.notes.every(({ fitted }) => fitted === undefined)).toBe(true);
  });

  it('tells of a winding that would reach the front termination', async () => {
    const context = memoryContext();
    const demo = await openDemoJob(context);
    const { job } = await recordReadings(context, demo.id, [
      { quantity: 'loop-to-winding', place: { key: 1 }, value: 142, unit: 'mm' },
      { quantity: 'back-length', place: { key: 1 }, value: 127, unit: 'mm' },
      { quantity: 'winding-length', place: { key: 1 }, value: 1500, unit: 'mm' },
    ]);
    const [bass] = fittedLengths(job);
    expect(bass?.contradictions.filter(({ keys }) => keys[0] === 1).map(({ check }) => check)).toContain(
      'winding reaches the termination',
    );
  });
});
