import { newUlid } from '@becket/journal';
import { createMemoryStore } from '@becket/store/memory';
import type { TaskContext } from '../context.ts';

/** A context over a store that lives as long as the test, with a clock that stands and ids that count. */
export function memoryContext(): TaskContext {
  let tick = 0;
  return {
    store: createMemoryStore(),
    now: () => new Date('2026-03-01T10:00:00Z'),
    newId: () => newUlid(new Date(1_700_000_000_000 + tick++), () => 0.5),
    by: 'Ada',
    device: 'bench tablet',
  };
}
