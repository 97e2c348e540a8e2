/** Chance that can be had again: the same seed gives the same numbers on every computer. */
export interface Chance {
  /** From 0 up to 1. */
  readonly even: () => number;
  /** Normal distribution. */
  readonly normal: (mean: number, standardDeviation: number) => number;
  /** True in this share of the cases. */
  readonly happens: (share: number) => boolean;
}

/** Source: the 32-bit generator "mulberry32" (T. Ettinger, public domain; from memory); Box and Muller, 1958. */
export function seededChance(seed: number): Chance {
  let state = seed >>> 0;
  const even = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 15), mixed | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  const normal = (mean: number, standardDeviation: number): number =>
    mean + standardDeviation * Math.sqrt(-2 * Math.log(1 - even())) * Math.cos(2 * Math.PI * even());
  return { even, normal, happens: (share) => even() < share };
}
