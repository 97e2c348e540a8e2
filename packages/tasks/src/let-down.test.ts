import { inDegrees, inKilonewtons } from '@becket/core';
import { describe, expect, it } from 'vitest';
import { addFacts } from './context.ts';
import { openDemoJob } from './demo/open-demo-job.ts';
import { letDownOf, letDownPasses } from './let-down.ts';
import { openJob } from './open-job.ts';
import { recordReadings } from './record-reading.ts';
import { scaleAsFound } from './scale-as-found.ts';
import { memoryContext } from './testing/memory-context.ts';

describe('letDownOf()', () => {
  it('starts at the load of the scale as found, takes it off in equal shares, and names what it could not reckon with', async () => {
    const job = await openDemoJob(memoryContext());
    const { analysis, notComputed } = scaleAsFound(job, { uncertainties: 'left out' });
    const total = analysis.notes.reduce((sum, note) => sum + note.unisonTension, 0);
    for (const passes of letDownPasses) {
      const plan = letDownOf(job, passes)!;
      expect(plan.passes).toHaveLength(passes);
      const afterFirst = plan.passes[0]!.steps.at(-1)!.totalLoad;
      expect(inKilonewtons(afterFirst)).toBeCloseTo((total / 1000) * (1 - 1 / passes), 6);
      expect(plan.passes.at(-1)!.steps.at(-1)!.totalLoad).toBe(0);
      expect(plan.leftOut).toEqual(notComputed.map(({ note }) => note));
    }
  });

  // By hand: T = π·7850·(1 mm · 0.5 m · 440 Hz)² = 1193.6 N; a third of it on 0.8 m of 1 mm wire with 202 GPa is 2.006 mm,
  // on a pin radius of 3.5 mm 0.5732 rad = 32.84°. Density as core/tables has it: 7850 kg/m³.
  it('turns the pin by what Hooke’s law says, worked by hand for one string', async () => {
    const context = memoryContext();
    const { id } = await openJob(context, {
      title: 'one note',
      piano: { form: 'grand', firstKey: 49, lastKey: 50, referencePitch_hz: 440 },
    });
    await addFacts(context, id, [
      {
        kind: 'section-described',
        v: 1,
        section: 'treble',
        firstKey: 49,
        lastKey: 50,
        bridge: 'treble',
        frontTermination: 'agraffe',
      },
      { kind: 'unisons-described', v: 1, firstKey: 49, lastKey: 50, strings: 1, winding: 'plain', layers: 0 },
    ]);
    const read = (
      quantity: 'wire-diameter' | 'speaking-length' | 'front-length' | 'back-length' | 'pin-diameter',
      value: number,
    ) => ({ quantity, place: { key: 49 }, value, unit: 'mm' }) as const;
    const { job } = await recordReadings(context, id, [
      read('wire-diameter', 1),
      read('speaking-length', 500),
      read('front-length', 160),
      read('back-length', 140),
      read('pin-diameter', 7),
    ]);
    const plan = letDownOf(job, 3)!;
    expect(inDegrees(plan.passes[0]!.steps[0]!.turn.middle)).toBeCloseTo(32.84, 1);
    expect(plan.assumptions).toHaveLength(1);
    expect(plan.leftOut).toEqual(['A#4']);
  });

  it('says what it assumes where pins and front lengths were not read, and is silent before there is a scale', async () => {
    const context = memoryContext();
    const { id } = await openJob(context, {
      title: 'no pins',
      piano: { form: 'grand', firstKey: 49, lastKey: 50, referencePitch_hz: 440 },
    });
    const { job: empty } = await addFacts(context, id, [
      {
        kind: 'section-described',
        v: 1,
        section: 'treble',
        firstKey: 49,
        lastKey: 50,
        bridge: 'treble',
        frontTermination: 'agraffe',
      },
      { kind: 'unisons-described', v: 1, firstKey: 49, lastKey: 50, strings: 3, winding: 'plain', layers: 0 },
    ]);
    expect(letDownOf(empty, 4)).toBeUndefined();
    const { job } = await recordReadings(context, id, [
      { quantity: 'wire-diameter', place: { key: 49 }, value: 1, unit: 'mm' },
      { quantity: 'speaking-length', place: { key: 49 }, value: 400, unit: 'mm' },
      { quantity: 'front-length', place: { key: 50 }, value: 150, unit: 'mm' },
    ]);
    const said = letDownOf(job, 4)!.assumptions.join('\n');
    expect(said).toContain(
      'The pin diameter was not read everywhere: for 1 note 7 mm (usual, not read) is taken.',
    );
    expect(said).toContain(
      'The front length was not read everywhere: for 1 note the middle value of their section',
    );
  });
});
