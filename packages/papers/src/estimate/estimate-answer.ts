import { type EstimateTotals, estimateTotals, type Language, type MinorUnits } from '@becket/core';
import { answerTo, type EstimateAnswer, type Job, type MadeEstimate } from '@becket/journal';
import type { Block } from '../page-tree.ts';

/** The customer's answer as it was recorded; without one, room to give it on paper. */
export function answerBlocks(
  estimate: MadeEstimate,
  totals: EstimateTotals,
  answer: EstimateAnswer | undefined,
  language: Language,
): Block[] {
  return [
    { is: 'heading', level: 2, text: language.say('Your answer') },
    ...(answer === undefined
      ? toBeAnswered(estimate, totals, language)
      : [answered(estimate, totals, answer, language)]),
  ];
}

function answered(
  estimate: MadeEstimate,
  totals: EstimateTotals,
  answer: EstimateAnswer,
  language: Language,
): Block {
  const { say, day, money } = language;
  const { version, lines, currency } = estimate;
  const { name, on, note, conditionalLines } = answer;
  const isAccepted = answer.answer === 'accepted';
  const conditional = lines.filter(({ ifFound }) => ifFound !== undefined);
  const agreed = conditional.filter(({ id }) => conditionalLines.includes(id));
  const { high } = estimateTotals({
    ...estimate,
    lines: lines.filter(({ ifFound, id }) => ifFound === undefined || conditionalLines.includes(id)),
  });
  return {
    is: 'box',
    tone: 'seal',
    title: say(
      'Version {version} was {answer, select, accepted {accepted} other {declined}} by {name} on {day}',
      { version: String(version), answer: answer.answer, name, day: day(on) },
    ),
    texts: [
      ...(isAccepted
        ? [
            agreed.length === 0
              ? say('Agreed is {price}, tax included.', { price: money(totals.firm.gross, currency) })
              : say('Agreed is {price}, tax included; with what was agreed in advance up to {high}.', {
                  price: money(totals.firm.gross, currency),
                  high: money(high, currency),
                }),
          ]
        : []),
      ...(isAccepted && conditional.length > 0
        ? [
            agreed.length === 0
              ? say(
                  'Nothing of the work that depends on what is found was agreed in advance: it is asked for first.',
                )
              : [
                  say('Agreed in advance, if it is found: {work}.', {
                    work: agreed.map(({ what }) => what).join('; '),
                  }),
                  ...(agreed.length < conditional.length ? [say('The rest is asked for first.')] : []),
                ].join(' '),
          ]
        : []),
      ...(note === undefined ? [] : [say('“{note}”', { note })]),
      ...(isAccepted ? [] : [say('The work is not begun.')]),
    ],
  };
}

function toBeAnswered(estimate: MadeEstimate, totals: EstimateTotals, language: Language): Block[] {
  const { say, money } = language;
  const conditional = estimate.lines.filter(({ ifFound }) => ifFound !== undefined);
  return [
    {
      is: 'paragraph',
      text: say('Please tick what you agree to, sign and send one copy back. Nothing is begun before that.'),
    },
    {
      is: 'list',
      marks: 'boxes',
      items: [
        say('I accept version {version} of this estimate: {price}, tax included.', {
          version: String(estimate.version),
          price: money(totals.firm.gross, estimate.currency),
        }),
        ...conditional.map(({ what, ifFound, id }) =>
          say('If found ({found}), this may be done without asking again: {what} ({price}).', {
            found: ifFound ?? '',
            what,
            price: asWritten(estimate, totals.amounts.get(id)!, language),
          }),
        ),
        say('I do not accept it.'),
      ],
    },
    { is: 'signature lines', names: [say('name'), say('day'), say('signature')] },
  ];
}

const asWritten = (
  { currency, pricesIncludeTax }: MadeEstimate,
  amount: MinorUnits,
  { say, money }: Language,
): string => {
  const price = money(amount, currency);
  return pricesIncludeTax ? say('{price} with tax', { price }) : say('{price} without tax', { price });
};

/** The versions before this one, each with what it came to and what was said to it. */
export function earlierVersions(job: Job, estimate: MadeEstimate, { say, day, money }: Language): Block[] {
  // By place and not by number: two devices that were apart may each have made a version of one number.
  const earlier = job.estimates.slice(0, job.estimates.indexOf(estimate));
  if (earlier.length === 0) return [];
  return [
    { is: 'heading', level: 3, text: say('Earlier versions') },
    {
      is: 'list',
      marks: 'dots',
      items: earlier.map((one) => {
        const { firm } = estimateTotals(one);
        const answer = answerTo(job, one);
        const said =
          answer === undefined
            ? say('not answered')
            : say(
                '{answer, select, accepted {accepted} other {declined}} by {name} on {day}; that holds for it alone',
                { answer: answer.answer, name: answer.name, day: day(answer.on) },
              );
        return say('Version {version} of {day} by {name}: {price}, tax included; {said}.', {
          version: String(one.version),
          day: day(one.at),
          name: one.by,
          price: money(firm.gross, one.currency),
          said,
        });
      }),
    },
  ];
}
