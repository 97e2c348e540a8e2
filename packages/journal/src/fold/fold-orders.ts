import { addToGroup } from '@becket/core';
import type { Entry } from '../entry.ts';
import type { ReceivedQuantity } from '../facts/goods-received.ts';
import type { FactOf } from '../facts/index.ts';
import type { Ulid } from '../ulid.ts';
import { entriesThatStand } from './entries-that-stand.ts';

export const orderStates = [
  'drafted',
  'sent',
  'confirmed',
  'partly delivered',
  'delivered',
  'cancelled',
] as const;
export type OrderState = (typeof orderStates)[number];

export interface OrderedLine extends OrderLine {
  readonly received: number;
  /** What is still to come; 0 when all of it is here, or more. */
  readonly outstanding: number;
}
type OrderLine = FactOf<'order-drafted'>['lines'][number];

/** What was measured of one string when it came. */
export interface ReceivedMeasure {
  readonly key: number;
  readonly string: number;
  readonly quantity: ReceivedQuantity;
  readonly value_m: number;
  readonly entry: Ulid;
}

/** An order with what became of it. */
export interface Order {
  readonly id: Ulid;
  readonly journal: Ulid;
  readonly what: 'bass strings' | 'supplies';
  readonly supplier: string;
  readonly currency: string | undefined;
  readonly lines: readonly OrderedLine[];
  readonly state: OrderState;
  readonly draftedAt: string;
  readonly by: string;
  readonly neededOn: string | undefined;
  readonly sentOn: string | undefined;
  /** The day the supplier promised last. */
  readonly expectedOn: string | undefined;
  readonly scaleDigest: string | undefined;
  /** What each string was ordered as; empty for supplies. */
  readonly bassStrings: NonNullable<FactOf<'order-drafted'>['bassStrings']>;
  readonly note: string | undefined;
  /** What was said of it, in journal order. */
  readonly moves: readonly (FactOf<'order-moved'> & { readonly by: string; readonly entry: Ulid })[];
  readonly deliveries: readonly (FactOf<'goods-received'> & { readonly by: string; readonly entry: Ulid })[];
  readonly measured: readonly ReceivedMeasure[];
}

export interface Orders {
  /** In the order in which they were drafted. */
  readonly orders: readonly Order[];
  /** Checks that somebody answers for by name; the last signature of each check. */
  readonly signed: readonly (FactOf<'order-check-signed'> & { readonly at: string; readonly entry: Ulid })[];
}

/**
 * Orders from the entries of one journal, a job's or the shop's.
 *
 * The state follows from what was said and what came: everything here is *delivered*, some of it *partly delivered*; what was
 * cancelled stays so unless goods come all the same. Entries may come in any order and more than once.
 */
export function foldOrders(entries: Iterable<Entry>): Orders {
  const drafts: { id: Ulid; journal: Ulid; at: string; by: string; fact: FactOf<'order-drafted'> }[] = [];
  const moves = new Map<Ulid, Order['moves'][number][]>();
  const deliveries = new Map<Ulid, Order['deliveries'][number][]>();
  const signed = new Map<string, Orders['signed'][number]>();
  for (const { id, job, at, by, fact } of entriesThatStand(entries)) {
    if (fact.kind === 'order-drafted') drafts.push({ id, journal: job, at, by, fact });
    else if (fact.kind === 'order-moved') addToGroup(moves, fact.order, { ...fact, by, entry: id });
    else if (fact.kind === 'goods-received') addToGroup(deliveries, fact.order, { ...fact, by, entry: id });
    else if (fact.kind === 'order-check-signed') signed.set(fact.check, { ...fact, at, entry: id });
  }
  return {
    orders: drafts.map(({ id, journal, at, by, fact }) =>
      orderOf({
        id,
        journal,
        at,
        by,
        fact,
        moves: moves.get(id) ?? [],
        deliveries: deliveries.get(id) ?? [],
      }),
    ),
    signed: [...signed.values()],
  };
}

function orderOf({
  id,
  journal,
  at,
  by,
  fact,
  moves,
  deliveries,
}: {
  readonly id: Ulid;
  readonly journal: Ulid;
  readonly at: string;
  readonly by: string;
  readonly fact: FactOf<'order-drafted'>;
  readonly moves: Order['moves'];
  readonly deliveries: Order['deliveries'];
}): Order {
  const received = new Map<number, number>();
  const measured = new Map<string, ReceivedMeasure>();
  for (const { lines, measured: own, entry } of deliveries) {
    for (const { line, quantity } of lines) received.set(line, (received.get(line) ?? 0) + quantity);
    for (const { key, string, quantity, value_m } of own)
      measured.set(`${key}/${string}/${quantity}`, { key, string, quantity, value_m, entry });
  }
  const lines = fact.lines.map((line) => {
    const came = received.get(line.line) ?? 0;
    return { ...line, received: came, outstanding: Math.max(0, line.quantity - came) };
  });
  return {
    id,
    journal,
    what: fact.what,
    supplier: fact.supplier,
    currency: fact.currency,
    lines,
    state: stateOf(lines, moves),
    draftedAt: at,
    by,
    neededOn: fact.neededOn,
    sentOn: moves.find(({ to }) => to === 'sent')?.on,
    expectedOn: moves.findLast(({ expectedOn }) => expectedOn !== undefined)?.expectedOn,
    scaleDigest: fact.scaleDigest,
    bassStrings: fact.bassStrings ?? [],
    note: fact.note,
    moves,
    deliveries,
    measured: [...measured.values()],
  };
}

function stateOf(lines: readonly OrderedLine[], moves: Order['moves']): OrderState {
  if (lines.every(({ outstanding }) => outstanding === 0)) return 'delivered';
  const last = moves.at(-1)?.to;
  if (last === 'cancelled') return 'cancelled';
  if (lines.some(({ received }) => received > 0)) return 'partly delivered';
  return last ?? 'drafted';
}
