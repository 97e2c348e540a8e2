import { open } from 'node:fs/promises';
import { availableParallelism } from 'node:os';
import { createInterface } from 'node:readline';
import type { Readable, Writable } from 'node:stream';
import type { Language } from '@becket/core';
import { computeBatch } from '@becket/tasks/compute';
import { type Command, InvalidArgumentError } from 'commander';
import { answerStream, batchesAtOnce, startComputePool } from '../compute-pool.ts';
import { exitStatus } from '../exit-status.ts';

interface ComputeOptions {
  readonly workers?: number;
}

/** `becket compute`: JSON Lines in, JSON Lines out, one calculation a line. */
export function registerCompute(program: Command, language: Language): void {
  const { say } = language;
  program
    .command('compute')
    .description(
      say('answer calculations, one JSON object a line; the kinds are in docs/reference/compute.md'),
    )
    .argument('[file]', say('JSON Lines; standard input without it or with -'))
    .option(
      '--workers <n>',
      say('share the lines among n threads, up to {most} here; without it one thread, which starts at once', {
        most: availableParallelism(),
      }),
      (text: string) => workerCount(text, language),
    )
    .action(async (file: string | undefined, options: ComputeOptions) => {
      const isFile = file !== undefined && file !== '-';
      const handle = isFile ? await open(file) : undefined;
      const input: Readable = handle?.createReadStream() ?? process.stdin;
      const { errors } = await computeStream(input, process.stdout, options.workers ?? 1);
      if (errors > 0) process.exitCode = exitStatus.no;
    });
}

/** Answers every line of `input` on `output`, in order; `workers` of 1 answers on this thread. */
export async function computeStream(
  input: Readable,
  output: Writable,
  workers: number,
): Promise<{ answered: number; errors: number }> {
  const pool = workers > 1 ? startComputePool(workers) : undefined;
  const answer = pool?.answer ?? (async (lines: readonly string[]) => computeBatch(lines));
  try {
    const lines = createInterface({ input, crlfDelay: Number.POSITIVE_INFINITY });
    return await answerStream(lines, answer, (text) => written(output, text), batchesAtOnce(workers));
  } finally {
    await pool?.close();
  }
}

/** Resolves when the output has room again, so that a slow reader holds back the input. */
function written(output: Writable, text: string): Promise<void> {
  return new Promise((resolve, reject) => {
    output.write(text, (error) => (error ? reject(error) : resolve()));
  });
}

function workerCount(text: string, { say }: Language): number {
  const count = Number(text);
  if (!Number.isInteger(count) || count < 1 || count > 64) {
    throw new InvalidArgumentError(
      say("a whole number of threads from 1 to 64 is needed: found '{text}'.", { text }),
    );
  }
  return count;
}
