import { makeLanguage } from '@becket/core';
import { asFoundRecord, foldJob, type ReadingQuantityName } from '@becket/journal';
import { RecordIsSealed, type TaskContext } from '@becket/tasks';
import { beforeEach, describe, expect, test } from 'vitest';
import { testContext, testJob } from '../../testing/test-job.ts';
import { gridRows, stringColumns } from './grid.ts';
import { readingOrder } from './reading-order.ts';
import { commitCell, readBackAtOnce, sayAbsence, shownText, undoStep } from './record-state.ts';

let context: TaskContext;
let job: string;

beforeEach(async () => {
  context = testContext();
  job = await testJob(context);
});

async function cellOf(key: number, quantity: ReadingQuantityName) {
  const { entries } = await context.store.entries(job);
  const rows = gridRows(asFoundRecord(foldJob(entries)).notes, stringColumns, readingOrder(entries));
  const row = rows.find((one) => one.key === key)!;
  return { key, note: row.note.note, cell: row.cells.find((one) => one.quantity === quantity)! };
}

async function type(text: string, { key = 40, round = 1, reason = '', unit = 'mm' as 'mm' | 'in' } = {}) {
  const at = await cellOf(key, 'wire-diameter');
  return commitCell(context, job, { ...at, text, unit, round, reason });
}

const shown = async (round = 1, unit: 'mm' | 'in' = 'mm') =>
  shownText((await cellOf(40, 'wire-diameter')).cell, round, unit);

describe('commitCell()', () => {
  test('keeps a value as it was read, and reads it back in both units', async () => {
    const done = await type('1,025');
    expect(done?.readBack).toEqual({
      is: 'saved',
      title: 'C4 wire diameter',
      value: '1.025 mm',
      alsoAs: '0.0404 in',
    });
    expect(await shown()).toBe('1.025');
    expect(await shown(1, 'in')).toBe('0.0404');
  });

  test('in German a value has a comma, whichever mark was typed, and shown so it is no correction', async () => {
    const german = makeLanguage('de-DE');
    context = { ...context, language: german };
    const done = await type('1.025');
    expect(done?.readBack).toMatchObject({ value: '1,025 mm', alsoAs: '0,0404 in' });
    const { cell } = await cellOf(40, 'wire-diameter');
    expect([shownText(cell, 1, 'mm', german), shownText(cell, 1, 'in', german)]).toEqual(['1,025', '0,0404']);
    expect(await type('0,0404', { unit: 'in' })).toBeUndefined();
  });

  test('typing over a value corrects it, again and again, and a second round adds a reading', async () => {
    await type('1.5');
    await type('1.05');
    await type('1.02', { round: 2 });
    await type('1.04');
    expect(await shown(1)).toBe('1.04');
    expect(await shown(2)).toBe('1.02');
    expect((await cellOf(40, 'wire-diameter')).cell.readings).toHaveLength(2);
  });

  test('an answer takes the place of a reading, and can be taken back to it', async () => {
    await type('1.025');
    const done = await type('?');
    const { cell } = await cellOf(40, 'wire-diameter');
    expect([cell.absence, cell.readings.length]).toEqual(['unknown', 0]);
    await undoStep(context, job, done!.step!, '');
    expect(await shown()).toBe('1.025');
    expect((await cellOf(40, 'wire-diameter')).cell.absence).toBeUndefined();
  });

  test('an emptied cell takes its reading back; taking that back brings it again', async () => {
    await type('1.025');
    const done = await type('');
    expect(await shown()).toBe('');
    await undoStep(context, job, done!.step!, '');
    expect(await shown()).toBe('1.025');
  });

  test('what was corrected does not come back with an answer or an emptied cell; one step brings the correction again', async () => {
    for (const text of ['?', '']) {
      await type('1.5');
      await type('1.05');
      await type('1.04');
      const done = await type(text);
      expect((await cellOf(40, 'wire-diameter')).cell.readings).toEqual([]);
      await undoStep(context, job, done!.step!, '');
      expect((await cellOf(40, 'wire-diameter')).cell.readings.map(({ asRead }) => asRead.value)).toEqual([
        1.04,
      ]);
      await type('');
    }
  });

  test('what cannot be read leaves everything as it was', async () => {
    const before = (await context.store.entries(job)).entries.length;
    expect((await type('1.2.3'))?.readBack.is).toBe('not saved');
    await expect(type('250')).rejects.toThrow(/^Cannot record this wire diameter/);
    expect((await context.store.entries(job)).entries).toHaveLength(before);
  });

  test('nothing happens when nothing was changed', async () => {
    await type('?', { key: 42 });
    expect(await type('?', { key: 42 })).toBeUndefined();
    await type('1.025');
    expect(await type('1.025')).toBeUndefined();
    expect(await type('1,0250 mm')).toBeUndefined();
    expect(await type('', { key: 41 })).toBeUndefined();
  });

  test('after the seal a change without a reason is refused, and one with a reason is kept', async () => {
    await type('1.025');
    const { entries } = await context.store.entries(job);
    await context.store.append([
      {
        ...entries.at(-1)!,
        id: context.newId(),
        step: entries.length + 1,
        fact: { kind: 'sealed', v: 1, digest: '0'.repeat(64), entries: 1, covers: [] },
      },
    ]);
    await expect(type('1.04', { key: 41 })).rejects.toThrow(RecordIsSealed);
    // Nor does what the program would say of itself count as a reason: a correction, an answer, an emptied cell, an undo.
    const sealed = (await context.store.entries(job)).entries.length;
    for (const text of ['1.04', '?', ''])
      await expect(type(text), `typing '${text}'`).rejects.toThrow(RecordIsSealed);
    const step = { title: 'the last step', entries: [entries.at(-1)!.id] };
    await expect(undoStep(context, job, step, ' ')).rejects.toThrow(RecordIsSealed);
    expect((await context.store.entries(job)).entries).toHaveLength(sealed);
    await type('1.04', { key: 41, reason: 'found on the old string' });
    expect((await cellOf(41, 'wire-diameter')).cell.readings[0]?.reason).toBe('found on the old string');
  });
});

describe('readBackAtOnce()', () => {
  const at = async (text: string, { round = 1, unit = 'mm' as 'mm' | 'in' } = {}) =>
    readBackAtOnce({ ...(await cellOf(40, 'wire-diameter')), text, unit, round });

  test('says of a number and of an answer what will be read back once it is kept', async () => {
    for (const text of ['1,025', '.041 in', '?', '-', '/']) {
      const first = await at(text);
      expect(first?.is).toBe('being kept');
      expect({ ...first, is: 'saved' }).toEqual((await type(text))?.readBack);
    }
  });

  test('says it in German with the comma that it is kept with', async () => {
    const german = makeLanguage('de-DE');
    context = { ...context, language: german };
    for (const text of ['1.025', '.041 in', '40 thou']) {
      const cell = { ...(await cellOf(40, 'wire-diameter')), text, unit: 'mm' as const, round: 1 };
      const first = readBackAtOnce(cell, german);
      expect({ ...first, is: 'saved' }).toEqual((await type(text))?.readBack);
    }
  });

  test('says nothing where only the journal can tell, or where there is nothing to do', async () => {
    await type('1.025');
    for (const text of ['1.025', '1,0250 mm', '', '1.2.3', '1 N'])
      expect(await at(text), text).toBeUndefined();
    await type('?');
    expect(await at('?')).toBeUndefined();
    expect((await at('1.025'))?.is).toBe('being kept');
  });
});

test('sayAbsence() answers for a cell that had no reading', async () => {
  await sayAbsence(context, job, { ...(await cellOf(20, 'bare-front')), answer: 'none', reason: '' });
  expect((await cellOf(20, 'bare-front')).cell.absence).toBe('none');
});
