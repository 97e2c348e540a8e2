import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Entry } from '../entry.ts';
import type { Fact } from '../facts/index.ts';
import { foldAnew, foldJob } from '../fold/fold-job.ts';
import { mergeJournals } from '../fold/order.ts';
import { arbitraryJournal, entryOf, ulidFrom, wireReading } from '../testing/arbitrary-entries.ts';
import { asFoundRecord } from './as-found-record.ts';

const described: Fact = {
  kind: 'piano-described',
  v: 1,
  form: 'grand',
  firstKey: 1,
  lastKey: 88,
  referencePitch_hz: 440,
};
const micrometer = (resolution: number): Fact => ({
  kind: 'instrument-described',
  v: 1,
  instrument: 'micrometer',
  resolution,
  unit: 'mm',
});

/** A described piano, with readings by an instrument whose description changes, and answers for a note or for one string. */
const described88: fc.Arbitrary<Entry[]> = arbitraryJournal.map(([opened, ...rest]) => [
  opened!,
  entryOf(900, 1, described),
  ...rest.map(({ fact, ...entry }, index): Entry => {
    const step = index + 2;
    if (index % 9 === 5) return { ...entry, step, fact: micrometer(0.001 * (1 + (index % 4))) };
    if (fact.kind === 'reading' && index % 4 === 1)
      return { ...entry, step, fact: { ...(fact as Fact & object), instrument: 'micrometer' } as Fact };
    if (fact.kind === 'reading' && index % 4 === 2) {
      const { place } = fact as Extract<Fact, { kind: 'reading' }>;
      const answer = { kind: 'reading-absent', v: 1, quantity: 'wire-diameter', answer: 'none' } as const;
      return {
        ...entry,
        step,
        fact: { ...answer, place: index % 8 === 2 ? { ...place, string: 1 } : place },
      };
    }
    return { ...entry, step, fact };
  }),
]);

it('a record of which most notes are kept is the one that is worked out whole, after every entry', () => {
  fc.assert(
    fc.property(described88, (journal) => {
      for (let count = 2; count <= journal.length; count += 1) {
        const part = journal.slice(0, count);
        const grown = asFoundRecord(foldJob(part));
        // Entries that are other objects share nothing with those before.
        expect(grown).toEqual(asFoundRecord(foldAnew(mergeJournals([structuredClone(part)]))));
      }
    }),
  );
});

it('a further reading makes one note anew, and leaves the objects of the others', () => {
  const journal = [
    entryOf(0, 1, { kind: 'job-opened', v: 1, title: 'a job' }),
    entryOf(1, 2, described),
    entryOf(2, 3, wireReading(40, 0.001)),
    entryOf(3, 4, wireReading(41, 0.001)),
  ];
  const before = asFoundRecord(foldJob(journal)).notes;
  const after = asFoundRecord(foldJob([...journal, entryOf(4, 5, wireReading(41, 0.00102))])).notes;
  expect(after.filter((note, index) => note !== before[index]).map(({ key }) => key)).toEqual([41]);
  const corrected = [...journal, entryOf(5, 6, wireReading(40, 0.0011, ulidFrom(1002)))];
  expect(asFoundRecord(foldJob(corrected)).notes[39]?.figures['wire-diameter']?.value).toBe(0.0011);
});

it('one state has one record', () => {
  const job = foldJob([
    entryOf(0, 1, { kind: 'job-opened', v: 1, title: 'a job' }),
    entryOf(1, 2, described),
  ]);
  expect(asFoundRecord(job)).toBe(asFoundRecord(job));
});
