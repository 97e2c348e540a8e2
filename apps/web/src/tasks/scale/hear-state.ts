import { cents, english, type Language, message, noteName } from '@becket/core';
import { breaksOf, type Job } from '@becket/journal';
import {
  type AnalysedScale,
  type HeardPassage,
  heardPassage,
  type PassageName,
  type ToHear,
} from '@becket/tasks';

/** What the screen asks for; the note itself is the one that is looked at everywhere. */
export interface HearChoice {
  readonly passage: PassageName;
  /** First key above the break; undefined for the first break there is. */
  readonly breakKey: number | undefined;
  readonly spread: 'still' | 'one cent' | 'two cents';
}

export const startingChoice: HearChoice = {
  passage: 'thirds across the break',
  breakKey: undefined,
  spread: 'still',
};

export const spreads = {
  still: { spread: cents(0), words: message('still') },
  'one cent': { spread: cents(1), words: message('one cent apart') },
  'two cents': { spread: cents(2), words: message('two cents apart') },
} as const;

/** Breaks of a scale as they can be chosen. */
export function breakChoices({
  analysis,
}: Pick<AnalysedScale, 'analysis'>): { value: string; words: string }[] {
  return breaksOf(analysis).map((key) => ({
    value: String(key),
    words: `${noteName(key - 1)} | ${noteName(key)}`,
  }));
}

/** The passage of both scales, and one sentence on what is left out of either. */
export function passagesToHear(
  job: Job,
  scales: readonly AnalysedScale[],
  choice: HearChoice,
  selectedKey: number | undefined,
  { say }: Language = english,
): { readonly passages: readonly HeardPassage[]; readonly leftOut: string | undefined } {
  const key =
    choice.passage === 'thirds across the break'
      ? (choice.breakKey ?? breaksOf(scales[0]!.analysis)[0])
      : (selectedKey ?? middleKey(job));
  if (key === undefined) return { passages: [], leftOut: say('This scale has no break to cross.') };
  const toHear: ToHear = { passage: choice.passage, key, unisonSpread: spreads[choice.spread].spread };
  const heard = scales.map((scale) => heardPassage(job, scale, toHear));
  const missing = [...new Set(heard.flatMap((one) => one.missing))];
  return {
    passages: heard.some(({ notes }) => notes.length === 0) ? [] : heard,
    leftOut:
      missing.length === 0
        ? undefined
        : say('Left out, as they cannot be computed yet: {notes}.', { notes: missing.join(', ') }),
  };
}

/** A3 where nothing is chosen, or the middle of a short compass. */
export function middleKey({ piano }: Job): number {
  if (piano === undefined) return 37;
  return piano.firstKey <= 37 && 37 <= piano.lastKey ? 37 : Math.round((piano.firstKey + piano.lastKey) / 2);
}
