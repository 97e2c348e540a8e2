import {
  A228_MINIMUM,
  analyseNote,
  COMMON_SHOP_POLICY,
  grouped,
  type Language,
  message,
  metres,
  noteName,
  type ScaleNote,
  type SentenceUnit,
  sayKnown,
  type WoundReadings,
  woundContradictions,
} from '@becket/core';
import type { AsFoundNote } from './as-found-record.ts';
import { type BassAllowances, type BassQuantity, type BassString, lengthIn } from './bass-string.ts';
import { woundReadingsOf } from './wound-readings.ts';

/** One check of the order. */
export interface BassCheck {
  /** 'E2/missing/core-diameter': what a signature names. */
  readonly id: string;
  readonly keys: readonly number[];
  readonly sentence: string;
  /** The sentence in English and millimetres: what a signature is kept with, so that it holds in whichever language and unit it is read. */
  readonly signs: string;
  /** Who answers for it and why; undefined while nobody does. */
  readonly signed: { readonly name: string; readonly reason: string; readonly at: string } | undefined;
}

/** Without these no string can be made. */
const wanted = [
  ['core-diameter', message('core')],
  ['inner-layer-diameter', message('diameter over the inner layer')],
  ['over-all-diameter', message('over-all diameter')],
  ['speaking-length', message('speaking length')],
  ['bare-front', message('bare end at the front')],
  ['bare-back', message('bare end at the bridge')],
  ['winding-length', message('winding length')],
  ['loop-to-winding', message('loop to winding start')],
  ['hitch-pin-diameter', message('hitch pin diameter')],
] as const satisfies readonly (readonly [BassQuantity, string])[];

export type Unsigned = Omit<BassCheck, 'signed' | 'signs'>;

/** Every check of these strings that does not pass, bass to treble. */
export function checksOf(
  notes: readonly AsFoundNote[],
  strings: readonly BassString[],
  scaleNotes: ReadonlyMap<number, ScaleNote>,
  { lengthTolerance_m, unisonTolerance_m }: BassAllowances,
  lengthUnit: SentenceUnit,
  language: Language,
): Unsigned[] {
  const { say } = language;
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
              sentence: say(
                '{note}: the {name} is {why, select, unknown {unknown} other {not read}}. Read it, or let the maker decide by name.',
                {
                  note: note.note,
                  name: say(name),
                  why: (absent.stated[quantity] as { why: string }).why,
                },
              ),
            },
          ];
    });
    const count =
      note.strings === undefined
        ? [
            {
              id: `${note.note}/missing/strings`,
              keys: [note.key],
              sentence: say('{note}: nobody has said how many strings it has. Describe its stringing.', {
                note: note.note,
              }),
            },
          ]
        : [];
    const loop = own.some(({ loopStyle }) => loopStyle === 'unknown')
      ? [
          {
            id: `${note.note}/missing/loop-style`,
            keys: [note.key],
            sentence: say(
              '{note}: the loop style is not stated. Say it under what was seen, or let the maker decide by name.',
              { note: note.note },
            ),
          },
        ]
      : [];
    return [...count, ...lacking, ...loop];
  });
  const contradictions = [1, 2].flatMap((layers) =>
    [
      ...grouped(
        strings.filter((one) => one.layers === layers && one.string === 1),
        ({ section }) => section,
      ).values(),
    ].flatMap((own) =>
      woundContradictions(
        own.map(woundReadings),
        { lengthTolerance: metres(lengthTolerance_m), lengthUnit },
        language,
      ).map(
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
    ...unisonDifferences(strings, unisonTolerance_m, language),
    ...breakShares(strings, scaleNotes, language),
  ].sort((a, b) => a.keys[0]! - b.keys[0]!);
}

function woundReadings({ key, stated }: BassString): WoundReadings {
  return woundReadingsOf(key, (quantity) => {
    const value = lengthIn(stated[quantity]);
    return value === undefined ? undefined : metres(value);
  });
}

function unisonDifferences(
  strings: readonly BassString[],
  tolerance_m: number,
  { say, fixed }: Language,
): Unsigned[] {
  return strings.flatMap((one): Unsigned[] => {
    if (one.string === 1) return [];
    const first = strings.find(({ key, string }) => key === one.key && string === 1);
    return (['core-diameter', 'over-all-diameter'] as const).flatMap((quantity) => {
      const [a, b] = [first?.stated[quantity], one.stated[quantity]];
      if (a?.is !== 'length' || b.is !== 'length') return [];
      if (Math.abs(a.value - b.value) <= tolerance_m) return [];
      return [
        {
          id: `${one.note}/unison/${one.string}/${quantity}`,
          keys: [one.key],
          sentence: say(
            '{note}: the {name} of string 1 reads {from} mm and that of string {string} {to} mm. The strings of one note are alike: measure both again.',
            {
              note: one.note,
              name: say(quantity === 'core-diameter' ? 'core' : 'over-all diameter'),
              from: fixed(a.value * 1000, 3),
              string: one.string,
              to: fixed(b.value * 1000, 3),
            },
          ),
        },
      ];
    });
  });
}

function breakShares(
  strings: readonly BassString[],
  scaleNotes: ReadonlyMap<number, ScaleNote>,
  language: Language,
): Unsigned[] {
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
        sentence: language.say(
          '{note}: at pitch the core bears {share} % of its break load by {table}, above {highest} % (common practice). Look at its core and its winding again.',
          {
            note,
            share: language.fixed(100 * breakShare, 0),
            table: sayKnown(A228_MINIMUM.name, language),
            highest: language.fixed(100 * highest, 0),
          },
        ),
      },
    ];
  });
}
