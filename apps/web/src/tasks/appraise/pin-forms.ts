import { english, type Language } from '@becket/core';
import type {
  PinChoice,
  PinLimitsToSet,
  PinRemedyToChoose,
  PinsToLog,
  ReadingToRecord,
  TestPinToRecord,
} from '@becket/tasks';
import type { LengthUnit } from '../../parts/length-text.ts';
import { readTypedNumber } from '../../parts/typed-number.ts';
import { requiredNote, stringNumber, typedLength } from './pins-state.ts';
import { readTypedTorque, type TorqueUnit } from './torque-state.ts';

/* What the forms about tuning pins give, as the tasks take it; what is missing or cannot be read is refused in a sentence. */

/** A pin measured with the micrometer. */
export function pinDiameterOf(
  { note, string, value }: { note: string; string: string; value: string },
  unit: LengthUnit,
  reason: string,
  language: Language = english,
): ReadingToRecord {
  const { say } = language;
  const typed = readTypedNumber(value, language);
  if (typed.is !== 'number')
    throw new RangeError(
      typed.is === 'problem'
        ? typed.sentence
        : say(
            'Cannot keep this pin: its diameter is needed, nothing was found. Type what the micrometer shows.',
          ),
    );
  return {
    quantity: 'pin-diameter',
    place: { key: requiredNote(note, say('this pin'), language), string: stringNumber(string, language) },
    value: typed.value,
    unit: (typed.unit ?? unit) as ReadingToRecord['unit'],
    ...(reason.trim() === '' ? {} : { reason: reason.trim() }),
  };
}

/** The limits of block and plate; what stays empty is not known. */
export function pinLimitsOf(
  form: Readonly<Record<'largest' | 'plateHole' | 'holeDepth' | 'plate', string>>,
  unit: LengthUnit,
  language: Language = english,
): PinLimitsToSet {
  const of = (text: string) => typedLength(text, unit, language.say('this limit'), language);
  const largestDiameter_m = of(form.largest);
  const plateHoleDiameter_m = of(form.plateHole);
  const holeDepth_m = of(form.holeDepth);
  const plateThickness_m = of(form.plate);
  return {
    ...(largestDiameter_m === undefined ? {} : { largestDiameter_m }),
    ...(plateHoleDiameter_m === undefined ? {} : { plateHoleDiameter_m }),
    ...(holeDepth_m === undefined ? {} : { holeDepth_m }),
    ...(plateThickness_m === undefined ? {} : { plateThickness_m }),
  };
}

/** A test pin as the form gives it. */
export function testPinOf(
  form: {
    note: string;
    string: string;
    diameter: string;
    length: string;
    torque: string;
    unit: string;
    feel: string;
    remark: string;
  },
  unit: LengthUnit,
  language: Language = english,
): TestPinToRecord {
  const { say } = language;
  const diameter = typedLength(form.diameter, unit, say('the pin’s diameter'), language);
  if (diameter === undefined)
    throw new RangeError(
      say('Cannot keep this test pin: its diameter is needed, nothing was found. Type it.'),
    );
  const torque = readTypedTorque(form.torque, language);
  const read = torque.unit ?? (form.unit as TorqueUnit);
  if (read === 'kgf·cm')
    throw new RangeError(
      say(
        "Cannot keep this test pin: a torque in in·lbf or N·m is needed, '{found}' was found. Read it in one of those.",
        { found: form.torque.trim() },
      ),
    );
  const length = typedLength(form.length, unit, say('the pin’s length'), language);
  return {
    key: requiredNote(form.note, say('this test pin'), language),
    string: stringNumber(form.string, language),
    pinDiameter_m: diameter,
    ...(length === undefined ? {} : { pinLength_m: length }),
    torque: { value: torque.value, unit: read },
    ...(form.feel === '' ? {} : { feel: form.feel as NonNullable<TestPinToRecord['feel']> }),
    ...remarkOf(form),
  };
}

/** What one pin gets instead of what the rest get. */
export function pinRemedyOf(
  form: Readonly<Record<'note' | 'string' | 'remedy' | 'diameter' | 'remark', string>>,
  unit: LengthUnit,
  language: Language = english,
): PinRemedyToChoose {
  const { say } = language;
  const diameter = typedLength(form.diameter, unit, say('the pin’s diameter'), language);
  return {
    key: requiredNote(form.note, say('this'), language),
    string: stringNumber(form.string, language),
    remedy: form.remedy as PinRemedyToChoose['remedy'],
    ...(diameter === undefined ? {} : { pinDiameter_m: diameter }),
    ...remarkOf(form),
  };
}

/** What is suggested for pins for which nothing was chosen yet. */
export const openSuggestions = ({ suggested, remedies }: Pick<PinChoice, 'suggested' | 'remedies'>) =>
  suggested.filter(
    ({ key, string }) => !remedies.some((one) => one.key === key && one.string === (string ?? 1)),
  );

/** Pins driven from one note to another; to the same where only one is typed. */
export function pinsDrivenOf(
  form: Readonly<Record<'from' | 'to' | 'diameter' | 'length' | 'remark', string>>,
  unit: LengthUnit,
  language: Language = english,
): PinsToLog {
  const { say } = language;
  const firstKey = requiredNote(form.from, say('these pins'), language);
  const lastKey = form.to.trim() === '' ? firstKey : requiredNote(form.to, say('these pins'), language);
  const diameter = typedLength(form.diameter, unit, say('the pin’s diameter'), language);
  const length = typedLength(form.length, unit, say('the pin’s length'), language);
  if (diameter === undefined)
    throw new RangeError(say('Cannot log these pins: their diameter is needed, nothing was found. Type it.'));
  return {
    firstKey,
    lastKey,
    pinDiameter_m: diameter,
    ...(length === undefined ? {} : { pinLength_m: length }),
    ...remarkOf(form),
  };
}

const remarkOf = ({ remark }: { readonly remark: string }): { note?: string } =>
  remark.trim() === '' ? {} : { note: remark.trim() };
