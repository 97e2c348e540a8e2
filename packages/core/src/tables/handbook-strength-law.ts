import { type Metres, megapascals, millimetres, type Pascals, requirePositive } from '../units/index.ts';
import { message } from '../words/index.ts';
import { REAL_WIRE_REMARK, strengthLawTable, type WireStrengthTable } from './wire-strength.ts';

/** Constants of a power law of strength, and where they are from. */
export interface HandbookStrengthLawInput {
  /** A, the strength of a wire of one millimetre. */
  readonly strengthAtOneMillimetre: Pascals;
  /** m, dimensionless. */
  readonly exponent: number;
  readonly name?: string;
  readonly source: string;
  readonly smallestDiameter: Metres;
  readonly largestDiameter: Metres;
  /** Standard uncertainty as a share of the strength. Default 0.01: what the laws below miss A228 by. */
  readonly relativeUncertainty?: number;
}

/**
 * The spring-wire law of the handbooks.
 *
 *     S = A / dᵐ        d in millimetres
 *
 * @param input.strengthAtOneMillimetre  A [Pa]
 * @param input.exponent                 m
 * @returns a strength table; the strength falls as the wire gets thicker
 *
 * Holds for: the range of diameters given. Error: see `SHIGLEY_A228_LAW`.
 * Throws: RangeError when A is not positive.
 */
export function handbookStrengthLaw(input: HandbookStrengthLawInput): WireStrengthTable {
  const { strengthAtOneMillimetre, exponent, smallestDiameter, largestDiameter, source } = input;
  requirePositive(strengthAtOneMillimetre, 'strength at 1 mm', 'a strength law');
  return strengthLawTable({
    name: input.name ?? `law ${strengthAtOneMillimetre / 1e6} MPa / d^${exponent} (d in mm)`,
    kind: 'law',
    source,
    remark: REAL_WIRE_REMARK,
    smallestDiameter,
    largestDiameter,
    law: (diameter) => strengthAtOneMillimetre / (diameter * 1000) ** exponent,
    relativeUncertainty: input.relativeUncertainty ?? 0.01,
  });
}

/**
 * Music wire by the law of Shigley's handbook, A = 2211 MPa·mmᵐ (201 ksi·inᵐ), m = 0.145, 0.10 to 6.5 mm.
 *
 * Against the A228 minimum table it lies up to 2 % high from 0.030 to 0.048 in, so the table is the default and the law
 * an option. Source: Shigley's Mechanical Engineering Design, table of spring-wire constants (from memory).
 * @example  inMegapascals(SHIGLEY_A228_LAW.strengthAt(millimetres(1)).strength)  // ≈ 2211 MPa
 */
export const SHIGLEY_A228_LAW = handbookStrengthLaw({
  name: message('handbook law 2211/d^0.145 (music wire)'),
  source: "Shigley's Mechanical Engineering Design, table of spring-wire constants (from memory)",
  strengthAtOneMillimetre: megapascals(2211),
  exponent: 0.145,
  smallestDiameter: millimetres(0.1),
  largestDiameter: millimetres(6.5),
});

/**
 * Another published pair of constants for music wire, A = 2060 MPa·mmᵐ, m = 0.163: about 5 % below the A228 minimum
 * near 1 mm, so on the careful side.
 * Source: worked problem at engineeringprep.com, problem 141; its range is not stated there, that of the law above is used.
 */
export const CAREFUL_MUSIC_WIRE_LAW = handbookStrengthLaw({
  name: message('handbook law 2060/d^0.163 (music wire)'),
  source: 'worked problem 141, engineeringprep.com (its range is not stated there)',
  strengthAtOneMillimetre: megapascals(2060),
  exponent: 0.163,
  smallestDiameter: millimetres(0.1),
  largestDiameter: millimetres(7.25),
  relativeUncertainty: 0.03,
});
