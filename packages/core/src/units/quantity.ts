declare const dimension: unique symbol;

/**
 * A number in SI units that remembers, for the compiler only, which physical dimension it has.
 *
 * The brand costs nothing at run time and stops a diameter being passed where a force is wanted. Arithmetic
 * drops the brand: compute with plain numbers inside a formula, and brand the result once on the return line.
 */
export type Quantity<Dimension extends string> = number & { readonly [dimension]: Dimension };

/** The one place where a plain number becomes a quantity. */
export const quantity = <Dimension extends string>(
  _dimension: Dimension,
  value: number,
): Quantity<Dimension> => value as Quantity<Dimension>;
