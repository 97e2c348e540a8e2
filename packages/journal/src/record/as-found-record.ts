import {
  equalTemperedFrequency,
  grouped,
  type Hertz,
  hertz,
  type Message,
  type Metres,
  message,
  metres,
  noteName,
  type PlainString,
  type ScaleNote,
  type StringUncertainties,
  valueFromReadings,
  type WindingLayer,
  type WoundString,
} from '@becket/core';
import type { absences } from '../facts/answer.ts';
import { instrumentUncertainty } from '../facts/instrument-described.ts';
import { siFromRead } from '../facts/read-units.ts';
import { type ReadingQuantityName, readingQuantities } from '../facts/reading-quantities.ts';
import type { Job, Section, StandingReading } from '../fold/job.ts';
import { neededQuantities } from './needed-quantities.ts';
import { keptNote, type NoteParts, notePartsOf } from './note-parts.ts';

export type Absence = (typeof absences)[number];

/** One value worked out from readings, SI, with the readings it came from. */
export interface Figure {
  readonly value: number;
  /** Standard uncertainty (JCGM 100:2008), SI; 0 where nothing speaks for it, which papers and screens leave blank. */
  readonly standardUncertainty: number | undefined;
  readonly origin: StandingReading['origin'];
  readonly readings: readonly StandingReading[];
}

/** One note as it was found. */
export interface AsFoundNote {
  readonly key: number;
  /** 'A0', 'C#4'. */
  readonly note: string;
  readonly section: Section | undefined;
  /** Strings of the unison; undefined until somebody has said. */
  readonly strings: number | undefined;
  readonly winding: 'plain' | 'wound' | undefined;
  /** Layers of winding; 0 for plain. */
  readonly layers: number;
  readonly frequency: Hertz;
  readonly figures: Partial<Record<ReadingQuantityName, Figure>>;
  readonly absences: Partial<Record<ReadingQuantityName, Absence>>;
  readonly needed: readonly ReadingQuantityName[];
  /** What is needed and neither read nor answered. */
  readonly missing: readonly ReadingQuantityName[];
  /** The string in the terms of the handbook, when nothing needed is missing. */
  readonly string: PlainString | WoundString | undefined;
  /** Why there is no string although nothing is missing: readings that contradict each other. */
  readonly contradiction: Message | undefined;
}

export interface AsFoundRecord {
  /** The whole compass, bass to treble; empty until the piano is described. */
  readonly notes: readonly AsFoundNote[];
  /** The notes whose tension can be computed, ready for the scale analysis. */
  readonly scaleNotes: readonly ScaleNote[];
}

const records = new WeakMap<Job, AsFoundRecord>();

/**
 * The as-found record of a job: every note with its figures, and what is missing.
 *
 * One state gives one record, and a note keeps its object as long as nothing of it changes.
 */
export function asFoundRecord(job: Job): AsFoundRecord {
  const known = records.get(job);
  if (known !== undefined) return known;
  const notes = notePartsOf(job).map((parts) => keptNote(parts, asFoundNote));
  const record = { notes, scaleNotes: notes.flatMap(scaleNoteOf) };
  records.set(job, record);
  return record;
}

function asFoundNote(parts: NoteParts): AsFoundNote {
  const { key, piano, section, unison } = parts;
  const readings = grouped(parts.readings, ({ quantity }) => quantity);
  const answers = new Map<string, Absence>();
  for (const { place, quantity, answer } of parts.absences)
    answers.set(place.string === undefined ? quantity : `${quantity}/${place.string}`, answer);
  const figures: Partial<Record<ReadingQuantityName, Figure>> = {};
  const absences: Partial<Record<ReadingQuantityName, Absence>> = {};
  for (const quantity of Object.keys(readingQuantities) as ReadingQuantityName[]) {
    const own = readings.get(quantity);
    if (own !== undefined) figures[quantity] = figureOf(own, parts.instruments);
    const absence = answers.get(quantity) ?? answerOfEveryString(answers, quantity, unison?.strings);
    // A reading says more than an absence that was noted before it.
    if (absence !== undefined && own === undefined) absences[quantity] = absence;
  }
  const needed = unison === undefined ? [] : neededQuantities(unison.winding, unison.layers);
  const missing = needed.filter(
    (quantity) => figures[quantity] === undefined && (absences[quantity] ?? 'unknown') === 'unknown',
  );
  const { string, contradiction } = stringOf(unison?.winding, unison?.layers ?? 0, figures, absences);
  return {
    key,
    note: noteName(key),
    section,
    strings: unison?.strings,
    winding: unison?.winding,
    layers: unison?.layers ?? 0,
    frequency: equalTemperedFrequency(key, hertz(piano.referencePitch_hz)),
    figures,
    absences,
    needed,
    missing,
    string,
    contradiction,
  };
}

/** What is said of each string alone speaks for the note once it is said of all; of several answers none is known to hold. */
function answerOfEveryString(
  absences: ReadonlyMap<string, Absence>,
  name: string,
  strings: number | undefined,
): Absence | undefined {
  if (strings === undefined) return undefined;
  const own = Array.from({ length: strings }, (_, index) => absences.get(`${name}/${index + 1}`));
  const [first] = own;
  if (first === undefined || own.some((answer) => answer === undefined)) return undefined;
  return own.every((answer) => answer === first) ? first : 'unknown';
}

function figureOf(readings: readonly StandingReading[], instruments: Job['instruments']): Figure {
  const resolution = Math.max(0, ...readings.map((reading) => resolutionOf(reading, instruments)));
  const singleReading = Math.max(0, ...readings.map((reading) => reading.uncertainty_si ?? 0));
  const { value, standardUncertainty: ofReadings } = valueFromReadings(
    readings.map((reading) => reading.value_si),
    { resolution, singleReading },
  );
  // What is stated of the instrument is shared by all its readings: more of them do not lower it. Added by JCGM 100:2008, 5.1.2.
  const stated = Math.max(0, ...readings.map((reading) => statedOf(reading, instruments)));
  const standardUncertainty = stated === 0 ? ofReadings : Math.hypot(ofReadings ?? 0, stated);
  const origins = new Set(readings.map((reading) => reading.origin));
  // A value that was measured even once is a measured value.
  const origin = origins.has('measured') ? 'measured' : readings[0]!.origin;
  return { value, standardUncertainty, origin, readings };
}

/** Smallest step of the instrument a reading names, SI; 0 when it names none or none is described. */
function resolutionOf({ instrument }: StandingReading, instruments: Job['instruments']): number {
  const described = instrument === undefined ? undefined : instruments.get(instrument);
  return described === undefined ? 0 : siFromRead(described.resolution, described.unit);
}

/** Standard uncertainty stated of the instrument a reading names, SI; 0 when nothing is. */
function statedOf({ instrument }: StandingReading, instruments: Job['instruments']): number {
  const described = instrument === undefined ? undefined : instruments.get(instrument);
  return described === undefined ? 0 : instrumentUncertainty(described);
}

function stringOf(
  winding: 'plain' | 'wound' | undefined,
  layerCount: number,
  figures: Partial<Record<ReadingQuantityName, Figure>>,
  absences: Partial<Record<ReadingQuantityName, Absence>>,
): Pick<AsFoundNote, 'string' | 'contradiction'> {
  const nothing = { string: undefined, contradiction: undefined };
  // A bare end that is not there has the length zero; that is *none*, and not *unknown*.
  const lengthOf = (quantity: ReadingQuantityName): Metres | undefined => {
    const figure = figures[quantity];
    if (figure !== undefined) return metres(figure.value);
    return absences[quantity] === 'none' ? metres(0) : undefined;
  };
  const speakingLength = lengthOf('speaking-length');
  if (speakingLength === undefined || speakingLength <= 0) return nothing;
  if (winding === 'plain') {
    const diameter = lengthOf('wire-diameter');
    return diameter === undefined || diameter <= 0
      ? nothing
      : { string: { kind: 'plain', speakingLength, diameter }, contradiction: undefined };
  }
  const coreDiameter = lengthOf('core-diameter');
  const overAll = lengthOf('over-all-diameter');
  const bareFront = lengthOf('bare-front');
  const bareBack = lengthOf('bare-back');
  if (
    winding === undefined ||
    coreDiameter === undefined ||
    overAll === undefined ||
    bareFront === undefined ||
    bareBack === undefined
  )
    return nothing;
  const steps =
    layerCount === 2 ? [coreDiameter, lengthOf('inner-layer-diameter'), overAll] : [coreDiameter, overAll];
  const layers: WindingLayer[] = [];
  for (let index = 1; index < steps.length; index += 1) {
    const inner = steps[index - 1];
    const outer = steps[index];
    if (inner === undefined || outer === undefined) return nothing;
    if (outer <= inner)
      return {
        string: undefined,
        contradiction: message('the diameter over a winding is not larger than what it is wound on'),
      };
    layers.push({ wireDiameter: metres((outer - inner) / 2), bareFront, bareBack });
  }
  if (bareFront + bareBack >= speakingLength) {
    return {
      string: undefined,
      contradiction: message('the two bare ends are together as long as the speaking length'),
    };
  }
  return { string: { kind: 'wound', speakingLength, coreDiameter, layers }, contradiction: undefined };
}

function scaleNoteOf(note: AsFoundNote): ScaleNote[] {
  const { key, section, strings, frequency, string } = note;
  if (string === undefined || strings === undefined) return [];
  return [
    {
      key,
      section: section?.section ?? 'no section',
      bridge: section?.bridge ?? 'unknown',
      strings: strings as 1 | 2 | 3,
      frequency,
      string,
      standardUncertainties: uncertaintiesOf(note),
    },
  ];
}

/** What the readings are worth, where they say; the rest is left to what the shop assumes. */
function uncertaintiesOf({ figures, string }: AsFoundNote): StringUncertainties {
  const of = <Name extends string>(name: Name, quantity: ReadingQuantityName): { [N in Name]?: Metres } => {
    const uncertainty = figures[quantity]?.standardUncertainty;
    // An uncertainty of zero would claim that readings that happen to be alike are exact.
    return (uncertainty === undefined || uncertainty === 0 ? {} : { [name]: metres(uncertainty) }) as {
      [N in Name]?: Metres;
    };
  };
  const length = of('speakingLength', 'speaking-length');
  if (string?.kind !== 'wound') return { ...of('wireDiameter', 'wire-diameter'), ...length };
  const bare = { ...of('bareFront', 'bare-front'), ...of('bareBack', 'bare-back') };
  const over: ReadingQuantityName[] =
    string.layers.length === 2 ? ['inner-layer-diameter', 'over-all-diameter'] : ['over-all-diameter'];
  return {
    ...of('wireDiameter', 'core-diameter'),
    ...length,
    layers: over.map((quantity) => ({ ...of('diameterOver', quantity), ...bare })),
  };
}
