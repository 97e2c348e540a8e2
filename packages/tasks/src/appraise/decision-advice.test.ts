import type { FactOf } from '@becket/journal';
import { describe, expect, it } from 'vitest';
import { readJob } from '../context.ts';
import { openJob } from '../open-job.ts';
import { type ReadingToRecord, recordReadings } from '../record-reading.ts';
import { memoryContext } from '../testing/memory-context.ts';
import { slack, torqueJob, torqueReading } from '../testing/torque-job.ts';
import { decisionAdvice, recordDecision } from './decision-advice.ts';
import { FINDING_RULES, LOOK_FIRST } from './decision-rules.ts';
import { type FindingToRecord, recordFindings } from './record-finding.ts';

type Seen = Extract<FactOf<'finding'>['answer'], { is: 'seen' }>;
const seen = (thing: FindingToRecord['thing'], answer: Partial<Seen> = {}): FindingToRecord => ({
  thing,
  place: { section: 'tenor' },
  answer: { is: 'seen', what: 'a crack', gravity: 'clear', whatToDo: 'nothing', ...answer },
});
const sound = (thing: FindingToRecord['thing']): FindingToRecord => ({
  thing,
  place: {},
  answer: { is: 'sound' },
});
const lookedAt = LOOK_FIRST.map(sound);
/** Torque in every section: firm, but for what a test changes. */
const firm = (torqueAt: (key: number) => number = () => 16): ReadingToRecord[] =>
  Array.from({ length: 22 }, (_, index) => 2 + 4 * index).map((key, index) =>
    torqueReading(key, 1, torqueAt(key) + (index % 3) / 4, slack),
  );

async function advised(findings: readonly FindingToRecord[], readings: readonly ReadingToRecord[] = firm()) {
  const { context, id } = await torqueJob(readings);
  return decisionAdvice(await recordFindings(context, id, findings));
}

describe('decisionAdvice()', () => {
  it('says go when what has to be looked at first is sound and pins are firm, and rests it on its entries', async () => {
    const { verdict, reasons, conditions } = await advised(lookedAt);
    expect(verdict).toBe('go');
    expect(conditions).toEqual([]);
    const [reason] = reasons;
    expect(reason).toMatchObject({ about: 'pin block', verdict: 'go' });
    expect(reason!.figure).toContain('16.0 N·m (142 in·lbf)');
    expect(reason!.entries).toHaveLength(22);
  });

  it('makes nothing known a go with conditions, not a go', async () => {
    const context = memoryContext();
    const job = await openJob(context, { title: 'bare' });
    const advice = decisionAdvice(job);
    expect(advice.verdict).toBe('go with conditions');
    expect(advice.reasons.every(({ about }) => about === 'what is unknown')).toBe(true);
    const unknown = advice.unknown.map(({ what }) => what).join(' ');
    for (const word of [
      'cracks in the plate',
      'torque',
      'Crown',
      'Bearing',
      'Pitch',
      'humidity',
      'pin diameter',
    ])
      expect(unknown).toContain(word);
    expect(advice.unknown.every(({ wouldSettle }) => wouldSettle.length > 10)).toBe(true);
  });

  it.each<[string, FindingToRecord, string, string | undefined]>([
    [
      'stops for what was noted as stopping the job',
      seen('dampers', { whatToDo: 'stops the job' }),
      'stop',
      undefined,
    ],
    [
      'stops for a grave crack of the plate',
      seen('plate-cracks', { gravity: 'grave' }),
      'stop',
      'plate repair',
    ],
    [
      'has a specialist see any crack of the plate',
      seen('plate-cracks', { gravity: 'slight' }),
      'go with conditions',
      'plate repair',
    ],
    [
      'stops for a block that parts gravely',
      seen('block-layers', { gravity: 'grave' }),
      'stop',
      'pin blocks',
    ],
    ['has a cracked bridge mended first', seen('bridge-cracks'), 'go with conditions', undefined],
    [
      'has done first what was noted to be done first',
      seen('felts', { gravity: 'slight', whatToDo: 'before stringing' }),
      'go with conditions',
      undefined,
    ],
    [
      'goes on with a slight crack of the board',
      seen('board-cracks', { gravity: 'slight' }),
      'go',
      undefined,
    ],
  ])('%s', async (_, finding, verdict, specialist) => {
    const advice = await advised([...lookedAt.filter(({ thing }) => thing !== finding.thing), finding]);
    expect(advice.verdict).toBe(verdict);
    if (verdict === 'go') return;
    const [reason] = advice.reasons;
    expect(reason!.entries).toHaveLength(1);
    expect(advice.conditions).toContain(reason!.condition);
    if (specialist !== undefined) expect(reason!.deferTo).toContain(specialist);
  });

  it('puts the block in question for one very loose pin in many, and stops for one in four', async () => {
    const one = await advised(
      lookedAt,
      firm((key) => (key === 30 ? 3 : 16)),
    );
    expect(one.verdict).toBe('go with conditions');
    expect(one.reasons.find(({ about }) => about === 'pin block')!.sentence).toContain('1 of 22 pins');
    const many = await advised(
      lookedAt,
      firm((key) => (key % 3 === 0 ? 3 : 16)),
    );
    expect(many.verdict).toBe('stop');
    expect(many.reasons[0]!.deferTo).toContain('pin blocks');
  });

  it('has the block looked at where low pins gather', async () => {
    const advice = await advised(
      lookedAt,
      firm((key) => (key >= 51 && key <= 68 ? 8 : 16)),
    );
    const reason = advice.reasons.find(({ figure }) => figure?.startsWith('chance'));
    expect(reason!.sentence).toContain('in the section low treble');
    expect(reason!.source).toContain('no source');
  });

  it('weighs a crown that is not there and a bridge that is not pressed', async () => {
    const { context, id } = await torqueJob(firm());
    await recordFindings(context, id, lookedAt);
    const { job } = await recordReadings(context, id, [
      {
        quantity: 'soundboard-crown',
        place: { section: 'tenor' },
        value: -1,
        unit: 'mm',
        span_m: 1,
        loaded: true,
      },
      { quantity: 'bearing-rise', place: { key: 70 }, value: 0, unit: 'mm', span_m: 0.1, loaded: true },
    ]);
    const advice = decisionAdvice(job);
    expect(advice.reasons.filter(({ about }) => about === 'soundboard').map(({ figure }) => figure)).toEqual([
      '-1.0 mm',
      '0.0 mm',
    ]);
    expect(advice.unknown.some(({ what }) => what.startsWith('Crown'))).toBe(false);
  });

  it('names what grew since the earlier survey, and asks again for what was not looked at', async () => {
    const advice = await advised([
      { ...seen('board-cracks', { extent_m: 0.1, gravity: 'slight' }), copiedFrom: '2021-05-04' },
      seen('board-cracks', { extent_m: 0.15, gravity: 'slight' }),
      { ...sound('plate-cracks'), copiedFrom: '2021-05-04' },
      ...lookedAt.filter(({ thing }) => thing !== 'plate-cracks'),
    ]);
    expect(
      advice.reasons.some(
        ({ sentence, entries }) => sentence.includes('grew by 50 mm') && entries.length === 2,
      ),
    ).toBe(true);
    expect(advice.unknown[0]!.what).toContain('cracks in the plate since 4 May 2021');
  });

  it('says that a row was never met when the same string of each note was read', async () => {
    const rows = async (readings: readonly ReadingToRecord[]) =>
      (await advised(lookedAt, readings)).unknown.filter(({ what }) => what.includes('along another row'));
    const oneRow = [34, 40, 46, 52, 58, 64, 70].map((key) => torqueReading(key, 2, 15, slack));
    expect((await rows(oneRow))[0]!.what).toContain('only string 2');
    expect(await rows([...oneRow, torqueReading(71, 3, 15, slack)])).toEqual([]);
  });

  it('has rules for every thing of plate, block, bridges, board and terminations, each with its condition', () => {
    for (const rule of FINDING_RULES) expect(rule.condition).toMatch(/\.$/);
    const things = FINDING_RULES.flatMap((rule) => rule.things);
    expect(new Set(things).size).toBe(things.length);
  });
});

describe('recordDecision()', () => {
  it('keeps what was decided beside what was advised', async () => {
    const { context, id } = await torqueJob(firm());
    await recordFindings(context, id, lookedAt);
    const job = await recordDecision(context, id, {
      verdict: 'go with conditions',
      conditions: [' test pins first ', ''],
      because: 'the season was damp',
    });
    expect(job.decisions.at(-1)).toMatchObject({
      verdict: 'go with conditions',
      conditions: ['test pins first'],
      because: 'the season was damp',
      advised: 'go',
    });
  });

  it('refuses conditions where there are none and none where there are, and a decision without a why', async () => {
    const { context, id } = await torqueJob([]);
    const { entryCount } = await readJob(context, id);
    const because = 'so';
    await expect(
      recordDecision(context, id, { verdict: 'go with conditions', conditions: [' '], because }),
    ).rejects.toThrow('at least one condition');
    await expect(recordDecision(context, id, { verdict: 'go', conditions: ['x'], because })).rejects.toThrow(
      '1 was found',
    );
    await expect(
      recordDecision(context, id, { verdict: 'stop', conditions: [], because: ' ' }),
    ).rejects.toThrow('why it was made');
    expect((await readJob(context, id)).entryCount).toBe(entryCount);
  });
});
