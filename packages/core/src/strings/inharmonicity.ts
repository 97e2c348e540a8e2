import { STEEL_YOUNGS_MODULUS } from '../tables/index.ts';
import {
  type Cents,
  cents,
  type Hertz,
  hertz,
  type Metres,
  type Newtons,
  type Pascals,
  requireNotNegative,
  requirePositive,
} from '../units/index.ts';

/**
 * Inharmonicity coefficient of a uniform stiff string, the core formula.
 *
 *     B = π³ · E · d⁴ / (64 · T · L²)        f_n = n · f · √(1 + B · n²)
 *
 * @param string.diameter        d [m], > 0; of a wound string the core
 * @param string.speakingLength  L [m], > 0
 * @param string.tension         T [N], > 0
 * @param string.youngsModulus   E [Pa], > 0; default 202 GPa
 * @returns B, dimensionless; f is the first mode of the flexible string, not the first partial f·√(1 + B)
 *
 * Holds for: pinned ends and the same wire all along: plain strings. On a wound string the bare ends multiply B by 1.04 to
 * 4.5, so its exact modes are needed. Ends that are clamped raise all partials and B slightly.
 * Error: u(B)/B = 4·u(d)/d ⊕ u(T)/T ⊕ 2·u(L)/L ⊕ u(E)/E; published moduli differ by 4 %. Two digits deserve print.
 * Throws: RangeError when an input is not positive and finite.
 * Source: H. Fletcher, J. Acoust. Soc. Am. 36 (1964) 203, pinned ends, with I = π·d⁴/64 (equation number from memory).
 * @example  inharmonicity({ diameter: millimetres(1.146), speakingLength: metres(0.96), tension: newtons(914) })  // ≈ 0.00020039
 */
export function inharmonicity(string: {
  diameter: Metres;
  speakingLength: Metres;
  tension: Newtons;
  youngsModulus?: Pascals | undefined;
}): number {
  const task = 'inharmonicity';
  const diameter = requirePositive(string.diameter, 'diameter', task);
  const speakingLength = requirePositive(string.speakingLength, 'speaking length', task);
  const tension = requirePositive(string.tension, 'tension', task);
  const youngsModulus = requirePositive(
    string.youngsModulus ?? STEEL_YOUNGS_MODULUS,
    "Young's modulus",
    task,
  );
  return (Math.PI ** 3 * youngsModulus * diameter ** 4) / (64 * tension * speakingLength ** 2);
}

/**
 * Frequency of partial n from the first mode of the flexible string.
 *
 *     f_n = n · f · √(1 + B · n²)
 *
 * @param string.frequency      f, first mode of the flexible string [Hz], > 0; from the first partial use `partialFromFirst`
 * @param string.inharmonicity  B, ≥ 0
 * @param string.partial        n, 1 or more
 * @returns f_n [Hz]
 *
 * Holds for: uniform pinned strings exactly; for a wound string as far as B was fitted.
 * Throws: RangeError when an input is out of range.
 * Source: H. Fletcher, J. Acoust. Soc. Am. 36 (1964) 203.
 * @example  partialFrequency({ frequency: hertz(220), inharmonicity: 0.0003, partial: 8 })  // ≈ 1776.816 Hz
 */
export function partialFrequency(string: {
  frequency: Hertz;
  inharmonicity: number;
  partial: number;
}): Hertz {
  const task = 'the frequency of a partial';
  const frequency = requirePositive(string.frequency, 'frequency', task);
  const coefficient = requireNotNegative(string.inharmonicity, 'inharmonicity', task);
  const partial = requirePositive(string.partial, 'partial number', task);
  return hertz(partial * frequency * Math.sqrt(1 + coefficient * partial ** 2));
}

/**
 * How far partial n lies above n times the first mode of the flexible string.
 *
 *     c_n = 600 · log₂(1 + B · n²)        ≈ (600 / ln 2) · B · n² for small B·n²
 *
 * @param string.inharmonicity  B, ≥ 0
 * @param string.partial        n, 1 or more
 * @returns c_n [cents], relative to the flexible string, not to partial 1: partial 1 itself lies c₁ above
 *
 * Throws: RangeError when an input is out of range.
 * Source: R. W. Young, J. Acoust. Soc. Am. 24(3) (1952): 0.3·n² cents at middle C is B = 3.47·10⁻⁴.
 * @example  inharmonicityCents({ inharmonicity: 0.000346574, partial: 2 })  // ≈ 1.199 cents
 */
export function inharmonicityCents(string: { inharmonicity: number; partial: number }): Cents {
  const task = 'the inharmonicity of a partial in cents';
  const coefficient = requireNotNegative(string.inharmonicity, 'inharmonicity', task);
  const partial = requirePositive(string.partial, 'partial number', task);
  return cents((600 / Math.LN2) * Math.log1p(coefficient * partial ** 2));
}

/**
 * B from the coefficient δ of the older rule "partial n is δ·n² cents sharp".
 *
 *     B = δ · ln 2 / 600
 *
 * @param delta  δ [cents], ≥ 0
 * @returns B; exact for small B·n²
 * Throws: RangeError when δ is negative.
 * Source: R. W. Young, J. Acoust. Soc. Am. 24(3) (1952), abstract.
 * @example  inharmonicityFromCents(cents(0.3))  // ≈ 0.000346574
 */
export function inharmonicityFromCents(delta: Cents): number {
  return (requireNotNegative(delta, 'the cents coefficient', 'inharmonicity') * Math.LN2) / 600;
}
