import {
  currencyDigits,
  english,
  type Language,
  type MinorUnits,
  minorUnits,
  parseMoney,
  plainMoneyText,
} from '@becket/core';
import type { EstimateLine, Job } from '@becket/journal';
import type { EstimateDraft, EstimateRates, EstimateToMake } from '@becket/tasks';
import { withMark } from '../../parts/typed-number.ts';

/** What the shop charges, as it stands in the fields. */
export interface RatesForm {
  readonly currency: string;
  readonly hourlyRate: string;
  readonly labourTax: string;
  readonly materialsTax: string;
  readonly pricesIncludeTax: boolean;
}

/** One line of the estimate as it stands in the fields. A line that is left out stays in sight. */
export interface LineForm {
  readonly id: string;
  readonly group: EstimateLine['group'];
  readonly what: string;
  readonly by: 'time' | 'quantity';
  /** Hours for time, a number for a quantity. */
  readonly amount: string;
  readonly unit: string;
  /** Price of a unit; for time it is the hourly rate of the shop. */
  readonly price: string;
  readonly taxPercent: string;
  readonly ifFound: string;
  readonly isLeftOut: boolean;
  /** Where the quantity comes from. */
  readonly because: string;
}

export const startingRates: RatesForm = {
  currency: 'EUR',
  hourlyRate: '',
  labourTax: '',
  materialsTax: '',
  pricesIncludeTax: false,
};

const percent = (basisPoints: number, { plain }: Language): string => plain(basisPoints / 100);
const moneyField = (amount: number, currency: string, language: Language): string =>
  withMark(plainMoneyText(minorUnits(amount), currency), language);

/** A share typed in per cent, in hundredths of a per cent. An empty field is not 0 %: it has to be said. */
export function basisPointsOf(typed: string, what: string, { say }: Language = english): number {
  const text = typed.trim().replace(',', '.').replace(/\s*%$/, '');
  const value = /^\d{1,3}(\.\d{1,2})?$/.test(text) ? Math.round(Number(text) * 100) : Number.NaN;
  if (!(value >= 0 && value <= 10_000))
    throw new RangeError(
      say(
        "Cannot work out the estimate: {what} from 0 to 100 % with at most two digits after the point is needed, '{found}' was found. Type it, and 0 where there is none.",
        { what, found: typed.trim() },
      ),
    );
  return value;
}

/** Hours as '2', '2.5', '2,5' or '2:30', in whole minutes. */
export function minutesOf(typed: string, { say }: Language = english): number {
  const text = typed.trim().replace(',', '.');
  const clock = /^(\d{1,4}):([0-5]\d)$/.exec(text);
  if (clock !== null) return Number(clock[1]) * 60 + Number(clock[2]);
  const minutes = /^\d{1,4}(\.\d+)?$/.test(text) ? Math.round(Number(text) * 60) : Number.NaN;
  if (!Number.isFinite(minutes))
    throw new RangeError(
      say("Cannot read '{found}' as hours: a time such as 2.5 or 2:30 is needed. Type it again.", {
        found: typed.trim(),
      }),
    );
  return minutes;
}

/** '2.5'; '2:20' where the time is no whole number of hundredths of an hour. */
export function hoursText(minutes: number, { plain }: Language = english): string {
  const hundredths = (minutes * 100) / 60;
  if (Number.isInteger(hundredths)) return plain(hundredths / 100);
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`;
}

function thousandthsOf(typed: string, what: string, { say }: Language = english): number {
  const text = typed.trim().replace(',', '.');
  const value = /^\d{1,6}(\.\d{1,3})?$/.test(text) ? Math.round(Number(text) * 1000) : Number.NaN;
  if (!Number.isFinite(value))
    throw new RangeError(
      say(
        "Cannot work out ‘{what}’: a quantity with at most three digits after the point is needed, '{found}' was found. Type it again.",
        { what, found: typed.trim() },
      ),
    );
  return value;
}

/** The shop's rates as the tasks take them; what is not said stays undefined. */
export function ratesOf(
  form: RatesForm,
  prices: ReadonlyMap<string, string> = new Map(),
  language: Language = english,
): EstimateRates {
  const { say } = language;
  const currency = form.currency.trim().toUpperCase();
  currencyDigits(currency, language);
  const money = (typed: string): MinorUnits | undefined =>
    typed.trim() === '' ? undefined : parseMoney(typed, currency, undefined, language);
  return {
    currency,
    pricesIncludeTax: form.pricesIncludeTax,
    hourlyRate: money(form.hourlyRate),
    labourTax_basisPoints: basisPointsOf(form.labourTax, say('the tax on labour'), language),
    materialsTax_basisPoints: basisPointsOf(form.materialsTax, say('the tax on materials'), language),
    unitPrices: Object.fromEntries([...prices].map(([id, typed]) => [id, money(typed)])),
  };
}

/** The lines of a first draft, priced or not, in their order. */
export function linesOfDraft(draft: EstimateDraft, language: Language = english): LineForm[] {
  const { currency } = draft;
  const firm = [...draft.lines, ...draft.notPriced];
  const groups: EstimateLine['group'][] = ['labour', 'materials', 'other'];
  return groups
    .flatMap((group) => [...firm.filter((line) => line.group === group && line.ifFound === undefined)])
    .concat(firm.filter(({ ifFound }) => ifFound !== undefined))
    .map(({ id, group, what, amount, taxRate_basisPoints, ifFound }) => ({
      id,
      group,
      what,
      by: amount.by,
      amount:
        amount.by === 'time'
          ? amount.minutes === undefined
            ? ''
            : hoursText(amount.minutes, language)
          : amount.quantity_thousandths === undefined
            ? ''
            : language.plain(amount.quantity_thousandths / 1000),
      unit: amount.by === 'time' ? 'hours' : amount.unit,
      price:
        'unitPriceMinorUnits' in amount ? moneyField(amount.unitPriceMinorUnits, currency, language) : '',
      taxPercent: percent(taxRate_basisPoints, language),
      ifFound: ifFound ?? '',
      isLeftOut: false,
      because: draft.because.get(id) ?? '',
    }));
}

/** The lines of a version that was made, to start the next one from. */
export function linesOfEstimate(
  estimate: Job['estimates'][number],
  language: Language = english,
): LineForm[] {
  const { say, plain } = language;
  const { currency } = estimate;
  return estimate.lines.map(({ id, group, what, amount, taxRate_basisPoints, ifFound }) => ({
    id,
    group,
    what,
    by: amount.by,
    amount:
      amount.by === 'time' ? hoursText(amount.minutes, language) : plain(amount.quantity_thousandths / 1000),
    unit: amount.by === 'time' ? 'hours' : amount.unit,
    price: moneyField(
      amount.by === 'time' ? amount.hourlyRateMinorUnits : amount.unitPriceMinorUnits,
      currency,
      language,
    ),
    taxPercent: percent(taxRate_basisPoints, language),
    ifFound: ifFound ?? '',
    isLeftOut: false,
    because: say('as in version {version}', { version: estimate.version }),
  }));
}

/** The shop's rates as a version had them. */
export function ratesOfEstimate(
  { currency, pricesIncludeTax, lines }: Job['estimates'][number],
  language: Language = english,
): RatesForm {
  const labour = lines.find(({ amount }) => amount.by === 'time');
  const materials = lines.find(({ group }) => group === 'materials');
  return {
    currency,
    pricesIncludeTax,
    hourlyRate:
      labour?.amount.by === 'time' ? moneyField(labour.amount.hourlyRateMinorUnits, currency, language) : '',
    labourTax: labour === undefined ? '' : percent(labour.taxRate_basisPoints, language),
    materialsTax: materials === undefined ? '' : percent(materials.taxRate_basisPoints, language),
  };
}

export interface EstimateHead {
  readonly validUntil: string;
  readonly workingDays: string;
  readonly note: string;
}

/** The estimate that the fields describe, or what each line still needs, by its id. */
export function estimateOf(
  lines: readonly LineForm[],
  rates: RatesForm,
  head: EstimateHead,
  language: Language = english,
): { readonly estimate: EstimateToMake | undefined; readonly problems: ReadonlyMap<string, string> } {
  const problems = new Map<string, string>();
  const currency = rates.currency.trim().toUpperCase();
  const made: EstimateLine[] = [];
  for (const line of lines) {
    if (line.isLeftOut) continue;
    try {
      made.push(lineOf(line, rates, currency, language));
    } catch (error) {
      problems.set(line.id, error instanceof Error ? error.message : String(error));
    }
  }
  if (problems.size > 0 || made.length === 0) return { estimate: undefined, problems };
  const days = head.workingDays.trim().replace(',', '.');
  return {
    estimate: {
      currency,
      pricesIncludeTax: rates.pricesIncludeTax,
      lines: made,
      ...(head.validUntil === '' ? {} : { validUntil: head.validUntil }),
      ...(days === '' || !Number.isFinite(Number(days)) ? {} : { workingDays: Number(days) }),
      ...(head.note.trim() === '' ? {} : { note: head.note.trim() }),
    },
    problems,
  };
}

function lineOf(
  line: LineForm,
  rates: RatesForm,
  currency: string,
  language: Language = english,
): EstimateLine {
  const { say } = language;
  const { id, group, by } = line;
  const what = line.what.trim();
  if (what === '') throw new RangeError(say('Say what this line is for, or leave it out.'));
  const needed = (typed: string, name: string): string => {
    if (typed.trim() === '')
      throw new RangeError(
        say('Not priced yet: {name} is needed. Type it, or leave the line out on purpose.', { name }),
      );
    return typed;
  };
  const common = {
    id,
    group,
    what,
    taxRate_basisPoints: basisPointsOf(line.taxPercent, say('the tax on ‘{what}’', { what }), language),
    ...(line.ifFound.trim() === '' ? {} : { ifFound: line.ifFound.trim() }),
  };
  return by === 'time'
    ? {
        ...common,
        amount: {
          by,
          minutes: minutesOf(needed(line.amount, say('the time')), language),
          hourlyRateMinorUnits: parseMoney(
            line.price.trim() === '' ? needed(rates.hourlyRate, say('the hourly rate')) : line.price,
            currency,
            undefined,
            language,
          ),
        },
      }
    : {
        ...common,
        amount: {
          by,
          quantity_thousandths: thousandthsOf(needed(line.amount, say('the quantity')), what, language),
          unit: line.unit.trim() || say('piece'),
          unitPriceMinorUnits: parseMoney(
            needed(line.price, say('the price of one')),
            currency,
            undefined,
            language,
          ),
        },
      };
}

/** An amount as this browser's language writes it. */
export const moneyWords = (amount: number, currency: string, language: Language = english): string =>
  language.money(minorUnits(amount), currency);

const keptAs = 'becket-rates';

/** What this device last charged, so that it need not be typed for every job; nothing of it is part of a job. */
export function keptRates(storage: Pick<Storage, 'getItem'> | undefined, currency = 'EUR'): RatesForm {
  const start = { ...startingRates, currency };
  try {
    const kept = JSON.parse(storage?.getItem(keptAs) ?? '{}') as Partial<Record<keyof RatesForm, unknown>>;
    const words = (name: 'currency' | 'hourlyRate' | 'labourTax' | 'materialsTax') =>
      typeof kept[name] === 'string' ? kept[name] : start[name];
    return {
      currency: words('currency'),
      hourlyRate: words('hourlyRate'),
      labourTax: words('labourTax'),
      materialsTax: words('materialsTax'),
      pricesIncludeTax: kept.pricesIncludeTax === true,
    };
  } catch {
    return start;
  }
}

export function keepRates(storage: Pick<Storage, 'setItem'> | undefined, rates: RatesForm): void {
  try {
    storage?.setItem(keptAs, JSON.stringify(rates));
  } catch {
    // Rates that cannot be kept are typed again next time.
  }
}
