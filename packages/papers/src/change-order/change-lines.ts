import type { Language } from '@becket/core';
import type { FactOf, Job, Standing } from '@becket/journal';
import { placeInWords } from '../every-paper/place-in-words.ts';
import { counted } from '../every-paper/running-lines.ts';
import type { Cell, Table } from '../page-tree.ts';
import { changeOrderTotals } from './change-totals.ts';
import { priceText } from './price-text.ts';

/** One line of the change order, with its number on the paper and what the customer said of it. */
export interface ChangeLine {
  readonly number: number;
  readonly damage: Standing<FactOf<'damage-found'>>;
  readonly answer: Standing<FactOf<'change-answered'>> | undefined;
}

export function changeLines({ damages, changeAnswers }: Job): ChangeLine[] {
  return damages.map((damage, index) => ({
    number: index + 1,
    damage,
    answer: changeAnswers.find((one) => one.damage === damage.entry),
  }));
}

/** Every line at a glance, each with its price and room to decide. */
export function changeTable(lines: readonly ChangeLine[], language: Language): Table {
  return {
    is: 'table',
    columns: [
      { heading: 'no.', align: 'right', share: 22 },
      { heading: 'what was found', align: 'left', share: 155 },
      { heading: 'how grave', align: 'left', share: 78 },
      { heading: 'price', align: 'right', share: 92 },
      { heading: 'working days', align: 'right', share: 76 },
      { heading: 'your decision', align: 'left', share: 92 },
    ],
    rows: lines.map(({ number, damage, answer }) => ({
      cells: [
        String(number),
        `${damage.what} (${placeInWords(damage.place, language)})`,
        damage.gravity,
        priceCell(damage),
        damage.days === undefined ? { blank: 'not said yet' } : String(damage.days),
        answer === undefined ? { blank: 'yes / no' } : answerInWords(answer, language),
      ],
    })),
  };
}

function priceCell({ priceMinorUnits, currency }: FactOf<'damage-found'>): Cell {
  if (priceMinorUnits === undefined || currency === undefined) return { blank: 'not priced yet' };
  return priceText(priceMinorUnits, currency);
}

export const answerInWords = ({ answer, name, on }: FactOf<'change-answered'>, language: Language): string =>
  `${answer} by ${name}, ${language.day(on)}`;

/** 'EUR 500.50 and JPY 1,200; 1 line is not priced yet; 3.5 working days; for 1 line they are not said' */
export function totalsInWords(lines: readonly ChangeLine[]): string {
  const { prices, days, withoutPrice, withoutDays } = changeOrderTotals(lines.map(({ damage }) => damage));
  const parts: string[] = [];
  if (prices.length > 0)
    parts.push(prices.map(({ minorUnits, currency }) => priceText(minorUnits, currency)).join(' and '));
  if (withoutPrice > 0)
    parts.push(
      `${counted(withoutPrice, 'line is', 'lines are')} not priced yet${prices.length === 0 ? '' : ' and not in this sum'}`,
    );
  const areDaysSaid = withoutDays < lines.length;
  if (areDaysSaid) parts.push(`${days} working ${days === 1 ? 'day' : 'days'}`);
  if (withoutDays > 0)
    parts.push(
      areDaysSaid
        ? `for ${counted(withoutDays, 'line', 'lines')} the days are not said yet and not among these`
        : 'working days not said yet',
    );
  return parts.join('; ');
}
