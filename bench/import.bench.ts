/* Bringing a table of readings in: the messy grand, the longest table that is taken, and files that are refused. */
import { readFileSync } from 'node:fs';
import type { Job } from '@becket/journal';
import { createMemoryStore } from '@becket/store/memory';
import {
  type ColumnMapping,
  LARGEST_FILE_BYTES,
  MOST_ROWS,
  openJob,
  parseMapping,
  planImport,
  readTable,
} from '@becket/tasks';
import { type BenchTopic, timed } from './harness.ts';

const file = (name: string): Uint8Array =>
  new Uint8Array(readFileSync(new URL(`../examples/grand/${name}`, import.meta.url)));
const grand = file('readings.csv');
const grandMapping = parseMapping(JSON.parse(new TextDecoder().decode(file('mapping.json'))), 'mapping.json');

const COLUMNS = 24;
const longest = new TextEncoder().encode(
  [
    ['Note', ...Array.from({ length: COLUMNS }, (_, column) => `Wire ${column}`)].join(','),
    ...Array.from({ length: MOST_ROWS - 1 }, (_, row) =>
      [
        1 + (row % 88),
        ...Array.from({ length: COLUMNS }, (_, column) => (0.9 + column / 1e3).toFixed(3)),
      ].join(','),
    ),
  ].join('\n'),
);
const longestMapping: ColumnMapping = {
  columns: [
    { is: 'note' },
    ...Array.from({ length: COLUMNS }, () => ({
      is: 'reading' as const,
      quantity: 'wire-diameter' as const,
      unit: 'mm' as const,
    })),
  ],
  decimalMark: '.',
  noteLetters: 'international',
};
const manyRows = new TextEncoder().encode('A4,0.98\n'.repeat(Math.floor(LARGEST_FILE_BYTES / 8)));
const oneCell = new TextEncoder().encode(`Note,Wire\nA4,"${'x'.repeat(LARGEST_FILE_BYTES - 100)}"\n`);

const refused = (bytes: Uint8Array) => (): string => {
  try {
    readTable(bytes, 'large.csv');
    return 'read';
  } catch (error) {
    return String(error);
  }
};

async function emptyJob(): Promise<Job> {
  const context = {
    store: createMemoryStore(),
    now: () => new Date(0),
    newId: () => '01ARYZ6S410000000000000000',
    by: 'bench',
    device: 'bench',
  };
  const piano = { form: 'grand', firstKey: 1, lastKey: 88, referencePitch_hz: 440 } as const;
  // One id for both entries would be one entry: the piano is put in by itself.
  const job = await openJob(context, { title: 'bench' });
  return {
    ...job,
    piano: { kind: 'piano-described', v: 1, ...piano, entry: job.id, step: 2, at: '', by: '' },
  };
}

export const topic: BenchTopic = {
  name: 'import',
  run: async () => {
    const job = await emptyJob();
    return [
      timed(
        'the messy grand, 88 rows: read, planned and doubted',
        () => planImport(job, readTable(grand, 'readings.csv'), grandMapping),
        { aim: 'at once: under 100 ms' },
      ),
      timed(
        `${MOST_ROWS - 1} rows of ${COLUMNS} readings: read, planned and doubted`,
        () => planImport(job, readTable(longest, 'long.csv'), longestMapping),
        { runs: 5 },
      ),
      timed('20 MB of short rows: refused', refused(manyRows), { runs: 5, aim: 'under 2 s' }),
      timed('20 MB in one cell: read', refused(oneCell), { runs: 5, aim: 'under 2 s' }),
    ];
  },
};
