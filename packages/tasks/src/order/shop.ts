import {
  type AllowanceKept,
  type Entry,
  type Fact,
  foldAllowances,
  foldOrders,
  foldStock,
  type Orders,
  SHOP_JOURNAL,
  type Stock,
} from '@becket/journal';
import { entriesFor, type TaskContext } from '../context.ts';

/** The shop as its own journal tells it. */
export interface Shop {
  readonly stock: Stock;
  /** Orders for the shelf; those for one piano stand in its job. */
  readonly orders: Orders;
  /** Its own figures in place of the starting ones, by name; see `allowances`. */
  readonly allowances: ReadonlyMap<string, AllowanceKept>;
  readonly entries: readonly Entry[];
}

export const shopOf = (entries: readonly Entry[]): Shop => ({
  stock: foldStock(entries),
  orders: foldOrders(entries),
  allowances: foldAllowances(entries),
  entries,
});

/** The shop's journal of this store; an empty shop when nothing was ever noted. */
export async function readShop(context: Pick<TaskContext, 'store'>): Promise<Shop> {
  const { entries } = await context.store.entries(SHOP_JOURNAL);
  return shopOf(entries);
}

/** Stores these facts in the shop's journal, all or none, and gives back the shop as it is then. */
export async function addToShop(context: TaskContext, facts: readonly Fact[]): Promise<Shop> {
  const { entries: existing } = await context.store.entries(SHOP_JOURNAL);
  const entries = entriesFor(context, { job: SHOP_JOURNAL, facts, existing });
  await context.store.append(entries);
  return shopOf([...existing, ...entries]);
}
