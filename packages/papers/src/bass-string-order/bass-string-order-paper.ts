import type { Language } from '@becket/core';
import { asFoundRecord, type BassOrder, bassOrder, type Job } from '@becket/journal';
import type { PaperOptions } from '../every-paper/paper-options.ts';
import { pianoFacts } from '../every-paper/piano-facts.ts';
import { counted, runningLines, sealBox } from '../every-paper/running-lines.ts';
import { type LengthUnit, lengthText } from '../figures/lengths.ts';
import { originLine } from '../figures/readings.ts';
import type { Block, PageTree } from '../page-tree.ts';
import { loopsTable } from './loops-table.ts';
import { checksChapter, orderLog, orderWarnings } from './order-checks.ts';
import { orderForMachines } from './order-for-machines.ts';
import { type OrderNote, orderLines, orderNotes } from './order-lines.ts';
import { orderTable } from './order-table.ts';
import { toBeConfirmed } from './to-be-confirmed.ts';

/**
 * The bass string order: every wound string to be made, string by string, for whoever makes them.
 *
 * Core and windings are those of the chosen scale, and until one is chosen those as found.
 *
 * The customer is not named: a maker of strings does not need to know whose piano it is.
 */
export function bassStringOrderPaper(job: Job, options: PaperOptions): PageTree {
  const { firstUnit: unit, language } = options;
  const { orders = [], signed = [] } = options.orders ?? {};
  const order = bassOrder(job, { signed, lengthUnit: unit });
  const lines = orderLines(order);
  const notes = orderNotes(job, order);
  const loops = loopsTable(lines, unit, language);
  const blocks: Block[] = [
    { is: 'heading', level: 1, text: 'Bass string order' },
    {
      is: 'paragraph',
      tone: 'lead',
      text: leadOf(order),
    },
    {
      is: 'facts',
      rows: [
        { name: 'Job', value: job.title },
        ...pianoFacts(job, language),
        { name: 'Strings wanted', value: wantedInWords(notes) },
        { name: 'Made from', value: order.scale },
        { name: 'Digest of the strings', value: `SHA-256 ${order.digest}` },
        { name: 'Allowances', value: allowancesInWords(order, unit, language) },
        ...orderLog(orders, language).map((value) => ({ name: 'Order', value })),
      ],
    },
    ...orderWarnings(order, orders),
    sealBox(job, options.isSealIntact, language),
    ...undescribedNotes(job),
    ...(options.address === undefined
      ? []
      : [
          {
            is: 'address code',
            address: options.address,
            text: 'The job behind this order, with every reading:',
          } as const,
        ]),
    { is: 'page break' },
    { is: 'heading', level: 2, text: 'To be confirmed before ordering' },
    {
      is: 'paragraph',
      text: 'Strings made to order cannot be sent back. Tick each line once it is settled and written in.',
    },
    { is: 'list', marks: 'boxes', items: toBeConfirmed(job, notes, language) },
    ...checksChapter(order, language),
    {
      is: 'box',
      tone: 'caution',
      title: 'If an old string goes along as a pattern',
      texts: [
        'Coil it, tie it in three places and cover both ends before it is posted: old wire springs and cuts.',
      ],
    },
    ...(lines.length === 0
      ? []
      : ([
          { is: 'page break' },
          { is: 'heading', level: 2, text: 'The strings' },
          orderTable(lines, unit, language),
          ...(loops === undefined ? [] : [loops]),
        ] as const)),
  ];
  return {
    paper: 'bass string order',
    title: 'Bass string order',
    language: language.locale,
    orientation: 'landscape',
    running: runningLines(job, originLine, options),
    blocks,
    machineTable: orderForMachines(job, order, lines),
  };
}

function leadOf({ scale }: BassOrder): string {
  return `Wound strings to be made from ${scale}. No figure is improved, smoothed or rounded to a size; a figure that nobody has is a blank.`;
}

/** What was added to what was measured, so that a maker adds nothing twice. */
function allowancesInWords({ allowances }: BassOrder, unit: LengthUnit, language: Language): string {
  const { coils, becket_m, waste_m, source } = allowances;
  const say = (length: number) => `${lengthText(length, unit, 'length', language)} ${unit}`;
  return `none in any length from loop to termination. Core beyond the front termination: front length, ${coils} coils on the pin, ${say(becket_m)} for its eye and ${say(waste_m)} to cut off (${source}).`;
}

function wantedInWords(lines: readonly OrderNote[]): string {
  if (lines.length === 0) return 'none: no note of this record is described as wound';
  const strings = lines.reduce((sum, { note }) => sum + (note.strings ?? 0), 0);
  const unsaid = lines.filter(({ note }) => note.strings === undefined).length;
  const open = unsaid === 0 ? '' : `; for ${counted(unsaid, 'note', 'notes')} the number is not said`;
  return `${strings} for ${counted(lines.length, 'note', 'notes')}${open}`;
}

function undescribedNotes(job: Job): Block[] {
  const undescribed = asFoundRecord(job).notes.filter((note) => note.winding === undefined);
  if (undescribed.length === 0) return [];
  return [
    {
      is: 'box',
      tone: 'note',
      title: 'This order may not be whole',
      texts: [
        `For ${counted(undescribed.length, 'note', 'notes')} (${undescribed[0]!.note} and up) nobody has said whether the strings are plain or wound. They are not in this order.`,
      ],
    },
  ];
}
