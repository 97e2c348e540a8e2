import { estimateTotals, type Language, type Message, message } from '@becket/core';
import { estimateStanding, type Job, type Verdict } from '@becket/journal';
import type { Block } from '../page-tree.ts';
import { asSentence, couldNotBeSeen, isSeen, surveyByPart } from './survey-state.ts';

const verdictInWords: Readonly<Record<Verdict, Message>> = {
  go: message('We suggest to go ahead with new strings'),
  'go with conditions': message('We suggest new strings, on conditions'),
  stop: message('We advise against new strings as things stand'),
};

/** The whole report in a few lines, set apart at its beginning. */
export function inShort(job: Job, language: Language): Block {
  const { say } = language;
  const decision = job.decisions.at(-1);
  const survey = surveyByPart(job).flatMap(({ findings }) => findings);
  const seen = survey.filter(isSeen);
  const grave = seen.filter(({ answer }) => answer.gravity === 'grave').length;
  const unseen = survey.filter(couldNotBeSeen).length;
  return {
    is: 'box',
    tone: 'note',
    title: decision === undefined ? say('Nothing is decided yet') : say(verdictInWords[decision.verdict]),
    texts: [
      ...(decision === undefined ? [] : [asSentence(decision.because)]),
      ...(survey.length === 0
        ? [say('The piano was not surveyed yet.')]
        : [
            say(
              '{seen, plural, =0 {Nothing was found that needs a word} one {# thing was found, {grave, plural, =0 {none of them serious} other {# of them serious}}} other {# things were found, {grave, plural, =0 {none of them serious} other {# of them serious}}}}; {unseen, plural, =0 {nothing was hidden from sight} one {# point could not be seen} other {# points could not be seen}}.',
              { seen: seen.length, grave, unseen },
            ),
          ]),
      priceInShort(job, language),
    ],
  };
}

function priceInShort(job: Job, { say, money }: Language): string {
  const { latest } = estimateStanding(job);
  if (latest === undefined) return say('What the work would cost is not worked out yet.');
  const { firm, low, high } = estimateTotals(latest);
  const version = String(latest.version);
  return low === high
    ? say('The work would cost {price}, tax included (estimate, version {version}).', {
        price: money(firm.gross, latest.currency),
        version,
      })
    : say(
        'The work would cost between {low} and {high}, depending on what is found, tax included (estimate, version {version}).',
        { low: money(low, latest.currency), high: money(high, latest.currency), version },
      );
}

/** The decision with its conditions, or that there is none yet. */
export function whatWeSuggest(job: Job, { say, day }: Language): Block[] {
  const decision = job.decisions.at(-1);
  if (decision === undefined)
    return [{ is: 'paragraph', text: say('Nothing is decided yet. This report says what is known so far.') }];
  const { verdict, because, conditions, at, by } = decision;
  return [
    { is: 'paragraph', text: `${say(verdictInWords[verdict])}. ${asSentence(because)}` },
    ...(conditions.length === 0
      ? []
      : ([
          {
            is: 'paragraph',
            text: conditions.length === 1 ? say('The condition is:') : say('The conditions are:'),
          },
          { is: 'list', marks: 'dots', items: conditions.map(asSentence) },
        ] as const)),
    { is: 'paragraph', tone: 'quiet', text: say('Decided on {day} by {name}.', { day: day(at), name: by }) },
  ];
}

/** What comes next, in order, as far as the work has come. */
export function whatHappensNext(job: Job, { say }: Language): string[] {
  const decision = job.decisions.at(-1);
  const { latest, answer, accepted } = estimateStanding(job);
  if (decision === undefined)
    return [
      say('We settle what is still open.'),
      say('You hear from us what we suggest, and what it would cost.'),
    ];
  if (decision.verdict === 'stop')
    return [
      say('Nothing is done to the piano.'),
      say('We gladly explain what would have to change, and what else can be done with it.'),
    ];
  const isAccepted = accepted !== undefined && accepted.estimate === latest;
  return [
    ...(latest === undefined
      ? [say('You receive an estimate.'), say('Once you have accepted it, we agree on a day.')]
      : isAccepted
        ? [say('You have accepted the estimate; we agree on a day.')]
        : answer?.answer === 'declined'
          ? [say('You have declined the estimate; nothing is done unless we agree on another.')]
          : [
              say('You answer the estimate that goes with this report.'),
              say('Once you have accepted it, we agree on a day.'),
            ]),
    say(
      'Before a string comes off, everything about the old ones is measured and kept, so that it can always be looked up.',
    ),
    say(
      'Once the strings are off we look again. If something new comes to light, you are asked first, with its price.',
    ),
    say('The new strings go on and are brought up to pitch evenly.'),
    say('New strings stretch: the piano needs several tunings, the last of them some months later.'),
    say('You receive a record of the work, for whoever looks after the piano next.'),
  ];
}
