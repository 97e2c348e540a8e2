import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Entry, parseEntry } from '../entry.ts';
import type { Fact } from '../facts/index.ts';
import { jobId, ulidFrom } from '../testing/arbitrary-entries.ts';
import { foldOrders } from './fold-orders.ts';

const order = ulidFrom(7001);
const entry = (number: number, step: number, fact: Fact): Entry =>
  parseEntry({
    id: ulidFrom(7000 + number),
    job: jobId,
    step,
    at: '2026-03-01T10:00:00.000Z',
    by: 'Ada',
    device: 'bench tablet',
    fact,
  });
const drafted = entry(1, 1, {
  kind: 'order-drafted',
  v: 1,
  what: 'supplies',
  supplier: 'Wire & Felt, invented',
  lines: [
    { line: 1, what: 'wire 0.991 mm', quantity: 2, unit: 'coil' },
    { line: 2, what: 'pins 7.163 mm', quantity: 5, unit: 'pack of 50' },
  ],
});
const moved = (number: number, step: number, to: 'sent' | 'confirmed' | 'cancelled', expectedOn?: string) =>
  entry(number, step, {
    kind: 'order-moved',
    v: 1,
    order,
    to,
    on: '2026-03-02',
    ...(expectedOn === undefined ? {} : { expectedOn }),
  });
const received = (number: number, step: number, lines: { line: number; quantity: number }[]) =>
  entry(number, step, {
    kind: 'goods-received',
    v: 1,
    order,
    on: '2026-03-20',
    lines,
    measured: [],
  });
const stateOf = (...entries: Entry[]) => foldOrders([drafted, ...entries]).orders[0]!.state;

describe('foldOrders()', () => {
  it('goes from drafted over sent, confirmed and partly delivered to delivered', () => {
    const [sent, confirmed] = [moved(2, 2, 'sent'), moved(3, 3, 'confirmed', '2026-03-18')];
    const [first, rest] = [
      received(4, 4, [{ line: 1, quantity: 2 }]),
      received(5, 5, [{ line: 2, quantity: 5 }]),
    ];
    expect(stateOf()).toBe('drafted');
    expect(stateOf(sent)).toBe('sent');
    expect(stateOf(sent, confirmed)).toBe('confirmed');
    expect(stateOf(sent, confirmed, first)).toBe('partly delivered');
    expect(stateOf(sent, confirmed, first, rest)).toBe('delivered');
    const [whole] = foldOrders([drafted, sent, confirmed, first]).orders;
    expect(whole).toMatchObject({ sentOn: '2026-03-02', expectedOn: '2026-03-18' });
    expect(whole!.lines.map(({ received: came, outstanding }) => [came, outstanding])).toEqual([
      [2, 0],
      [0, 5],
    ]);
  });

  it('takes a delivery back when its entry is withdrawn, and stays cancelled when nothing comes', () => {
    const came = received(4, 4, [
      { line: 1, quantity: 2 },
      { line: 2, quantity: 5 },
    ]);
    const slip = entry(5, 5, { kind: 'withdrawn', v: 1, entry: came.id, reason: 'another order' });
    expect(stateOf(came)).toBe('delivered');
    expect(stateOf(came, slip)).toBe('drafted');
    expect(stateOf(moved(6, 6, 'cancelled'))).toBe('cancelled');
    expect(stateOf(moved(6, 6, 'cancelled'), came)).toBe('delivered');
  });

  it('has nothing outstanding where more came than was ordered, and counts what came', () => {
    const [wire] = foldOrders([drafted, received(2, 2, [{ line: 1, quantity: 3 }])]).orders[0]!.lines;
    expect(wire).toMatchObject({ quantity: 2, received: 3, outstanding: 0 });
  });

  it('is the same whatever order the entries arrive in', () => {
    const own = [
      drafted,
      moved(2, 2, 'sent'),
      moved(3, 2, 'confirmed'),
      received(4, 3, [{ line: 1, quantity: 1 }]),
      received(5, 3, [{ line: 1, quantity: 1 }]),
    ];
    fc.assert(
      fc.property(fc.shuffledSubarray(own, { minLength: own.length }), (shuffled) => {
        expect(foldOrders(shuffled)).toEqual(foldOrders(own));
      }),
    );
  });

  it('keeps the last of two readings of one received string', () => {
    const measured = (number: number, step: number, value_m: number) =>
      entry(number, step, {
        kind: 'goods-received',
        v: 1,
        order,
        on: '2026-03-20',
        lines: [],
        measured: [
          {
            key: 20,
            string: 1,
            quantity: 'core-diameter',
            value_m,
            asRead: { value: value_m * 1000, unit: 'mm' },
          },
        ],
      });
    const kept = foldOrders([drafted, measured(6, 6, 0.001), measured(7, 7, 0.00101)]).orders[0]!.measured;
    expect(kept.map(({ value_m }) => value_m)).toEqual([0.00101]);
  });
});
