import {
  type CutLength,
  cutLength,
  english,
  inMillimetres,
  type Language,
  type LoopPlan,
  loopPlan,
  type Metres,
  metres,
  millimetres,
  noteName,
  type PlanString,
  type ScaleNote,
  shiftsThatSaveTies,
} from '@becket/core';
import { asFoundRecord, type Job, type ScaleNotes } from '@becket/journal';

/** What a wire gets beyond its way from pin to pin. Plain data, for the shop to change. */
export interface CutAllowances {
  /** Turns on each pin. */
  readonly coils: number;
  /** What goes through the eye of each pin. */
  readonly becket_m: number;
  /** What is cut off at each pin. */
  readonly waste_m: number;
  /** What a tied wire takes for its hitch loop. */
  readonly tie_m: number;
  /** Diameter of the new pins; of the old ones where it is left out. */
  readonly pinDiameter_m?: number | undefined;
}

/** Where a shop starts from. Common practice, no source. */
export const COMMON_CUT_ALLOWANCES: CutAllowances = {
  coils: 3,
  becket_m: 0.006,
  waste_m: 0.02,
  tie_m: 0.07,
};

/** Taken where nothing of the kind was read on this piano. Common practice, no source. */
const USUAL_PIN = millimetres(7);
const USUAL_HITCH_PIN = millimetres(4);

/** One wire to be cut. */
export interface WireToCut {
  readonly joined: 'looped' | 'tied';
  /** The strings it makes, from the bass side; string 1 is the lowest. */
  readonly strings: readonly { readonly key: number; readonly string: number }[];
  readonly diameter: Metres;
  /** Undefined where a length is not known. */
  readonly cut: CutLength | undefined;
  /** What it rests on that was not read at these notes, or what is missing; each a few words. */
  readonly remarks: readonly string[];
}

/** A size change that saves a tied string when it moves by one note. */
export interface ShiftOffered {
  readonly sentence: string;
  /** The note that gets another size, and which. */
  readonly key: number;
  readonly diameter: Metres;
}

/** One plain string of a section. */
export interface LoopedString extends PlanString {
  readonly diameter: Metres;
  /** Bridge to hitch pin, from readings of the note or its neighbours; undefined where its section has none. */
  readonly backLength: Metres | undefined;
}

/** The plain strings of one section. */
export interface SectionLoops {
  readonly section: string;
  readonly strings: readonly LoopedString[];
  readonly plan: LoopPlan;
  readonly wires: readonly WireToCut[];
  readonly shifts: readonly ShiftOffered[];
}

/**
 * Which strings of a scale share a wire, with the fewest tied strings, and how long each wire is cut.
 *
 * Wound strings come made to measure and are not in it. A front or back length that was not read at a note is taken on the
 * straight line between the nearest notes of its section that were, and said; where the section has none, no length is given.
 * No loop reaches over a note that the scale does not have: its strings lie in between. `notesLeftOut` names such notes.
 */
export function loopsAndCuts(
  job: Job,
  scale: ScaleNotes,
  allowances: CutAllowances = COMMON_CUT_ALLOWANCES,
  language: Language = english,
): SectionLoops[] {
  return job.sections.flatMap(({ section, firstKey, lastKey }) => {
    const notes = scale.notes.filter(
      ({ key, string }) => firstKey <= key && key <= lastKey && string.kind === 'plain',
    );
    if (notes.length === 0) return [];
    const lengths = lengthsOf(job, firstKey, lastKey);
    const strings = notes.flatMap((note) => {
      const diameter = steelOf(note);
      const backLength = lengths.along('back-length', note.key)?.value;
      return Array.from({ length: note.strings }, (_, index): LoopedString => {
        return { key: note.key, string: index + 1, size: Math.round(diameter * 1e7), diameter, backLength };
      });
    });
    const runs = sideBySide(strings);
    const plan = planOf(runs);
    const noteOf = new Map(notes.map((note) => [note.key, note]));
    return [
      {
        section,
        strings,
        plan,
        wires: plan.wires.map(({ joined, strings: indices }) =>
          wireToCut(
            joined,
            indices.map((index) => strings[index]!),
            { noteOf, lengths, allowances },
            language,
          ),
        ),
        shifts: runs.flatMap((run) => shiftsOf(run, language)),
      },
    ];
  });
}

/** Strings of neighbouring notes together; a note that is not there parts them. */
function sideBySide(strings: readonly LoopedString[]): LoopedString[][] {
  const runs: LoopedString[][] = [];
  for (const string of strings) {
    const run = runs.at(-1);
    if (run !== undefined && string.key - run.at(-1)!.key <= 1) run.push(string);
    else runs.push([string]);
  }
  return runs;
}

/** The plans of all runs as one, with indices into the strings of all of them. */
function planOf(runs: readonly (readonly LoopedString[])[]): LoopPlan {
  let before = 0;
  const plans = runs.map((run) => {
    const start = before;
    before += run.length;
    const { wires, tied, changesInsideLoops } = loopPlan(run);
    return {
      wires: wires.map(({ joined, strings: [first, second] }) => ({
        joined,
        strings:
          second === undefined ? ([first + start] as const) : ([first + start, second + start] as const),
      })),
      tied,
      changesInsideLoops: changesInsideLoops.map((index) => index + start),
    };
  });
  return {
    wires: plans.flatMap(({ wires }) => wires),
    tied: plans.reduce((sum, { tied }) => sum + tied, 0),
    changesInsideLoops: plans.flatMap((plan) => plan.changesInsideLoops),
  };
}

const steelOf = ({ string }: ScaleNote): Metres =>
  string.kind === 'plain' ? string.diameter : string.coreDiameter;

function wireToCut(
  joined: WireToCut['joined'],
  strings: readonly { readonly key: number; readonly string: number; readonly diameter: Metres }[],
  {
    noteOf,
    lengths,
    allowances,
  }: {
    readonly noteOf: ReadonlyMap<number, ScaleNote>;
    readonly lengths: ReturnType<typeof lengthsOf>;
    readonly allowances: CutAllowances;
  },
  { say, plain }: Language,
): WireToCut {
  const { diameter } = strings[0]!;
  const remarks = new Set<string>();
  const parts = strings.map(({ key }) => {
    const [front, back] = [lengths.along('front-length', key), lengths.along('back-length', key)];
    for (const [name, found] of [
      [say('front length'), front],
      [say('back length'), back],
    ] as const) {
      if (found === undefined) remarks.add(say('no {quantity} read in this section', { quantity: name }));
      else if (!found.isRead) remarks.add(say('{quantity} from neighbours', { quantity: name }));
    }
    return { front: front?.value, speaking: noteOf.get(key)!.string.speakingLength, back: back?.value };
  });
  const pin = allowances.pinDiameter_m ?? lengths.along('pin-diameter', strings[0]!.key)?.value;
  const hitchPin = lengths.along('hitch-pin-diameter', strings[0]!.key)?.value;
  if (pin === undefined)
    remarks.add(say('pin taken as {diameter} mm', { diameter: plain(inMillimetres(USUAL_PIN)) }));
  if (hitchPin === undefined && joined === 'looped')
    remarks.add(say('hitch pin taken as {diameter} mm', { diameter: plain(inMillimetres(USUAL_HITCH_PIN)) }));
  const isWhole = (one: (typeof parts)[number]): one is { front: Metres; speaking: Metres; back: Metres } =>
    one.front !== undefined && one.back !== undefined;
  const cut = parts.every(isWhole)
    ? cutLength({
        strings: parts.filter(isWhole),
        pinDiameter: metres(pin ?? USUAL_PIN),
        wireDiameter: diameter,
        hitchPinDiameter: metres(hitchPin ?? USUAL_HITCH_PIN),
        coils: allowances.coils,
        becket: metres(allowances.becket_m),
        waste: metres(allowances.waste_m),
        tie: metres(allowances.tie_m),
      })
    : undefined;
  return {
    joined,
    strings: strings.map(({ key, string }) => ({ key, string })),
    diameter,
    cut,
    remarks: [...remarks],
  };
}

type Along = 'front-length' | 'back-length' | 'pin-diameter' | 'hitch-pin-diameter';

/** Values along one section: as read at a note, else on the line between the nearest that were. */
function lengthsOf(job: Job, firstKey: number, lastKey: number) {
  const notes = asFoundRecord(job).notes.filter(({ key }) => firstKey <= key && key <= lastKey);
  const read = new Map<Along, { key: number; value: Metres }[]>();
  const readOf = (quantity: Along) => {
    const known =
      read.get(quantity) ??
      notes.flatMap(({ key, figures }) => {
        const value = figures[quantity]?.value;
        return value === undefined || value <= 0 ? [] : [{ key, value: metres(value) }];
      });
    read.set(quantity, known);
    return known;
  };
  return {
    along(quantity: Along, key: number): { value: Metres; isRead: boolean } | undefined {
      const known = readOf(quantity);
      const below = known.findLast((one) => one.key <= key);
      const above = known.find((one) => one.key >= key);
      if (below?.key === key) return { value: below.value, isRead: true };
      const [from, to] = [below ?? above, above ?? below];
      if (from === undefined || to === undefined) return undefined;
      const share = from.key === to.key ? 0 : (key - from.key) / (to.key - from.key);
      return { value: metres(from.value + share * (to.value - from.value)), isRead: false };
    },
  };
}

function shiftsOf(strings: SectionLoops['strings'], { say }: Language): ShiftOffered[] {
  const sizeOf = new Map(strings.map(({ key, diameter }) => [key, diameter]));
  const keys = [...sizeOf.keys()];
  return shiftsThatSaveTies(strings).map(({ fromKey, toKey, tiedBefore, tiedAfter }) => {
    const isUpwards = toKey > fromKey;
    // Upwards, the first note of the thinner size takes the thicker; downwards, the last of the thicker takes the thinner.
    const key = isUpwards ? fromKey : toKey;
    const other = keys[keys.indexOf(fromKey) - 1]!;
    const diameter = sizeOf.get(isUpwards ? other : fromKey)!;
    const saved = tiedBefore - tiedAfter;
    return {
      sentence: say(
        'Move the change at {from} to {to}: {count, plural, one {one tied string} other {# tied strings}} fewer.',
        { from: noteName(fromKey), to: noteName(toKey), count: saved },
      ),
      key,
      diameter,
    };
  });
}
