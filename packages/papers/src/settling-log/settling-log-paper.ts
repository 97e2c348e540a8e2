import { message } from '@becket/core';
import type { Job } from '@becket/journal';
import type { PaperOptions } from '../every-paper/paper-options.ts';
import { pianoFacts } from '../every-paper/piano-facts.ts';
import { runningLines } from '../every-paper/running-lines.ts';
import type { Block, PageTree } from '../page-tree.ts';
import { followUpBlocks } from './follow-up-blocks.ts';
import { blankPass, nextPassBlocks } from './next-pass-blocks.ts';
import { mishapBlocks, passesTable } from './pass-blocks.ts';
import { settlingChart } from './settling-chart.ts';
import type { SettlingFigures } from './settling-figures.ts';
import { settlingForMachines } from './settling-for-machines.ts';

/** What is said where wire is raised; the same words stand on the screen. */
export const raisingCautions = [
  message(
    'Wear eye protection, and stand aside of the strings that are raised: wire that breaks flies along its line.',
  ),
  message('Never pull a string above the limit of its break load, and bring the whole piano up evenly.'),
  message(
    'What plate and frame bear is for the maker’s data and licensed or specialist trades to judge; local rules come first.',
  ),
] as const;

/**
 * The settling log: every pass by section with its air, what broke, how the sections stood, what the next pass should be, the days
 * to come, and blank rows to fill in at the piano.
 */
export function settlingLogPaper(job: Job, options: PaperOptions, figures: SettlingFigures): PageTree {
  const { language } = options;
  const { say } = language;
  const { settling, plan, remarks, today } = figures;
  const chart = settlingChart(settling, language);
  const blocks: Block[] = [
    { is: 'heading', level: 1, text: say('Settling log') },
    {
      is: 'paragraph',
      tone: 'lead',
      text: say(
        'New wire stretches and the board gives way: a piano that was restrung is raised several times until it stays. This is how it went, by section.',
      ),
    },
    {
      is: 'facts',
      rows: [
        { name: say('Job'), value: job.title },
        ...pianoFacts(job, language),
        {
          name: say('Passes'),
          value:
            settling.passes.length === 0
              ? say('none recorded yet')
              : say('{count, plural, one {#, on {last}} other {#, from {first} to {last}}}', {
                  count: settling.passes.length,
                  first: language.day(settling.passes[0]!.on),
                  last: language.day(settling.passes.at(-1)!.on),
                }),
        },
      ],
    },
    {
      is: 'box',
      tone: 'caution',
      title: say('While the pitch is raised'),
      texts: raisingCautions.map((text) => say(text)),
    },
    { is: 'heading', level: 2, text: say('The passes') },
    ...passesTable(settling, language),
    ...(chart.length === 0 ? [] : chart),
    ...mishapBlocks(settling, language),
    { is: 'heading', level: 2, text: say('The next pass') },
    ...nextPassBlocks(plan, remarks, language),
    { is: 'heading', level: 2, text: say('Follow-ups') },
    ...followUpBlocks(settling, today, language),
    { is: 'page break' },
    ...blankPass(plan, language),
  ];
  return {
    paper: 'settling log',
    title: say('Settling log'),
    language: language.locale,
    orientation: 'portrait',
    running: runningLines(
      job,
      say('Offsets are readings in cents from the pitch of their pass; overpull and limit are calculated.'),
      options,
    ),
    blocks,
    machineTable: settlingForMachines(settling),
  };
}
