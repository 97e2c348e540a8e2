import { Worker } from 'node:worker_threads';
import type { ComputeBatch } from '@becket/tasks/compute';

/** Lines that go to a thread in one message: enough to make the message cheap, few enough to keep all threads busy. */
export const LINES_A_BATCH = 200;
/** Batches that may be under way for each thread before more input is read. */
const BATCHES_A_WORKER = 4;

/** Threads that answer batches of lines. */
export interface ComputePool {
  /** Answers a batch; any number may be asked for at once. */
  readonly answer: (lines: readonly string[]) => Promise<ComputeBatch>;
  readonly close: () => Promise<void>;
}

interface Job {
  readonly lines: readonly string[];
  readonly resolve: (batch: ComputeBatch) => void;
  readonly reject: (error: Error) => void;
}

/** Starts `workers` threads; each batch goes to the first that is free. */
export function startComputePool(workers: number): ComputePool {
  const waiting: Job[] = [];
  const idle: Worker[] = [];
  const current = new Map<Worker, Job>();
  let failure: Error | undefined;

  const give = (): void => {
    while (idle.length > 0 && waiting.length > 0) {
      const worker = idle.pop()!;
      const job = waiting.shift()!;
      current.set(worker, job);
      worker.postMessage(job.lines);
    }
  };
  const fail = (error: Error): void => {
    failure = error;
    for (const job of [...current.values(), ...waiting.splice(0)]) job.reject(error);
    current.clear();
  };

  const threads = Array.from({ length: workers }, () => {
    // The sources are TypeScript: the thread needs the loader that this program runs under.
    const worker = new Worker(
      `import('tsx/esm/api').then(({ register }) => { register(); return import(${JSON.stringify(new URL('./compute-worker.ts', import.meta.url).href)}); });`,
      { eval: true },
    );
    worker.on('message', (batch: ComputeBatch) => {
      const job = current.get(worker);
      current.delete(worker);
      idle.push(worker);
      give();
      job?.resolve(batch);
    });
    worker.on('error', fail);
    idle.push(worker);
    return worker;
  });

  return {
    answer: (lines) =>
      new Promise((resolve, reject) => {
        if (failure !== undefined) {
          reject(failure);
          return;
        }
        waiting.push({ lines, resolve, reject });
        give();
      }),
    close: async () => {
      await Promise.all(threads.map((thread) => thread.terminate()));
    },
  };
}

/**
 * Answers a stream of lines, in order, without holding more than a few batches.
 *
 * @param lines   the input, line by line
 * @param answer  what answers a batch: a pool's `answer`, or the same calculation on this thread
 * @param write   takes the text of a batch's answers, each line ended; input waits until it resolves
 * @param atOnce  how many batches may be under way
 * @returns how many lines were answered, and how many of them with an error
 */
export async function answerStream(
  lines: AsyncIterable<string> | Iterable<string>,
  answer: (lines: readonly string[]) => Promise<ComputeBatch>,
  write: (text: string) => Promise<void>,
  atOnce: number,
): Promise<{ answered: number; errors: number }> {
  const underWay: Promise<ComputeBatch>[] = [];
  const total = { answered: 0, errors: 0 };
  const writeOldest = async (): Promise<void> => {
    const { texts, errors } = await underWay.shift()!;
    total.answered += texts.length;
    total.errors += errors;
    if (texts.length > 0) await write(`${texts.join('\n')}\n`);
  };
  const ask = (batch: readonly string[]): void => {
    const answered = answer(batch);
    // A failure is met when its turn to be written comes; until then it must not count as unhandled.
    answered.catch(() => {});
    underWay.push(answered);
  };

  let batch: string[] = [];
  for await (const line of lines) {
    batch.push(line);
    if (batch.length < LINES_A_BATCH) continue;
    ask(batch);
    batch = [];
    while (underWay.length >= atOnce) await writeOldest();
  }
  if (batch.length > 0) ask(batch);
  while (underWay.length > 0) await writeOldest();
  return total;
}

export const batchesAtOnce = (workers: number): number => Math.max(1, workers) * BATCHES_A_WORKER;
