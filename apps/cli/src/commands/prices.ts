import { readFile, stat } from 'node:fs/promises';
import { basename } from 'node:path';
import { type Language, minorUnits } from '@becket/core';
import { stockItemId } from '@becket/journal';
import { keepPriceList, packWords, priceListExample, readShop, requireTableSize } from '@becket/tasks';
import type { Command } from 'commander';
import { WrongUse } from '../refusals.ts';
import { table, talk } from '../talk.ts';
import { type CommonOptions, inWorkshop } from '../workshop.ts';

interface KeepOptions extends CommonOptions {
  readonly currency: string;
  readonly leadTimeDays?: string;
}

/** `becket prices`: the price lists of the shop's suppliers. */
export function registerPrices(program: Command, language: Language): void {
  const { say, day, money, plain } = language;
  const prices = program.command('prices').description(say("the suppliers' price lists"));
  prices
    .command('list', { isDefault: true })
    .description(say('list the suppliers, or what one of them sells'))
    .argument('[supplier]', say('its articles'))
    .action(async (supplier: string | undefined, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<CommonOptions>();
      const { stock } = await inWorkshop(options, language, readShop);
      if (supplier === undefined) {
        const lists = stock.suppliers.map(({ supplier: name, leadTime_days }) => {
          const kept = stock.priceLists.find((list) => list.supplier === name);
          return {
            supplier: name,
            leadTime_days: leadTime_days ?? null,
            articles: kept?.lines.length ?? 0,
            currency: kept?.currency ?? null,
            file: kept?.file ?? null,
            at: kept?.at ?? null,
          };
        });
        const lines = lists.map(({ supplier: name, leadTime_days, articles, currency, at }) => [
          name,
          String(articles),
          currency ?? '—',
          leadTime_days === null ? say('unknown') : plain(leadTime_days),
          at === null ? '—' : day(at),
        ]);
        talk.result(
          options,
          lists,
          lists.length === 0
            ? [say('No supplier is known yet. Begin with becket prices keep.')]
            : table(
                [say('supplier'), say('articles'), say('currency'), say('lead time, days'), say('kept on')],
                lines,
              ),
        );
        return;
      }
      const kept = stock.priceLists.find((list) => list.supplier === supplier);
      if (kept === undefined)
        throw new RangeError(
          say(
            "Cannot list the prices of '{supplier}': a supplier with a price list is needed: {known, select, none {there is none yet} other {{names}}}.",
            {
              supplier,
              known: stock.priceLists.length === 0 ? 'none' : 'some',
              names: stock.priceLists.map((list) => `'${list.supplier}'`).join(', '),
            },
          ),
        );
      talk.result(
        options,
        kept,
        table(
          [say('article'), say('[of stock] item'), say('pack'), say('price')],
          kept.lines.map(({ article, item, pack, priceMinorUnits }) => [
            article,
            stockItemId(item),
            packWords({ item, pack }, language),
            money(minorUnits(priceMinorUnits), kept.currency),
          ]),
        ),
      );
    });
  prices
    .command('keep')
    .description(say("read a supplier's price list from a CSV and keep it, all of it or nothing"))
    .argument('<supplier>', say('whose it is'))
    .argument('<file>', say('the CSV; becket prices example prints one to fill in'))
    .requiredOption('--currency <code>', say('of all its prices: EUR, USD …'))
    .option('--lead-time-days <days>', say('calendar days from order to delivery'))
    .action(async (supplier: string, file: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<KeepOptions>();
      // A file that is too large is refused before it is read into memory.
      requireTableSize((await stat(file)).size, basename(file), language);
      const bytes = await readFile(file);
      const { stock } = await inWorkshop(
        options,
        language,
        (context) =>
          keepPriceList(context, {
            supplier,
            currency: options.currency.toUpperCase(),
            leadTime_days: daysIn(options.leadTimeDays, language),
            bytes,
            fileName: basename(file),
          }),
        { mayBegin: true },
      );
      const kept = stock.priceLists.find((list) => list.supplier === supplier.trim())!;
      talk.result(options, { supplier: kept.supplier, articles: kept.lines.length, entry: kept.entry }, [
        say('{articles} articles of {supplier} are kept.', {
          articles: kept.lines.length,
          supplier: kept.supplier,
        }),
      ]);
    });
  prices
    .command('example')
    .description(say('print a price list to fill in, with invented articles'))
    .action(() => {
      process.stdout.write(priceListExample);
    });
}

function daysIn(text: string | undefined, { say }: Language): number | undefined {
  if (text === undefined) return undefined;
  if (/^\d{1,3}$/.test(text)) return Number(text);
  throw new WrongUse(say("Cannot take the lead time '{text}': a whole number of days is needed.", { text }));
}
