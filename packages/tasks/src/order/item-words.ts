import {
  COMMON_PIN_LENGTHS,
  COMMON_PIN_SIZES,
  english,
  inInches,
  inMillimetres,
  type Language,
  METRIC_WIRE_SIZES,
  type Metres,
  metres,
  nearestSize,
  sayKnown,
  US_WIRE_SIZES,
} from '@becket/core';
import type { StockItem, StockUnit } from '@becket/journal';

/** Two diameters closer than this are one size: drawn wire is not told apart below it. Common practice, no source. */
const ONE_SIZE_M = 2e-6;

/** 'Plain wire 0.991 mm (.0390 in; US 17)', 'Tuning pins 7.163 mm, 63.5 mm long (2/0, 2½ in)' */
export function itemWords(item: StockItem, language: Language = english): string {
  const { say, fixed } = language;
  switch (item.kind) {
    case 'wire': {
      const diameter = metres(item.diameter_m);
      return say('Plain wire {millimetres} mm ({inches} in{size})', {
        millimetres: fixed(inMillimetres(diameter), 3),
        inches: fixed(inInches(diameter), 4),
        size: sizeWords(diameter, language),
      });
    }
    case 'tuning pin': {
      const size = COMMON_PIN_SIZES.find(({ diameter_m }) => Math.abs(diameter_m - item.diameter_m) < 5e-6);
      const length = COMMON_PIN_LENGTHS.find(
        ({ length_m }) => item.length_m !== undefined && Math.abs(length_m - item.length_m) < 5e-5,
      );
      const names = [size?.label, length?.label].filter((name) => name !== undefined).join(', ');
      const long =
        item.length_m === undefined
          ? say('length not chosen')
          : say('{length} mm long', { length: fixed(inMillimetres(metres(item.length_m)), 1) });
      const diameter = fixed(inMillimetres(metres(item.diameter_m)), 3);
      return `${say('Tuning pins {diameter} mm, {long}', { diameter, long })}${names === '' ? '' : ` (${names})`}`;
    }
    case 'other':
      // Ours are 'Felt, 4.0 mm, red': the parts that we named are said, a colour that was typed stays.
      return item.name
        .split(', ')
        .map((part) => sayKnown(part, language))
        .join(', ');
  }
}

/** '; US 17, metric 0.975' where the diameter is a listed size, else nothing. */
function sizeWords(diameter: Metres, language: Language): string {
  const names = listedSizeName(diameter, language);
  return names === '' ? '' : `; ${names}`;
}

/** 'US 17, metric 0.975': the listed sizes that a diameter is; empty where it is none. */
export function listedSizeName(diameter: Metres, { say }: Language = english): string {
  return ([US_WIRE_SIZES, METRIC_WIRE_SIZES] as const)
    .flatMap((lattice, index) => {
      const { sizes, difference } = nearestSize(lattice, diameter);
      return Math.abs(difference) < ONE_SIZE_M && sizes[0] !== undefined
        ? [index === 0 ? `US ${sizes[0].label}` : say('metric {size}', { size: sizes[0].label })]
        : [];
    })
    .join(', ');
}

/** '245 g', '1.52 kg', '239 pieces', '1 set', '1.85 m' */
export function quantityWords(quantity: number, unit: StockUnit, { say, fixed }: Language = english): string {
  switch (unit) {
    case 'g':
      return Math.abs(quantity) < 1000 ? `${quantity} g` : `${fixed(quantity / 1000, 2)} kg`;
    case 'mm':
      return Math.abs(quantity) < 1000 ? `${quantity} mm` : `${fixed(quantity / 1000, 2)} m`;
    case 'piece':
      return say('{text} {quantity, plural, one {piece} other {pieces}}', {
        text: String(quantity),
        quantity,
      });
    case 'set':
      return say('{text} {quantity, plural, one {set} other {sets}}', { text: String(quantity), quantity });
  }
}
