import { A228_MAXIMUM, A228_MINIMUM, breakLoad, millimetres } from '@becket/core';
import { foldSettling, offsetOf, passPlan, STARTING_OVERPULL_LIMIT, settlingLimits } from '@becket/journal';
import { beforeEach, describe, expect, it } from 'vitest';
import { entriesOf, readJob, type TaskContext } from '../context.ts';
import { makePaper } from '../make-paper.ts';
import { recordReadings, withdrawEntry } from '../record-reading.ts';
import { memoryContext } from '../testing/memory-context.ts';
import { settlingJob } from '../testing/settling-job.ts';
import {
  beginPass,
  planFollowUp,
  recordFollowUp,
  recordMishap,
  recordPass,
  recordPassValues,
  setOverpullLimit,
} from './settle-commands.ts';
import { settlingFigures } from './settling-figures.ts';

let context: TaskContext;
let id: string;
beforeEach(async () => {
  context = memoryContext();
  id = await settlingJob(context);
});

const at = (section: string, offset_cents: number) => ({ section, offset_cents });
const before = (section: string, cents: number) => ({ value: 'before', ...at(section, cents) }) as const;
const after = (section: string, cents: number) => ({ value: 'after', ...at(section, cents) }) as const;

/** By hand: T = π·7850·(1 mm · 480 mm · 440 Hz)² = 1100.1 N, by the wire's mass alone. */
const TENSION_OF_A4 = Math.PI * 7850 * (0.001 * 0.48 * 440) ** 2;

async function planOf() {
  const entries = await entriesOf(context, id);
  const job = await readJob(context, id);
  return passPlan(job, foldSettling(entries), settlingLimits(job));
}

describe('the limit of an overpull', () => {
  const limitNow = async () => {
    const settling = foldSettling(await entriesOf(context, id));
    return settlingLimits(await readJob(context, id), settling.limit);
  };
  const nearestOf = ({ sections }: Awaited<ReturnType<typeof limitNow>>) =>
    sections.find(({ section }) => section === 'high')!.nearest!;

  it('is set for a job with its table and its source, holds for what is kept and printed, and is taken back', async () => {
    const before = await limitNow();
    expect(before).toMatchObject({ ...STARTING_OVERPULL_LIMIT, set: undefined });
    const wish = { highestBreakShare: 0.6, strengthTable: 'ASTM A228 maximum', source: ' our own trials ' };
    const { entries } = await setOverpullLimit(context, id, wish);
    const after = await limitNow();
    expect(after).toMatchObject({ ...wish, source: 'our own trials', set: { entry: entries[0] } });
    // By hand: a wire stronger by S'/S bears a smaller share by as much; then 600 · log2(0.6 / share), Mersenne's law.
    const strengths = [A228_MINIMUM, A228_MAXIMUM].map((table) => table.strengthAt(millimetres(1)).strength);
    const [was, is] = [nearestOf(before), nearestOf(after)];
    expect(is.key).toBe(49);
    expect(is.breakShare).toBeCloseTo(was.breakShare * (strengths[0]! / strengths[1]!), 9);
    expect(is.offset).toBeCloseTo(600 * Math.log2(0.6 / is.breakShare), 9);
    const { entries: pass } = await beginPass(context, id, { on: '2026-03-05' });
    const aim = (offset_cents: number) =>
      recordPassValues(context, id, [{ passBegun: pass[0]!, value: 'aimed', section: 'high', offset_cents }]);
    await expect(aim(Math.floor(is.offset) + 1)).rejects.toThrow(/within 60 % of its break load/);
    const log = await makePaper(context, id, { paper: 'settling-log', format: 'csv' });
    expect(log.bytes.length).toBeGreaterThan(0);
    const { plan } = settlingFigures(await readJob(context, id), {
      entries: await entriesOf(context, id),
      today: '2026-03-05',
    });
    expect(plan.limits).toEqual(after);
    await withdrawEntry(context, id, entries[0]!, 'taken back');
    expect(await limitNow()).toEqual(before);
  });

  it.each([
    [{ highestBreakShare: 0.95 }, /from 20 to 90 % of the break load are needed, 95 was found/],
    [{ highestBreakShare: Number.NaN }, /NaN was found/],
    [
      { strengthTable: 'a table of tomorrow' },
      /a table of break loads is needed .*‘a table of tomorrow’ was found/,
    ],
    [{ source: ' ' }, /whose limit it is is needed/],
  ])('refuses %j and keeps nothing', async (wrong, why) => {
    const kept = await entriesOf(context, id);
    await expect(setOverpullLimit(context, id, { ...STARTING_OVERPULL_LIMIT, ...wrong })).rejects.toThrow(
      why,
    );
    expect(await entriesOf(context, id)).toEqual(kept);
  });

  it('is the starting one where a later program has named a table that this one does not know', async () => {
    const job = await readJob(context, id);
    const { entries } = await setOverpullLimit(context, id, {
      ...STARTING_OVERPULL_LIMIT,
      highestBreakShare: 0.5,
      source: 'x',
    });
    const { limit } = foldSettling(await entriesOf(context, id));
    expect(limit?.entry).toBe(entries[0]);
    expect(settlingLimits(job, { ...limit!, strengthTable: 'a table of tomorrow' })).toEqual(
      settlingLimits(job),
    );
  });

  it('is where A4 comes to 65 % of its break load, worked by hand', async () => {
    const { strength } = A228_MINIMUM.strengthAt(millimetres(1));
    const load = breakLoad({ diameter: millimetres(1), strength });
    const limits = settlingLimits(await readJob(context, id));
    const high = limits.sections.find(({ section }) => section === 'high')!;
    expect(high.nearest?.key).toBe(49);
    expect(high.nearest?.offset).toBeCloseTo(600 * Math.log2((0.65 * load) / TENSION_OF_A4), 3);
    expect(high.load).toBeCloseTo(3 * TENSION_OF_A4, 2);
    expect(high.notComputed).toEqual([46, 47, 48, 50, 51]);
  });
});

describe('the next pass', () => {
  it('says what is missing before there is a pass, and tells no overpull where nothing is read', async () => {
    const { pass, sections } = await planOf();
    expect(pass).toBe(1);
    expect(sections.map(({ next, isDefault }) => [next, isDefault])).toEqual([
      [undefined, true],
      [undefined, true],
    ]);
    const entries = await entriesOf(context, id);
    const { remarks } = settlingFigures(await readJob(context, id), { entries, today: '2026-05-04' });
    expect(remarks.join('\n')).toContain('25 ± 10 % of the raise lost (common practice, no source)');
    expect(remarks.join('\n')).toContain('where it stands is not known');
    expect(remarks.join('\n')).toMatch(
      /C#4 to G#4, A#4 to B4 cannot be computed and have no part in the limit\./,
    );
  });

  // By hand: the first pass raised low from −60 to 0 and it was found at −18: 18/60 = 0.3. With u = 1 cent each,
  // u_i² = 2/3600 + 0.0025 = 0.0030556, w = 327.27; default 0.25, w = 100: k = (98.182 + 25)/427.27 = 0.28830.
  // Pass 2 stands at −18: a = 0.28830 · 18 / 0.71170 = 7.2915 cents.
  it('learns the share from the fall after the first pass, worked by hand', async () => {
    await recordPass(context, id, { on: '2026-05-04', values: [before('low', -60), after('low', 0)] });
    await recordPass(context, id, { on: '2026-05-06', values: [before('low', -18)] });
    const { pass, isUnderWay, sections } = await planOf();
    expect([pass, isUnderWay]).toEqual([2, true]);
    const low = sections.find(({ section }) => section === 'low')!;
    expect(low.fallBack.share).toBeCloseTo(0.2883, 4);
    expect(low.stands).toEqual({ offset: -18, standardUncertainty: 1, from: 'read' });
    expect(low.next?.overpull).toBeCloseTo(7.2915, 3);
    expect(low.isDefault).toBe(false);
  });

  // By hand: left at +4 after a raise of 40 with the starting share 0.25: foretold at 4 − 10 = −6; u = √(1² + (40·0.1)²) = 4.123.
  it('foretells where a section will stand from the pass that is finished', async () => {
    await recordPass(context, id, {
      on: '2026-05-04',
      values: [before('low', -36), after('low', 4), before('high', -20), after('high', 0)],
    });
    const { pass, isUnderWay, sections } = await planOf();
    expect([pass, isUnderWay]).toEqual([2, false]);
    const low = sections.find(({ section }) => section === 'low')!;
    expect(low.stands?.from).toBe('foretold');
    expect(low.stands?.offset).toBeCloseTo(-6, 9);
    expect(low.stands?.standardUncertainty).toBeCloseTo(4.1231, 3);
  });

  it('counts the limit from the pitch of the pass, and never tells more than it allows', async () => {
    await recordPass(context, id, { on: '2026-05-04', values: [before('high', -300)] });
    const at440 = (await planOf()).sections.find(({ section }) => section === 'high')!;
    expect(at440.next?.isLimited).toBe(true);
    expect(at440.next?.overpull).toBe(at440.highestOffset);
    await recordPass(context, id, {
      on: '2026-05-05',
      referencePitch_hz: 442,
      values: [before('high', -300)],
    });
    const at442 = (await planOf()).sections.find(({ section }) => section === 'high')!;
    expect(at442.highestOffset! - at440.highestOffset!).toBeCloseTo(-1200 * Math.log2(442 / 440), 9);
  });

  it('takes what was measured on the new wire for the limit, where there is some', async () => {
    await recordReadings(context, id, [
      { quantity: 'wire-diameter', place: { key: 49 }, value: 0.95, unit: 'mm', stage: 'as strung' },
    ]);
    const limits = settlingLimits(await readJob(context, id));
    expect(limits.measured).toBe(1);
    expect(limits.sections[1]!.load).toBeCloseTo(3 * 0.95 ** 2 * TENSION_OF_A4, 2);
  });
});

describe('the offset of a section', () => {
  const read = (offset_cents: number, key?: number) => ({ entry: id, key, offset_cents });

  // By hand: −30, −34 and −38 have the mean −34 and s = 4, so u = 4/√3 = 2.309; alike they are known to no better than 1 cent.
  it('is the mean of its notes with what their spread leaves open, worked by hand', () => {
    const apart = offsetOf([read(-30, 40), read(-34, 42), read(-38, 44)]);
    expect(apart?.offset).toBeCloseTo(-34, 12);
    expect(apart?.standardUncertainty).toBeCloseTo(2.309, 3);
    expect(offsetOf([read(-30, 40), read(-30, 42)])?.standardUncertainty).toBe(1);
    expect(offsetOf([read(-30, 40)])?.standardUncertainty).toBe(2);
    expect(offsetOf([read(-20), read(-30, 40)])?.offset).toBe(-30);
    expect(offsetOf([])).toBeUndefined();
  });
});

describe('a pass in the journal', () => {
  it('is kept value by value, corrected by a later value, and taken back', async () => {
    const { entries: begun } = await beginPass(context, id, {
      on: '2026-05-04',
      temperature_c: 20.5,
      order: ['high', 'low'],
    });
    const passBegun = begun[0]!;
    await recordPassValues(context, id, [{ passBegun, value: 'before', section: 'low', offset_cents: -32 }]);
    const { settling, entries } = await recordPassValues(context, id, [
      { passBegun, value: 'before', section: 'low', key: 41, offset_cents: -31 },
    ]);
    expect(settling.passes[0]!.sections.map(({ section }) => section)).toEqual(['high', 'low']);
    expect(settling.passes[0]!.sections[1]!.before.map(({ offset_cents }) => offset_cents)).toEqual([
      -32, -31,
    ]);
    expect(settling.passes[0]!.relativeHumidity_percent).toBeUndefined();
    await withdrawEntry(context, id, entries[0]!, 'a slip');
    const again = foldSettling(await entriesOf(context, id));
    expect(again.passes[0]!.sections[1]!.before).toHaveLength(1);
  });

  it('is refused in one sentence, and nothing of it is stored', async () => {
    const { entries: begun } = await beginPass(context, id, { on: '2026-05-04' });
    const passBegun = begun[0]!;
    const count = (await entriesOf(context, id)).length;
    const refused: [() => Promise<unknown>, string][] = [
      [() => beginPass(context, id, { on: '2026-02-30' }), '‘2026-02-30’ was found'],
      [() => beginPass(context, id, { on: '2026-05-05', pass: 1 }), 'pass 1 is recorded already'],
      [() => beginPass(context, id, { on: '2026-05-05', order: ['bass'] }), '‘bass’ was found'],
      [() => beginPass(context, id, { on: '2026-05-05', referencePitch_hz: 44 }), '44 Hz was found'],
      [
        () =>
          recordPassValues(context, id, [
            { passBegun, value: 'before', section: 'low', offset_cents: -20 },
            { passBegun, value: 'before', section: 'low', key: 50, offset_cents: -20 },
          ]),
        'A#4 was found',
      ],
      [
        () =>
          recordPassValues(context, id, [{ passBegun, value: 'aimed', section: 'low', offset_cents: -2 }]),
        'from 0 to 600 cents above pitch',
      ],
      [
        () =>
          recordPassValues(context, id, [{ passBegun, value: 'aimed', section: 'high', offset_cents: 60 }]),
        'for A4 to stay within 65 % of its break load',
      ],
      [
        () =>
          recordPassValues(context, id, [
            { passBegun: begun[0]!.replace(/.$/, '0'), value: 'after', section: 'low', offset_cents: 0 },
          ]),
        'none of that name was found',
      ],
      [() => recordMishap(context, id, { passBegun, what: 'broke' }), 'the note of the string is needed'],
      [() => recordMishap(context, id, { passBegun, what: 'other' }), 'words are needed'],
      [() => recordMishap(context, id, { passBegun, what: 'broke', key: 88 }), 'C8 was found'],
      [
        () =>
          recordPass(context, id, {
            on: '2026-05-05',
            values: [before('low', -12)],
            mishaps: [{ what: 'slipped', key: 40, string: 4 as never }],
          }),
        'string 4 was found',
      ],
    ];
    for (const [attempt, sentence] of refused) await expect(attempt()).rejects.toThrow(sentence);
    expect((await entriesOf(context, id)).length).toBe(count);
  });
});

describe('follow-ups', () => {
  it('are planned once a day and kind, and done once', async () => {
    const { entries } = await planFollowUp(context, id, { on: '2026-06-04', what: 'tuning' });
    await expect(planFollowUp(context, id, { on: '2026-06-04', what: 'tuning' })).rejects.toThrow(
      '4 June 2026 has it already',
    );
    const done = { followUp: entries[0]!, on: '2026-06-05', relativeHumidity_percent: 48 };
    const { settling } = await recordFollowUp(context, id, done);
    expect(settling.followUps[0]!.done?.relativeHumidity_percent).toBe(48);
    await expect(recordFollowUp(context, id, done)).rejects.toThrow('it was done on 5 June 2026');
    await expect(recordFollowUp(context, id, { followUp: id, on: '2026-06-05' })).rejects.toThrow(
      'one that was planned is needed',
    );
  });
});

describe('what a plan rests on', () => {
  // A4 on 500 mm: T = π·7850·(1 mm · 500 mm · 440 Hz)² = 1193.6 N, 70 % of the 1711 N that `breakShare` has for 1 mm.
  it('warns of a string that is above the limit at its pitch, and tells no overpull for its section', async () => {
    await recordReadings(context, id, [
      { quantity: 'speaking-length', place: { key: 49 }, value: 500, unit: 'mm', stage: 'as strung' },
      { quantity: 'wire-diameter', place: { key: 49 }, value: 1, unit: 'mm', stage: 'as strung' },
    ]);
    await recordPass(context, id, { on: '2026-05-04', values: [before('high', -20)] });
    const entries = await entriesOf(context, id);
    const { plan, remarks } = settlingFigures(await readJob(context, id), { entries, today: '2026-05-04' });
    expect(plan.sections[1]!.next?.overpull).toBe(0);
    expect(remarks.join('\n')).toContain(
      'high: A4 is above the limit at its pitch already (70 % of its break load)',
    );
  });
});
