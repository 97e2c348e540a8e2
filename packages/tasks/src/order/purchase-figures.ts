import { english, type Language, plainMoneyText } from '@becket/core';
import type { Job, Orders } from '@becket/journal';
import type { PurchaseFigures } from '@becket/papers';
import { orderPolicyOf } from './allowances.ts';
import { quantityWords } from './item-words.ts';
import type { OrderPolicy } from './order-policy.ts';
import { purchaseList } from './purchase-list.ts';
import type { Shop } from './shop.ts';
import { sourcesInWords } from './sources-in-words.ts';
import { type Cover, coverFromStock } from './stock-cover.ts';
import { suppliesOf } from './supplies.ts';
import type { SupplyLine } from './supply-line.ts';

/** What the purchase list of a job prints, from the job, the shop and what is on order. */
export function purchaseFigures(
  job: Job,
  { shop, orders }: { readonly shop: Shop; readonly orders?: Orders | undefined },
  language: Language = english,
): PurchaseFigures {
  const { say, day, money } = language;
  const words = (quantity: number, unit: SupplyLine['unit']) => quantityWords(quantity, unit, language);
  // The day that was said last holds until another is said.
  const neededOn = orders?.orders.findLast((order) => order.neededOn !== undefined)?.neededOn;
  const supplies = suppliesOf(job, orderPolicyOf(shop.allowances), language);
  const all = [...(orders?.orders ?? []), ...shop.orders.orders];
  const list = purchaseList({ supplies, stock: shop.stock, job: job.id, orders: all, neededOn, language });
  const needRow = ({ line, cover }: { readonly line: SupplyLine; readonly cover: Cover }) => ({
    what: line.what,
    needed: line.total === undefined ? say('unknown') : words(line.total, line.unit),
    onHand: cover.onHand === undefined ? say('not counted') : words(cover.onHand, line.unit),
    toBuy: cover.toBuy === undefined ? '' : words(cover.toBuy, line.unit),
    because: line.assumed.length === 0 ? line.because : `${line.because}. ${line.assumed.join(' ')}`,
  });
  return {
    scale: supplies.scale,
    isChosenScale: supplies.isChosenScale,
    scaleProblem: supplies.scaleProblem,
    neededOn,
    suppliers: list.suppliers.map(({ supplier, currency, total, orderBy, lines }) => ({
      supplier,
      currency,
      total: money(total, currency, 'none'),
      orderBy,
      rows: lines.map((one) => {
        const { line, cover, article, packs, packWords, packHolds, price, remark } = one;
        return {
          what: line.what,
          article,
          needed: words(line.total ?? 0, line.unit),
          covered: [
            ...(cover.covered === 0
              ? []
              : [say('{quantity} on the shelf', { quantity: words(cover.covered, line.unit) })]),
            ...(cover.onOrder === 0
              ? []
              : [say('{quantity} on order', { quantity: words(cover.onOrder, line.unit) })]),
          ].join(', '),
          packs,
          pack: packWords,
          price: money(price, currency, 'none'),
          total: money(one.total, currency, 'none'),
          orderBy: one.orderBy,
          remark,
          machine: {
            item: line.id,
            unit: line.unit,
            needed: line.total ?? 0,
            toBuy: cover.toBuy ?? 0,
            packHolds,
            price: plainMoneyText(price, currency),
            total: plainMoneyText(one.total, currency),
          },
        };
      }),
    })),
    notListed: list.notListed.map(needRow),
    covered: list.covered.map(needRow),
    unknown: list.unknown.map(needRow),
    bySize: supplies.lines
      .filter(({ group, item }) => item !== undefined && (group === 'plain wire' || group === 'tuning pins'))
      .map((line) => needRow({ line, cover: coverFromStock(line, shop.stock, job.id, all) })),
    notCounted: supplies.notCounted,
    allowances: allowancesInWords(supplies.policy, language),
    orders: (orders?.orders ?? []).map(({ supplier, what, state, draftedAt, sentOn, expectedOn }) =>
      say('{supplier}, {what}: {state}; {days}', {
        supplier,
        what: say(what),
        state: say(state),
        days: [
          say('drafted {day}', { day: day(draftedAt) }),
          ...(sentOn === undefined ? [] : [say('sent {day}', { day: day(sentOn) })]),
          ...(expectedOn === undefined ? [] : [say('expected {day}', { day: day(expectedOn) })]),
        ].join(', '),
      }),
    ),
  };
}

/** What is bought beyond what is strung, one line each. */
export function allowancesInWords(
  { wire, pins, testPins, testPinsSource, softShare, cut, cutSource, source }: OrderPolicy,
  language: Language = english,
): string[] {
  const { say, fixed, plain } = language;
  const from = (words: string) => sourcesInWords(words, language);
  const share = (part: number) => `${Math.round(100 * part)} %`;
  const mm = (length: number) => `${Math.round(length * 1000)} mm`;
  return [
    say('Wire: {share} for spoilage and {spare} spare of the longest wire of each size ({source}).', {
      share: share(wire.spoilageShare),
      spare: wire.spareWires,
      source: from(wire.source),
    }),
    say(
      'Each wire: {coils} coils and {becket} for the eye on each pin, {waste} cut off there, {tie} for the loop of a tied wire ({source}).',
      {
        coils: plain(cut.coils),
        becket: mm(cut.becket_m),
        waste: mm(cut.waste_m),
        tie: mm(cut.tie_m),
        source: from(cutSource),
      },
    ),
    say(
      'Where nothing was read: front length {front}, back length {back}, hitch pin {hitchPin} mm, tuning pin {pin} mm ({source}).',
      {
        front: mm(cut.frontLength_m),
        back: mm(cut.backLength_m),
        hitchPin: fixed(cut.hitchPinDiameter_m * 1000, 1),
        pin: fixed(cut.pinDiameter_m * 1000, 1),
        source: from(source),
      },
    ),
    say(
      'Pins: {share} spares and {least} of each size at the least ({source}); {test} test pins of a size that was not driven yet ({testSource}).',
      {
        share: share(pins.spareShare),
        least: pins.leastSpares,
        source: from(pins.source),
        test: testPins,
        testSource: from(testPinsSource),
      },
    ),
    say('Felts, bushings and bridge pins: {share} spare ({source}).', {
      share: share(softShare),
      source: from(source),
    }),
  ];
}
