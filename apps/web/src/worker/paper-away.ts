import { english, type Language } from '@becket/core';
import type { Ulid } from '@becket/journal';
import type { PaperToMake } from '@becket/tasks';

/** A paper that a device makes by itself: what is wished for, without what only the maker has. */
export interface PaperWish extends Omit<PaperToMake, 'means'> {
  /** What it is written in, a BCP 47 tag: a language itself cannot be sent to a worker. */
  readonly locale: string;
}

export interface PaperQuestion {
  readonly number: number;
  readonly job: Ulid;
  readonly wish: PaperWish;
}
export interface PaperFile {
  readonly content: Blob;
  readonly fileName: string;
}
export type PaperAnswer =
  | ({ readonly number: number; readonly is: 'made' } & PaperFile)
  | { readonly number: number; readonly is: 'failed'; readonly sentence: string };

/** The wish to stop what is under way; no failure. */
export class PaperStopped extends Error {
  override name = 'PaperStopped';
}

/** What a worker is to whoever asks it: a test hands in its own. */
export type PaperWorker = Pick<Worker, 'postMessage' | 'terminate' | 'onmessage' | 'onerror'>;

const inWorker = (): PaperWorker =>
  new Worker(new URL('./paper-worker.ts', import.meta.url), { type: 'module', name: 'paper' });

export interface PaperMaker {
  /** Throws: an Error with one sentence; PaperStopped when it was stopped. */
  make(job: Ulid, wish: PaperWish, language?: Language): Promise<PaperFile>;
  /** Gives up everything that is under way. */
  stop(): void;
}

/** Makes papers in a worker that is kept: the type-setting and the fonts are loaded for the first paper alone. */
export function paperMaker(newWorker: () => PaperWorker = inWorker): PaperMaker {
  let worker: PaperWorker | undefined;
  let asked = 0;
  const waiting = new Map<
    number,
    { readonly language: Language; done(file: PaperFile): void; failed(error: Error): void }
  >();

  function giveUp(reasonIn: (language: Language) => Error): void {
    worker?.terminate();
    worker = undefined;
    const lost = [...waiting.values()];
    waiting.clear();
    for (const { failed, language } of lost) failed(reasonIn(language));
  }

  function begun(): PaperWorker {
    const own = newWorker();
    own.onmessage = ({ data }: MessageEvent<PaperAnswer>) => {
      const waits = waiting.get(data.number);
      waiting.delete(data.number);
      if (data.is === 'made') waits?.done({ content: data.content, fileName: data.fileName });
      else waits?.failed(new Error(data.sentence));
    };
    own.onerror = (event) => {
      event.preventDefault();
      if (worker !== own) return;
      giveUp(
        ({ say }) =>
          new Error(
            say(
              'Could not make this paper: this browser ran out of memory for it, or has not loaded the part of the program that does it yet. Nothing was changed; close other tabs, load this page again where the server can be reached, and try once more.',
            ),
          ),
      );
    };
    return own;
  }

  return {
    make(job, wish, language = english) {
      worker ??= begun();
      asked += 1;
      const number = asked;
      const own = worker;
      return new Promise((done, failed) => {
        waiting.set(number, { language, done, failed });
        own.postMessage({ number, job, wish } satisfies PaperQuestion);
      });
    },
    stop: () => giveUp(() => new PaperStopped('stopped')),
  };
}

/** The one maker of papers on this page. */
export const papers: PaperMaker = paperMaker();
