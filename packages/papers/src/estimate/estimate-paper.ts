import { type EstimateTotals, estimateTotals, type Language } from '@becket/core';
import { estimateStanding, type Job, type MadeEstimate } from '@becket/journal';
import type { PaperOptions } from '../every-paper/paper-options.ts';
import { pianoFacts } from '../every-paper/piano-facts.ts';
import { runningLines } from '../every-paper/running-lines.ts';
import { timeText } from '../figures/amounts.ts';
import type { Block, PageTree } from '../page-tree.ts';
import { answerBlocks, earlierVersions } from './estimate-answer.ts';
import { estimateForMachines } from './estimate-for-machines.ts';
import { conditionalTable, firmTable, inMoney, totalsTable } from './estimate-lines.ts';

/** The estimate in its last version, for the customer to read and to answer. */
export function estimatePaper(job: Job, options: PaperOptions): PageTree {
  const { language } = options;
  const { latest, answer } = estimateStanding(job);
  const totals = latest === undefined ? undefined : estimateTotals(latest);
  const blocks: Block[] =
    latest === undefined || totals === undefined
      ? notMade(job, language)
      : [
          ...head(job, latest, options.at.slice(0, 10), language),
          inShort(latest, totals, language),
          { is: 'heading', level: 2, text: 'The work as planned' },
          firmTable(latest, totals, language),
          ...onlyIfFound(latest, totals, language),
          { is: 'heading', level: 2, text: 'What it comes to' },
          totalsTable(latest, totals, language),
          { is: 'paragraph', tone: 'quiet', text: howItIsAddedUp(latest) },
          ...(latest.note === undefined
            ? []
            : ([
                { is: 'heading', level: 3, text: 'Remarks' },
                { is: 'paragraph', text: latest.note },
              ] as const)),
          {
            is: 'paragraph',
            text: 'If something else comes to light once the strings are off, you will be asked before anything is done about it, with its own price.',
          },
          ...answerBlocks(latest, totals, answer, language),
          ...earlierVersions(job, latest, language),
          ...(options.address === undefined
            ? []
            : [
                {
                  is: 'address code',
                  address: options.address,
                  text: 'The job behind this estimate:',
                } as const,
              ]),
        ];
  const origin =
    latest === undefined
      ? 'No estimate was made yet.'
      : `Version ${latest.version}, made on ${language.day(latest.at)} by ${latest.by}. Sums are exact to the last digit.`;
  return {
    paper: 'estimate',
    title: 'Estimate',
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
  return [
    { is: 'heading', level: 1, text: 'Estimate' },
    {
      is: 'facts',
      rows: [
        { name: 'For', value: job.customer ?? 'not named' },
        { name: 'Job', value: job.title },
        ...pianoFacts(job, language).filter(
          ({ name }) => name !== 'Pitch it is strung for' && name !== 'Compass',
        ),
        { name: 'Version', value: `${version}, of ${language.day(at)}` },
        {
          name: 'Valid until',
          value: validityInWords(validUntil, today, language),
        },
        {
          name: 'Time it takes',
          value:
            workingDays === undefined
              ? 'not said yet'
              : `about ${workingDays} working ${workingDays === 1 ? 'day' : 'days'}`,
        },
      ],
    },
  ];
}

function validityInWords(validUntil: string | undefined, today: string, language: Language): string {
  if (validUntil === undefined) return 'no day is set';
  const day = language.day(validUntil);
  return validUntil < today ? `${day}, which has passed: please ask whether it still holds` : day;
}

function inShort(
  { currency, lines }: MadeEstimate,
  { firm, low, high, minutes }: EstimateTotals,
  language: Language,
): Block {
  const hasConditional = lines.some(({ ifFound }) => ifFound !== undefined);
  return {
    is: 'box',
    tone: 'note',
    title: `${inMoney(firm.gross, currency)}, tax included`,
    texts: [
      `That is the work as planned${minutes > 0 ? `, ${timeText(minutes, language)} of it labour` : ''}.`,
      ...(hasConditional
        ? [
            `Some work is only done if something is found that could not be seen yet. With it, the whole comes to between ${inMoney(low, currency)} and ${inMoney(high, currency)}.`,
          ]
        : []),
    ],
  };
}

function onlyIfFound(estimate: MadeEstimate, totals: EstimateTotals, language: Language): Block[] {
  const table = conditionalTable(estimate, totals, language);
  if (table === undefined) return [];
  return [
    { is: 'heading', level: 2, text: 'Only if it is found' },
    {
      is: 'paragraph',
      text: 'Some things show only once the strings are off. What follows is not part of the sum as planned; it is done only if it is found, and only with your agreement.',
    },
    table,
  ];
}

const howItIsAddedUp = ({ pricesIncludeTax }: MadeEstimate): string =>
  `The prices of the lines are ${pricesIncludeTax ? 'with' : 'without'} tax. Each line is rounded once, half a unit away from zero; tax is worked out on the sum of all lines of one rate and rounded once. What an estimate binds either side to, and which taxes are due, follows the law of the place.`;

function notMade(job: Job, language: Language): Block[] {
  return [
    { is: 'heading', level: 1, text: 'Estimate' },
    {
      is: 'facts',
      rows: [
        { name: 'For', value: job.customer ?? 'not named' },
        { name: 'Job', value: job.title },
        ...pianoFacts(job, language),
      ],
    },
    {
      is: 'box',
      tone: 'note',
      title: 'No estimate was made yet',
      texts: ['Make one under Appraise, then print this paper again.'],
    },
  ];
}
