import { type EstimateTotals, estimateTotals, type Language, type MinorUnits } from '@becket/core';
import { answerTo, type EstimateAnswer, type Job, type MadeEstimate } from '@becket/journal';
import type { Block } from '../page-tree.ts';
import { inMoney } from './estimate-lines.ts';

/** The customer's answer as it was recorded; without one, room to give it on paper. */
export function answerBlocks(
  estimate: MadeEstimate,
  totals: EstimateTotals,
  answer: EstimateAnswer | undefined,
  language: Language,
): Block[] {
  return [
    { is: 'heading', level: 2, text: 'Your answer' },
    ...(answer === undefined
      ? toBeAnswered(estimate, totals)
      : [answered(estimate, totals, answer, language)]),
  ];
}

function answered(
  estimate: MadeEstimate,
  totals: EstimateTotals,
  answer: EstimateAnswer,
  language: Language,
): Block {
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
    title: `Version ${version} was ${isAccepted ? 'accepted' : 'declined'} by ${name} on ${language.day(on)}`,
    texts: [
      ...(isAccepted
        ? [
            `Agreed is ${inMoney(totals.firm.gross, currency)}, tax included${agreed.length === 0 ? '' : `; with what was agreed in advance up to ${inMoney(high, currency)}`}.`,
          ]
        : []),
      ...(isAccepted && conditional.length > 0
        ? [
            agreed.length === 0
              ? 'Nothing of the work that depends on what is found was agreed in advance: it is asked for first.'
              : `Agreed in advance, if it is found: ${agreed.map(({ what }) => what).join('; ')}.${agreed.length < conditional.length ? ' The rest is asked for first.' : ''}`,
          ]
        : []),
      ...(note === undefined ? [] : [`“${note}”`]),
      ...(isAccepted ? [] : ['The work is not begun.']),
    ],
  };
}

function toBeAnswered(estimate: MadeEstimate, totals: EstimateTotals): Block[] {
  const conditional = estimate.lines.filter(({ ifFound }) => ifFound !== undefined);
  return [
    {
      is: 'paragraph',
      text: 'Please tick what you agree to, sign and send one copy back. Nothing is begun before that.',
    },
    {
      is: 'list',
      marks: 'boxes',
      items: [
        `I accept version ${estimate.version} of this estimate: ${inMoney(totals.firm.gross, estimate.currency)}, tax included.`,
        ...conditional.map(
          ({ what, ifFound, id }) =>
            `If found (${ifFound}), this may be done without asking again: ${what} (${asWritten(estimate, totals.amounts.get(id)!)}).`,
        ),
        'I do not accept it.',
      ],
    },
    { is: 'signature lines', names: ['name', 'day', 'signature'] },
  ];
}

const asWritten = ({ currency, pricesIncludeTax }: MadeEstimate, amount: MinorUnits): string =>
  `${inMoney(amount, currency)} ${pricesIncludeTax ? 'with' : 'without'} tax`;

/** The versions before this one, each with what it came to and what was said to it. */
export function earlierVersions(job: Job, estimate: MadeEstimate, language: Language): Block[] {
  // By place and not by number: two devices that were apart may each have made a version of one number.
  const earlier = job.estimates.slice(0, job.estimates.indexOf(estimate));
  if (earlier.length === 0) return [];
  return [
    { is: 'heading', level: 3, text: 'Earlier versions' },
    {
      is: 'list',
      marks: 'dots',
      items: earlier.map((one) => {
        const { firm } = estimateTotals(one);
        const answer = answerTo(job, one);
        const said =
          answer === undefined
            ? 'not answered'
            : `${answer.answer} by ${answer.name} on ${language.day(answer.on)}; that holds for it alone`;
        return `Version ${one.version} of ${language.day(one.at)} by ${one.by}: ${inMoney(firm.gross, one.currency)}, tax included; ${said}.`;
      }),
    },
  ];
}
