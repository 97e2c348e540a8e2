import { foldJob } from '@becket/journal';
import { draftEstimate, estimateTotals, makeEstimate } from '@becket/tasks';
import { describe, expect, it } from 'vitest';
import { testContext, testJob } from '../../testing/test-job.ts';
import {
  basisPointsOf,
  estimateOf,
  hoursText,
  keepRates,
  keptRates,
  linesOfDraft,
  linesOfEstimate,
  minutesOf,
  type RatesForm,
  ratesOf,
  ratesOfEstimate,
} from './estimate-state.ts';

const rates: RatesForm = {
  currency: 'eur',
  hourlyRate: '64,00',
  labourTax: '19',
  materialsTax: '19 %',
  pricesIncludeTax: false,
};
const head = { validUntil: '', workingDays: '', note: '' };

describe('hours and taxes as they are typed', () => {
  it.each([
    ['2', 120],
    ['2,5', 150],
    ['2:20', 140],
    ['0.25', 15],
  ])('%s is %i minutes, and is written back', (typed, minutes) => {
    expect(minutesOf(typed)).toBe(minutes);
    expect(minutesOf(hoursText(minutes))).toBe(minutes);
  });

  it('asks for a tax that nobody named: empty is not 0 %', () => {
    expect(basisPointsOf('0', 'the tax')).toBe(0);
    expect(basisPointsOf('7,7', 'the tax')).toBe(770);
    expect(() => basisPointsOf('', 'the tax on labour')).toThrow(/the tax on labour from 0 to 100 %/);
  });
});

describe('the estimate on the screen', () => {
  it('starts from a draft, names what is not priced, and becomes a version once it is', async () => {
    const context = testContext();
    const id = await testJob(context);
    const job = foldJob((await context.store.entries(id)).entries);
    const lines = linesOfDraft(draftEstimate(job, { rates: ratesOf(rates) }));
    const first = estimateOf(lines, rates, head);
    expect(first.estimate).toBeUndefined();
    expect(first.problems.get('tuning-pins')).toMatch(/price of one is needed/);
    expect(first.problems.has('stringing')).toBe(false);

    const priced = lines.map((line) =>
      line.id === 'tuning-pins'
        ? { ...line, price: '0.95' }
        : { ...line, isLeftOut: line.group !== 'labour' },
    );
    const { estimate, problems } = estimateOf(priced, rates, { ...head, workingDays: '12' });
    expect(problems.size).toBe(0);
    // 238 strings: 26 notes of two and 62 of three; 238 × 0.95 = 226.10, worked by hand.
    expect(estimateTotals(estimate!).amounts.get('tuning-pins')).toBe(22610);
    const { job: after, version } = await makeEstimate(context, id, estimate!);
    expect(version).toBe(1);

    const again = linesOfEstimate(after.estimates[0]!);
    expect(
      estimateOf(again, ratesOfEstimate(after.estimates[0]!), { ...head, workingDays: '12' }).estimate,
    ).toEqual(estimate);
  });

  it('remembers the rates of this device, and starts anew when they cannot be read', () => {
    const kept = new Map<string, string>();
    keepRates({ setItem: (name, value) => void kept.set(name, value) }, rates);
    expect(keptRates({ getItem: (name) => kept.get(name) ?? null })).toEqual(rates);
    expect(keptRates({ getItem: () => '{' }).currency).toBe('EUR');
  });
});
