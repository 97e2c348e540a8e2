import { english, inInchPounds, type Language, newtonMetres, noteName, parseNote } from '@becket/core';
import { type Job, type pinFeels, type StandingReading, siFromRead } from '@becket/journal';
import type { ReadingToRecord } from '@becket/tasks';
import { readTypedNumber } from '../../parts/typed-number.ts';

export const torqueUnits = ['in·lbf', 'N·m', 'kgf·cm'] as const;
export type TorqueUnit = (typeof torqueUnits)[number];

/** Which way the pin was turned, or that no string pulled on it. The three are never pooled. */
export const turnings = ['sharp', 'flat', 'no string pull'] as const;
export type Turning = (typeof turnings)[number];

export interface TorqueForm {
  readonly note: string;
  readonly string: 1 | 2 | 3;
  readonly value: string;
  readonly unit: TorqueUnit;
  readonly turning: Turning;
  /** Each pin is read sharp and then flat before the next: that gives its grip whatever its string pulls. */
  readonly isBothWays: boolean;
  readonly feel: (typeof pinFeels)[number] | '';
  /** How many notes to go on by after each reading. */
  readonly every: number;
  readonly stage: 'as found' | 'as strung';
}

export const newTorqueForm = (firstKey: number): TorqueForm => ({
  note: noteName(firstKey),
  string: 1,
  value: '',
  unit: 'in·lbf',
  turning: 'sharp',
  isBothWays: false,
  feel: '',
  every: 4,
  stage: 'as found',
});

/** The reading a form describes. Throws, with a sentence, when something needed is missing. */
export function torqueReadingOf(
  form: TorqueForm,
  reason: string,
  language: Language = english,
): ReadingToRecord {
  const { say } = language;
  const typed = readTypedTorque(form.value, language);
  if (form.note.trim() === '')
    throw new RangeError(
      say('Cannot keep this torque: the note of the pin is needed, none was found. Type it.'),
    );
  const words = reason.trim();
  return {
    quantity: 'pin-torque',
    place: { key: parseNote(form.note.trim(), undefined, language), string: form.string },
    value: typed.value,
    unit: typed.unit ?? form.unit,
    stage: form.stage,
    condition:
      form.turning === 'no string pull' ? { strings: 'let down' } : { strings: 'on', turning: form.turning },
    ...(form.feel === '' ? {} : { feel: form.feel }),
    ...(words === '' ? {} : { reason: words }),
  };
}

/** '118', '118 in·lbf', '13,5 Nm': what a hand or a wrench that types puts into the field. */
export function readTypedTorque(
  text: string,
  language: Language = english,
): { value: number; unit: TorqueUnit | undefined } {
  const { say } = language;
  const parts = /^(.*?\d[.,]?)\s*(n[·.* ]?m|in[·.* ]?lbf?|lbf?[·.* ]?in|kgf?[·.* ]?cm)?$/i.exec(text.trim());
  const number = readTypedNumber(parts?.[1] ?? text, language);
  if (number.is === 'empty')
    throw new RangeError(
      say('Cannot keep this torque: a value is needed, nothing was found. Type what the wrench shows.'),
    );
  if (number.is === 'problem' || number.unit !== undefined)
    throw new RangeError(
      say("Cannot read '{found}' as a torque: a number such as 118 or 13.5 N·m is needed. Type it again.", {
        found: text.trim(),
      }),
    );
  const word = parts?.[2]?.toLowerCase();
  const unit =
    word === undefined
      ? undefined
      : word.startsWith('n')
        ? 'N·m'
        : word.startsWith('k')
          ? 'kgf·cm'
          : 'in·lbf';
  return { value: number.value, unit };
}

/** What is read after this: the same pin the other way, or the pin so many notes on. Undefined at the end of the compass. */
export function nextPin(
  job: Job,
  { note, every, string, isBothWays, turning }: TorqueForm,
  language: Language = english,
): Pick<TorqueForm, 'note' | 'string' | 'turning'> | undefined {
  if (isBothWays && turning === 'sharp') return { note, string, turning: 'flat' };
  const key = parseNote(note.trim(), undefined, language);
  const last = job.piano?.lastKey ?? 88;
  const next = key + every;
  if (next > last) return undefined;
  const strings = job.unisons.get(next)?.strings ?? 3;
  return {
    note: noteName(next),
    string: Math.min(string, strings) as TorqueForm['string'],
    turning: isBothWays ? 'sharp' : turning,
  };
}

/** '13.3 N·m = 118 in·lbf' */
export function torqueText(torque_n_m: number, { fixed }: Language = english): string {
  const torque = newtonMetres(torque_n_m);
  return `${fixed(torque, 1)} N·m = ${fixed(inInchPounds(torque), 0)} in·lbf`;
}

/** One torque alone, in the unit that goes with the shop's lengths. */
export function torqueIn(torque_n_m: number, unit: 'mm' | 'in', { fixed }: Language = english): string {
  return unit === 'mm'
    ? `${fixed(torque_n_m, 1)} N·m`
    : `${fixed(inInchPounds(newtonMetres(torque_n_m)), 0)} in·lbf`;
}

/** How a reading was taken, in words. */
export function conditionWords({ condition }: StandingReading, { say }: Language = english): string {
  if (condition?.strings === 'on')
    return condition.turning === undefined
      ? say('direction not said')
      : say('turned {turning, select, sharp {sharp} other {flat}}', { turning: condition.turning });
  if (condition?.strings === 'let down' || condition?.strings === 'off') return say('no string pull');
  return say('string state not said');
}

/** True when a value can only be one read in the other unit, or a slip of the point. */
export function torqueQuestion(
  { value, unit }: { value: number; unit: string },
  { plain, say }: Language = english,
): string | undefined {
  const torque = siFromRead(value, unit as TorqueUnit);
  if (torque < 0.8)
    return say(
      '{torque} {unit} is less than a pin takes that a finger can turn. Was it read in another unit?',
      { torque: plain(value), unit },
    );
  if (torque > 34)
    return say('{torque} {unit} would twist most pins off. Was it read in in·lbf, or is a point missing?', {
      torque: plain(value),
      unit,
    });
  return undefined;
}
