import { newUlid, type Ulid } from '@becket/journal';
import { createMemoryStore } from '@becket/store/memory';
import { describeSections, describeUnisons, openJob, type TaskContext } from '@becket/tasks';

/** A context over a store in memory, with a clock and a chance that give the same every time. */
export function testContext(): TaskContext {
  let clock = Date.UTC(2026, 2, 1);
  let seed = 7;
  const random = () => {
    seed = (seed * 1664525 + 1013904223) % 2 ** 32;
    return seed / 2 ** 32;
  };
  const now = () => {
    clock += 1000;
    return new Date(clock);
  };
  return { store: createMemoryStore(), now, newId: () => newUlid(now(), random), by: 'Ada', device: 'bench' };
}

/** A job of a grand: wound bass to A#2 on its own bridge, plain above. */
export async function testJob(context: TaskContext): Promise<Ulid> {
  const { id } = await openJob(context, {
    title: 'a grand for tests',
    piano: { form: 'grand', firstKey: 1, lastKey: 88, referencePitch_hz: 440 },
  });
  await describeSections(context, id, [
    { section: 'bass', firstKey: 1, lastKey: 26, bridge: 'bass', frontTermination: 'agraffe' },
    { section: 'tenor', firstKey: 27, lastKey: 88, bridge: 'long', frontTermination: 'agraffe' },
  ]);
  await describeUnisons(context, id, [
    { firstKey: 1, lastKey: 26, strings: 2, winding: 'wound', layers: 1 },
    { firstKey: 27, lastKey: 88, strings: 3, winding: 'plain', layers: 0 },
  ]);
  return id;
}
