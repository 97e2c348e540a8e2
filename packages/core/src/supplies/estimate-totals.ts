import { priceOfQuantity, priceOfTime } from './exact-price.ts';
import { type MinorUnits, minorUnits, sumOfMoney } from './minor-units.ts';
import { type TaxedTotal, taxedTotal } from './tax.ts';

/** What an estimate is made of, as far as its sums go. Units are in the names. */
export interface PricedLine {
  readonly id: string;
  readonly group: 'labour' | 'materials' | 'other';
  readonly amount:
    | { readonly by: 'time'; readonly minutes: number; readonly hourlyRateMinorUnits: number }
    | {
        readonly by: 'quantity';
        readonly quantity_thousandths: number;
        readonly unitPriceMinorUnits: number;
      };
  readonly taxRate_basisPoints: number;
  /** Set for a line that is only done if this is found. */
  readonly ifFound?: string | undefined;
}

/** Sums of an estimate, in whole minor units of its currency. Everything that is added up adds up exactly. */
export interface EstimateTotals {
  /** Price of each line as it is written (with tax in it or not, as the estimate says), by its id. */
  readonly amounts: ReadonlyMap<string, MinorUnits>;
  /** Sums of the firm lines by group, as they are written. */
  readonly groups: Readonly<Record<PricedLine['group'], MinorUnits>>;
  /** Sum of the conditional lines as they are written. */
  readonly conditional: MinorUnits;
  /** The firm lines alone. */
  readonly firm: TaxedTotal;
  /** The firm lines with every conditional one. */
  readonly withConditional: TaxedTotal;
  /** The least and the most that it can come to, tax included, with whichever conditional lines come about. */
  readonly low: MinorUnits;
  readonly high: MinorUnits;
  /** Firm working time [min]. */
  readonly minutes: number;
}

/**
 * Sums of an estimate: by group, by rate of tax, without and with what is done only if something is found.
 *
 *     price of a line:  minutes · rate / 60  or  thousandths · price / 1000, each rounded once
 *     tax:              on the sum of the lines of one rate, rounded once a rate
 *
 * @param estimate.pricesIncludeTax  whether the prices of the lines hold the tax already
 * @param estimate.lines             with ids that differ
 * @returns sums [minor units]; low and high differ where there are conditional lines
 *
 * Error: half a minor unit for each line and each rate of tax at most, a half away from zero.
 * Throws: RangeError when an amount is too large to be held exactly, or two lines have one id.
 * Source: common practice; see `taxedTotal`.
 * @example estimateTotals({ pricesIncludeTax: false, lines: [{ id: 'a', group: 'labour', amount: { by: 'time', minutes: 90, hourlyRateMinorUnits: 6000 }, taxRate_basisPoints: 1900 }] }).firm.gross  // = 10710
 */
export function estimateTotals(estimate: {
  readonly pricesIncludeTax: boolean;
  readonly lines: readonly PricedLine[];
}): EstimateTotals {
  const amounts = new Map<string, MinorUnits>();
  for (const { id, amount } of estimate.lines) {
    if (amounts.has(id))
      throw new RangeError(
        `Cannot add up this estimate: lines of different ids are needed, '${id}' was found twice. Rename one.`,
      );
    amounts.set(id, lineAmount(amount));
  }
  const amountOf = ({ id }: PricedLine) => amounts.get(id)!;
  const sumOf = (lines: readonly PricedLine[]) => sumOfMoney(lines.map(amountOf));
  const total = (lines: readonly PricedLine[]) =>
    taxedTotal(
      lines.map((line) => ({ amount: amountOf(line), rate_basisPoints: line.taxRate_basisPoints })),
      estimate,
    );
  const firmLines = estimate.lines.filter(({ ifFound }) => ifFound === undefined);
  const conditionalLines = estimate.lines.filter(({ ifFound }) => ifFound !== undefined);
  const firm = total(firmLines);
  // A conditional line may also take away: something that need not be done after all.
  const cheaper = conditionalLines.filter((line) => amountOf(line) < 0);
  const dearer = conditionalLines.filter((line) => amountOf(line) > 0);
  return {
    amounts,
    groups: {
      labour: sumOf(firmLines.filter(({ group }) => group === 'labour')),
      materials: sumOf(firmLines.filter(({ group }) => group === 'materials')),
      other: sumOf(firmLines.filter(({ group }) => group === 'other')),
    },
    conditional: sumOf(conditionalLines),
    firm,
    withConditional: total(estimate.lines),
    low: total([...firmLines, ...cheaper]).gross,
    high: total([...firmLines, ...dearer]).gross,
    minutes: firmLines.reduce((sum, { amount }) => sum + (amount.by === 'time' ? amount.minutes : 0), 0),
  };
}

function lineAmount(amount: PricedLine['amount']): MinorUnits {
  return amount.by === 'time'
    ? priceOfTime({ minutes: amount.minutes, hourlyRate: minorUnits(amount.hourlyRateMinorUnits) })
    : priceOfQuantity({
        quantity_thousandths: amount.quantity_thousandths,
        unitPrice: minorUnits(amount.unitPriceMinorUnits),
      });
}
