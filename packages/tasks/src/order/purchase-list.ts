import {
  addToGroup,
  coilsToBuy,
  english,
  inKilograms,
  kilograms,
  type Language,
  type MinorUnits,
  metres,
  minorUnits,
  packsToBuy,
  sumOfMoney,
  wireMass,
} from '@becket/core';
import { type Order, type PriceLine, type Stock, stockItemId, stockUnitOf, type Ulid } from '@becket/journal';
import { type Cover, coverFromStock, reorderList } from './stock-cover.ts';
import type { Supplies } from './supplies.ts';
import { lineOf, type SupplyLine } from './supply-line.ts';

/** One thing to buy from one supplier. */
export interface PurchaseLine {
  readonly line: SupplyLine;
  readonly cover: Cover;
  readonly article: string;
  /** Packs, coils or pieces to buy. */
  readonly packs: number;
  /** 'coil of 500 g', 'pack of 50' */
  readonly packWords: string;
  /** What one holds, whole numbers of the line's unit. */
  readonly packHolds: number;
  readonly price: MinorUnits;
  readonly total: MinorUnits;
  readonly leadTime_days: number | undefined;
  /** By when it has to be ordered to be here in time; undefined where no day or no lead time is known. */
  readonly orderBy: string | undefined;
  /** Set where coils could not be laid out wire by wire. */
  readonly remark: string | undefined;
}

export interface SupplierPurchase {
  readonly supplier: string;
  readonly currency: string;
  readonly lines: readonly PurchaseLine[];
  readonly total: MinorUnits;
  /** The earliest of its lines. */
  readonly orderBy: string | undefined;
}

export interface PurchaseList {
  /** By name. */
  readonly suppliers: readonly SupplierPurchase[];
  /** To buy, but in no price list. */
  readonly notListed: readonly { readonly line: SupplyLine; readonly cover: Cover }[];
  /** Covered by the stock or by what is on order. */
  readonly covered: readonly { readonly line: SupplyLine; readonly cover: Cover }[];
  /** Quantity unknown. */
  readonly unknown: readonly { readonly line: SupplyLine; readonly cover: Cover }[];
  readonly neededOn: string | undefined;
}

export interface PurchaseWish {
  readonly supplies: Supplies;
  readonly stock: Stock;
  readonly job: Ulid;
  /** Of the job and of the shop. */
  readonly orders?: readonly Order[] | undefined;
  /** When the goods are to be here, YYYY-MM-DD. */
  readonly neededOn?: string | undefined;
  readonly language?: Language | undefined;
}

/**
 * What is to be bought, by supplier: where several sell a thing in one currency, the cheapest for this quantity; of several
 * currencies, which cannot be compared, the one of the supplier that comes first by name.
 */
export function purchaseList({
  supplies,
  stock,
  job,
  orders = [],
  neededOn,
  language = english,
}: PurchaseWish): PurchaseList {
  const needs = supplies.lines.map((line) => ({ line, cover: coverFromStock(line, stock, job, orders) }));
  return boughtFrom(needs, stock, { neededOn, language });
}

/** The same for what the shelf itself lacks: below its minimum, or set aside for more than there is. */
export function purchaseForShelf(
  stock: Stock,
  orders: readonly Order[] = [],
  neededOn?: string | undefined,
  language: Language = english,
): PurchaseList {
  const needs = reorderList(stock, orders, language).map(
    ({ line: { item, onHand }, quantity, onOrder, because }) => ({
      line: {
        ...lineOf(
          item,
          item.kind === 'wire' ? 'plain wire' : item.kind === 'tuning pin' ? 'tuning pins' : 'sundries',
          language,
        ),
        needed: quantity,
        extra: [],
        total: quantity,
        because,
        assumed: [],
        from: [],
      } satisfies SupplyLine,
      cover: { onHand, mine: 0, covered: 0, onOrder, toBuy: quantity } satisfies Cover,
    }),
  );
  return boughtFrom(needs, stock, { neededOn, language });
}

interface Need {
  readonly line: SupplyLine;
  readonly cover: Cover;
}

interface Wanted {
  readonly neededOn: string | undefined;
  readonly language: Language;
}

function boughtFrom(needs: readonly Need[], stock: Stock, wanted: Wanted): PurchaseList {
  const { neededOn } = wanted;
  const bySupplier = new Map<string, PurchaseLine[]>();
  const currencies = new Map(stock.priceLists.map(({ supplier, currency }) => [supplier, currency]));
  const rest = { notListed: [] as Need[], covered: [] as Need[], unknown: [] as Need[] };
  for (const { line, cover } of needs) {
    if (cover.toBuy === undefined) rest.unknown.push({ line, cover });
    else if (cover.toBuy === 0) rest.covered.push({ line, cover });
    else {
      const best = bestOffer(line, cover, stock, wanted);
      if (best === undefined) rest.notListed.push({ line, cover });
      else addToGroup(bySupplier, best.supplier, best.purchase);
    }
  }
  const suppliers = [...bySupplier]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([supplier, lines]) => ({
      supplier,
      currency: currencies.get(supplier)!,
      lines,
      total: sumOfMoney(lines.map(({ total }) => total)),
      orderBy: lines
        .map(({ orderBy }) => orderBy)
        .filter((day) => day !== undefined)
        .sort()[0],
    }));
  return { suppliers, ...rest, neededOn };
}

function bestOffer(
  line: SupplyLine,
  cover: Cover,
  { priceLists, suppliers }: Stock,
  wanted: Wanted,
): { supplier: string; purchase: PurchaseLine } | undefined {
  const { item } = line;
  if (item === undefined) return undefined;
  const id = stockItemId(item);
  const offers = priceLists.flatMap(({ supplier, currency, lines }) =>
    lines
      .filter((offer) => stockItemId(offer.item) === id)
      .flatMap((offer) => {
        const leadTime_days =
          offer.leadTime_days ?? suppliers.find((one) => one.supplier === supplier)?.leadTime_days;
        const packs = packsOf(line, cover, offer, wanted.language);
        return packs === undefined
          ? []
          : [
              {
                supplier,
                currency,
                purchase: purchaseOf(line, cover, { offer, ...packs, leadTime_days, ...wanted }),
              },
            ];
      }),
  );
  const [first] = offers;
  return offers
    .filter(({ currency }) => currency === first?.currency)
    .reduce<(typeof offers)[number] | undefined>(
      (best, one) => (best === undefined || one.purchase.total < best.purchase.total ? one : best),
      undefined,
    );
}

interface Packs {
  readonly packs: number;
  readonly packHolds: number;
  readonly remark: string | undefined;
}

/** Undefined when a wire is longer than what this supplier sells. */
function packsOf(
  line: SupplyLine,
  { covered, toBuy }: Cover,
  { item, pack }: PriceLine,
  { say }: Language,
): Packs | undefined {
  if (pack.by === 'count')
    return { packs: packsToBuy(toBuy!, pack.count).packs, packHolds: pack.count, remark: undefined };
  if (item.kind !== 'wire') return undefined;
  const diameter = metres(item.diameter_m);
  const grams =
    pack.by === 'coil mass'
      ? Math.round(pack.mass_kg * 1000)
      : Math.max(1, Math.floor(1000 * inKilograms(wireMass({ diameter, length: metres(pack.length_m) }))));
  // For the shelf, or with part of it there in pieces of which nobody knows the lengths, only the mass can be counted.
  if (covered > 0 || line.wire === undefined)
    return {
      packs: packsToBuy(toBuy!, grams).packs,
      packHolds: grams,
      remark:
        line.wire === undefined
          ? undefined
          : say('by mass, since part of it is on the shelf; look whether the pieces there are long enough'),
    };
  const sold =
    pack.by === 'coil mass'
      ? ({ by: pack.by, mass: kilograms(pack.mass_kg) } as const)
      : ({ by: pack.by, length: metres(pack.length_m) } as const);
  try {
    const { count } = coilsToBuy({ diameter, cuts: line.wire.cuts, beyond: line.wire.beyond, sold });
    return { packs: count, packHolds: grams, remark: undefined };
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

function purchaseOf(
  line: SupplyLine,
  cover: Cover,
  {
    offer,
    packs,
    packHolds,
    remark,
    leadTime_days,
    neededOn,
    language,
  }: Packs &
    Wanted & {
      readonly offer: PriceLine;
      readonly leadTime_days: number | undefined;
    },
): PurchaseLine {
  const price = minorUnits(offer.priceMinorUnits);
  return {
    line,
    cover,
    article: offer.article,
    packs,
    packWords: packWords(offer, language),
    packHolds,
    price,
    total: sumOfMoney([minorUnits(packs * price)]),
    leadTime_days,
    orderBy:
      neededOn === undefined || leadTime_days === undefined ? undefined : daysBefore(neededOn, leadTime_days),
    remark,
  };
}

/** 'coil of 500 g', 'coil of 25 m', 'piece of 2.5 m', 'pack of 50', 'set' */
/** What a pack holds, in words: 'coil of 500 g', 'piece of 1.5 m'. */
export function packWords(
  { item, pack }: Pick<PriceLine, 'item' | 'pack'>,
  { say, plain }: Language = english,
): string {
  switch (pack.by) {
    case 'coil mass':
      return say('coil of {size}', { size: `${plain(Number((pack.mass_kg * 1000).toFixed(1)))} g` });
    case 'coil length':
      return say('coil of {size}', { size: `${plain(Number(pack.length_m.toFixed(3)))} m` });
    case 'piece':
      return say('piece of {size}', { size: `${plain(Number(pack.length_m.toFixed(3)))} m` });
    case 'count': {
      const unit = stockUnitOf(item);
      const words = unit === 'piece' || unit === 'set' ? say(unit) : unit;
      if (pack.count === 1) return words;
      return unit === 'piece'
        ? say('pack of {count}', { count: pack.count })
        : say('pack of {count} {unit}', { count: pack.count, unit: words });
    }
  }
}

/**
 * The day so many days before another, both YYYY-MM-DD.
 * @example daysBefore('2026-03-01', 1)  // = 2026-02-28
 */
export function daysBefore(day: string, days: number): string {
  return new Date(Date.parse(`${day}T00:00:00Z`) - days * 86_400_000).toISOString().slice(0, 10);
}
