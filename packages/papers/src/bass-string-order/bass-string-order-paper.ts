import { asFoundRecord, type Job } from '@becket/journal';
import type { PaperOptions } from '../every-paper/paper-options.ts';
import { pianoFacts } from '../every-paper/piano-facts.ts';
import { counted, runningLines, sealBox } from '../every-paper/running-lines.ts';
import { originLine } from '../figures/readings.ts';
import type { Block, PageTree } from '../page-tree.ts';
import { loopsTable } from './loops-table.ts';
import { orderForMachines } from './order-for-machines.ts';
import { type OrderLine, orderLines } from './order-lines.ts';
import { orderTable } from './order-table.ts';
import { toBeConfirmed } from './to-be-confirmed.ts';

/**
 * The bass string order: every wound string of the piano as it was found, for whoever makes the new ones.
 *
 * The customer is not named: a maker of strings does not need to know whose piano it is.
 */
export function bassStringOrderPaper(job: Job, options: PaperOptions): PageTree {
  const lines = orderLines(job);
  const unit = options.firstUnit;
  const loops = loopsTable(lines, unit);
  const blocks: Block[] = [
    { is: 'heading', level: 1, text: 'Bass string order' },
    {
      is: 'paragraph',
      tone: 'lead',
      text: 'Wound strings to be made as the old ones were found. No figure is improved, smoothed or rounded to a size; a figure that nobody has is a blank.',
    },
    {
      is: 'facts',
      rows: [
        { name: 'Job', value: job.title },
        ...pianoFacts(job),
        { name: 'Strings wanted', value: wantedInWords(lines) },
      ],
    },
    sealBox(job, options.isSealIntact),
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
    { is: 'list', marks: 'boxes', items: toBeConfirmed(job, lines, unit) },
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
          orderTable(lines, unit),
          ...(loops === undefined ? [] : [loops]),
        ] as const)),
  ];
  return {
    paper: 'bass string order',
    title: 'Bass string order',
    language: 'en',
    orientation: 'landscape',
    running: runningLines(job, originLine, options),
    blocks,
    machineTable: orderForMachines(job, lines),
  };
}

function wantedInWords(lines: readonly OrderLine[]): string {
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
