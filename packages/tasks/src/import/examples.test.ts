import { noteName } from '@becket/core';
import type { Fact, FactOf, Job, ReadingQuantityName } from '@becket/journal';
import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { openJob } from '../open-job.ts';
import { scaleAsFound } from '../scale-as-found.ts';
import { examplePiano, jsonOf, readingsOf, type TrueNote } from '../testing/example-pianos.ts';
import { memoryContext } from '../testing/memory-context.ts';
import { bringInReadings, CellsNotReadable } from './bring-in-readings.ts';
import { columnMappingSchema, suggestMapping } from './column-mapping.ts';
import { planImport } from './plan-import.ts';
import { readTable } from './read-table.ts';

const readingsIn = (facts: readonly Fact[]): FactOf<'reading'>[] =>
  facts.filter((fact): fact is FactOf<'reading'> => fact.kind === 'reading');

const overInner = ({ wireDiameter_m, layers }: TrueNote): number =>
  wireDiameter_m + 2 * (layers[0]?.wireDiameter_m ?? 0);
const overAll = ({ wireDiameter_m, layers }: TrueNote): number =>
  wireDiameter_m + 2 * layers.reduce((sum, layer) => sum + layer.wireDiameter_m, 0);

/** What a reading should come to, and how far wear, rust, the tool and the rounding of the recipe may take it from there. */
const expected: Partial<Record<ReadingQuantityName, { of: (note: TrueNote) => number; within_mm: number }>> =
  {
    'wire-diameter': { of: (note) => note.wireDiameter_m, within_mm: 0.035 },
    'core-diameter': { of: (note) => note.wireDiameter_m, within_mm: 0.03 },
    'over-all-diameter': { of: overAll, within_mm: 0.07 },
    'inner-layer-diameter': { of: overInner, within_mm: 0.1 },
    'speaking-length': { of: (note) => note.speakingLength_m, within_mm: 3 },
    'front-length': { of: (note) => note.frontLength_m, within_mm: 5 },
    'back-length': { of: (note) => note.backLength_m, within_mm: 5 },
    'bare-front': { of: (note) => note.bareFront_m, within_mm: 3 },
    'bare-back': { of: (note) => note.bareBack_m, within_mm: 3 },
    'loop-to-winding': { of: (note) => note.backLength_m + note.bareBack_m, within_mm: 4 },
    'winding-length': {
      of: (note) => note.speakingLength_m - note.bareFront_m - note.bareBack_m,
      within_mm: 4,
    },
    'pin-diameter': { of: (note) => note.pinDiameter_m, within_mm: 0.06 },
  };

const jobOf = (piano: Parameters<typeof openJob>[1]['piano']): Promise<Job> =>
  openJob(memoryContext(), { title: 'an example', piano });

describe.each([
  { folder: 'grand', encoding: 'UTF-8', delimiter: ',', decimalMark: '.' },
  { folder: 'vertical', encoding: 'Windows-1252', delimiter: ';', decimalMark: ',' },
] as const)('the messy table of the invented $folder', ({ folder, encoding, delimiter, decimalMark }) => {
  const { bytes, job: described, mapping, corrections, truth } = examplePiano(folder);
  const table = readTable(bytes, 'readings.csv');

  it('is read for what it is', () => {
    expect(table).toMatchObject({ encoding, delimiter, decimalMark });
    expect(table.rows).toHaveLength(truth.notes.length);
  });

  it('has one cell that cannot be and one that is doubted: the two that are wrong, and what was meant is said', async () => {
    const { problems, questions } = planImport(await jobOf(described.piano), table, mapping);
    const doubted = questions.filter(({ columnName }) => columnName !== 'Section');
    expect(
      [...problems, ...doubted].map(({ row, column, found }) => ({ row, column, written: found })),
    ).toEqual(
      expect.arrayContaining(truth.wrongCells.map(({ row, column, written }) => ({ row, column, written }))),
    );
    expect([problems.length, doubted.length]).toEqual([1, 1]);
    for (const { row, column, suggestion } of [...problems, ...doubted]) {
      const meant = corrections.find((one) => one.row === row && one.column === column)!.use!;
      const number = (text: string): number => Number(text.replace(',', '.'));
      expect(number(suggestion!) / number(meant)).toBeCloseTo(1, 1);
    }
  });

  it('once corrected, says of every note what the truth says', async () => {
    const { facts, problems } = planImport(await jobOf(described.piano), table, mapping, corrections);
    expect(problems).toEqual([]);
    const readings = readingsIn(facts);
    expect(readings.length).toBeGreaterThan(350);
    const noteOf = new Map(truth.notes.map((note) => [note.key, note]));
    for (const { quantity, place, value_si, origin } of readings) {
      const { of, within_mm } = expected[quantity]!;
      const miss_mm = 1000 * Math.abs(value_si - of(noteOf.get(place.key!)!));
      expect(miss_mm, `${quantity} of ${noteName(place.key!)}`).toBeLessThan(within_mm);
      expect(origin).toBe('measured');
    }
    const unisons = facts.filter(
      (fact): fact is FactOf<'unisons-described'> => fact.kind === 'unisons-described',
    );
    for (const { key, strings, winding, layers } of truth.notes) {
      const run = unisons.find(({ firstKey, lastKey }) => firstKey <= key && key <= lastKey);
      expect(run).toMatchObject({ strings, winding, layers: layers.length });
    }
  });

  it('brings in nothing while any one cell of it cannot be read', async () => {
    const columns = mapping.columns.flatMap((column, index) => (column.is === 'reading' ? [index] : []));
    const context = memoryContext();
    const { id } = await openJob(context, { title: 'an example', piano: described.piano });
    const before = await context.store.entries(id);
    await fc.assert(
      fc.asyncProperty(
        fc.constantFrom(...table.rows),
        fc.constantFrom(...columns),
        fc.constantFrom('thin', '0', '1e9', '-3', '3,4,5', '#REF!'),
        async ({ row }, column, use) => {
          const others = corrections.filter((one) => one.row !== row || one.column !== column);
          const changes = [...others, { row, column, use, reason: 'a test' }];
          // A bare end of 0 is possible; any other 0 is not.
          const quantity = (mapping.columns[column] as { quantity: string }).quantity;
          fc.pre(use !== '0' || !quantity.startsWith('bare-'));
          await expect(bringInReadings(context, id, { table, mapping, changes })).rejects.toThrow(
            CellsNotReadable,
          );
          expect(await context.store.entries(id)).toEqual(before);
        },
      ),
      { numRuns: 60, seed: 1 },
    );
  });

  it('says the same in any order of its columns, with another separator, and in another encoding', async () => {
    const job = await jobOf(described.piano);
    // Without changes, since those name columns by their place: what is compared is everything that can be read.
    const factsOf = (bytesOfTable: Uint8Array, columns: typeof mapping.columns): string[] => {
      const { facts } = planImport(job, readTable(bytesOfTable, 'readings.csv'), { ...mapping, columns });
      return facts
        .filter(({ kind }) => kind !== 'readings-imported')
        .map((fact) => JSON.stringify(fact))
        .sort();
    };
    const asItStands = factsOf(bytes, mapping.columns);
    const width = table.header.length;
    const inEncoding = {
      'UTF-8': (text: string) => new TextEncoder().encode(text),
      'UTF-16': (text: string) => {
        const bytes = new DataView(new ArrayBuffer(2 * text.length + 2));
        [...`\uFEFF${text}`].forEach((letter, index) => {
          bytes.setUint16(2 * index, letter.charCodeAt(0), true);
        });
        return new Uint8Array(bytes.buffer);
      },
    };
    fc.assert(
      fc.property(
        fc.shuffledSubarray(
          Array.from({ length: width }, (_, index) => index),
          { minLength: width, maxLength: width },
        ),
        fc.constantFrom(',', ';', '\t'),
        fc.constantFrom('UTF-8' as const, 'UTF-16' as const),
        fc.boolean(),
        (order, separator, newEncoding, isQuoted) => {
          const turned = [table.header, ...table.rows.map(({ cells }) => cells)].map((cells) =>
            order.map((column) => cells[column]!),
          );
          const text = Papa.unparse(turned, { delimiter: separator, quotes: isQuoted });
          const columns = order.map((column) => mapping.columns[column]!);
          expect(factsOf(inEncoding[newEncoding](text), columns)).toEqual(asItStands);
        },
      ),
      { numRuns: 40, seed: 1 },
    );
  });

  it('is mapped by the suggestion as its owner maps it', () => {
    expect(suggestMapping(table).columns).toEqual(mapping.columns);
  });
});

describe('the published strings of a concert grand', () => {
  // Source of each figure and of its tolerance: checks/checks.json, ids chab-wrapped-…-f1.
  interface PublishedString {
    readonly note: string;
    readonly winding: 'plain' | 'wound';
    readonly tension_n: number;
    readonly frequency_hz: number;
    readonly tolerance: number;
    readonly density_kg_m3: number;
  }
  const published = jsonOf('concert-grand', 'truth.json') as readonly PublishedString[];
  const mapping = columnMappingSchema.parse(jsonOf('concert-grand', 'mapping.json'));
  const table = readTable(readingsOf('concert-grand'), 'readings.csv');

  it('give the published tensions of the plain strings, at A4 = 440 Hz', async () => {
    const context = memoryContext();
    const { piano } = jsonOf('concert-grand', 'job.json') as { piano: FactOf<'piano-described'> };
    const { id } = await openJob(context, { title: 'published strings', piano });
    const { job } = await bringInReadings(context, id, {
      table: { ...table, header: [...table.header, 'Strings'], rows: table.rows.map(withOneString) },
      mapping: { ...mapping, columns: [...mapping.columns, { is: 'strings' }] },
    });
    expect(job.readings.every(({ origin }) => origin === 'copied')).toBe(true);
    const { analysis } = scaleAsFound(job);
    const plain = published.filter(({ winding }) => winding === 'plain');
    expect(analysis.notes).toHaveLength(plain.length);
    for (const { note, tension_n, frequency_hz, tolerance, density_kg_m3 } of plain) {
      const { tension, note: computed } = analysis.notes.find((one) => noteName(one.key) === note)!;
      // T goes with f² and ρ: ours is at equal temperament and 7850 kg/m³, theirs at the pitch and density published with it.
      const published_n = tension * (frequency_hz / computed.frequency) ** 2 * (density_kg_m3 / 7850);
      expect(Math.abs(published_n / tension_n - 1), note).toBeLessThan(2 * tolerance);
    }
  });
});

const withOneString = <Row extends { readonly cells: readonly string[] }>(row: Row): Row => ({
  ...row,
  cells: [...row.cells, '1'],
});
