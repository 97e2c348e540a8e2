import { type EstimateTotals, type Language, type MinorUnits, message, minorUnits } from '@becket/core';
import type { EstimateLine, MadeEstimate } from '@becket/journal';
import { percentText, thousandthsText, timeText } from '../figures/amounts.ts';
import type { Table, TableColumn, TableRow } from '../page-tree.ts';

/** '1,234.50', under a heading that names the currency. */
const inColumn = (amount: MinorUnits, currency: string, { money }: Language): string =>
  money(amount, currency, 'none');

const groups = {
  labour: { name: message('Labour'), sum: message('Labour, sum') },
  materials: { name: message('Materials'), sum: message('Materials, sum') },
  other: { name: message('[lines of an estimate] Other'), sum: message('[lines of an estimate] Other, sum') },
} as const;

const columnsOf = (currency: string, { say }: Language): TableColumn[] => [
  { heading: say('what'), align: 'left', share: 235 },
  { heading: say('[of material or work] quantity'), align: 'right', share: 80 },
  { heading: say('[price of one] each'), align: 'right', share: 60, tone: 'quiet' },
  { heading: say('tax'), align: 'right', share: 36, tone: 'quiet' },
  { heading: currency, align: 'right', share: 70 },
];

/** The firm lines by group, each group with its sum. */
export function firmTable(
  { lines, currency }: MadeEstimate,
  totals: EstimateTotals,
  language: Language,
): Table {
  const { say } = language;
  const rows: TableRow[] = [];
  for (const group of Object.keys(groups) as (keyof typeof groups)[]) {
    const { name, sum } = groups[group];
    const own = lines.filter((line) => line.group === group && line.ifFound === undefined);
    if (own.length === 0) continue;
    rows.push({ band: say(name) });
    for (const line of own) rows.push({ cells: cellsOf(line, line.what, totals, currency, language) });
    rows.push({
      tone: 'sum',
      cells: [say(sum), '', '', '', inColumn(totals.groups[group], currency, language)],
    });
  }
  return { is: 'table', columns: columnsOf(currency, language), rows };
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
    columns: columnsOf(currency, language),
    rows: own.flatMap((line): TableRow[] => [
      { band: language.say('If found: {what}', { what: line.ifFound ?? '' }) },
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
      ? `${inColumn(minorUnits(amount.hourlyRateMinorUnits), currency, language)}/h`
      : inColumn(minorUnits(amount.unitPriceMinorUnits), currency, language),
    percentText(taxRate_basisPoints, language),
    inColumn(amounts.get(id)!, currency, language),
  ];
}

/** From the sum of the lines to what is to be paid: tax by rate, each with what it is on. */
export function totalsTable(
  { currency, pricesIncludeTax }: MadeEstimate,
  totals: EstimateTotals,
  language: Language,
): Table {
  const { say } = language;
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
    return own === undefined ? '–' : inColumn(own.tax, currency, language);
  };
  const row = (name: string, pick: (total: EstimateTotals['firm']) => string, tone?: 'sum'): TableRow => ({
    cells: [name, pick(totals.firm), ...(hasConditional ? [pick(totals.withConditional)] : [])],
    ...(tone === undefined ? {} : { tone }),
  });
  const net = row(say('Sum without tax'), ({ net: own }) => inColumn(own, currency, language));
  const gross = row(say('Total, tax included'), ({ gross: own }) => inColumn(own, currency, language), 'sum');
  const taxes = rates
    .sort((a, b) => b - a)
    .map((rate) =>
      row(
        pricesIncludeTax
          ? say('Tax within it at {rate}', { rate: percentText(rate, language) })
          : say('Tax at {rate}', { rate: percentText(rate, language) }),
        (total) => taxOf(total, rate),
      ),
    );
  return {
    is: 'table',
    width: hasConditional ? 0.8 : 0.6,
    columns: [
      { heading: '', align: 'left', share: 150 },
      { heading: say('as planned, {currency}', { currency }), align: 'right', share: 110 },
      ...(hasConditional
        ? [
            {
              heading: say('if all of it is found, {currency}', { currency }),
              align: 'right' as const,
              share: 130,
            },
          ]
        : []),
    ],
    rows: [net, ...taxes, gross],
  };
}
