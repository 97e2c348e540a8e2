import { type Language, sayKnown } from '@becket/core';
import type { Job } from '@becket/journal';
import type { AdviceFigures } from '../appraisal-report/appraisal-figures.ts';
import type { Block } from '../page-tree.ts';

/** The decision as it was made, beside the reasons that the figures give. */
export function adviceBlocks(job: Job, advice: AdviceFigures | undefined, language: Language): Block[] {
  const { say, day } = language;
  const decision = job.decisions.at(-1);
  return [
    { is: 'heading', level: 2, text: say('Reasons and decision') },
    {
      is: 'paragraph',
      text:
        decision === undefined
          ? say('Nothing is decided yet.')
          : [
              say('Decided on {day} by {name}: {verdict}. {because}', {
                day: day(decision.at),
                name: decision.by,
                verdict: say(decision.verdict),
                because: decision.because,
              }),
              ...(decision.advised === decision.verdict
                ? []
                : [
                    say('The reasons of the program came to: {verdict}.', {
                      verdict: say(decision.advised),
                    }),
                  ]),
            ].join(' '),
    },
    ...(decision === undefined || decision.conditions.length === 0
      ? []
      : [{ is: 'list', marks: 'dots', items: [...decision.conditions] } as const]),
    ...(advice === undefined || advice.reasons.length === 0
      ? []
      : [
          {
            is: 'table',
            title: say('Reasons as of today: {verdict}', { verdict: say(advice.verdict) }),
            remarks: [
              say('Rules: {source}. The gravest reason decides; a person may decide otherwise.', {
                source: sayKnown(advice.source, language),
              }),
            ],
            columns: [
              { heading: say('[of a reason] about'), align: 'left', share: 60 },
              { heading: say('speaks for'), align: 'left', share: 70 },
              { heading: say('reason'), align: 'left', share: 220 },
              { heading: say('[number behind a reason] figure'), align: 'left', share: 80 },
              { heading: say('[of a decision] condition'), align: 'left', share: 190 },
              { heading: say('who judges'), align: 'left', share: 90 },
            ],
            rows: advice.reasons.map(({ about, verdict, sentence, figure, condition, deferTo }) => ({
              cells: [
                say(about),
                say(verdict),
                sentence,
                figure ?? { absent: say('none') },
                condition ?? { absent: say('none') },
                deferTo ?? say('the technician'),
              ],
            })),
          } as const,
        ]),
  ];
}

/** What nobody knows yet, and what would settle it; what should be known first at the head. */
export function unknownBlocks(advice: AdviceFigures | undefined, { say }: Language): Block[] {
  if (advice === undefined) return [];
  return [
    { is: 'heading', level: 2, text: say('Unknown, and what would settle it') },
    advice.unknown.length === 0
      ? { is: 'paragraph', text: say('Nothing.') }
      : {
          is: 'table',
          columns: [
            { heading: say('[something nobody knows] unknown'), align: 'left', share: 300 },
            { heading: say('what would settle it'), align: 'left', share: 330 },
            { heading: say('[knowing it is] needed'), align: 'left', share: 90 },
          ],
          rows: advice.unknown.map(({ what, wouldSettle, isNeededFirst }) => ({
            cells: [what, wouldSettle, isNeededFirst ? say('before a plain go') : say('when there is time')],
          })),
        },
  ];
}
