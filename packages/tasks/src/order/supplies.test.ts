import { cutLength, metres, millimetres } from '@becket/core';
import type { FactOf } from '@becket/journal';
import { describe, expect, it } from 'vitest';
import { addFacts, readJob } from '../context.ts';
import { describeJob } from '../describe-job.ts';
import { openJob } from '../open-job.ts';
import { recordFacts } from '../record-facts.ts';
import { recordReadings } from '../record-reading.ts';
import { memoryContext } from '../testing/memory-context.ts';
import { wireJob } from '../testing/wire-job.ts';
import { STARTING_ORDER_POLICY } from './order-policy.ts';
import { stringingFigures } from './stringing-figures.ts';
import { suppliesOf } from './supplies.ts';

const policy = STARTING_ORDER_POLICY;

async function smallPiano() {
  const context = memoryContext();
  return { context, id: await wireJob(context) };
}

describe('suppliesOf()', () => {
  it('comes to the wire that a hand works out', async () => {
    const { context, id } = await smallPiano();
    const supplies = suppliesOf(await readJob(context, id));
    expect(supplies.scale).toContain('two sizes');
    const [thick, thin] = supplies.lines.filter(({ group }) => group === 'plain wire');
    // Six strings of each size: three looped wires each, none tied.
    expect(thick?.because).toContain('3 wires for 6 strings, 0 of them tied');
    // One wire: 2·(100 + 150) + its two speaking lengths; on each pin 3 turns of π·(7.2 + 1.0414) = 77.67 mm, becket 6 mm,
    // waste 20 mm; hitch π/2·(4 + 1.0414) = 7.92 mm.  2·(77.67 + 26) + 7.92 + 500 = 715.27 mm without speaking lengths.
    // Speaking: keys 40,40 | 40,41 | 41,41 = 1400 + 1390 + 1380 = 4170 mm.  3·715.27 + 4170 = 6315.8 mm.
    expect(thick?.because).toContain('6.32 m to cut');
    // π/4·1.0414² mm² · 7850 kg/m³ = 6.6865 g/m: 42.23 g to cut, so 43; a tenth of it 4.22, so 5; a spare of the longest,
    // 2.1153 m, 14.14, so 15.
    expect(thick).toMatchObject({ needed: 43, total: 43 + 5 + 15, unit: 'g' });
    expect(thick?.extra.map(({ quantity }) => quantity)).toEqual([5, 15]);
    expect(thin?.id).toBe('wire 0.991 mm');
    expect(thick?.what).toContain('US 18');
  });

  it('buys as much wire as the cut list cuts', async () => {
    const { context, id } = await smallPiano();
    const job = await readJob(context, id);
    const onList = stringingFigures(job).wires.reduce((sum, { cut }) => sum + (cut?.total ?? 0), 0);
    const bought = suppliesOf(job)
      .lines.filter(({ group }) => group === 'plain wire')
      .reduce((sum, { wire }) => sum + wire!.total - wire!.beyond - Math.max(...wire!.cuts), 0);
    expect(bought).toBeCloseTo(onList, 9);
  });

  it('warns when the scale is no longer what was chosen', async () => {
    const { context, id } = await smallPiano();
    // The digest of this choice is invented, so the scale is another than was chosen.
    expect(suppliesOf(await readJob(context, id)).scaleProblem).toContain('has changed since it was chosen');
  });

  it('buys the size that readings speak for where the chosen scale leaves a note as found', async () => {
    const { context, id } = await smallPiano();
    const readings = [40, 41, 42, 43].flatMap((key) =>
      [0.984, 0.986, 0.985].map((value) => ({
        quantity: 'wire-diameter' as const,
        place: { key },
        value,
        unit: 'mm' as const,
        origin: 'measured' as const,
        stage: 'as found' as const,
      })),
    );
    await recordReadings(context, id, readings);
    const { entries } = await addFacts(context, id, [
      {
        kind: 'scale-proposed',
        v: 1,
        name: 'as it was',
        notes: [40, 41, 42, 43].map((key) => ({
          winding: 'plain' as const,
          key,
          gauge_m: 0.000985,
          from: 'as found' as const,
        })),
        madeFrom: 'a'.repeat(64),
      },
    ]);
    await addFacts(context, id, [
      { kind: 'scale-chosen', v: 1, scale: entries[0]!.id, reason: 'a test', digest: 'b'.repeat(64) },
    ]);
    const wire = suppliesOf(await readJob(context, id)).lines.filter(({ group }) => group === 'plain wire');
    // No list has 0.985 mm; US 17 (0.9906 mm) and metric 17 (0.975 mm) are next to it.
    expect(wire).toHaveLength(1);
    expect(['wire 0.991 mm', 'wire 0.975 mm']).toContain(wire[0]?.id);
  });

  it('names the notes that the chosen scale does not have, here and on the stringing sheets', async () => {
    const { context, id } = await smallPiano();
    expect(suppliesOf(await readJob(context, id)).notCounted.join(' ')).not.toContain('chosen scale');
    await recordReadings(
      context,
      id,
      [42, 43].map((key) => ({
        quantity: 'wire-diameter' as const,
        place: { key },
        value: 0.975,
        unit: 'mm' as const,
        origin: 'measured' as const,
        stage: 'as found' as const,
      })),
    );
    const { entries } = await addFacts(context, id, [
      {
        kind: 'scale-proposed',
        v: 1,
        name: 'half of it',
        notes: [40, 41].map((key) => ({
          winding: 'plain' as const,
          key,
          gauge_m: 0.0010414,
          from: 'by hand' as const,
        })),
        madeFrom: 'a'.repeat(64),
      },
    ]);
    await addFacts(context, id, [
      { kind: 'scale-chosen', v: 1, scale: entries[0]!.id, reason: 'a test', digest: 'b'.repeat(64) },
    ]);
    const job = await readJob(context, id);
    expect(suppliesOf(job).notCounted).toContainEqual(
      expect.stringMatching(/^The chosen scale does not have D4 to D#4: /),
    );
    const remarked = stringingFigures(job).wires.filter(({ remarks }) =>
      remarks.includes('size of the old wire: not in the chosen scale'),
    );
    expect(new Set(remarked.flatMap(({ strings }) => strings.map(({ key }) => key)))).toEqual(
      new Set([42, 43]),
    );
  });

  it('says that a piano which nobody described cannot be counted', async () => {
    const context = memoryContext();
    const job = await openJob(context, { title: 'not described' });
    const supplies = suppliesOf(job);
    expect(supplies.lines.every(({ group }) => group === 'sundries')).toBe(true);
    expect(supplies.notCounted).toEqual([
      expect.stringMatching(/^Neither compass nor stringing of this piano is described yet: /),
    ]);
  });

  it('traces every line of wire to strings and readings', async () => {
    const { context, id } = await smallPiano();
    const job = await readJob(context, id);
    const known = new Set([...job.readings, ...job.proposals].map(({ entry }) => entry));
    const wire = suppliesOf(job).lines.filter(({ group }) => group === 'plain wire');
    const strings = wire.flatMap(({ from }) => from);
    expect(strings.map(({ key, string }) => `${key}/${string}`)).toHaveLength(12);
    expect(new Set(strings.map(({ key, string }) => `${key}/${string}`)).size).toBe(12);
    for (const { entries } of strings) {
      expect(entries.length).toBeGreaterThanOrEqual(5);
      for (const entry of entries) expect(known.has(entry)).toBe(true);
    }
  });

  it('keeps each cut wire whole: their sum is the length that was weighed', async () => {
    const { context, id } = await smallPiano();
    const [thick] = suppliesOf(await readJob(context, id)).lines;
    const sum = thick!.wire!.cuts.reduce<number>((total, cut) => total + cut, 0) + thick!.wire!.beyond;
    expect(sum).toBeCloseTo(thick!.wire!.total, 9);
    const { total } = cutLength({
      strings: [
        { front: millimetres(100), speaking: millimetres(700), back: millimetres(150) },
        { front: millimetres(100), speaking: millimetres(700), back: millimetres(150) },
      ],
      pinDiameter: metres(policy.cut.pinDiameter_m),
      wireDiameter: metres(0.0010414),
      hitchPinDiameter: millimetres(4),
      coils: 3,
      becket: metres(policy.cut.becket_m),
      waste: metres(policy.cut.waste_m),
      tie: metres(policy.cut.tie_m),
    });
    expect(Math.max(...thick!.wire!.cuts)).toBeCloseTo(total, 9);
  });

  it('lists what is unknown as unknown and leaves out what is not there', async () => {
    const { context, id } = await smallPiano();
    const soft = (
      part: FactOf<'soft-part'>['part'],
      section: string,
      answer: FactOf<'soft-part'>['answer'],
    ) => ({ kind: 'soft-part', part, section, answer }) as const;
    await recordFacts(context, id, [
      soft('felt', 'treble', { is: 'known', thickness_m: 0.004, length_m: 0.62, colour: 'red' }),
      soft('felt', 'bass', { is: 'known', thickness_m: 0.004, length_m: 0.3, colour: 'red' }),
      soft('pin bushings', 'treble', { is: 'known' }),
      soft('pin bushings', 'bass', { is: 'none' }),
      soft('punchings', 'treble', { is: 'unknown' }),
    ]);
    const lines = suppliesOf(await readJob(context, id)).lines;
    const line = (words: string) => lines.find(({ what }) => what.startsWith(words));
    // 620 + 300 mm of the same felt, a tenth to spare of each.
    expect(line('Felt, 4.0 mm, red')).toMatchObject({ needed: 920, total: 1012, unit: 'mm' });
    expect(line('Pin bushings')).toMatchObject({ needed: 12, total: 14 });
    expect(lines.some(({ what }) => what.includes('bushings') && what.includes('bass'))).toBe(false);
    expect(line("Punchings, section 'treble'")).toMatchObject({ total: undefined });
    expect(line("Punchings, section 'bass'")?.because).toBe('nobody has said what was found');
    expect(line('Tuning pins, size not settled')).toMatchObject({ needed: 14, total: undefined });
    expect(line('Wound strings')).toMatchObject({ needed: 2 });
  });

  it('says which strings it could not count', async () => {
    const context = memoryContext();
    const { id } = await openJob(context, { title: 'bare' });
    await describeJob(context, id, {
      piano: { form: 'grand', firstKey: 40, lastKey: 42, referencePitch_hz: 440 },
      sections: [
        { section: 'treble', firstKey: 40, lastKey: 42, bridge: 'treble', frontTermination: 'agraffe' },
      ],
      unisons: [{ firstKey: 40, lastKey: 41, strings: 3, winding: 'plain', layers: 0 }],
    });
    const { lines, notCounted } = suppliesOf(await readJob(context, id));
    expect(lines.filter(({ group }) => group === 'plain wire')).toEqual([]);
    expect(notCounted).toEqual([
      'The stringing of D4 is not described: their wire and pins are not counted.',
      'Wire is not counted for C4, C#4: 6 strings without a diameter or a speaking length.',
    ]);
  });
});
