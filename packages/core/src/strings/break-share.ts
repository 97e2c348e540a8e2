import type { WireStrengthTable } from '../tables/index.ts';
import { type Metres, type Newtons, requirePositive } from '../units/index.ts';
import { breakLoad } from './break-load.ts';

/** Tension as a share of the break load, and what that break load rests on. */
export interface BreakShare {
  /** 0.55 is 55 % of the break load. */
  readonly share: number;
  readonly breakLoad: Newtons;
  /** Name of the strength table; a break share without it says nothing. */
  readonly table: string;
  /** The sentence that stands beside the figure; empty when the table has none. */
  readonly remark: string;
  /** False when the diameter lies outside the range of the table. */
  readonly isWithinTableRange: boolean;
}

/**
 * How near a wire is to breaking.
 *
 *     share = T / F        F = break load by the named table
 *
 * @param wire.tension        T [N], > 0
 * @param wire.diameter       d [m], > 0; of a wound string the core
 * @param wire.strengthTable  where the strength comes from
 * @returns the share with the break load, the table's name and its remark; never above or below a limit by itself: limits
 *          are the shop's policy
 *
 * Holds for: straight sound wire, see `breakLoad`.
 * Error: tables of one kind of wire differ by 2 to 10 %, far more than their rounding: compare shares by one table only.
 * Throws: RangeError when an input is not positive and finite.
 * Source: definition.
 * @example  breakShare({ tension: newtons(700), diameter: millimetres(1), strengthTable: A228_MINIMUM }).share  // ≈ 0.409
 */
export function breakShare(wire: {
  tension: Newtons;
  diameter: Metres;
  strengthTable: WireStrengthTable;
}): BreakShare {
  const tension = requirePositive(wire.tension, 'tension', 'break share');
  const { name, remark } = wire.strengthTable;
  const { strength, isWithinRange } = wire.strengthTable.strengthAt(wire.diameter);
  const load = breakLoad({ diameter: wire.diameter, strength });
  return { share: tension / load, breakLoad: load, table: name, remark, isWithinTableRange: isWithinRange };
}
