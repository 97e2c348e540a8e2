import { STEEL_EXPANSION_PER_KELVIN, STEEL_YOUNGS_MODULUS } from '../tables/index.ts';
import {
  type Cents,
  cents,
  type Hertz,
  hertz,
  type Metres,
  type Newtons,
  type Pascals,
  requirePositive,
} from '../units/index.ts';

/**
 * Change of pitch for one kelvin of warming.
 *
 *     dc/dθ = −(1200 / ln 2) · ½ · E · A · α / T        α = α_string − α_ends,  A = π · d² / 4
 *
 * @param string.tension           T [N], > 0
 * @param string.diameter          d [m], > 0; of a wound string the core
 * @param string.youngsModulus     E [Pa], > 0; default 202 GPa
 * @param string.stringExpansion   α_string [1/K]; default steel, 11.5·10⁻⁶
 * @param string.endsExpansion     α_ends, expansion of what holds the ends apart [1/K]; default 0
 * @returns dc/dθ [cents per kelvin], negative where warming flattens
 *
 * Assumed when `endsExpansion` is left out: the string alone warms (a lamp, a hand, a draught of warm air) and the plate
 * stays as it is. When plate and strings warm together pass the plate's expansion (`CAST_IRON_EXPANSION_PER_KELVIN`): the
 * two nearly cancel, and what is left is a small difference of uncertain numbers.
 * Holds for: a fixed distance between the ends; the drift of a piano with humidity is another thing and larger.
 * Error: u/|dc/dθ| = u(E)/E ⊕ 2·u(d)/d ⊕ u(T)/T ⊕ u(α)/α; 10 % at best.
 * Throws: RangeError when tension, diameter or modulus is not positive and finite, or an expansion is not a finite number.
 * Source: Hooke's law and f ∝ √T, first order.
 * @example  pitchPerKelvin({ tension: newtons(700), diameter: millimetres(1) })  // ≈ -2.256 cents
 */
export function pitchPerKelvin(string: {
  tension: Newtons;
  diameter: Metres;
  youngsModulus?: Pascals | undefined;
  stringExpansion?: number | undefined;
  endsExpansion?: number | undefined;
}): Cents {
  const task = 'the pitch change per kelvin';
  const tension = requirePositive(string.tension, 'tension', task);
  const diameter = requirePositive(string.diameter, 'diameter', task);
  const youngsModulus = requirePositive(
    string.youngsModulus ?? STEEL_YOUNGS_MODULUS,
    "Young's modulus",
    task,
  );
  const netExpansion = (string.stringExpansion ?? STEEL_EXPANSION_PER_KELVIN) - (string.endsExpansion ?? 0);
  if (!Number.isFinite(netExpansion)) {
    throw new RangeError(
      `Cannot compute ${task} as the expansion must be a finite number per kelvin: current value is ${netExpansion}`,
    );
  }
  const area = (Math.PI * diameter ** 2) / 4;
  return cents((-(1200 / Math.LN2) * 0.5 * youngsModulus * area * netExpansion) / tension);
}

/**
 * Frequency of a string after its tension has changed, its length and mass being the same.
 *
 *     f′ = f · √(T′ / T)
 *
 * @param string.frequency   f at tension T [Hz], > 0
 * @param string.tension     T [N], > 0
 * @param string.newTension  T′ [N], > 0
 * @returns f′ [Hz]; the beat between two such strings is |f′ − f|
 * Throws: RangeError when an input is not positive and finite.
 * Source: M. Mersenne's law.
 * @example  frequencyAtTension({ frequency: hertz(2093), tension: newtons(847.5), newTension: newtons(847.5 + 8.328) }) - 2093  // ≈ 10.258 Hz
 */
export function frequencyAtTension(string: {
  frequency: Hertz;
  tension: Newtons;
  newTension: Newtons;
}): Hertz {
  const task = 'frequency after a change of tension';
  const frequency = requirePositive(string.frequency, 'frequency', task);
  const tension = requirePositive(string.tension, 'tension', task);
  const newTension = requirePositive(string.newTension, 'new tension', task);
  return hertz(frequency * Math.sqrt(newTension / tension));
}
