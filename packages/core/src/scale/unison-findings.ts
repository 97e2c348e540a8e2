import { noteName } from '../units/index.ts';
import type { Language } from '../words/index.ts';
import { limitText, newtonText, percentWithin } from './finding-words.ts';
import { neighbours } from './neighbouring-notes.ts';
import type { NoteAnalysis } from './note-analysis.ts';
import { COMMON_INPUTS } from './note-inputs.ts';
import { beyondLimit, forInformation, type ScaleFinding } from './scale-finding.ts';
import type { ScaleLimits } from './shop-policy.ts';

/**
 * Strings of one unison that pull unevenly.
 *
 *     spread = T_most / T_least − 1
 */
export function unevenUnisonFindings(
  notes: readonly NoteAnalysis[],
  limits: ScaleLimits,
  language: Language,
): ScaleFinding[] {
  const limit = limits.largestTensionSpreadInUnison;
  return notes.flatMap((note): ScaleFinding[] => {
    const [least, most] = [Math.min(...note.stringTensions), Math.max(...note.stringTensions)];
    const spread = most / least - 1;
    if (spread <= limit.value) return [];
    const standardUncertainty = spreadUncertainty(note, spread);
    return [
      beyondLimit(
        {
          rule: 'uneven tension within a unison',
          keys: [note.key],
          figure: spread,
          standardUncertainty,
          limit,
          sentence: language.say(
            'The strings of {note} pull unevenly: {tensions} from left to right, a spread of {spread} ({limit}).',
            {
              note: noteName(note.key),
              tensions: note.stringTensions.map(newtonText).join(', '),
              spread: percentWithin(spread, standardUncertainty, language),
              limit: limitText(limit, language),
            },
          ),
        },
        language,
      ),
    ];
  });
}

/** Two strings of a unison share pitch, material and all but their own diameters and lengths. */
function spreadUncertainty(note: NoteAnalysis, spread: number): number | undefined {
  if (note.contributions === undefined) return undefined;
  const own = Object.entries(note.contributions.tension).filter(([input]) => !COMMON_INPUTS.has(input));
  const relative = Math.hypot(...own.map(([, contribution]) => contribution)) / note.tension;
  return Math.SQRT2 * relative * (1 + spread);
}

/** Notes with fewer strings than the one below: counts rise to the treble. */
export function fewerStringsFindings(notes: readonly NoteAnalysis[], language: Language): ScaleFinding[] {
  return neighbours(notes)
    .filter(([lower, upper]) => upper.note.strings < lower.note.strings)
    .map(([lower, upper]) =>
      forInformation({
        rule: 'fewer strings than the note below',
        keys: [lower.key, upper.key],
        figure: upper.note.strings,
        unit: 'strings',
        sentence: language.say(
          '{upper} has {few} strings and {lower} below it has {more}: check the count.',
          {
            upper: noteName(upper.key),
            few: upper.note.strings,
            lower: noteName(lower.key),
            more: lower.note.strings,
          },
        ),
      }),
    );
}
