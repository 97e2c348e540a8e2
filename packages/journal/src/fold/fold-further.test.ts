import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Entry } from '../entry.ts';
import type { Fact } from '../facts/index.ts';
import { arbitraryJournal, entryOf, ulidFrom, wireReading } from '../testing/arbitrary-entries.ts';
import { foldFurther } from './fold-further.ts';
import { foldAnew, foldJob } from './fold-job.ts';
import { mergeJournals } from './order.ts';

/** Entries that come one after the other, as on one device, with an answer here and there instead of a reading. */
const typedOn: fc.Arbitrary<Entry[]> = arbitraryJournal.map((journal) =>
  journal.map((entry, index): Entry => {
    const { fact } = entry;
    const isAnswer = fact.kind === 'reading' && index % 5 === 4;
    const answer: Fact = {
      kind: 'reading-absent',
      v: 1,
      quantity: 'wire-diameter',
      place: { key: 1 + index },
      answer: 'unknown',
    };
    return { ...entry, step: index + 1, fact: isAnswer ? answer : fact };
  }),
);

function nameOf(fact: Entry['fact']): 'reading' | 'correction' | 'answer' | 'withdrawal' {
  if (fact.kind === 'withdrawn') return 'withdrawal';
  if (fact.kind === 'reading-absent') return 'answer';
  return 'replaces' in fact && fact.replaces !== undefined ? 'correction' : 'reading';
}

describe('folding one entry further', () => {
  it('gives what folding the whole journal gives, after every entry', () => {
    const quick = { reading: 0, correction: 0, answer: 0, withdrawal: 0 };
    fc.assert(
      fc.property(typedOn, (journal) => {
        for (let count = 1; count < journal.length; count += 1) {
          const before = foldAnew(mergeJournals([journal.slice(0, count)]));
          const after = foldFurther(before, journal[count]!);
          if (after === undefined) continue;
          quick[nameOf(journal[count]!.fact)] += 1;
          expect(after).toEqual(foldAnew(mergeJournals([journal.slice(0, count + 1)])));
        }
      }),
      { numRuns: 1000 },
    );
    // Without this the property would hold of a fold that never takes the quick way.
    for (const count of Object.values(quick)) expect(count).toBeGreaterThan(20);
  });

  it('folds a growing journal as one that is folded at once, whatever order and pieces it comes in', () => {
    fc.assert(
      fc.property(
        fc.oneof(typedOn, arbitraryJournal),
        fc.array(fc.integer({ min: 1, max: 6 }), { minLength: 1 }),
        (journal, pieces) => {
          for (let count = 1, turn = 0; count <= journal.length; turn += 1) {
            const part = journal.slice(0, count);
            expect(foldJob(part)).toEqual(foldAnew(mergeJournals([part])));
            count += pieces[turn % pieces.length]!;
          }
        },
      ),
    );
  });

  it('takes out what a correction replaces, and leaves the correction of a correction to the whole fold', () => {
    const journal = [
      entryOf(0, 1, { kind: 'job-opened', v: 1, title: 'a job' }),
      entryOf(1, 2, wireReading(40, 0.001)),
    ];
    const job = foldAnew(journal);
    const corrected = foldFurther(job, entryOf(2, 3, wireReading(40, 0.00104, ulidFrom(1001))));
    expect(corrected?.readings.map(({ value_si }) => value_si)).toEqual([0.00104]);
    const taken: Fact = { kind: 'withdrawn', v: 1, entry: ulidFrom(1002), reason: 'undo' };
    expect(foldFurther(corrected!, entryOf(3, 4, taken))).toBeUndefined();
  });
});

describe('foldJob() of a journal that was folded before', () => {
  const journal = [
    entryOf(0, 1, { kind: 'job-opened', v: 1, title: 'a job' }),
    entryOf(1, 2, wireReading(40, 0.001)),
  ];

  it('gives the same object, so that what hangs on it need not be worked out again', () => {
    expect(foldJob([...journal])).toBe(foldJob(journal));
  });

  it('keeps the readings that did not change as the objects they were', () => {
    const [before] = foldJob(journal).readings;
    const { readings } = foldJob([...journal, entryOf(2, 3, wireReading(41, 0.001))]);
    expect(readings[0]).toBe(before);
    expect(readings).toHaveLength(2);
  });

  it('does not take another journal that begins alike for it', () => {
    const [opened] = journal;
    const other = [opened!, entryOf(7, 2, wireReading(50, 0.0011))];
    expect(foldJob(other).readings.map(({ place }) => place.key)).toEqual([50]);
    expect(foldJob(journal).readings.map(({ place }) => place.key)).toEqual([40]);
  });
});
