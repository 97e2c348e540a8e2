import { english, inches, inMetres, type Language, millimetres } from '@becket/core';
import { firstProblem, type StockItem, type StockUnit, stockItemSchema } from '@becket/journal';

/**
 * The item of the stock that a text names, written as `stockItemId` writes it or in inches: 'wire 0.991 mm', 'wire 0.039 in',
 * 'tuning pin 7.163 x 63.5 mm', 'tuning pin 7.16 mm' (length not chosen), 'Felt glue (piece)'.
 *
 * Throws: SyntaxError with one sentence when it is none of these.
 * @example itemNamed('wire 0.991 mm')  // = {"kind":"wire","diameter_m":0.000991}
 * @example itemNamed('Felt, red (mm)')  // = {"kind":"other","name":"Felt, red","unit":"mm"}
 */
export function itemNamed(text: string, { say }: Language = english): StockItem {
  const words = text.trim();
  const wire = /^wire (\d*[.,]?\d+) ?(mm|in)$/i.exec(words);
  const pin =
    /^tuning pins? (\d*[.,]?\d+)(?: ?(mm|in))?(?: ?[x×] ?(\d*[.,]?\d+|any length)(?: ?(mm|in))?)?$/i.exec(
      words,
    );
  const other = /^(.+) \((piece|set|mm|g)\)$/i.exec(words);
  let item: unknown;
  if (wire !== null) item = { kind: 'wire', diameter_m: lengthOf(wire[1]!, wire[2]!) };
  else if (pin !== null) {
    const [, diameter, unit, length, lengthUnit] = pin;
    const isLengthOpen = length === undefined || length === 'any length';
    // The list writes 'tuning pin 7.16 x any length', and that is in millimetres.
    const written = unit ?? lengthUnit ?? (length === 'any length' ? 'mm' : undefined);
    if (written !== undefined)
      item = {
        kind: 'tuning pin',
        diameter_m: lengthOf(diameter!, written),
        ...(isLengthOpen ? {} : { length_m: lengthOf(length, lengthUnit ?? written) }),
      };
  } else if (other !== null) item = { kind: 'other', name: other[1], unit: other[2]!.toLowerCase() };
  const read = item === undefined ? undefined : stockItemSchema.safeParse(item);
  if (read?.success) return read.data;
  throw new SyntaxError(
    say(
      "Cannot tell what '{text}' is: something like 'wire 0.991 mm', 'tuning pin 7.163 x 63.5 mm' or 'Felt glue (piece)' is needed{problem}. Take it as the list of the stock writes it.",
      { text, problem: read === undefined ? '' : `; ${firstProblem(read.error)}` },
    ),
  );
}

/**
 * A quantity of an item in whole numbers of its unit: '500 g', '1.5 kg', '2 m', '240 pieces', or a bare number of the unit.
 *
 * Throws: RangeError with one sentence when it is another kind of quantity, below 0 or not whole.
 * @example quantityOf('1.5 kg', 'g')  // = 1500
 */
export function quantityOf(text: string, unit: StockUnit, { say }: Language = english): number {
  const [, digits, named = unit] = /^(\d+(?:[.,]\d+)?) ?([a-z]+)?$/i.exec(text.trim()) ?? [];
  const factor = factors[unit][named.toLowerCase()];
  const value = Number(digits?.replace(',', '.')) * (factor ?? Number.NaN);
  const whole = Math.round(value);
  if (Number.isFinite(value) && Math.abs(value - whole) < 1e-6 && whole <= 1e9) return whole;
  throw new RangeError(
    say(
      "Cannot take the quantity '{text}': a whole number of {unit} is needed, such as {example}. Correct it and try again.",
      { text, unit, example: examples[unit] },
    ),
  );
}

const lengthOf = (digits: string, unit: string): number => {
  const value = Number(digits.replace(',', '.'));
  return inMetres(unit.toLowerCase() === 'in' ? inches(value) : millimetres(value));
};

const factors: Readonly<Record<StockUnit, Readonly<Record<string, number>>>> = {
  g: { g: 1, kg: 1000 },
  mm: { mm: 1, cm: 10, m: 1000 },
  piece: { piece: 1, pieces: 1 },
  set: { set: 1, sets: 1 },
};
const examples: Readonly<Record<StockUnit, string>> = {
  g: "'500 g' or '1.5 kg'",
  mm: "'850 mm' or '2 m'",
  piece: "'240 pieces' or '240'",
  set: "'1 set' or '1'",
};
