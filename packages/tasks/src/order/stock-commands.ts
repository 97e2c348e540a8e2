import { english } from '@becket/core';
import { type Fact, type FactOf, type StockItem, stockItemId, type Ulid } from '@becket/journal';
import { readJob, type TaskContext } from '../context.ts';
import { itemWords } from './item-words.ts';
import { addToShop, readShop, type Shop } from './shop.ts';
import { coverFromStock } from './stock-cover.ts';
import type { SupplyLine } from './supply-line.ts';

type WithoutVersion<F> = F extends Fact ? Omit<F, 'v'> : never;
/** What happened on the shelf. */
export type StockMove = WithoutVersion<
  FactOf<'stock-counted' | 'stock-received' | 'stock-used' | 'stock-minimum-set'>
>;

/** Notes counts, deliveries, what was used and minimum levels, all or none. */
export async function noteStock(context: TaskContext, moves: readonly StockMove[]): Promise<Shop> {
  return addToShop(
    context,
    moves.map((move): Fact => ({ ...move, v: 1 })),
  );
}

/** Takes back what was noted last of the stock by this entry. Throws: RangeError when the shop's journal has no such entry. */
export async function withdrawStockMove(context: TaskContext, entry: Ulid, reason: string): Promise<Shop> {
  const { entries } = await readShop(context);
  const found = entries.find(({ id }) => id === entry);
  if (found === undefined || !found.fact.kind.startsWith('stock-'))
    throw new RangeError(
      (context.language ?? english).say(
        'Cannot take this back: something noted of the stock is needed, {entry} was found. Look at the stock again.',
        { entry },
      ),
    );
  return addToShop(context, [{ kind: 'withdrawn', v: 1, entry, reason }]);
}

/**
 * Sets aside for a job what the shelf has free of its supplies: what was set aside before counts. Nothing more than is free
 * is reserved here; two devices that did not know of each other may still have reserved the same, see `shortagesOf`.
 */
export async function reserveForJob(
  context: TaskContext,
  job: Ulid,
  lines: readonly SupplyLine[],
): Promise<Shop> {
  const { title } = await readJob(context, job);
  const shop = await readShop(context);
  const facts = lines.flatMap((line): Fact[] => {
    const { covered, mine } = coverFromStock(line, shop.stock, job);
    const quantity = covered - mine;
    return line.item === undefined || quantity <= 0
      ? []
      : [{ kind: 'stock-reserved', v: 1, item: line.item, quantity, job, jobTitle: title }];
  });
  return facts.length === 0 ? shop : addToShop(context, facts);
}

/** Ends a reservation. Throws: RangeError when nothing is set aside by that entry. */
export async function releaseReservation(
  context: TaskContext,
  reservation: Ulid,
  reason: string,
): Promise<Shop> {
  const { stock } = await readShop(context);
  const known = stock.lines.some(({ reservations }) =>
    reservations.some(({ entry }) => entry === reservation),
  );
  if (!known)
    throw new RangeError(
      (context.language ?? english).say(
        'Cannot release this reservation: one that still stands is needed, {reservation} was found. It may have been used up or released elsewhere; look at the stock again.',
        { reservation },
      ),
    );
  return addToShop(context, [{ kind: 'reservation-released', v: 1, reservation, reason }]);
}

/** Takes from the shelf for a job what is set aside for it of one item. Throws: RangeError when nothing is. */
export async function takeReserved(context: TaskContext, job: Ulid, item: StockItem): Promise<Shop> {
  const language = context.language ?? english;
  const { stock } = await readShop(context);
  const line = stock.lines.find(({ id }) => id === stockItemId(item));
  const quantity =
    line?.reservations.filter((one) => one.job === job).reduce((sum, { open }) => sum + open, 0) ?? 0;
  if (quantity === 0)
    throw new RangeError(
      language.say(
        'Cannot take {item}: something set aside for this job is needed, nothing is. Reserve it first, or note it as used.',
        { item: itemWords(item, language) },
      ),
    );
  return addToShop(context, [{ kind: 'stock-used', v: 1, item, quantity, job }]);
}
