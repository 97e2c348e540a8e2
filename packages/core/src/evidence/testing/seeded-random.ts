/** Chance that is the same every time, for tests and benchmarks. */
export interface SeededRandom {
  /** Even in [0, 1). */
  readonly uniform: () => number;
  /** Normal with mean 0 and standard deviation 1. */
  readonly normal: () => number;
  /** A whole number from `low` to `high`, both included. */
  readonly integer: (low: number, high: number) => number;
}

/** Mulberry32 (T. Ettinger, public domain; from memory), and the transform of Box and Muller for normal numbers. */
export function seededRandom(seed: number): SeededRandom {
  let state = seed | 0;
  const uniform = () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  const normal = () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
  const integer = (low: number, high: number) => low + Math.floor(uniform() * (high - low + 1));
  return { uniform, normal, integer };
}
