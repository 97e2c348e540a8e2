import { type Metres, type Newtons, pascals, requirePositive } from '../units/index.ts';
import { interpolatedStrengthTable, type WireStrengthTable } from './wire-strength.ts';

/** One diameter of wire that was pulled until it broke, or that its maker states a break load for. */
export interface TestedWire {
  readonly diameter: Metres;
  /** Mean break load of the pieces pulled. */
  readonly breakLoad: Newtons;
  /** Standard uncertainty of that mean; 2 % of the break load when it was not noted down. */
  readonly standardUncertainty?: Newtons;
}

/** A shop's own tested values: plain data, as typed in. */
export interface TestedWireTable {
  readonly name: string;
  /** Who pulled it, on what machine, when, how many pieces; or which maker's sheet. Never empty. */
  readonly source: string;
  readonly wires: readonly TestedWire[];
}

/** A break load noted without its scatter is taken to be good to 2 %: an assumption, no source. */
const ASSUMED_RELATIVE_UNCERTAINTY = 0.02;

/**
 * A strength table from wire that was tested, read between the diameters in ln d.
 *
 *     S = F / (π · d² / 4)        for each wire pulled
 *
 * @param table.wires  two or more diameters d [m] with break load F [N]
 * @returns a strength table of kind 'tested'
 *
 * Throws: SyntaxError without a source; RangeError as `interpolatedStrengthTable`.
 * @example  testedStrengthTable({ name: 'own wire', source: 'pulled here in May', wires: [{ diameter: millimetres(0.8), breakLoad: newtons(1200) }, { diameter: millimetres(1), breakLoad: newtons(1800) }] }).strengthAt(millimetres(1)).strength / 1e6  // ≈ 2291.8 MPa
 */
export function testedStrengthTable(table: TestedWireTable): WireStrengthTable {
  const task = `the strength table '${table.name}'`;
  if (table.source.trim() === '') {
    throw new SyntaxError(
      `Cannot make ${task} as tested values need a source (who pulled them, or whose sheet): found none`,
    );
  }
  return interpolatedStrengthTable({
    name: table.name,
    kind: 'tested',
    source: table.source,
    remark: '',
    points: table.wires.map(({ diameter, breakLoad, standardUncertainty }) => {
      requirePositive(diameter, 'diameter', task);
      requirePositive(breakLoad, 'break load', task);
      const area = (Math.PI / 4) * diameter ** 2;
      const uncertainty = standardUncertainty ?? ASSUMED_RELATIVE_UNCERTAINTY * breakLoad;
      return {
        diameter,
        strength: pascals(breakLoad / area),
        standardUncertainty: pascals(uncertainty / area),
      };
    }),
  });
}
