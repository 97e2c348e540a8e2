import { millimetres } from '@becket/core';
import { scaleNotesOf } from '@becket/journal';
import { describe, expect, it } from 'vitest';
import { addFacts, type TaskContext } from '../context.ts';
import { STARTING_CUT_POLICY } from '../cut/cut-policy.ts';
import { openDemoJob } from '../demo/open-demo-job.ts';
import { recordReadings } from '../record-reading.ts';
import { memoryContext } from '../testing/memory-context.ts';
import { openOneSection } from '../testing/one-section.ts';
import { loopsAndCuts } from './loops-and-cuts.ts';

/** Two notes of three strings in one section, 1 mm and 0.95 mm. */
async function twoNotes(context: TaskContext) {
  const id = await openOneSection(context, { firstKey: 49, lastKey: 50 });
  await addFacts(context, id, [
    { kind: 'unisons-described', v: 1, firstKey: 49, lastKey: 50, strings: 3, winding: 'plain', layers: 0 },
  ]);
  const read = (
    key: number,
    quantity: 'wire-diameter' | 'speaking-length' | 'front-length' | 'back-length' | 'hitch-pin-diameter',
    value: number,
  ) => ({ quantity, place: { key }, value, unit: 'mm' }) as const;
  return recordReadings(context, id, [
    read(49, 'wire-diameter', 1),
    read(50, 'wire-diameter', 0.95),
    read(49, 'speaking-length', 400),
    read(50, 'speaking-length', 380),
    read(49, 'front-length', 120),
    read(49, 'back-length', 100),
    read(50, 'back-length', 98),
    read(49, 'hitch-pin-diameter', 4),
  ]);
}

describe('loopsAndCuts()', () => {
  it('ties one string of each odd run, and cuts to the sum of its parts, worked by hand', async () => {
    const { job } = await twoNotes(memoryContext());
    const [section] = loopsAndCuts(job, scaleNotesOf(job, 'as found'), {
      ...STARTING_CUT_POLICY,
      pinDiameter_m: 0.007,
    });
    expect(section!.plan.tied).toBe(2);
    const [loop, tied] = section!.wires;
    // Loop: 2·(120 + 400 + 100) + 2·(3·π·(7 + 1) + 6 + 20) + (π/2)·(4 + 1) = 1240 + 202.796 + 7.854 = 1450.65 mm.
    expect(loop!.joined).toBe('looped');
    expect(loop!.cut!.total).toBeCloseTo(1.45065, 5);
    // Tied: 120 + 400 + 100 + 3·π·8 + 6 + 20 + 70 = 791.398 mm.
    expect(tied!.joined).toBe('tied');
    expect(tied!.cut!.total).toBeCloseTo(0.791398, 5);
    // Nobody chose new pins yet.
    expect(tied!.remarks).toEqual(['tuning pin taken as 7.0 mm']);
  });

  it('takes a length that was not read from the line between its neighbours', async () => {
    const totals = async (fronts: readonly (readonly [key: number, value: number])[]) => {
      const context = memoryContext();
      const run = { firstKey: 49, lastKey: 51 };
      const id = await openOneSection(context, run);
      await addFacts(context, id, [
        { kind: 'unisons-described', v: 1, ...run, strings: 1, winding: 'plain', layers: 0 },
      ]);
      const { job } = await recordReadings(
        context,
        id,
        [
          ...[49, 50, 51].flatMap((key) => [
            ['wire-diameter', key, 1] as const,
            ['speaking-length', key, 449 - key] as const,
            ['back-length', key, 100] as const,
          ]),
          ...fronts.map(([key, value]) => ['front-length', key, value] as const),
        ].map(([quantity, key, value]) => ({ quantity, place: { key }, value, unit: 'mm' }) as const),
      );
      const [section] = loopsAndCuts(job, scaleNotesOf(job, 'as found'));
      return section!.wires.map(({ cut }) => cut!.total.toFixed(9));
    };
    const read = await totals([
      [49, 120],
      [50, 112],
      [51, 104],
    ]);
    expect(
      await totals([
        [49, 120],
        [51, 104],
      ]),
    ).toEqual(read);
  });

  it('says what was taken from neighbours, and what was taken where nothing was read', async () => {
    const { job } = await twoNotes(memoryContext());
    const [section] = loopsAndCuts(job, scaleNotesOf(job, 'as found'));
    const last = section!.wires.at(-1)!;
    expect(last.cut).toBeDefined();
    expect(last.remarks).toContain('front length from neighbours');
    expect(last.remarks).toContain('tuning pin taken as 7.2 mm');
    const noFronts = { ...job, readings: job.readings.filter(({ quantity }) => quantity !== 'front-length') };
    const [without] = loopsAndCuts(noFronts, scaleNotesOf(noFronts, 'as found'));
    const [before, after] = [section!.wires[0]!, without!.wires[0]!];
    expect(after.remarks).toContain('front length taken as 120 mm');
    // Both fronts of the loop were read as 120 mm, which is what is taken.
    expect(after.cut.parts.front).toBeCloseTo(before.cut.parts.front, 12);
  });

  it('joins no strings over a note whose length is not known: its own strings lie between them', async () => {
    const job = await openDemoJob(memoryContext());
    const scale = scaleNotesOf(job, 'as found');
    const [section] = loopsAndCuts(job, {
      ...scale,
      notes: scale.notes.flatMap((note) =>
        note.string.kind === 'wound' || note.key < 40 || note.key > 44 || note.key === 42
          ? []
          : [{ ...note, string: { ...note.string, diameter: millimetres(1) } }],
      ),
    });
    // Two notes of three strings on each side: three loops each, and none from one side to the other.
    expect(section!.wires.map(({ strings }) => strings.map(({ key }) => key))).toEqual([
      [40, 40],
      [40, 41],
      [41, 41],
      [43, 43],
      [43, 44],
      [44, 44],
    ]);
    expect(section!.plan.tied).toBe(0);
    const odd = loopsAndCuts(job, {
      ...scale,
      notes: scale.notes.flatMap((note) =>
        note.string.kind === 'plain' && (note.key === 41 || note.key === 43)
          ? [{ ...note, string: { ...note.string, diameter: millimetres(1) } }]
          : [],
      ),
    });
    expect(odd[0]!.plan.tied).toBe(2);
    expect(odd[0]!.plan.changesInsideLoops).toEqual([]);
    expect(odd[0]!.shifts).toEqual([]);
  });

  it('covers every plain string of the demo once, and its shifts do what they say', async () => {
    const context = memoryContext();
    const job = await openDemoJob(context);
    const scale = scaleNotesOf(job, 'as found');
    // Worn wire reads a little differently at every note: sizes are what a proposal has.
    const sized = {
      ...scale,
      notes: scale.notes.map((note) =>
        note.string.kind === 'plain'
          ? {
              ...note,
              string: { ...note.string, diameter: millimetres(Math.round(note.string.diameter * 4e4) / 40) },
            }
          : note,
      ),
    };
    const sections = loopsAndCuts(job, sized);
    const plain = sized.notes.filter(({ string }) => string.kind === 'plain');
    const strings = sections.flatMap(({ wires }) => wires.flatMap((wire) => wire.strings));
    expect(new Set(strings.map(({ key, string }) => `${key}/${string}`)).size).toBe(
      plain.reduce((sum, note) => sum + note.strings, 0),
    );
    expect(strings).toHaveLength(plain.reduce((sum, note) => sum + note.strings, 0));
    const tied = sections.reduce((sum, { plan }) => sum + plan.tied, 0);
    const offered = sections.flatMap(({ shifts }) => shifts);
    expect(offered.length).toBeGreaterThan(0);
    for (const { key, diameter, sentence } of offered) {
      const moved = {
        ...sized,
        notes: sized.notes.map((note) =>
          note.key === key && note.string.kind === 'plain'
            ? { ...note, string: { ...note.string, diameter } }
            : note,
        ),
      };
      const after = loopsAndCuts(job, moved).reduce((sum, { plan }) => sum + plan.tied, 0);
      expect(tied - after, sentence).toBe(
        /one tied/.test(sentence) ? 1 : Number(/(\d+) tied/.exec(sentence)![1]),
      );
    }
  });
});
