import { english, type Language, sumOfMoney } from '@becket/core';
import type { Job, Order, ProposedNote, ScaleComparison, Stock, Ulid } from '@becket/journal';
import { quantityWords } from '../order/item-words.ts';
import { purchaseList } from '../order/purchase-list.ts';
import type { Supplies } from '../order/supplies.ts';

/** Stands for a scale that is looked at and not kept: no entry of a journal has it. */
const LOOKED_AT = '00000000000000000000000000' as Ulid;

/** The job as it would be with this scale chosen, so that what it needs is counted before it is kept. Nothing is stored. */
export function jobWithScale(job: Job, name: string, notes: readonly ProposedNote[]): Job {
  // Any day: what is said of when it was chosen belongs to nobody.
  const standing = { entry: LOOKED_AT, step: 0, at: '1970-01-01T00:00:00.000Z', by: '' };
  return {
    ...job,
    proposals: [{ ...standing, kind: 'scale-proposed', v: 1, name, notes: [...notes], madeFrom: '' }],
    chosenScale: { ...standing, kind: 'scale-chosen', v: 1, scale: LOOKED_AT, reason: name, digest: '' },
  };
}

/** What a scale costs in wire and in bass strings is told from these. */
export interface ScaleToPay {
  /** Of the job with this scale: see `jobWithScale`. */
  readonly supplies: Supplies;
  readonly stock: Stock;
  readonly job: Ulid;
  readonly orders?: readonly Order[];
  /** The scale as found against this one. */
  readonly comparison: Pick<ScaleComparison, 'changed'>;
  readonly language?: Language;
}

/**
 * What a scale costs: its plain wire by mass and by the price lists, less what the shelf has, and the wound strings that
 * have to be made. A sentence each; what is not known is said.
 */
export function costOfScale({
  supplies,
  stock,
  job,
  orders = [],
  comparison,
  language = english,
}: ScaleToPay): string[] {
  const { say } = language;
  const lines = supplies.lines.filter(({ group }) => group === 'plain wire');
  const grams = lines.reduce((sum, { total }) => sum + (total ?? 0), 0);
  const wound = supplies.lines.find(({ group }) => group === 'bass strings')?.total ?? 0;
  const otherwise = comparison.changed.reduce(
    (sum, { after }) => sum + (after?.note.string.kind === 'wound' ? after.note.strings : 0),
    0,
  );
  return [
    ...(lines.length === 0
      ? [say('No plain wire can be counted for it yet.')]
      : [
          say(
            'Plain wire: {mass} in {sizes, plural, one {# size} other {# sizes}}, spoilage and spares included.',
            {
              mass: quantityWords(grams, 'g', language),
              sizes: lines.length,
            },
          ),
          priceSentence({ lines, supplies, stock, job, orders, language }),
        ]),
    ...(wound === 0
      ? []
      : [
          say(
            'Wound strings: {wound} to be made, {otherwise, plural, =0 {all as they were found} other {# of them otherwise than they were found}}. What their maker asks is not known here.',
            { wound, otherwise },
          ),
        ]),
  ];
}

function priceSentence({
  lines,
  supplies,
  stock,
  job,
  orders,
  language,
}: Required<Omit<ScaleToPay, 'comparison'>> & { readonly lines: Supplies['lines'] }): string {
  const { say, money } = language;
  if (stock.priceLists.length === 0) return say('No price list is kept yet, so no price of wire is told.');
  const list = purchaseList({ supplies: { ...supplies, lines }, stock, job, orders, language });
  const currencies = [...new Set(list.suppliers.map(({ currency }) => currency))];
  const sums = currencies.map((currency) =>
    money(
      sumOfMoney(list.suppliers.filter((one) => one.currency === currency).map(({ total }) => total)),
      currency,
    ),
  );
  const unlisted = list.notListed.length;
  if (sums.length === 0)
    return unlisted === 0
      ? say('The shelf and what is on order cover all of it.')
      : say('{sizes, plural, one {# size} other {# sizes}} to buy, in no price list.', { sizes: unlisted });
  return say(
    'Wire to buy beside what the shelf has: {price} in whole coils{unlisted, plural, =0 {} one {, and # size that stands in no price list} other {, and # sizes that stand in no price list}}.',
    { price: language.list(sums), unlisted },
  );
}
