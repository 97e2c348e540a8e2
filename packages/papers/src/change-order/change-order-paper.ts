import type { Language } from '@becket/core';
import type { Job } from '@becket/journal';
import type { PaperOptions } from '../every-paper/paper-options.ts';
import { pianoFacts } from '../every-paper/piano-facts.ts';
import { placeInWords } from '../every-paper/place-in-words.ts';
import { printedPhoto } from '../every-paper/printed-photo.ts';
import { counted, runningLines, shortDigest } from '../every-paper/running-lines.ts';
import type { LengthUnit } from '../figures/lengths.ts';
import type { Block, FactList, PageTree } from '../page-tree.ts';
import { changeForMachines } from './change-for-machines.ts';
import { answerInWords, type ChangeLine, changeLines, changeTable, totalsInWords } from './change-lines.ts';
import { priceText } from './price-text.ts';

/** The change order: what came to light only after the strip, what it would take, and room for the customer to decide. */
export function changeOrderPaper(job: Job, options: PaperOptions): PageTree {
  const { language } = options;
  const lines = changeLines(job);
  const blocks: Block[] = [
    { is: 'heading', level: 1, text: 'Change order' },
    {
      is: 'paragraph',
      tone: 'lead',
      text: 'What came to light only once the strings were off, and what it would take. Nothing of it is agreed until you have said so in writing.',
    },
    {
      is: 'facts',
      rows: [
        { name: 'Job', value: job.title },
        { name: 'Customer', value: job.customer ?? 'not named' },
        ...pianoFacts(job, language).filter(
          ({ name }) => name !== 'Pitch it is strung for' && name !== 'Compass',
        ),
        { name: 'As-found record', value: sealInWords(job, options.isSealIntact, language) },
      ],
    },
    ...(lines.length === 0
      ? [{ is: 'paragraph', text: 'Nothing was noted as found after the strip so far.' } as const]
      : toDecide(job, lines, options)),
  ];
  return {
    paper: 'change order',
    title: 'Change order',
    language: language.locale,
    orientation: 'portrait',
    running: runningLines(job, 'Prices and days as the shop noted them beside each line.', options),
    blocks,
    machineTable: changeForMachines(job, lines),
  };
}

function toDecide(
  job: Job,
  lines: readonly ChangeLine[],
  { address, firstUnit, language }: PaperOptions,
): Block[] {
  return [
    { is: 'heading', level: 2, text: 'In short' },
    changeTable(lines, language),
    totals(lines),
    ...stopBox(lines),
    ...decision(lines),
    { is: 'heading', level: 2, text: 'Line by line' },
    ...lines.flatMap((line) => oneLine(job, line, firstUnit, language)),
    ...(address === undefined
      ? []
      : [
          {
            is: 'address code',
            address,
            text: 'The job behind this paper, with every photo:',
          } as const,
        ]),
  ];
}

/** What was known before, and whether it can be relied on: only what is not in it may be on this paper. */
function sealInWords({ seal }: Job, isSealIntact: boolean | undefined, language: Language): string {
  if (seal === undefined) return 'not sealed: it cannot be shown what was known before the strip';
  const sealed = `sealed on ${language.day(seal.at)} by ${seal.by}, digest ${shortDigest(seal.digest)}`;
  return isSealIntact === false
    ? `${sealed}. CAREFUL: the entries under the seal do not match it; compare with an older copy.`
    : sealed;
}

/** One sum while nothing is answered; once something is, each kind of answer has its own. */
function totals(lines: readonly ChangeLine[]): FactList {
  const isOf = (wanted: 'agreed' | 'declined' | undefined) =>
    lines.filter(({ answer }) => answer?.answer === wanted);
  const kinds = [
    { name: 'Agreed', own: isOf('agreed') },
    { name: 'Declined', own: isOf('declined') },
    { name: 'Still to be decided', own: isOf(undefined) },
  ].filter(({ own }) => own.length > 0);
  const isAnswered = lines.some(({ answer }) => answer !== undefined);
  return {
    is: 'facts',
    rows: [
      ...(isAnswered ? kinds : [{ name: 'Together', own: lines }]).map(({ name, own }) => ({
        name,
        value: `${totalsInWords(own)} (${counted(own.length, 'line', 'lines')})`,
      })),
      { name: 'Tax', value: 'The record does not say whether the prices include it: ______________' },
    ],
  };
}

/** Whether structure will bear is not for this paper to say. */
function stopBox(lines: readonly ChangeLine[]): Block[] {
  const stopping = lines.filter(({ damage }) => damage.gravity === 'stop the work');
  if (stopping.length === 0) return [];
  const numbers = stopping.map(({ number }) => number).join(', ');
  return [
    {
      is: 'box',
      tone: 'caution',
      title: 'The work stops here',
      texts: [
        `${stopping.length === 1 ? `Line ${numbers} has` : `Lines ${numbers} have`} to be settled before anything else is done to this piano.`,
        'Whether plate, block and frame will bear new strings is for the maker’s data and a licensed or specialist trade to judge; local rules come first.',
      ],
    },
  ];
}

function decision(lines: readonly ChangeLine[]): Block[] {
  const waiting = lines.filter(({ answer }) => answer === undefined);
  if (waiting.length === 0)
    return [{ is: 'paragraph', text: 'Every line has its answer; there is nothing left to decide.' }];
  const isUnpriced = waiting.some(({ damage }) => damage.priceMinorUnits === undefined);
  return [
    { is: 'heading', level: 2, text: 'Your decision' },
    {
      is: 'list',
      marks: 'boxes',
      items: [
        `I agree to every line that is priced and not yet decided${isUnpriced ? '; not to those without a price' : ''}.`,
        'I agree only to the lines where “yes” is marked above.',
        ...(isUnpriced
          ? ['Tell me the price of the lines without one before you do anything about them.']
          : []),
        'I agree to none of it. I have read what may follow from leaving it.',
      ],
    },
    { is: 'signature lines', names: ['name', 'day', 'signature'] },
  ];
}

function oneLine(
  job: Job,
  { number, damage, answer }: ChangeLine,
  unit: LengthUnit,
  language: Language,
): Block[] {
  const { what, place, gravity, reason, whatToDo, priceMinorUnits, currency, days, at, by } = damage;
  const photo = job.photos.find(({ digest }) => digest === damage.photo);
  return [
    { is: 'heading', level: 3, text: `${number}. ${what}` },
    {
      is: 'facts',
      rows: [
        { name: 'Where', value: placeInWords(place, language) },
        { name: 'How grave', value: gravity },
        { name: 'What to do about it', value: whatToDo },
        { name: 'Not seen before', value: reason },
        {
          name: 'Price',
          value:
            priceMinorUnits === undefined || currency === undefined
              ? 'not priced yet'
              : priceText(priceMinorUnits, currency),
        },
        { name: 'Working days it adds', value: days === undefined ? 'not said yet' : String(days) },
        { name: 'Noted', value: `${language.day(at)} by ${by}` },
        ...(answer === undefined
          ? []
          : [
              {
                name: 'Answer',
                value: `${answerInWords(answer, language)}${answer.note === undefined ? '' : `: “${answer.note}”`}`,
              },
            ]),
        ...(photo === undefined
          ? [
              {
                name: 'Photo',
                value: damage.photo === undefined ? 'none' : 'one was named, and taken out of the job since',
              },
            ]
          : []),
      ],
    },
    ...(photo === undefined
      ? []
      : [{ is: 'photos', photos: [printedPhoto(photo, unit, language)] } as const]),
  ];
}
