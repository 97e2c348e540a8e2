import { KeptJournals } from '../kept-journals.ts';
import type { JournalStore } from '../port.ts';
import { createMemoryBlobs } from './memory-blobs.ts';

/** A store that lives as long as the program: for tests, and for trying something out. */
export function createMemoryStore(): JournalStore {
  const journals = new KeptJournals();
  return {
    blobs: createMemoryBlobs(),
    jobs: async () => journals.jobs(),
    entries: async (job, after) => journals.entries(job, after),
    append: async (batch) => {
      const { fresh, known } = journals.split(batch);
      journals.add(fresh);
      return { added: fresh.length, known };
    },
    close: async () => {},
  };
}
