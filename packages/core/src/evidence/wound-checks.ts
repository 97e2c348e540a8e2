import { type Metres, millimetres, noteName, requireNotNegative } from '../units/index.ts';
import { english, type Language, message } from '../words/index.ts';
import { FEWEST_FOR_A_LINE, robustSmooth } from './robust-smooth.ts';
import { type SentenceUnit, type SpokenLength, spokenLengths } from './spoken-length.ts';

/** What was read of the wound strings of one note; whatever was not read is left out. */
export interface WoundReadings {
  readonly key: number;
  readonly speakingLength?: Metres | undefined;
  /** Bridge pin to hitch pin. */
  readonly backLength?: Metres | undefined;
  /** Hitch loop to the start of the winding. */
  readonly loopToWinding?: Metres | undefined;
  readonly windingLength?: Metres | undefined;
  /** Unwound inside the speaking length, at the front termination and at the bridge. */
  readonly bareFront?: Metres | undefined;
  readonly bareBack?: Metres | undefined;
  readonly coreDiameter?: Metres | undefined;
  readonly innerLayerDiameter?: Metres | undefined;
  readonly overAllDiameter?: Metres | undefined;
}

export type WoundCheckName =
  | 'winding reaches the termination'
  | 'winding and bare ends do not make the speaking length'
  | 'loop to winding does not reach the bare end'
  | 'diameters do not grow outwards'
  | 'row grows to the treble'
  | 'winding end off the line';

/** One thing that does not add up, in plain words with the figures. */
export interface WoundContradiction {
  readonly check: WoundCheckName;
  /** The notes it is about, the doubtful one first. */
  readonly keys: readonly number[];
  readonly sentence: string;
}

export interface WoundCheckOptions {
  /** By how much lengths that belong together may differ; 3 mm when not given (common practice: a rule, and a loop that gives). */
  readonly lengthTolerance?: Metres;
  /** By how much a diameter may grow to the next note; 0.02 mm when not given (common practice). */
  readonly diameterTolerance?: Metres;
  /** In which unit the sentences tell their lengths; millimetres when not given. */
  readonly lengthUnit?: SentenceUnit;
}

/**
 * Whether the readings of a run of wound strings agree with each other. One section, and one kind of winding.
 *
 *     loop to winding + winding length  <  back length + speaking length      (hitch pin to front termination)
 *     bare front + winding length + bare back  =  speaking length
 *     back length + bare back  =  loop to winding
 *     core  <  over the inner layer  <  over all
 *     no row of diameters or lengths grows towards the treble
 *     the front ends of the windings lie on a smooth line along the section
 *
 * Each is looked at only where everything it needs was read. A piano can be odd, so what comes back are sentences to
 * measure again by, and nothing is refused.
 *
 * @param notes  in any order; a note once
 * @param language  of the sentences
 * @returns bass to treble; empty when all agrees
 *
 * Throws: RangeError when a reading is negative or not finite.
 * Source: geometry of a string between hitch pin and termination; rows and lines are common practice, no source.
 */
export function woundContradictions(
  notes: readonly WoundReadings[],
  {
    lengthTolerance = millimetres(3),
    diameterTolerance = millimetres(0.02),
    lengthUnit = 'mm',
  }: WoundCheckOptions = {},
  language: Language = english,
): WoundContradiction[] {
  const told = { ...spokenLengths(lengthUnit, language), say: language.say };
  for (const { key, ...readings } of notes) {
    for (const [name, reading] of Object.entries(readings))
      if (reading !== undefined)
        requireNotNegative(reading, `${name} of key ${key}`, 'whether wound strings agree');
  }
  const inOrder = [...notes].sort((a, b) => a.key - b.key);
  return [
    ...inOrder.flatMap((note) => [
      ...windingEnd(note, lengthTolerance, told),
      ...partsOfLength(note, lengthTolerance, told),
      ...loopAndBareEnd(note, lengthTolerance, told),
      ...layers(note, told),
    ]),
    ...ROWS.flatMap((row) => growingRow(inOrder, row, { lengthTolerance, diameterTolerance }, told)),
    ...endLine(inOrder, lengthTolerance, told),
  ].sort((a, b) => a.keys[0]! - b.keys[0]!);
}

/** How a sentence is said, and how it tells its lengths. */
type Told = SpokenLength & Pick<Language, 'say'>;

function windingEnd(note: WoundReadings, tolerance: number, told: Told): WoundContradiction[] {
  const { key, loopToWinding, windingLength, backLength, speakingLength } = note;
  if (
    loopToWinding === undefined ||
    windingLength === undefined ||
    backLength === undefined ||
    speakingLength === undefined
  )
    return [];
  const end = loopToWinding + windingLength;
  const termination = backLength + speakingLength;
  if (end < termination) return [];
  const beyond = end - termination;
  return [
    {
      check: 'winding reaches the termination',
      keys: [key],
      sentence: told.say(
        '{note}: loop to winding {loopToWinding} and winding {winding} make {end}, which lies {beyond} beyond the front termination at {termination} from the hitch pin (back length {back}, speaking length {speaking}){near, select, yes {, or within the tolerance of a rule at it} other {}}. A winding ends before it: measure again.',
        {
          note: noteName(key),
          loopToWinding: told.length(loopToWinding),
          winding: told.length(windingLength),
          end: told.length(end),
          beyond: told.length(beyond),
          termination: told.length(termination),
          back: told.length(backLength),
          speaking: told.length(speakingLength),
          near: beyond <= tolerance ? 'yes' : 'no',
        },
      ),
    },
  ];
}

function partsOfLength(note: WoundReadings, tolerance: number, told: Told): WoundContradiction[] {
  const { key, speakingLength, windingLength, bareFront, bareBack } = note;
  if (
    speakingLength === undefined ||
    windingLength === undefined ||
    bareFront === undefined ||
    bareBack === undefined
  )
    return [];
  const sum = bareFront + windingLength + bareBack;
  if (Math.abs(sum - speakingLength) <= tolerance) return [];
  return [
    {
      check: 'winding and bare ends do not make the speaking length',
      keys: [key],
      sentence: told.say(
        '{note}: bare front {front}, winding {winding} and bare back {back} make {sum}, but the speaking length is {speaking}: {off} {side, select, more {too much} other {missing}}. Measure again.',
        {
          note: noteName(key),
          front: told.length(bareFront),
          winding: told.length(windingLength),
          back: told.length(bareBack),
          sum: told.length(sum),
          speaking: told.length(speakingLength),
          off: told.length(Math.abs(sum - speakingLength)),
          side: sum > speakingLength ? 'more' : 'less',
        },
      ),
    },
  ];
}

function loopAndBareEnd(note: WoundReadings, tolerance: number, told: Told): WoundContradiction[] {
  const { key, loopToWinding, backLength, bareBack } = note;
  if (loopToWinding === undefined || backLength === undefined || bareBack === undefined) return [];
  const start = backLength + bareBack;
  if (Math.abs(start - loopToWinding) <= tolerance) return [];
  return [
    {
      check: 'loop to winding does not reach the bare end',
      keys: [key],
      sentence: told.say(
        '{note}: back length {back} and bare back {bare} put the start of the winding {start} from the hitch pin, but loop to winding is {loopToWinding}. Measure again.',
        {
          note: noteName(key),
          back: told.length(backLength),
          bare: told.length(bareBack),
          start: told.length(start),
          loopToWinding: told.length(loopToWinding),
        },
      ),
    },
  ];
}

function layers(note: WoundReadings, told: Told): WoundContradiction[] {
  const { key, coreDiameter, innerLayerDiameter, overAllDiameter } = note;
  const rings = [
    [message('core'), coreDiameter],
    [message('diameter over the inner layer'), innerLayerDiameter],
    [message('over-all diameter'), overAllDiameter],
  ] as const;
  const read = rings.flatMap(([name, diameter]) =>
    diameter === undefined ? [] : [[name, diameter] as const],
  );
  return read.slice(1).flatMap(([name, outer], index): WoundContradiction[] => {
    const [innerName, inner] = read[index]!;
    if (outer > inner) return [];
    return [
      {
        check: 'diameters do not grow outwards',
        keys: [key],
        sentence: told.say(
          '{note}: the {outerName} of {outer} is not more than the {innerName} of {inner} beneath it. Measure again.',
          {
            note: noteName(key),
            outerName: told.say(name),
            outer: told.diameter(outer),
            innerName: told.say(innerName),
            inner: told.diameter(inner),
          },
        ),
      },
    ];
  });
}

/** What does not grow from bass to treble in a run of wound strings. */
const ROWS = [
  { field: 'speakingLength', label: message('speaking length'), isDiameter: false },
  { field: 'windingLength', label: message('winding length'), isDiameter: false },
  { field: 'coreDiameter', label: message('core diameter'), isDiameter: true },
  { field: 'overAllDiameter', label: message('over-all diameter'), isDiameter: true },
] as const;

function growingRow(
  inOrder: readonly WoundReadings[],
  { field, label, isDiameter }: (typeof ROWS)[number],
  tolerances: { readonly lengthTolerance: number; readonly diameterTolerance: number },
  told: Told,
): WoundContradiction[] {
  const tolerance = isDiameter ? tolerances.diameterTolerance : tolerances.lengthTolerance;
  const text = isDiameter ? told.diameter : told.length;
  const read = inOrder.flatMap((note) => {
    const value = note[field];
    return value === undefined ? [] : [{ key: note.key, value: value as number }];
  });
  return read.slice(1).flatMap((here, index): WoundContradiction[] => {
    const before = read[index]!;
    if (here.value - before.value <= tolerance) return [];
    // The one to doubt lies further from where its two neighbours would put it; without two, nothing speaks against it.
    const isHere = offItsNeighbours(read, index + 1) >= offItsNeighbours(read, index);
    const doubtful = isHere ? [here.key, before.key] : [before.key, here.key];
    return [
      {
        check: 'row grows to the treble',
        keys: doubtful,
        sentence: told.say(
          '{note}: the {label} of {length} is more than the {lengthBefore} of {noteBefore} towards the bass. It does not usually grow towards the treble: measure {doubtful} again first.',
          {
            note: noteName(here.key),
            label: told.say(label),
            length: text(here.value),
            lengthBefore: text(before.value),
            noteBefore: noteName(before.key),
            doubtful: noteName(doubtful[0]!),
          },
        ),
      },
    ];
  });
}

/** How far a value is from the straight line between its neighbours in the row; 0 at either end. */
function offItsNeighbours(
  row: readonly { readonly key: number; readonly value: number }[],
  index: number,
): number {
  const [before, here, after] = [row[index - 1], row[index]!, row[index + 1]];
  if (before === undefined || after === undefined) return 0;
  const share = (here.key - before.key) / (after.key - before.key);
  return Math.abs(here.value - before.value - share * (after.value - before.value));
}

/** The front ends of the windings, as distances from the termination, against a smooth line through the others. */
function endLine(inOrder: readonly WoundReadings[], tolerance: number, told: Told): WoundContradiction[] {
  const read = inOrder.flatMap(({ key, bareFront }) =>
    bareFront === undefined ? [] : [{ key, value: bareFront as number }],
  );
  if (read.length < FEWEST_FOR_A_LINE) return [];
  const { outliers } = robustSmooth(read, {
    firstKey: read[0]!.key,
    lastKey: read[read.length - 1]!.key,
    // Four standard deviations are an outlier: this makes the tolerance the least that is asked about.
    leastScatter: tolerance / 4,
  });
  return outliers.map(({ point, expected }): WoundContradiction => {
    const { key, value } = read[point]!;
    return {
      check: 'winding end off the line',
      keys: [key],
      sentence: told.say(
        "{note}: the winding ends {distance} from the front termination, where the line of the section's windings suggests {expected}. Measure the bare front again.",
        { note: noteName(key), distance: told.length(value), expected: told.length(expected) },
      ),
    };
  });
}
