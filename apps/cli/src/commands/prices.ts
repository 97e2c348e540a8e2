import { readFile, stat } from 'node:fs/promises';
import { basename } from 'node:path';
import { english, minorUnits } from '@becket/core';
import { stockItemId } from '@becket/journal';
import { keepPriceList, priceListExample, readShop, requireTableSize } from '@becket/tasks';
import type { Command } from 'commander';
import { WrongUse } from '../refusals.ts';
import { table, talk } from '../talk.ts';
import { type CommonOptions, inWorkshop } from '../workshop.ts';

interface KeepOptions extends CommonOptions {
  readonly currency: string;
  readonly leadTimeDays?: string;
}

/** `becket prices`: the price lists of the shop's suppliers. */
export function registerPrices(program: Command): void {
  const prices = program.command('prices').description("the suppliers' price lists");
  prices
    .command('list', { isDefault: true })
    .description('list the suppliers, or what one of them sells')
    .argument('[supplier]', 'its articles')
    .action(async (supplier: string | undefined, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<CommonOptions>();
      const { stock } = await inWorkshop(options, readShop);
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
          leadTime_days === null ? 'unknown' : String(leadTime_days),
          at?.slice(0, 10) ?? '—',
        ]);
        talk.result(
          options,
          lists,
          lists.length === 0
            ? ['No supplier is known yet. Begin with becket prices keep.']
            : table(['supplier', 'articles', 'currency', 'lead time, days', 'kept on'], lines),
        );
        return;
      }
      const kept = stock.priceLists.find((list) => list.supplier === supplier);
      if (kept === undefined)
        throw new RangeError(
          `Cannot list the prices of '${supplier}': a supplier with a price list is needed: ${stock.priceLists.map((list) => `'${list.supplier}'`).join(', ') || 'there is none yet'}.`,
        );
      talk.result(
        options,
        kept,
        table(
          ['article', 'item', 'pack', 'price'],
          kept.lines.map(({ article, item, pack, priceMinorUnits }) => [
            article,
            stockItemId(item),
            packWords(pack),
            english.money(minorUnits(priceMinorUnits), kept.currency),
          ]),
        ),
      );
    });
  prices
    .command('keep')
    .description("read a supplier's price list from a CSV and keep it, all of it or nothing")
    .argument('<supplier>', 'whose it is')
    .argument('<file>', 'the CSV; becket prices example prints one to fill in')
    .requiredOption('--currency <code>', 'of all its prices: EUR, USD …')
    .option('--lead-time-days <days>', 'calendar days from order to delivery')
    .action(async (supplier: string, file: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<KeepOptions>();
      // A file that is too large is refused before it is read into memory.
      requireTableSize((await stat(file)).size, basename(file));
      const bytes = await readFile(file);
      const { stock } = await inWorkshop(
        options,
        (context) =>
          keepPriceList(context, {
            supplier,
            currency: options.currency.toUpperCase(),
            leadTime_days: daysIn(options.leadTimeDays),
            bytes,
            fileName: basename(file),
          }),
        { mayBegin: true },
      );
      const kept = stock.priceLists.find((list) => list.supplier === supplier.trim())!;
      talk.result(options, { supplier: kept.supplier, articles: kept.lines.length, entry: kept.entry }, [
        `${kept.lines.length} articles of ${kept.supplier} are kept.`,
      ]);
    });
  prices
    .command('example')
    .description('print a price list to fill in, with invented articles')
    .action(() => {
      process.stdout.write(priceListExample);
    });
}

type Pack = Awaited<ReturnType<typeof readShop>>['stock']['priceLists'][number]['lines'][number]['pack'];

function packWords(pack: Pack): string {
  switch (pack.by) {
    case 'coil mass':
      return `coil of ${Math.round(pack.mass_kg * 1000)} g`;
    case 'coil length':
      return `coil of ${pack.length_m} m`;
    case 'piece':
      return `piece of ${pack.length_m} m`;
    case 'count':
      return `pack of ${pack.count}`;
  }
}

function daysIn(text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  if (/^\d{1,3}$/.test(text)) return Number(text);
  throw new WrongUse(`Cannot take the lead time '${text}': a whole number of days is needed.`);
}
