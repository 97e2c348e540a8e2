import { estimateTotals, type Language } from '@becket/core';
import { estimateStanding, type Job, type Verdict } from '@becket/journal';
import { inMoney } from '../estimate/estimate-lines.ts';
import type { Block } from '../page-tree.ts';
import { asSentence, couldNotBeSeen, isSeen, surveyByPart } from './survey-state.ts';

const verdictInWords: Readonly<Record<Verdict, string>> = {
  go: 'We suggest to go ahead with new strings',
  'go with conditions': 'We suggest new strings, on conditions',
  stop: 'We advise against new strings as things stand',
};

/** The whole report in a few lines, set apart at its beginning. */
export function inShort(job: Job): Block {
  const decision = job.decisions.at(-1);
  const survey = surveyByPart(job).flatMap(({ findings }) => findings);
  const seen = survey.filter(isSeen);
  const grave = seen.filter(({ answer }) => answer.gravity === 'grave').length;
  const unseen = survey.filter(couldNotBeSeen).length;
  return {
    is: 'box',
    tone: 'note',
    title: decision === undefined ? 'Nothing is decided yet' : verdictInWords[decision.verdict],
    texts: [
      ...(decision === undefined ? [] : [asSentence(decision.because)]),
      ...(survey.length === 0
        ? ['The piano was not surveyed yet.']
        : [
            `${seen.length === 0 ? 'Nothing was found that needs a word' : `${seen.length} ${seen.length === 1 ? 'thing was' : 'things were'} found, ${grave === 0 ? 'none of them serious' : `${grave} of them serious`}`}; ${unseen === 0 ? 'nothing was hidden from sight' : `${unseen} ${unseen === 1 ? 'point' : 'points'} could not be seen`}.`,
          ]),
      priceInShort(job),
    ],
  };
}

function priceInShort(job: Job): string {
  const { latest } = estimateStanding(job);
  if (latest === undefined) return 'What the work would cost is not worked out yet.';
  const { firm, low, high } = estimateTotals(latest);
  const range =
    low === high
      ? inMoney(firm.gross, latest.currency)
      : `between ${inMoney(low, latest.currency)} and ${inMoney(high, latest.currency)}, depending on what is found`;
  return `The work would cost ${range}, tax included (estimate, version ${latest.version}).`;
}

/** The decision with its conditions, or that there is none yet. */
export function whatWeSuggest(job: Job, language: Language): Block[] {
  const decision = job.decisions.at(-1);
  if (decision === undefined)
    return [{ is: 'paragraph', text: 'Nothing is decided yet. This report says what is known so far.' }];
  const { verdict, because, conditions, at, by } = decision;
  return [
    { is: 'paragraph', text: `${verdictInWords[verdict]}. ${asSentence(because)}` },
    ...(conditions.length === 0
      ? []
      : ([
          {
            is: 'paragraph',
            text: conditions.length === 1 ? 'The condition is:' : 'The conditions are:',
          },
          { is: 'list', marks: 'dots', items: conditions.map(asSentence) },
        ] as const)),
    { is: 'paragraph', tone: 'quiet', text: `Decided on ${language.day(at)} by ${by}.` },
  ];
}

/** What comes next, in order, as far as the work has come. */
export function whatHappensNext(job: Job): string[] {
  const decision = job.decisions.at(-1);
  const { latest, answer, accepted } = estimateStanding(job);
  if (decision === undefined)
    return ['We settle what is still open.', 'You hear from us what we suggest, and what it would cost.'];
  if (decision.verdict === 'stop')
    return [
      'Nothing is done to the piano.',
      'We gladly explain what would have to change, and what else can be done with it.',
    ];
  const isAccepted = accepted !== undefined && accepted.estimate === latest;
  return [
    ...(latest === undefined
      ? ['You receive an estimate.', 'Once you have accepted it, we agree on a day.']
      : isAccepted
        ? ['You have accepted the estimate; we agree on a day.']
        : answer?.answer === 'declined'
          ? ['You have declined the estimate; nothing is done unless we agree on another.']
          : [
              'You answer the estimate that goes with this report.',
              'Once you have accepted it, we agree on a day.',
            ]),
    'Before a string comes off, everything about the old ones is measured and kept, so that it can always be looked up.',
    'Once the strings are off we look again. If something new comes to light, you are asked first, with its price.',
    'The new strings go on and are brought up to pitch evenly.',
    'New strings stretch: the piano needs several tunings, the last of them some months later.',
    'You receive a record of the work, for whoever looks after the piano next.',
  ];
}
