import {
  english,
  inMillimetres,
  keyRangeAt,
  type Language,
  type LetDownPass,
  type LetDownSection,
  type LetDownString,
  letDownPlan,
  type Metres,
  medianOf,
  message,
  metres,
  millimetres,
  noteName,
  STEEL_YOUNGS_MODULUS,
} from '@becket/core';
import { type AsFoundNote, asFoundRecord, type Job, type ReadingQuantityName } from '@becket/journal';
import { scaleAsFound } from './scale-as-found.ts';

/** How many passes a let-down can be spread over here. */
export const letDownPasses = [3, 4, 5, 6] as const;

/** The let-down plan of a piano, and what it rests on. */
export interface LetDown {
  readonly passes: readonly LetDownPass[];
  /** Strings that the plan reckons with. */
  readonly strings: number;
  /** What was not read and is assumed instead, one sentence each. */
  readonly assumptions: readonly string[];
  /** Notes whose tension cannot be computed: they are let down with their neighbours and are not in the load. */
  readonly leftOut: readonly string[];
}

/** Taken where nothing of the kind was read on this piano. Common practice, no source. */
const USUAL = {
  'front-length': millimetres(130),
  'back-length': millimetres(110),
  'pin-diameter': millimetres(7),
} as const satisfies Partial<Record<ReadingQuantityName, Metres>>;
type Assumable = keyof typeof USUAL;
const words = {
  'front-length': message('front length'),
  'back-length': message('back length'),
  'pin-diameter': message('pin diameter'),
} as const satisfies Record<Assumable, string>;

/**
 * How to let the strings of a piano down evenly, from its scale and its pins as found.
 *
 * A front length, back length or pin that was not read is taken from the middle of its section, else of the piano, else
 * from what is usual; each such guess is said. Tensions are those at the reference pitch.
 * @returns undefined while the tension of no string in a section can be computed
 */
export function letDownOf(
  job: Job,
  passes: (typeof letDownPasses)[number],
  language: Language = english,
): LetDown | undefined {
  const { analysis, notComputed } = scaleAsFound(job, { uncertainties: 'left out' });
  const { value, assumptions } = valuesAlong(job, asFoundRecord(job).notes, language);
  const sections: LetDownSection[] = [];
  for (const { section, firstKey, lastKey } of job.sections) {
    const strings = analysis.notes
      .filter(({ key }) => firstKey <= key && key <= lastKey)
      .flatMap(({ key, note, stringTensions }): LetDownString[] => {
        const { string } = note;
        const wireLength = metres(
          value(key, 'front-length') + string.speakingLength + value(key, 'back-length'),
        );
        const pinDiameter = metres(value(key, 'pin-diameter'));
        return stringTensions.map((tension) => ({
          tension,
          wireLength,
          steelDiameter: string.kind === 'plain' ? string.diameter : string.coreDiameter,
          pinDiameter,
        }));
      });
    if (strings.length > 0) sections.push({ section, strings });
  }
  if (sections.length === 0) return undefined;
  const inPlan = new Set(
    job.sections.flatMap(({ firstKey, lastKey }) =>
      analysis.notes.filter(({ key }) => firstKey <= key && key <= lastKey).map(({ key }) => key),
    ),
  );
  return {
    passes: letDownPlan(sections, { passes, youngsModulus: STEEL_YOUNGS_MODULUS }),
    strings: sections.reduce((sum, { strings }) => sum + strings.length, 0),
    assumptions: [
      language.say(
        'Tensions are those at A4 = {pitch} Hz; strings that stand flat carry less, and come down sooner.',
        { pitch: language.plain(job.piano?.referencePitch_hz ?? 440) },
      ),
      ...assumptions(),
    ],
    leftOut: [
      ...notComputed.map(({ key }) => key),
      ...analysis.notes.map(({ key }) => key).filter((key) => !inPlan.has(key)),
    ]
      .sort((a, b) => a - b)
      .map(noteName),
  };
}

/** The value of a quantity at a note, as read or assumed; and which were assumed, once they were asked for. */
function valuesAlong(job: Job, notes: readonly AsFoundNote[], { say, fixed }: Language) {
  const guesses = new Map<Assumable, { ofSection: number; ofPiano: number; usual: number }>();
  const readOf = (some: readonly AsFoundNote[], quantity: Assumable): number[] =>
    some.flatMap(({ figures }) => figures[quantity]?.value ?? []);
  const value = (key: number, quantity: Assumable): number => {
    const own = notes.find((note) => note.key === key);
    const read = own?.figures[quantity]?.value;
    if (read !== undefined) return read;
    const guess = guesses.get(quantity) ?? { ofSection: 0, ofPiano: 0, usual: 0 };
    guesses.set(quantity, guess);
    const section = keyRangeAt(key, job.sections);
    const ofSection = readOf(
      notes.filter((note) => note.section?.section === section?.section),
      quantity,
    );
    if (ofSection.length > 0) {
      guess.ofSection += 1;
      return medianOf(ofSection);
    }
    const ofPiano = readOf(notes, quantity);
    if (ofPiano.length > 0) {
      guess.ofPiano += 1;
      return medianOf(ofPiano);
    }
    guess.usual += 1;
    return USUAL[quantity];
  };
  const assumptions = (): string[] =>
    [...guesses].map(([quantity, { ofSection, ofPiano, usual }]) => {
      const parts = [
        ...(ofSection > 0
          ? [
              say('for {count, plural, one {# note} other {# notes}} the middle value of their section', {
                count: ofSection,
              }),
            ]
          : []),
        ...(ofPiano > 0
          ? [
              say('for {count, plural, one {# note} other {# notes}} the middle value of the piano', {
                count: ofPiano,
              }),
            ]
          : []),
        ...(usual > 0
          ? [
              say('for {count, plural, one {# note} other {# notes}} {usual} mm (usual, not read)', {
                count: usual,
                usual: fixed(inMillimetres(USUAL[quantity]), 0),
              }),
            ]
          : []),
      ];
      return say('The {quantity} was not read everywhere: {taken} is taken.', {
        quantity: say(words[quantity]),
        taken: parts.join(', '),
      });
    });
  return { value, assumptions };
}
