import { type ChildProcessWithoutNullStreams, spawn } from 'node:child_process';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { onTestFinished } from 'vitest';

const here = fileURLToPath(new URL('.', import.meta.url));

/** A test program of this folder, run as a process of its own. */
export class ChildProgram {
  readonly lines: unknown[] = [];
  readonly #child: ChildProcessWithoutNullStreams;
  readonly #ended: Promise<void>;
  #talk = '';
  #onLine: () => void = () => {};

  /** `limit_kib`: the largest file the program may write, as on a disk that is full. */
  constructor(program: string, args: readonly string[], { limit_kib }: { limit_kib?: number } = {}) {
    const command = [process.execPath, '--import', 'tsx', `${here}${program}`, ...args];
    this.#child =
      limit_kib === undefined
        ? spawn(command[0]!, command.slice(1), { cwd: here })
        : spawn('bash', ['-c', `trap '' XFSZ; ulimit -f ${limit_kib}; exec "$@"`, 'bash', ...command], {
            cwd: here,
          });
    createInterface(this.#child.stdout).on('line', (line) => {
      this.lines.push(JSON.parse(line));
      this.#onLine();
    });
    this.#child.stderr.on('data', (part) => {
      this.#talk += part;
    });
    onTestFinished(() => this.kill());
    this.#ended = new Promise((resolve, reject) => {
      this.#child.on('error', reject);
      this.#child.on('close', () => {
        resolve();
        this.#onLine();
      });
    });
  }

  /** Waits until the program has said so many lines. */
  async said(count: number): Promise<void> {
    while (this.lines.length < count) {
      if (this.#child.exitCode !== null) throw new Error(`The program ended early: ${this.#talk}`);
      await new Promise<void>((resolve) => {
        this.#onLine = resolve;
      });
    }
  }

  /** Waits for the program's own end. */
  async ended(): Promise<void> {
    await this.#ended;
  }

  /** Ends it at once, with nothing left to it to tidy up. */
  async kill(): Promise<void> {
    this.#child.kill('SIGKILL');
    await this.#ended;
  }
}
