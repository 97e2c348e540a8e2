/* Every paper of the demo grand: the first one of a process, which loads the type-setting and the fonts, and the next ones. */
import { execFile } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { paperNames } from '@becket/tasks';
import { type BenchTopic, type Figure, medianOf } from './harness.ts';

const run = promisify(execFile);
const once = fileURLToPath(new URL('./paper-once.ts', import.meta.url));
const WARM = 3;

/** One process a paper: what is cold is measured once, and says so by having no range. */
async function figuresOf(paper: string, format: 'pdf' | 'csv'): Promise<Figure[]> {
  const { stdout } = await run(process.execPath, ['--import', 'tsx', once, paper, format, String(1 + WARM)]);
  const { times, processor, size } = JSON.parse(stdout) as Record<'times' | 'processor', number[]> & {
    size: number;
  };
  const [cold, ...warm] = times;
  return [
    {
      name: `${paper}, ${format}: first of a process`,
      value: cold!,
      unit: 'ms',
      runs: 1,
      aim: 'under 2000 ms',
    },
    {
      name: `${paper}, ${format}: the next ones`,
      value: medianOf(warm),
      unit: 'ms',
      aim: 'under 2000 ms',
      range: [Math.min(...warm), Math.max(...warm)],
      runs: warm.length,
    },
    {
      name: `${paper}, ${format}: first of a process, processor time`,
      value: processor[0]!,
      unit: 'ms',
      runs: 1,
    },
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
