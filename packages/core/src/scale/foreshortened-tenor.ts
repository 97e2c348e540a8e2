import { noteName } from '../units/index.ts';
import { type Language, sayKnown } from '../words/index.ts';
import { limitText, percent, percentWithin } from './finding-words.ts';
import type { NoteAnalysis } from './note-analysis.ts';
import { beyondLimit, type ScaleFinding } from './scale-finding.ts';
import type { ScaleLimits } from './shop-policy.ts';

/**
 * The low end of the plain strings, cut short where its speaking lengths grow too little from note to note.
 *
 *     growth = (L_lowest / L_highest)^(1/steps) − 1
 */
export function tenorFindings(
  notes: readonly NoteAnalysis[],
  limits: ScaleLimits,
  language: Language,
): ScaleFinding[] {
  const limit = limits.leastLengthGrowthInTenor;
  const plain = notes.filter((note) => note.note.string.kind === 'plain');
  const run = plain.slice(0, limits.notesLookedAtInTenor.value);
  const [lowest, highest] = [run[0], run[run.length - 1]];
  // A gap would be read as growth that is not there.
  if (lowest === undefined || highest === undefined || run.length < limits.notesLookedAtInTenor.value)
    return [];
  const steps = highest.key - lowest.key;
  if (steps !== run.length - 1) return [];
  const growth = (lowest.note.string.speakingLength / highest.note.string.speakingLength) ** (1 / steps) - 1;
  if (growth >= limit.value) return [];
  const standardUncertainty = growthUncertainty(lowest, highest, growth, steps);
  const leastB = Math.min(...plain.map((note) => note.inharmonicity));
  return [
    beyondLimit(
      {
        rule: 'foreshortened tenor',
        keys: run.map((note) => note.key),
        figure: growth,
        standardUncertainty,
        limit,
        remark: sayKnown(lowest.strengthRemark, language),
        sentence: language.say(
          'The tenor is foreshortened: from {highest} down to {lowest} the speaking length grows by {growth} a note ({limit}); at {lowest} break share is {share} by {table} and B is {times} times the least of the plain strings.',
          {
            highest: noteName(highest.key),
            lowest: noteName(lowest.key),
            growth: percentWithin(growth, standardUncertainty, language),
            limit: limitText(limit, language),
            share: percent(lowest.breakShare, language),
            table: sayKnown(lowest.strengthTable, language),
            times: language.fixed(lowest.inharmonicity / leastB, 1),
          },
        ),
      },
      language,
    ),
  ];
}

/** From the two lengths at its ends: the relative uncertainty of their ratio, shared out over the steps between them. */
function growthUncertainty(
  lowest: NoteAnalysis,
  highest: NoteAnalysis,
  growth: number,
  steps: number,
): number | undefined {
  const ofLength = (note: NoteAnalysis): number | undefined =>
    // Tension goes as the square of the length.
    note.contributions && note.contributions.tension.speakingLength! / (2 * note.tension);
  const [low, high] = [ofLength(lowest), ofLength(highest)];
  if (low === undefined || high === undefined) return undefined;
  return ((1 + growth) * Math.hypot(low, high)) / steps;
}
