import {
  findingGravities,
  findingRemedies,
  type Job,
  repairStates,
  surveyThingNames,
  verdicts,
} from '@becket/journal';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { appraisalAnnexPaper } from '../appraisal-annex/appraisal-annex-paper.ts';
import { estimatePaper } from '../estimate/estimate-paper.ts';
import { renderCsv } from '../render/csv.ts';
import { appraisedJob } from '../testing/appraised-job.ts';
import { testOptions } from '../testing/paper-options.ts';
import { appraisalReportPaper } from './appraisal-report-paper.ts';

/* Whatever a survey, a decision and an estimate hold, the papers of an appraisal can be made and say nothing that is not a word. */

const standing = { entry: 'e', step: 1, at: '2026-05-04T08:00:00.000Z', by: 'Ada' };
const text = fc.string({ minLength: 1, maxLength: 40 }).filter((one) => one.trim() !== '');
const maybe = <T>(one: fc.Arbitrary<T>) => fc.option(one, { nil: undefined });
const place = fc.record(
  { key: fc.integer({ min: 1, max: 88 }), section: text, point: text },
  { requiredKeys: [] },
);
const digest = fc.constantFrom('a', 'b', 'f').map((letter) => letter.repeat(64));
const finding = fc.record({
  kind: fc.constant('finding' as const),
  v: fc.constant(1 as const),
  thing: fc.constantFrom(...surveyThingNames),
  place,
  answer: fc.oneof(
    fc.record({
      is: fc.constant('seen' as const),
      what: text,
      gravity: fc.constantFrom(...findingGravities),
      whatToDo: fc.constantFrom(...findingRemedies),
      extent_m: maybe(fc.double({ min: 1e-6, max: 3, noNaN: true })),
      repair: maybe(fc.constantFrom(...repairStates)),
    }),
    fc.record({ is: fc.constant('sound' as const), note: maybe(text) }),
    fc.record({
      is: fc.constantFrom('could not be seen' as const, 'does not apply' as const),
      note: maybe(text),
    }),
  ),
  photos: maybe(fc.array(digest, { maxLength: 3 })),
  copiedFrom: maybe(fc.constant('2019-05-03')),
});
const decision = fc.record({
  kind: fc.constant('decision-made' as const),
  v: fc.constant(1 as const),
  verdict: fc.constantFrom(...verdicts),
  conditions: fc.array(text, { maxLength: 3 }),
  because: text,
  advised: fc.constantFrom(...verdicts),
});
const minor = fc.integer({ min: -1e9, max: 1e9 });
const estimate = fc.record({
  kind: fc.constant('estimate-made' as const),
  v: fc.constant(1 as const),
  version: fc.integer({ min: 1, max: 9 }),
  currency: fc.constantFrom('EUR', 'JPY', 'KWD', 'HUF', 'CLF'),
  pricesIncludeTax: fc.boolean(),
  lines: fc.uniqueArray(
    fc.record({
      id: text,
      group: fc.constantFrom('labour' as const, 'materials' as const, 'other' as const),
      what: text,
      amount: fc.oneof(
        fc.record({
          by: fc.constant('time' as const),
          minutes: fc.integer({ min: 0, max: 100_000 }),
          hourlyRateMinorUnits: minor,
        }),
        fc.record({
          by: fc.constant('quantity' as const),
          quantity_thousandths: fc.integer({ min: 0, max: 1e6 }),
          unit: text,
          unitPriceMinorUnits: minor,
        }),
      ),
      taxRate_basisPoints: fc.integer({ min: 0, max: 10_000 }),
      ifFound: maybe(text),
    }),
    { minLength: 1, maxLength: 8, selector: ({ id }) => id },
  ),
  validUntil: maybe(fc.constantFrom('2026-01-01', '2027-01-01')),
  workingDays: maybe(fc.integer({ min: 0, max: 1000 })),
});

const jobs: fc.Arbitrary<Job> = fc
  .record({
    findings: fc.array(finding, { maxLength: 8 }),
    decisions: fc.array(decision, { maxLength: 2 }),
    estimates: fc.array(estimate, { maxLength: 2 }),
    answer: fc.constantFrom('accepted' as const, 'declined' as const, undefined),
  })
  .map(({ findings, decisions, estimates, answer }) => {
    const made = estimates.map((one, index) => ({ ...standing, ...one, entry: `estimate ${index}` }));
    const last = made.at(-1);
    return {
      ...appraisedJob(),
      findings: findings.map((one) => ({ ...standing, ...one })),
      decisions: decisions.map((one) => ({ ...standing, ...one })),
      estimates: made,
      estimateAnswers:
        last === undefined || answer === undefined
          ? []
          : [
              {
                ...standing,
                kind: 'estimate-answered' as const,
                v: 1 as const,
                estimate: last.entry,
                answer,
                name: 'Ines Okafor',
                on: '2026-05-06',
                conditionalLines: last.lines
                  .filter(({ ifFound }) => ifFound !== undefined)
                  .map(({ id }) => id),
              },
            ],
    };
  });

describe('the papers of any appraisal', () => {
  it('can be made, and print no word of the machine', () => {
    fc.assert(
      fc.property(jobs, fc.constantFrom('mm' as const, 'in' as const), (job, firstUnit) => {
        const options = { ...testOptions, firstUnit, isSealIntact: undefined };
        for (const tree of [
          appraisalReportPaper(job, options),
          appraisalAnnexPaper(job, options),
          estimatePaper(job, options),
        ]) {
          const own = JSON.stringify(tree.blocks);
          expect(own).not.toMatch(/\bundefined\b|\bNaN\b|\[object|-0\.0+\b/);
          expect(own).not.toMatch(/:null\b/);
          const { columns, rows } = tree.machineTable;
          for (const row of rows) expect(row).toHaveLength(columns.length);
          expect(renderCsv(tree).length).toBeGreaterThan(10);
        }
      }),
      { seed: 1, numRuns: 150 },
    );
  });

  it('has every photo it names by number among its photos, or says that it is gone', () => {
    fc.assert(
      fc.property(jobs, (job) => {
        const { blocks } = appraisalReportPaper(job, testOptions);
        const named = new Set(
          blocks.flatMap((block) =>
            block.is === 'list'
              ? block.items.flatMap((item) =>
                  (/Photos? ([\d, and]+)\.$/.exec(item)?.[1]?.match(/\d+/g) ?? []).map(Number),
                )
              : [],
          ),
        );
        const shown = blocks.flatMap((block) =>
          block.is === 'photos'
            ? block.photos.map(({ title }) => Number(/^Photo (\d+)/.exec(title)?.[1]))
            : [],
        );
        const gone = blocks.flatMap((block) =>
          block.is === 'paragraph' && block.text.startsWith('No longer with the job')
            ? (block.text.match(/\d+/g) ?? []).map(Number)
            : [],
        );
        for (const number of named) expect([...shown, ...gone]).toContain(number);
      }),
      { seed: 2, numRuns: 100 },
    );
  });
});
