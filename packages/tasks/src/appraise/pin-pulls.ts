import {
  analyseNote,
  carryingDiameter,
  inches,
  type KnownPull,
  keyRangeAt,
  medianOf,
  metres,
  millimetres,
  type NewtonMetres,
  type NoteAnalysis,
  newtonMetres,
  newtons,
  pullOnPin,
} from '@becket/core';
import { asFoundRecord, type Job, type StandingReading, type stages } from '@becket/journal';

export type PinStage = (typeof stages)[number];

/** How hard a string pulls on its pin, and where each part of the figure comes from. */
export interface StringPullFigure extends KnownPull {
  readonly pull: NewtonMetres;
  readonly standardUncertainty: NewtonMetres;
  readonly tensionFrom: 'scale as found';
  readonly pitchFrom: 'read on the note' | 'read on the piano' | 'taken as at pitch';
  readonly pinDiameterFrom: 'read on the pin' | 'read on other pins' | 'pins driven' | 'assumed';
}

/** A pin nobody has measured is taken as the middle of the common sizes, and as far off as they reach. Our own figure. */
const ASSUMED_PIN = { diameter: inches(0.286), standardUncertainty: millimetres(0.25) };
/** A pitch that nobody has read is taken as at pitch, and doubted by so many cents. Our own figure. */
const DOUBT_OF_PITCH_CENTS = 50;
/** What one reading of pitch on another note is worth here. Our own figure. */
const DOUBT_OF_OTHER_NOTE_CENTS = 20;
/** A pitch read that close is taken for the note, in keys. */
const CLOSE_KEYS = 6;

/**
 * The pull of the string of each pin at the pitch it stood at, where its tension can be computed.
 *
 * @returns for a key and string its pull, or undefined where the readings of the note do not give a tension
 */
export function pinPulls(
  job: Job,
  stage: PinStage,
): (key: number, string: number | undefined) => StringPullFigure | undefined {
  const noteOf = analysedNotes(job);
  const diameterOf = pinDiameters(job, stage);
  const pitchOf = pitches(job, stage);
  return (key, string) => {
    const note = noteOf(key);
    if (note === undefined) return undefined;
    const pitch = pitchOf(key);
    const pin = diameterOf(key, string);
    const atPitch = note.stringTensions[(string ?? 1) - 1] ?? note.tension;
    // T grows with the square of the frequency: 1200 cents are a factor of two in frequency.
    const tension = atPitch * 2 ** (pitch.cents / 600);
    const pull = pullOnPin({
      tension: newtons(tension),
      pinDiameter: metres(pin.diameter),
      wireDiameter: metres(carryingDiameter(note.note.string)),
    });
    const ofTension = (note.standardUncertainties?.tension ?? 0) / note.tension;
    const ofPitch = (Math.LN2 / 600) * pitch.doubt;
    const ofPin = pin.standardUncertainty / pin.diameter;
    return {
      pull,
      standardUncertainty: newtonMetres(pull * Math.hypot(ofTension, ofPitch, ofPin)),
      tensionFrom: 'scale as found',
      pitchFrom: pitch.from,
      pinDiameterFrom: pin.from,
    };
  };
}

/** Only the notes that are asked for: a few pins do not need the whole scale. */
function analysedNotes(job: Job): (key: number) => NoteAnalysis | undefined {
  const notes = new Map(asFoundRecord(job).scaleNotes.map((note) => [note.key, note]));
  const analysed = new Map<number, NoteAnalysis>();
  return (key) => {
    const note = notes.get(key);
    if (note === undefined) return undefined;
    // The quick look is 0.2 % low in tension, far less than friction does.
    const analysis = analysed.get(key) ?? analyseNote(note, { woundStrings: 'core formula' });
    analysed.set(key, analysis);
    return analysis;
  };
}

interface PinDiameter {
  readonly diameter: number;
  readonly standardUncertainty: number;
  readonly from: StringPullFigure['pinDiameterFrom'];
}

function pinDiameters(job: Job, stage: PinStage): (key: number, string: number | undefined) => PinDiameter {
  const read = job.readings.filter((one) => one.quantity === 'pin-diameter' && one.stage === stage);
  const middle = read.length === 0 ? undefined : medianOf(read.map(({ value_si }) => value_si));
  return (key, string) => {
    const onPin = read.filter(
      ({ place }) =>
        place.key === key && (string === undefined || place.string === undefined || place.string === string),
    );
    if (onPin.length > 0)
      return {
        diameter: medianOf(onPin.map(({ value_si }) => value_si)),
        standardUncertainty: millimetres(0.01),
        from: 'read on the pin',
      };
    const driven = stage === 'as strung' ? keyRangeAt(key, [...job.pinsDriven].reverse()) : undefined;
    if (driven !== undefined)
      return {
        diameter: driven.pinDiameter_m,
        standardUncertainty: millimetres(0.03),
        from: 'pins driven',
      };
    if (middle !== undefined)
      return { diameter: middle, standardUncertainty: millimetres(0.1), from: 'read on other pins' };
    return { ...ASSUMED_PIN, from: 'assumed' };
  };
}

interface Pitch {
  readonly cents: number;
  readonly doubt: number;
  readonly from: StringPullFigure['pitchFrom'];
}

function pitches(job: Job, stage: PinStage): (key: number) => Pitch {
  const read = job.readings.filter((one) => one.quantity === 'pitch-offset' && one.stage === stage);
  const keyed = read.filter(
    (one): one is StandingReading & { place: { key: number } } => one.place.key !== undefined,
  );
  return (key) => {
    const near = keyed
      .filter(({ place }) => Math.abs(place.key - key) <= CLOSE_KEYS)
      .sort((a, b) => Math.abs(a.place.key - key) - Math.abs(b.place.key - key));
    const nearest = near[0];
    if (nearest?.place.key === key) return { cents: nearest.value_si, doubt: 5, from: 'read on the note' };
    if (nearest !== undefined)
      return { cents: nearest.value_si, doubt: DOUBT_OF_OTHER_NOTE_CENTS, from: 'read on the piano' };
    if (read.length > 0)
      return {
        cents: medianOf(read.map(({ value_si }) => value_si)),
        doubt: DOUBT_OF_OTHER_NOTE_CENTS,
        from: 'read on the piano',
      };
    return { cents: 0, doubt: DOUBT_OF_PITCH_CENTS, from: 'taken as at pitch' };
  };
}
