import type { Language } from '@becket/core';
import type { FactOf, Job, Standing } from '@becket/journal';
import { placeInWords } from '../every-paper/place-in-words.ts';
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
  const { say, plain } = language;
  return {
    is: 'table',
    columns: [
      { heading: say('[number of a line] no.'), align: 'right', share: 22 },
      { heading: say('what was found'), align: 'left', share: 155 },
      { heading: say('how grave'), align: 'left', share: 78 },
      { heading: say('price'), align: 'right', share: 92 },
      { heading: say('working days'), align: 'right', share: 76 },
      { heading: say('your decision'), align: 'left', share: 92 },
    ],
    rows: lines.map(({ number, damage, answer }) => ({
      cells: [
        String(number),
        `${damage.what} (${placeInWords(damage.place, language)})`,
        say(damage.gravity),
        priceCell(damage, language),
        damage.days === undefined ? { blank: say('not said yet') } : plain(damage.days),
        answer === undefined ? { blank: say('yes / no') } : answerInWords(answer, language),
      ],
    })),
  };
}

function priceCell({ priceMinorUnits, currency }: FactOf<'damage-found'>, language: Language): Cell {
  if (priceMinorUnits === undefined || currency === undefined)
    return { blank: language.say('not priced yet') };
  return priceText(priceMinorUnits, currency, language);
}

export const answerInWords = (
  { answer, name, on }: FactOf<'change-answered'>,
  { say, day }: Language,
): string =>
  say('{answer, select, agreed {agreed} other {declined}} by {name}, {day}', { answer, name, day: day(on) });

/** 'EUR 500.50 and JPY 1,200; 1 line is not priced yet; 3.5 working days; for 1 line they are not said' */
export function totalsInWords(lines: readonly ChangeLine[], language: Language): string {
  const { say, plain, list } = language;
  const { prices, days, withoutPrice, withoutDays } = changeOrderTotals(lines.map(({ damage }) => damage));
  const parts: string[] = [];
  if (prices.length > 0)
    parts.push(list(prices.map(({ minorUnits, currency }) => priceText(minorUnits, currency, language))));
  if (withoutPrice > 0)
    parts.push(
      prices.length === 0
        ? say('{count, plural, one {# line is} other {# lines are}} not priced yet', { count: withoutPrice })
        : say('{count, plural, one {# line is} other {# lines are}} not priced yet and not in this sum', {
            count: withoutPrice,
          }),
    );
  const areDaysSaid = withoutDays < lines.length;
  if (areDaysSaid)
    parts.push(
      say('{count, plural, one {{days} working day} other {{days} working days}}', {
        count: days,
        days: plain(days),
      }),
    );
  if (withoutDays > 0)
    parts.push(
      areDaysSaid
        ? say(
            'for {count, plural, one {# line} other {# lines}} the days are not said yet and not among these',
            { count: withoutDays },
          )
        : say('working days not said yet'),
    );
  return parts.join('; ');
}
