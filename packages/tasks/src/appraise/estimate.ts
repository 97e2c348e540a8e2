import { english, type Language, type MinorUnits } from '@becket/core';
import type { EstimateLine, Job } from '@becket/journal';
import { workFromFindings } from './estimate-findings.ts';
import { materialQuantities } from './estimate-materials.ts';
import {
  type LabourStep,
  type PianoCounts,
  pianoCounts,
  startingLabourSteps,
  unitsOf,
} from './labour-steps.ts';
import type { LearnedHours } from './learned-hours.ts';

/** What the shop charges. A price that nobody has named is left out; 0 means that it costs nothing. */
export interface EstimateRates {
  readonly currency: string;
  readonly pricesIncludeTax: boolean;
  readonly hourlyRate?: MinorUnits | undefined;
  readonly labourTax_basisPoints: number;
  readonly materialsTax_basisPoints: number;
  /** Price of one unit of a material, by the id of its line. */
  readonly unitPrices?: Readonly<Record<string, MinorUnits | undefined>> | undefined;
}

/** A line that cannot stand in an estimate yet, with what it needs. */
export interface NotPricedLine extends Omit<EstimateLine, 'amount'> {
  readonly amount:
    | { readonly by: 'time'; readonly minutes: number | undefined }
    | { readonly by: 'quantity'; readonly quantity_thousandths: number | undefined; readonly unit: string };
  readonly needs: readonly ('hours' | 'hourly rate' | 'quantity' | 'price')[];
}

/** A first draft, for the technician to change before it is made. */
export interface EstimateDraft {
  readonly currency: string;
  readonly pricesIncludeTax: boolean;
  /** Lines with everything they need. */
  readonly lines: readonly EstimateLine[];
  /** Lines that must be priced or left out on purpose: not yet priced is not the same as free. */
  readonly notPriced: readonly NotPricedLine[];
  /** Where the quantity of a line comes from, by the line's id. */
  readonly because: ReadonlyMap<string, string>;
  /** What was assumed about the piano, in sentences. */
  readonly assumed: readonly string[];
}

/**
 * A first draft of the estimate of a job: labour for the whole work, materials with the quantities that the job gives, and
 * what the survey asks for or may bring to light.
 *
 * Time is what this shop's finished jobs took in the middle, where it was learned; otherwise the step's own figures. It is
 * rounded up to quarters of an hour.
 */
export function draftEstimate(
  job: Job,
  options: {
    readonly rates: EstimateRates;
    readonly labourSteps?: readonly LabourStep[] | undefined;
    readonly learned?: readonly LearnedHours[] | undefined;
    /** What its lines are written in; English when not given. */
    readonly language?: Language | undefined;
  },
): EstimateDraft {
  const { rates, learned = [], language = english } = options;
  const { labourSteps = startingLabourSteps(language) } = options;
  const counts = pianoCounts(job, language);
  const because = new Map<string, string>();
  const proposed: NotPricedLine[] = [
    ...labourSteps.map((step) => {
      const own = learned.find((one) => one.step === step.id);
      because.set(step.id, whyTime({ step, learned: own, counts }, language));
      return labour(step, minutesOf(step, own, counts), rates);
    }),
    ...materialQuantities(job, language).map(({ id, what, unit, quantity_thousandths, because: why }) => {
      because.set(id, why);
      return {
        id,
        group: 'materials' as const,
        what,
        amount: { by: 'quantity' as const, quantity_thousandths, unit },
        taxRate_basisPoints: rates.materialsTax_basisPoints,
        needs: [],
      };
    }),
    ...workFromFindings(job, language).map(({ id, what, ifFound, because: why }) => {
      because.set(id, why);
      return { ...labour({ id, what }, undefined, rates), ...(ifFound === undefined ? {} : { ifFound }) };
    }),
  ];
  const lines: EstimateLine[] = [];
  const notPriced: NotPricedLine[] = [];
  for (const line of proposed) {
    const priced = pricedLine(line, rates);
    if ('needs' in priced) notPriced.push(priced);
    else lines.push(priced);
  }
  const { currency, pricesIncludeTax } = rates;
  return { currency, pricesIncludeTax, lines, notPriced, because, assumed: counts.assumed };
}

function labour(
  { id, what }: { readonly id: string; readonly what: string },
  minutes: number | undefined,
  { labourTax_basisPoints }: EstimateRates,
): NotPricedLine {
  const amount = { by: 'time' as const, minutes };
  return { id, group: 'labour', what, amount, taxRate_basisPoints: labourTax_basisPoints, needs: [] };
}

/** The line with its price; or what it needs, when something is not known. */
function pricedLine(line: NotPricedLine, rates: EstimateRates): EstimateLine | NotPricedLine {
  const { needs: _, amount, ...rest } = line;
  if (amount.by === 'time') {
    const { minutes } = amount;
    const { hourlyRate } = rates;
    if (minutes !== undefined && hourlyRate !== undefined)
      return { ...rest, amount: { by: 'time', minutes, hourlyRateMinorUnits: hourlyRate } };
    return {
      ...line,
      needs: [
        ...(minutes === undefined ? (['hours'] as const) : []),
        ...(hourlyRate === undefined ? (['hourly rate'] as const) : []),
      ],
    };
  }
  const { quantity_thousandths, unit } = amount;
  const price = rates.unitPrices?.[line.id];
  if (quantity_thousandths !== undefined && price !== undefined)
    return { ...rest, amount: { by: 'quantity', quantity_thousandths, unit, unitPriceMinorUnits: price } };
  return {
    ...line,
    needs: [
      ...(quantity_thousandths === undefined ? (['quantity'] as const) : []),
      ...(price === undefined ? (['price'] as const) : []),
    ],
  };
}

function minutesOf(step: LabourStep, learned: LearnedHours | undefined, counts: PianoCounts): number {
  const minutes =
    learned === undefined
      ? step.fixed_minutes + step.perUnit_minutes * unitsOf(step, counts)
      : learned.median_minutes * unitsOf(learned, counts);
  // A time a string, multiplied out again, may lie a rounding of the computer above a whole quarter.
  return Math.ceil(minutes / 15 - 1e-9) * 15;
}

function whyTime(
  {
    step,
    learned,
    counts,
  }: {
    readonly step: LabourStep;
    readonly learned: LearnedHours | undefined;
    readonly counts: PianoCounts;
  },
  { say, plain }: Language,
): string {
  const text = (minutes: number) => plain(Math.round(minutes * 10) / 10);
  if (learned !== undefined) {
    const { median_minutes, low_minutes, high_minutes, jobs, per } = learned;
    return say(
      '{jobs, plural, one {# finished job} other {# finished jobs}} of this shop: {middle} ({low} to {high}) minutes a {per, select, string {string} note {note} other {job}}',
      { jobs, middle: text(median_minutes), low: text(low_minutes), high: text(high_minutes), per },
    );
  }
  const { fixed_minutes, perUnit_minutes, per, source } = step;
  if (per === 'job')
    return say('{minutes} minutes ({source})', { minutes: plain(fixed_minutes + perUnit_minutes), source });
  return say(
    '{fixed} minutes and {more} a {per, select, string {string} other {note}}, {count} of them ({source})',
    {
      fixed: plain(fixed_minutes),
      more: plain(perUnit_minutes),
      per,
      count: unitsOf(step, counts),
      source,
    },
  );
}
