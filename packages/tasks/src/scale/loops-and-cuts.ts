import {
  type CutLength,
  english,
  inMillimetres,
  type Language,
  type LoopPlan,
  loopPlan,
  type Metres,
  metres,
  noteName,
  type PlanString,
  type ScaleNote,
  shiftsThatSaveTies,
} from '@becket/core';
import { asFoundRecord, type Job, type ScaleNotes } from '@becket/journal';
import { type CutPolicy, STARTING_CUT_POLICY } from '../cut/cut-policy.ts';
import { type NewPinOf, newPinDiameters } from '../cut/new-pins.ts';
import { type StringToCut, wireCutLength } from '../cut/wire-cut-length.ts';
import { type EndLength, type WireEnds, wireEnds } from '../cut/wire-ends.ts';

/** One wire to be cut. */
export interface WireToCut {
  readonly joined: 'looped' | 'tied';
  /** The strings it makes, from the bass side; string 1 is the lowest. */
  readonly strings: readonly { readonly key: number; readonly string: number }[];
  readonly diameter: Metres;
  readonly cut: CutLength;
  /** What it rests on that was not read at these notes; each a few words. */
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
 * Wound strings come made to measure and are not in it. A wire is cut here as it is bought and strung: by the same policy, to
 * the same new pins, and with the same stand-ins for what was not read (`wireEnds`); each wire says which.
 * No loop reaches over a note that the scale does not have: its strings lie in between. `notesLeftOut` names such notes.
 */
export function loopsAndCuts(
  job: Job,
  scale: ScaleNotes,
  policy: CutPolicy = STARTING_CUT_POLICY,
  language: Language = english,
): SectionLoops[] {
  const { notes: found } = asFoundRecord(job);
  const foundOf = new Map(found.map((note) => [note.key, note]));
  const endsAt = wireEnds(found, policy);
  const endsOf = (key: number): WireEnds => endsAt(foundOf.get(key)!);
  const newPinOf = newPinDiameters(job);
  return job.sections.flatMap(({ section, firstKey, lastKey }) => {
    const notes = scale.notes.filter(
      ({ key, string }) => firstKey <= key && key <= lastKey && string.kind === 'plain',
    );
    if (notes.length === 0) return [];
    const strings = notes.flatMap((note) => {
      const diameter = steelOf(note);
      const { back } = endsOf(note.key);
      const backLength = back.from === 'starting figure' ? undefined : back.value;
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
            { noteOf, endsOf, newPinOf, policy },
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
    endsOf,
    newPinOf,
    policy,
  }: {
    readonly noteOf: ReadonlyMap<number, ScaleNote>;
    readonly endsOf: (key: number) => WireEnds;
    readonly newPinOf: NewPinOf;
    readonly policy: CutPolicy;
  },
  language: Language,
): WireToCut {
  const { say } = language;
  const { diameter } = strings[0]!;
  const remarks = new Set<string>();
  const remark = (quantity: string, { value, from }: EndLength, digits: number) => {
    if (from === 'line between its neighbours') remarks.add(say('{quantity} from neighbours', { quantity }));
    if (from === 'starting figure')
      remarks.add(
        say('{quantity} taken as {length} mm', {
          quantity,
          length: language.fixed(inMillimetres(value), digits),
        }),
      );
  };
  const toCut = strings.map(({ key, string }): StringToCut => {
    const ends = endsOf(key);
    remark(say('front length'), ends.front, 0);
    remark(say('back length'), ends.back, 0);
    if (joined === 'looped') remark(say('hitch pin'), ends.hitchPin, 1);
    if (newPinOf({ key, string }) === undefined)
      remark(say('tuning pin'), { value: metres(policy.pinDiameter_m), from: 'starting figure' }, 1);
    return { key, string, ...ends, speaking: { value: noteOf.get(key)!.string.speakingLength } };
  });
  return {
    joined,
    strings: strings.map(({ key, string }) => ({ key, string })),
    diameter,
    cut: wireCutLength(toCut, diameter, policy, newPinOf),
    remarks: [...remarks],
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
