/*
 * npm run bench [topic …]: runs every bench/<topic>.bench.ts, or those named, prints the figures and keeps them in
 * bench/last.json. Speed is measured here and nowhere asserted.
 */
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { availableParallelism, cpus, loadavg } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { BenchTopic, Figure } from './harness.ts';

const folder = dirname(fileURLToPath(import.meta.url));
const lastFile = join(folder, 'last.json');

interface TopicRun {
  readonly at: string;
  readonly node: string;
  readonly processor: string;
  readonly cores: number;
  /** Load of the machine over the last minute, before and after: above the cores, figures are too high. */
  readonly load: readonly [number, number];
  readonly figures: readonly Figure[];
}

const wanted = process.argv.slice(2);
const files = readdirSync(folder)
  .filter((file) => file.endsWith('.bench.ts'))
  .filter((file) => wanted.length === 0 || wanted.includes(file.replace('.bench.ts', '')))
  .sort();
if (files.length === 0) {
  console.error(
    `Cannot run ${wanted.join(', ')}: there is no such file in bench. Give a topic, or none for all.`,
  );
  process.exit(2);
}

const kept: Record<string, TopicRun> = existsSync(lastFile) ? JSON.parse(readFileSync(lastFile, 'utf8')) : {};
for (const file of files) {
  const { topic } = (await import(join(folder, file))) as { topic: BenchTopic };
  console.log(`\n${topic.name}`);
  const before = loadavg()[0]!;
  const figures = await topic.run();
  kept[topic.name] = {
    at: new Date().toISOString(),
    node: process.version,
    processor: cpus()[0]?.model.trim() ?? 'unknown',
    cores: availableParallelism(),
    load: [before, loadavg()[0]!],
    figures,
  };
  for (const line of tableOf(figures)) console.log(line);
  const load = kept[topic.name]!.load;
  if (Math.max(...load) > availableParallelism()) {
    console.log(
      `  (the machine was busy with other things: load ${load.map((value) => value.toFixed(1)).join(' to ')})`,
    );
  }
}
const inOrder = Object.fromEntries(Object.entries(kept).sort(([a], [b]) => (a < b ? -1 : 1)));
writeFileSync(lastFile, `${JSON.stringify(inOrder, undefined, 2)}\n`);

function tableOf(figures: readonly Figure[]): string[] {
  const rows = figures.map(({ name, value, unit, range, runs, aim }) => [
    name,
    `${digits(value)} ${unit}`,
    range === undefined ? '' : `${digits(range[0])} to ${digits(range[1])} in ${runs} runs`,
    aim === undefined ? '' : `aim: ${aim}`,
  ]);
  const widths = [0, 1, 2, 3].map((column) => Math.max(...rows.map((row) => row[column]!.length)));
  return rows.map(
    (row) =>
      `  ${row
        .map((cell, column) => cell.padEnd(widths[column]!))
        .join('  ')
        .trimEnd()}`,
  );
}

function digits(value: number): string {
  if (value === 0) return '0';
  if (Math.abs(value) < 1e-3) return value.toExponential(1);
  return value >= 1000 ? value.toFixed(0) : value.toPrecision(3);
}
