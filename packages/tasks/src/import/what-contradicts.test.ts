import type { FactOf, Job } from '@becket/journal';
import { describe, expect, it } from 'vitest';
import { describeSections, describeUnisons } from '../describe-piano.ts';
import { openJob } from '../open-job.ts';
import { memoryContext } from '../testing/memory-context.ts';
import { bringInReadings } from './bring-in-readings.ts';
import type { CellChange } from './cell-changes.ts';
import type { ColumnMapping, ColumnMeaning } from './column-mapping.ts';
import { planImport } from './plan-import.ts';
import { readTable } from './read-table.ts';

const piano = { form: 'grand', firstKey: 1, lastKey: 88, referencePitch_hz: 440 } as const;
const tableOf = (text: string) => readTable(new TextEncoder().encode(text), 'readings.csv');
const mappingOf = (columns: readonly ColumnMeaning[]): ColumnMapping => ({
  columns: [...columns],
  decimalMark: '.',
  noteLetters: 'international',
});
const note: ColumnMeaning = { is: 'note' };
const wire: ColumnMeaning = { is: 'reading', quantity: 'wire-diameter', unit: 'in' };
const tenor = {
  section: 'tenor',
  firstKey: 40,
  lastKey: 50,
  bridge: 'treble',
  frontTermination: 'agraffe',
} as const;

async function newJob(): Promise<{ context: ReturnType<typeof memoryContext>; job: Job }> {
  const context = memoryContext();
  return { context, job: await openJob(context, { title: 'a grand', piano }) };
}
async function planOf(columns: readonly ColumnMeaning[], text: string, changes: readonly CellChange[] = []) {
  const { job } = await newJob();
  return planImport(job, tableOf(text), mappingOf(columns), changes);
}
const sentences = (cells: readonly { readonly sentence: string }[]): string[] =>
  cells.map(({ sentence }) => sentence);
const factsOf = <Kind extends 'section-described' | 'unisons-described' | 'observation' | 'reading'>(
  facts: readonly { readonly kind: string }[],
  kind: Kind,
) => facts.filter((fact) => fact.kind === kind) as FactOf<Kind>[];

describe('planImport(), a unit in a cell', () => {
  it('is what was read there; the column’s unit is for the other cells', async () => {
    const { facts, problems } = await planOf([note, wire], 'Note,Wire\nA4,.039\nB4,0.97 mm\n');
    expect(problems).toEqual([]);
    expect(factsOf(facts, 'reading').map(({ asRead }) => asRead)).toEqual([
      { value: 0.039, unit: 'in' },
      { value: 0.97, unit: 'mm' },
    ]);
  });

  it('that does not measure the quantity is a problem, and so is one we do not have', async () => {
    const { problems } = await planOf([note, wire], 'Note,Wire\nA4,12 N·m\nB4,.097 cm\n');
    expect(problems.map(({ found }) => found)).toEqual(['12 N·m', '.097 cm']);
  });
});

describe('planImport(), a value that cannot be', () => {
  it('comes with what one slip would make of it', async () => {
    const { problems } = await planOf([note, wire], 'Note,Wire\nA4,.39\nB4,0.97\nC5,8\n');
    expect(problems.map(({ suggestion }) => suggestion)).toEqual(['0.039', '0.03819', undefined]);
    expect(problems[0]?.sentence).toBe(
      "Row 2, column 'Wire': a wire diameter from 0.02362 to 0.07087 in is needed, '.39' was found. Was 0.039 meant?",
    );
  });
});

describe('planImport(), remarks', () => {
  it('are kept word for word at their note', async () => {
    const { facts } = await planOf([note, { is: 'remark' }], 'Note,Remark\nA4,"rusty, cleaned"\nB4,—\n');
    expect(factsOf(facts, 'observation')).toEqual([
      {
        kind: 'observation',
        v: 1,
        thing: 'remarks',
        place: { key: 49 },
        answer: { is: 'known', text: 'rusty, cleaned' },
      },
    ]);
  });
});

describe('planImport(), sections', () => {
  const section: ColumnMeaning = { is: 'section' };
  const bridge: ColumnMeaning = { is: 'bridge' };

  it('do not shrink a known section whose last cell is blank, and a known section is not told again', async () => {
    const { context, job } = await newJob();
    const described = await describeSections(context, job.id, [tenor]);
    const table = tableOf('Note,Section,Wire\n40,tenor,.039\n49,tenor,.039\n50,,.039\n');
    const plan = planImport(described, table, mappingOf([note, section, wire]));
    expect([...plan.problems, ...plan.questions]).toEqual([]);
    expect(factsOf(plan.facts, 'section-described')).toEqual([]);
  });

  it('leave a question where a note is in none', async () => {
    const { questions } = await planOf([note, section], 'Note,Section\n49,tenor\n50,\n');
    expect(sentences(questions)).toEqual([
      "Row 3, column 'Section': A#4 is in no section; say in which, or leave it so.",
    ]);
  });

  it('have one bridge: a row that names another is a problem', async () => {
    const { problems } = await planOf(
      [note, section, bridge],
      'Note,Section,Bridge\n49,tenor,treble\n50,tenor,bass\n',
    );
    expect(sentences(problems)).toEqual([
      "Row 3, column 'Bridge': the same as in the other rows of section 'tenor', 'treble', is needed, 'bass' was found.",
    ]);
  });

  it('are needed where a bridge is named', async () => {
    const { problems } = await planOf([note, bridge], 'Note,Bridge\n49,treble\n');
    expect(sentences(problems)).toEqual([
      "Row 2, column 'Bridge': the section that A4 belongs to is needed, 'treble' was found.",
    ]);
  });
});

describe('planImport(), how notes are strung', () => {
  const strings: ColumnMeaning = { is: 'strings' };
  const winding: ColumnMeaning = { is: 'winding' };
  const layers: ColumnMeaning = { is: 'layers' };

  it('is taken from what was read, and never guessed where nothing was', async () => {
    const { facts, questions } = await planOf(
      [note, strings, wire, { is: 'reading', quantity: 'core-diameter', unit: 'in' }],
      'Note,Strings,Wire,Core\n20,2,,.039\n49,3,.038,\n50,3,,\n',
    );
    expect(
      factsOf(facts, 'unisons-described').map(({ firstKey, winding: kind }) => [firstKey, kind]),
    ).toEqual([
      [20, 'wound'],
      [49, 'plain'],
    ]);
    expect(sentences(questions)).toEqual([
      "Row 4, column 'Strings': the number of strings is said of A#4, but nothing tells plain from wound; how they are strung is not brought in.",
    ]);
  });

  it('is not told again where the job knows it', async () => {
    const { context, job } = await newJob();
    const run = { firstKey: 1, lastKey: 88, strings: 3, winding: 'plain', layers: 0 } as const;
    const described = await describeUnisons(context, job.id, [run]);
    const table = tableOf('Note,Strings,Wire\n49,3,.039\n50,2,.039\n');
    const { facts } = planImport(described, table, mappingOf([note, strings, wire]));
    expect(factsOf(facts, 'unisons-described')).toEqual([
      { kind: 'unisons-described', v: 1, firstKey: 50, lastKey: 50, strings: 2, winding: 'plain', layers: 0 },
    ]);
  });

  it('has to agree with its layers and with an earlier row of the same note', async () => {
    const { problems } = await planOf(
      [note, strings, winding, layers],
      'Note,Strings,Winding,Layers\n10,1,wound,0\n49,3,plain,1\n50,3,plain,0\n50,2,plain,0\n',
    );
    expect(sentences(problems)).toEqual([
      "Row 2, column 'Layers': 1 or 2 layers of a wound string is needed, '0' was found.",
      "Row 3, column 'Layers': 0 layers of a plain string is needed, '1' was found.",
      "Row 5, column 'Strings': the stringing of A#4 as in row 4, 3 plain, is needed, '2 plain' was found.",
    ]);
  });
});

describe('planImport(), changes of cells', () => {
  const text = 'Note,Wire\nA4,.39\n';

  it('need a cell that is there, once, and a reason', async () => {
    const change = { row: 2, column: 1, use: '.039', reason: 'a slip' };
    await expect(planOf([note, wire], text, [{ ...change, row: 9 }])).rejects.toThrow(/no such cell/);
    await expect(planOf([note, wire], text, [{ ...change, column: 7 }])).rejects.toThrow(/no such cell/);
    await expect(planOf([note, wire], text, [change, change])).rejects.toThrow(/twice/);
    await expect(planOf([note, wire], text, [{ ...change, reason: ' ' }])).rejects.toThrow(
      /without a reason/,
    );
  });

  it('are doubted and refused like any other cell', async () => {
    const { problems } = await planOf([note, wire], text, [
      { row: 2, column: 1, use: '39', reason: 'a slip' },
    ]);
    expect(problems).toHaveLength(1);
  });

  it('leave out a whole row where the note is left out', async () => {
    const { facts, problems } = await planOf([note, wire], 'Note,Wire\nA4,.039\nmean,.038\n', [
      { row: 3, column: 0, use: null, reason: 'not a note' },
    ]);
    expect(problems).toEqual([]);
    expect(factsOf(facts, 'reading')).toHaveLength(1);
  });
});

describe('planImport(), a mapping that cannot be', () => {
  it('has two columns of notes, or a unit that does not fit its quantity', async () => {
    await expect(planOf([note, note], 'Note,Key\nA4,49\n')).rejects.toThrow(/2 are mapped/);
    const torque: ColumnMeaning = { is: 'reading', quantity: 'wire-diameter', unit: 'N·m' };
    await expect(planOf([note, torque], 'Note,Wire\nA4,.039\n')).rejects.toThrow(
      /a wire diameter is read in mm, in, mil, um, m, 'N·m' was found/,
    );
  });
});

describe('bringInReadings()', () => {
  it('does not bring the same file in twice', async () => {
    const { context, job } = await newJob();
    const file = { table: tableOf('Note,Wire\nA4,.039\n'), mapping: mappingOf([note, wire]) };
    await bringInReadings(context, job.id, file);
    const before = await context.store.entries(job.id);
    await expect(bringInReadings(context, job.id, file)).rejects.toThrow(/same file was brought in/);
    expect(await context.store.entries(job.id)).toEqual(before);
  });
});

describe('planImport(), questions', () => {
  const length: ColumnMeaning = { is: 'reading', quantity: 'speaking-length', unit: 'mm' };
  const section: ColumnMeaning = { is: 'section' };
  const about = async (columns: readonly ColumnMeaning[], header: string, rows: readonly string[]) =>
    (await planOf(columns, `${header}\n${rows.join('\n')}\n`)).questions.map(({ row, sentence }) => [
      row,
      /far from|exactly that of|towards the (bass|treble)|same unison/.exec(sentence)?.[0],
    ]);

  it('ask about a length that is exactly that of the note before', async () => {
    const rows = ['40,660', '41,625', '42,625', '43,563', '44,534'];
    expect(await about([note, length], 'Note,Length', rows)).toEqual([[4, 'exactly that of']]);
  });

  it('ask about a size that grows towards the treble, and not across a break', async () => {
    const rows = ['48,.039,a', '49,.039,a', '50,.038,a', '51,.0405,b', '52,.040,b', '53,.0395,b'];
    expect(await about([note, wire, section], 'Note,Wire,Section', rows)).toEqual([]);
    const joined = rows.map((row) => row.replace(/[ab]$/, 'a'));
    expect((await about([note, wire, section], 'Note,Wire,Section', joined)).length).toBeGreaterThan(0);
  });

  it('ask about strings of a unison that differ', async () => {
    const second: ColumnMeaning = { is: 'reading', quantity: 'wire-diameter', unit: 'in', string: 2 };
    const first: ColumnMeaning = { is: 'reading', quantity: 'wire-diameter', unit: 'in', string: 1 };
    const rows = ['48,.039,.039', '49,.039,.038', '50,.039,.039'];
    const found = await about([note, first, second], 'Note,Left,Middle', rows);
    expect(found.filter(([, words]) => words === 'same unison').length).toBeGreaterThan(0);
  });
});
