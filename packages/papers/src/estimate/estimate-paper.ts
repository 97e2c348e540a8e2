import { type EstimateTotals, estimateTotals, type Language, sayKnown } from '@becket/core';
import { estimateStanding, type Job, type MadeEstimate } from '@becket/journal';
import type { PaperOptions } from '../every-paper/paper-options.ts';
import { pianoFacts, pianoForOwner } from '../every-paper/piano-facts.ts';
import { runningLines } from '../every-paper/running-lines.ts';
import { timeText } from '../figures/amounts.ts';
import type { Block, PageTree } from '../page-tree.ts';
import { answerBlocks, earlierVersions } from './estimate-answer.ts';
import { estimateForMachines } from './estimate-for-machines.ts';
import { conditionalTable, firmTable, totalsTable } from './estimate-lines.ts';

/** The estimate in its last version, for the customer to read and to answer. */
export function estimatePaper(job: Job, options: PaperOptions): PageTree {
  const { language } = options;
  const { say } = language;
  const { latest, answer } = estimateStanding(job);
  const totals = latest === undefined ? undefined : estimateTotals(latest);
  const blocks: Block[] =
    latest === undefined || totals === undefined
      ? notMade(job, language)
      : [
          ...head(job, latest, options.at.slice(0, 10), language),
          inShort(latest, totals, language),
          { is: 'heading', level: 2, text: say('The work as planned') },
          firmTable(latest, totals, language),
          ...onlyIfFound(latest, totals, language),
          { is: 'heading', level: 2, text: say('What it comes to') },
          totalsTable(latest, totals, language),
          { is: 'paragraph', tone: 'quiet', text: howItIsAddedUp(latest, language) },
          ...(latest.note === undefined
            ? []
            : ([
                { is: 'heading', level: 3, text: say('Remarks') },
                { is: 'paragraph', text: latest.note },
              ] as const)),
          {
            is: 'paragraph',
            text: say(
              'If something else comes to light once the strings are off, you will be asked before anything is done about it, with its own price.',
            ),
          },
          ...answerBlocks(latest, totals, answer, language),
          ...earlierVersions(job, latest, language),
        ];
  const origin =
    latest === undefined
      ? say('No estimate was made yet.')
      : say('Version {version}, made on {day} by {name}. Sums are exact to the last digit.', {
          version: String(latest.version),
          day: language.day(latest.at),
          name: latest.by,
        });
  return {
    paper: 'estimate',
    title: say('Estimate'),
    language: language.locale,
    orientation: 'portrait',
    running: runningLines(job, origin, options),
    blocks,
    machineTable: estimateForMachines(latest, totals),
  };
}

function head(
  job: Job,
  { version, at, validUntil, workingDays }: MadeEstimate,
  today: string,
  language: Language,
): Block[] {
  const { say } = language;
  return [
    { is: 'heading', level: 1, text: say('Estimate') },
    {
      is: 'facts',
      rows: [
        { name: say('For'), value: job.customer ?? say('not named') },
        { name: say('Job'), value: sayKnown(job.title, language) },
        ...pianoForOwner(job, language),
        {
          name: say('Version'),
          value: say('{version}, of {day}', { version: String(version), day: language.day(at) }),
        },
        {
          name: say('Valid until'),
          value: validityInWords(validUntil, today, language),
        },
        {
          name: say('Time it takes'),
          value:
            workingDays === undefined
              ? say('not said yet')
              : say('about {count, plural, one {{days} working day} other {{days} working days}}', {
                  count: workingDays,
                  days: language.plain(workingDays),
                }),
        },
      ],
    },
  ];
}

function validityInWords(validUntil: string | undefined, today: string, language: Language): string {
  const { say } = language;
  if (validUntil === undefined) return say('no day is set');
  const day = language.day(validUntil);
  return validUntil < today
    ? say('{day}, which has passed: please ask whether it still holds', { day })
    : day;
}

function inShort(
  { currency, lines }: MadeEstimate,
  { firm, low, high, minutes }: EstimateTotals,
  language: Language,
): Block {
  const { say, money } = language;
  const hasConditional = lines.some(({ ifFound }) => ifFound !== undefined);
  return {
    is: 'box',
    tone: 'note',
    title: say('{price}, tax included', { price: money(firm.gross, currency) }),
    texts: [
      minutes > 0
        ? say('That is the work as planned, {time} of it labour.', { time: timeText(minutes, language) })
        : say('That is the work as planned.'),
      ...(hasConditional
        ? [
            say(
              'Some work is only done if something is found that could not be seen yet. With it, the whole comes to between {low} and {high}.',
              { low: money(low, currency), high: money(high, currency) },
            ),
          ]
        : []),
    ],
  };
}

function onlyIfFound(estimate: MadeEstimate, totals: EstimateTotals, language: Language): Block[] {
  const { say } = language;
  const table = conditionalTable(estimate, totals, language);
  if (table === undefined) return [];
  return [
    { is: 'heading', level: 2, text: say('Only if it is found') },
    {
      is: 'paragraph',
      text: say(
        'Some things show only once the strings are off. What follows is not part of the sum as planned; it is done only if it is found, and only with your agreement.',
      ),
    },
    table,
  ];
}

const howItIsAddedUp = ({ pricesIncludeTax }: MadeEstimate, { say }: Language): string =>
  [
    pricesIncludeTax
      ? say('The prices of the lines are with tax.')
      : say('The prices of the lines are without tax.'),
    say(
      'Each line is rounded once, half a unit away from zero; tax is worked out on the sum of all lines of one rate and rounded once.',
    ),
    say('What an estimate binds either side to, and which taxes are due, follows the law of the place.'),
  ].join(' ');

function notMade(job: Job, language: Language): Block[] {
  const { say } = language;
  return [
    { is: 'heading', level: 1, text: say('Estimate') },
    {
      is: 'facts',
      rows: [
        { name: say('For'), value: job.customer ?? say('not named') },
        { name: say('Job'), value: sayKnown(job.title, language) },
        ...pianoFacts(job, language),
      ],
    },
    {
      is: 'box',
      tone: 'note',
      title: say('No estimate was made yet'),
      texts: [say('Make one under Appraise, then print this paper again.')],
    },
  ];
}
