import { millimetres } from '../units/index.ts';
import { message } from '../words/index.ts';
import { REAL_WIRE_REMARK, strengthLawTable } from './wire-strength.ts';

/*
 * EN 10270-1, patented cold drawn unalloyed spring steel wire: the least tensile strength by diameter.
 *
 *     SM      S = 1980 − 740 · log₁₀ d        S in MPa, d in mm
 *     SH, DH  S = 2220 − 820 · log₁₀ d
 *
 * Source: the formulas are from memory. The rounded table of the standard, as reproduced at mollificiomodenese.it (SM,
 * 0.3 to 2.0 mm) and hengmingsteelwire.com (SH and DH, 0.28 to 0.34 mm), agrees with them within 10 and 15 MPa, about
 * 0.5 %; that is where the uncertainty comes from. The standard reaches to 20 mm; the range here is what was compared
 * and what a piano uses.
 */

const RELATIVE_UNCERTAINTY = 0.005 / Math.sqrt(3);

function logarithmicLaw(atOneMillimetre_mpa: number, perDecade_mpa: number): (diameter: number) => number {
  return (diameter) => (atOneMillimetre_mpa - perDecade_mpa * Math.log10(diameter * 1000)) * 1e6;
}

/**
 * Wire for medium to high static stress.
 * @example  inMegapascals(EN_10270_SM_MINIMUM.strengthAt(millimetres(1)).strength)  // ≈ 1980 MPa
 */
export const EN_10270_SM_MINIMUM = strengthLawTable({
  name: message('EN 10270-1 SM minimum'),
  kind: 'minimum',
  source:
    'EN 10270-1, grade SM: formula from memory, within 10 MPa of the table reproduced at mollificiomodenese.it',
  remark: REAL_WIRE_REMARK,
  smallestDiameter: millimetres(0.3),
  largestDiameter: millimetres(2),
  law: logarithmicLaw(1980, 740),
  relativeUncertainty: RELATIVE_UNCERTAINTY,
});

/**
 * Wire for high static stress (SH) or dynamic stress (DH): one strength for both, and the nearest to music wire.
 * @example  inMegapascals(EN_10270_SH_MINIMUM.strengthAt(millimetres(1)).strength)  // ≈ 2220 MPa
 */
export const EN_10270_SH_MINIMUM = strengthLawTable({
  name: message('EN 10270-1 SH/DH minimum'),
  kind: 'minimum',
  source: 'EN 10270-1, grades SH and DH: formula from memory',
  remark: REAL_WIRE_REMARK,
  smallestDiameter: millimetres(0.3),
  largestDiameter: millimetres(2),
  law: logarithmicLaw(2220, 820),
  relativeUncertainty: RELATIVE_UNCERTAINTY,
});
