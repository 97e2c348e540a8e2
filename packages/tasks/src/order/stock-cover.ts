import { english, type Language } from '@becket/core';
import { type Order, type Stock, type StockLine, stockItemId, type Ulid } from '@becket/journal';
import { itemWords, quantityWords } from './item-words.ts';
import type { SupplyLine } from './supply-line.ts';

/** How far the shelf covers one line of a job. Whole numbers of the line's unit. */
export interface Cover {
  /** Undefined while nobody has counted it. */
  readonly onHand: number | undefined;
  /** Already set aside for this job, as far as it is really there. */
  readonly mine: number;
  /** What the shelf covers: set aside for this job, and free. */
  readonly covered: number;
  /** On its way by orders that are not cancelled. */
  readonly onOrder: number;
  /** Undefined while the need is unknown. */
  readonly toBuy: number | undefined;
}

/** What the stock has for a line of a job's supplies, and what is to be bought. What nobody has counted covers nothing. */
export function coverFromStock(
  line: Pick<SupplyLine, 'item' | 'total'>,
  { lines }: Stock,
  job: Ulid,
  orders: readonly Order[] = [],
): Cover {
  const { item, total } = line;
  if (item === undefined) return { onHand: undefined, mine: 0, covered: 0, onOrder: 0, toBuy: total };
  const id = stockItemId(item);
  const stock = lines.find((one) => one.id === id);
  const mine =
    stock?.reservations.filter((one) => one.job === job).reduce((sum, { covered }) => sum + covered, 0) ?? 0;
  const free = Math.max(0, stock?.free ?? 0);
  const onOrder = onOrderOf(id, orders);
  if (total === undefined) return { onHand: stock?.onHand, mine, covered: mine, onOrder, toBuy: undefined };
  const covered = Math.max(mine, Math.min(total, mine + free));
  return { onHand: stock?.onHand, mine, covered, onOrder, toBuy: Math.max(0, total - covered - onOrder) };
}

/** What is still to come of an item. A drafted order has not been sent and brings nothing. */
function onOrderOf(id: string, orders: readonly Order[]): number {
  let sum = 0;
  for (const { state, lines } of orders) {
    if (state === 'drafted' || state === 'cancelled' || state === 'delivered') continue;
    for (const { item, outstanding, packHolds } of lines)
      if (item !== undefined && stockItemId(item) === id) sum += outstanding * (packHolds ?? 1);
  }
  return sum;
}

/** Something set aside for several jobs of which there is not enough. */
export interface Shortage {
  readonly line: StockLine;
  readonly lacking: number;
  /** Who lacks how much, and who was before, in one sentence. */
  readonly sentence: string;
}

/** Items of which more is set aside than is on the shelf, and whose reservation lacks how much. */
export function shortagesOf({ lines }: Stock, language: Language = english): Shortage[] {
  const { say, day } = language;
  return lines.flatMap((line): Shortage[] => {
    const { reservations, onHand, unit, item } = line;
    const short = reservations.filter(({ open, covered }) => covered < open);
    if (short.length === 0) return [];
    const lacking = short.reduce((sum, { open, covered }) => sum + open - covered, 0);
    const who = ({ jobTitle, by, at }: (typeof reservations)[number]) =>
      say("'{job}' ({by}, {day})", { job: jobTitle, by, day: day(at) });
    const lack = short
      .map((one) =>
        say('{who} lacks {quantity}', {
          who: who(one),
          quantity: quantityWords(one.open - one.covered, unit, language),
        }),
      )
      .join(', ');
    const before = reservations.filter((one) => !short.includes(one)).map(who);
    return [
      {
        line,
        lacking,
        sentence: say('{item}: {onHand}, {reserved} set aside. {lack}.', {
          item: itemWords(item, language),
          onHand:
            onHand === undefined
              ? say('never counted')
              : say('{quantity} on hand', { quantity: quantityWords(onHand, unit, language) }),
          reserved: quantityWords(line.reserved, unit, language),
          lack: [
            lack,
            ...(before.length === 0 ? [] : [say('set aside before: {who}', { who: before.join(', ') })]),
          ].join('; '),
        }),
      },
    ];
  });
}

/** An item to be bought again for the shelf. */
export interface ReorderLine {
  readonly line: StockLine;
  readonly onOrder: number;
  /** To bring what is free, with what is on its way, back to the minimum. */
  readonly quantity: number;
  readonly because: string;
}

/** What to buy again, over all jobs that have set something aside: below the minimum, or short. */
export function reorderList(
  { lines }: Stock,
  orders: readonly Order[] = [],
  language: Language = english,
): ReorderLine[] {
  const { say } = language;
  const words = (quantity: number, unit: StockLine['unit']) => quantityWords(quantity, unit, language);
  return lines.flatMap((line): ReorderLine[] => {
    const { free, minimum, unit, reservations, reserved } = line;
    // Not counted, but set aside: all of it has to come from somewhere.
    const known = free ?? -reserved;
    const onOrder = onOrderOf(line.id, orders);
    const quantity = minimum - known - onOrder;
    if (quantity <= 0 || (minimum === 0 && known >= 0)) return [];
    const jobs = [...new Set(reservations.map(({ jobTitle }) => say("'{job}'", { job: jobTitle })))];
    const parts = [
      free === undefined ? say('never counted') : say('{quantity} free', { quantity: words(known, unit) }),
      ...(jobs.length === 0
        ? []
        : [
            say('{quantity} set aside for {jobs}', {
              quantity: words(reserved, unit),
              jobs: jobs.reduce((one, other) => say('{one} and {other}', { one, other })),
            }),
          ]),
      ...(minimum === 0 ? [] : [say('at least {quantity} wanted', { quantity: words(minimum, unit) })]),
      ...(onOrder === 0 ? [] : [say('{quantity} on order', { quantity: words(onOrder, unit) })]),
    ];
    return [{ line, onOrder, quantity, because: parts.join('; ') }];
  });
}
