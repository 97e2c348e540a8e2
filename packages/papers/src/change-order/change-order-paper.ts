import { type Language, type LengthUnit, sayKnown } from '@becket/core';
import type { Job } from '@becket/journal';
import type { PaperOptions } from '../every-paper/paper-options.ts';
import { pianoForOwner } from '../every-paper/piano-facts.ts';
import { placeInWords } from '../every-paper/place-in-words.ts';
import { photosBlock, printedPhoto } from '../every-paper/printed-photo.ts';
import { runningLines, shortDigest } from '../every-paper/running-lines.ts';
import type { Block, FactList, PageTree } from '../page-tree.ts';
import { changeForMachines } from './change-for-machines.ts';
import { answerInWords, type ChangeLine, changeLines, changeTable, totalsInWords } from './change-lines.ts';
import { priceText } from './price-text.ts';

/** The change order: what came to light only after the strip, what it would take, and room for the customer to decide. */
export function changeOrderPaper(job: Job, options: PaperOptions): PageTree {
  const { language } = options;
  const { say } = language;
  const lines = changeLines(job);
  const blocks: Block[] = [
    { is: 'heading', level: 1, text: say('Change order') },
    {
      is: 'paragraph',
      tone: 'lead',
      text: say(
        'What came to light only once the strings were off, and what it would take. Nothing of it is agreed until you have said so in writing.',
      ),
    },
    {
      is: 'facts',
      rows: [
        { name: say('Job'), value: sayKnown(job.title, language) },
        { name: say('Customer'), value: job.customer ?? say('not named') },
        ...pianoForOwner(job, language),
        { name: say('As-found record'), value: sealInWords(job, options.isSealIntact, language) },
      ],
    },
    ...(lines.length === 0
      ? [{ is: 'paragraph', text: say('Nothing was noted as found after the strip so far.') } as const]
      : toDecide(job, lines, options)),
  ];
  return {
    paper: 'change order',
    title: say('Change order'),
    language: language.locale,
    orientation: 'portrait',
    running: runningLines(job, say('Prices and days as the shop noted them beside each line.'), options),
    blocks,
    machineTable: changeForMachines(job, lines),
  };
}

function toDecide(job: Job, lines: readonly ChangeLine[], { firstUnit, language }: PaperOptions): Block[] {
  const { say } = language;
  return [
    { is: 'heading', level: 2, text: say('In short') },
    changeTable(lines, language),
    totals(lines, language),
    ...stopBox(lines, language),
    ...decision(lines, language),
    { is: 'heading', level: 2, text: say('Line by line') },
    ...lines.flatMap((line) => oneLine(job, line, firstUnit, language)),
  ];
}

/** What was known before, and whether it can be relied on: only what is not in it may be on this paper. */
function sealInWords({ seal }: Job, isSealIntact: boolean | undefined, { say, day }: Language): string {
  if (seal === undefined) return say('not sealed: it cannot be shown what was known before the strip');
  const sealed = say('sealed on {day} by {name}, digest {digest}', {
    day: day(seal.at),
    name: seal.by,
    digest: shortDigest(seal.digest),
  });
  return isSealIntact === false
    ? `${sealed}. ${say('CAREFUL: the entries under the seal do not match it; compare with an older copy.')}`
    : sealed;
}

/** One sum while nothing is answered; once something is, each kind of answer has its own. */
function totals(lines: readonly ChangeLine[], language: Language): FactList {
  const { say } = language;
  const isOf = (wanted: 'agreed' | 'declined' | undefined) =>
    lines.filter(({ answer }) => answer?.answer === wanted);
  const kinds = [
    { name: say('[lines] Agreed'), own: isOf('agreed') },
    { name: say('[lines] Declined'), own: isOf('declined') },
    { name: say('Still to be decided'), own: isOf(undefined) },
  ].filter(({ own }) => own.length > 0);
  const isAnswered = lines.some(({ answer }) => answer !== undefined);
  return {
    is: 'facts',
    rows: [
      ...(isAnswered ? kinds : [{ name: say('[a sum] Together'), own: lines }]).map(({ name, own }) => ({
        name,
        value: say('{totals} ({count, plural, one {# line} other {# lines}})', {
          totals: totalsInWords(own, language),
          count: own.length,
        }),
      })),
      {
        name: say('Tax'),
        value: say('The record does not say whether the prices include it: ______________'),
      },
    ],
  };
}

/** Whether structure will bear is not for this paper to say. */
function stopBox(lines: readonly ChangeLine[], { say }: Language): Block[] {
  const stopping = lines.filter(({ damage }) => damage.gravity === 'stop the work');
  if (stopping.length === 0) return [];
  const numbers = stopping.map(({ number }) => number).join(', ');
  return [
    {
      is: 'box',
      tone: 'caution',
      title: say('The work stops here'),
      texts: [
        say(
          '{count, plural, one {Line {numbers} has} other {Lines {numbers} have}} to be settled before anything else is done to this piano.',
          { count: stopping.length, numbers },
        ),
        say(
          'Whether plate, block and frame will bear new strings is for the maker’s data and a licensed or specialist trade to judge; local rules come first.',
        ),
      ],
    },
  ];
}

function decision(lines: readonly ChangeLine[], { say }: Language): Block[] {
  const waiting = lines.filter(({ answer }) => answer === undefined);
  if (waiting.length === 0)
    return [{ is: 'paragraph', text: say('Every line has its answer; there is nothing left to decide.') }];
  const isUnpriced = waiting.some(({ damage }) => damage.priceMinorUnits === undefined);
  return [
    { is: 'heading', level: 2, text: say('Your decision') },
    {
      is: 'list',
      marks: 'boxes',
      items: [
        isUnpriced
          ? say('I agree to every line that is priced and not yet decided; not to those without a price.')
          : say('I agree to every line that is priced and not yet decided.'),
        say('I agree only to the lines where “yes” is marked above.'),
        ...(isUnpriced
          ? [say('Tell me the price of the lines without one before you do anything about them.')]
          : []),
        say('I agree to none of it. I have read what may follow from leaving it.'),
      ],
    },
    { is: 'signature lines', names: [say('name'), say('day'), say('signature')] },
  ];
}

function oneLine(
  job: Job,
  { number, damage, answer }: ChangeLine,
  unit: LengthUnit,
  language: Language,
): Block[] {
  const { say, day, plain } = language;
  const { what, place, gravity, reason, whatToDo, priceMinorUnits, currency, days, at, by } = damage;
  const photo = job.photos.find(({ digest }) => digest === damage.photo);
  return [
    { is: 'heading', level: 3, text: `${number}. ${what}` },
    {
      is: 'facts',
      rows: [
        { name: say('Where'), value: placeInWords(place, language) },
        { name: say('How grave'), value: say(gravity) },
        { name: say('What to do about it'), value: whatToDo },
        { name: say('Not seen before'), value: reason },
        {
          name: say('Price'),
          value:
            priceMinorUnits === undefined || currency === undefined
              ? say('not priced yet')
              : priceText(priceMinorUnits, currency, language),
        },
        { name: say('Working days it adds'), value: days === undefined ? say('not said yet') : plain(days) },
        { name: say('Noted'), value: say('{day} by {name}', { day: day(at), name: by }) },
        ...(answer === undefined
          ? []
          : [
              {
                name: say('Answer'),
                value:
                  answer.note === undefined
                    ? answerInWords(answer, language)
                    : say('{answer}: “{note}”', {
                        answer: answerInWords(answer, language),
                        note: answer.note,
                      }),
              },
            ]),
        ...(photo === undefined
          ? [
              {
                name: say('Photo'),
                value:
                  damage.photo === undefined
                    ? say('none')
                    : say('one was named, and taken out of the job since'),
              },
            ]
          : []),
      ],
    },
    ...(photo === undefined ? [] : [photosBlock([printedPhoto(photo, unit, language)], language)]),
  ];
}
