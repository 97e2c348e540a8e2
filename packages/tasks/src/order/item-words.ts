import {
  COMMON_PIN_LENGTHS,
  COMMON_PIN_SIZES,
  inInches,
  inMillimetres,
  METRIC_WIRE_SIZES,
  type Metres,
  metres,
  nearestSize,
  US_WIRE_SIZES,
} from '@becket/core';
import type { StockItem, StockUnit } from '@becket/journal';

/** Two diameters closer than this are one size: drawn wire is not told apart below it. Common practice, no source. */
const ONE_SIZE_M = 2e-6;

/** 'Plain wire 0.991 mm (.0390 in; US 17)', 'Tuning pins 7.163 mm, 63.5 mm long (2/0, 2½ in)' */
export function itemWords(item: StockItem): string {
  switch (item.kind) {
    case 'wire': {
      const diameter = metres(item.diameter_m);
      return `Plain wire ${inMillimetres(diameter).toFixed(3)} mm (${inInches(diameter).toFixed(4)} in${sizeWords(diameter)})`;
    }
    case 'tuning pin': {
      const size = COMMON_PIN_SIZES.find(({ diameter_m }) => Math.abs(diameter_m - item.diameter_m) < 5e-6);
      const length = COMMON_PIN_LENGTHS.find(
        ({ length_m }) => item.length_m !== undefined && Math.abs(length_m - item.length_m) < 5e-5,
      );
      const names = [size?.label, length?.label].filter((name) => name !== undefined).join(', ');
      const long =
        item.length_m === undefined
          ? 'length not chosen'
          : `${inMillimetres(metres(item.length_m)).toFixed(1)} mm long`;
      return `Tuning pins ${inMillimetres(metres(item.diameter_m)).toFixed(3)} mm, ${long}${names === '' ? '' : ` (${names})`}`;
    }
    case 'other':
      return item.name;
  }
}

/** '; US 17, metric 0.975' where the diameter is a listed size, else nothing. */
function sizeWords(diameter: Metres): string {
  const names = listedSizeName(diameter);
  return names === '' ? '' : `; ${names}`;
}

/** 'US 17, metric 0.975': the listed sizes that a diameter is; empty where it is none. */
export function listedSizeName(diameter: Metres): string {
  return ([US_WIRE_SIZES, METRIC_WIRE_SIZES] as const)
    .flatMap((lattice, index) => {
      const { sizes, difference } = nearestSize(lattice, diameter);
      return Math.abs(difference) < ONE_SIZE_M && sizes[0] !== undefined
        ? [`${index === 0 ? 'US' : 'metric'} ${sizes[0].label}`]
        : [];
    })
    .join(', ');
}

/** '245 g', '1.52 kg', '239 pieces', '1 set', '1.85 m' */
export function quantityWords(quantity: number, unit: StockUnit): string {
  switch (unit) {
    case 'g':
      return Math.abs(quantity) < 1000 ? `${quantity} g` : `${(quantity / 1000).toFixed(2)} kg`;
    case 'mm':
      return Math.abs(quantity) < 1000 ? `${quantity} mm` : `${(quantity / 1000).toFixed(2)} m`;
    case 'piece':
      return `${quantity} ${quantity === 1 ? 'piece' : 'pieces'}`;
    case 'set':
      return `${quantity} ${quantity === 1 ? 'set' : 'sets'}`;
  }
}
