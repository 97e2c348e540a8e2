import { spawn } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Readable, Writable } from 'node:stream';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { answerStream, LINES_A_BATCH } from '../compute-pool.ts';
import { computeStream } from './compute.ts';

// Each command is a process of its own; on a busy machine they take their time.
vi.setConfig({ testTimeout: 300_000 });
const program = fileURLToPath(new URL('../../bin/becket.mjs', import.meta.url));
let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'becket-compute-'));
});
afterAll(() => rm(folder, { recursive: true }));

/** Runs the program as a user would. */
function becket(
  args: readonly string[],
  input = '',
): Promise<{ out: string; err: string; status: number | null }> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [program, ...args]);
    let [out, err] = ['', ''];
    child.stdout.on('data', (chunk) => {
      out += chunk;
    });
    child.stderr.on('data', (chunk) => {
      err += chunk;
    });
    child.on('error', reject);
    child.on('close', (status) => resolve({ out, err, status }));
    child.stdin.end(input);
  });
}

const pin = (tension: number, id: number): string =>
  JSON.stringify({ kind: 'pin_torque', tension_N: tension, pin_diameter_m: 0.01, wire_diameter_m: 0.01, id });

/** Many lines, every seventh of them bad, some slow. */
const mixedLines = Array.from({ length: 3 * LINES_A_BATCH + 17 }, (_, id) => {
  if (id % 7 === 3) return `{"id":${id},"kind":"no such kind"}`;
  if (id % 50 === 0) {
    return `{"id":${id},"kind":"modes","segments":[{"length_m":1,"mu_kg_per_m":0.01,"EI_N_m2":0.01}],"tension_N":900,"ends":"clamped"}`;
  }
  return pin(100 + id, id);
});

async function streamed(lines: readonly string[], workers: number) {
  const texts: string[] = [];
  const output = new Writable({
    write: (chunk, _, done) => {
      texts.push(String(chunk));
      setImmediate(done);
    },
  });
  const counts = await computeStream(Readable.from([`${lines.join('\r\n')}\n`]), output, workers);
  return { answers: texts.join('').trimEnd().split('\n'), ...counts };
}

describe('becket compute', () => {
  it('answers line by line from standard input and ends with 0', async () => {
    const { out, err, status } = await becket(['compute'], `${pin(100, 1)}\n\n${pin(200, 2)}\n`);
    expect({ err, status }).toEqual({ err: '', status: 0 });
    const answers = out
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect(answers.map(({ id, torque_N_m }) => [id, torque_N_m])).toEqual([
      [1, 1],
      [2, 2],
    ]);
  });

  it('goes on after a bad line, in a file and with threads, and ends with 1', async () => {
    const file = join(folder, 'requests.jsonl');
    await writeFile(file, `${pin(100, 1)}\nwhat?\n${pin(300, 3)}`);
    const { out, status } = await becket(['compute', '--workers', '2', file]);
    const answers = out
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect(answers.map((answer) => answer.torque_N_m ?? answer.error.code)).toEqual([1, 'not-json', 3]);
    expect(status).toBe(1);
  });

  it('says in one sentence that there is no such file', async () => {
    const { out, err, status } = await becket(['compute', join(folder, 'nothing.jsonl')]);
    expect(out).toBe('');
    expect(err).toMatch(/^Cannot read .*nothing\.jsonl: there is no such file/);
    expect(status).toBe(4);
  });

  it('refuses a number of threads that is none', async () => {
    const { err, status } = await becket(['compute', '--workers', 'many']);
    expect(err).toContain("a whole number of threads from 1 to 64 is needed: found 'many'.");
    expect(status).toBe(2);
  });

  it('answers nothing to nothing', async () => {
    expect(await becket(['compute'])).toEqual({ out: '', err: '', status: 0 });
  });
});

describe('computeStream()', () => {
  it('gives the same answers in the same order on one thread and on three', async () => {
    const alone = await streamed(mixedLines, 1);
    const together = await streamed(mixedLines, 3);
    expect(together).toEqual(alone);
    expect(alone.answers.map((line) => JSON.parse(line).id)).toEqual(mixedLines.map((_, id) => id));
    expect(alone.errors).toBe(mixedLines.filter((line) => line.includes('no such')).length);
  });
});

describe('answerStream()', () => {
  it('keeps the order when later batches are ready first, and reads no further ahead than allowed', async () => {
    let asked = 0;
    let finished = 0;
    let mostUnderWay = 0;
    const written: string[] = [];
    const counts = await answerStream(
      Array.from({ length: 10 * LINES_A_BATCH }, (_, index) => String(index)),
      async (lines) => {
        const turn = asked;
        asked += 1;
        mostUnderWay = Math.max(mostUnderWay, asked - finished);
        await new Promise((resolve) => setTimeout(resolve, turn % 2 === 0 ? 20 : 1));
        return { texts: [...lines], errors: 1 };
      },
      async (text) => {
        finished += 1;
        written.push(text);
      },
      3,
    );
    expect(written.join('').trimEnd().split('\n').map(Number)).toEqual(
      Array.from({ length: 10 * LINES_A_BATCH }, (_, index) => index),
    );
    expect(counts).toEqual({ answered: 10 * LINES_A_BATCH, errors: 10 });
    expect(mostUnderWay).toBeLessThanOrEqual(3);
  });

  it('ends with the failure of a batch', async () => {
    const failing = answerStream(
      ['a'],
      () => Promise.reject(new Error('a thread ended')),
      async () => {},
      2,
    );
    await expect(failing).rejects.toThrow('a thread ended');
  });
});
