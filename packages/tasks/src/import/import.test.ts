import { noteName } from '@becket/core';
import { type FactOf, foldJob, type Job, newUlid, type ReadUnit, stripCheck } from '@becket/journal';
import { createMemoryStore } from '@becket/store/memory';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { entriesFor, type TaskContext } from '../context.ts';
import { openJob } from '../open-job.ts';
import { acceptGaps, sealRecord } from '../strip-record.ts';
import { bringInReadings, CellsNotReadable } from './bring-in-readings.ts';
import { type ColumnMapping, type ColumnMeaning, suggestMapping } from './column-mapping.ts';
import { planImport } from './plan-import.ts';
import { LARGEST_FILE_BYTES, MOST_ROWS, readTable } from './read-table.ts';

function newContext(): TaskContext {
  let tick = 0;
  return {
    store: createMemoryStore(),
    now: () => new Date('2026-03-01T10:00:00Z'),
    newId: () => newUlid(new Date(1_700_000_000_000 + tick++), () => 0.5),
    by: 'Ada',
    device: 'bench tablet',
  };
}
const piano = { form: 'grand', firstKey: 1, lastKey: 88, referencePitch_hz: 440 } as const;
const utf8 = (text: string) => new TextEncoder().encode(text);
const tableOf = (text: string) => readTable(utf8(text), 'readings.csv');
const jobOf = async (context: TaskContext): Promise<Job> => openJob(context, { title: 'a grand', piano });
const reading = (quantity: 'wire-diameter' | 'speaking-length', unit: ReadUnit): ColumnMeaning => ({
  is: 'reading',
  quantity,
  unit,
});
const readingsOf = (facts: readonly { kind: string }[]) =>
  facts.filter(({ kind }) => kind === 'reading') as FactOf<'reading'>[];

describe('readTable()', () => {
  it('reads commas, semicolons and tabs, a byte order mark and Windows line ends alike', () => {
    for (const text of ['Note,Wire\nA4,0.98\n', '\uFEFFNote;Wire\r\nA4;0,98\r\n', 'Note\tWire\nA4\t0.98\n']) {
      const table = tableOf(text);
      expect(table.header).toEqual(['Note', 'Wire']);
      expect(table.rows).toEqual([{ row: 2, cells: ['A4', text.includes(',98') ? '0,98' : '0.98'] }]);
    }
  });

  it('reads Latin-1 and says so in one sentence', () => {
    const latin1 = Uint8Array.from([...'Länge;Note\n620;A4\n'].map((letter) => letter.charCodeAt(0)));
    const table = readTable(latin1, 'mensur.csv');
    expect(table.header).toEqual(['Länge', 'Note']);
    expect(table.encoding).toBe('Windows-1252');
    expect(table.notices[0]).toContain('Latin-1');
  });

  it('reads the dashes and quotation marks that Windows-1252 has where Latin-1 has control characters', () => {
    // 0x97 is an em dash, 0x96 an en dash, 0x93 and 0x94 quotation marks (WHATWG Encoding, index windows-1252).
    const bytes = Uint8Array.from(
      [...'Note;Wire\nA4;\x97\nB4;\x96\nC5;\x93d\xfcnn\x94\n'].map((letter) => letter.charCodeAt(0)),
    );
    expect(readTable(bytes, 'x.csv').rows.map(({ cells }) => cells[1])).toEqual(['—', '–', '“dünn”']);
  });

  it('reads UTF-16 with its byte order mark', () => {
    const text = '\uFEFFNote;Wire\nA4;0,98\n';
    const bytes = new Uint8Array(text.length * 2);
    for (let index = 0; index < text.length; index += 1)
      new DataView(bytes.buffer).setUint16(index * 2, text.charCodeAt(index), true);
    expect(readTable(bytes, 'x.csv').header).toEqual(['Note', 'Wire']);
  });

  it('takes the column names from below a title', () => {
    const table = tableOf('Readings of the grand,,\n,,\nNote,Wire (mm),Length\nA4,0.98,400\n');
    expect(table.header).toEqual(['Note', 'Wire (mm)', 'Length']);
    expect(table.rows[0]?.row).toBe(4);
    expect(table.notices[0]).toContain('row 3');
  });

  it.each([
    ['an empty file', new Uint8Array(0), /an empty file was found/],
    ['a spreadsheet', Uint8Array.from([80, 75, 3, 4, 20, 8, 1]), /a spreadsheet or zip was found/],
    ['a binary file', Uint8Array.from([1, 2, 0, 4, 0, 0, 1]), /a binary file was found/],
    ['an open quotation mark', utf8('Note,Wire\nA4,0.98\nB4,"0.97\nC5,0.96\n'), /one in row 3 does not/],
    [
      'too many columns',
      utf8(`Note,Wire${',x'.repeat(200)}\nA4,0.98\n`),
      /up to 100 columns are needed, 202 were/,
    ],
    ['one column', utf8('Wire\n0.98\n'), /at least two columns/],
    ['a header alone', utf8('Note,Wire\n'), /1 filled rows were found/],
    ['50 MB', new Uint8Array(50_000_000).fill(65), /up to 20 MB is needed, 50 MB were found/],
    ['too many rows', utf8(`Note,Wire\n${'A4,0.98\n'.repeat(MOST_ROWS + 5)}`), /up to 2000 rows/],
  ])('refuses %s in one sentence', (_, bytes, sentence) => {
    expect(() => readTable(bytes, 'readings.csv')).toThrow(sentence);
  });

  it('reads a file at its largest without stopping', () => {
    const row = `A4,0.98,${'x'.repeat(900)}\n`;
    const text = `Note,Wire,Remark\n${row.repeat(Math.floor((LARGEST_FILE_BYTES - 100) / row.length))}`;
    expect(() => tableOf(text)).toThrow(/up to 2000 rows/);
  });
});

describe('suggestMapping()', () => {
  it('knows the usual column names, in English and German, with their units', () => {
    const table = tableOf(
      'Key no.;Abschnitt;Saiten;Draht 1 (mm);wire 2 in;Speaking length;Core;over-all;bare end front;Remarks\n1;bass;1;;;1400;1.2;4.5;20;ok\n',
    );
    expect(suggestMapping(table).columns).toEqual([
      { is: 'note' },
      { is: 'section' },
      { is: 'strings' },
      { is: 'reading', quantity: 'wire-diameter', unit: 'mm' },
      { is: 'reading', quantity: 'wire-diameter', unit: 'in' },
      { is: 'reading', quantity: 'speaking-length', unit: 'mm' },
      { is: 'reading', quantity: 'core-diameter', unit: 'mm' },
      { is: 'reading', quantity: 'over-all-diameter', unit: 'mm' },
      { is: 'reading', quantity: 'bare-front', unit: 'mm' },
      { is: 'remark' },
    ]);
  });

  it('tells inches, thousandths and millimetres apart by what a wire can be', () => {
    const unitOf = (cells: string) =>
      suggestMapping(tableOf(`Note,Wire\nA4,${cells}\nB4,${cells}\n`)).columns[1];
    expect(unitOf('.039')).toMatchObject({ unit: 'in' });
    expect(unitOf('39')).toMatchObject({ unit: 'mil' });
    expect(unitOf('0.99')).toMatchObject({ unit: 'mm' });
  });
});

describe('planImport()', () => {
  const keys = fc.uniqueArray(fc.integer({ min: 1, max: 88 }), { minLength: 1, maxLength: 12 });

  it('finds the same readings whatever the order of columns, the unit, the decimal mark and the separator', async () => {
    const job = await jobOf(newContext());
    fc.assert(
      fc.property(
        keys,
        fc.constantFrom<ReadUnit>('mm', 'in', 'mil', 'm'),
        fc.constantFrom('.', ','),
        fc.constantFrom(';', '\t'),
        fc.boolean(),
        fc.constantFrom('name', 'number', 'flat'),
        (noteKeys, unit, decimalMark, separator, isReversed, spelling) => {
          const factor = { mm: 1000, in: 1 / 0.0254, mil: 1000 / 0.0254, m: 1 }[
            unit as 'mm' | 'in' | 'mil' | 'm'
          ];
          const say = (value: number) => String(Number(value.toPrecision(12))).replace('.', decimalMark);
          const noteOf = (key: number) =>
            spelling === 'number'
              ? String(key)
              : spelling === 'flat'
                ? noteName(key).replace(
                    /^([A-G])#/,
                    (_, letter) => `${flatOf[letter as keyof typeof flatOf]}b`,
                  )
                : noteName(key);
          const rows = noteKeys.map((key) => [
            noteOf(key),
            say((0.0009 + key * 1e-6) * factor),
            say((1.2 - key / 100) * factor),
          ]);
          const columns: ColumnMeaning[] = [
            { is: 'note' },
            reading('wire-diameter', unit),
            reading('speaking-length', unit),
          ];
          const turn = <T>(items: readonly T[]): T[] => (isReversed ? [...items].reverse() : [...items]);
          const text = [turn(['Note', 'a', 'b']), ...rows.map(turn)]
            .map((cells) => cells.join(separator))
            .join('\n');
          const mapping: ColumnMapping = {
            columns: turn(columns),
            decimalMark: decimalMark as '.' | ',',
            noteLetters: 'international',
          };
          const plan = planImport(job, tableOf(text), mapping);
          expect(plan.problems).toEqual([]);
          const found = readingsOf(plan.facts);
          expect(found).toHaveLength(noteKeys.length * 2);
          for (const key of noteKeys) {
            const own = found.filter(({ place }) => place.key === key);
            expect(own.find(({ quantity }) => quantity === 'wire-diameter')?.value_si).toBeCloseTo(
              0.0009 + key * 1e-6,
              10,
            );
            expect(own.find(({ quantity }) => quantity === 'speaking-length')?.value_si).toBeCloseTo(
              1.2 - key / 100,
              9,
            );
          }
        },
      ),
      { numRuns: 150 },
    );
  });
  const flatOf = { A: 'B', C: 'D', D: 'E', F: 'G', G: 'A' } as const;

  const mapping: ColumnMapping = {
    columns: [{ is: 'note' }, reading('wire-diameter', 'mm'), reading('speaking-length', 'mm')],
    decimalMark: '.',
    noteLetters: 'international',
  };
  const planOf = async (rows: string, changes = [] as Parameters<typeof planImport>[3]) =>
    planImport(await jobOf(newContext()), tableOf(`Note,Wire,Length\n${rows}`), mapping, changes);

  it('names row, column, what is needed and what was found of every bad cell', async () => {
    const { problems } = await planOf('A4,0.98,0\nB4,.039,380\nX9,0.97,360\nD9,0.97,360\nC5,thin,350\n');
    expect(problems.map(({ row, columnName, found }) => ({ row, columnName, found }))).toEqual([
      { row: 2, columnName: 'Length', found: '0' },
      { row: 3, columnName: 'Wire', found: '.039' },
      { row: 4, columnName: 'Note', found: 'X9' },
      { row: 5, columnName: 'Note', found: 'D9' },
      { row: 6, columnName: 'Wire', found: 'thin' },
    ]);
    expect(problems[0]?.sentence).toBe(
      "Row 2, column 'Length': a speaking length from 30 to 2600 mm is needed, '0' was found.",
    );
    expect(problems[1]?.sentence).toContain('.039 would fit in in');
  });

  it('reads over blank and dashed cells, and keeps unknown, none and does-not-apply apart', async () => {
    const { facts, problems, counts } = await planOf(
      'A4,—,400\nB4,,380\nC5,?,350\nD5,none,340\nE5,n/a,330\n',
    );
    expect(problems).toEqual([]);
    expect(counts).toMatchObject({ readings: 5, blankCells: 2 });
    const absent = facts.filter(({ kind }) => kind === 'reading-absent') as FactOf<'reading-absent'>[];
    expect(absent.map(({ answer }) => answer)).toEqual(['unknown', 'none', 'does not apply']);
  });

  it('questions a slipped decimal and an inch among millimetres, and says what was meant', async () => {
    const rows = [52, 53, 54, 55, 56, 57, 58].map(
      (key, index) => `${key},${index === 3 ? '0.62' : '0.95'},${400 - 10 * index}`,
    );
    const { questions, problems } = await planOf(rows.join('\n'));
    expect(problems).toEqual([]);
    expect(questions.map(({ row, columnName, suggestion }) => ({ row, columnName, suggestion }))).toEqual([
      { row: 5, columnName: 'Wire', suggestion: undefined },
    ]);
    const lengths = [52, 53, 54, 55, 56].map(
      (key, index) => `${key},0.95,${index === 2 ? '37.6' : 400 - 12 * index}`,
    );
    expect((await planOf(lengths.join('\n'))).questions[0]).toMatchObject({ row: 4, suggestion: '376' });
  });

  it('uses a corrected cell and leaves out a cell, and writes both down with their reasons', async () => {
    const { facts, problems } = await planOf('A4,0.98,0\nB4,98,380\n', [
      { row: 2, column: 2, use: null, reason: 'not measured' },
      { row: 3, column: 1, use: '0.98', reason: 'decimal point forgotten' },
    ]);
    expect(problems).toEqual([]);
    expect(readingsOf(facts).map(({ value_si }) => value_si)).toEqual([0.00098, 0.00098, 0.38]);
    const imported = facts.find(({ kind }) => kind === 'readings-imported') as FactOf<'readings-imported'>;
    expect(imported.changedCells).toEqual([
      { row: 2, column: 'Length', found: '0', used: null, reason: 'not measured' },
      { row: 3, column: 'Wire', found: '98', used: '0.98', reason: 'decimal point forgotten' },
    ]);
  });

  it('makes sections and unisons of their columns, and refuses two sections that overlap', async () => {
    const job = await jobOf(newContext());
    const columns: ColumnMeaning[] = [
      { is: 'note' },
      { is: 'section' },
      { is: 'strings' },
      reading('wire-diameter', 'mm'),
    ];
    const plan = (rows: string) =>
      planImport(job, tableOf(`Note,Section,Strings,Wire\n${rows}`), {
        columns,
        decimalMark: '.',
        noteLetters: 'international',
      });
    const sound = plan('A4,tenor,3,1.0\nB4,tenor,3,1.0\nC5,treble,2,0.9\n');
    expect(sound.problems).toEqual([]);
    const sections = sound.facts.filter(
      ({ kind }) => kind === 'section-described',
    ) as FactOf<'section-described'>[];
    expect(sections.map(({ section, firstKey, lastKey }) => ({ section, firstKey, lastKey }))).toEqual([
      { section: 'tenor', firstKey: 49, lastKey: 51 },
      { section: 'treble', firstKey: 52, lastKey: 52 },
    ]);
    const unisons = sound.facts.filter(
      ({ kind }) => kind === 'unisons-described',
    ) as FactOf<'unisons-described'>[];
    expect(unisons.map(({ firstKey, lastKey, strings }) => [firstKey, lastKey, strings])).toEqual([
      [49, 49, 3],
      [51, 51, 3],
      [52, 52, 2],
    ]);
    const overlapping = plan('A4,tenor,3,1.0\nB4,treble,3,1.0\nC5,tenor,3,0.9\nD5,treble,3,0.9\n');
    expect(overlapping.problems[0]?.sentence).toContain('overlap');
    expect(overlapping.problems[0]?.row).toBe(4);
  });

  it('says what is needed when the piano is not described, no note column is mapped, or the mapping is another file’s', async () => {
    const context = newContext();
    const bare = await openJob(context, { title: 'nothing known' });
    const table = tableOf('Note,Wire,Length\nA4,0.98,400\n');
    expect(() => planImport(bare, table, mapping)).toThrow(/piano is not described/);
    const job = await jobOf(context);
    expect(() => planImport(job, table, { ...mapping, columns: mapping.columns.slice(0, 2) })).toThrow(
      /each of its 3 columns/,
    );
    expect(() =>
      planImport(job, table, { ...mapping, columns: mapping.columns.map(() => ({ is: 'left out' })) }),
    ).toThrow(/column with the notes/);
  });
});

describe('bringInReadings()', () => {
  const good = {
    table: tableOf('Note,Wire\nA4,0.98\nB4,0.97\n'),
    mapping: {
      columns: [{ is: 'note' }, reading('wire-diameter', 'mm')],
      decimalMark: '.',
      noteLetters: 'international',
    } as ColumnMapping,
  };

  it('stores all of a table, or nothing of it', async () => {
    const context = newContext();
    const { id } = await jobOf(context);
    const before = (await context.store.entries(id)).entries;
    const bad = { ...good, table: tableOf('Note,Wire\nA4,0.98\nB4,zero\n') };
    await expect(bringInReadings(context, id, bad)).rejects.toThrow(CellsNotReadable);
    expect((await context.store.entries(id)).entries).toEqual(before);
    const { job } = await bringInReadings(context, id, good);
    expect(job.readings).toHaveLength(2);
    expect(job.imports[0]).toMatchObject({ file: 'readings.csv', rows: 2, readings: 2 });
    expect(foldJob((await context.store.entries(id)).entries).readings).toEqual(job.readings);
  });

  it('refuses a table after the seal', async () => {
    const context = newContext();
    const { id } = await jobOf(context);
    const { job } = await bringInReadings(context, id, good);
    await acceptGaps(context, id, {
      gaps: stripCheck(job).openGaps.map(({ name }) => name),
      reason: 'a test',
    });
    await sealRecord(context, id);
    await expect(bringInReadings(context, id, good)).rejects.toThrow(/was sealed/);
  });

  it('makes entries that fit their schemas', async () => {
    const context = newContext();
    const job = await jobOf(context);
    const { facts } = planImport(job, good.table, good.mapping);
    expect(entriesFor(context, { job: job.id, facts, existing: [] })).toHaveLength(facts.length);
  });
});
