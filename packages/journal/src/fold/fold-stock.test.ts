import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Entry } from '../entry.ts';
import { parseEntry } from '../entry.ts';
import type { Fact } from '../facts/index.ts';
import { type StockItem, stockItemId } from '../facts/stock-item.ts';
import { ulidFrom } from '../testing/arbitrary-entries.ts';
import { ulidSchema } from '../ulid.ts';
import { foldStock, SHOP_JOURNAL, type StockLine } from './fold-stock.ts';
import { mergeJournals } from './order.ts';

const wire: StockItem = { kind: 'wire', diameter_m: 0.0009906 };
const pin: StockItem = { kind: 'tuning pin', diameter_m: 0.0071628, length_m: 0.0635 };
const items: readonly StockItem[] = [wire, pin, { kind: 'other', name: 'Red felt', unit: 'mm' }];
const [jobA, jobB] = [ulidFrom(11), ulidFrom(12)];

const entry = (number: number, step: number, fact: Fact, by = 'Ada'): Entry =>
  parseEntry({
    id: ulidFrom(5000 + number),
    job: SHOP_JOURNAL,
    step,
    at: '2026-03-01T10:00:00.000Z',
    by,
    device: 'bench tablet',
    fact,
  });
const reserved = (item: StockItem, quantity: number, job: string, jobTitle: string): Fact => ({
  kind: 'stock-reserved',
  v: 1,
  item,
  quantity,
  job,
  jobTitle,
});
const lineOf = (entries: readonly Entry[], item: StockItem): StockLine =>
  foldStock(entries).lines.find(({ id }) => id === stockItemId(item))!;

/** A journal of the shop as several devices might write it: steps repeat, releases point anywhere. */
const journals = fc
  .array(
    fc.record({
      step: fc.integer({ min: 1, max: 8 }),
      kind: fc.integer({ min: 0, max: 5 }),
      item: fc.constantFrom(...items),
      quantity: fc.integer({ min: 1, max: 500 }),
      job: fc.constantFrom(jobA, jobB),
      target: fc.nat({ max: 30 }),
    }),
    { maxLength: 30 },
  )
  .map((plans) =>
    plans.map(({ step, kind, item, quantity, job, target }, index) => {
      const facts: Fact[] = [
        { kind: 'stock-counted', v: 1, item, quantity },
        { kind: 'stock-received', v: 1, item, quantity },
        { kind: 'stock-used', v: 1, item, quantity, job },
        reserved(item, quantity, job, 'a job'),
        { kind: 'reservation-released', v: 1, reservation: ulidFrom(5000 + target), reason: 'not needed' },
        { kind: 'withdrawn', v: 1, entry: ulidFrom(5000 + target), reason: 'a slip' },
      ];
      return entry(index, step, facts[kind]!);
    }),
  );

describe('foldStock()', () => {
  it('has an id that no job gets: a ULID of the first millisecond of 1970', () => {
    expect(ulidSchema.parse(SHOP_JOURNAL)).toBe(SHOP_JOURNAL);
  });

  it('comes to the same whatever order the entries arrive in, and however the devices merge', () => {
    fc.assert(
      fc.property(
        journals.chain((own) =>
          fc.tuple(
            fc.constant(own),
            fc.shuffledSubarray(own, { minLength: own.length }),
            fc.integer({ min: 0, max: own.length }),
          ),
        ),
        ([own, shuffled, cut]) => {
          const whole = foldStock(own);
          expect(foldStock(shuffled)).toEqual(whole);
          expect(foldStock([...shuffled, ...own])).toEqual(whole);
          const [here, there] = [shuffled.slice(0, cut), shuffled.slice(cut)];
          expect(foldStock(mergeJournals([here, there]))).toEqual(whole);
          expect(foldStock(mergeJournals([there, here]))).toEqual(whole);
        },
      ),
    );
  });

  it('loses nothing: on hand is what came in less what was used and what counting corrected', () => {
    fc.assert(
      fc.property(journals, (own) => {
        for (const line of foldStock(own).lines) {
          if (line.onHand === undefined) {
            expect([line.received, line.used]).toEqual([0, 0]);
            continue;
          }
          expect(line.onHand).toBe(line.received - line.used + line.corrected);
          expect(line.free).toBe(line.onHand - line.reserved);
          const covered = line.reservations.reduce((sum, one) => sum + one.covered, 0);
          expect(covered).toBe(Math.min(line.reserved, Math.max(0, line.onHand)));
          for (const one of line.reservations) expect(one.open).toBeLessThanOrEqual(one.reserved);
        }
      }),
    );
  });

  it('keeps both reservations of two devices that did not know of each other, and shows who lacks what', () => {
    const shelf = entry(1, 1, { kind: 'stock-counted', v: 1, item: wire, quantity: 600 });
    const onTablet = entry(2, 2, reserved(wire, 400, jobA, 'Upright of Mr A'), 'Ada');
    const onPhone = entry(3, 2, reserved(wire, 500, jobB, 'Grand of Ms B'), 'Bo');
    const line = lineOf(
      mergeJournals([
        [shelf, onPhone],
        [shelf, onTablet],
      ]),
      wire,
    );
    expect(line).toMatchObject({ onHand: 600, reserved: 900, free: -300 });
    expect(line.reservations).toMatchObject([
      { by: 'Ada', jobTitle: 'Upright of Mr A', open: 400, covered: 400 },
      { by: 'Bo', jobTitle: 'Grand of Ms B', open: 500, covered: 200 },
    ]);
  });

  it('takes what was used for a job from what was set aside for it, and leaves the other job alone', () => {
    const own = [
      entry(1, 1, { kind: 'stock-received', v: 1, item: pin, quantity: 250 }),
      entry(2, 2, reserved(pin, 200, jobA, 'A')),
      entry(3, 3, reserved(pin, 30, jobB, 'B')),
      entry(4, 4, { kind: 'stock-used', v: 1, item: pin, quantity: 150, job: jobA }),
    ];
    // 250 − 150 = 100 on hand; 50 and 30 still set aside; 20 free.
    expect(lineOf(own, pin)).toMatchObject({ onHand: 100, reserved: 80, free: 20 });
    const released = entry(5, 5, {
      kind: 'reservation-released',
      v: 1,
      reservation: ulidFrom(5002),
      reason: 'done',
    });
    expect(lineOf([...own, released], pin)).toMatchObject({ onHand: 100, reserved: 30, free: 70 });
  });

  it('does not know what nobody counted, which is not none', () => {
    const own = [entry(1, 1, reserved(wire, 10, jobA, 'A'))];
    expect(lineOf(own, wire)).toMatchObject({ onHand: undefined, free: undefined, reserved: 10 });
    const counted = entry(2, 2, { kind: 'stock-counted', v: 1, item: wire, quantity: 0 });
    expect(lineOf([...own, counted], wire)).toMatchObject({ onHand: 0, free: -10 });
  });

  it('takes the same thing written twice for one line', () => {
    const own = [
      entry(1, 1, { kind: 'stock-received', v: 1, item: { ...wire, diameter_m: 0.000991 }, quantity: 5 }),
      entry(2, 2, { kind: 'stock-received', v: 1, item: wire, quantity: 7 }),
      entry(3, 3, {
        kind: 'stock-received',
        v: 1,
        item: { kind: 'other', name: ' red  FELT', unit: 'mm' },
        quantity: 3,
      }),
      entry(4, 4, {
        kind: 'stock-received',
        v: 1,
        item: { kind: 'other', name: 'Red felt', unit: 'mm' },
        quantity: 4,
      }),
    ];
    expect(foldStock(own).lines.map(({ id, onHand }) => [id, onHand])).toEqual([
      ['red felt (mm)', 7],
      ['wire 0.991 mm', 12],
    ]);
  });
});
