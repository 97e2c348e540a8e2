import type { Entry } from '../entry.ts';
import type { FactOf } from '../facts/index.ts';
import { type StockItem, type StockUnit, stockItemId, stockUnitOf } from '../facts/stock-item.ts';
import type { Ulid } from '../ulid.ts';
import { entriesThatStand } from './entries-that-stand.ts';

/**
 * The journal of the shop: its stock, its suppliers and what it orders for the shelf. It is kept, exchanged and merged like a
 * job's journal, under an id that no job has; lists of jobs leave it out.
 */
export const SHOP_JOURNAL: Ulid = '0000000000000000000000SH0P';

/** What is set aside for one job and neither used nor released yet. */
export interface Reservation {
  readonly entry: Ulid;
  readonly job: Ulid;
  readonly jobTitle: string;
  readonly by: string;
  readonly at: string;
  readonly reserved: number;
  /** What is still set aside: reserved less what was used for the job since. */
  readonly open: number;
  /** How much of `open` is on the shelf, counting those that were set aside before. */
  readonly covered: number;
}

/** One item of the stock. Quantities are whole numbers of its unit. */
export interface StockLine {
  readonly id: string;
  readonly item: StockItem;
  readonly unit: StockUnit;
  /** Undefined while nobody has counted it and none came in: not known, which is not the same as none. */
  readonly onHand: number | undefined;
  /** When it was last counted, and by whom. */
  readonly counted: { readonly at: string; readonly by: string } | undefined;
  readonly received: number;
  readonly used: number;
  /** What counting found more (or less, below 0) than the entries before it said. */
  readonly corrected: number;
  /** In the order in which they were made. */
  readonly reservations: readonly Reservation[];
  readonly reserved: number;
  /** On hand less reserved, below 0 when more is set aside than there is; undefined while on hand is. */
  readonly free: number | undefined;
  /** 0 when nobody has set one. */
  readonly minimum: number;
}

export interface Stock {
  /** By id. */
  readonly lines: readonly StockLine[];
  /** By name; what was described last. */
  readonly suppliers: readonly FactOf<'supplier-described'>[];
  /** One for each supplier: the list that was kept last. */
  readonly priceLists: readonly (FactOf<'price-list-kept'> & { readonly entry: Ulid; readonly at: string })[];
  readonly lastStep: number;
}

interface Gathered {
  readonly item: StockItem;
  onHand: number | undefined;
  counted: StockLine['counted'];
  received: number;
  used: number;
  corrected: number;
  minimum: number;
  reservations: { -readonly [K in keyof Omit<Reservation, 'covered'>]: Reservation[K] }[];
}

/**
 * The stock of a shop from the entries of its journal.
 *
 * Entries may come in any order and more than once; the result is the same. Two jobs that reserved the same thing on two
 * devices both keep their reservation: the one made first by journal order is covered first, and what is lacking shows in the
 * other. A count stands in place of all that was noted before it.
 */
export function foldStock(entries: Iterable<Entry>): Stock {
  const gathered = new Map<string, Gathered>();
  const suppliers = new Map<string, FactOf<'supplier-described'>>();
  const priceLists = new Map<string, Stock['priceLists'][number]>();
  const byReservation = new Map<Ulid, Gathered['reservations'][number]>();
  let lastStep = 0;
  const of = (item: StockItem): Gathered => {
    const id = stockItemId(item);
    const known = gathered.get(id);
    if (known !== undefined) return known;
    const fresh: Gathered = {
      item,
      onHand: undefined,
      counted: undefined,
      received: 0,
      used: 0,
      corrected: 0,
      minimum: 0,
      reservations: [],
    };
    gathered.set(id, fresh);
    return fresh;
  };

  for (const { id, step, at, by, fact } of entriesThatStand(entries)) {
    lastStep = Math.max(lastStep, step);
    switch (fact.kind) {
      case 'stock-counted': {
        const line = of(fact.item);
        line.corrected += fact.quantity - (line.onHand ?? 0);
        line.onHand = fact.quantity;
        line.counted = { at, by };
        break;
      }
      case 'stock-received': {
        const line = of(fact.item);
        line.received += fact.quantity;
        line.onHand = (line.onHand ?? 0) + fact.quantity;
        break;
      }
      case 'stock-used': {
        const line = of(fact.item);
        line.used += fact.quantity;
        line.onHand = (line.onHand ?? 0) - fact.quantity;
        let left = fact.quantity;
        for (const reservation of line.reservations) {
          if (reservation.job !== fact.job) continue;
          const taken = Math.min(left, reservation.open);
          reservation.open -= taken;
          left -= taken;
        }
        break;
      }
      case 'stock-reserved': {
        const { job, jobTitle, quantity } = fact;
        const reservation = { entry: id, job, jobTitle, by, at, reserved: quantity, open: quantity };
        of(fact.item).reservations.push(reservation);
        byReservation.set(id, reservation);
        break;
      }
      case 'reservation-released': {
        const reservation = byReservation.get(fact.reservation);
        if (reservation !== undefined) reservation.open = 0;
        break;
      }
      case 'stock-minimum-set':
        of(fact.item).minimum = fact.minimum;
        break;
      case 'supplier-described':
        suppliers.set(fact.supplier, fact);
        break;
      case 'price-list-kept':
        priceLists.set(fact.supplier, { ...fact, entry: id, at });
        break;
      default:
        break;
    }
  }

  const byName = <T extends { readonly supplier: string }>(own: Map<string, T>): T[] =>
    [...own.values()].sort((a, b) => (a.supplier < b.supplier ? -1 : 1));
  return {
    lines: [...gathered]
      .map(([id, line]) => stockLine(id, line))
      .sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0)),
    suppliers: byName(suppliers),
    priceLists: byName(priceLists),
    lastStep,
  };
}

function stockLine(id: string, gathered: Gathered): StockLine {
  const { item, onHand } = gathered;
  let rest = Math.max(0, onHand ?? 0);
  const reservations = gathered.reservations
    .filter(({ open }) => open > 0)
    .map((reservation) => {
      const covered = Math.min(rest, reservation.open);
      rest -= covered;
      return { ...reservation, covered };
    });
  const reserved = reservations.reduce((sum, { open }) => sum + open, 0);
  return {
    ...gathered,
    id,
    unit: stockUnitOf(item),
    reservations,
    reserved,
    free: onHand === undefined ? undefined : onHand - reserved,
  };
}
