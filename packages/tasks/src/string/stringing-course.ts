import { type CutLength, english, type Language, type Metres, message, noteName } from '@becket/core';
import { type Job, type Stringing, type StringPlace, stringName, type WireOn } from '@becket/journal';
import type { StringingFigures, StringingString } from '@becket/papers';
import { newPinDiameters } from '../cut/new-pins.ts';
import type { StringToGoOn } from '../order/strings-to-go-on.ts';

/** One wire of the plan, and how it stands. */
export interface WireToString {
  /** '40/1 40/2': the strings it serves. */
  readonly id: string;
  readonly strings: readonly StringingString[];
  readonly section: string | undefined;
  readonly joined: 'looped' | 'tied' | 'wound';
  /** Undefined for a wound string, which comes made up. */
  readonly diameter: Metres | undefined;
  /** 'US 15½, metric 0.900'; empty where it is no listed size, or wound. */
  readonly size: string;
  readonly cut: CutLength | undefined;
  /** Diameter of its new pin, string by string; undefined where it is not chosen. */
  readonly pins: readonly (Metres | undefined)[];
  /** What its length rests on that was not read here; each a few words. */
  readonly remarks: readonly string[];
  /** 'in part': one of its strings carries a wire that the plan does not have. */
  readonly is: 'to do' | 'on' | 'in part';
  /** True when a wire of it came off and it has to be strung again. */
  readonly isAgain: boolean;
  /** Why a bass string may not go on yet; undefined when it may. */
  readonly held: string | undefined;
  readonly wire: WireOn | undefined;
  /** True when another size went on than the plan has now. */
  readonly isOtherSize: boolean;
}

export interface SectionStrung {
  readonly section: string | undefined;
  readonly wires: number;
  readonly on: number;
}

/** How the stringing of a piano goes: its plan, wire by wire, and what is on. */
export interface StringingCourse {
  /** Which scale is strung, in words. */
  readonly scale: string;
  /** Section by section, bass to treble. */
  readonly wires: readonly WireToString[];
  readonly sections: readonly SectionStrung[];
  readonly on: number;
  /** Strings that carry a wire and are not in the plan. */
  readonly strays: readonly StringPlace[];
}

interface Parts {
  readonly figures: StringingFigures;
  readonly stringing: Stringing;
  /** How each ordered bass string stands. */
  readonly bass: readonly StringToGoOn[];
}

/** A difference of diameter below this is rounding [m]. */
const sameDiameter_m = 1e-6;

/** The plan of a piano beside what is on it. */
export function stringingCourse(
  job: Job,
  { figures, stringing, bass }: Parts,
  language: Language = english,
): StringingCourse {
  const pinOf = newPinDiameters(job);
  const bassOf = new Map(bass.map((one) => [stringName(one), one]));
  type Planned = Pick<WireToString, 'strings' | 'joined' | 'diameter' | 'size' | 'cut' | 'remarks'>;
  const standing = (planned: Planned): WireToString => {
    const names = planned.strings.map(stringName);
    const wires = names.map((name) => stringing.wires.get(name));
    const [wire] = wires;
    const isOn = wire !== undefined && wires.every((one) => one === wire);
    const goingOn = planned.joined === 'wound' ? bassOf.get(names[0]!) : undefined;
    return {
      ...planned,
      id: names.join(' '),
      section: planned.strings[0]!.section,
      pins: planned.strings.map(pinOf),
      is: isOn ? 'on' : wires.every((one) => one === undefined) ? 'to do' : 'in part',
      isAgain: names.some((name) => stringing.again.has(name)),
      held: isOn || goingOn === undefined ? undefined : heldBack(goingOn, language),
      wire: isOn ? wire : undefined,
      isOtherSize:
        isOn &&
        planned.diameter !== undefined &&
        wire.diameter_m !== undefined &&
        Math.abs(wire.diameter_m - planned.diameter) > sameDiameter_m,
    };
  };
  const sorted = [
    ...figures.wires.map((wire) => standing(wire)),
    ...figures.wound.map((string) =>
      standing({
        strings: [string],
        joined: 'wound',
        diameter: undefined,
        size: '',
        cut: undefined,
        remarks: [],
      }),
    ),
  ].sort(byPlace);
  const names = [...new Set(sorted.map(({ section }) => section))];
  const ordered = names.flatMap((name) => sorted.filter(({ section }) => section === name));
  const planned = new Set(sorted.flatMap(({ strings }) => strings.map(stringName)));
  return {
    scale: figures.scale,
    wires: ordered,
    sections: names.map((section) => {
      const own = ordered.filter((wire) => wire.section === section);
      return { section, wires: own.length, on: own.filter(({ is }) => is === 'on').length };
    }),
    on: ordered.filter(({ is }) => is === 'on').length,
    strays: [...new Set(stringing.wires.values())]
      .flatMap(({ strings }) => strings)
      .filter((string) => !planned.has(stringName(string))),
  };
}

/** In which order the wires go on. Common practice, no source: shops differ. */
export const stringingOrders = {
  'bass first': message('section by section, from the bass'),
  'treble first': message('section by section, from the treble'),
  even: message('the section with the least on it first'),
} as const;
export type StringingOrder = keyof typeof stringingOrders;

/**
 * The wire that goes on next; undefined when nothing is left that may.
 *
 * It goes on from the wire that went on last, and comes back for what was left out. A bass string that is held back is passed
 * over. In the even order it is the next of the section of which the smallest share is on.
 */
export function nextWire(
  { wires, sections }: Pick<StringingCourse, 'wires' | 'sections'>,
  order: StringingOrder,
  last: string | undefined,
): WireToString | undefined {
  const isOpen = ({ is, held }: WireToString) => is === 'to do' && held === undefined;
  if (order === 'even') {
    const open = sections.filter(({ section }) =>
      wires.some((wire) => wire.section === section && isOpen(wire)),
    );
    const least = open.toSorted((a, b) => a.on / a.wires - b.on / b.wires)[0];
    return least && wires.find((wire) => wire.section === least.section && isOpen(wire));
  }
  // The last section first, each from its treble end.
  const row = order === 'bass first' ? wires : wires.toReversed();
  const from = row.findIndex(({ id }) => id === last) + 1;
  return row.slice(from).find(isOpen) ?? row.find(isOpen);
}

const byPlace = (a: WireToString, b: WireToString): number =>
  a.strings[0]!.key - b.strings[0]!.key || a.strings[0]!.string - b.strings[0]!.string;

/** Why a bass string may not go on; undefined when it may. */
export function heldBack({ is, key, string }: StringToGoOn, { say }: Language = english): string | undefined {
  const name = `${noteName(key)} ${string}`;
  switch (is) {
    case 'differs':
      return say('{name} differs from its order. Send it back, or take it by name under Order › Orders.', {
        name,
      });
    case 'not measured':
      return say('{name} is here but not measured. Measure it under Order › Orders first.', { name });
    case 'not here':
      return say('{name} has not come yet.', { name });
    default:
      return undefined;
  }
}
