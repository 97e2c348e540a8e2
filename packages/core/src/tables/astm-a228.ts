import { inches, ksi } from '../units/index.ts';
import { message } from '../words/index.ts';
import { interpolatedStrengthTable, REAL_WIRE_REMARK, type StrengthPoint } from './wire-strength.ts';

/*
 * ASTM A228, music steel spring wire: least and greatest tensile strength by diameter.
 *
 * Source: ASTM A228 tensile table as reproduced on a wire supplier's page, interwiregroup.com, "Tinned and coated music
 * wire"; the standard itself was not read. The maximum at .036 in is misprinted there and is left out, so the maximum is
 * read between .034 and .038 in.
 */

/** Diameter [in], minimum [ksi], maximum [ksi]. */
const ROWS: readonly (readonly [number, number, number | undefined])[] = [
  [0.028, 333, 368],
  [0.03, 330, 365],
  [0.032, 327, 361],
  [0.034, 324, 358],
  [0.036, 321, undefined],
  [0.038, 318, 352],
  [0.04, 315, 349],
  [0.042, 313, 346],
  [0.045, 309, 342],
  [0.048, 306, 339],
  [0.051, 303, 335],
  [0.055, 300, 331],
  [0.059, 296, 327],
  [0.063, 293, 324],
  [0.067, 290, 321],
  [0.072, 287, 317],
  [0.08, 282, 312],
];

const SOURCE = 'ASTM A228 tensile table as reproduced by a wire supplier (interwiregroup.com)';

/** The figures are whole ksi: a rectangular distribution of half width 0.5 ksi (JCGM 100:2008, 4.3.7). */
const ROUNDING_UNCERTAINTY = ksi(0.5 / Math.sqrt(3));

function points(column: 1 | 2): StrengthPoint[] {
  return ROWS.flatMap((row) => {
    const strength = row[column];
    if (strength === undefined) return [];
    return [{ diameter: inches(row[0]), strength: ksi(strength), standardUncertainty: ROUNDING_UNCERTAINTY }];
  });
}

/**
 * The least strength that ASTM A228 lets a wire have; the default of every break share.
 * @example  inKsi(A228_MINIMUM.strengthAt(inches(0.04)).strength)  // ≈ 315 ksi
 */
export const A228_MINIMUM = interpolatedStrengthTable({
  name: message('ASTM A228 minimum'),
  kind: 'minimum',
  source: SOURCE,
  remark: REAL_WIRE_REMARK,
  points: points(1),
});

/** The greatest strength that ASTM A228 lets a wire have: never a safe figure to design with. */
export const A228_MAXIMUM = interpolatedStrengthTable({
  name: message('ASTM A228 maximum'),
  kind: 'maximum',
  source: SOURCE,
  remark: message('This is the most that the standard allows, not what a wire can be relied on to bear.'),
  points: points(2),
});
