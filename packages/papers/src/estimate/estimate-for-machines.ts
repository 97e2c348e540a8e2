import { type EstimateTotals, english, minorUnits, plainMoneyText } from '@becket/core';
import type { MadeEstimate } from '@becket/journal';
import { thousandthsText } from '../figures/amounts.ts';
import type { MachineCell, MachineTable } from '../page-tree.ts';

const columns = [
  'row',
  'version',
  'line_id',
  'group',
  'what',
  'if_found',
  'minutes',
  'quantity',
  'unit',
  'price_each',
  'tax_rate_percent',
  'amount',
  'net',
  'tax',
  'gross',
  'currency',
  'prices_include_tax',
] as const;
type Column = (typeof columns)[number];

/**
 * The estimate one row a line, then one a rate of tax and one for the total, first as planned and then with everything that
 * depends on what is found. Money has a decimal point and as many digits as its currency.
 */
export function estimateForMachines(
  estimate: MadeEstimate | undefined,
  totals: EstimateTotals | undefined,
): MachineTable {
  if (estimate === undefined || totals === undefined) return { columns, rows: [] };
  const { currency, pricesIncludeTax, version } = estimate;
  const money = (amount: number) => plainMoneyText(minorUnits(amount), currency);
  const row = (cells: Partial<Record<Column, string>>): MachineCell[] => {
    const all: Partial<Record<Column, string>> = {
      ...cells,
      version: String(version),
      currency,
      prices_include_tax: pricesIncludeTax ? 'yes' : 'no',
    };
    return columns.map((column) => all[column]);
  };
  const lines = estimate.lines.map(({ id, group, what, ifFound, amount, taxRate_basisPoints }) =>
    row({
      row: ifFound === undefined ? 'line' : 'conditional line',
      line_id: id,
      group,
      what,
      ...(ifFound === undefined ? {} : { if_found: ifFound }),
      ...(amount.by === 'time'
        ? { minutes: String(amount.minutes), unit: 'hour', price_each: money(amount.hourlyRateMinorUnits) }
        : {
            quantity: thousandthsText(amount.quantity_thousandths, english),
            unit: amount.unit,
            price_each: money(amount.unitPriceMinorUnits),
          }),
      tax_rate_percent: String(taxRate_basisPoints / 100),
      amount: money(totals.amounts.get(id)!),
    }),
  );
  const sums = ([name, total]: readonly [string, EstimateTotals['firm']]) => [
    ...total.classes.map(({ rate_basisPoints, net, tax, gross }) =>
      row({
        row: `tax, ${name}`,
        tax_rate_percent: String(rate_basisPoints / 100),
        net: money(net),
        tax: money(tax),
        gross: money(gross),
      }),
    ),
    row({ row: `total, ${name}`, net: money(total.net), tax: money(total.tax), gross: money(total.gross) }),
  ];
  return {
    columns,
    rows: [
      ...lines,
      ...sums(['as planned', totals.firm]),
      ...sums(['if all is found', totals.withConditional]),
    ],
  };
}
