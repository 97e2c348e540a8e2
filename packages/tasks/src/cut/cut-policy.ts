/** What a wire needs besides the string itself, and what is taken where nobody measured it. Plain data, for the shop to change. */
export interface CutPolicy {
  /** Turns on each pin. */
  readonly coils: number;
  /** What goes through the eye of each pin. */
  readonly becket_m: number;
  /** Cut off at each pin. */
  readonly waste_m: number;
  /** The hitch loop of a tied wire. */
  readonly tie_m: number;
  readonly hitchPinDiameter_m: number;
  readonly pinDiameter_m: number;
  readonly frontLength_m: number;
  readonly backLength_m: number;
}

/**
 * Where a shop starts from: coils, becket, waste and tie are common practice, no source; the other figures are our own to
 * start from.
 */
export const STARTING_CUT_POLICY: CutPolicy = {
  coils: 3,
  becket_m: 0.006,
  waste_m: 0.02,
  tie_m: 0.07,
  hitchPinDiameter_m: 0.004,
  pinDiameter_m: 0.0072,
  frontLength_m: 0.12,
  backLength_m: 0.18,
};
