import {
  fitInharmonicityByLine,
  inharmonicity,
  type WoundString,
  woundStringModes,
  woundStringTension,
  woundTensionAtPitch,
} from '../strings/index.ts';
import type { Hertz } from '../units/index.ts';

/** What the exact modes of a wound string add to the figures in closed form. */
export interface ExactCorrections {
  /** Exact tension over that of `woundStringTension`: 1 to 1.002. */
  readonly tensionFactor: number;
  /**
   * B fitted to the exact partials less B by the core formula: what the light bare ends do. It hardly depends on the
   * stiffness of the core, since light ends make even a flexible string inharmonic; so it is a term and not a factor.
   */
  readonly inharmonicityOfEnds: number;
}

/** For plain strings, and for a quick look at wound ones. */
export const NO_CORRECTIONS: ExactCorrections = { tensionFactor: 1, inharmonicityOfEnds: 0 };

/** Partials that B of a wound string is fitted over; it stands in the name of the method. */
const FITTED_PARTIALS = 8;

/**
 * Exact tension and B of a wound string, as corrections to the closed forms.
 *
 * @param string     with its core, layers and bare ends
 * @param frequency  first mode of the flexible string [Hz]
 *
 * Source: the pages `woundTensionAtPitch`, `woundStringModes` and `fitInharmonicityByLine`.
 */
export function exactCorrections(string: WoundString, frequency: Hertz): ExactCorrections {
  const tension = woundTensionAtPitch({ string, frequency, stiffness: 'ignored' }).value;
  const partials = woundStringModes({ string, tension, count: FITTED_PARTIALS }).value;
  const byCoreFormula = inharmonicity({
    diameter: string.coreDiameter,
    speakingLength: string.speakingLength,
    tension,
    youngsModulus: string.youngsModulus,
  });
  return {
    tensionFactor: tension / woundStringTension(string, frequency),
    inharmonicityOfEnds: fitInharmonicityByLine(partials).inharmonicity - byCoreFormula,
  };
}
