import { english, inches, inMetres, type Language, millimetres } from '@becket/core';
import type { StockItem } from '@becket/journal';
import type { StockMove } from '@becket/tasks';
import type { LengthUnit } from '../../parts/length-text.ts';
import { readTypedNumber } from '../../parts/typed-number.ts';

export const stockKinds = ['wire', 'tuning pin', 'other'] as const;
export const stockActions = ['counted', 'came in', 'used', 'keep at least'] as const;

export interface StockForm {
  readonly action: (typeof stockActions)[number];
  readonly kind: (typeof stockKinds)[number];
  readonly diameter: string;
  readonly pinLength: string;
  readonly name: string;
  readonly unit: 'piece' | 'set' | 'mm' | 'g';
  readonly quantity: string;
}

export const newStockForm: StockForm = {
  action: 'counted',
  kind: 'wire',
  diameter: '',
  pinLength: '',
  name: '',
  unit: 'piece',
  quantity: '',
};

/** The move that a form describes. Throws: RangeError with one sentence when something is missing or no number. */
export function stockMoveOf(form: StockForm, unit: LengthUnit, language: Language = english): StockMove {
  const { say } = language;
  const item = stockItemOf(form, unit, language);
  const read = readTypedNumber(form.quantity, language);
  const isWhole = read.is === 'number' && read.unit === undefined && Number.isInteger(read.value);
  const least = form.action === 'counted' || form.action === 'keep at least' ? 0 : 1;
  if (!isWhole || read.value < least)
    throw new RangeError(
      say(
        "Cannot note this: a whole number of {least} or more is needed{kind, select, wire { in grams} other {}}, {found, select, none {nothing} other {'{found}'}} was found. Type it again.",
        {
          least,
          kind: item.kind,
          found: form.quantity.trim() === '' ? 'none' : form.quantity.trim(),
        },
      ),
    );
  const quantity = read.value;
  switch (form.action) {
    case 'counted':
      return { kind: 'stock-counted', item, quantity };
    case 'came in':
      return { kind: 'stock-received', item, quantity };
    case 'used':
      return { kind: 'stock-used', item, quantity };
    case 'keep at least':
      return { kind: 'stock-minimum-set', item, minimum: quantity };
  }
}

function stockItemOf(
  { kind, diameter, pinLength, name, unit: counted }: StockForm,
  unit: LengthUnit,
  language: Language = english,
): StockItem {
  const { say } = language;
  const length = (typed: string, what: 'wire' | 'pin' | 'pinLength'): number => {
    const read = readTypedNumber(typed, language);
    const readUnit = read.is === 'number' ? (read.unit ?? unit) : undefined;
    if (read.is !== 'number' || (readUnit !== 'mm' && readUnit !== 'in') || read.value <= 0)
      throw new RangeError(
        say(
          "Cannot note this: {what, select, wire {the diameter of the wire} pin {the diameter of the pin} other {the length of the pin}} in mm or in is needed, {found, select, none {nothing} other {'{found}'}} was found. Type it again.",
          { what, found: typed.trim() === '' ? 'none' : typed.trim() },
        ),
      );
    return inMetres(readUnit === 'mm' ? millimetres(read.value) : inches(read.value));
  };
  switch (kind) {
    case 'wire':
      return { kind, diameter_m: length(diameter, 'wire') };
    case 'tuning pin':
      return {
        kind,
        diameter_m: length(diameter, 'pin'),
        ...(pinLength.trim() === '' ? {} : { length_m: length(pinLength, 'pinLength') }),
      };
    case 'other':
      if (name.trim() === '')
        throw new RangeError(
          say('Cannot note this: what it is called is needed, nothing was found. Type it.'),
        );
      return { kind, name: name.trim(), unit: counted };
  }
}
