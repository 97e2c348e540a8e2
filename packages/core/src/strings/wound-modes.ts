import { STEEL_YOUNGS_MODULUS } from '../tables/index.ts';
import { type Hertz, type Newtons, newtonSquareMetres, requirePositive } from '../units/index.ts';
import { steppedStringModes } from './stepped-modes.ts';
import type { Solved, StringEnds, StringSegment } from './stepped-string.ts';
import { flexibleTensionAtPitch, stiffTensionAtPitch } from './stepped-tension.ts';
import { requireWoundString, segmentsOf, type WoundString } from './wound-string.ts';

/**
 * A wound string as a stepped stiff string.
 *
 *     EI = E · π · d⁴ / 64        d the core alone
 *
 * @returns segments front to back, all with the flexural rigidity of the core
 *
 * Holds for: windings that slide on the core as it bends. How much a tight winding adds is not settled; it can be no more
 * than what turns that touch resist, and measured B lies close to that of the core (common practice).
 * Throws: RangeError as `segmentsOf`.
 * @example  steppedSegmentsOf({ kind: 'wound', speakingLength: metres(1.3), coreDiameter: millimetres(1.1), layers: [] })[0].flexuralRigidity  // ≈ 0.0145175 N·m²
 */
export function steppedSegmentsOf(string: WoundString): StringSegment[] {
  const youngsModulus = string.youngsModulus ?? STEEL_YOUNGS_MODULUS;
  const flexuralRigidity = newtonSquareMetres((youngsModulus * Math.PI * string.coreDiameter ** 4) / 64);
  return segmentsOf(string).map(({ length, linearDensity }) => ({ length, linearDensity, flexuralRigidity }));
}

/**
 * The first partials of a wound string at a tension, exactly.
 *
 * @param wound.string   core, layers and bare ends
 * @param wound.tension  T [N], > 0
 * @param wound.ends     default pinned
 * @param wound.count    how many partials, 1 or more; default 16
 * @returns frequencies [Hz]; index 0 = partial 1
 *
 * Holds for, error, source: see `steppedStringModes`.
 * Throws: RangeError when a dimension is not positive or a layer leaves nothing wound.
 * @example  woundStringModes({ string: { kind: 'wound', speakingLength: metres(1.3), coreDiameter: millimetres(1.1), layers: [{ wireDiameter: millimetres(0.75), bareFront: millimetres(20), bareBack: millimetres(12) }] }, tension: newtons(900) }).value[0]  // ≈ 59.1695 Hz
 */
export function woundStringModes(wound: {
  string: WoundString;
  tension: Newtons;
  ends?: StringEnds | undefined;
  count?: number | undefined;
}): Solved<Hertz[]> {
  const task = 'the modes of a wound string';
  requireWoundString(wound.string, task);
  const tension = requirePositive(wound.tension, 'tension', task) as Newtons;
  const segments = steppedSegmentsOf(wound.string);
  return steppedStringModes({ segments, tension, ends: wound.ends ?? 'pinned' }, wound.count ?? 16);
}

/**
 * Tension that puts the first mode of a wound string on pitch, exactly.
 *
 * @param wound.string     core, layers and bare ends
 * @param wound.frequency  f [Hz], > 0
 * @param wound.stiffness  'ignored': f is the first mode of the flexible string, as the core formula for plain strings
 *                         has it; 'counted': f is the first partial that sounds
 * @param wound.ends       default pinned; matters only when stiffness is counted
 * @returns T [N]
 *
 * The two differ by about B, some 0.01 to 0.3 %. `woundStringTension` is the first in closed form, a little low.
 * Holds for, error, source: see `flexibleTensionAtPitch` and `stiffTensionAtPitch`.
 * Throws: RangeError when a dimension is not positive or a layer leaves nothing wound.
 * @example  woundTensionAtPitch({ string: { kind: 'wound', speakingLength: metres(1.3), coreDiameter: millimetres(1.1), layers: [{ wireDiameter: millimetres(0.75), bareFront: millimetres(20), bareBack: millimetres(12) }] }, frequency: hertz(59.16953), stiffness: 'counted' }).value  // ≈ 900 N
 */
export function woundTensionAtPitch(wound: {
  string: WoundString;
  frequency: Hertz;
  stiffness: 'ignored' | 'counted';
  ends?: StringEnds | undefined;
}): Solved<Newtons> {
  requireWoundString(wound.string, 'the tension of a wound string');
  const segments = steppedSegmentsOf(wound.string);
  return wound.stiffness === 'ignored'
    ? flexibleTensionAtPitch(segments, wound.frequency)
    : stiffTensionAtPitch({ segments, frequency: wound.frequency, ends: wound.ends ?? 'pinned' });
}
