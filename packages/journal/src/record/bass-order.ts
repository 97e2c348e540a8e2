import {
  A228_MINIMUM,
  analyseNote,
  COMMON_SHOP_POLICY,
  type Metres,
  medianOf,
  metres,
  noteName,
  type ScaleNote,
  type SentenceUnit,
  type WoundReadings,
  woundContradictions,
} from '@becket/core';
import { canonicalText, digestOf } from '../canonical.ts';
import type { FactOf } from '../facts/index.ts';
import { type ReadingQuantityName, readingQuantities } from '../facts/reading-quantities.ts';
import type { Orders } from '../fold/fold-orders.ts';
import type { Job } from '../fold/job.ts';
import type { Ulid } from '../ulid.ts';
import { type Absence, type AsFoundNote, asFoundRecord } from './as-found-record.ts';
import { chosenScaleOf, scaleNotesOf } from './proposed-scale.ts';

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

/** One check of the order. */
export interface BassCheck {
  /** 'E2/missing/core-diameter': what a signature names. */
  readonly id: string;
  readonly keys: readonly number[];
  readonly sentence: string;
  /** Who answers for it and why; undefined while nobody does. */
  readonly signed: { readonly name: string; readonly reason: string; readonly at: string } | undefined;
}

/** What is added to what was measured: plain data, printed on the order. */
export interface BassAllowances {
  readonly source: string;
  /** Turns on the tuning pin, and what goes through its eye and is cut off. */
  readonly coils: number;
  readonly becket_m: number;
  readonly waste_m: number;
  /** Taken where no pin was measured. */
  readonly pinDiameter_m: number;
  /** Lengths that belong together may differ by so much. */
  readonly lengthTolerance_m: number;
}

/** Three coils are common practice; the other figures are our own to start from. */
export const STARTING_BASS_ALLOWANCES: BassAllowances = {
  source: 'our own starting figures',
  coils: 3,
  becket_m: 0.012,
  waste_m: 0.05,
  pinDiameter_m: 0.0072,
  lengthTolerance_m: 0.003,
};

export interface BassOrder {
  /** Which scale it is made from, in words. */
  readonly scale: string;
  /** Why that scale should be looked at again before anything is sent; undefined while it holds. */
  readonly scaleProblem: string | undefined;
  /** Bass to treble, string 1 first. */
  readonly strings: readonly BassString[];
  /** The notes of these strings as they can be computed, by key; without those that cannot be yet. */
  readonly scaleNotes: ReadonlyMap<number, ScaleNote>;
  /** Every check that does not pass, signed or not. */
  readonly checks: readonly BassCheck[];
  /** True when there is a string to order and somebody answers for each check that does not pass. */
  readonly mayBeSent: boolean;
  /** SHA-256 over the canonical JSON of the strings, hexadecimal: another figure is another digest. */
  readonly digest: string;
  readonly allowances: BassAllowances;
}

/**
 * The wound strings to be made for this piano, string by string, with the checks that stand between them and an order.
 *
 * Core and windings are those of the chosen scale, and until one is chosen those as found. A reading of one string of a note
 * speaks for that string; a reading of the note for all that have none of their own.
 */
export function bassOrder(
  job: Job,
  {
    signed = [],
    allowances = STARTING_BASS_ALLOWANCES,
    lengthUnit = 'mm',
  }: {
    readonly signed?: Orders['signed'];
    readonly allowances?: BassAllowances;
    readonly lengthUnit?: SentenceUnit;
  } = {},
): BassOrder {
  const chosen = chosenScaleOf(job);
  const isThere =
    chosen !== undefined &&
    (chosen.which === 'as found' || job.proposals.some(({ entry }) => entry === chosen.which));
  const which = isThere ? chosen.which : 'as found';
  const scaleNotes = new Map(scaleNotesOf(job, which).notes.map((note) => [note.key, note]));
  const proposed = new Map(
    (job.proposals.find(({ entry }) => entry === which)?.notes ?? []).map((note) => [note.key, note]),
  );
  const notes = asFoundRecord(job).notes.filter(
    ({ key, winding }) => (proposed.get(key)?.winding ?? winding) === 'wound',
  );
  const strings = notes.flatMap((note) =>
    Array.from({ length: note.strings ?? 1 }, (_, index) =>
      bassString(job, note, index + 1, {
        scaleNote: proposed.get(note.key)?.from === 'as found' ? undefined : scaleNotes.get(note.key),
        isProposed: proposed.has(note.key) && proposed.get(note.key)?.from !== 'as found',
        proposal: which === 'as found' ? undefined : which,
        allowances,
      }),
    ),
  );
  const checks = checksOf(notes, strings, scaleNotes, allowances, lengthUnit).map((check) => {
    const signature = signed.find((one) => one.check === check.id && one.sentence === check.sentence);
    return {
      ...check,
      signed:
        signature === undefined
          ? undefined
          : { name: signature.name, reason: signature.reason, at: signature.at },
    };
  });
  return {
    scale:
      chosen === undefined
        ? 'the scale as found; no scale has been chosen yet'
        : which === 'as found'
          ? 'the scale as found, which was chosen'
          : `the chosen scale “${chosen.name}”`,
    scaleProblem: chosen?.changedSince,
    strings,
    scaleNotes,
    checks,
    mayBeSent: strings.length > 0 && checks.every((check) => check.signed !== undefined),
    digest: bassOrderDigest(strings),
    allowances,
  };
}

/** One sentence when the strings are no longer those that an order was drafted from; undefined while they are. */
export function changedSinceOrder(
  { digest }: BassOrder,
  order: { readonly scaleDigest: string | undefined; readonly draftedAt: string; readonly supplier: string },
): string | undefined {
  if (order.scaleDigest === undefined || order.scaleDigest === digest) return undefined;
  return `The strings have changed since the order to ${order.supplier} was drafted on ${order.draftedAt.slice(0, 10)}: a reading, a size or the chosen scale is another now. Compare the paper that was sent with this one, and tell the maker.`;
}

function bassOrderDigest(strings: readonly BassString[]): string {
  return digestOf(
    canonicalText(
      strings.map(({ key, string, layers, stated, loopStyle, twist }) => ({
        key,
        string,
        layers,
        loopStyle,
        twist,
        // To a tenth of a micrometre: what the last binary digit says is no other string.
        lengths_m: Object.fromEntries(
          Object.entries(stated).map(([name, one]) => [
            name,
            one.is === 'length' ? Math.round(one.value * 1e7) / 1e7 : one.why,
          ]),
        ),
      })),
    ),
  );
}

interface Making {
  readonly scaleNote: ScaleNote | undefined;
  readonly isProposed: boolean;
  readonly proposal: Ulid | undefined;
  readonly allowances: BassAllowances;
}

function bassString(
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
const lengthIn = (one: Stated): number | undefined =>
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

/** Without these no string can be made. */
const wanted = [
  ['core-diameter', 'core'],
  ['inner-layer-diameter', 'diameter over the inner layer'],
  ['over-all-diameter', 'over-all diameter'],
  ['speaking-length', 'speaking length'],
  ['bare-front', 'bare end at the front'],
  ['bare-back', 'bare end at the bridge'],
  ['winding-length', 'winding length'],
  ['loop-to-winding', 'loop to winding start'],
  ['hitch-pin-diameter', 'hitch pin diameter'],
] as const satisfies readonly (readonly [BassQuantity, string])[];

type Unsigned = Omit<BassCheck, 'signed'>;

function checksOf(
  notes: readonly AsFoundNote[],
  strings: readonly BassString[],
  scaleNotes: ReadonlyMap<number, ScaleNote>,
  { lengthTolerance_m }: BassAllowances,
  lengthUnit: SentenceUnit,
): Unsigned[] {
  const missing = notes.flatMap((note): Unsigned[] => {
    const own = strings.filter(({ key }) => key === note.key);
    const lacking = wanted.flatMap(([quantity, name]): Unsigned[] => {
      const absent = own.find(({ stated }) => {
        const one = stated[quantity];
        return one.is === 'absent' && one.why !== 'none' && one.why !== 'does not apply';
      });
      return absent === undefined
        ? []
        : [
            {
              id: `${note.note}/missing/${quantity}`,
              keys: [note.key],
              sentence: `${note.note}: the ${name} is ${(absent.stated[quantity] as { why: string }).why}. Read it, or let the maker decide by name.`,
            },
          ];
    });
    const count =
      note.strings === undefined
        ? [
            {
              id: `${note.note}/missing/strings`,
              keys: [note.key],
              sentence: `${note.note}: nobody has said how many strings it has. Describe its stringing.`,
            },
          ]
        : [];
    const loop = own.some(({ loopStyle }) => loopStyle === 'unknown')
      ? [
          {
            id: `${note.note}/missing/loop-style`,
            keys: [note.key],
            sentence: `${note.note}: the loop style is not stated. Say it under what was seen, or let the maker decide by name.`,
          },
        ]
      : [];
    return [...count, ...lacking, ...loop];
  });
  const contradictions = [1, 2].flatMap((layers) =>
    groupBySection(strings.filter((one) => one.layers === layers && one.string === 1)).flatMap((own) =>
      woundContradictions(own.map(woundReadings), {
        lengthTolerance: metres(lengthTolerance_m),
        lengthUnit,
      }).map(
        ({ check, keys, sentence }): Unsigned => ({
          id: `${noteName(keys[0]!)}/${check}`,
          keys,
          sentence,
        }),
      ),
    ),
  );
  return [
    ...missing,
    ...contradictions,
    ...unisonDifferences(strings),
    ...breakShares(strings, scaleNotes),
  ].sort((a, b) => a.keys[0]! - b.keys[0]!);
}

function groupBySection(strings: readonly BassString[]): BassString[][] {
  const groups = new Map<string | undefined, BassString[]>();
  for (const one of strings) groups.set(one.section, [...(groups.get(one.section) ?? []), one]);
  return [...groups.values()];
}

function woundReadings({ key, stated }: BassString): WoundReadings {
  const of = (quantity: BassQuantity): Metres | undefined => {
    const value = lengthIn(stated[quantity]);
    return value === undefined ? undefined : metres(value);
  };
  return {
    key,
    speakingLength: of('speaking-length'),
    backLength: of('back-length'),
    loopToWinding: of('loop-to-winding'),
    windingLength: of('winding-length'),
    bareFront: of('bare-front'),
    bareBack: of('bare-back'),
    coreDiameter: of('core-diameter'),
    innerLayerDiameter: of('inner-layer-diameter'),
    overAllDiameter: of('over-all-diameter'),
  };
}

/** A wound string is a hand's work; more than this between the strings of one note is a slip or a replaced string. Common practice, no source. */
const UNISON_TOLERANCE_M = 0.00008;

function unisonDifferences(strings: readonly BassString[]): Unsigned[] {
  return strings.flatMap((one): Unsigned[] => {
    if (one.string === 1) return [];
    const first = strings.find(({ key, string }) => key === one.key && string === 1);
    return (['core-diameter', 'over-all-diameter'] as const).flatMap((quantity) => {
      const [a, b] = [first?.stated[quantity], one.stated[quantity]];
      if (a?.is !== 'length' || b.is !== 'length') return [];
      if (Math.abs(a.value - b.value) <= UNISON_TOLERANCE_M) return [];
      const name = quantity === 'core-diameter' ? 'core' : 'over-all diameter';
      const [from, to] = [a, b].map(({ value }) => (value * 1000).toFixed(3));
      return [
        {
          id: `${one.note}/unison/${one.string}/${quantity}`,
          keys: [one.key],
          sentence: `${one.note}: the ${name} of string 1 reads ${from} mm and that of string ${one.string} ${to} mm. The strings of one note are alike: measure both again.`,
        },
      ];
    });
  });
}

function breakShares(strings: readonly BassString[], scaleNotes: ReadonlyMap<number, ScaleNote>): Unsigned[] {
  const { value: highest } = COMMON_SHOP_POLICY.limits.highestBreakShare;
  return strings.flatMap(({ key, note, string }): Unsigned[] => {
    const scaleNote = scaleNotes.get(key);
    if (string !== 1 || scaleNote === undefined) return [];
    const { breakShare } = analyseNote(scaleNote, {
      strengthTable: A228_MINIMUM,
      uncertainties: 'left out',
      // The quick look: within 0.2 % of the exact tension, which no limit of a shop is sharp enough to feel.
      woundStrings: 'core formula',
    });
    if (breakShare <= highest) return [];
    return [
      {
        id: `${note}/break-share`,
        keys: [key],
        sentence: `${note}: at pitch the core bears ${(100 * breakShare).toFixed(0)} % of its break load by ${A228_MINIMUM.name}, above ${(100 * highest).toFixed(0)} % (common practice). Look at its core and its winding again.`,
      },
    ];
  });
}
