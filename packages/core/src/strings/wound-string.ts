import { COPPER_DENSITY, STEEL_DENSITY } from '../tables/index.ts';
import {
  type Hertz,
  type Kilograms,
  type KilogramsPerCubicMetre,
  type KilogramsPerMetre,
  kilograms,
  kilogramsPerMetre,
  type Metres,
  metres,
  type Newtons,
  newtons,
  type Pascals,
  requireNotNegative,
  requirePositive,
} from '../units/index.ts';

/** One winding: round wire laid turn against turn over what lies beneath it. */
export interface WindingLayer {
  /** Diameter of the winding wire itself, not of the finished string. */
  readonly wireDiameter: Metres;
  /** Length left unwound by this layer at the front, from the front termination of the speaking length. */
  readonly bareFront: Metres;
  /** Length left unwound by this layer at the back, from the bridge pin. */
  readonly bareBack: Metres;
}

/** A steel core under one or two windings; inner layer first. With no layers it is a plain string. */
export interface WoundString {
  readonly kind: 'wound';
  readonly speakingLength: Metres;
  readonly coreDiameter: Metres;
  readonly layers: readonly WindingLayer[];
  /** Density of the core; `STEEL_DENSITY`, 7850 kg/m³, when not given. */
  readonly steelDensity?: KilogramsPerCubicMetre;
  /** Density of the windings; `COPPER_DENSITY`, 8930 kg/m³, when not given. */
  readonly windingDensity?: KilogramsPerCubicMetre;
  /** Young's modulus of the core; `STEEL_YOUNGS_MODULUS`, 202 GPa, when not given. */
  readonly youngsModulus?: Pascals;
}

/** Places nearer than this share of the speaking length are one: the difference is rounding, a thousandth of an atom. */
const SAME_PLACE = 1e-13;

/** A stretch of a wound string along which nothing changes. */
export interface WoundSegment {
  readonly length: Metres;
  /** How many layers cover the core here; 0 on a bare end. */
  readonly layersPresent: number;
  readonly overallDiameter: Metres;
  readonly linearDensity: KilogramsPerMetre;
}

/**
 * Diameter over every layer.
 *
 *     D = d + 2 · Σ w
 *
 * @param string.coreDiameter          d [m], > 0
 * @param string.layers[].wireDiameter w [m], > 0
 * @returns D [m]
 *
 * Holds for: round wire that is not flattened. A hexagonal core, or a winding pressed flat, is thinner: measure it.
 * @example  inMillimetres(overallDiameter({ kind: 'wound', speakingLength: metres(1.3), coreDiameter: millimetres(1.1), layers: [{ wireDiameter: millimetres(0.75), bareFront: millimetres(20), bareBack: millimetres(12) }] }))  // ≈ 2.6 mm
 */
export function overallDiameter(string: WoundString): Metres {
  return metres(
    string.layers.reduce(
      (diameter, layer) => diameter + 2 * layer.wireDiameter,
      string.coreDiameter as number,
    ),
  );
}

/**
 * Mass per length where every layer is present.
 *
 *     μ = ρ_s · (π/4) · d² + Σ ρ_w · (π/4) · (π/4) · (D_out² − D_in²)
 *
 * @param string.coreDiameter    d, core [m]
 * @param string.layers          each adds twice its wire diameter to the D_in beneath it, giving D_out [m]
 * @param string.steelDensity    ρ_s [kg/m³]
 * @param string.windingDensity  ρ_w [kg/m³]
 * @returns μ [kg/m]
 *
 * The second π/4 is the share of the ring D_in to D_out that round turns fill: a turn of wire w is a torus of volume
 * π·(D_in + w)·(π/4)·w², and there is one of them every w along the string.
 * Holds for: touching turns of unflattened round wire. The slope of the helix makes no difference: with tan α the slope,
 * a turn is longer by 1/cos α, and turns that touch across their slope lie further apart by the same 1/cos α.
 * Error: relative error is about twice that of the overall diameter.
 * Source: geometry.
 * @example  fullLinearDensity({ kind: 'wound', speakingLength: metres(1.3), coreDiameter: millimetres(1), layers: [{ wireDiameter: millimetres(0.5), bareFront: millimetres(20), bareBack: millimetres(12) }] })  // ≈ 0.022691 kg/m
 */
export function fullLinearDensity(string: WoundString): KilogramsPerMetre {
  return linearDensityUnder(string, string.layers);
}

/**
 * The speaking length cut at every place where a layer begins or ends, from the front termination to the bridge pin.
 *
 * A layer lies on whatever is beneath it at that place: where an outer layer reaches past the end of the inner one, it
 * lies on the core.
 * @returns from 1 segment (layers without bare ends, or no layers) to 2·layers + 1; their lengths add up to the speaking length
 */
export function segmentsOf(string: WoundString): WoundSegment[] {
  requireWoundString(string, 'the segments of a wound string');
  const length = string.speakingLength;
  const ends = string.layers.flatMap((layer) => [layer.bareFront, length - layer.bareBack]);
  const cuts: number[] = [0];
  for (const cut of [...ends].sort((a, b) => a - b)) {
    if (cut - cuts.at(-1)! > SAME_PLACE * length && length - cut > SAME_PLACE * length) cuts.push(cut);
  }
  cuts.push(length);

  const segments: WoundSegment[] = [];
  for (let index = 1; index < cuts.length; index += 1) {
    const from = cuts[index - 1]!;
    const to = cuts[index]!;
    const middle = (from + to) / 2;
    const present = string.layers.filter(
      (layer) => layer.bareFront < middle && middle < length - layer.bareBack,
    );
    segments.push({
      length: metres(to - from),
      layersPresent: present.length,
      overallDiameter: overallDiameter({ ...string, layers: present }),
      linearDensity: linearDensityUnder(string, present),
    });
  }
  return segments;
}

/** Mass of the speaking length, bare ends counted as bare [kg]. */
export function speakingMass(string: WoundString): Kilograms {
  return kilograms(
    segmentsOf(string).reduce((mass, segment) => mass + segment.length * segment.linearDensity, 0),
  );
}

/**
 * Tension that puts a wound string at a frequency, in closed form.
 *
 *     T = 4 · L² · f² · μ₁        μ₁ = (2/L) · ∫ μ(x) · sin²(πx/L) dx
 *
 * Rayleigh's quotient with the first mode of a uniform string as the trial shape. The ends hardly move in the first
 * mode, so light ends hardly count: the mean density, mass divided by length, gives them their full share and comes out
 * several per cent low.
 *
 * @param string     speaking length L [m], with its core and layers
 * @param frequency  f, first mode of the flexible string [Hz], > 0
 * @returns T [N]
 *
 * Holds for: a flexible string with fixed ends.
 * Error: always a little low, for a trial shape can only be stiffer than the true one. `woundTensionAtPitch` is exact, and can count the stiffness of the core.
 * Throws: RangeError when a dimension is not positive or a layer leaves nothing wound.
 * Source: Rayleigh, The Theory of Sound, vol. I, §§ 88–91 and 140 (from memory).
 * @example  woundStringTension({ kind: 'wound', speakingLength: metres(1.3), coreDiameter: millimetres(1.1), layers: [{ wireDiameter: millimetres(0.75), bareFront: millimetres(20), bareBack: millimetres(12) }] }, hertz(59.16))  // ≈ 900 N
 */
export function woundStringTension(string: WoundString, frequency: Hertz): Newtons {
  const task = 'the tension of a wound string';
  requirePositive(frequency, 'frequency', task);
  requireWoundString(string, task);
  const length = string.speakingLength;
  let from = 0;
  let weighted = 0; // ∫ μ(x) · 2 sin²(πx/L) dx
  for (const segment of segmentsOf(string)) {
    const to = from + segment.length;
    weighted += segment.linearDensity * (squaredSineIntegral(to, length) - squaredSineIntegral(from, length));
    from = to;
  }
  const firstModeDensity = weighted / length;
  return newtons(4 * length ** 2 * frequency ** 2 * firstModeDensity);
}

/** Throws a RangeError that names the part when a wound string cannot exist. */
export function requireWoundString(string: WoundString, task: string): void {
  requirePositive(string.speakingLength, 'speaking length', task);
  requirePositive(string.coreDiameter, 'core diameter', task);
  if (string.steelDensity !== undefined) requirePositive(string.steelDensity, 'steel density', task);
  if (string.windingDensity !== undefined) requirePositive(string.windingDensity, 'winding density', task);
  if (string.youngsModulus !== undefined) requirePositive(string.youngsModulus, "Young's modulus", task);
  string.layers.forEach((layer, index) => {
    const which = `layer ${index + 1}`;
    requirePositive(layer.wireDiameter, `wire diameter of ${which}`, task);
    requireNotNegative(layer.bareFront, `bare front of ${which}`, task);
    requireNotNegative(layer.bareBack, `bare back of ${which}`, task);
    const wound = string.speakingLength - layer.bareFront - layer.bareBack;
    if (!(wound > 0)) {
      throw new RangeError(
        `Cannot compute ${task} as the bare ends of ${which} must leave some of the speaking length wound: ` +
          `${layer.bareFront} m + ${layer.bareBack} m are bare of ${string.speakingLength} m`,
      );
    }
  });
}

/** ∫₀ˣ 2 sin²(πt/L) dt = x − (L/2π) · sin(2πx/L). */
function squaredSineIntegral(x: number, length: number): number {
  return x - (length / (2 * Math.PI)) * Math.sin((2 * Math.PI * x) / length);
}

function linearDensityUnder(string: WoundString, layers: readonly WindingLayer[]): KilogramsPerMetre {
  const steelDensity = string.steelDensity ?? STEEL_DENSITY;
  const windingDensity = string.windingDensity ?? COPPER_DENSITY;
  let inner = string.coreDiameter as number;
  let density = steelDensity * (Math.PI / 4) * inner ** 2;
  for (const layer of layers) {
    const outer = inner + 2 * layer.wireDiameter;
    density += windingDensity * (Math.PI / 4) * (Math.PI / 4) * (outer ** 2 - inner ** 2);
    inner = outer;
  }
  return kilogramsPerMetre(density);
}
