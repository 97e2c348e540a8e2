import {
  english,
  inches,
  inMetres,
  type Language,
  type Message,
  message,
  millimetres,
  minorUnits,
  parseNote,
} from '@becket/core';
import {
  type FactOf,
  type Order,
  type Orders,
  type ReceivedQuantity,
  receivedQuantities,
  SHOP_JOURNAL,
  type Ulid,
} from '@becket/journal';
import {
  acceptDifference,
  draftBassOrder,
  draftSupplyOrder,
  moveOrder,
  type OrderMove,
  orderPolicyOf,
  purchaseForShelf,
  purchaseList,
  readBassOrder,
  readJob,
  readOrders,
  readShop,
  receivedStrings,
  receivedTolerancesOf,
  receiveGoods,
  signBassChecks,
  suppliesOf,
  type TaskContext,
  undoDelivery,
} from '@becket/tasks';
import type { Command } from 'commander';
import { exitStatus } from '../exit-status.ts';
import { WrongUse } from '../refusals.ts';
import { table, talk } from '../talk.ts';
import { type CommonOptions, inWorkshop } from '../workshop.ts';

interface DraftOptions extends CommonOptions {
  readonly neededOn?: string;
}
interface SignOptions extends CommonOptions {
  readonly check: readonly string[];
  readonly all?: boolean;
  readonly name: string;
  readonly reason: string;
}
interface MoveOptions extends CommonOptions {
  readonly on?: string;
  readonly expectedOn?: string;
  readonly note?: string;
}
interface ReceiveOptions extends CommonOptions {
  readonly line: readonly string[];
  readonly all?: boolean;
  readonly measured: readonly string[];
  readonly on?: string;
}
interface ReasonOptions extends CommonOptions {
  readonly name: string;
  readonly reason: string;
}

const collect = (value: string, all: readonly string[]): string[] => [...all, value];

/** `becket orders`: what is bought from whom for a job or for the shelf, what came, and whether it may be strung. */
export function registerOrders(program: Command, language: Language): void {
  const { say } = language;
  const jobArgument = ['<job>', say("id of the job; 'shop' for what is ordered for the shelf")] as const;
  const show = (options: CommonOptions, made: Orders, one?: Order) =>
    showOrders(options, made, language, one);
  const dayOf = (text: string) => dayIn(text, language);
  const orders = program
    .command('orders')
    .description(say('orders of a job or of the shelf: draft, send, receive, measure'));
  orders
    .command('list', { isDefault: true })
    .description(say('list the orders with their state'))
    .argument(...jobArgument)
    .action(async (job: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<CommonOptions>();
      show(options, await inWorkshop(options, language, (context) => ordersOf(context, job)));
    });
  orders
    .command('draft')
    .description(say('draft an order to a supplier for what the purchase list says'))
    .argument(...jobArgument)
    .argument('<supplier>', say('one whose price list is kept'))
    .option('--needed-on <day>', say('when the goods are to be here, YYYY-MM-DD'))
    .action(async (job: string, supplier: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<DraftOptions>();
      const neededOn = options.neededOn === undefined ? undefined : dayOf(options.neededOn);
      const made = await inWorkshop(options, language, async (context) => {
        const { suppliers } = await toBuy(context, job, neededOn);
        const purchase = suppliers.find((one) => one.supplier === supplier);
        if (purchase === undefined)
          throw new RangeError(
            say(
              "Cannot draft an order to '{supplier}': a supplier of whom something is to be bought is needed: {known, select, none {there is none} other {{names}}}. Look at becket stock cover and becket prices.",
              {
                supplier,
                known: suppliers.length === 0 ? 'none' : 'some',
                names: suppliers.map((one) => `'${one.supplier}'`).join(', '),
              },
            ),
          );
        return draftSupplyOrder(context, journalOf(job), { purchase, neededOn });
      });
      show(options, made, made.orders.at(-1));
    });
  orders
    .command('bass-checks')
    .description(say('the checks of the bass string order: what does not agree, and who answers for it'))
    .argument('<job>', say('id of the job'))
    .action(async (job: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<CommonOptions>();
      const order = await inWorkshop(options, language, (context) => readBassOrder(context, job));
      talk.result(
        options,
        { strings: order.strings.length, mayBeSent: order.mayBeSent, checks: order.checks },
        [
          ...order.checks.map(({ id, sentence, signed }) =>
            signed === undefined
              ? `${id}: ${sentence}`
              : say('{check}: {sentence} Signed by {name}: {reason}', {
                  check: id,
                  sentence,
                  name: signed.name,
                  reason: signed.reason,
                }),
          ),
          order.mayBeSent
            ? say('{strings} strings; every check passes or is signed.', { strings: order.strings.length })
            : openChecks(order.checks.filter(({ signed }) => signed === undefined).length, language),
        ],
      );
      if (!order.mayBeSent) process.exitCode = exitStatus.no;
    });
  orders
    .command('sign')
    .description(say('answer by name for checks of the bass string order that do not pass'))
    .argument('<job>', say('id of the job'))
    .option('--check <id>', say('as becket orders bass-checks prints it; may be given again'), collect, [])
    .option('--all', say('every check that is open'))
    .requiredOption('--name <name>', say('who answers for it'))
    .requiredOption('--reason <words>', say('why it is right all the same'))
    .action(async (job: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<SignOptions>();
      if (options.check.length === 0 && options.all !== true)
        throw new WrongUse(say('Cannot sign nothing: name checks with --check, or give --all.'));
      const signed = await inWorkshop(options, language, async (context) => {
        const { checks } = await readBassOrder(context, job);
        const open = checks.filter((one) => one.signed === undefined).map(({ id }) => id);
        const { name, reason } = options;
        await signBassChecks(context, job, { checks: options.all ? open : options.check, name, reason });
        return readBassOrder(context, job);
      });
      const open = signed.checks.filter((one) => one.signed === undefined).length;
      talk.result(options, { open, mayBeSent: signed.mayBeSent }, [
        open === 0 ? say('Every check passes or is signed.') : openChecks(open, language),
      ]);
    });
  orders
    .command('draft-bass')
    .description(say('draft the order of the bass strings, as they are now'))
    .argument('<job>', say('id of the job'))
    .argument('<supplier>', say('who makes them'))
    .option('--needed-on <day>', say('when they are to be here, YYYY-MM-DD'))
    .action(async (job: string, supplier: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<DraftOptions>();
      const made = await inWorkshop(options, language, (context) =>
        draftBassOrder(context, job, {
          supplier,
          ...(options.neededOn === undefined ? {} : { neededOn: dayOf(options.neededOn) }),
        }),
      );
      show(options, made, made.orders.at(-1));
    });
  for (const [name, to, description] of [
    ['sent', 'sent', message('note that an order was sent')],
    ['confirmed', 'confirmed', message('note that the supplier confirmed it')],
    ['cancelled', 'cancelled', message('note that it was cancelled')],
  ] as const satisfies readonly (readonly [string, OrderMove['to'], Message])[]) {
    orders
      .command(name)
      .description(say(description))
      .argument(...jobArgument)
      .argument('<order>', say('its id, as becket orders list prints it'))
      .option('--on <day>', say('YYYY-MM-DD; today without it'))
      .option('--expected-on <day>', say('the day the supplier promised, YYYY-MM-DD'))
      .option('--note <words>', say('what else is to be known'))
      .action(async (job: string, order: string, _: unknown, command: Command) => {
        const options = command.optsWithGlobals<MoveOptions>();
        const made = await inWorkshop(options, language, (context) =>
          moveOrder(context, journalOf(job), {
            order,
            to,
            on: dayOr(context, options.on),
            expectedOn: options.expectedOn === undefined ? undefined : dayOf(options.expectedOn),
            note: options.note,
          }),
        );
        show(
          options,
          made,
          made.orders.find(({ id }) => id === order),
        );
      });
  }
  orders
    .command('receive')
    .description(say('note what came of an order, and what was measured of it; it goes on the shelf'))
    .argument(...jobArgument)
    .argument('<order>', say('its id'))
    .option('--all', say('all that is outstanding came'))
    .option('--line <line>', say("how much of a line came: '2=10'; may be given again"), collect, [])
    .option(
      '--measured <reading>',
      say("a string that came: 'E2/1 core-diameter 1.05 mm', of {quantities}; may be given again", {
        quantities: receivedQuantities.join(', '),
      }),
      collect,
      [],
    )
    .option('--on <day>', say('YYYY-MM-DD; today without it'))
    .action(async (job: string, id: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<ReceiveOptions>();
      const made = await inWorkshop(options, language, async (context) => {
        const { orders: known } = await ordersOf(context, job);
        const outstanding = known.find((one) => one.id === id)?.lines.filter((one) => one.outstanding > 0);
        return receiveGoods(context, journalOf(job), {
          order: id,
          on: dayOr(context, options.on),
          lines: options.all
            ? (outstanding ?? []).map(({ line, outstanding: quantity }) => ({ line, quantity }))
            : options.line.map((text) => lineIn(text, language)),
          measured: options.measured.map((text) => measureIn(text, language)),
        });
      });
      show(
        options,
        made,
        made.orders.find((one) => one.id === id),
      );
    });
  orders
    .command('undo-receipt')
    .description(say('take back a delivery that was noted by a slip, and what went on the shelf with it'))
    .argument(...jobArgument)
    .argument('<order>', say('its id'))
    .argument('<delivery>', say('its id, as becket --json orders list prints it'))
    .requiredOption('--reason <words>', say('why; kept in the record'))
    .action(async (job: string, order: string, delivery: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<ReasonOptions>();
      const made = await inWorkshop(options, language, (context) =>
        undoDelivery(context, journalOf(job), { order, delivery, reason: options.reason }),
      );
      show(
        options,
        made,
        made.orders.find(({ id }) => id === order),
      );
    });
  orders
    .command('check')
    .description(say('the strings of a bass order as they came: whether they may be strung'))
    .argument('<job>', say('id of the job'))
    .argument('<order>', say('its id'))
    .action(async (job: string, id: string, _: unknown, command: Command) => {
      const options = command.optsWithGlobals<CommonOptions>();
      const checked = await inWorkshop(options, language, async (context) => {
        const known = await ordersOf(context, job);
        const { allowances } = await readShop(context);
        return receivedStrings(
          orderNamed(known, id, language),
          known.signed,
          receivedTolerancesOf(allowances),
          language,
        );
      });
      talk.result(options, checked, [
        ...checked.comparisons.map(
          ({ id: name, sentence, is, signed }) =>
            `${is === 'beyond tolerance' ? '▲' : '·'} ${
              signed === undefined
                ? `${name}: ${sentence}`
                : say('{check}: {sentence} Taken by {name}: {reason}', {
                    check: name,
                    sentence,
                    name: signed.name,
                    reason: signed.reason,
                  })
            }`,
        ),
        ...(checked.notMeasured.length === 0
          ? []
          : [say('Not measured: {what}.', { what: checked.notMeasured.join(', ') })]),
        checked.mayBeStrung ? say('This set may be strung.') : say('Do not string this set yet.'),
      ]);
      if (!checked.mayBeStrung) process.exitCode = exitStatus.no;
    });
  orders
    .command('accept')
    .description(say('take a string as it came, by name and with a reason'))
    .argument('<job>', say('id of the job'))
    .argument('<order>', say('its id'))
    .argument('<difference>', say("as becket orders check prints it: 'received/E2/1/core-diameter'"))
    .requiredOption('--name <name>', say('who takes it'))
    .requiredOption('--reason <words>', say('why'))
    .action(async (job: string, order: string, id: string, _: unknown, command: Command) => {
      const { name, reason, ...options } = command.optsWithGlobals<ReasonOptions>();
      await inWorkshop(options, language, (context) =>
        acceptDifference(context, job, { order, id, name, reason }),
      );
      talk.result(options, { accepted: id, name }, [say('{check} is taken by {name}.', { check: id, name })]);
    });
}

const journalOf = (job: string): Ulid => (job === 'shop' ? SHOP_JOURNAL : job);

async function ordersOf(context: TaskContext, job: string): Promise<Orders> {
  return job === 'shop' ? (await readShop(context)).orders : readOrders(context, job);
}

async function toBuy(context: TaskContext, job: string, neededOn: string | undefined) {
  const shop = await readShop(context);
  if (job === 'shop') return purchaseForShelf(shop.stock, shop.orders.orders, neededOn, context.language);
  const supplies = suppliesOf(await readJob(context, job), orderPolicyOf(shop.allowances), context.language);
  const orders = [...(await readOrders(context, job)).orders, ...shop.orders.orders];
  return purchaseList({ supplies, stock: shop.stock, job, orders, neededOn, language: context.language });
}

function orderNamed({ orders }: Orders, id: string, { say }: Language): Order {
  const order = orders.find((one) => one.id === id);
  if (order !== undefined) return order;
  throw new RangeError(
    say(
      'Cannot find this order: an order of this job is needed, {id} was found. Look at becket orders list.',
      { id },
    ),
  );
}

/** One order, or all of them. */
function showOrders(options: CommonOptions, { orders }: Orders, language: Language, one?: Order): void {
  const { say, day, money } = language;
  const shown = one === undefined ? orders : [one];
  const data = shown.map(
    ({ id, what, supplier, currency, state, neededOn, expectedOn, lines, deliveries }) => ({
      order: id,
      what,
      supplier,
      currency: currency ?? null,
      state,
      neededOn: neededOn ?? null,
      expectedOn: expectedOn ?? null,
      lines,
      deliveries: deliveries.map(({ entry, on, by, lines: came }) => ({
        delivery: entry,
        on,
        by,
        lines: came,
      })),
    }),
  );
  talk.result(options, one === undefined ? data : data[0], [
    ...(shown.length === 0 ? [say('There is no order yet.')] : []),
    ...shown.flatMap(({ id, what, supplier, currency, state, lines, expectedOn }) => [
      expectedOn === undefined
        ? say('{id}  {what}, {supplier}: {state}', { id, what: say(what), supplier, state: say(state) })
        : say('{id}  {what}, {supplier}: {state}, promised for {day}', {
            id,
            what: say(what),
            supplier,
            state: say(state),
            day: day(expectedOn),
          }),
      ...table(
        [say('[of an order] line'), say('what'), say('ordered'), say('received'), say('price of one')],
        lines.map((line) => [
          String(line.line),
          line.what,
          `${line.quantity} ${line.unit}`,
          String(line.received),
          line.priceMinorUnits === undefined || currency === undefined
            ? '—'
            : money(minorUnits(line.priceMinorUnits), currency),
        ]),
      ).map((text) => `  ${text}`),
    ]),
  ]);
}

function dayIn(text: string, { say }: Language): string {
  if (/^\d{4}-\d\d-\d\d$/.test(text) && !Number.isNaN(Date.parse(`${text}T00:00:00Z`))) return text;
  throw new WrongUse(say("Cannot take the day '{text}': a day written YYYY-MM-DD is needed.", { text }));
}
const dayOr = ({ now, language = english }: TaskContext, text: string | undefined): string =>
  text === undefined ? now().toISOString().slice(0, 10) : dayIn(text, language);

const openChecks = (open: number, { say }: Language) =>
  say('{open, plural, one {# check neither passes nor is} other {# checks neither pass nor are}} signed.', {
    open,
  });

function lineIn(text: string, { say }: Language): { line: number; quantity: number } {
  const [, line, quantity] = /^(\d{1,4})=(\d{1,6})$/.exec(text) ?? [];
  if (line !== undefined && quantity !== undefined) return { line: Number(line), quantity: Number(quantity) };
  throw new WrongUse(
    say("Cannot take the line '{text}': its number and how much came is needed, such as '2=10'.", { text }),
  );
}

type Measured = FactOf<'goods-received'>['measured'][number];

function measureIn(text: string, language: Language): Measured {
  const [, note, string, quantity, digits, unit] =
    /^([A-Ga-g]#?\d)\/([1-3]) ([a-z-]+) (\d*[.,]?\d+) ?(mm|in)$/.exec(text.trim()) ?? [];
  const known = receivedQuantities.find((one): one is ReceivedQuantity => one === quantity);
  const key = note === undefined ? undefined : parseNote(note, {}, language);
  if (key === undefined || known === undefined)
    throw new WrongUse(
      language.say(
        "Cannot take the reading '{text}': a string, a quantity and a length are needed, such as 'E2/1 core-diameter 1.05 mm'; quantities are {quantities}.",
        { text, quantities: receivedQuantities.join(', ') },
      ),
    );
  const value = Number(digits!.replace(',', '.'));
  return {
    key,
    string: Number(string),
    quantity: known,
    value_m: inMetres(unit === 'in' ? inches(value) : millimetres(value)),
    asRead: { value, unit: unit === 'in' ? 'in' : 'mm' },
  };
}
