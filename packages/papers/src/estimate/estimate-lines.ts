import { type EstimateTotals, type Language, type MinorUnits, minorUnits, moneyText } from '@becket/core';
import type { EstimateLine, MadeEstimate } from '@becket/journal';
import { percentText, thousandthsText, timeText } from '../figures/amounts.ts';
import type { Table, TableColumn, TableRow } from '../page-tree.ts';

/** The language of the papers; the currency is always told by its three letters. */
const locale = 'en-GB';

/** 'EUR 1,234.50' */
export const inMoney = (amount: MinorUnits, currency: string): string =>
  moneyText(amount, currency, { locale, currencyAs: 'code' });

/** '1,234.50', under a heading that names the currency. */
const inColumn = (amount: MinorUnits, currency: string): string =>
  moneyText(amount, currency, { locale, currencyAs: 'none' });

const groups = { labour: 'Labour', materials: 'Materials', other: 'Other' } as const;

const columnsOf = (currency: string): TableColumn[] => [
  { heading: 'what', align: 'left', share: 235 },
  { heading: 'quantity', align: 'right', share: 80 },
  { heading: 'each', align: 'right', share: 60, tone: 'quiet' },
  { heading: 'tax', align: 'right', share: 36, tone: 'quiet' },
  { heading: currency, align: 'right', share: 70 },
];

/** The firm lines by group, each group with its sum. */
export function firmTable(
  { lines, currency }: MadeEstimate,
  totals: EstimateTotals,
  language: Language,
): Table {
  const rows: TableRow[] = [];
  for (const [group, name] of Object.entries(groups) as [keyof typeof groups, string][]) {
    const own = lines.filter((line) => line.group === group && line.ifFound === undefined);
    if (own.length === 0) continue;
    rows.push({ band: name });
    for (const line of own) rows.push({ cells: cellsOf(line, line.what, totals, currency, language) });
    rows.push({ tone: 'sum', cells: [`${name}, sum`, '', '', '', inColumn(totals.groups[group], currency)] });
  }
  return { is: 'table', columns: columnsOf(currency), rows };
}

/** The lines that are only done if something is found. */
export function conditionalTable(
  { lines, currency }: MadeEstimate,
  totals: EstimateTotals,
  language: Language,
): Table | undefined {
  const own = lines.filter(({ ifFound }) => ifFound !== undefined);
  if (own.length === 0) return undefined;
  return {
    is: 'table',
    columns: columnsOf(currency),
    rows: own.flatMap((line): TableRow[] => [
      { band: `If found: ${line.ifFound}` },
      { cells: cellsOf(line, line.what, totals, currency, language) },
    ]),
  };
}

function cellsOf(
  { id, amount, taxRate_basisPoints }: EstimateLine,
  what: string,
  { amounts }: EstimateTotals,
  currency: string,
  language: Language,
): string[] {
  return [
    what,
    amount.by === 'time'
      ? timeText(amount.minutes, language)
      : `${thousandthsText(amount.quantity_thousandths, language)} ${amount.unit}`,
    amount.by === 'time'
      ? `${inColumn(minorUnits(amount.hourlyRateMinorUnits), currency)}/h`
      : inColumn(minorUnits(amount.unitPriceMinorUnits), currency),
    percentText(taxRate_basisPoints, language),
    inColumn(amounts.get(id)!, currency),
  ];
}

/** From the sum of the lines to what is to be paid: tax by rate, each with what it is on. */
export function totalsTable(
  { currency, pricesIncludeTax }: MadeEstimate,
  totals: EstimateTotals,
  language: Language,
): Table {
  const hasConditional = totals.conditional !== 0 || totals.low !== totals.high;
  const all = [
    ...new Set(
      [...totals.firm.classes, ...totals.withConditional.classes].map((one) => one.rate_basisPoints),
    ),
  ];
  const rates = all.filter(
    (rate) => hasConditional || totals.firm.classes.some((one) => one.rate_basisPoints === rate),
  );
  const taxOf = (total: EstimateTotals['firm'], rate: number) => {
    const own = total.classes.find((one) => one.rate_basisPoints === rate);
    return own === undefined ? '–' : inColumn(own.tax, currency);
  };
  const row = (name: string, pick: (total: EstimateTotals['firm']) => string, tone?: 'sum'): TableRow => ({
    cells: [name, pick(totals.firm), ...(hasConditional ? [pick(totals.withConditional)] : [])],
    ...(tone === undefined ? {} : { tone }),
  });
  const net = row('Sum without tax', ({ net: own }) => inColumn(own, currency));
  const gross = row('Total, tax included', ({ gross: own }) => inColumn(own, currency), 'sum');
  const taxes = rates
    .sort((a, b) => b - a)
    .map((rate) =>
      row(`${pricesIncludeTax ? 'Tax within it' : 'Tax'} at ${percentText(rate, language)}`, (total) =>
        taxOf(total, rate),
      ),
    );
  return {
    is: 'table',
    width: hasConditional ? 0.8 : 0.6,
    columns: [
      { heading: '', align: 'left', share: 150 },
      { heading: `as planned, ${currency}`, align: 'right', share: 110 },
      ...(hasConditional
        ? [{ heading: `if all of it is found, ${currency}`, align: 'right' as const, share: 130 }]
        : []),
    ],
    rows: [net, ...taxes, gross],
  };
}
