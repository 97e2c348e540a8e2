// Plain strings: mass, tension, strength

export { breakLoad } from './break-load.ts';
export { type BreakShare, breakShare } from './break-share.ts';
export { plainLinearDensity } from './linear-density.ts';
export type { PlainString } from './plain-string.ts';
export { wireStress } from './stress.ts';
export { stringFrequency, stringTension } from './string-tension.ts';

// Plain strings: stiffness and partials

export {
  inharmonicity,
  inharmonicityCents,
  inharmonicityFromCents,
  partialFrequency,
} from './inharmonicity.ts';

// Any string: stretch, warmth, sound along the wire, what it does to bridge and pin

export {
  type BearingRise,
  bearingForce,
  bearingForceFromRise,
  deflectionFromRise,
} from './bearing.ts';
export { elongation } from './elongation.ts';
export { stringImpedance } from './impedance.ts';
export { longitudinalMode } from './longitudinal-mode.ts';
export { pullOnPin } from './pull-on-pin.ts';
export { frequencyAtTension, pitchPerKelvin } from './temperature-pitch.ts';

// Wound strings: mass, tension, exact modes

export { steppedSegmentsOf, woundStringModes, woundTensionAtPitch } from './wound-modes.ts';
export {
  fullLinearDensity,
  overallDiameter,
  segmentsOf,
  speakingMass,
  type WindingLayer,
  type WoundSegment,
  type WoundString,
  woundStringTension,
} from './wound-string.ts';

// Strings of several stretches: exact modes

export { flexibleStringModes } from './stepped-flexible.ts';
export { steppedStringModes } from './stepped-modes.ts';
export type { Solved, SteppedString, StringEnds, StringSegment } from './stepped-string.ts';
export { flexibleTensionAtPitch, stiffTensionAtPitch } from './stepped-tension.ts';

// B from partials

export {
  fitInharmonicityByLine,
  fitInharmonicityInCents,
  type InharmonicityFit,
} from './inharmonicity-fit.ts';
