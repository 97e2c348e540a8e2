import {
  inches,
  inchPounds,
  kilogramForceCentimetres,
  metres,
  micrometres,
  millimetres,
  mils,
  newtonMetres,
  noteName,
} from '../units/index.ts';
import { english, type Language, message, sayKnown } from '../words/index.ts';
import { medianOf } from './value-from-readings.ts';

/*
 * Questions about a reading that may be a slip of the hand. None of them blocks: a real piano can be odd, and "yes, it is
 * so" is always an answer.
 */

export type SlipKind =
  | 'impossible'
  | 'unit'
  | 'jump'
  | 'duplicate'
  | 'rising to the treble'
  | 'change inside a unison';

/** The units between which slips happen. */
export type SlipUnit = 'mm' | 'in' | 'mil' | 'um' | 'm' | 'N·m' | 'in·lbf' | 'kgf·cm';

const LENGTH_UNITS = ['mm', 'in', 'mil', 'um', 'm'] as const;
const TORQUE_UNITS = ['N·m', 'in·lbf', 'kgf·cm'] as const;

const toSi: Readonly<Record<SlipUnit, (value: number) => number>> = {
  mm: millimetres,
  in: inches,
  mil: mils,
  um: micrometres,
  m: metres,
  N·m: newtonMetres,
  in·lbf: inchPounds,
  kgf·cm: kilogramForceCentimetres,
};

/** A reading as it was typed. */
export interface TypedReading {
  readonly key: number;
  /** Counted from the bass side; undefined where it speaks for the whole note. */
  readonly string?: number | undefined;
  readonly value: number;
  readonly unit: SlipUnit;
}

/** A reading of the same quantity that stands already, SI. */
export interface ReadingAround {
  readonly key: number;
  readonly string?: number | undefined;
  readonly value_si: number;
}

/** What is usual for a quantity: plain data. */
export interface SlipPolicy {
  /** 'wire diameter' */
  readonly label: string;
  /** How far, as a natural logarithm, a reading may stand from the middle of its neighbours. */
  readonly furthest: number;
  /** Neighbours within this many keys count. */
  readonly reach: number;
  /** As many readings alike in a row, on different notes, are a question; undefined where they never are. */
  readonly alikeInARow: number | undefined;
  /** By how much it may grow to the next note towards the treble, SI; undefined where growing is nothing odd. */
  readonly growth_si: number | undefined;
  /** By how much the strings of a unison may differ, SI; undefined where that is nothing odd. */
  readonly inUnison_si: number | undefined;
}

/**
 * What is usual, by the names of the readings. Common practice, no source.
 *
 * Wire comes in runs, so the same value on the next note is the rule and no question; only a row of six that agree to the
 * micrometre is, since a hand scatters by more than that. Where the strings are made note by note (lengths, windings) the
 * very same value as the note before is a question at once: it is the row that was entered twice.
 */
export const COMMON_SLIP_POLICIES = {
  'wire-diameter': {
    label: message('wire diameter'),
    furthest: 0.08,
    reach: 4,
    alikeInARow: 6,
    growth_si: 15e-6,
    inUnison_si: 15e-6,
  },
  'core-diameter': {
    label: message('core diameter'),
    furthest: 0.12,
    reach: 4,
    alikeInARow: 6,
    growth_si: 15e-6,
    inUnison_si: 15e-6,
  },
  'over-all-diameter': {
    label: message('over-all diameter'),
    furthest: 0.3,
    reach: 4,
    alikeInARow: 2,
    growth_si: 0.1e-3,
    inUnison_si: 0.1e-3,
  },
  'inner-layer-diameter': {
    label: message('diameter over the inner layer'),
    furthest: 0.3,
    reach: 4,
    alikeInARow: 2,
    growth_si: 0.1e-3,
    inUnison_si: 0.1e-3,
  },
  'speaking-length': {
    label: message('speaking length'),
    furthest: 0.3,
    reach: 4,
    alikeInARow: 2,
    growth_si: undefined,
    inUnison_si: 8e-3,
  },
  'winding-length': {
    label: message('winding length'),
    furthest: 0.3,
    reach: 4,
    alikeInARow: 2,
    growth_si: undefined,
    inUnison_si: 8e-3,
  },
  // Pins stand in rows: the strings of one unison differ in front of the bridge, and only a slip makes them twice as long.
  'front-length': {
    label: message('front length'),
    furthest: 0.9,
    reach: 4,
    alikeInARow: undefined,
    growth_si: undefined,
    inUnison_si: undefined,
  },
  'back-length': {
    label: message('back length'),
    furthest: 0.7,
    reach: 4,
    alikeInARow: undefined,
    growth_si: undefined,
    inUnison_si: undefined,
  },
  // Wound by hand: bare ends are alike within a few millimetres, and never ten times as long as those beside them.
  'bare-front': {
    label: message('bare end at the front'),
    furthest: 1,
    reach: 4,
    alikeInARow: undefined,
    growth_si: undefined,
    inUnison_si: 8e-3,
  },
  'bare-back': {
    label: message('bare end at the bridge'),
    furthest: 1,
    reach: 4,
    alikeInARow: undefined,
    growth_si: undefined,
    inUnison_si: 8e-3,
  },
  'loop-to-winding': {
    label: message('loop to winding start'),
    furthest: 0.6,
    reach: 4,
    alikeInARow: undefined,
    growth_si: undefined,
    inUnison_si: 8e-3,
  },
  'pin-length': {
    label: message('pin length'),
    furthest: 0.2,
    reach: 8,
    alikeInARow: undefined,
    growth_si: undefined,
    inUnison_si: undefined,
  },
  'pin-height': {
    label: message('pin height above the plate'),
    furthest: 0.9,
    reach: 8,
    alikeInARow: undefined,
    growth_si: undefined,
    inUnison_si: undefined,
  },
  'hitch-pin-diameter': {
    label: message('hitch pin diameter'),
    furthest: 0.4,
    reach: 8,
    alikeInARow: undefined,
    growth_si: undefined,
    inUnison_si: undefined,
  },
  'pin-diameter': {
    label: message('pin diameter'),
    furthest: 0.05,
    reach: 8,
    alikeInARow: undefined,
    growth_si: undefined,
    inUnison_si: 0.1e-3,
  },
  'pin-torque': {
    label: message('pin torque'),
    furthest: 1.6,
    reach: 8,
    alikeInARow: undefined,
    growth_si: undefined,
    inUnison_si: undefined,
  },
} as const satisfies Readonly<Record<string, SlipPolicy>>;

export interface SlipContext {
  readonly policy: SlipPolicy;
  /** Lowest and highest value that is possible at all, SI. */
  readonly possible: readonly [low: number, high: number];
  /** Standing readings of the quantity, on this note and others, in the order in which they were taken. */
  readonly around: readonly ReadingAround[];
  /**
   * Keys of the notes that belong together with this one: the same section and kind of string. Across a break a jump and a
   * rise are nothing odd. Undefined takes every note.
   */
  readonly sameRun?: { readonly firstKey: number; readonly lastKey: number } | undefined;
}

export interface SlipSuggestion {
  /** As it would be typed, in `unit`. */
  readonly value: number;
  readonly unit: SlipUnit;
  readonly value_si: number;
  /** '0.041 in' */
  readonly text: string;
}

/** One question, in plain words, with the figure. */
export interface SlipQuestion {
  readonly kind: SlipKind;
  readonly sentence: string;
  /** What it may have been meant to say; undefined where no slip explains it. */
  readonly suggestion: SlipSuggestion | undefined;
}

/**
 * Questions about a reading that was just typed; none when it fits.
 *
 * 1. Outside what is possible, or further from the middle of its neighbours than the policy allows: if the same digits with
 *    another unit or decimal point fit well (within half of what is allowed), that is asked, and nothing else; otherwise
 *    the figure is asked as impossible or as a jump.
 * 2. Alike in a row, thicker than its neighbours towards the bass, unlike the other strings of its unison.
 *
 * Neighbours are the standing readings within `reach` keys in the same run; two of them are needed to speak of a jump. A
 * reading that stands for the same string does not count: it is being read again.
 *
 * @param language  of the sentences
 *
 * Source: common practice for every limit; they are plain data in `SlipPolicy`.
 * @example slipQuestions({ key: 40, value: 0.41, unit: 'mm' }, { policy: COMMON_SLIP_POLICIES['wire-diameter'], possible: [0.0006, 0.0018], around: [] })[0].suggestion.text  // = 0.041 in
 */
export function slipQuestions(
  reading: TypedReading,
  context: SlipContext,
  language: Language = english,
): SlipQuestion[] {
  const value_si = toSi[reading.unit](reading.value);
  const others = context.around.filter(
    (other) => !(other.key === reading.key && other.string === reading.string),
  );
  const { sameRun } = context;
  const ofRun = others.filter(
    ({ key }) => sameRun === undefined || (key >= sameRun.firstKey && key <= sameRun.lastKey),
  );
  const middle = middleOfNeighbours(reading.key, ofRun, context.policy);
  const outOfPlace = questionOfSize(reading, { value_si, middle }, context, language);
  // A value in the wrong unit is wrong in every other respect as well: one question is enough.
  if (outOfPlace !== undefined) return [outOfPlace];
  const typed = { reading, value_si, policy: context.policy };
  return [
    duplicateQuestion(typed, ofRun, language),
    risingQuestion(typed, ofRun, language),
    unisonQuestion(typed, others, language),
  ].filter((question) => question !== undefined);
}

function middleOfNeighbours(
  key: number,
  others: readonly ReadingAround[],
  { reach }: SlipPolicy,
): number | undefined {
  const near = others.filter((other) => other.value_si > 0 && Math.abs(other.key - key) <= reach);
  return near.length < 2 ? undefined : medianOf(near.map((other) => other.value_si));
}

function questionOfSize(
  reading: TypedReading,
  { value_si, middle }: { readonly value_si: number; readonly middle: number | undefined },
  { policy, possible }: SlipContext,
  language: Language,
): SlipQuestion | undefined {
  const { label, furthest } = policy;
  const isPossible = (value: number) => value >= possible[0] && value <= possible[1];
  const distance = (value: number) =>
    middle === undefined ? 0 : value > 0 ? Math.abs(Math.log(value / middle)) : Number.POSITIVE_INFINITY;
  const isImpossible = !isPossible(value_si);
  if (!isImpossible && distance(value_si) <= furthest) return undefined;

  const suggestion = otherWaysToType(reading, language)
    .filter(({ value_si: other }) => isPossible(other) && distance(other) <= furthest / 2)
    .sort((a, b) => a.slips - b.slips || distance(a.value_si) - distance(b.value_si))[0];
  const { unit } = reading;
  const told = {
    note: noteName(reading.key),
    typed: typedText(reading, language),
    label: sayKnown(label, language),
    unit,
    suggestion: suggestion?.text ?? 'none',
  };
  return {
    kind: suggestion !== undefined ? 'unit' : isImpossible ? 'impossible' : 'jump',
    sentence: isImpossible
      ? language.say(
          '{note}: {typed} is not possible as {label}: {low} to {high} {unit} is. {suggestion, select, none {Is it so?} other {{suggestion}?}}',
          { ...told, low: inUnit(possible[0], unit, language), high: inUnit(possible[1], unit, language) },
        )
      : language.say(
          '{note}: {typed} is far from the {label} of its neighbours, about {middle} {unit}. {suggestion, select, none {Is it so?} other {{suggestion}?}}',
          { ...told, middle: inUnit(middle!, unit, language) },
        ),
    suggestion:
      suggestion === undefined
        ? undefined
        : {
            value: suggestion.value,
            unit: suggestion.unit,
            value_si: suggestion.value_si,
            text: suggestion.text,
          },
  };
}

/** The same digits with another unit, another decimal point, or both, and how many slips that takes. */
function otherWaysToType(
  { value, unit }: TypedReading,
  language: Language,
): (SlipSuggestion & { readonly slips: number })[] {
  const isLength = (LENGTH_UNITS as readonly SlipUnit[]).includes(unit);
  const units: readonly SlipUnit[] = isLength ? LENGTH_UNITS : TORQUE_UNITS;
  return units.flatMap((otherUnit) =>
    [0, -1, 1, -2, 2, -3, 3].flatMap((places) => {
      if (otherUnit === unit && places === 0) return [];
      const other = Number((value * 10 ** places).toPrecision(12));
      return [
        {
          value: other,
          unit: otherUnit,
          value_si: toSi[otherUnit](other),
          text: `${figure(other, language)} ${otherUnit}`,
          // Thousandths said as inches, or millimetres as metres, are one slip of three places; a slip of unit comes first.
          slips: (otherUnit === unit ? 0 : 1) + (places === 0 ? 0 : Math.abs(places) === 1 ? 1.1 : 1.5),
        },
      ];
    }),
  );
}

/** A reading that was typed and is in its place, and what is usual for it. */
interface Typed {
  readonly reading: TypedReading;
  readonly value_si: number;
  readonly policy: SlipPolicy;
}

function duplicateQuestion(
  { reading, value_si, policy }: Typed,
  others: readonly ReadingAround[],
  language: Language,
): SlipQuestion | undefined {
  const { key, string } = reading;
  const { alikeInARow } = policy;
  if (alikeInARow === undefined) return undefined;
  // The last reading of each note, in the order in which the notes were read, back from this one.
  const notes = new Map<number, number>();
  for (const other of others) {
    if (other.key === key || (string !== undefined && other.string !== undefined && other.string !== string))
      continue;
    notes.delete(other.key);
    notes.set(other.key, other.value_si);
  }
  const alike: number[] = [];
  for (const [otherKey, other] of [...notes].reverse()) {
    if (Math.abs(other - value_si) > 1e-9 * Math.abs(value_si)) break;
    alike.push(otherKey);
  }
  if (alike.length + 1 < alikeInARow) return undefined;
  const told = toldOf(reading, policy, language);
  return {
    kind: 'duplicate',
    sentence:
      alikeInARow === 2
        ? language.say(
            '{note}: the {label} of {typed} is exactly that of {other}. Is it so, or was it entered twice?',
            { ...told, other: noteName(alike[0]!) },
          )
        : language.say(
            '{note}: the {label} of {typed} is exactly that of the last {count} notes. Is it so, or was it entered twice?',
            { ...told, count: alike.length },
          ),
    suggestion: undefined,
  };
}

/** Notes on either side that a rise is judged by. */
const SIDE_NOTES = 3;

function risingQuestion(
  { reading, value_si, policy }: Typed,
  others: readonly ReadingAround[],
  language: Language,
): SlipQuestion | undefined {
  const { key, unit } = reading;
  const { growth_si, reach } = policy;
  if (growth_si === undefined) return undefined;
  const side = (direction: -1 | 1): number | undefined => {
    const near = others
      .filter((other) => (other.key - key) * direction > 0 && Math.abs(other.key - key) <= reach)
      .sort((a, b) => Math.abs(a.key - key) - Math.abs(b.key - key))
      .slice(0, SIDE_NOTES);
    return near.length === 0 ? undefined : medianOf(near.map((other) => other.value_si));
  };
  const bass = side(-1);
  const treble = side(1);
  const about = (beside_si: number) => ({
    ...toldOf(reading, policy, language),
    beside: `${inUnit(beside_si, unit, language)} ${unit}`,
  });
  if (bass !== undefined && value_si - bass > growth_si) {
    return {
      kind: 'rising to the treble',
      sentence: language.say(
        '{note}: the {label} of {typed} is more than that towards the bass, about {beside}; it does not usually grow towards the treble. Is it so?',
        about(bass),
      ),
      suggestion: undefined,
    };
  }
  if (treble !== undefined && treble - value_si > growth_si) {
    return {
      kind: 'rising to the treble',
      sentence: language.say(
        '{note}: the {label} of {typed} is less than that towards the treble, about {beside}; it does not usually grow towards the treble. Is it so?',
        about(treble),
      ),
      suggestion: undefined,
    };
  }
  return undefined;
}

function unisonQuestion(
  { reading, value_si, policy }: Typed,
  others: readonly ReadingAround[],
  language: Language,
): SlipQuestion | undefined {
  const { key, string, unit } = reading;
  const { inUnison_si } = policy;
  if (inUnison_si === undefined) return undefined;
  const unlike = others.find(
    (other) =>
      other.key === key && other.string !== string && Math.abs(other.value_si - value_si) > inUnison_si,
  );
  if (unlike === undefined) return undefined;
  return {
    kind: 'change inside a unison',
    sentence: language.say(
      '{note}: the {label} of {typed} differs from {string, select, unknown {the reading of the note} other {string {string} of the same unison}}, {unlike}. Is it so?',
      {
        ...toldOf(reading, policy, language),
        string: unlike.string ?? 'unknown',
        unlike: `${inUnit(unlike.value_si, unit, language)} ${unit}`,
      },
    ),
    suggestion: undefined,
  };
}

/** What every question begins with. */
const toldOf = (reading: TypedReading, { label }: SlipPolicy, language: Language) => ({
  note: noteName(reading.key),
  label: sayKnown(label, language),
  typed: typedText(reading, language),
});

const typedText = ({ value, unit }: TypedReading, language: Language): string =>
  `${figure(value, language)} ${unit}`;

/** Four digits are what such a question needs. */
const inUnit = (value_si: number, unit: SlipUnit, language: Language): string =>
  figure(value_si / toSi[unit](1), language, 4);

const figure = (value: number, { plain }: Language, digits = 6): string =>
  plain(Number(value.toPrecision(digits)));
