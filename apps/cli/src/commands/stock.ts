import type { Language } from '@becket/core';
import { type StockItem, stockItemId, stockUnitOf } from '@becket/journal';
import {
  coverFromStock,
  itemNamed,
  itemWords,
  noteStock,
  orderPolicyOf,
  quantityOf,
  quantityWords,
  readJob,
  readOrders,
  readShop,
  releaseReservation,
  reorderList,
  reserveForJob,
  type Shop,
  type StockMove,
  shortagesOf,
  suppliesOf,
  type TaskContext,
  withdrawStockMove,
} from '@becket/tasks';
import type { Command } from 'commander';
import { exitStatus } from '../exit-status.ts';
import { table, talk } from '../talk.ts';
import { type CommonOptions, inWorkshop } from '../workshop.ts';

interface MoveOptions extends CommonOptions {
  readonly note?: string;
  readonly supplier?: string;
  readonly job?: string;
}
interface WithReason extends CommonOptions {
  readonly reason: string;
}

/** `becket stock`: what the shelf of the shop has, and what is set aside for which job. */
export function registerStock(program: Command, language: Language): void {
  const { say } = language;
  const stock = program
    .command('stock')
    .description(say('the shelf of the shop: counts, what came, what was used'));
  stock
    .command('list', { isDefault: true })
    .description(say('list the shelf: on hand, set aside, free, and what to buy again'))
    .action(async (_: unknown, command: Command) => {
      const options = command.optsWithGlobals<CommonOptions>();
      const shop = await inWorkshop(options, language, readShop);
      talk.result(options, shelfData(shop, language), shelfLines(shop, language));
    });

  const move = (
    name: string,
    description: string,
    factOf: (item: StockItem, quantity: number, options: MoveOptions) => StockMove,
  ) =>
    stock
      .command(name)
      .description(description)
      .argument(
        '<item>',
        say("as the list writes it: 'wire 0.991 mm', 'tuning pin 7.163 x 63.5 mm', 'Felt glue (piece)'"),
      )
      .argument('<quantity>', say("'500 g', '1.5 kg', '2 m', '240 pieces'"))
      .action(async (itemText: string, quantityText: string, _: unknown, command: Command) => {
        const options = command.optsWithGlobals<MoveOptions>();
        const item = itemNamed(itemText, language);
        const quantity = quantityOf(quantityText, stockUnitOf(item), language);
        const shop = await inWorkshop(options, language, (context) =>
          noteStock(context, [factOf(item, quantity, options)]),
        );
        showLine(options, shop, item, language);
      });
  const note = ['--note <words>', say('what else is to be known')] as const;
  move('count', say('note what lies on the shelf'), (item, quantity, options) => ({
    kind: 'stock-counted',
    item,
    quantity,
    ...withNote(options),
  })).option(...note);
  move('take-in', say('note what came in'), (item, quantity, options) => ({
    kind: 'stock-received',
    item,
    quantity,
    ...(options.supplier === undefined ? {} : { supplier: options.supplier }),
    ...withNote(options),
  }))
    .option('--supplier <name>', say('whom it came from'))
    .option(...note);
  move('use', say('note what was taken from the shelf'), (item, quantity, options) => ({
    kind: 'stock-used',
    item,
    quantity,
    ...(options.job === undefined ? {} : { job: options.job }),
    ...withNote(options),
  }))
    .option('--job <job>', say('the job it was taken for: what is set aside for that job is used up first'))
    .option(...note);
  move('minimum', say('say below what it is bought again; 0 when it need not be kept'), (item, minimum) => ({
    kind: 'stock-minimum-set',
    item,
    minimum,
  }));

  stock
    .command('cover')
    .description(say('what a job needs, how far the shelf covers it, and what is to be bought'))
    .argument('<job>', say('id of the job'))
    .action(async (job: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<CommonOptions>();
      const covers = await inWorkshop(options, language, async (context) => {
        const [state, shop] = [await readJob(context, job), await readShop(context)];
        const orders = [...(await readOrders(context, job)).orders, ...shop.orders.orders];
        return suppliesOf(state, orderPolicyOf(shop.allowances), language).lines.map((line) => ({
          line,
          cover: coverFromStock(line, shop.stock, job, orders),
        }));
      });
      const words = (quantity: number | undefined, unit: (typeof covers)[number]['line']['unit']) =>
        quantity === undefined ? say('unknown') : quantityWords(quantity, unit, language);
      talk.result(
        options,
        covers.map(({ line: { id, group, what, unit, total, because }, cover }) => ({
          id,
          group,
          what,
          unit,
          total: total ?? null,
          because,
          ...cover,
          onHand: cover.onHand ?? null,
          toBuy: cover.toBuy ?? null,
        })),
        table(
          [say('[of stock] item'), say('needed'), say('covered'), say('on order'), say('to buy')],
          covers.map(({ line, cover }) => [
            line.what,
            words(line.total, line.unit),
            words(cover.covered, line.unit),
            words(cover.onOrder, line.unit),
            words(cover.toBuy, line.unit),
          ]),
        ),
      );
      if (covers.some(({ cover }) => cover.toBuy !== 0)) process.exitCode = exitStatus.no;
    });
  stock
    .command('reserve')
    .description(say('set aside for a job what the shelf has free of its supplies'))
    .argument('<job>', say('id of the job'))
    .action(async (job: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<CommonOptions>();
      const shop = await inWorkshop(options, language, async (context) =>
        reserveForJob(context, job, (await suppliesFor(context, job)).lines),
      );
      const mine = reservationsIn(shop, language).filter((one) => one.job === job);
      talk.result(
        options,
        mine,
        mine.length === 0
          ? [say('Nothing is set aside for this job: the shelf has none of its supplies free.')]
          : table(
              [say('[of stock] item'), say('set aside'), say('reservation')],
              mine.map(({ what, words, reservation }) => [what, words, reservation]),
            ),
      );
    });
  stock
    .command('release')
    .description(say('end a reservation'))
    .argument('<reservation>', say('its id, as becket stock reserve and becket --json stock list print it'))
    .requiredOption('--reason <words>', say('why; kept in the record'))
    .action(async (reservation: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<WithReason>();
      const shop = await inWorkshop(options, language, (context) =>
        releaseReservation(context, reservation, options.reason),
      );
      talk.result(options, shelfData(shop, language), [say('The reservation is released.')]);
    });
  stock
    .command('undo')
    .description(say('take back something noted of the stock, by its entry'))
    .argument('<entry>', say('id of the entry, as becket --json stock list prints the last ones'))
    .requiredOption('--reason <words>', say('why; kept in the record'))
    .action(async (entry: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<WithReason>();
      const shop = await inWorkshop(options, language, (context) =>
        withdrawStockMove(context, entry, options.reason),
      );
      talk.result(options, shelfData(shop, language), [
        say('It is taken back; what was noted stays in the journal.'),
      ]);
    });
}

async function suppliesFor(context: TaskContext, job: string) {
  const { allowances } = await readShop(context);
  return suppliesOf(await readJob(context, job), orderPolicyOf(allowances), context.language);
}

const withNote = ({ note }: MoveOptions) => (note === undefined ? {} : { note });

function reservationsIn({ stock }: Shop, language: Language) {
  return stock.lines.flatMap(({ id, item, unit, reservations }) =>
    reservations.map(({ entry, job, jobTitle, open, covered }) => ({
      reservation: entry,
      item: id,
      what: itemWords(item, language),
      job,
      jobTitle,
      open,
      covered,
      words: quantityWords(open, unit, language),
    })),
  );
}

const LAST_NOTED = 20;

function shelfData(shop: Shop, language: Language) {
  const { lines } = shop.stock;
  return {
    lines: lines.map(({ id, item, unit, onHand, reserved, free, minimum, counted }) => ({
      item: id,
      what: itemWords(item, language),
      unit,
      onHand: onHand ?? null,
      reserved,
      free: free ?? null,
      minimum,
      counted: counted ?? null,
    })),
    reservations: reservationsIn(shop, language),
    shortages: shortagesOf(shop.stock, language).map(({ line, lacking, sentence }) => ({
      item: line.id,
      lacking,
      sentence,
    })),
    toBuyAgain: reorderList(shop.stock, shop.orders.orders, language).map(({ line, quantity, because }) => ({
      item: line.id,
      quantity,
      because,
    })),
    lastNoted: shop.entries
      .filter(({ fact }) => fact.kind.startsWith('stock-'))
      .slice(-LAST_NOTED)
      .map(({ id, at, by, fact }) => ({ entry: id, at, by, fact })),
  };
}

function shelfLines(shop: Shop, language: Language): string[] {
  const { say } = language;
  const { lines } = shop.stock;
  if (lines.length === 0) return [say('Nothing was ever noted of the stock. Begin with becket stock count.')];
  const again = new Map(
    reorderList(shop.stock, shop.orders.orders, language).map(({ line, quantity }) => [line.id, quantity]),
  );
  return [
    ...table(
      [
        say('[of stock] item'),
        say('on hand'),
        say('set aside'),
        say('[of stock] free'),
        say('at least'),
        say('buy again'),
      ],
      lines.map(({ id, unit, onHand, reserved, free, minimum }) => [
        id,
        onHand === undefined ? say('not counted') : quantityWords(onHand, unit, language),
        reserved === 0 ? '—' : quantityWords(reserved, unit, language),
        free === undefined ? say('unknown') : quantityWords(free, unit, language),
        minimum === 0 ? '—' : quantityWords(minimum, unit, language),
        again.has(id) ? quantityWords(again.get(id)!, unit, language) : '—',
      ]),
    ),
    ...shortagesOf(shop.stock, language).map(({ sentence }) => sentence),
  ];
}

function showLine(options: CommonOptions, shop: Shop, item: StockItem, language: Language): void {
  const { say } = language;
  const id = stockItemId(item);
  const line = shelfData(shop, language).lines.find((one) => one.item === id);
  const unit = stockUnitOf(item);
  const onHand = line?.onHand ?? undefined;
  const entry = shop.entries.at(-1)?.id;
  talk.result(options, { ...line, entry }, [
    say('{item}: {onHand}. Noted as {entry}.', {
      item: itemWords(item, language),
      onHand:
        onHand === undefined
          ? say('not counted')
          : say('{quantity} on hand', { quantity: quantityWords(onHand, unit, language) }),
      entry: entry ?? '',
    }),
  ]);
}
