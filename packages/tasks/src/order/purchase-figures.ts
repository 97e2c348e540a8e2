import { moneyText, plainMoneyText } from '@becket/core';
import type { Job, Orders } from '@becket/journal';
import type { PurchaseFigures } from '@becket/papers';
import { orderPolicyOf } from './allowances.ts';
import { quantityWords } from './item-words.ts';
import type { OrderPolicy } from './order-policy.ts';
import { purchaseList } from './purchase-list.ts';
import type { Shop } from './shop.ts';
import { type Cover, coverFromStock } from './stock-cover.ts';
import { suppliesOf } from './supplies.ts';
import type { SupplyLine } from './supply-line.ts';

/** What the purchase list of a job prints, from the job, the shop and what is on order. */
export function purchaseFigures(job: Job, shop: Shop, orders: Orders | undefined): PurchaseFigures {
  // The day that was said last holds until another is said.
  const neededOn = orders?.orders.findLast((order) => order.neededOn !== undefined)?.neededOn;
  const supplies = suppliesOf(job, orderPolicyOf(shop.allowances));
  const all = [...(orders?.orders ?? []), ...shop.orders.orders];
  const list = purchaseList({ supplies, stock: shop.stock, job: job.id, orders: all, neededOn });
  const needRow = ({ line, cover }: { readonly line: SupplyLine; readonly cover: Cover }) => ({
    what: line.what,
    needed: line.total === undefined ? 'unknown' : quantityWords(line.total, line.unit),
    onHand: cover.onHand === undefined ? 'not counted' : quantityWords(cover.onHand, line.unit),
    toBuy: cover.toBuy === undefined ? '' : quantityWords(cover.toBuy, line.unit),
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
      total: moneyText(total, currency, { locale: 'en-GB', currencyAs: 'none' }),
      orderBy,
      rows: lines.map((one) => {
        const { line, cover, article, packs, packWords, packHolds, price, remark } = one;
        const style = { locale: 'en-GB', currencyAs: 'none' } as const;
        return {
          what: line.what,
          article,
          needed: quantityWords(line.total ?? 0, line.unit),
          covered: [
            ...(cover.covered === 0 ? [] : [`${quantityWords(cover.covered, line.unit)} on the shelf`]),
            ...(cover.onOrder === 0 ? [] : [`${quantityWords(cover.onOrder, line.unit)} on order`]),
          ].join(', '),
          packs,
          pack: packWords,
          price: moneyText(price, currency, style),
          total: moneyText(one.total, currency, style),
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
    allowances: allowancesInWords(supplies.policy),
    orders: (orders?.orders ?? []).map(
      ({ supplier, what, state, draftedAt, sentOn, expectedOn }) =>
        `${supplier}, ${what}: ${state}; drafted ${draftedAt.slice(0, 10)}${sentOn === undefined ? '' : `, sent ${sentOn}`}${expectedOn === undefined ? '' : `, expected ${expectedOn}`}`,
    ),
  };
}

/** What is bought beyond what is strung, one line each. */
export function allowancesInWords({
  wire,
  pins,
  testPins,
  testPinsSource,
  softShare,
  cut,
  cutSource,
  source,
}: OrderPolicy): string[] {
  const share = (part: number) => `${Math.round(100 * part)} %`;
  const mm = (length: number) => `${Math.round(length * 1000)} mm`;
  return [
    `Wire: ${share(wire.spoilageShare)} for spoilage and ${wire.spareWires} spare of the longest wire of each size (${wire.source}).`,
    `Each wire: ${cut.coils} coils and ${mm(cut.becket_m)} for the eye on each pin, ${mm(cut.waste_m)} cut off there, ${mm(cut.tie_m)} for the loop of a tied wire (${cutSource}).`,
    `Where nothing was read: front length ${mm(cut.frontLength_m)}, back length ${mm(cut.backLength_m)}, hitch pin ${(cut.hitchPinDiameter_m * 1000).toFixed(1)} mm, tuning pin ${(cut.pinDiameter_m * 1000).toFixed(1)} mm (${source}).`,
    `Pins: ${share(pins.spareShare)} spares and ${pins.leastSpares} of each size at the least (${pins.source}); ${testPins} test pins of a size that was not driven yet (${testPinsSource}).`,
    `Felts, bushings and bridge pins: ${share(softShare)} spare (${source}).`,
  ];
}
