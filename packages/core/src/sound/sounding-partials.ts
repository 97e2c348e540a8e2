import { partialFromFirst } from '../pitch/index.ts';
import {
  inharmonicity,
  type PlainString,
  stringTension,
  type WoundString,
  woundStringModes,
  woundTensionAtPitch,
} from '../strings/index.ts';
import { STEEL_YOUNGS_MODULUS } from '../tables/index.ts';
import { type Hertz, hertz, requirePositive } from '../units/index.ts';

/**
 * Frequencies of the partials of a string that is tuned by its first partial.
 *
 *     plain   f_n = n · f₁ · √((1 + B·n²)/(1 + B))
 *     wound   f_n = mode n of the stepped stiff string whose mode 1 is f₁
 *
 * @param of.string        plain or wound
 * @param of.firstPartial  f₁ [Hz], > 0: what a tuner hears
 * @param of.highest       partials above it are left out [Hz], > 0
 * @param of.most          never more than so many; 64 unless given
 * @returns f_n [Hz]; index 0 = partial 1, at least one
 *
 * Holds for: pinned ends that do not yield. B of a plain string is taken at the tension that puts the flexible string on
 * f₁; the stiffness itself lowers that tension by about B, which moves no partial by a hundredth of a cent.
 * Throws: RangeError when a dimension, f₁ or the limit is not positive.
 * Source: `partialFromFirst`; `woundTensionAtPitch` and `woundStringModes` for wound strings.
 * @example  soundingPartials({ string: { kind: 'plain', speakingLength: metres(0.96), diameter: millimetres(1.146) }, firstPartial: hertz(220), highest: hertz(5000) })[7]  // ≈ 1767.014 Hz
 */
export function soundingPartials(of: {
  string: PlainString | WoundString;
  firstPartial: Hertz;
  highest: Hertz;
  most?: number | undefined;
}): Hertz[] {
  const task = 'the partials of a string';
  const firstPartial = hertz(requirePositive(of.firstPartial, 'the first partial', task));
  const highest = requirePositive(of.highest, 'the highest frequency', task);
  // Stiffness only raises partials, so no more than these can lie below the limit.
  const count = Math.max(1, Math.min(of.most ?? 64, Math.floor(highest / firstPartial)));
  const all =
    of.string.kind === 'wound'
      ? woundPartials(of.string, firstPartial, count)
      : plainPartials(of.string, firstPartial, count);
  return all.filter((frequency, index) => index === 0 || frequency <= highest);
}

function plainPartials(string: PlainString, firstPartial: Hertz, count: number): Hertz[] {
  const { diameter, speakingLength, steelDensity, youngsModulus = STEEL_YOUNGS_MODULUS } = string;
  const tension = stringTension({ diameter, speakingLength, frequency: firstPartial, density: steelDensity });
  const coefficient = inharmonicity({ diameter, speakingLength, tension, youngsModulus });
  return Array.from({ length: count }, (_, index) =>
    partialFromFirst({ firstPartial, inharmonicity: coefficient, partial: index + 1 }),
  );
}

function woundPartials(string: WoundString, firstPartial: Hertz, count: number): Hertz[] {
  const tension = woundTensionAtPitch({ string, frequency: firstPartial, stiffness: 'counted' }).value;
  return woundStringModes({ string, tension, count }).value;
}
