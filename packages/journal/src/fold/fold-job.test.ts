import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonicalText } from '../canonical.ts';
import type { Entry } from '../entry.ts';
import { arbitraryJournal, entryOf, jobId, ulidFrom, wireReading } from '../testing/arbitrary-entries.ts';
import { foldJob } from './fold-job.ts';
import type { Job } from './job.ts';
import { compareEntries, mergeJournals, nextStep } from './order.ts';

/** A job as comparable text: maps and sets spelled out. */
function asText(job: Job): string {
  return canonicalText({
    ...job,
    unisons: [...job.unisons],
    withdrawnEntries: [...job.withdrawnEntries].sort(),
  });
}

const shuffled = (entries: readonly Entry[], seed: readonly number[]): Entry[] =>
  entries
    .map((entry, index) => ({ entry, place: seed[index % Math.max(1, seed.length)] ?? 0, index }))
    .sort((a, b) => a.place - b.place || b.index - a.index)
    .map(({ entry }) => entry);

describe('foldJob()', () => {
  it('folds alike whatever order the entries arrive in, and however often', () => {
    fc.assert(
      fc.property(arbitraryJournal, fc.array(fc.nat(), { minLength: 1 }), (journal, seed) => {
        const straight = asText(foldJob(journal));
        expect(asText(foldJob(shuffled(journal, seed)))).toBe(straight);
        expect(asText(foldJob([...journal, ...shuffled(journal, seed)]))).toBe(straight);
      }),
    );
  });

  it('never shows a withdrawn entry, and counts every entry all the same', () => {
    fc.assert(
      fc.property(arbitraryJournal, (journal) => {
        const job = foldJob(journal);
        expect(job.entryCount).toBe(journal.length);
        for (const reading of job.readings) expect(job.withdrawnEntries.has(reading.entry)).toBe(false);
      }),
    );
  });

  it('takes a corrected reading out and keeps the correction', () => {
    const journal = [
      entryOf(0, 1, { kind: 'job-opened', v: 1, title: 'a job' }),
      entryOf(1, 2, wireReading(40, 0.00041)),
      entryOf(2, 3, wireReading(40, 0.00104, ulidFrom(1001))),
    ];
    expect(foldJob(journal).readings.map((reading) => reading.value_si)).toEqual([0.00104]);
  });

  it('a correction of a correction does not bring the first reading back; taking one back does', () => {
    const journal = [
      entryOf(0, 1, { kind: 'job-opened', v: 1, title: 'a job' }),
      entryOf(1, 2, wireReading(40, 0.0015)),
      entryOf(2, 3, wireReading(40, 0.00105, ulidFrom(1001))),
      entryOf(3, 4, wireReading(40, 0.00104, ulidFrom(1002))),
    ];
    const values = (entries: readonly Entry[]) =>
      foldJob(entries).readings.map((reading) => reading.value_si);
    expect(values(journal)).toEqual([0.00104]);
    const taken = (id: number, step: number, target: number) =>
      entryOf(id, step, { kind: 'withdrawn', v: 1, entry: ulidFrom(1000 + target), reason: 'undo' });
    expect(values([...journal, taken(4, 5, 3)])).toEqual([0.00105]);
    expect(values([...journal, taken(4, 5, 3), taken(5, 6, 2)])).toEqual([0.0015]);
  });

  it('undo is a withdrawal, and redo is the withdrawal of the withdrawal', () => {
    const journal = [
      entryOf(0, 1, { kind: 'job-opened', v: 1, title: 'a job' }),
      entryOf(1, 2, wireReading(40, 0.001)),
      entryOf(2, 3, { kind: 'withdrawn', v: 1, entry: ulidFrom(1001), reason: 'undo' }),
    ];
    expect(foldJob(journal).readings).toHaveLength(0);
    const redone = [
      ...journal,
      entryOf(3, 4, { kind: 'withdrawn', v: 1, entry: ulidFrom(1002), reason: 'redo' }),
    ];
    expect(foldJob(redone).readings).toHaveLength(1);
  });

  it('cannot withdraw what came after it, so that no two entries take each other out', () => {
    const journal = [
      entryOf(0, 1, { kind: 'job-opened', v: 1, title: 'a job' }),
      entryOf(1, 2, { kind: 'withdrawn', v: 1, entry: ulidFrom(1002), reason: 'too early' }),
      entryOf(2, 3, wireReading(40, 0.001)),
    ];
    expect(foldJob(journal).readings).toHaveLength(1);
  });

  it('keeps an entry of an unknown kind, and one of a later version, and shows them', () => {
    const later = entryOf(1, 2, { kind: 'holograph', v: 1, shape: 'round' } as never);
    const newer = entryOf(2, 3, { ...wireReading(40, 0.001), v: 9 } as never);
    const job = foldJob([entryOf(0, 1, { kind: 'job-opened', v: 1, title: 'a job' }), later, newer]);
    expect(job.unknownEntries).toEqual([later, newer]);
    expect(job.readings).toHaveLength(0);
  });

  it('notes what changes the as-found record after the seal, with its reason or without', () => {
    const journal = [
      entryOf(0, 1, { kind: 'job-opened', v: 1, title: 'a job' }),
      entryOf(1, 2, wireReading(40, 0.001)),
      entryOf(2, 3, { kind: 'sealed', v: 1, digest: 'a'.repeat(64), entries: 1, covers: [ulidFrom(1001)] }),
      entryOf(3, 4, wireReading(41, 0.001)),
      entryOf(4, 5, { kind: 'withdrawn', v: 1, entry: ulidFrom(1001), reason: 'wrong string' }),
    ];
    const { amendments, seal } = foldJob(journal);
    expect(seal?.entry).toBe(ulidFrom(1002));
    expect(amendments.map(({ reason }) => reason)).toEqual([undefined, 'wrong string']);
  });

  it('refuses an empty journal and a mixture of two jobs, in one sentence', () => {
    expect(() => foldJob([])).toThrow(RangeError);
    const stranger = { ...entryOf(1, 2, wireReading(40, 0.001)), job: ulidFrom(2) };
    expect(() => foldJob([entryOf(0, 1, { kind: 'job-opened', v: 1, title: 'a job' }), stranger])).toThrow(
      /several jobs/,
    );
  });
});

describe('mergeJournals()', () => {
  const part = (journal: readonly Entry[], bits: readonly boolean[]) =>
    journal.filter((_, index) => bits[index % Math.max(1, bits.length)] ?? true);
  const bits = fc.array(fc.boolean(), { minLength: 1, maxLength: 40 });

  it('is commutative, associative and idempotent', () => {
    fc.assert(
      fc.property(arbitraryJournal, bits, bits, bits, (journal, first, second, third) => {
        const [a, b, c] = [part(journal, first), part(journal, second), part(journal, third)];
        expect(mergeJournals([a, b])).toEqual(mergeJournals([b, a]));
        expect(mergeJournals([mergeJournals([a, b]), c])).toEqual(mergeJournals([a, mergeJournals([b, c])]));
        expect(mergeJournals([a, a])).toEqual(mergeJournals([a]));
      }),
    );
  });

  it('loses nothing and invents nothing', () => {
    fc.assert(
      fc.property(arbitraryJournal, bits, bits, (journal, first, second) => {
        const [a, b] = [part(journal, first), part(journal, second)];
        const ids = new Set([...a, ...b].map(({ id }) => id));
        expect(new Set(mergeJournals([a, b]).map(({ id }) => id))).toEqual(ids);
      }),
    );
  });

  it('refuses two entries of one id that differ, whatever the order of their fields', () => {
    const entry = entryOf(1, 2, wireReading(40, 0.001));
    const reordered = Object.fromEntries(Object.entries(entry).reverse()) as unknown as Entry;
    expect(mergeJournals([[entry], [reordered]])).toHaveLength(1);
    expect(() => mergeJournals([[entry], [{ ...entry, by: 'Bo' }]])).toThrow(/different content/);
  });
});

describe('the order of entries', () => {
  it('is by step, then by id, and total', () => {
    fc.assert(
      fc.property(arbitraryJournal, (journal) => {
        const ordered = [...journal].sort(compareEntries);
        for (let index = 1; index < ordered.length; index += 1) {
          expect(compareEntries(ordered[index - 1]!, ordered[index]!)).toBeLessThan(0);
        }
        expect(nextStep(journal)).toBe(Math.max(...journal.map(({ step }) => step)) + 1);
      }),
    );
  });

  it('gives the first step 1', () => expect(nextStep([])).toBe(1));
});

it('one job has one id', () => expect(jobId).toMatch(/^[0-7][0-9A-HJKMNP-TV-Z]{25}$/));
