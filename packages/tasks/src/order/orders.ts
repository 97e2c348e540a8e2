import { english, type Language } from '@becket/core';
import {
  type Fact,
  type FactOf,
  foldOrders,
  type Order,
  type Orders,
  SHOP_JOURNAL,
  type Ulid,
} from '@becket/journal';
import { entriesFor, entriesOf, type TaskContext } from '../context.ts';
import type { SupplierPurchase } from './purchase-list.ts';

/** The orders of one job, or of the shop by its own journal. Throws JobNotFound. */
export async function readOrders(context: Pick<TaskContext, 'store'>, job: Ulid): Promise<Orders> {
  return foldOrders(await entriesOf(context, job));
}

/** Adds facts about orders to a job, all or none, and gives back its orders. */
export async function addOrderFacts(
  context: TaskContext,
  job: Ulid,
  facts: readonly Fact[],
): Promise<{ orders: Orders; entries: readonly Ulid[] }> {
  const existing = await entriesOf(context, job);
  const entries = entriesFor(context, { job, facts, existing });
  await context.store.append(entries);
  return { orders: foldOrders([...existing, ...entries]), entries: entries.map(({ id }) => id) };
}

/** Writes an order to one supplier for what the purchase list says. It is a draft until somebody says that it was sent. */
export async function draftSupplyOrder(
  context: TaskContext,
  job: Ulid,
  { purchase, neededOn }: { readonly purchase: SupplierPurchase; readonly neededOn?: string | undefined },
): Promise<Orders> {
  const drafted: FactOf<'order-drafted'> = {
    kind: 'order-drafted',
    v: 1,
    what: 'supplies',
    supplier: purchase.supplier,
    currency: purchase.currency,
    ...(neededOn === undefined ? {} : { neededOn }),
    lines: purchase.lines.map(({ line, article, packs, packWords, packHolds, price }, index) => ({
      line: index + 1,
      what: line.what,
      ...(line.item === undefined ? {} : { item: line.item }),
      article,
      quantity: packs,
      unit: packWords,
      packHolds,
      priceMinorUnits: price,
    })),
  };
  return (await addOrderFacts(context, job, [drafted])).orders;
}

export interface OrderMove {
  readonly order: Ulid;
  readonly to: FactOf<'order-moved'>['to'];
  /** YYYY-MM-DD */
  readonly on: string;
  readonly expectedOn?: string | undefined;
  readonly note?: string | undefined;
}

/** States from which an order can go to another. A delivery goes by what was received. */
const allowed: Readonly<Record<OrderMove['to'], readonly Order['state'][]>> = {
  sent: ['drafted', 'cancelled'],
  confirmed: ['sent', 'partly delivered'],
  cancelled: ['drafted', 'sent', 'confirmed', 'partly delivered'],
};

/** Says that an order was sent, confirmed or cancelled. Throws: RangeError when it is not in a state for that. */
export async function moveOrder(context: TaskContext, job: Ulid, move: OrderMove): Promise<Orders> {
  const language = context.language ?? english;
  const { say } = language;
  const order = orderIn(await readOrders(context, job), move.order, language);
  if (!allowed[move.to].includes(order.state))
    throw new RangeError(
      say(
        'Cannot note this order as {to}: an order that is {allowed} is needed, this one is {state}. Look at its state again.',
        {
          to: say(move.to),
          allowed: allowed[move.to]
            .map((state) => say(state))
            .reduce((one, other) => say('{one} or {other}', { one, other })),
          state: say(order.state),
        },
      ),
    );
  const { to, on, expectedOn, note } = move;
  const moved: FactOf<'order-moved'> = {
    kind: 'order-moved',
    v: 1,
    order: order.id,
    to,
    on,
    ...(expectedOn === undefined ? {} : { expectedOn }),
    ...(note === undefined ? {} : { note }),
  };
  return (await addOrderFacts(context, job, [moved])).orders;
}

/**
 * Notes goods that came, with what was measured of them. What is an item of the stock goes on the shelf of the shop in the
 * same step: both journals or neither.
 *
 * Throws: RangeError when the order or one of its lines is not known, or nothing is said at all.
 */
export async function receiveGoods(
  context: TaskContext,
  job: Ulid,
  received: Omit<FactOf<'goods-received'>, 'kind' | 'v'>,
): Promise<Orders> {
  const existing = await entriesOf(context, job);
  const language = context.language ?? english;
  const { say } = language;
  const order = orderIn(foldOrders(existing), received.order, language);
  if (received.lines.length === 0 && received.measured.length === 0)
    throw new RangeError(
      say(
        'Cannot note this delivery: at least one line that came or one thing measured is needed, nothing was found. Say what came.',
      ),
    );
  if (order.state === 'drafted' && received.lines.length > 0)
    throw new RangeError(
      say(
        'Cannot note this delivery: an order that was sent is needed, this one is a draft. Note it as sent first.',
      ),
    );
  const unknown = received.lines.find(({ line }) => !order.lines.some((one) => one.line === line));
  if (unknown !== undefined)
    throw new RangeError(
      say(
        'Cannot note this delivery: a line of the order is needed, line {line} was found. Look at the order again.',
        { line: unknown.line },
      ),
    );
  const entries = entriesFor(context, {
    job,
    facts: [{ ...received, kind: 'goods-received', v: 1 }],
    existing,
  });
  const delivery = entries[0]!.id;
  const shelf = received.lines.flatMap(({ line, quantity }): Fact[] => {
    const { item, packHolds = 1 } = order.lines.find((one) => one.line === line)!;
    if (item === undefined || quantity === 0) return [];
    const { supplier, id } = order;
    return [
      { kind: 'stock-received', v: 1, item, quantity: quantity * packHolds, supplier, order: id, delivery },
    ];
  });
  // An order for the shelf stands in the journal of the shop itself: what comes in is noted after it.
  const shop =
    job === SHOP_JOURNAL ? [...existing, ...entries] : (await context.store.entries(SHOP_JOURNAL)).entries;
  const shopEntries = entriesFor(context, { job: SHOP_JOURNAL, facts: shelf, existing: shop });
  await context.store.append([...entries, ...shopEntries]);
  return foldOrders([...existing, ...entries]);
}

/**
 * Takes a delivery back that was noted by a slip, and with it what went on the shelf: both journals or neither. The entries stay
 * in their journals.
 *
 * Throws: RangeError when the order has no such delivery, or no reason is given.
 */
export async function undoDelivery(
  context: TaskContext,
  job: Ulid,
  { order: id, delivery, reason }: { readonly order: Ulid; readonly delivery: Ulid; readonly reason: string },
): Promise<Orders> {
  const existing = await entriesOf(context, job);
  const language = context.language ?? english;
  const { say } = language;
  const order = orderIn(foldOrders(existing), id, language);
  if (!order.deliveries.some(({ entry }) => entry === delivery))
    throw new RangeError(
      say(
        'Cannot take this delivery back: one that stands is needed, {delivery} was found. It may have been taken back elsewhere; look at the order again.',
        { delivery },
      ),
    );
  if (reason.trim() === '')
    throw new RangeError(
      say('Cannot take this delivery back: a reason is needed, nothing was found. Say why and try again.'),
    );
  const withdrawal = (entry: Ulid): Fact => ({ kind: 'withdrawn', v: 1, entry, reason: reason.trim() });
  const entries = entriesFor(context, { job, facts: [withdrawal(delivery)], existing });
  const shop =
    job === SHOP_JOURNAL ? [...existing, ...entries] : (await context.store.entries(SHOP_JOURNAL)).entries;
  const onShelf = shop.filter(
    ({ fact }) => fact.kind === 'stock-received' && 'delivery' in fact && fact.delivery === delivery,
  );
  const shopEntries = entriesFor(context, {
    job: SHOP_JOURNAL,
    facts: onShelf.map((entry) => withdrawal(entry.id)),
    existing: shop,
  });
  await context.store.append([...entries, ...shopEntries]);
  return foldOrders([...existing, ...entries]);
}

export function orderIn({ orders }: Orders, id: Ulid, { say }: Language = english): Order {
  const order = orders.find((one) => one.id === id);
  if (order !== undefined) return order;
  throw new RangeError(
    say('Cannot find this order: an order of this job is needed, {id} was found. Look at the orders again.', {
      id,
    }),
  );
}
