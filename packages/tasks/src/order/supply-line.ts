import { english, type Language, type Metres } from '@becket/core';
import { type StockItem, type StockUnit, stockItemId, stockUnitOf, type Ulid } from '@becket/journal';
import { itemWords } from './item-words.ts';

export const supplyGroups = [
  'plain wire',
  'tuning pins',
  'bass strings',
  'felts and bushings',
  'sundries',
] as const;
export type SupplyGroup = (typeof supplyGroups)[number];

/** Whose need a line is: strings, and the entries that their figures come from. */
export interface SupplySource {
  /** Undefined for what belongs to a section. */
  readonly key: number | undefined;
  readonly string: number | undefined;
  readonly entries: readonly Ulid[];
}

/** One thing the job needs. Quantities are whole numbers of `unit`; undefined is unknown, and `because` says why. */
export interface SupplyLine {
  readonly id: string;
  readonly group: SupplyGroup;
  readonly what: string;
  /** Undefined where it is no item of a stock: a bass set is made for one piano. */
  readonly item: StockItem | undefined;
  readonly unit: StockUnit;
  readonly needed: number | undefined;
  /** What is added to it, by name: 'spoilage 10 %', 'spare wires'. */
  readonly extra: readonly { readonly name: string; readonly quantity: number }[];
  readonly total: number | undefined;
  readonly because: string;
  /** Figures that stand in for readings, one sentence each. */
  readonly assumed: readonly string[];
  readonly from: readonly SupplySource[];
  /** Of wire: each wire to be cut whole, spares among them, and further length for spoilage. */
  readonly wire?:
    | { readonly cuts: readonly Metres[]; readonly beyond: Metres; readonly total: Metres }
    | undefined;
}

/** What an item's line has in common wherever it comes from. */
export function lineOf(item: StockItem, group: SupplyGroup, language: Language = english) {
  return { id: stockItemId(item), group, what: itemWords(item, language), item, unit: stockUnitOf(item) };
}
