import { minorUnits } from '@becket/core';
import { estimateStanding, type FactOf, newUlid, type Ulid } from '@becket/journal';
import { beforeEach, describe, expect, it } from 'vitest';
import { addFacts, readJob, type TaskContext } from '../context.ts';
import { openDemoJob } from '../demo/open-demo-job.ts';
import { openJob } from '../open-job.ts';
import { examplePiano } from '../testing/example-pianos.ts';
import { memoryContext } from '../testing/memory-context.ts';
import { changeOrderByAnswer } from './change-answers.ts';
import { draftEstimate } from './estimate.ts';
import {
  answerChange,
  answerEstimate,
  type EstimateToMake,
  makeEstimate,
  recordHours,
} from './estimate-commands.ts';
import { recordFindings } from './record-finding.ts';

let context: TaskContext;
let job: Ulid;
beforeEach(async () => {
  context = memoryContext();
  job = (await openDemoJob(context)).id;
});

const rates = {
  currency: 'EUR',
  pricesIncludeTax: false,
  hourlyRate: minorUnits(6800),
  labourTax_basisPoints: 1900,
  materialsTax_basisPoints: 1900,
};
const stringing: EstimateToMake['lines'][number] = {
  id: 'stringing',
  group: 'labour',
  what: 'Put on the new strings',
  amount: { by: 'time', minutes: 840, hourlyRateMinorUnits: 6800 },
  taxRate_basisPoints: 1900,
};
const bridge: EstimateToMake['lines'][number] = {
  id: 'bridge',
  group: 'labour',
  what: 'Mend the bridge cap',
  amount: { by: 'time', minutes: 240, hourlyRateMinorUnits: 6800 },
  taxRate_basisPoints: 1900,
  ifFound: 'a cracked bridge cap',
};
const estimate: EstimateToMake = { currency: 'EUR', pricesIncludeTax: false, lines: [stringing, bridge] };
const yes = { answer: 'accepted' as const, name: 'Ines Okafor', on: '2026-03-02', conditionalLines: [] };
const entryCount = async () => (await readJob(context, job)).entryCount;

describe('a first draft of the estimate', () => {
  it('takes the times of the steps from the strings of the piano, rounded up to quarters of an hour', async () => {
    const state = await readJob(context, job);
    const strings = [...state.unisons.values()].reduce((sum, unison) => sum + unison.strings, 0);
    const { lines, because, assumed } = draftEstimate(state, { rates });
    const line = lines.find(({ id }) => id === 'stringing');
    // 60 minutes and 3.5 a string.
    expect(line?.amount).toEqual({
      by: 'time',
      minutes: Math.ceil((60 + 3.5 * strings) / 15) * 15,
      hourlyRateMinorUnits: 6800,
    });
    expect(because.get('stringing')).toContain('our own starting figure');
    expect(assumed).toEqual([]);
  });

  it('lists what nobody has priced instead of taking it for nothing', async () => {
    const { lines, notPriced } = draftEstimate(await readJob(context, job), { rates });
    expect(lines.every(({ group }) => group === 'labour')).toBe(true);
    expect(notPriced.map(({ id, needs }) => [id, ...needs])).toEqual([
      ['tuning-pins', 'price'],
      ['plain-wire', 'price'],
      ['bass-strings', 'price'],
      ['felts', 'price'],
    ]);
    const priced = draftEstimate(await readJob(context, job), {
      rates: { ...rates, unitPrices: { 'tuning-pins': minorUnits(95), felts: minorUnits(0) } },
    });
    // Free is a price.
    expect(priced.lines.filter(({ group }) => group === 'materials').map(({ id }) => id)).toEqual([
      'tuning-pins',
      'felts',
    ]);
    const withoutRate = draftEstimate(await readJob(context, job), {
      rates: { ...rates, hourlyRate: undefined },
    });
    expect(withoutRate.lines).toEqual([]);
    expect(withoutRate.notPriced[0]?.needs).toEqual(['hourly rate']);
  });

  it('weighs the plain wire from its readings: as heavy as the wire the piano was invented with', async () => {
    const { notPriced } = draftEstimate(await readJob(context, job), { rates });
    const wire = notPriced.find(({ id }) => id === 'plain-wire')!;
    const grams = wire.amount.by === 'quantity' ? wire.amount.quantity_thousandths! : Number.NaN;
    const { notes } = examplePiano('grand').truth;
    const kilograms = notes
      .filter(({ winding }) => winding === 'plain')
      .reduce((sum, note) => {
        const length = note.speakingLength_m + note.frontLength_m + note.backLength_m + 0.15;
        return sum + note.strings * length * 7850 * (Math.PI / 4) * note.wireDiameter_m ** 2;
      }, 0);
    // Worn wire reads thin and a tenth of the notes is not read: a few per cent.
    const share = grams / (1100 * kilograms);
    expect(share).toBeGreaterThan(0.93);
    expect(share).toBeLessThan(1.07);
  });

  it('turns the survey into work: firm when seen, conditional when it could not be seen', async () => {
    await recordFindings(context, job, [
      {
        thing: 'bridge-cracks',
        place: { section: (await readJob(context, job)).sections[0]!.section },
        answer: {
          is: 'seen',
          what: 'a crack through four pins',
          gravity: 'clear',
          whatToDo: 'before stringing',
        },
      },
      { thing: 'block-layers', place: {}, answer: { is: 'could not be seen' } },
      {
        thing: 'board-repairs',
        place: {},
        answer: {
          is: 'seen',
          what: 'an old shim',
          gravity: 'slight',
          whatToDo: 'nothing',
          repair: 'cannot tell',
        },
      },
      { thing: 'plate-cracks', place: {}, answer: { is: 'sound' } },
      {
        thing: 'plate-bolts',
        place: {},
        answer: { is: 'seen', what: 'one is missing', gravity: 'grave', whatToDo: 'stops the job' },
      },
    ]);
    const { notPriced } = draftEstimate(await readJob(context, job), { rates });
    const work = notPriced.filter(({ id }) => /^(mend|if-found)-/.test(id));
    expect(
      work.map(({ id, needs, ifFound }) => [id.split('-').slice(0, 3).join('-'), needs, ifFound]),
    ).toEqual([
      ['mend-bridge-cracks', ['hours'], undefined],
      [
        'if-found-block',
        ['hours'],
        'layers of the pin block parting (whole piano): damage that could not be seen at the visit',
      ],
      ['if-found-board', ['hours'], 'the earlier repair does not hold: an old shim'],
    ]);
  });

  it('says what it assumed about a piano that nobody has described', async () => {
    const { id } = await openJob(context, { title: 'a visit' });
    const { assumed, notPriced, lines } = draftEstimate(await readJob(context, id), { rates });
    expect(assumed.join(' ')).toMatch(/88 notes are assumed.*230 strings are assumed/);
    expect(notPriced.find(({ id: own }) => own === 'bass-strings')?.needs).toEqual(['quantity', 'price']);
    expect(lines.find(({ id: own }) => own === 'stringing')?.amount).toMatchObject({ minutes: 870 });
  });
});

describe('making an estimate', () => {
  it('makes version after version, and leaves the earlier ones as they were', async () => {
    const first = await makeEstimate(context, job, estimate);
    expect([first.version, first.totals.low, first.totals.high, first.said]).toEqual([1, 113288, 145656, []]);
    const second = await makeEstimate(context, job, { ...estimate, lines: [stringing] });
    expect(second.version).toBe(2);
    expect(second.job.estimates.map(({ version, lines }) => [version, lines.length])).toEqual([
      [1, 2],
      [2, 1],
    ]);
  });

  it('needs a new answer once a version was accepted and another is made', async () => {
    const first = await makeEstimate(context, job, estimate);
    await answerEstimate(context, job, { ...yes, estimate: first.entry, conditionalLines: ['bridge'] });
    const { job: state, said } = await makeEstimate(context, job, { ...estimate, currency: 'CHF' });
    expect(said).toEqual([
      'This version is in CHF; version 1 was in EUR.',
      'Version 1 was accepted by Ines Okafor on 2 March 2026; that holds for it alone, and this version needs an answer of its own.',
    ]);
    const { latest, answer, accepted } = estimateStanding(state);
    expect([latest?.version, answer, accepted?.estimate.version]).toEqual([2, undefined, 1]);
  });

  it('refuses a currency, a line or a day that cannot be, and stores nothing', async () => {
    const before = await entryCount();
    const make = (change: Partial<EstimateToMake>) => makeEstimate(context, job, { ...estimate, ...change });
    await expect(make({ currency: 'EUX' })).rejects.toThrow("'EUX' was found");
    await expect(make({ lines: [stringing, stringing] })).rejects.toThrow("'stringing' was found twice");
    await expect(make({ validUntil: '2026-02-28' })).rejects.toThrow('28 February 2026 was found');
    await expect(make({ lines: [] })).rejects.toThrow(SyntaxError);
    const huge = {
      by: 'quantity',
      quantity_thousandths: 1e9,
      unit: 'piece',
      unitPriceMinorUnits: 1e12,
    } as const;
    await expect(make({ lines: [{ ...stringing, amount: huge }] })).rejects.toThrow(
      'Cannot hold this amount',
    );
    expect(await entryCount()).toBe(before);
  });
});

describe("the customer's answer", () => {
  it('stands, and a later one stands in its place', async () => {
    const { entry } = await makeEstimate(context, job, { ...estimate, validUntil: '2026-03-01' });
    const late = await answerEstimate(context, job, { ...yes, estimate: entry });
    expect(late.said).toEqual([
      'The estimate was valid until 1 March 2026; it was accepted on 2 March 2026.',
    ]);
    const no = await answerEstimate(context, job, { ...yes, answer: 'declined', estimate: entry });
    expect(no.said).toEqual(['This stands in place of the answer of 2 March 2026: accepted by Ines Okafor.']);
    expect(estimateStanding(no.job)).toMatchObject({ answer: { answer: 'declined' }, accepted: undefined });
  });

  it('is refused for an older version unless that is said', async () => {
    const { entry } = await makeEstimate(context, job, estimate);
    await makeEstimate(context, job, estimate);
    const before = await entryCount();
    await expect(answerEstimate(context, job, { ...yes, estimate: entry })).rejects.toThrow(
      'version 2 is the last, and an answer to version 1 was found',
    );
    expect(await entryCount()).toBe(before);
    const { job: state, said } = await answerEstimate(context, job, {
      ...yes,
      estimate: entry,
      isOlderVersionMeant: true,
    });
    expect(said).toEqual(['This answers version 1; version 2 was made after it.']);
    expect(estimateStanding(state).accepted?.estimate.version).toBe(1);
  });

  it('names conditional lines of that version only, and only with a yes', async () => {
    const { entry } = await makeEstimate(context, job, estimate);
    const answer = (change: Partial<FactOf<'estimate-answered'>>) =>
      answerEstimate(context, job, { ...yes, estimate: entry, ...change });
    await expect(answer({ conditionalLines: ['stringing'] })).rejects.toThrow(
      "conditional lines of version 1 are needed (bridge), 'stringing' was found",
    );
    await expect(answer({ conditionalLines: ['bridge', 'bridge'] })).rejects.toThrow('twice');
    await expect(answer({ answer: 'declined', conditionalLines: ['bridge'] })).rejects.toThrow('declined');
    await expect(answer({ estimate: newUlid(new Date(0), () => 0.1) })).rejects.toThrow('none of that id');
    expect((await readJob(context, job)).estimateAnswers).toEqual([]);
  });
});

describe('answers to the change order', () => {
  it('are summed apart: agreed, declined and waiting', async () => {
    const damage = (priceMinorUnits: number | undefined): FactOf<'damage-found'> => ({
      kind: 'damage-found',
      v: 1,
      place: {},
      what: 'a loose rib',
      gravity: 'mend before stringing',
      whatToDo: 'glue it',
      reason: 'it lay under the strings',
      ...(priceMinorUnits === undefined ? {} : { priceMinorUnits, currency: 'EUR' }),
    });
    const { entries } = await addFacts(context, job, [
      damage(1000),
      damage(200),
      damage(undefined),
      damage(5),
    ]);
    const [first, second, third] = entries.map(({ id }) => id);
    const say = (one: Ulid, answer: 'agreed' | 'declined') =>
      answerChange(context, job, { damage: one, answer, name: 'Ines Okafor', on: '2026-03-05' });
    await say(first!, 'declined');
    const again = await say(first!, 'agreed');
    expect(again.said).toEqual([
      'This stands in place of the answer of 5 March 2026: declined by Ines Okafor.',
    ]);
    await say(second!, 'declined');
    const unpriced = await say(third!, 'agreed');
    expect(unpriced.said).toEqual([
      'This was agreed before anybody priced it: tell the customer the price before the work is done.',
    ]);
    const { agreed, declined, waiting } = changeOrderByAnswer(unpriced.job);
    expect(agreed).toMatchObject({ prices: [{ currency: 'EUR', minorUnits: 1000 }], withoutPrice: 1 });
    expect(declined.prices).toEqual([{ currency: 'EUR', minorUnits: 200 }]);
    expect(waiting.prices).toEqual([{ currency: 'EUR', minorUnits: 5 }]);
    await expect(
      say(
        newUlid(new Date(0), () => 0.1),
        'agreed',
      ),
    ).rejects.toThrow('change order is needed');
  });
});

describe('noting hours', () => {
  it('takes the usual steps and the labour lines of the estimate, and refuses a slip of the pen', async () => {
    const hours = (step: string) =>
      recordHours(context, job, { labourStep: step, minutes: 60, isFinished: true });
    await hours('stringing');
    expect((await hours('stringing')).said).toEqual([
      'This step was said to be finished before; the time is added to it.',
    ]);
    await expect(hours('bridge')).rejects.toThrow("'bridge' was found");
    await makeEstimate(context, job, estimate);
    expect((await hours('bridge')).job.hoursWorked).toHaveLength(3);
    await expect(hours('stringin')).rejects.toThrow('Choose one');
  });
});
