import { makeLanguage } from '@becket/core';
import { describe, expect, it } from 'vitest';
import type { Fact, FactOf } from '../facts/index.ts';
import { foldJob } from '../fold/fold-job.ts';
import { foldOrders } from '../fold/fold-orders.ts';
import { german } from '../german.ts';
import { entryOf } from '../testing/arbitrary-entries.ts';
import { bassOrder, changedSinceOrder } from './bass-order.ts';
import type { Stated } from './bass-string.ts';

type Read = readonly [FactOf<'reading'>['quantity'], number, string?: number];

/** E2 with two strings of one layer; every length that a maker asks for, in millimetres. */
const whole: readonly Read[] = [
  ['core-diameter', 1.1],
  ['over-all-diameter', 2.1],
  ['speaking-length', 1000],
  ['bare-front', 20],
  ['bare-back', 15],
  ['winding-length', 965],
  ['loop-to-winding', 95],
  ['back-length', 80],
  ['front-length', 120],
  ['hitch-pin-diameter', 4],
];

function entriesOf(readings: readonly Read[], more: readonly Fact[] = []) {
  const facts: Fact[] = [
    { kind: 'job-opened', v: 1, title: 'one bass note' },
    { kind: 'piano-described', v: 1, form: 'grand', firstKey: 20, lastKey: 21, referencePitch_hz: 440 },
    {
      kind: 'section-described',
      v: 1,
      section: 'bass',
      firstKey: 20,
      lastKey: 20,
      bridge: 'bass',
      frontTermination: 'agraffe',
    },
    { kind: 'unisons-described', v: 1, firstKey: 20, lastKey: 20, strings: 2, winding: 'wound', layers: 1 },
    { kind: 'winding-described', v: 1, key: 20, loopStyle: 'twisted loop', twist: 'left' },
    ...readings.map(
      ([quantity, value, string]): Fact => ({
        kind: 'reading',
        v: 1,
        quantity,
        place: { key: 20, ...(string === undefined ? {} : { string }) },
        value_si: value / 1000,
        asRead: { value, unit: 'mm' },
        origin: 'measured',
        stage: 'as found',
      }),
    ),
    ...more,
  ];
  return facts.map((fact, index) => entryOf(index, index + 1, fact));
}
const orderOf = (readings: readonly Read[], more?: readonly Fact[]) => {
  const entries = entriesOf(readings, more);
  return bassOrder(foldJob(entries), { signed: foldOrders(entries).signed });
};
const inMm = (one: Stated | undefined) => (one?.is === 'length' ? one.value * 1000 : undefined);
const without = (quantity: Read[0]) => whole.filter(([name]) => name !== quantity);
const withValue = (quantity: Read[0], value: number): Read[] => [...without(quantity), [quantity, value]];

describe('bassOrder()', () => {
  it('lets a whole set of readings that agree go out: 20 + 965 + 15 = 1000, 80 + 15 = 95', () => {
    const { strings, checks, mayBeSent } = orderOf(whole);
    expect(checks).toEqual([]);
    expect(mayBeSent).toBe(true);
    expect(strings.map(({ note, side, loopStyle }) => [note, side, loopStyle])).toEqual([
      ['E2', 'left', 'twisted loop'],
      ['E2', 'right', 'twisted loop'],
    ]);
    const [{ stated } = { stated: undefined }] = strings;
    // Loop to termination: back length and speaking length, 80 + 1000 mm.
    expect(inMm(stated?.['loop-to-termination'])).toBeCloseTo(1080, 9);
    // Winding wire: half of what it adds, (2.1 − 1.1)/2.
    expect(inMm(stated?.['winding-wire-diameter'])).toBeCloseTo(0.5, 9);
    expect(stated?.['inner-wire-diameter']).toEqual({ is: 'absent', why: 'does not apply' });
    // Beyond the front: 120 + 3·π·(7.2 + 1.1) + 12 + 50 = 260.23 mm.
    expect(inMm(stated?.['core-beyond-front'])).toBeCloseTo(260.23, 2);
  });

  it('works out what was not read from what was, and says so', () => {
    const [string] = orderOf(
      without('winding-length').filter(([name]) => name !== 'loop-to-winding'),
    ).strings;
    expect(string?.stated['winding-length']).toMatchObject({ from: 'worked out' });
    expect(inMm(string?.stated['winding-length'])).toBeCloseTo(965, 9);
    expect(inMm(string?.stated['loop-to-winding'])).toBeCloseTo(95, 9);
  });

  it('takes the reading of one string for that string, and of the note for the other', () => {
    const { strings } = orderOf([...whole, ['over-all-diameter', 2.05, 2]]);
    expect(strings.map(({ stated }) => inMm(stated['over-all-diameter'])?.toFixed(3))).toEqual([
      '2.100',
      '2.050',
    ]);
  });

  it.each([
    ['E2/missing/core-diameter', without('core-diameter')],
    ['E2/winding and bare ends do not make the speaking length', withValue('winding-length', 900)],
    ['E2/loop to winding does not reach the bare end', withValue('loop-to-winding', 60)],
    ['E2/diameters do not grow outwards', withValue('over-all-diameter', 1)],
    ['E2/unison/2/core-diameter', [...whole, ['core-diameter', 1.25, 2]] as Read[]],
  ])('holds the order back for %s until somebody signs that very sentence', (id, readings) => {
    const { checks, mayBeSent } = orderOf(readings);
    expect(mayBeSent).toBe(false);
    expect(checks.map((check) => check.id)).toContain(id);
    const sign = (sentence: string) =>
      checks.map(
        (check): Fact => ({
          kind: 'order-check-signed',
          v: 1,
          check: check.id,
          sentence: check.id === id ? sentence : check.sentence,
          name: 'Ada',
          reason: 'the maker has the old string',
        }),
      );
    const { sentence } = checks.find((check) => check.id === id)!;
    expect(orderOf(readings, sign(sentence)).mayBeSent).toBe(true);
    expect(orderOf(readings, sign('something else')).mayBeSent).toBe(false);
  });

  it('keeps a signature in whichever language and unit the checks are read', () => {
    const readings = withValue('winding-length', 900);
    const sign = orderOf(readings).checks.map(
      ({ id, signs }): Fact => ({
        kind: 'order-check-signed',
        v: 1,
        check: id,
        sentence: signs,
        name: 'Ada',
        reason: 'the maker has the old string',
      }),
    );
    const entries = entriesOf(readings, sign);
    const read = bassOrder(
      foldJob(entries),
      { signed: foldOrders(entries).signed, lengthUnit: 'in' },
      makeLanguage('de-DE', german),
    );
    expect(read.mayBeSent).toBe(true);
    expect(read.scale).toBe('die vorgefundene Mensur; noch ist keine Mensur gewählt');
  });

  it('asks in German', () => {
    const entries = entriesOf(without('hitch-pin-diameter'));
    const { checks } = bassOrder(foldJob(entries), {}, makeLanguage('de-DE', german));
    expect(checks.map(({ sentence }) => sentence)).toEqual([
      'E2, Durchmesser des Anhangstifts: nicht gemessen. Messen oder mit Namen dem Saitenmacher überlassen.',
    ]);
  });

  it('never lets an order of no string go out', () => {
    expect(orderOf([]).strings).toHaveLength(2);
    const plain: Fact = {
      kind: 'unisons-described',
      v: 1,
      firstKey: 20,
      lastKey: 20,
      strings: 3,
      winding: 'plain',
      layers: 0,
    };
    expect(orderOf([], [plain])).toMatchObject({ strings: [], mayBeSent: false });
  });

  it('changes its digest with a figure, and not with a remark or a second reading that agrees', () => {
    const { digest } = orderOf(whole);
    expect(digest).toMatch(/^[0-9a-f]{64}$/);
    expect(orderOf([...whole, ['core-diameter', 1.1]]).digest).toBe(digest);
    expect(orderOf(withValue('core-diameter', 1.101)).digest).not.toBe(digest);
  });

  it('says when the strings are no longer those of an order that went out', () => {
    const order = {
      scaleDigest: orderOf(whole).digest,
      draftedAt: '2026-03-01T10:00:00Z',
      supplier: 'Invented',
    };
    expect(changedSinceOrder(orderOf(whole), order)).toBeUndefined();
    expect(changedSinceOrder(orderOf(withValue('bare-back', 16)), order)).toContain('Compare the paper');
    // An order that kept no digest cannot be compared.
    expect(changedSinceOrder(orderOf(whole), { ...order, scaleDigest: undefined })).toBeUndefined();
  });

  it('takes core and winding of the chosen scale, and works the winding out anew', () => {
    const proposed: Fact = {
      kind: 'scale-proposed',
      v: 1,
      name: 'softer bass',
      notes: [
        {
          winding: 'wound',
          key: 20,
          core_m: 0.0011684,
          layers: [{ wire_m: 0.0006, bareFront_m: 0.022, bareBack_m: 0.012 }],
          from: 'computed',
        },
      ],
      madeFrom: 'a'.repeat(64),
    };
    const entries = entriesOf(whole, [proposed]);
    const chosen = entryOf(99, 99, {
      kind: 'scale-chosen',
      v: 1,
      scale: entries.at(-1)!.id,
      reason: 'a test',
      digest: 'b'.repeat(64),
    });
    const order = bassOrder(foldJob([...entries, chosen]));
    const { stated } = order.strings[0]!;
    expect(order.scale).toContain('softer bass');
    // The digest in this choice is invented, so the scale is said to have changed since.
    expect(order.scaleProblem).toContain('has changed since');
    expect(inMm(stated['core-diameter'])).toBeCloseTo(1.1684, 6);
    // 1.1684 + 2·0.6 = 2.3684; 1000 − 22 − 12 = 966; 80 + 12 = 92.
    expect(inMm(stated['over-all-diameter'])).toBeCloseTo(2.3684, 6);
    expect(inMm(stated['winding-wire-diameter'])).toBeCloseTo(0.6, 9);
    expect(inMm(stated['winding-length'])).toBeCloseTo(966, 6);
    expect(inMm(stated['loop-to-winding'])).toBeCloseTo(92, 6);
  });
});
