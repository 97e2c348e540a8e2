import type { StockLine } from '@becket/journal';
import type { PlanRules, WireLatticeName } from '@becket/tasks';
import type { Sizes } from './use-inferred-sizes.ts';

/** The way of numbering that a plan chooses from: the one asked for, else the one that the old wire speaks for. */
export function wiresToUse(
  asked: WireLatticeName | undefined,
  sizes: Sizes,
  { wires }: Pick<PlanRules, 'wires'>,
): WireLatticeName {
  return asked ?? (sizes.is === 'there' ? sizes.sizes?.lattice : undefined) ?? wires;
}

/** Diameters of the wire that is free on the shelf [m]. */
export const wiresOnShelf = (lines: readonly Pick<StockLine, 'item' | 'free'>[]): number[] =>
  lines.flatMap(({ item, free }) => (item.kind === 'wire' && (free ?? 0) > 0 ? [item.diameter_m] : []));
