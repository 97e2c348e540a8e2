import { minorUnits } from '@becket/core';
import type { Job } from '@becket/journal';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { openDemoJob } from '../demo/open-demo-job.ts';
import { memoryContext } from '../testing/memory-context.ts';
import { draftEstimate } from './estimate.ts';
import { pianoCounts } from './labour-steps.ts';
import { learnedHours } from './learned-hours.ts';

let demo: Job;
beforeAll(async () => {
  demo = await openDemoJob(memoryContext());
});

type Worked = readonly [step: string, minutes: number, isFinished?: boolean];
const jobWith = (...hours: readonly Worked[]): Job => ({
  ...demo,
  hoursWorked: hours.map(([labourStep, minutes, isFinished = false]) => ({
    kind: 'hours-worked',
    v: 1,
    labourStep,
    minutes,
    isFinished,
    entry: '',
    step: 0,
    at: '',
    by: '',
  })),
});

describe('learnedHours()', () => {
  it('adds up all time of a step once it is finished, and tells it by the string', () => {
    const { strings } = pianoCounts(demo);
    expect(learnedHours([jobWith(['stringing', 300], ['stringing', 400, true])])).toEqual([
      {
        step: 'stringing',
        per: 'string',
        median_minutes: 700 / strings,
        low_minutes: 700 / strings,
        high_minutes: 700 / strings,
        jobs: 1,
        leftOut: 0,
      },
    ]);
  });

  it('does not learn from a step that nobody said is finished', () => {
    expect(learnedHours([jobWith(['stringing', 300], ['clean', 100, true])]).map(({ step }) => step)).toEqual(
      ['clean'],
    );
    expect(learnedHours([])).toEqual([]);
  });

  it('tells the middle, the least and the most of several jobs; half-way for an even number', () => {
    const of = (...minutes: number[]) =>
      learnedHours(minutes.map((own) => jobWith(['clean', own, true]))).map((one) => [
        one.low_minutes,
        one.median_minutes,
        one.high_minutes,
        one.jobs,
      ]);
    expect(of(400, 100, 250)).toEqual([[100, 250, 400, 3]]);
    expect(of(400, 100, 250, 200)).toEqual([[100, 225, 400, 4]]);
  });

  it('leaves out a job whose strings are not all described, and says so', () => {
    const undescribed = { ...jobWith(['stringing', 9000, true], ['clean', 60, true]), unisons: new Map() };
    const learned = learnedHours([undescribed, jobWith(['stringing', 500, true])]);
    expect(learned.find(({ step }) => step === 'stringing')).toMatchObject({
      step: 'stringing',
      jobs: 1,
      leftOut: 1,
    });
    expect(learnedHours([undescribed]).map(({ step }) => step)).toEqual(['clean']);
  });

  it('gives a step outside the list by the job, after the others', () => {
    expect(
      learnedHours([jobWith(['zinc', 10, true], ['bridge', 90, true], ['clean', 1, true])]).map(
        ({ step, per }) => [step, per],
      ),
    ).toEqual([
      ['clean', 'job'],
      ['bridge', 'job'],
      ['zinc', 'job'],
    ]);
  });

  it('proposes for a like piano the time that its jobs took, rounded up to a quarter of an hour', () => {
    const rates = {
      currency: 'EUR',
      pricesIncludeTax: true,
      hourlyRate: minorUnits(6000),
      labourTax_basisPoints: 0,
      materialsTax_basisPoints: 0,
    };
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), (minutes) => {
        const learned = learnedHours([jobWith(['stringing', minutes, true])]);
        const { lines, because } = draftEstimate(demo, { rates, learned });
        const { amount } = lines.find(({ id }) => id === 'stringing')!;
        const proposed = amount.by === 'time' ? amount.minutes : Number.NaN;
        expect(proposed % 15).toBe(0);
        expect(proposed).toBeGreaterThanOrEqual(minutes - 1e-6);
        expect(proposed - minutes).toBeLessThan(15 + 1e-6);
        expect(because.get('stringing')).toContain('1 finished job of this shop');
      }),
      { seed: 1 },
    );
  });
});
