import { english, type Language } from '@becket/core';
import type { PlannedScale } from '@becket/tasks';
import { loadText } from '../../parts/force-text.ts';
import type { LengthUnit } from '../../parts/length-text.ts';
import { signed } from './compare-state.ts';

/** What one answer comes to, in one line. */
export function answerWords(
  answer: PlannedScale,
  unit: LengthUnit = 'mm',
  language: Language = english,
): string {
  const { fixed, say } = language;
  const {
    changedNotes,
    tensionUnevenness,
    inharmonicityUnevenness,
    plainSizeChanges,
    tiedStrings,
    loadChange_n,
  } = answer;
  return say(
    '{notes, plural, one {# note} other {# notes}} changed, {load}, tension uneven by {tension} %, B by {b} %, {changes, plural, one {# change} other {# changes}} of plain size, {tied} tied',
    {
      notes: changedNotes,
      load: /[1-9]/.test(loadText(loadChange_n, unit, language))
        ? say('load {change}', {
            change: signed(loadChange_n, (force) => loadText(force, unit, language), language),
          })
        : say('load unchanged'),
      tension: fixed(tensionUnevenness * 100, 1),
      b: fixed(inharmonicityUnevenness * 100, 1),
      changes: plainSizeChanges,
      tied: tiedStrings,
    },
  );
}

/** One sentence on how good the answers are known to be, for all of them together. */
export const proofWords = (answers: readonly PlannedScale[], { say }: Language = english): string =>
  answers.every(({ isProved }) => isProved)
    ? say(
        'Proved: of all the strings that were offered, no other choice within these limits does better by what counts here.',
      )
    : say(
        'Proved where nothing else is said: of all the strings that were offered, no other choice within these limits does better by what counts here.',
      );
