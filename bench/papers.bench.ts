/* Every paper of the demo grand: the first one of a process, which loads the type-setting and the fonts, and the next ones. */
import { execFile } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { paperNames } from '@becket/tasks';
import { type BenchTopic, type Figure, medianOf } from './harness.ts';

const run = promisify(execFile);
const once = fileURLToPath(new URL('./paper-once.ts', import.meta.url));
const PROCESSES = 3;
const WARM = 3;

async function figuresOf(paper: string, format: 'pdf' | 'csv'): Promise<Figure[]> {
  const cold: number[] = [];
  const warm: number[] = [];
  let size = 0;
  for (let process_ = 0; process_ < PROCESSES; process_ += 1) {
    const { stdout } = await run(process.execPath, [
      '--import',
      'tsx',
      once,
      paper,
      format,
      String(1 + WARM),
    ]);
    const made = JSON.parse(stdout) as { times: number[]; size: number };
    cold.push(made.times[0]!);
    warm.push(...made.times.slice(1));
    size = made.size;
  }
  const figure = (name: string, times: readonly number[]): Figure => ({
    name: `${paper}, ${format}: ${name}`,
    value: medianOf(times),
    unit: 'ms',
    range: [Math.min(...times), Math.max(...times)],
    runs: times.length,
  });
  return [
    figure('first of a process', cold),
    figure('the next ones', warm),
    { name: `${paper}, ${format}: size`, value: size / 1000, unit: 'kB' },
  ];
}

export const topic: BenchTopic = {
  name: 'papers',
  run: async () => {
    const figures: Figure[] = [];
    for (const paper of paperNames) figures.push(...(await figuresOf(paper, 'pdf')));
    figures.push(...(await figuresOf('as-found-record', 'csv')));
    return figures;
  },
};
