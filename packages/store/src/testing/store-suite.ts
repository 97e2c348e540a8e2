import { type Entry, parseEntry } from '@becket/journal';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { CursorNotKnown, EntryChanged, type JournalStore } from '../port.ts';
import { arbitraryEntries, jobA, jobB, ulidFrom, wireEntries, wireEntry } from './journal-samples.ts';

/** One kind of store, as the suite needs it. */
export interface StoreUnderTest {
  /** A place with nothing in it. */
  readonly newPlace: () => string;
  readonly open: (place: string) => Promise<JournalStore>;
  /** Whether what was kept is there again after closing and opening. */
  readonly outlivesItself: boolean;
  /** Whether two can have the same place open at once. */
  readonly isShared: boolean;
}

/** What every store behind the port must do. */
export function describeStore(name: string, { newPlace, open, outlivesItself, isShared }: StoreUnderTest) {
  describe(`the ${name} store`, () => {
    let place: string;
    let store: JournalStore;
    const opened: JournalStore[] = [];
    const openHere = async (where: string): Promise<JournalStore> => {
      const one = await open(where);
      opened.push(one);
      return one;
    };
    beforeEach(async () => {
      place = newPlace();
      store = await openHere(place);
    });
    afterEach(async () => {
      for (const one of opened.splice(0)) await one.close();
    });
    /** The same place, opened anew; the same store where closing would lose it. */
    const reopened = async (): Promise<JournalStore> => {
      if (!outlivesItself) return store;
      for (const one of opened.splice(0)) await one.close();
      return openHere(place);
    };

    it('is empty at first: no jobs, no entries of a job it has never heard of', async () => {
      expect(await store.jobs()).toEqual([]);
      const { entries, cursor } = await store.entries(jobA);
      expect(entries).toEqual([]);
      expect((await store.entries(jobA, cursor)).entries).toEqual([]);
    });

    it('gives entries back as they were, in the order they came, also when it is opened again', async () => {
      await fc.assert(
        fc.asyncProperty(arbitraryEntries, fc.nat(), async (entries, cut) => {
          const where = newPlace();
          const first = await openHere(where);
          const half = cut % (entries.length + 1);
          await first.append(entries.slice(0, half));
          await first.append(entries.slice(half));
          await first.close();
          const again = outlivesItself ? await openHere(where) : first;
          for (const job of [jobA, jobB]) {
            const expected = entries.filter((entry) => entry.job === job);
            expect((await again.entries(job)).entries).toEqual(expected);
          }
        }),
        { numRuns: 25 },
      );
    });

    it('adds nothing when the same entries come again, in whatever parts', async () => {
      await fc.assert(
        fc.asyncProperty(
          fc.uniqueArray(fc.nat({ max: 30 }), { maxLength: 20 }),
          fc.uniqueArray(fc.nat({ max: 30 }), { maxLength: 20 }),
          async (some, others) => {
            const one = await openHere(newPlace());
            const first = some.map((number) => wireEntry(number));
            const second = others.map((number) => wireEntry(number));
            expect(await one.append(first)).toEqual({ added: first.length, known: 0 });
            const known = others.filter((number) => some.includes(number)).length;
            expect(await one.append(second)).toEqual({ added: second.length - known, known });
            expect(await one.append([...first, ...second])).toEqual({
              added: 0,
              known: first.length + second.length,
            });
            const kept = (await one.entries(jobA)).entries.map(({ id }) => id);
            expect(new Set(kept).size).toBe(kept.length);
            expect(kept).toHaveLength(first.length + second.length - known);
          },
        ),
        { numRuns: 25 },
      );
    });

    it('takes an entry that stands twice in one batch once', async () => {
      expect(await store.append([wireEntry(1), wireEntry(1)])).toEqual({ added: 1, known: 1 });
      expect((await store.entries(jobA)).entries).toEqual([wireEntry(1)]);
    });

    it('takes an entry with its fields in another order for the same one', async () => {
      await store.append([wireEntry(1)]);
      const turned = Object.fromEntries(Object.entries(wireEntry(1)).reverse()) as unknown as Entry;
      expect(await store.append([turned])).toEqual({ added: 0, known: 1 });
    });

    it('adds nothing of an empty batch', async () => {
      expect(await store.append([])).toEqual({ added: 0, known: 0 });
      expect(await store.jobs()).toEqual([]);
    });

    it('adds nothing at all when an entry of the batch is known with other content, wherever it stands', async () => {
      await store.append([wireEntry(500)]);
      await fc.assert(
        fc.asyncProperty(
          fc.nat({ max: 10 }),
          fc.constantFrom<Partial<Entry>>(
            { by: 'Bo' },
            { step: 7 },
            { job: jobB },
            { at: '2026-03-01T10:00:00.001Z' },
          ),
          async (position, change) => {
            const batch = wireEntries(10);
            batch.splice(position, 0, { ...wireEntry(500), ...change });
            const failure = await store.append(batch).catch((error: unknown) => error);
            expect(failure).toBeInstanceOf(EntryChanged);
            expect((failure as EntryChanged).entry).toBe(wireEntry(500).id);
            expect((await store.entries(jobA)).entries).toEqual([wireEntry(500)]);
            expect((await store.entries(jobB)).entries).toEqual([]);
            expect(await store.jobs()).toHaveLength(1);
          },
        ),
        { numRuns: 30 },
      );
      expect((await (await reopened()).entries(jobA)).entries).toEqual([wireEntry(500)]);
    });

    it('adds nothing of a batch that contradicts itself', async () => {
      await expect(store.append([wireEntry(1), { ...wireEntry(1), by: 'Bo' }])).rejects.toThrow(EntryChanged);
      expect(await store.jobs()).toEqual([]);
    });

    it('goes on after a refused batch', async () => {
      await store.append([wireEntry(1)]);
      await expect(store.append([wireEntry(2), { ...wireEntry(1), by: 'Bo' }])).rejects.toThrow(EntryChanged);
      expect(await store.append([wireEntry(2)])).toEqual({ added: 1, known: 0 });
      expect((await (await reopened()).entries(jobA)).entries).toEqual([wireEntry(1), wireEntry(2)]);
    });

    it('keeps facts of unknown kinds and later versions as they are', async () => {
      const strange = parseEntry({
        ...wireEntry(1),
        fact: { kind: 'holograph', v: 3, deep: { a: [1, null, 'ü\u0000"\\'] }, empty: {} },
      });
      const newer = parseEntry({ ...wireEntry(2), fact: { ...wireEntry(2).fact, v: 9, more: [true] } });
      await store.append([strange, newer]);
      expect((await (await reopened()).entries(jobA)).entries).toEqual([strange, newer]);
    });

    it('a reader that pages with its cursor while others append sees every entry once, in order', async () => {
      await fc.assert(
        fc.asyncProperty(
          fc.array(fc.record({ count: fc.nat({ max: 6 }), read: fc.boolean(), job: fc.boolean() }), {
            maxLength: 15,
          }),
          async (moves) => {
            const one = await openHere(newPlace());
            const written: Entry[] = [];
            const seen: Entry[] = [];
            let cursor: string | undefined;
            let next = 0;
            for (const { count, read, job } of [...moves, { count: 0, read: true, job: true }]) {
              const batch = wireEntries(count, { first: next, job: job ? jobA : jobB });
              next += count;
              const writing = one.append(batch);
              if (job) written.push(...batch);
              if (read) {
                const page = await one.entries(jobA, cursor);
                seen.push(...page.entries);
                cursor = page.cursor;
              }
              await writing;
            }
            seen.push(...(await one.entries(jobA, cursor)).entries);
            expect(seen).toEqual(written);
          },
        ),
        { numRuns: 25 },
      );
    });

    it('keeps a cursor good when it is opened again', async () => {
      await store.append(wireEntries(5));
      const { cursor } = await store.entries(jobA);
      const again = await reopened();
      await again.append(wireEntries(2, { first: 5 }));
      expect((await again.entries(jobA, cursor)).entries).toEqual(wireEntries(2, { first: 5 }));
    });

    it.each(['nonsense', '', '-1', '3', `7.${ulidFrom(1000)}`, `1.${ulidFrom(9)}`, `0.${ulidFrom(1000)}`])(
      'does not go on from a cursor it did not give: %j',
      async (cursor) => {
        await store.append(wireEntries(3));
        await expect(store.entries(jobA, cursor)).rejects.toThrow(CursorNotKnown);
      },
    );

    it('does not take the cursor of a store with another history for its own', async () => {
      const other = await openHere(newPlace());
      await other.append(wireEntries(3, { first: 10 }));
      const { cursor } = await other.entries(jobA);
      await store.append(wireEntries(5));
      await expect(store.entries(jobA, cursor)).rejects.toThrow(/from the beginning/);
    });

    it('lists each job with its entries counted and the time of the last by journal order, not by arrival', async () => {
      const late = { ...wireEntry(1, { step: 9 }), at: '2026-03-05T10:00:00.000Z' };
      const early = { ...wireEntry(2, { step: 3 }), at: '2026-03-09T10:00:00.000Z' };
      const other = { ...wireEntry(3, { job: jobB }), at: '2026-03-02T10:00:00.000Z' };
      await store.append([late, early, other]);
      const jobs = [...(await (await reopened()).jobs())].sort((a, b) => (a.job < b.job ? -1 : 1));
      expect(jobs).toEqual([
        { job: jobA, entries: 2, lastAt: late.at },
        { job: jobB, entries: 1, lastAt: other.at },
      ]);
    });

    it('keeps what it was given, whatever is done to the objects afterwards', async () => {
      const entry = wireEntry(1);
      await store.append([entry]);
      (entry.fact as { kind: string }).kind = 'changed';
      (entry as { by: string }).by = 'changed';
      const [given] = (await store.entries(jobA)).entries;
      // A store may hand out copies, or what cannot be changed.
      Reflect.set(given!, 'by', 'changed as well');
      Reflect.set((given!.fact as unknown as { place: object }).place, 'key', 88);
      expect((await store.entries(jobA)).entries).toEqual([wireEntry(1)]);
    });

    it('takes appends that are all under way at once, each whole and each once', async () => {
      const batches = Array.from({ length: 30 }, (_, index) => wireEntries(7, { first: index * 5 }));
      const results = await Promise.all(batches.map((batch) => store.append(batch)));
      const added = results.reduce((sum, result) => sum + result.added, 0);
      const { entries } = await (await reopened()).entries(jobA);
      const ids = entries.map(({ id }) => id);
      expect(ids).toHaveLength(29 * 5 + 7);
      expect(added).toBe(ids.length);
      expect(new Set(ids).size).toBe(ids.length);
    });

    it('takes a batch of 10,000 entries and gives them all back', async () => {
      const batch = wireEntries(10_000);
      expect(await store.append(batch)).toEqual({ added: 10_000, known: 0 });
      expect(await store.append(batch)).toEqual({ added: 0, known: 10_000 });
      const { entries, cursor } = await (await reopened()).entries(jobA);
      expect(entries).toEqual(batch);
      expect(cursor).toContain('10000');
    });

    if (isShared) {
      it('two that have it open see what the other adds, and both may write at once', async () => {
        const other = await openHere(place);
        const odd = Array.from({ length: 40 }, (_, index) => wireEntries(3, { first: index * 6 }));
        const even = Array.from({ length: 40 }, (_, index) => wireEntries(3, { first: index * 6 + 3 }));
        await Promise.all([
          ...odd.map((batch) => store.append(batch)),
          ...even.map((batch) => other.append(batch)),
        ]);
        const here = await store.entries(jobA);
        const there = await other.entries(jobA);
        expect(here).toEqual(there);
        expect(new Set(here.entries.map(({ id }) => id)).size).toBe(240);
        await other.append([wireEntry(1000)]);
        expect((await store.entries(jobA, here.cursor)).entries).toEqual([wireEntry(1000)]);
      });
    }
  });
}
