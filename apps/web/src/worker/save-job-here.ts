import type { Language } from '@becket/core';
import type { Ulid } from '@becket/journal';
import type { BlobStore } from '@becket/store';
import { photosNamed, saveJob } from '@becket/tasks/save-job';
import { openBrowserStore } from '../store/browser-store.ts';
import type { JobFile, SaveJobAnswer } from './save-job-away.ts';

interface Wanted {
  readonly job: Ulid;
  /** RFC 3339 UTC. */
  readonly at: string;
  readonly language?: Language | undefined;
  readonly onStep: (step: Extract<SaveJobAnswer, { is: 'reading' | 'writing' }>) => void;
  /** The database that the job is in, if it is not the device's own. */
  readonly database?: string;
}

/** The file of a job out of the device's store, told step by step. Throws as `saveJob` and `openBrowserStore` do. */
export async function saveJobHere({ job, at, language, onStep, database }: Wanted): Promise<JobFile> {
  const store = await openBrowserStore(database);
  try {
    const { entries } = await store.entries(job);
    const photos = new Set(photosNamed(entries).map(({ digest }) => digest)).size;
    let photo = 0;
    const blobs: BlobStore = {
      ...store.blobs,
      async get(digest) {
        photo += 1;
        onStep({ is: 'reading', photo, photos });
        const bytes = await store.blobs.get(digest).catch(() => undefined);
        if (photo === photos) onStep({ is: 'writing' });
        return bytes;
      },
    };
    const { bytes, ...saved } = await saveJob(
      { store: { ...store, blobs }, now: () => new Date(at), language },
      job,
    );
    return { ...saved, file: new Blob([bytes as Uint8Array<ArrayBuffer>], { type: 'application/zip' }) };
  } finally {
    await store.close();
  }
}
