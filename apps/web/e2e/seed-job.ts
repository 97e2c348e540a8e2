import { type Entry, newUlid, type Ulid } from '@becket/journal';
import { createMemoryStore } from '@becket/store/memory';
import { describeSections, describeUnisons, openJob, recordReadings, type TaskContext } from '@becket/tasks';
import { type BecketServer, expect } from './server.ts';

/** The lengths of a small section: each 0.965 of the one below, as the lengths of a plain scale go. */
export const lengthOf = (key: number): number => Math.round(10 * 640 * 0.965 ** (key - 40)) / 10;

/** A job on the server, with whatever is put into it here. */
export async function seed(
  server: BecketServer,
  make: (context: TaskContext) => Promise<{ readonly id: Ulid }>,
): Promise<Ulid> {
  const store = createMemoryStore();
  const now = () => new Date();
  const { id } = await make({
    store,
    now,
    newId: () => newUlid(now(), Math.random),
    by: 'Ada',
    device: 'bench',
  });
  const { entries } = await store.entries(id);
  const answer = await fetch(`${server.url}/jobs/${id}/entries`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ entries }),
  });
  expect(answer.ok).toBe(true);
  return id;
}

/** A grand of two sections, C3 to B3 and C4 to B4, plain, three strings to a note; the lower one is read. */
export const seedJob = (server: BecketServer, title: string): Promise<Ulid> =>
  seed(server, async (context) => {
    const { id } = await openJob(context, {
      title,
      piano: { form: 'grand', firstKey: 28, lastKey: 51, referencePitch_hz: 440 },
    });
    await describeSections(context, id, [
      { section: 'low', firstKey: 28, lastKey: 39, bridge: 'long', frontTermination: 'agraffe' },
      { section: 'high', firstKey: 40, lastKey: 51, bridge: 'long', frontTermination: 'agraffe' },
    ]);
    await describeUnisons(context, id, [
      { firstKey: 28, lastKey: 51, strings: 3, winding: 'plain', layers: 0 },
    ]);
    const low = Array.from({ length: 12 }, (_, index) => 28 + index);
    await recordReadings(
      context,
      id,
      low.flatMap((key) => [
        {
          quantity: 'wire-diameter' as const,
          place: { key },
          value: key < 34 ? 1.075 : 1.05,
          unit: 'mm' as const,
        },
        { quantity: 'speaking-length' as const, place: { key }, value: lengthOf(key), unit: 'mm' as const },
      ]),
    );
    return { id };
  });

/** The journal of a job as the server has it. */
export async function entriesOnServer(server: BecketServer, job: Ulid): Promise<Entry[]> {
  const answer = await fetch(`${server.url}/jobs/${job}/entries`);
  return ((await answer.json()) as { entries: Entry[] }).entries;
}
