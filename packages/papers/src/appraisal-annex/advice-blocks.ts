import type { Language } from '@becket/core';
import type { Job } from '@becket/journal';
import type { AdviceFigures } from '../appraisal-report/appraisal-figures.ts';
import type { Block } from '../page-tree.ts';

/** The decision as it was made, beside the reasons that the figures give. */
export function adviceBlocks(job: Job, advice: AdviceFigures | undefined, language: Language): Block[] {
  const decision = job.decisions.at(-1);
  return [
    { is: 'heading', level: 2, text: 'Reasons and decision' },
    {
      is: 'paragraph',
      text:
        decision === undefined
          ? 'Nothing is decided yet.'
          : `Decided on ${language.day(decision.at)} by ${decision.by}: ${decision.verdict}. ${decision.because}${decision.advised === decision.verdict ? '' : ` The reasons of the program came to: ${decision.advised}.`}`,
    },
    ...(decision === undefined || decision.conditions.length === 0
      ? []
      : [{ is: 'list', marks: 'dots', items: [...decision.conditions] } as const]),
    ...(advice === undefined || advice.reasons.length === 0
      ? []
      : [
          {
            is: 'table',
            title: `Reasons as of today: ${advice.verdict}`,
            remarks: [`Rules: ${advice.source}. The gravest reason decides; a person may decide otherwise.`],
            columns: [
              { heading: 'about', align: 'left', share: 60 },
              { heading: 'speaks for', align: 'left', share: 70 },
              { heading: 'reason', align: 'left', share: 220 },
              { heading: 'figure', align: 'left', share: 80 },
              { heading: 'condition', align: 'left', share: 190 },
              { heading: 'who judges', align: 'left', share: 90 },
            ],
            rows: advice.reasons.map(({ about, verdict, sentence, figure, condition, deferTo }) => ({
              cells: [
                about,
                verdict,
                sentence,
                figure ?? { absent: 'none' },
                condition ?? { absent: 'none' },
                deferTo ?? 'the technician',
              ],
            })),
          } as const,
        ]),
  ];
}

/** What nobody knows yet, and what would settle it; what should be known first at the head. */
export function unknownBlocks(advice: AdviceFigures | undefined): Block[] {
  if (advice === undefined) return [];
  return [
    { is: 'heading', level: 2, text: 'Unknown, and what would settle it' },
    advice.unknown.length === 0
      ? { is: 'paragraph', text: 'Nothing.' }
      : {
          is: 'table',
          columns: [
            { heading: 'unknown', align: 'left', share: 300 },
            { heading: 'what would settle it', align: 'left', share: 330 },
            { heading: 'needed', align: 'left', share: 90 },
          ],
          rows: advice.unknown.map(({ what, wouldSettle, isNeededFirst }) => ({
            cells: [what, wouldSettle, isNeededFirst ? 'before a plain go' : 'when there is time'],
          })),
        },
  ];
}
