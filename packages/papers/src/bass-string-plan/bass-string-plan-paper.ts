import { bassOrder, type Job } from '@becket/journal';
import type { PaperOptions } from '../every-paper/paper-options.ts';
import { runningLines, shortDigest } from '../every-paper/running-lines.ts';
import { originLine } from '../figures/readings.ts';
import type { Block, PageTree } from '../page-tree.ts';
import { OVERLAP_MM, type PlannedString, plannedString, planSheets } from './plan-sheets.ts';

/**
 * The wound strings at true length, over several sheets: to lay an old string or a new one on, and to see a slip of a decimal
 * place that a table hides.
 */
export function bassStringPlanPaper(job: Job, options: PaperOptions): PageTree {
  const order = bassOrder(job, { signed: options.orders?.signed ?? [] });
  const planned = order.strings.map((string) => ({ string, plan: plannedString(string) }));
  const drawn = planned.flatMap(({ plan }) => plan ?? []);
  const undrawn = planned.filter(({ plan }) => plan === undefined).map(({ string }) => string.note);
  const sheets = planSheets(drawn);
  const blocks: Block[] = [
    { is: 'heading', level: 1, text: 'Bass string plan, 1:1' },
    {
      is: 'paragraph',
      tone: 'lead',
      text: `${drawn.length} wound strings at true length on ${sheets.length} sheets, from ${order.scale}.`,
    },
    {
      is: 'list',
      marks: 'dots',
      items: [
        'Print at 100 %, without fitting to the page. Measure both rulers on every sheet before anything is laid on it: 100 mm and 4 in.',
        `Sheets of one group join by their letters: lay each pair of dashed lines on the pair with the same letter and number. Neighbours overlap by ${OVERLAP_MM} mm.`,
        'Thin line: core, from the inside of the hitch loop at 0 to the front termination. Thick line: winding. The short mark in the bare part is the bridge pin. Thickness is not to scale.',
        `Digest of the strings: ${shortDigest(order.digest)}; the bass string order has it in full.`,
      ],
    },
    ...(undrawn.length === 0
      ? []
      : [
          {
            is: 'box',
            tone: 'note',
            title: 'Not on this plan',
            texts: [
              `${[...new Set(undrawn)].join(', ')}: loop to winding, winding length or the way to the front termination is missing.`,
            ],
          } as const,
        ]),
    ...sheets.flatMap(({ title, drawing }): Block[] => [
      { is: 'page break' },
      { is: 'heading', level: 3, text: title },
      drawing,
    ]),
  ];
  return {
    paper: 'bass string plan',
    title: 'Bass string plan, 1:1',
    language: 'en',
    orientation: 'landscape',
    running: runningLines(job, originLine, options),
    blocks,
    machineTable: {
      columns: ['string', 'winding_start_mm', 'winding_end_mm', 'bridge_pin_mm', 'front_termination_mm'],
      rows: drawn.map((plan: PlannedString) => [
        plan.name,
        plan.windingStart_mm.toFixed(1),
        plan.windingEnd_mm.toFixed(1),
        plan.bridge_mm?.toFixed(1),
        plan.termination_mm.toFixed(1),
      ]),
    },
  };
}
