import { asFoundRecord } from '@becket/journal';
import { describeInstrument, readJob } from '@becket/tasks';
import { describe, expect, it } from 'vitest';
import { testContext, testJob } from '../../testing/test-job.ts';
import type { Instrument } from './instruments-state.ts';
import { undoStep } from './record-state.ts';
import {
  commitString,
  conditionOf,
  newStringRound,
  pointsOf,
  quantitiesIn,
  type StringRound,
  stringReadingWords,
  stringRows,
  unitInHand,
} from './strings-state.ts';

const micrometer: Instrument = {
  kind: 'instrument-described',
  v: 1,
  instrument: 'micrometer 1',
  unit: 'in',
  resolution: 0.0001,
};
const c4 = (string: number) => ({ key: 40, string, name: `C4·${string}` });

async function start() {
  const context = testContext();
  const id = await testJob(context);
  const enter = (
    string: number,
    text: string,
    round: Partial<StringRound> = {},
    instrument: Instrument | undefined = undefined,
  ) =>
    commitString(context, id, c4(string), text, {
      round: { ...newStringRound, ...round },
      instrument,
      screenUnit: 'mm',
      reason: '',
    });
  return { context, id, enter };
}

describe('readings string by string', () => {
  it('keep their string, their point and the state of the wire', async () => {
    const { context, id, enter } = await start();
    await enter(2, '1,020', { point: ' near the bridge ', strings: 'let down', surface: 'corroded' });
    const committed = await enter(2, '1.010', { point: 'in the middle', surface: 'cleaned' });
    const job = await readJob(context, id);
    expect(job.readings).toMatchObject([
      {
        place: { key: 40, string: 2, point: 'near the bridge' },
        condition: { strings: 'let down', surface: 'corroded' },
        asRead: { value: 1.02, unit: 'mm' },
      },
      { place: { key: 40, string: 2, point: 'in the middle' }, condition: { surface: 'cleaned' } },
    ]);
    expect(committed?.readBack).toMatchObject({
      is: 'saved',
      title: 'C4·2 wire diameter, in the middle',
      value: '1.010 mm',
      alsoAs: '0.0398 in',
    });
    const rows = stringRows(job, { section: 'tenor', quantity: 'wire-diameter' });
    const row = rows.find(({ name }) => name === 'C4·2')!;
    expect(row.readings.map((one) => stringReadingWords(one, 'mm'))).toEqual([
      '1.020 mm, near the bridge, strings let down, corroded',
      '1.010 mm, in the middle, cleaned',
    ]);
    expect(rows.find(({ name }) => name === 'C4·1')?.readings).toEqual([]);
    // What was named once is offered first.
    expect(pointsOf(job, 'wire-diameter').slice(0, 2)).toEqual(['near the bridge', 'in the middle']);
  });

  it('are read in the unit of the instrument, which they name', async () => {
    const { context, id, enter } = await start();
    const { kind: _kind, v: _v, ...own } = micrometer;
    await describeInstrument(context, id, own);
    await enter(1, '.0405', {}, micrometer);
    await enter(3, '1.03 mm', {}, micrometer);
    const job = await readJob(context, id);
    expect(job.readings.map(({ asRead, instrument }) => [asRead.unit, instrument])).toEqual([
      ['in', 'micrometer 1'],
      ['mm', 'micrometer 1'],
    ]);
    expect(unitInHand('pin-coils', undefined, 'mm')).toBe('turns');
    // JCGM 100:2008, F.2.2.1: half a step of the display either way; 1 in = 25.4 mm.
    const { standardUncertainty } = asFoundRecord(job).notes[39]!.figures['wire-diameter']!;
    expect(standardUncertainty).toBeGreaterThanOrEqual((0.0001 * 0.0254) / Math.sqrt(12));
  });

  it('of a pin are its diameter, length, height and coils', async () => {
    const { context, id, enter } = await start();
    await enter(1, '7.10', { quantity: 'pin-diameter', point: 'below the coils' });
    await enter(1, '3.25', { quantity: 'pin-coils' });
    // Coils are counted in quarters of a turn: no inch is meant.
    await enter(2, '3 1/4', { quantity: 'pin-coils' });
    await enter(1, '62', { quantity: 'pin-length' });
    await enter(1, '9.5', { quantity: 'pin-height' });
    const job = await readJob(context, id);
    expect(job.readings.map(({ quantity, asRead }) => [quantity, asRead.value, asRead.unit])).toEqual([
      ['pin-diameter', 7.1, 'mm'],
      ['pin-coils', 3.25, 'turns'],
      ['pin-coils', 3.25, 'turns'],
      ['pin-length', 62, 'mm'],
      ['pin-height', 9.5, 'mm'],
    ]);
  });

  it('answer for a note only once every string has the answer', async () => {
    const { context, id, enter } = await start();
    const missing = async () => asFoundRecord(await readJob(context, id)).notes[39]!.missing;
    for (const string of [1, 2]) await enter(string, '-');
    expect(await missing()).toContain('wire-diameter');
    await enter(3, '-');
    expect(await missing()).not.toContain('wire-diameter');
    const job = await readJob(context, id);
    expect(stringRows(job, { section: 'tenor', quantity: 'wire-diameter' })[39]?.absence).toBe('none');
  });

  it('give way to an answer of their string, and come back with one step', async () => {
    const { context, id, enter } = await start();
    await enter(1, '1.02');
    await enter(1, '1.03', { point: 'near the bridge' });
    await enter(2, '1.04');
    const row = async (at: number) =>
      stringRows(await readJob(context, id), { section: 'tenor', quantity: 'wire-diameter' }).find(
        ({ name }) => name === `C4·${at}`,
      )!;
    const committed = await enter(1, '?');
    expect(await row(1)).toMatchObject({ readings: [], absence: 'unknown' });
    expect((await row(2)).readings).toHaveLength(1);
    await undoStep(context, id, committed!.step!, '');
    expect((await row(1)).readings.map(({ asRead }) => asRead.value)).toEqual([1.02, 1.03]);
    expect((await row(1)).absence).toBeUndefined();
  });

  it('are taken back in one step', async () => {
    const { context, id, enter } = await start();
    const committed = await enter(1, '1.02');
    await undoStep(context, id, committed!.step!, '');
    expect((await readJob(context, id)).readings).toEqual([]);
  });

  it('that cannot be are refused in a sentence, and nothing is kept', async () => {
    const { context, id, enter } = await start();
    await expect(enter(1, '41')).rejects.toThrow(/^Cannot record this wire diameter/);
    await expect(enter(1, 'thick')).rejects.toThrow(/^Cannot read 'thick'/);
    expect(await enter(1, ' ')).toBeUndefined();
    expect((await readJob(context, id)).readings).toEqual([]);
  });

  it('are asked of the strings that have them', async () => {
    const { context, id } = await start();
    const job = await readJob(context, id);
    expect(quantitiesIn(job, 'tenor')).not.toContain('core-diameter');
    expect(quantitiesIn(job, 'bass')).toContain('winding-length');
    expect(quantitiesIn(job, 'bass')).not.toContain('inner-layer-diameter');
    expect(stringRows(job, { section: 'bass', quantity: 'core-diameter' })).toHaveLength(52);
    expect(stringRows(job, { section: 'bass', quantity: 'wire-diameter' })).toEqual([]);
  });

  it('say nothing of a state that nobody said', () => {
    expect(conditionOf(newStringRound)).toBeUndefined();
    expect(conditionOf({ ...newStringRound, surface: 'cleaned' })).toEqual({
      strings: 'unknown',
      surface: 'cleaned',
    });
  });
});
