import { foldJob } from '@becket/journal';
import { describe, expect, it } from 'vitest';
import grandTruth from '../../../examples/grand/truth.json' with { type: 'json' };
import { addFacts } from './context.ts';
import { openDemoJob } from './demo/open-demo-job.ts';
import { inferredWireSizes } from './infer-wire-sizes.ts';
import { openJob } from './open-job.ts';
import { memoryContext } from './testing/memory-context.ts';

describe('inferredWireSizes()', () => {
  it('finds the sizes of the invented grand from its messy readings: at least 95 of 100 notes that were read', async () => {
    const sizes = inferredWireSizes(await openDemoJob(memoryContext()))!;
    expect(sizes.lattice).toBe('US');
    const truth = new Map(grandTruth.notes.map((note) => [note.key, note.size]));
    const read = sizes.notes.filter(({ readings }) => readings.length > 0);
    const right = read.filter(({ key, size }) => size === truth.get(key));
    expect(read.length).toBeGreaterThan(45);
    expect(right.length / read.length).toBeGreaterThanOrEqual(0.95);
    for (let index = 1; index < sizes.notes.length; index += 1) {
      expect(sizes.notes[index]!.diameter).toBeLessThanOrEqual(sizes.notes[index - 1]!.diameter);
    }
  });

  it('takes a stamp as evidence, keeps to the lattice that the user fixed, and names a stamp it cannot use', async () => {
    const context = memoryContext();
    const demo = await openDemoJob(context);
    const { job } = await addFacts(context, demo.id, [
      { kind: 'size-stamp', v: 1, key: 49, on: 'bridge', text: '16½', lattice: 'US', says: 'starts here' },
      {
        kind: 'size-stamp',
        v: 1,
        key: 60,
        on: 'plate',
        text: 'No. 3',
        lattice: 'unknown',
        says: 'starts here',
      },
    ]);
    const fixed = inferredWireSizes(job, { lattice: 'metric' })!;
    expect(fixed.lattice).toBe('metric');
    expect(fixed.isLatticeFixed).toBe(true);
    expect(fixed.stampsNotUsed.join(' ')).toContain("'No. 3' at G#5");
    expect(fixed.stampsNotUsed.join(' ')).toContain('16½');
    expect(inferredWireSizes(job)!.lattice).toBe('US');
  });

  it('says nothing before a plain note is described or read', async () => {
    const context = memoryContext();
    const job = await openJob(context, {
      title: 'nothing yet',
      piano: { form: 'grand', firstKey: 1, lastKey: 88, referencePitch_hz: 440 },
    });
    expect(inferredWireSizes(job)).toBeUndefined();
    expect(inferredWireSizes(foldJob((await context.store.entries(job.id)).entries))).toBeUndefined();
  });
});
