/** A run of keys, both ends in it. */
export interface KeyRange {
  readonly firstKey: number;
  readonly lastKey: number;
}

/**
 * True when a key lies in a run of keys, its ends included.
 * @example isInKeyRange(40, { firstKey: 40, lastKey: 51 })  // = true
 */
export const isInKeyRange = (key: number, { firstKey, lastKey }: KeyRange): boolean =>
  firstKey <= key && key <= lastKey;

/**
 * The first of some runs that a key lies in: the section of a note, say. Undefined when it lies in none.
 * @example keyRangeAt(40, [{ firstKey: 1, lastKey: 20 }, { firstKey: 21, lastKey: 88 }]).lastKey  // = 88
 */
export const keyRangeAt = <Range extends KeyRange>(
  key: number,
  ranges: readonly Range[],
): Range | undefined => ranges.find((range) => isInKeyRange(key, range));
