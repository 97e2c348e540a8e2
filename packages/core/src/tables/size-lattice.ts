import { inMillimetres, type Metres, metres, requirePositive } from '../units/index.ts';

/** One size number with the diameter that one source gives it. */
export interface WireSize {
  /** 13.5 is "thirteen and a half". */
  readonly sizeNumber: number;
  /** As it is written on a coil: '13½'. */
  readonly label: string;
  readonly diameter: Metres;
  readonly source: string;
  /** True when sources give this number different diameters: ask for the micrometer. */
  readonly isDisputed: boolean;
}

/** The sizes in which piano wire is drawn, by one way of numbering. The two ways are different lattices. */
export interface SizeLattice {
  readonly name: string;
  /** Thin to thick. A disputed number stands in it once for each diameter that a source gives. */
  readonly sizes: readonly WireSize[];
}

/** A lattice from its rows; a number that occurs with two diameters is marked as disputed. */
export function sizeLattice(
  name: string,
  rows: readonly { readonly sizeNumber: number; readonly diameter: Metres; readonly source: string }[],
): SizeLattice {
  const sizes = rows
    .map((row) => ({
      ...row,
      label: sizeLabel(row.sizeNumber),
      isDisputed: rows.some(
        (other) => other.sizeNumber === row.sizeNumber && other.diameter !== row.diameter,
      ),
    }))
    .sort((a, b) => a.diameter - b.diameter || a.sizeNumber - b.sizeNumber);
  return { name, sizes };
}

/** '13½' for 13.5, '14' for 14. */
export function sizeLabel(sizeNumber: number): string {
  const whole = Math.floor(sizeNumber);
  if (sizeNumber === whole) return `${whole}`;
  return sizeNumber === whole + 0.5 ? `${whole}½` : `${sizeNumber}`;
}

/**
 * Every diameter that a size number may mean in this lattice: none, one, or several where sources disagree.
 * @example  diametersOfSize(US_WIRE_SIZES, 24).length  // = 2
 */
export function diametersOfSize(lattice: SizeLattice, sizeNumber: number): WireSize[] {
  return lattice.sizes.filter((size) => size.sizeNumber === sizeNumber);
}

/** Each diameter of the lattice once, thin to thick [m]. */
export function latticeDiameters(lattice: SizeLattice): Metres[] {
  return [...new Set(lattice.sizes.map((size) => size.diameter))];
}

/** The lattice diameter nearest to one that was measured, with every number that may stand for it. */
export interface NearestSize {
  readonly diameter: Metres;
  /** One size; several when sources give different numbers to this diameter. */
  readonly sizes: readonly WireSize[];
  /** Measured less lattice diameter. */
  readonly difference: Metres;
  /** False when the wire is further beyond the ends of the lattice than half its last step. */
  readonly isWithinLattice: boolean;
}

/**
 * The nearest size of a lattice: nearest in diameter, which is not the same as the most probable original size.
 *
 * Throws: RangeError when the diameter is not positive.
 * @example  nearestSize(US_WIRE_SIZES, millimetres(0.835)).sizes[0].label  // = 14
 */
export function nearestSize(lattice: SizeLattice, diameter: Metres): NearestSize {
  requirePositive(diameter, 'diameter', `the nearest size of the ${lattice.name}`);
  const diameters = latticeDiameters(lattice);
  const nearest = diameters.reduce((best, candidate) =>
    Math.abs(candidate - diameter) < Math.abs(best - diameter) ? candidate : best,
  );
  const [thinnest, secondThinnest] = [diameters[0]!, diameters[1]!];
  const [secondThickest, thickest] = [diameters[diameters.length - 2]!, diameters[diameters.length - 1]!];
  return {
    diameter: nearest,
    sizes: lattice.sizes.filter((size) => size.diameter === nearest),
    difference: metres(diameter - nearest),
    isWithinLattice:
      diameter >= thinnest - (secondThinnest - thinnest) / 2 &&
      diameter <= thickest + (thickest - secondThickest) / 2,
  };
}

/** A sentence for each size number that sources disagree about; empty when there is none. */
export function disputesOf(lattice: SizeLattice): string[] {
  const numbers = [
    ...new Set(lattice.sizes.filter((size) => size.isDisputed).map((size) => size.sizeNumber)),
  ];
  return numbers.map((sizeNumber) => {
    const claims = diametersOfSize(lattice, sizeNumber).map(
      (size) => `${inMillimetres(size.diameter).toFixed(3)} mm (${size.source})`,
    );
    return `Size ${sizeLabel(sizeNumber)} in ${lattice.name} is ${claims.join(' or ')}: measure it.`;
  });
}
