import { english, type Language, type Message, message } from '@becket/core';
import {
  dimensionOfUnit,
  type FactOf,
  type Job,
  type ReadingQuantity,
  type ReadingQuantityName,
  type ReadUnit,
  readingQuantities,
  type StatedAs,
  type Ulid,
  unitsForDimension,
} from '@becket/journal';
import type { InstrumentToDescribe } from '@becket/tasks';
import type { LengthUnit, ShownUnit } from '../../parts/length-text.ts';
import { type Observable, observable } from '../../parts/observable.ts';
import { readTypedNumber } from '../../parts/typed-number.ts';
import { lengthKindOf } from '../../piano/length-kind.ts';
import { unitWords } from './unit-words.ts';

export type Instrument = FactOf<'instrument-described'>;
type Dimension = ReadingQuantity['dimension'];

/** What an instrument can measure, in the words of the screen. */
export const measuredDimensions: readonly { readonly value: Dimension; readonly words: Message }[] = [
  { value: 'length', words: message('lengths and diameters') },
  { value: 'torque', words: message('torque') },
  { value: 'angle', words: message('angles') },
  { value: 'count', words: message('turns, by counting') },
  { value: 'pitch offset', words: message('pitch') },
  { value: 'relative humidity', words: message('relative humidity') },
  { value: 'temperature', words: message('temperature') },
];

/** The ways of stating an uncertainty, in the words of the screen. */
export const statedWords: Record<StatedAs, Message> = {
  limit: message('± limit'),
  'expanded, k = 2': message('certificate, k = 2'),
  standard: message('standard uncertainty'),
};

export interface InstrumentForm {
  readonly name: string;
  readonly measures: Dimension;
  readonly unit: ReadUnit;
  readonly resolution: string;
  readonly usedFor: string;
  readonly stated: string;
  readonly statedAs: StatedAs;
}

/** The form of an instrument as it stands; empty for a new one. */
export function instrumentForm(
  instrument: Instrument | undefined,
  screenUnit: 'mm' | 'in',
  { plain }: Language = english,
): InstrumentForm {
  return {
    name: instrument?.instrument ?? '',
    measures: instrument === undefined ? 'length' : dimensionOfUnit(instrument.unit),
    unit: instrument?.unit ?? screenUnit,
    resolution: instrument === undefined ? '' : plain(instrument.resolution),
    usedFor: instrument?.usedFor ?? '',
    stated: instrument?.stated === undefined ? '' : plain(instrument.stated.value),
    statedAs: instrument?.stated?.as ?? 'limit',
  };
}

/** The instrument that a form describes. Throws when a number cannot be read or is written in another unit. */
export function instrumentOf(form: InstrumentForm, language: Language = english): InstrumentToDescribe {
  const { say } = language;
  const { unit, usedFor } = form;
  const resolution = numberIn(form.resolution, unit, say('the smallest step'), language);
  if (resolution === undefined)
    throw new RangeError(
      say(
        'Cannot keep this instrument: its smallest step is needed, none was found. Type what the last digit of its display, or the finest line of its scale, stands for.',
      ),
    );
  const stated = numberIn(form.stated, unit, say('the uncertainty'), language);
  return {
    instrument: form.name.trim(),
    unit,
    resolution,
    ...(usedFor.trim() === '' ? {} : { usedFor: usedFor.trim() }),
    ...(stated === undefined ? {} : { stated: { value: stated, as: form.statedAs } }),
  };
}

function numberIn(
  text: string,
  unit: ReadUnit,
  what: string,
  language: Language = english,
): number | undefined {
  const { say } = language;
  const typed = readTypedNumber(text, language);
  if (typed.is === 'empty') return undefined;
  if (typed.is === 'problem') throw new RangeError(typed.sentence);
  if (typed.unit !== undefined && typed.unit !== unit)
    throw new RangeError(
      say(
        "Cannot keep this instrument: {what} is needed in {unit}, as it shows, '{found}' was found. Type the number in {unit}.",
        { what, unit, found: text.trim() },
      ),
    );
  return typed.value;
}

/** 'shows mm, step 0.001; ± 0.003 as a limit' */
export function instrumentWords(
  { unit, resolution, stated }: Instrument,
  language: Language = english,
): string {
  const { plain, say } = language;
  return say('shows {unit}, step {step}, {uncertainty}', {
    unit: unitWords(unit, language),
    step: plain(resolution),
    uncertainty:
      stated === undefined
        ? say('uncertainty not stated')
        : stated.as === 'limit'
          ? `± ${plain(stated.value)}`
          : `${plain(stated.value)} (${say(statedWords[stated.as])})`,
  });
}

/** The instruments that can measure a quantity, by name. */
export function instrumentsFor(job: Job, quantity: ReadingQuantityName): Instrument[] {
  const units = unitsForDimension(readingQuantities[quantity].dimension);
  return [...job.instruments.values()]
    .filter(({ unit }) => units.includes(unit))
    .sort((a, b) => (a.instrument < b.instrument ? -1 : 1));
}

/**
 * Which instrument is in hand for which sort of quantity: a micrometer for every diameter, a rule for every other
 * length. It lasts as long as the page, and starts with none.
 */
export type InHand = Readonly<Record<string, string>>;
const inHandByJob = new Map<Ulid, Observable<InHand>>();
export function inHandOf(job: Ulid): Observable<InHand> {
  const known = inHandByJob.get(job) ?? observable<InHand>({});
  inHandByJob.set(job, known);
  return known;
}

/** Quantities that one and the same instrument measures as a rule. */
export function sortOf(quantity: ReadingQuantityName): string {
  const { dimension } = readingQuantities[quantity];
  return dimension === 'length' ? lengthKindOf(quantity) : dimension;
}

/** The instrument in hand for a quantity, while it is described; undefined where none is. */
export function instrumentInHand(
  job: Job,
  inHand: InHand,
  quantity: ReadingQuantityName,
): Instrument | undefined {
  const name = inHand[sortOf(quantity)];
  return instrumentsFor(job, quantity).find(({ instrument }) => instrument === name);
}

/** The unit that a length is typed and shown in: that of the instrument in hand, or else the screen's. */
export function lengthUnitInHand(
  job: Job,
  inHand: InHand,
  quantity: ReadingQuantityName,
  screenUnit: LengthUnit,
): ShownUnit {
  const unit = instrumentInHand(job, inHand, quantity)?.unit;
  return unit !== undefined && isShownUnit(unit) ? unit : screenUnit;
}

const isShownUnit = (unit: ReadUnit): unit is ShownUnit => dimensionOfUnit(unit) === 'length';

/** Takes an instrument in hand for the sort of this quantity; the empty name lays it aside. */
export const takeInHand = (inHand: InHand, quantity: ReadingQuantityName, name: string): InHand => ({
  ...inHand,
  [sortOf(quantity)]: name,
});
