// Temperament

// Beats
export { type BeatRate, beatRate, type SoundingNote } from './beat-rate.ts';
export { beatTable, type Interval, type SoundingKey, type TableBeat, tuningIntervals } from './beat-table.ts';
export { equalTemperedFrequency } from './equal-temperament.ts';
// Overpull and settling
export {
  COMMON_FALL_BACK,
  type FallBack,
  type FallBackDefaults,
  fallBack,
  type Raise,
} from './fall-back.ts';
export { type NextOverpull, nextOverpull } from './next-overpull.ts';
// Stretch by the matching of partials
export {
  type OctaveAnchor,
  type OctaveRule,
  type OctaveShare,
  octaveShares,
  usualOctaveRule,
} from './octave-rule.ts';
export { overpullLimit, tensionFactor } from './overpull-limit.ts';
export { matchedWidth, partialFromFirst } from './partials.ts';
export {
  type NoteInharmonicity,
  type StretchedTuning,
  type StretchOptions,
  stretchedTuning,
  type TunedOctave,
  type TuningTarget,
} from './stretched-tuning.ts';
export {
  equalTemperament,
  historicTemperaments,
  offsetsFromFifths,
  PYTHAGOREAN_COMMA,
  SYNTONIC_COMMA,
  type Temperament,
  temperamentOffset,
} from './temperament.ts';
