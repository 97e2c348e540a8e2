import { english, type Language } from '@becket/core';
import type { Ulid } from '@becket/journal';
import type { SavedJob } from '@becket/tasks';
import { type Observable, observable } from '../parts/observable.ts';

export interface SaveJobQuestion {
  readonly job: Ulid;
  /** When the file is made, RFC 3339 UTC. */
  readonly at: string;
  /** What its name and a refusal are written in, a BCP 47 tag: a language itself cannot be sent to a worker. */
  readonly locale: string;
}
/** A saved job without its bytes in memory: the file may be larger than what a page should hold. */
export type JobFile = Omit<SavedJob, 'bytes'> & { readonly file: Blob };
export type SaveJobAnswer =
  | { readonly is: 'reading'; readonly photo: number; readonly photos: number }
  | { readonly is: 'writing' }
  | ({ readonly is: 'saved' } & JobFile)
  | { readonly is: 'failed'; readonly sentence: string };

export type Saving =
  | { readonly is: 'idle' }
  | { readonly is: 'beginning' }
  | { readonly is: 'stopped' }
  | Exclude<SaveJobAnswer, { is: 'saved' }>
  | ({ readonly is: 'saved' } & Omit<JobFile, 'file'>);

/** What a worker is to whoever asks it: a test hands in its own. */
export type SaveJobWorker = Pick<Worker, 'postMessage' | 'terminate' | 'onmessage' | 'onerror'>;

const inWorker = (): SaveJobWorker =>
  new Worker(new URL('./save-job-worker.ts', import.meta.url), { type: 'module', name: 'save-job' });

/** The making of one job's file, which goes on while other screens are looked at. */
export interface SaveJobAway {
  readonly state: Observable<Saving>;
  /** Begins, unless it has begun already; `onFile` gets the file once it is whole. */
  start(at: Date, onFile: (file: Blob, fileName: string) => void, language?: Language): void;
  /** Gives up what has begun: no file comes of it. */
  stop(): void;
}

export function saveJobAway(job: Ulid, newWorker: () => SaveJobWorker = inWorker): SaveJobAway {
  const state = observable<Saving>({ is: 'idle' });
  let worker: SaveJobWorker | undefined;

  function end(last: Saving): void {
    worker?.terminate();
    worker = undefined;
    state.set(last);
  }

  return {
    state,
    start(at, onFile, { say, locale } = english) {
      if (worker !== undefined) return;
      const own = newWorker();
      worker = own;
      state.set({ is: 'beginning' });
      own.onmessage = ({ data }: MessageEvent<SaveJobAnswer>) => {
        // What was under way when it was stopped.
        if (worker !== own) return;
        if (data.is === 'reading' || data.is === 'writing') return state.set(data);
        if (data.is === 'failed') return end(data);
        const { file, ...saved } = data;
        onFile(file, saved.fileName);
        end(saved);
      };
      own.onerror = (event) => {
        event.preventDefault();
        if (worker !== own) return;
        end({
          is: 'failed',
          sentence: say(
            'Could not save the job as a file: this browser ran out of memory for it, or did not load the part of the program that does it. Nothing was changed; close other tabs, load this page again and try once more.',
          ),
        });
      };
      own.postMessage({ job, at: at.toISOString(), locale } satisfies SaveJobQuestion);
    },
    stop() {
      if (worker !== undefined) end({ is: 'stopped' });
    },
  };
}

const byJob = new Map<Ulid, SaveJobAway>();

/** The one making of a job's file on this page, so that a screen finds again what it began. */
export function savingOf(job: Ulid): SaveJobAway {
  const known = byJob.get(job) ?? saveJobAway(job);
  byJob.set(job, known);
  return known;
}
