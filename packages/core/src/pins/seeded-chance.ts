/**
 * Numbers even in [0, 1) from a seed, so that a figure which rests on drawing lots can be had again.
 *
 * Source: Mulberry32, T. Ettinger, public domain; from memory. Good enough for resampling, not for secrets.
 * @example seededChance(1)() === seededChance(1)()  // = true
 */
export function seededChance(seed: number): () => number {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
