import { english, inches, inMetres, type Language, millimetres } from '@becket/core';
import type { FactOf, Order, ReceivedQuantity } from '@becket/journal';
import type { LengthUnit } from '../../parts/length-text.ts';
import { readTypedNumber } from '../../parts/typed-number.ts';

type Received = Omit<FactOf<'goods-received'>, 'kind' | 'v'>;

/** How much of each line came, as typed; a line that is not typed came as far as it is outstanding. */
export type TypedCounts = Readonly<Record<number, string>>;

/**
 * The delivery that was typed. Throws: RangeError with one sentence when a count is no whole number of 0 or more.
 */
export function deliveryOf(
  order: Order,
  typed: TypedCounts,
  on: string,
  language: Language = english,
): Received {
  const { say } = language;
  const lines = order.lines.flatMap(({ line, outstanding, what }) => {
    const text = typed[line]?.trim() ?? String(outstanding);
    const read = readTypedNumber(text === '' ? '0' : text, language);
    if (read.is !== 'number' || read.unit !== undefined || !Number.isInteger(read.value) || read.value < 0)
      throw new RangeError(
        say(
          "Cannot note this delivery: a whole number of 0 or more is needed for {what}, '{text}' was found. Correct it.",
          { what, text },
        ),
      );
    return read.value === 0 ? [] : [{ line, quantity: read.value }];
  });
  if (lines.length === 0)
    throw new RangeError(
      say(
        'Cannot note this delivery: at least one line that came is needed, every count is 0. Type how many came.',
      ),
    );
  return { order: order.id, on, lines, measured: [] };
}

export interface MeasureForm {
  /** 'key/string' */
  readonly string: string;
  readonly quantity: ReceivedQuantity;
  readonly value: string;
}

/** One thing measured on a string that came. Throws: RangeError when nothing that is a length was typed. */
export function measureOf(
  order: Order,
  form: MeasureForm,
  unit: LengthUnit,
  on: string,
  language: Language = english,
): Received {
  const { say } = language;
  const [key, string] = form.string.split('/').map(Number);
  if (key === undefined || string === undefined || !Number.isInteger(key))
    throw new RangeError(
      say('Cannot keep this measure: a string of the order is needed, none was chosen. Choose it.'),
    );
  const read = readTypedNumber(form.value, language);
  const readUnit = read.is === 'number' ? (read.unit ?? unit) : undefined;
  if (read.is !== 'number' || (readUnit !== 'mm' && readUnit !== 'in') || read.value <= 0)
    throw new RangeError(
      say(
        "Cannot keep this measure: a length above 0 in mm or in is needed, {found, select, none {nothing} other {'{found}'}} was found. Type it again.",
        { found: form.value.trim() === '' ? 'none' : form.value.trim() },
      ),
    );
  const value_m = inMetres(readUnit === 'mm' ? millimetres(read.value) : inches(read.value));
  return {
    order: order.id,
    on,
    lines: [],
    measured: [
      { key, string, quantity: form.quantity, value_m, asRead: { value: read.value, unit: readUnit } },
    ],
  };
}

/** The string of the order after this one, 'key/string'; the last stays. */
export function stringAfter({ bassStrings }: Pick<Order, 'bassStrings'>, string: string): string {
  const names = bassStrings.map((one) => `${one.key}/${one.string}`);
  return names[names.indexOf(string) + 1] ?? string;
}
