import { type Language, sayKnown } from '@becket/core';
import type { Job } from '@becket/journal';
import type { PaperOptions } from '../every-paper/paper-options.ts';
import { runningLines } from '../every-paper/running-lines.ts';
import type { Block, PageTree, Table } from '../page-tree.ts';
import type { NeedRow, PurchaseFigures, PurchaseRow } from './purchase-figures.ts';

/** What to buy for a job, by supplier and by size, against what lies on the shelf. It names no customer. */
export function purchaseListPaper(job: Job, options: PaperOptions, figures: PurchaseFigures): PageTree {
  const { language } = options;
  const { say, day } = language;
  const { suppliers, notListed, covered, unknown, bySize, notCounted, allowances } = figures;
  const isEmpty = [suppliers, notListed, unknown].every((list) => list.length === 0);
  const blocks: Block[] = [
    { is: 'heading', level: 1, text: say('Purchase list') },
    {
      is: 'paragraph',
      tone: 'lead',
      text: isEmpty
        ? say('Nothing is to be bought: what the job needs is covered, or nothing could be counted yet.')
        : say('What the job needs beyond the stock, counted from {scale}.', { scale: figures.scale }),
    },
    {
      is: 'facts',
      rows: [
        { name: say('Job'), value: sayKnown(job.title, language) },
        {
          name: say('Needed on'),
          value: figures.neededOn === undefined ? say('not said') : day(figures.neededOn),
        },
        ...suppliers.map(({ supplier, currency, total, orderBy }) => ({
          name: supplier,
          value:
            orderBy === undefined
              ? `${total} ${currency}`
              : say('{total} {currency}, to be ordered by {day}', { total, currency, day: day(orderBy) }),
        })),
      ],
    },
    ...(figures.isChosenScale
      ? []
      : [
          {
            is: 'box',
            tone: 'caution',
            title: say('No scale has been chosen'),
            texts: [
              say(
                'Sizes are those that the old wire speaks for. Choose the scale to be strung before wire is bought.',
              ),
            ],
          } as const,
        ]),
    ...(figures.scaleProblem === undefined
      ? []
      : [
          {
            is: 'box',
            tone: 'caution',
            title: say('The scale has changed'),
            texts: [figures.scaleProblem],
          } as const,
        ]),
    ...(notCounted.length === 0
      ? []
      : [{ is: 'box', tone: 'note', title: say('Not counted yet'), texts: [...notCounted] } as const]),
    ...suppliers.flatMap(({ supplier, currency, rows }): Block[] => [
      { is: 'heading', level: 2, text: supplier },
      supplierTable(rows, currency, language),
    ]),
    ...needChapter(say('To buy, but in no price list'), notListed, language),
    ...needChapter(say('Not known yet'), unknown, language),
    ...needChapter(say('Covered by the stock or on order'), covered, language),
    // Where no price list has any of them, they have just been listed.
    ...(bySize.every(isAmong(notListed)) ? [] : needChapter(say('Wire and pins by size'), bySize, language)),
    ...(figures.orders.length === 0
      ? []
      : ([
          { is: 'heading', level: 3, text: say('Orders so far') },
          { is: 'list', marks: 'dots', items: [...figures.orders] },
        ] as const)),
    { is: 'heading', level: 3, text: say('Allowances') },
    { is: 'list', marks: 'dots', items: [...allowances] },
  ];
  return {
    paper: 'purchase list',
    title: say('Purchase list'),
    language: language.locale,
    orientation: 'landscape',
    running: runningLines(
      job,
      say(
        'Quantities are counted from the scale, the loop plan, the pins and the soft parts of this job; prices are those of the lists kept.',
      ),
      options,
    ),
    blocks,
    machineTable: {
      columns: [
        'supplier',
        'article',
        'item',
        'what',
        'unit',
        'needed',
        'to_buy',
        'packs',
        'pack',
        'pack_holds',
        'price',
        'total',
        'currency',
        'order_by',
      ],
      rows: suppliers.flatMap(({ supplier, currency, rows }) =>
        rows.map(({ what, article, packs, pack, orderBy, machine }) => [
          supplier,
          article,
          machine.item,
          what,
          machine.unit,
          String(machine.needed),
          String(machine.toBuy),
          String(packs),
          pack,
          String(machine.packHolds),
          machine.price,
          machine.total,
          currency,
          orderBy,
        ]),
      ),
    },
  };
}

function supplierTable(rows: readonly PurchaseRow[], currency: string, { say, day }: Language): Table {
  const remarks = rows.flatMap(({ what, remark }) => (remark === undefined ? [] : [`${what}: ${remark}.`]));
  return {
    is: 'table',
    columns: [
      { heading: say('article'), align: 'left', share: 60 },
      { heading: say('what'), align: 'left', share: 184 },
      { heading: say('[a quantity] needed'), align: 'right', share: 55 },
      { heading: say('[a quantity] covered'), align: 'left', share: 84, tone: 'quiet' },
      { heading: say('[so many packs] buy'), align: 'right', share: 28 },
      { heading: say('[packs] of'), align: 'left', share: 80 },
      { group: currency, heading: say('[price] each'), align: 'right', share: 50 },
      { group: currency, heading: say('[price] total'), align: 'right', share: 55 },
      { heading: say('order by'), align: 'right', share: 72 },
    ],
    rows: rows.map((row) => ({
      cells: [
        row.article,
        row.what,
        row.needed,
        row.covered,
        String(row.packs),
        row.pack,
        row.price,
        row.total,
        row.orderBy === undefined ? { absent: say('no day') } : day(row.orderBy),
      ],
    })),
    ...(remarks.length === 0 ? {} : { remarks }),
  };
}

function needChapter(title: string, rows: readonly NeedRow[], { say }: Language): Block[] {
  if (rows.length === 0) return [];
  return [
    {
      is: 'table',
      title,
      columns: [
        { heading: say('what'), align: 'left', share: 190 },
        { heading: say('[a quantity] needed'), align: 'right', share: 55 },
        { heading: say('on the shelf'), align: 'right', share: 60, tone: 'quiet' },
        { heading: say('to buy'), align: 'right', share: 55 },
        { heading: say('counted from'), align: 'left', share: 260, tone: 'quiet' },
      ],
      rows: rows.map(({ what, needed, onHand, toBuy, because }) => ({
        cells: [what, needed === say('unknown') ? { blank: needed } : needed, onHand, toBuy, because],
      })),
    },
  ];
}

const isAmong =
  (listed: readonly NeedRow[]) =>
  (row: NeedRow): boolean =>
    listed.some(({ what, needed }) => what === row.what && needed === row.needed);
