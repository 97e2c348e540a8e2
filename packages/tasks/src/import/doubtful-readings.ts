import type { FactOf, ReadingQuantityName } from '@becket/journal';

/** A reading that stands too far from its neighbours to pass without a question. */
export interface DoubtfulReading {
  /** Index into the readings that were handed in. */
  readonly index: number;
  readonly sentence: string;
  /** What it may have been meant to say, where a slip explains it, SI. */
  readonly suggestion_si: number | undefined;
}

/**
 * How far, as a natural logarithm, a reading may stand from the middle of its neighbours before it is questioned. A wire
 * size is a step of 0.025 to 0.03; lengths and windings jump at a break. Common practice, no source.
 */
const furthest: Partial<Record<ReadingQuantityName, number>> = {
  'wire-diameter': 0.08,
  'core-diameter': 0.12,
  'over-all-diameter': 0.3,
  'inner-layer-diameter': 0.3,
  'speaking-length': 0.3,
  'pin-diameter': 0.05,
};

/** Slips that a keyboard makes: a decimal place, or inches for millimetres. */
const slips = [10, 0.1, 100, 0.01, 25.4, 1 / 25.4];

/** Neighbours are the readings of the same quantity within this many keys. */
const REACH = 4;

/** Fewer readings than this around a key say nothing. */
const FEWEST = 4;

/**
 * Readings of a table that are doubted: far from the middle of the same quantity's readings on the notes around. Never
 * blocking; a real piano can be odd.
 */
export function doubtfulReadings(readings: readonly FactOf<'reading'>[]): DoubtfulReading[] {
  const valuesAt = new Map<string, number[]>();
  for (const { quantity, place, value_si } of readings) {
    if (place.key === undefined || value_si <= 0) continue;
    const name = `${quantity}/${place.key}`;
    const known = valuesAt.get(name);
    if (known === undefined) valuesAt.set(name, [value_si]);
    else known.push(value_si);
  }
  const middles = new Map<string, number | undefined>();
  /** Middle of the readings around a key; undefined when there are too few to say. */
  const middleAround = (quantity: ReadingQuantityName, key: number): number | undefined => {
    const name = `${quantity}/${key}`;
    if (!middles.has(name)) {
      const around: number[] = [];
      for (let other = key - REACH; other <= key + REACH; other += 1)
        around.push(...(valuesAt.get(`${quantity}/${other}`) ?? []));
      middles.set(name, around.length < FEWEST ? undefined : medianOf(around));
    }
    return middles.get(name);
  };
  return readings.flatMap(({ quantity, place, value_si, asRead }, index): DoubtfulReading[] => {
    const limit = furthest[quantity];
    if (limit === undefined || place.key === undefined || value_si <= 0) return [];
    const middle = middleAround(quantity, place.key);
    if (middle === undefined || Math.abs(Math.log(value_si / middle)) <= limit) return [];
    const slip = slips.find((factor) => Math.abs(Math.log((value_si * factor) / middle)) <= limit / 2);
    const perUnit = value_si / asRead.value;
    const usual = Number((middle / perUnit).toPrecision(4));
    return [
      {
        index,
        sentence: `${asRead.value} ${asRead.unit} is far from its neighbours, which read about ${usual} ${asRead.unit}`,
        suggestion_si: slip === undefined ? undefined : value_si * slip,
      },
    ];
  });
}

function medianOf(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[sorted.length >> 1]!;
}
