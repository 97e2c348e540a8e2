import {
  english,
  inInches,
  inMillimetres,
  type Language,
  type Metres,
  message,
  metres,
  noteName,
} from '@becket/core';
import type { FactOf, Order, Orders, ReceivedQuantity, Ulid } from '@becket/journal';
import type { TaskContext } from '../context.ts';
import { receivedTolerancesOf } from './allowances.ts';
import { requireSaid } from './bass-commands.ts';
import { addOrderFacts, orderIn, readOrders } from './orders.ts';
import { type ReceivedTolerances, STARTING_RECEIVED_TOLERANCES } from './received-tolerances.ts';
import { readShop } from './shop.ts';

export { type ReceivedTolerances, STARTING_RECEIVED_TOLERANCES } from './received-tolerances.ts';

export const receivedQuantityNames = {
  'core-diameter': message('core'),
  'inner-layer-diameter': message('over the inner layer'),
  'over-all-diameter': message('over all'),
  'winding-length': message('winding length'),
  'loop-to-winding': message('loop to winding'),
  'hitch-loop-diameter': message('inside of the hitch loop'),
} as const satisfies Readonly<Record<ReceivedQuantity, string>>;

/** One string as it came, one quantity of it. */
export interface ReceivedComparison {
  /** 'received/E2/1/core-diameter': what a signature names. */
  readonly id: string;
  readonly key: number;
  readonly string: number;
  readonly quantity: ReceivedQuantity;
  readonly ordered: Metres | undefined;
  readonly measured: Metres;
  readonly is: 'within tolerance' | 'beyond tolerance' | 'not comparable';
  readonly sentence: string;
  /** The sentence in English: what a signature keeps, so that it holds in every language. */
  readonly signs: string;
  /** Who takes the string as it is, and why. */
  readonly signed: { readonly name: string; readonly reason: string } | undefined;
}

export interface ReceivedStrings {
  readonly comparisons: readonly ReceivedComparison[];
  /** Strings of the order of which nothing has been measured yet: 'E2 1'. */
  readonly notMeasured: readonly string[];
  /** True when each string came, was measured, and agrees with its order or is taken by name. */
  readonly mayBeStrung: boolean;
  readonly tolerances: ReceivedTolerances;
}

/**
 * The strings of a bass order as they came against what was ordered, so that a difference shows before anything is strung.
 *
 * They are compared with the figures of the order itself, whatever the scale has become since. A hitch loop is wide enough
 * when its inside is at least the hitch pin.
 */
export function receivedStrings(
  order: Order,
  signed: Orders['signed'],
  tolerances: ReceivedTolerances = STARTING_RECEIVED_TOLERANCES,
  language: Language = english,
): ReceivedStrings {
  const saidTwice = (words: (one: Language) => string) => ({
    sentence: words(language),
    signs: words(english),
  });
  const ordered = new Map(order.bassStrings.map((one) => [`${one.key}/${one.string}`, one.lengths_m]));
  const comparisons = order.measured.map(({ key, string, quantity, value_m }): ReceivedComparison => {
    const isLoop = quantity === 'hitch-loop-diameter';
    const wanted = ordered.get(`${key}/${string}`)?.[isLoop ? 'hitch-pin-diameter' : quantity];
    const id = `received/${noteName(key)}/${string}/${quantity}`;
    const shared = { id, key, string, quantity, measured: metres(value_m) };
    if (wanted === undefined)
      return {
        ...shared,
        ordered: undefined,
        is: 'not comparable',
        ...saidTwice((one) => comparisonWords({ key, string, quantity, measured: value_m }, one)),
        signed: undefined,
      };
    const difference = value_m - wanted;
    // A hair of rounding is no difference.
    const isWithin = isLoop
      ? difference >= -1e-9
      : Math.abs(difference) <= tolerances.tolerance_m[quantity] + 1e-9;
    const words = saidTwice((one) =>
      comparisonWords({ key, string, quantity, measured: value_m, wanted, isWithin }, one),
    );
    const signature = signed.find((one) => one.check === id && one.sentence === words.signs);
    return {
      ...shared,
      ordered: metres(wanted),
      is: isWithin ? 'within tolerance' : 'beyond tolerance',
      ...words,
      signed: signature === undefined ? undefined : { name: signature.name, reason: signature.reason },
    };
  });
  const measured = new Set(comparisons.map(({ key, string }) => `${key}/${string}`));
  const notMeasured = order.bassStrings
    .filter(({ key, string }) => !measured.has(`${key}/${string}`))
    .map(({ key, string }) => `${noteName(key)} ${string}`);
  return {
    comparisons,
    notMeasured,
    mayBeStrung:
      order.state === 'delivered' &&
      notMeasured.length === 0 &&
      comparisons.every(({ is, signed: by }) => is !== 'beyond tolerance' || by !== undefined),
    tolerances,
  };
}

interface Compared {
  readonly key: number;
  readonly string: number;
  readonly quantity: ReceivedQuantity;
  readonly measured: number;
  /** Undefined where the order states no figure. */
  readonly wanted?: number;
  readonly isWithin?: boolean;
}

function comparisonWords(
  { key, string, quantity, measured, wanted, isWithin = true }: Compared,
  { say, fixed }: Language,
): string {
  const length = (value_m: number) =>
    `${fixed(inMillimetres(metres(value_m)), 3)} mm (${fixed(inInches(metres(value_m)), 4)} in)`;
  const name = say('{note} string {string}, {quantity}', {
    note: noteName(key),
    string,
    quantity: say(receivedQuantityNames[quantity]),
  });
  if (wanted === undefined)
    return say('{name}: {measured} measured; the order states no figure to compare it with.', {
      name,
      measured: length(measured),
    });
  const figures = { name, measured: length(measured), wanted: length(wanted) };
  const isLoop = quantity === 'hitch-loop-diameter';
  return [
    isLoop
      ? say('{name}: {measured} measured, the hitch pin is {wanted}.', figures)
      : say('{name}: {measured} measured, {wanted} ordered.', figures),
    ...(isWithin
      ? []
      : [
          isLoop
            ? say('The loop does not go over the pin.')
            : say('Do not string it before it is settled with the maker.'),
        ]),
  ].join(' ');
}

/** Takes a string as it came, by name and with a reason. Throws: RangeError when there is no such difference. */
export async function acceptDifference(
  context: TaskContext,
  job: Ulid,
  wish: { readonly order: Ulid; readonly id: string; readonly name: string; readonly reason: string },
): Promise<Orders> {
  const language = context.language ?? english;
  const { say } = language;
  requireSaid(wish.name, say('a name'), language);
  requireSaid(wish.reason, say('a reason'), language);
  const orders = await readOrders(context, job);
  const { comparisons } = receivedStrings(
    orderIn(orders, wish.order, language),
    orders.signed,
    receivedTolerancesOf((await readShop(context)).allowances),
  );
  const difference = comparisons.find(({ id, is }) => id === wish.id && is === 'beyond tolerance');
  if (difference === undefined)
    throw new RangeError(
      say(
        "Cannot take this difference: one beyond the tolerance is needed, '{id}' was found. Look at what was measured again.",
        { id: wish.id },
      ),
    );
  const signed: FactOf<'order-check-signed'> = {
    kind: 'order-check-signed',
    v: 1,
    check: difference.id,
    sentence: difference.signs,
    name: wish.name.trim(),
    reason: wish.reason.trim(),
  };
  return (await addOrderFacts(context, job, [signed])).orders;
}
