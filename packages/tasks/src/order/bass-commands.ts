import { english, type Language } from '@becket/core';
import {
  type BassOrder,
  type BassQuantity,
  bassOrder,
  bassQuantities,
  type FactOf,
  foldJob,
  foldOrders,
  type Orders,
  type Ulid,
} from '@becket/journal';
import { entriesOf, type TaskContext } from '../context.ts';
import { bassAllowancesOf } from './allowances.ts';
import { addOrderFacts } from './orders.ts';
import { readShop } from './shop.ts';

/** The bass strings of a job as they would be ordered now, with what is signed. Throws JobNotFound. */
export async function readBassOrder(
  context: Pick<TaskContext, 'store' | 'language'>,
  job: Ulid,
): Promise<BassOrder> {
  const entries = await entriesOf(context, job);
  const { allowances } = await readShop(context);
  return bassOrder(
    foldJob(entries),
    { signed: foldOrders(entries).signed, allowances: bassAllowancesOf(allowances) },
    context.language,
  );
}

/**
 * Somebody answers by name for checks that do not pass, each with the sentence that it says now.
 * Throws: RangeError when a check is not one of this order, or a name or reason is empty. Nothing is stored then.
 */
export async function signBassChecks(
  context: TaskContext,
  job: Ulid,
  {
    checks,
    name,
    reason,
  }: { readonly checks: readonly string[]; readonly name: string; readonly reason: string },
): Promise<Orders> {
  const language = context.language ?? english;
  const { say } = language;
  requireSaid(name, say('a name'), language);
  requireSaid(reason, say('a reason'), language);
  const order = await readBassOrder(context, job);
  const facts = checks.map((id): FactOf<'order-check-signed'> => {
    const check = order.checks.find((one) => one.id === id);
    if (check === undefined)
      throw new RangeError(
        say(
          "Cannot sign this check: a check of this order that does not pass is needed, '{id}' was found. Its figures may have changed; look at the checks again.",
          { id },
        ),
      );
    return {
      kind: 'order-check-signed',
      v: 1,
      check: id,
      sentence: check.signs,
      name: name.trim(),
      reason: reason.trim(),
    };
  });
  return (await addOrderFacts(context, job, facts)).orders;
}

/** The checks that nobody answers for yet stand between the strings and an order. */
export class BassOrderNotReady extends Error {
  override readonly name = 'BassOrderNotReady';
  readonly open: number;
  constructor(order: BassOrder, { say }: Language = english) {
    const open = order.checks.filter(({ signed }) => signed === undefined);
    super(
      order.strings.length === 0
        ? say(
            'Cannot draft the bass string order: at least one wound string is needed, none is described. Describe the stringing first.',
          )
        : say(
            'Cannot draft the bass string order: every check has to pass or be signed by name, {count, plural, one {# does} other {# do}} not. The first: {first}',
            { count: open.length, first: open[0]?.sentence ?? '' },
          ),
    );
    this.open = open.length;
  }
}

/** Drafts the order of the bass set, as the strings are now. Throws: BassOrderNotReady while a check is open. */
export async function draftBassOrder(
  context: TaskContext,
  job: Ulid,
  {
    supplier,
    neededOn,
    note,
  }: { readonly supplier: string; readonly neededOn?: string; readonly note?: string },
): Promise<Orders> {
  const language = context.language ?? english;
  const { say } = language;
  requireSaid(supplier, say('who makes the strings'), language);
  const order = await readBassOrder(context, job);
  if (!order.mayBeSent) throw new BassOrderNotReady(order, language);
  const drafted: FactOf<'order-drafted'> = {
    kind: 'order-drafted',
    v: 1,
    what: 'bass strings',
    supplier: supplier.trim(),
    ...(neededOn === undefined ? {} : { neededOn }),
    ...(note === undefined ? {} : { note }),
    scaleDigest: order.digest,
    lines: order.strings.map(({ note: name, side }, index) => ({
      line: index + 1,
      what: side === 'single' ? name : `${name} ${say(side)}`,
      quantity: 1,
      unit: say('string'),
    })),
    bassStrings: order.strings.map(({ key, string, stated }) => ({
      key,
      string,
      lengths_m: Object.fromEntries(
        bassQuantities.flatMap((quantity): [BassQuantity, number][] => {
          const one = stated[quantity];
          return one.is === 'length' ? [[quantity, one.value]] : [];
        }),
      ),
    })),
  };
  return (await addOrderFacts(context, job, [drafted])).orders;
}

export function requireSaid(words: string, what: string, { say }: Language = english): void {
  if (words.trim() !== '') return;
  throw new RangeError(
    say('Cannot keep this: {what} is needed, nothing was found. Say it and try again.', { what }),
  );
}
