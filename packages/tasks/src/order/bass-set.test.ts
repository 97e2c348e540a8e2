import type { ReadingQuantityName, Stated } from '@becket/journal';
import { describe, expect, it } from 'vitest';
import { addFacts, type TaskContext } from '../context.ts';
import { describeJob } from '../describe-job.ts';
import { makePaper } from '../make-paper.ts';
import { openJob } from '../open-job.ts';
import { recordReadings } from '../record-reading.ts';
import { memoryContext } from '../testing/memory-context.ts';
import { orderPolicyOf, setAllowance, takeBackAllowance } from './allowances.ts';
import { BassOrderNotReady, draftBassOrder, readBassOrder, signBassChecks } from './bass-commands.ts';
import { STARTING_ORDER_POLICY } from './order-policy.ts';
import { moveOrder, readOrders, receiveGoods } from './orders.ts';
import { acceptDifference, receivedStrings } from './received-strings.ts';
import { readShop } from './shop.ts';
import { stringsToGoOn } from './strings-to-go-on.ts';

/** One note of two wound strings, with every length but the loop style. */
async function bassNote(
  context: TaskContext,
  more: readonly (readonly [quantity: ReadingQuantityName, value_mm: number, string?: number])[] = [],
) {
  const { id } = await openJob(context, { title: 'one bass note' });
  await describeJob(context, id, {
    piano: { form: 'grand', firstKey: 20, lastKey: 21, referencePitch_hz: 440 },
    sections: [{ section: 'bass', firstKey: 20, lastKey: 20, bridge: 'bass', frontTermination: 'agraffe' }],
    unisons: [{ firstKey: 20, lastKey: 20, strings: 2, winding: 'wound', layers: 1 }],
  });
  const read = (quantity: ReadingQuantityName, value: number, string?: number) =>
    ({
      quantity,
      place: { key: 20, ...(string === undefined ? {} : { string }) },
      value,
      unit: 'mm',
      origin: 'measured',
      stage: 'as found',
    }) as const;
  await recordReadings(context, id, [
    read('core-diameter', 1.1),
    read('over-all-diameter', 2.1),
    read('speaking-length', 1000),
    read('bare-front', 20),
    read('bare-back', 15),
    read('back-length', 80),
    read('hitch-pin-diameter', 4),
    ...more.map((one) => read(...one)),
  ]);
  return id;
}

async function sentOrder(context: TaskContext) {
  const job = await bassNote(context);
  const { checks } = await readBassOrder(context, job);
  await signBassChecks(context, job, {
    checks: checks.map(({ id }) => id),
    name: 'Ada',
    reason: 'the maker has the old loops',
  });
  const { orders } = await draftBassOrder(context, job, { supplier: 'Invented Strings' });
  const order = orders[0]!.id;
  await moveOrder(context, job, { order, to: 'sent', on: '2026-03-02' });
  return { job, order };
}

const measured = (
  quantity: 'core-diameter' | 'over-all-diameter' | 'hitch-loop-diameter',
  value: number,
  string = 1,
) => ({
  key: 20,
  string,
  quantity,
  value_m: value / 1000,
  asRead: { value, unit: 'mm' as const },
});

describe('the allowances of the bass strings', () => {
  const inMm = (one: Stated | undefined) => (one?.is === 'length' ? one.value * 1000 : undefined);

  it('lengthen the core beyond the front by what they say, on the order and on its paper, until they are taken back', async () => {
    const context = memoryContext();
    const job = await bassNote(context, [['front-length', 120]]);
    const core = async () =>
      inMm((await readBassOrder(context, job)).strings[0]!.stated['core-beyond-front'])!;
    const paper = async () =>
      new TextDecoder().decode(
        (await makePaper(context, job, { paper: 'bass-string-order', format: 'csv' })).bytes,
      );
    const { digest } = await readBassOrder(context, job);
    const before = await core();
    expect(before).toBeCloseTo(120 + 3 * Math.PI * (7.2 + 1.1) + 12 + 50, 6);
    const printed = await paper();
    expect(printed).toContain(before.toFixed(1));
    const source = 'our string maker';
    await setAllowance(context, { name: 'bass-coils', value: 4, source });
    await setAllowance(context, { name: 'bass-waste_m', value: 0.08, source });
    // One coil more is the circumference of its middle, π · (7.2 + 1.1) mm; 80 − 50 = 30 mm more are cut off.
    expect(await core()).toBeCloseTo(before + Math.PI * (7.2 + 1.1) + 30, 6);
    expect((await readBassOrder(context, job)).digest).not.toBe(digest);
    expect(await paper()).toContain((await core()).toFixed(1));
    // The plain wires have allowances of their own.
    expect(orderPolicyOf((await readShop(context)).allowances)).toEqual(STARTING_ORDER_POLICY);
    for (const name of ['bass-coils', 'bass-waste_m'])
      await takeBackAllowance(context, { name, reason: 'typed by a slip' });
    expect((await readBassOrder(context, job)).digest).toBe(digest);
    expect(await paper()).toBe(printed);
  });

  it('decide which figures a check lets pass', async () => {
    const context = memoryContext();
    // 20 + 960 + 15 = 995: 5 mm short of the speaking length. The over-all diameters of one note are 0.1 mm apart.
    const job = await bassNote(context, [
      ['winding-length', 960],
      ['over-all-diameter', 2.2, 2],
    ]);
    const checks = async () =>
      (await readBassOrder(context, job)).checks.map(({ id }) => id).filter((id) => !id.includes('missing'));
    const [lengths, unison] = [
      'E2/winding and bare ends do not make the speaking length',
      'E2/unison/2/over-all-diameter',
    ];
    expect(await checks()).toEqual([lengths, unison]);
    const source = 'our string maker';
    await setAllowance(context, { name: 'bass-length-tolerance_m', value: 0.006, source });
    expect(await checks()).toEqual([unison]);
    await setAllowance(context, { name: 'bass-unison-tolerance_m', value: 0.00015, source });
    expect(await checks()).toEqual([]);
    await takeBackAllowance(context, { name: 'bass-length-tolerance_m', reason: 'too wide' });
    expect(await checks()).toEqual([lengths]);
  });
});

describe('ordering a bass set', () => {
  it('is refused while a check is neither passed nor signed, and keeps nothing', async () => {
    const context = memoryContext();
    const job = await bassNote(context);
    const before = (await context.store.entries(job)).entries.length;
    await expect(draftBassOrder(context, job, { supplier: 'Invented Strings' })).rejects.toThrow(
      BassOrderNotReady,
    );
    await expect(draftBassOrder(context, job, { supplier: 'Invented Strings' })).rejects.toThrow(
      'every check has to pass or be signed by name, 1 does not. The first: E2: the loop style is not stated.',
    );
    await expect(
      signBassChecks(context, job, { checks: ['E2/nothing'], name: 'Ada', reason: 'x' }),
    ).rejects.toThrow('a check of this order that does not pass is needed');
    await expect(signBassChecks(context, job, { checks: [], name: ' ', reason: 'x' })).rejects.toThrow(
      'a name is needed',
    );
    expect((await context.store.entries(job)).entries).toHaveLength(before);
  });

  it('keeps each string as it was ordered, and its digest', async () => {
    const context = memoryContext();
    const { job } = await sentOrder(context);
    const [order] = (await readOrders(context, job)).orders;
    expect(order?.lines.map(({ what }) => what)).toEqual(['E2 left', 'E2 right']);
    expect(order?.bassStrings[0]?.lengths_m).toMatchObject({
      'core-diameter': 0.0011,
      'winding-length': 0.965,
    });
    expect(order?.scaleDigest).toBe((await readBassOrder(context, job)).digest);
  });
});

describe('a bass set that came', () => {
  it('may be strung once every string is here, measured, and alike or taken by name', async () => {
    const context = memoryContext();
    const { job, order } = await sentOrder(context);
    const state = async () => {
      const orders = await readOrders(context, job);
      return receivedStrings(orders.orders[0]!, orders.signed);
    };
    await receiveGoods(context, job, {
      order,
      on: '2026-04-02',
      lines: [{ line: 1, quantity: 1 }],
      // 0.04 mm of 0.05 mm over the winding is within; a core 0.02 mm thick is beyond 0.01 mm.
      measured: [measured('over-all-diameter', 2.14), measured('core-diameter', 1.12)],
    });
    const first = await state();
    expect(first.comparisons.map(({ quantity, is }) => [quantity, is])).toEqual([
      ['over-all-diameter', 'within tolerance'],
      ['core-diameter', 'beyond tolerance'],
    ]);
    expect(first.comparisons[1]?.sentence).toBe(
      'E2 string 1, core: 1.120 mm (0.0441 in) measured, 1.100 mm (0.0433 in) ordered. Do not string it before it is settled with the maker.',
    );
    expect(first).toMatchObject({ mayBeStrung: false, notMeasured: ['E2 2'] });
    await receiveGoods(context, job, {
      order,
      on: '2026-04-03',
      lines: [{ line: 2, quantity: 1 }],
      measured: [measured('core-diameter', 1.1, 2), measured('hitch-loop-diameter', 4.2, 2)],
    });
    expect(await state()).toMatchObject({ mayBeStrung: false, notMeasured: [] });
    await acceptDifference(context, job, {
      order,
      id: 'received/E2/1/core-diameter',
      name: 'Ada',
      reason: 'the maker confirms the core; tension looked at again',
    });
    expect((await state()).mayBeStrung).toBe(true);
    // Another reading is another difference: the signature does not cover it.
    await receiveGoods(context, job, {
      order,
      on: '2026-04-04',
      lines: [],
      measured: [measured('core-diameter', 1.14)],
    });
    expect((await state()).mayBeStrung).toBe(false);
  });

  it('does not pass a hitch loop that is narrower than its pin', async () => {
    const context = memoryContext();
    const { job, order } = await sentOrder(context);
    const { orders, signed } = await receiveGoods(context, job, {
      order,
      on: '2026-04-02',
      lines: [],
      measured: [measured('hitch-loop-diameter', 3.8), measured('hitch-loop-diameter', 4, 2)],
    });
    expect(receivedStrings(orders[0]!, signed).comparisons.map(({ is }) => is)).toEqual([
      'beyond tolerance',
      'within tolerance',
    ]);
  });

  it('is measured against the order that went out, not against a scale that changed since', async () => {
    const context = memoryContext();
    const { job, order } = await sentOrder(context);
    const { entries } = await addFacts(context, job, [
      {
        kind: 'scale-proposed',
        v: 1,
        name: 'later',
        notes: [
          {
            winding: 'wound',
            key: 20,
            core_m: 0.0012,
            layers: [{ wire_m: 0.0005, bareFront_m: 0.02, bareBack_m: 0.015 }],
            from: 'by hand',
          },
        ],
        madeFrom: 'a'.repeat(64),
      },
    ]);
    await addFacts(context, job, [
      { kind: 'scale-chosen', v: 1, scale: entries[0]!.id, reason: 'later', digest: 'b'.repeat(64) },
    ]);
    const { orders, signed } = await receiveGoods(context, job, {
      order,
      on: '2026-04-02',
      lines: [],
      measured: [measured('core-diameter', 1.1)],
    });
    expect(receivedStrings(orders[0]!, signed).comparisons[0]?.is).toBe('within tolerance');
  });

  it('tells of each string whether it may go on', async () => {
    const context = memoryContext();
    const { job, order } = await sentOrder(context);
    const states = async () =>
      stringsToGoOn(await readOrders(context, job)).map(({ name, is }) => `${name}: ${is}`);
    expect(await states()).toEqual(['E2 1: not here', 'E2 2: not here']);

    const on = '2026-03-20';
    await receiveGoods(context, job, { order, on, lines: [{ line: 2, quantity: 1 }], measured: [] });
    expect(await states()).toEqual(['E2 1: not here', 'E2 2: not measured']);

    // 1.108 mm is within 0.01 mm of the 1.1 mm ordered, 1.13 mm is not.
    const readings = [measured('core-diameter', 1.108), measured('core-diameter', 1.13, 2)];
    await receiveGoods(context, job, { order, on, lines: [{ line: 1, quantity: 1 }], measured: readings });
    expect(await states()).toEqual(['E2 1: may go on', 'E2 2: differs']);

    const id = 'received/E2/2/core-diameter';
    await acceptDifference(context, job, { order, id, name: 'Ada', reason: 'only on trial' });
    const [, second] = stringsToGoOn(await readOrders(context, job));
    expect(second).toMatchObject({ is: 'taken by name', supplier: 'Invented Strings' });
    expect(second!.says[0]).toMatch(/1\.130 mm .* Taken by Ada: only on trial$/);

    // The same strings ordered again: the later order is what counts.
    await draftBassOrder(context, job, { supplier: 'Other Strings' });
    expect(await states()).toEqual(['E2 1: not here', 'E2 2: not here']);
    const again = (await readOrders(context, job)).orders[1]!.id;
    await moveOrder(context, job, { order: again, to: 'cancelled', on });
    expect(await states()).toEqual(['E2 1: may go on', 'E2 2: taken by name']);
  });
});
