import { millimetres } from '@becket/core';
import { foldOrders, foldStringing } from '@becket/journal';
import { beforeEach, describe, expect, it } from 'vitest';
import { entriesOf, readJob, type TaskContext } from '../context.ts';
import { draftBassOrder, readBassOrder, signBassChecks } from '../order/bass-commands.ts';
import { moveOrder, readOrders } from '../order/orders.ts';
import { stringingFigures } from '../order/stringing-figures.ts';
import { stringsToGoOn } from '../order/strings-to-go-on.ts';
import { withdrawEntry } from '../record-reading.ts';
import { memoryContext } from '../testing/memory-context.ts';
import { wireJob } from '../testing/wire-job.ts';
import { noteStringingMishap, putWireOn } from './stringing-commands.ts';
import { nextWire, type StringingOrder, stringingCourse } from './stringing-course.ts';

let context: TaskContext;
let id: string;
beforeEach(async () => {
  context = memoryContext();
  id = await wireJob(context);
});

async function course() {
  const entries = await entriesOf(context, id);
  const job = await readJob(context, id);
  return stringingCourse(job, {
    figures: stringingFigures(job),
    stringing: foldStringing(entries),
    bass: stringsToGoOn(foldOrders(entries)),
  });
}
const next = async (order: StringingOrder, last?: string) => nextWire(await course(), order, last)?.id;
const at = (...strings: [number, number][]) => strings.map(([key, string]) => ({ key, string }));

describe('the plan of five notes', () => {
  // By hand: four notes of three strings are twelve, and loops straddle notes: six wires; the wound note has two strings.
  it('has six plain wires and two wound strings, section by section', async () => {
    const { wires, sections, on } = await course();
    expect(wires.map(({ id: name }) => name)).toEqual([
      '39/1',
      '39/2',
      '40/1 40/2',
      '40/3 41/1',
      '41/2 41/3',
      '42/1 42/2',
      '42/3 43/1',
      '43/2 43/3',
    ]);
    expect(sections).toEqual([
      { section: 'bass', wires: 2, on: 0 },
      { section: 'treble', wires: 6, on: 0 },
    ]);
    expect(on).toBe(0);
    expect(wires[2]).toMatchObject({ joined: 'looped', is: 'to do', isAgain: false, isOtherSize: false });
    expect(wires[2]!.diameter).toBeCloseTo(millimetres(1.0414), 9);
  });
});

describe('what goes on next', () => {
  it('follows the last one, passes the end, and comes back for what was left out', async () => {
    expect(await next('bass first')).toBe('39/1');
    expect(await next('treble first')).toBe('43/2 43/3');
    await putWireOn(context, id, { strings: at([42, 3], [43, 1]), diameter_m: 0.0009906 });
    expect(await next('bass first', '42/3 43/1')).toBe('43/2 43/3');
    expect(await next('treble first', '42/3 43/1')).toBe('42/1 42/2');
    await putWireOn(context, id, { strings: at([43, 2], [43, 3]), diameter_m: 0.0009906 });
    expect(await next('bass first', '43/2 43/3')).toBe('39/1');
  });

  it('is of the section with the least on it, where the load is to come on evenly', async () => {
    await putWireOn(context, id, { strings: at([39, 1]) });
    // The bass has a half, the treble nothing.
    expect(await next('even')).toBe('40/1 40/2');
  });

  it('is nothing once everything is on', async () => {
    for (const { strings } of (await course()).wires)
      await putWireOn(context, id, { strings: strings.map(({ key, string }) => ({ key, string })) });
    const { on, wires } = await course();
    expect(on).toBe(wires.length);
    for (const order of ['bass first', 'treble first', 'even'] as const)
      expect(await next(order)).toBeUndefined();
  });
});

describe('a wire that is noted', () => {
  it('is refused where one is on already, or the piano has no such string; nothing is kept then', async () => {
    await putWireOn(context, id, { strings: at([40, 1], [40, 2]) });
    const before = await entriesOf(context, id);
    await expect(putWireOn(context, id, { strings: at([40, 2]) })).rejects.toThrow(
      /^Cannot note this wire: a bare string is needed, C4 string 2 carries one that .+ noted/,
    );
    await expect(putWireOn(context, id, { strings: at([39, 3]) })).rejects.toThrow(
      'Cannot keep this wire: a string from 1 to 2 of B3 is needed, string 3 was found.',
    );
    await expect(putWireOn(context, id, { strings: at([70, 1]) })).rejects.toThrow(
      /a note from B3 to D#4 is needed/,
    );
    expect(await entriesOf(context, id)).toEqual(before);
  });

  it('says when another size went on, and when it does not lie as the plan has it', async () => {
    await putWireOn(context, id, { strings: at([40, 1], [40, 2]), diameter_m: 0.00105 });
    await putWireOn(context, id, { strings: at([41, 1]), diameter_m: 0.0010414 });
    const { wires } = await course();
    expect(wires.find((wire) => wire.id === '40/1 40/2')).toMatchObject({ is: 'on', isOtherSize: true });
    expect(wires.find((wire) => wire.id === '40/3 41/1')).toMatchObject({
      is: 'in part',
      isOtherSize: false,
    });
    expect(await next('bass first', '40/1 40/2')).toBe('41/2 41/3');
  });

  it('is taken back like any other entry', async () => {
    const { entry } = await putWireOn(context, id, { strings: at([40, 1], [40, 2]) });
    await withdrawEntry(context, id, entry, 'a slip');
    expect((await course()).on).toBe(0);
  });
});

describe('a mishap', () => {
  it('that takes a wire off has both its strings strung again', async () => {
    await putWireOn(context, id, { strings: at([40, 1], [40, 2]) });
    await noteStringingMishap(context, id, { what: 'broke', strings: at([40, 2]), isOff: true });
    const wire = (await course()).wires.find((one) => one.id === '40/1 40/2');
    expect(wire).toMatchObject({ is: 'to do', isAgain: true });
    await putWireOn(context, id, { strings: at([40, 1], [40, 2]) });
    expect((await course()).wires.find((one) => one.id === '40/1 40/2')).toMatchObject({
      is: 'on',
      isAgain: false,
    });
  });

  it('is refused where nothing can come off, or without words where words are all there is', async () => {
    const before = await entriesOf(context, id);
    await expect(
      noteStringingMishap(context, id, { what: 'broke', strings: at([40, 2]), isOff: true }),
    ).rejects.toThrow(
      'Cannot note that this wire came off: a string that carries one is needed, C4 string 2 is bare.',
    );
    await expect(
      noteStringingMishap(context, id, { what: 'other', strings: at([40, 2]), isOff: false, note: ' ' }),
    ).rejects.toThrow(/^Cannot keep this: words are needed/);
    expect(await entriesOf(context, id)).toEqual(before);
  });
});

describe('a bass string that was ordered', () => {
  it('does not go on before it is here and measured, nor does it come next', async () => {
    const { checks } = await readBassOrder(context, id);
    await signBassChecks(context, id, {
      checks: checks.map(({ id: check }) => check),
      name: 'Ada',
      reason: 'a test',
    });
    await draftBassOrder(context, id, { supplier: 'a winder' });
    const { orders } = await readOrders(context, id);
    await moveOrder(context, id, { order: orders[0]!.id, to: 'sent', on: '2026-05-04' });
    await expect(putWireOn(context, id, { strings: at([39, 1]) })).rejects.toThrow(
      'Cannot note this string: one that may go on is needed. B3 1 has not come yet.',
    );
    expect((await course()).wires[0]).toMatchObject({ is: 'to do', held: 'B3 1 has not come yet.' });
    expect(await next('bass first')).toBe('40/1 40/2');
  });
});
