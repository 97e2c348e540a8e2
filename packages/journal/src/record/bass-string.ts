import { type Metres, medianOf, message, metres, type ScaleNote } from '@becket/core';
import type { FactOf } from '../facts/index.ts';
import { type ReadingQuantityName, readingQuantities } from '../facts/reading-quantities.ts';
import type { Job } from '../fold/job.ts';
import type { Ulid } from '../ulid.ts';
import type { Absence, AsFoundNote } from './as-found-record.ts';

/** A length of an order with where it comes from, or why there is none. */
export type Stated =
  | { readonly is: 'length'; readonly value: Metres; readonly from: 'read' | 'chosen scale' | 'worked out' }
  | { readonly is: 'absent'; readonly why: Absence | 'not read' };

/** What is ordered of one string, in the order of the paper. */
export const bassQuantities = [
  'core-diameter',
  'inner-layer-diameter',
  'over-all-diameter',
  'inner-wire-diameter',
  'winding-wire-diameter',
  'speaking-length',
  'bare-front',
  'bare-back',
  'winding-length',
  'loop-to-winding',
  'back-length',
  'loop-to-termination',
  'hitch-pin-diameter',
  'core-beyond-front',
] as const;
export type BassQuantity = (typeof bassQuantities)[number];

/** One string to be made. */
export interface BassString {
  readonly key: number;
  readonly note: string;
  /** Counted from the bass side. */
  readonly string: number;
  readonly side: 'single' | 'left' | 'middle' | 'right';
  readonly section: string | undefined;
  readonly layers: number;
  readonly stated: Readonly<Record<BassQuantity, Stated>>;
  readonly loopStyle: FactOf<'winding-described'>['loopStyle'];
  readonly twist: FactOf<'winding-described'>['twist'];
  /** Entries that its figures come from. */
  readonly entries: readonly Ulid[];
}

/** What is added to what was measured: plain data, printed on the order. */
export interface BassAllowances {
  /** Where the four figures come from, each source once. */
  readonly sources: readonly string[];
  /** Turns on the tuning pin, and what goes through its eye and is cut off. */
  readonly coils: number;
  readonly becket_m: number;
  readonly waste_m: number;
  /** Taken where no pin was measured. */
  readonly pinDiameter_m: number;
  /** Where the two tolerances of the checks come from, each source once. */
  readonly toleranceSources: readonly string[];
  /** Lengths that belong together may differ by so much. */
  readonly lengthTolerance_m: number;
  /** Core or over-all diameters of the strings of one note may differ by so much; more is a slip or a replaced string. */
  readonly unisonTolerance_m: number;
}

/** Three coils, and how alike the strings of one note are, are common practice; the other figures are our own to start from. */
export const STARTING_BASS_ALLOWANCES: BassAllowances = {
  sources: [message('common practice, no source'), message('our own starting figures')],
  coils: 3,
  becket_m: 0.012,
  waste_m: 0.05,
  pinDiameter_m: 0.0072,
  toleranceSources: [message('our own starting figures'), message('common practice, no source')],
  lengthTolerance_m: 0.003,
  unisonTolerance_m: 0.00008,
};

/** What a string is made of besides its own note. */
export interface Making {
  readonly scaleNote: ScaleNote | undefined;
  readonly isProposed: boolean;
  readonly proposal: Ulid | undefined;
  readonly allowances: BassAllowances;
}

/** One string to be made, each length with where it comes from. */
export function bassString(
  job: Job,
  note: AsFoundNote,
  string: number,
  { scaleNote, isProposed, proposal, allowances }: Making,
): BassString {
  const read = (quantity: ReadingQuantityName): Stated => {
    const figure = note.figures[quantity];
    if (figure === undefined) return { is: 'absent', why: note.absences[quantity] ?? 'not read' };
    const of = (which: number | undefined) =>
      figure.readings.filter(({ place }) => place.string === which).map(({ value_si }) => value_si);
    const [own, ofNote] = [of(string), of(undefined)];
    const value = own.length > 0 ? medianOf(own) : ofNote.length > 0 ? medianOf(ofNote) : figure.value;
    return { is: 'length', value: metres(value), from: 'read' };
  };
  const proposedString = isProposed && scaleNote?.string.kind === 'wound' ? scaleNote.string : undefined;
  const ofScale = (value: number): Stated => ({ is: 'length', value: metres(value), from: 'chosen scale' });
  const layers = proposedString?.layers.length ?? note.layers;
  const outer = proposedString?.layers.at(-1);
  const over = (count: number) =>
    proposedString === undefined
      ? 0
      : proposedString.layers
          .slice(0, count)
          .reduce((sum, { wireDiameter }) => sum + 2 * wireDiameter, proposedString.coreDiameter as number);
  const notApplying: Stated = { is: 'absent', why: 'does not apply' };

  const core = proposedString === undefined ? read('core-diameter') : ofScale(proposedString.coreDiameter);
  const speaking = read('speaking-length');
  const bareFront = outer === undefined ? read('bare-front') : ofScale(outer.bareFront);
  const bareBack = outer === undefined ? read('bare-back') : ofScale(outer.bareBack);
  const back = read('back-length');
  const windingWorkedOut = workedOut(
    [speaking, bareFront, bareBack],
    ([length, front, rear]) => length! - front! - rear!,
  );
  const loopWorkedOut = workedOut([back, bareBack], ([length, rear]) => length! + rear!);
  // A proposal moves the ends of the winding: then the old lengths no longer speak for the new string.
  const winding = outer === undefined ? orElse(read('winding-length'), windingWorkedOut) : windingWorkedOut;
  const loopToWinding = outer === undefined ? orElse(read('loop-to-winding'), loopWorkedOut) : loopWorkedOut;
  const overInner =
    layers !== 2
      ? notApplying
      : proposedString === undefined
        ? read('inner-layer-diameter')
        : ofScale(over(1));
  const overAll = proposedString === undefined ? read('over-all-diameter') : ofScale(over(layers));
  /** Winding wire from the diameters that it lies between; a proposal names the wire itself. */
  const wire = (layer: number, inside: Stated, outside: Stated): Stated =>
    proposedString === undefined
      ? workedOut([inside, outside], ([inner, outer]) => (outer! - inner!) / 2)
      : ofScale(proposedString.layers[layer]!.wireDiameter);
  const stated: Record<BassQuantity, Stated> = {
    'core-diameter': core,
    'inner-layer-diameter': overInner,
    'over-all-diameter': overAll,
    'inner-wire-diameter': layers === 2 ? wire(0, core, overInner) : notApplying,
    'winding-wire-diameter': wire(layers - 1, layers === 2 ? overInner : core, overAll),
    'speaking-length': speaking,
    'bare-front': bareFront,
    'bare-back': bareBack,
    'winding-length': winding,
    'loop-to-winding': loopToWinding,
    'back-length': back,
    'loop-to-termination': orElse(
      workedOut([back, speaking], ([length, own]) => length! + own!),
      workedOut([loopToWinding, winding, bareFront], ([loop, own, front]) => loop! + own! + front!),
    ),
    'hitch-pin-diameter': read('hitch-pin-diameter'),
    'core-beyond-front': workedOut([read('front-length'), core], ([front, diameter]) => {
      const pin = note.figures['pin-diameter']?.value ?? allowances.pinDiameter_m;
      const coils = allowances.coils * Math.PI * (pin + diameter!);
      return front! + coils + allowances.becket_m + allowances.waste_m;
    }),
  };
  const described = windingOf(job, note.key, string);
  const ids = new Set<Ulid>(proposal === undefined ? [] : [proposal]);
  for (const quantity of Object.keys(readingQuantities) as ReadingQuantityName[])
    for (const { place, entry } of note.figures[quantity]?.readings ?? [])
      if (place.string === undefined || place.string === string) ids.add(entry);
  if (described !== undefined) ids.add(described.entry);
  return {
    key: note.key,
    note: note.note,
    string,
    side: sideOf(string, note.strings),
    section: note.section?.section,
    layers,
    stated,
    loopStyle: described?.loopStyle ?? 'unknown',
    twist: described?.twist ?? 'unknown',
    entries: [...ids],
  };
}

/** A bare end that is *none* is no length at all: it counts as 0. */
export const lengthIn = (one: Stated): number | undefined =>
  one.is === 'length' ? one.value : one.why === 'none' ? 0 : undefined;

function workedOut(parts: readonly Stated[], of: (values: readonly number[]) => number): Stated {
  const values = parts.map(lengthIn);
  if (values.some((value) => value === undefined)) {
    const missing = parts.find((one) => lengthIn(one) === undefined);
    return missing ?? { is: 'absent', why: 'not read' };
  }
  return { is: 'length', value: metres(of(values as number[])), from: 'worked out' };
}

const orElse = (one: Stated, other: Stated): Stated =>
  one.is === 'absent' && one.why === 'not read' && other.is === 'length' ? other : one;

function sideOf(string: number, strings: number | undefined): BassString['side'] {
  if (strings === 3) return (['left', 'middle', 'right'] as const)[string - 1]!;
  return strings === 2 ? (string === 1 ? 'left' : 'right') : 'single';
}

/** What was said of this string, or else of the note. */
function windingOf({ windings }: Job, key: number, string: number): Job['windings'][number] | undefined {
  const own = windings.filter((winding) => winding.key === key);
  return own.findLast((one) => one.string === string) ?? own.findLast((one) => one.string === undefined);
}
