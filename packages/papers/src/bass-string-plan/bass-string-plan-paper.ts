import { english } from '@becket/core';
import { type BassAllowances, bassOrder, type Job } from '@becket/journal';
import type { PaperOptions } from '../every-paper/paper-options.ts';
import { runningLines, shortDigest } from '../every-paper/running-lines.ts';
import { originLine } from '../figures/readings.ts';
import type { Block, PageTree } from '../page-tree.ts';
import { OVERLAP_MM, type PlannedString, plannedString, planSheets } from './plan-sheets.ts';

/**
 * The wound strings at true length, over several sheets: to lay an old string or a new one on, and to see a slip of a decimal
 * place that a table hides.
 */
export function bassStringPlanPaper(job: Job, options: PaperOptions, allowances?: BassAllowances): PageTree {
  const order = bassOrder(job, { signed: options.orders?.signed ?? [], allowances }, options.language);
  const { language } = options;
  const { say, plain } = language;
  const planned = order.strings.map((string) => ({ string, plan: plannedString(string, language) }));
  const drawn = planned.flatMap(({ plan }) => plan ?? []);
  const undrawn = planned.filter(({ plan }) => plan === undefined).map(({ string }) => string.note);
  const forMachines = order.strings.flatMap((string) => plannedString(string, english) ?? []);
  const sheets = planSheets(drawn, language);
  const blocks: Block[] = [
    { is: 'heading', level: 1, text: say('Bass string plan, 1:1') },
    {
      is: 'paragraph',
      tone: 'lead',
      text:
        drawn.length === 0
          ? say('No wound string can be drawn yet, from {scale}.', { scale: order.scale })
          : say(
              '{strings, plural, one {# wound string} other {# wound strings}} at true length on {sheets, plural, one {# sheet} other {# sheets}}, from {scale}.',
              { strings: drawn.length, sheets: sheets.length, scale: order.scale },
            ),
    },
    {
      is: 'list',
      marks: 'dots',
      items: [
        say(
          'Print at 100 %, without fitting to the page. Measure both rulers on every sheet before anything is laid on it: 100 mm and 4 in.',
        ),
        say(
          'Sheets of one group join by their letters: lay each pair of dashed lines on the pair with the same letter and number. Neighbours overlap by {overlap} mm.',
          { overlap: plain(OVERLAP_MM) },
        ),
        say(
          'Thin line: core, from the inside of the hitch loop at 0 to the front termination. Thick line: winding. The short mark in the bare part is the bridge pin. Thickness is not to scale.',
        ),
        say('Digest of the strings: {digest}; the bass string order has it in full.', {
          digest: shortDigest(order.digest),
        }),
      ],
    },
    ...(undrawn.length === 0
      ? []
      : [
          {
            is: 'box',
            tone: 'note',
            title: say('Not on this plan'),
            texts: [
              say(
                '{notes}: loop to winding, winding length or the way to the front termination is missing.',
                { notes: [...new Set(undrawn)].join(', ') },
              ),
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
    title: say('Bass string plan, 1:1'),
    language: language.locale,
    orientation: 'landscape',
    running: runningLines(job, say(originLine), options),
    blocks,
    machineTable: {
      columns: ['string', 'winding_start_mm', 'winding_end_mm', 'bridge_pin_mm', 'front_termination_mm'],
      rows: forMachines.map((plan: PlannedString) => [
        plan.name,
        plan.windingStart_mm.toFixed(1),
        plan.windingEnd_mm.toFixed(1),
        plan.bridge_mm?.toFixed(1),
        plan.termination_mm.toFixed(1),
      ]),
    },
  };
}
