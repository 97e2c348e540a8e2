// A string heard from its model

export { comparedSounds, type NoteToPlay } from './compared-sounds.ts';
export { HEADPHONE_PEAK_DBFS, matchLevels, rootMeanSquare } from './match-levels.ts';
export { partialDecay } from './partial-decay.ts';
export { octaveAbove, type PassageNote, singleNote, thirdsAcross } from './passages.ts';
export { renderSound, type TimedNote } from './render-sound.ts';
export { soundingPartials } from './sounding-partials.ts';
export { strikeAmplitude } from './strike-amplitude.ts';
export { type NoteToStrike, type SoundingPartial, struckNote, USUAL_STRIKE_POSITION } from './struck-note.ts';
