import {
  english,
  type FittedLength,
  type Language,
  type LengthOutlier,
  lengthFit,
  type Metres,
  metres,
  millimetres,
  noteName,
  type WoundContradiction,
  type WoundReadings,
  woundContradictions,
} from '@becket/core';
import { type AsFoundNote, asFoundRecord, type Figure, type Job, woundReadingsOf } from '@becket/journal';

/** A note of a section with its length as read and as the rest of the section suggests. */
export interface NoteLength {
  readonly key: number;
  readonly note: string;
  /** What was read; undefined where nothing was. */
  readonly read: Figure | undefined;
  /** What the line through the section says; undefined where no line can be laid. Never a reading. */
  readonly fitted: FittedLength | undefined;
  readonly outlier: LengthOutlier | undefined;
}

/** The speaking lengths of one section. */
export interface SectionLengths {
  readonly section: string;
  readonly notes: readonly NoteLength[];
  /** Standard deviation of a reading about the line; undefined without a line. */
  readonly scatter: Metres | undefined;
  /** Why there is no line. */
  readonly reason: string | undefined;
  /** What the readings of its wound strings say against each other. */
  readonly contradictions: readonly WoundContradiction[];
}

/** In which unit and language the sentences tell their lengths; millimetres and English when not given. */
export interface LengthsOptions {
  readonly lengthUnit?: 'mm' | 'in';
  readonly language?: Language;
}

/** Of the intervals shown. */
export const LENGTH_INTERVAL_LEVEL = 0.95;

/**
 * The speaking lengths of each section against a smooth line, with outliers named and gaps filled; and whether the
 * readings of its wound strings agree with each other.
 *
 * Plain and wound strings of one section end on one bridge and share a line; a section without five readings has none.
 */
export function fittedLengths(
  job: Job,
  { lengthUnit = 'mm', language = english }: LengthsOptions = {},
): SectionLengths[] {
  const { notes } = asFoundRecord(job);
  return job.sections.map(({ section, firstKey, lastKey }) => {
    const own = notes.filter(({ key }) => firstKey <= key && key <= lastKey);
    const readings = own.flatMap(({ key, figures }) => {
      const length = figures['speaking-length']?.value;
      return length === undefined || length <= 0 ? [] : [{ key, speakingLength: metres(length) }];
    });
    const fit = lengthFit(
      readings,
      {
        firstKey,
        lastKey,
        singleReading: millimetres(0.5),
        level: LENGTH_INTERVAL_LEVEL,
        lengthUnit,
      },
      language,
    );
    return {
      section,
      notes: own.map(({ key, figures }) => ({
        key,
        note: noteName(key),
        read: figures['speaking-length'],
        fitted: fit.isFitted ? fit.lengths.find((one) => one.key === key) : undefined,
        outlier: fit.isFitted ? fit.outliers.find((one) => one.key === key) : undefined,
      })),
      scatter: fit.isFitted ? fit.scatter : undefined,
      reason: fit.isFitted ? undefined : fit.reason,
      contradictions: contradictionsOf(own, lengthUnit, language),
    };
  });
}

/** What the readings of the wound strings of one section say against each other. */
export interface WoundDoubts {
  readonly section: string;
  readonly contradictions: readonly WoundContradiction[];
}

/** The sections whose wound strings do not add up, bass to treble; without the lines that `fittedLengths` lays. */
export function woundDoubts(
  job: Job,
  { lengthUnit = 'mm', language = english }: LengthsOptions = {},
): WoundDoubts[] {
  const { notes } = asFoundRecord(job);
  return job.sections
    .map(({ section, firstKey, lastKey }) => ({
      section,
      contradictions: contradictionsOf(
        notes.filter(({ key }) => firstKey <= key && key <= lastKey),
        lengthUnit,
        language,
      ),
    }))
    .filter(({ contradictions }) => contradictions.length > 0);
}

/** One layer and two are compared apart: between them a row may well grow. */
const contradictionsOf = (
  own: readonly AsFoundNote[],
  lengthUnit: 'mm' | 'in',
  language: Language,
): WoundContradiction[] =>
  [1, 2].flatMap((layers) =>
    woundContradictions(
      own.filter((note) => note.layers === layers).map(woundReadings),
      { lengthUnit },
      language,
    ),
  );

function woundReadings({ key, figures, absences }: AsFoundNote): WoundReadings {
  return woundReadingsOf(key, (quantity) => {
    const value = figures[quantity]?.value;
    if (value !== undefined) return metres(value);
    return absences[quantity] === 'none' ? metres(0) : undefined;
  });
}
