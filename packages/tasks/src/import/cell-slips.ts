import {
  type ReadingQuantityName,
  type ReadUnit,
  readingQuantities,
  siFromRead,
  unitsForDimension,
} from '@becket/journal';

/* What a cell may have been meant to say. */

/** A value in a unit, with no more digits than tell it apart. */
export function inUnit(value_si: number, unit: ReadUnit): string {
  return String(Number((value_si / siFromRead(1, unit)).toPrecision(4)));
}

/** The unit in which a value that is impossible in its own would be possible. */
export function unitThatFits(
  quantity: ReadingQuantityName,
  value: number,
  unit: ReadUnit,
): ReadUnit | undefined {
  const { dimension, possible } = readingQuantities[quantity];
  return unitsForDimension(dimension).find((other) => {
    const value_si = siFromRead(value, other);
    return other !== unit && value_si >= possible[0] && value_si <= possible[1];
  });
}

/** The same digits with the decimal point in another place, where exactly one place makes them possible. */
export function slippedPoint(
  quantity: ReadingQuantityName,
  value: number,
  unit: ReadUnit,
): string | undefined {
  const { possible } = readingQuantities[quantity];
  const meant = [0.001, 0.01, 0.1, 10, 100, 1000].filter((factor) => {
    const value_si = siFromRead(value * factor, unit);
    return value_si > 0 && value_si >= possible[0] && value_si <= possible[1];
  });
  return meant.length === 1 ? String(Number((value * meant[0]!).toPrecision(6))) : undefined;
}
