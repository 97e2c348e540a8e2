/*
 * Draws the plots of docs/explanation and fills in the tables of measured figures, from the functions of @becket/core.
 *
 *   node --import tsx tools/write-plots.ts
 *
 * A page marks the place of a table with `<!-- measured: name -->` and `<!-- /measured -->`; what stands between is
 * written by this script and by nobody else. A test fails when a plot or a table is not what the code gives now.
 */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { bearing } from './plots/bearing.ts';
import { inharmonicityFits } from './plots/inharmonicity-fits.ts';
import { plainString } from './plots/plain-string.ts';
import { svgOf } from './plots/plot.ts';
import { pullOnPinTopic } from './plots/pull-on-pin.ts';
import { rescaling } from './plots/rescaling.ts';
import { scaleFindingsTopic } from './plots/scale-findings.ts';
import { stringMechanics } from './plots/string-mechanics.ts';
import { temperamentStretchBeats } from './plots/temperament-stretch-beats.ts';
import type { MeasuredTable, Topic } from './plots/topic.ts';
import { uncertainty } from './plots/uncertainty.ts';
import { wireStrength } from './plots/wire-strength.ts';
import { woundString } from './plots/wound-string.ts';
import { woundStringModesTopic } from './plots/wound-string-modes.ts';

export const topics: readonly Topic[] = [
  wireStrength,
  plainString,
  woundString,
  woundStringModesTopic,
  inharmonicityFits,
  stringMechanics,
  bearing,
  pullOnPinTopic,
  uncertainty,
  scaleFindingsTopic,
  temperamentStretchBeats,
  rescaling,
];

const explanation = resolve(fileURLToPath(import.meta.url), '../../docs/explanation');

/** Every file of docs/explanation that this script makes or fills, with what belongs in it. */
export function explanationFiles(): Map<string, string> {
  const files = new Map<string, string>();
  for (const { page, plots, tables } of topics) {
    for (const [name, plot] of Object.entries(plots)) files.set(`plots/${name}.svg`, svgOf(plot));
    const path = join(explanation, `${page}.md`);
    if (!existsSync(path))
      throw new Error(`Cannot fill in ${page}.md as it is not there; write the page first`);
    files.set(`${page}.md`, withTables(readFileSync(path, 'utf8'), tables, page));
  }
  return files;
}

/** What stands in a file now, or undefined when it is not there. */
export function currentText(file: string): string | undefined {
  const path = join(explanation, file);
  return existsSync(path) ? readFileSync(path, 'utf8') : undefined;
}

/** A page with its tables filled in. Every table needs its place, and every place its table. */
export function withTables(text: string, tables: readonly MeasuredTable[], page: string): string {
  const filled = new Set<string>();
  const result = text.replace(/<!-- measured: (.+?) -->\n[\s\S]*?<!-- \/measured -->/g, (_, name: string) => {
    const table = tables.find((one) => one.name === name);
    if (table === undefined) throw new Error(`Cannot fill in ${page}.md as nothing measures '${name}'`);
    filled.add(name);
    return `<!-- measured: ${name} -->\n${markdownOf(table)}\n<!-- /measured -->`;
  });
  const missing = tables.find(({ name }) => !filled.has(name));
  if (missing !== undefined) {
    throw new Error(`Cannot fill in ${page}.md as it has no place for '${missing.name}'`);
  }
  return result;
}

/** A table with its columns lined up, as the formatter of this project leaves it. */
function markdownOf({ header, rows }: MeasuredTable): string {
  const widths = header.map((_, column) =>
    Math.max(3, ...[header, ...rows].map((cells) => [...cells[column]!].length)),
  );
  const padded = (text: string, column: number) => text + ' '.repeat(widths[column]! - [...text].length);
  const row = (cells: readonly string[]) => `| ${cells.map(padded).join(' | ')} |`;
  return [row(header), row(widths.map((width) => '-'.repeat(width))), ...rows.map(row)].join('\n');
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  mkdirSync(join(explanation, 'plots'), { recursive: true });
  let changed = 0;
  for (const [file, text] of explanationFiles()) {
    if (currentText(file) === text) continue;
    writeFileSync(join(explanation, file), text);
    changed++;
  }
  console.log(`explanation: ${topics.length} topics, ${changed} files written anew`);
}
