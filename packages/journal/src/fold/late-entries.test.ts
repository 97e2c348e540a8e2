import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Entry } from '../entry.ts';
import { type Fact, isAsFoundFact } from '../facts/index.ts';
import { isSealIntact, sealOf } from '../strip/seal.ts';
import { arbitraryJournal, entryOf, ulidFrom, wireReading } from '../testing/arbitrary-entries.ts';
import { foldAnew, foldJob } from './fold-job.ts';
import { compareEntries } from './order.ts';

const opened = entryOf(0, 1, { kind: 'job-opened', v: 1, title: 'a job' });
const read = entryOf(1, 2, wireReading(40, 0.001));
const withdrawal = (number: number, step: number, entry: string): Entry =>
  entryOf(number, step, { kind: 'withdrawn', v: 1, entry, reason: 'on another device' }, 'Bo');

/** The journal of the device that sealed, the seal last. */
function sealed(...known: Entry[]): Entry[] {
  const step = Math.max(...known.map((one) => one.step)) + 1;
  return [...known, entryOf(900, step, { kind: 'sealed', v: 1, ...sealOf(known) })];
}
const amended = (entries: readonly Entry[]) =>
  foldJob(entries).amendments.map(({ entry, by, reason }) => [entry, by, reason]);

describe('foldJob() of what another device made before it knew of the seal', () => {
  const own = [opened, read, entryOf(2, 3, wireReading(41, 0.001)), entryOf(3, 4, wireReading(42, 0.001))];

  it('takes a reading of an earlier step for an amendment: it is not under the seal', () => {
    const late = entryOf(50, 3, wireReading(43, 0.0011), 'Bo');
    expect(amended([...sealed(...own), late])).toEqual([[late.id, 'Bo', undefined]]);
    expect(amended(sealed(...own, late))).toEqual([]);
  });

  it('takes the correction of a sealed reading for an amendment, and the seal stays whole', () => {
    const late = entryOf(50, 3, wireReading(40, 0.0011, read.id), 'Bo');
    const entries = [...sealed(...own), late];
    const job = foldJob(entries);
    expect(amended(entries)).toEqual([[late.id, 'Bo', 'read again']]);
    expect(job.readings.map(({ entry }) => entry)).not.toContain(read.id);
    expect(isSealIntact(job.seal!, entries)).toBe(true);
  });

  it('takes the withdrawal of a sealed reading for an amendment', () => {
    const late = withdrawal(50, 3, read.id);
    expect(amended([...sealed(...own), late])).toEqual([[late.id, 'Bo', 'on another device']]);
  });

  it('amends nothing by what the sealing device itself corrected, took out or brought back before', () => {
    const journal = sealed(
      ...own,
      entryOf(4, 5, wireReading(40, 0.0011, read.id)),
      withdrawal(5, 6, ulidFrom(1002)),
      withdrawal(6, 7, ulidFrom(1003)),
      withdrawal(7, 8, ulidFrom(1006)),
    );
    expect(foldJob(journal).readings).toHaveLength(2);
    expect(amended(journal)).toEqual([]);
  });

  it('names a correction that is undone after the seal once, and what is brought back by undoing', () => {
    const correction = entryOf(4, 5, wireReading(40, 0.0011, read.id));
    const undone = withdrawal(5, 20, correction.id);
    expect(amended([...sealed(...own, correction), undone])).toEqual([
      [undone.id, 'Bo', 'on another device'],
    ]);
    const takenOut = withdrawal(4, 5, read.id);
    const broughtBack = withdrawal(5, 20, takenOut.id);
    const journal = [...sealed(...own, takenOut), broughtBack];
    expect(foldJob(journal).readings).toHaveLength(3);
    expect(amended(journal)).toEqual([[broughtBack.id, 'Bo', 'on another device']]);
  });

  it('folds two withdrawals that name each other', () => {
    const journal = [
      ...sealed(...own),
      withdrawal(50, 20, ulidFrom(1051)),
      withdrawal(51, 21, ulidFrom(1050)),
    ];
    expect(amended(journal)).toEqual([]);
  });

  it('lets nothing that the seal does not cover stand without naming it, whoever knew what', () => {
    fc.assert(
      fc.property(
        arbitraryJournal.map((all) => all.filter(({ fact }) => fact.kind !== 'sealed')),
        fc.array(fc.boolean(), { minLength: 40, maxLength: 40 }),
        (journal, isKnown) => {
          const known = journal.filter((_, index) => index === 0 || isKnown[index % 40]);
          const unknown = journal.filter((entry) => !known.includes(entry));
          const entries = [...sealed(...known), ...unknown].sort(compareEntries);
          const job = foldAnew(entries);
          const named = new Set(job.amendments.map(({ entry }) => entry));
          const standing = unknown.filter(
            ({ id, fact }) => isAsFoundFact(fact as Fact) && !job.withdrawnEntries.has(id),
          );
          // What was out of the record before the seal is brought back by a withdrawal after it, which is named.
          const at = entries.findIndex(({ fact }) => fact.kind === 'sealed');
          const goneBefore = foldAnew(entries.slice(0, at)).withdrawnEntries;
          const isBroughtBack = job.amendments.some(({ kind }) => kind === 'withdrawn');
          expect(
            standing.filter(({ id }) => !named.has(id) && !(isBroughtBack && goneBefore.has(id))),
          ).toEqual([]);
          if (unknown.length === 0) expect(job.amendments).toEqual([]);
        },
      ),
    );
  });
});
