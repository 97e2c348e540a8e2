/*
 * Makes the files of the examples anew. The outputs are committed; running this changes nothing unless a recipe changed.
 *
 *   node --import tsx examples/make-examples.ts
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { CellChange } from '../packages/tasks/src/import/cell-changes.ts';
import type { ColumnMapping } from '../packages/tasks/src/import/column-mapping.ts';
import { concertGrand } from './recipes/concert-grand.ts';
import * as grand from './recipes/grand.ts';
import { SEED as GRAND_SEED, grandReadings } from './recipes/grand-readings.ts';
import { csvText, type MessyTable, messyRows } from './recipes/messy-table.ts';
import { type Recipe, type TrueNote, trueNotes } from './recipes/recipe.ts';
import * as vertical from './recipes/vertical.ts';
import { SEED as VERTICAL_SEED, verticalReadings } from './recipes/vertical-readings.ts';

const here = dirname(fileURLToPath(import.meta.url));

/** Bytes of a text in Windows-1252, for the characters that the examples use. Source: WHATWG Encoding, index windows-1252. */
function windows1252(text: string): Uint8Array {
  const beyondLatin1: Readonly<Record<string, number>> = { '—': 0x97, '–': 0x96 };
  return Uint8Array.from([...text], (character) => {
    const code = beyondLatin1[character] ?? character.codePointAt(0)!;
    if (code > 0xff) throw new RangeError(`Cannot write '${character}' in Windows-1252`);
    return code;
  });
}

const write = (path: string, content: string | Uint8Array): void => {
  const target = join(here, path);
  mkdirSync(dirname(target), { recursive: true });
  writeFileSync(target, content);
};
const asJson = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`;

interface InventedPiano {
  readonly folder: string;
  readonly seed: number;
  readonly recipe: Recipe;
  readonly job: Readonly<Record<string, unknown>>;
  readonly table: MessyTable;
  readonly bytesOf: (text: string) => Uint8Array;
}

function writeInventedPiano({ folder, seed, recipe, job, table, bytesOf }: InventedPiano): string {
  const notes: TrueNote[] = trueNotes(recipe);
  const { rows, wrongCells } = messyRows(table, notes);
  const csv = csvText(rows, table.delimiter);
  write(`${folder}/readings.csv`, bytesOf(csv));
  write(`${folder}/job.json`, asJson(job));
  write(`${folder}/mapping.json`, asJson(mappingOf(table)));
  const corrections = wrongCells.map(
    ({ row, column, meant, what }): CellChange => ({
      row,
      column,
      use: meant,
      reason: what,
    }),
  );
  write(`${folder}/corrections.json`, asJson(corrections));
  write(`${folder}/truth.json`, asJson({ seed, referencePitch_hz: 440, notes, wrongCells }));
  return csv;
}

const mappingOf = ({ columns, delimiter }: MessyTable): ColumnMapping => ({
  columns: columns.map(({ meaning }) => meaning),
  decimalMark: delimiter === ';' ? ',' : '.',
  noteLetters: 'international',
});

const grandTable = grandReadings();
writeInventedPiano({
  folder: 'grand',
  seed: GRAND_SEED,
  recipe: grand.recipe,
  job: grand.job,
  table: grandTable,
  // A byte order mark, as spreadsheets write it.
  bytesOf: (text) => new TextEncoder().encode(`\uFEFF${text}`),
});
writeInventedPiano({
  folder: 'vertical',
  seed: VERTICAL_SEED,
  recipe: vertical.recipe,
  job: vertical.job,
  table: verticalReadings(),
  bytesOf: windows1252,
});

const published = concertGrand(JSON.parse(readFileSync(join(here, '../checks/checks.json'), 'utf8')));
write('concert-grand/readings.csv', csvText(published.rows, ','));
write('concert-grand/job.json', asJson(published.job));
write('concert-grand/mapping.json', asJson(published.mapping));
write('concert-grand/truth.json', asJson(published.truth));

// The demo job of `packages/tasks`: the same files as one module that a browser can load.
const file = (path: string): string => readFileSync(join(here, path), 'utf8');
writeFileSync(
  join(here, '../packages/tasks/src/demo/invented-grand.json'),
  asJson({
    job: JSON.parse(file('grand/job.json')),
    fileName: 'readings.csv',
    readings: file('grand/readings.csv'),
    mapping: JSON.parse(file('grand/mapping.json')),
    corrections: JSON.parse(file('grand/corrections.json')),
  }),
);
