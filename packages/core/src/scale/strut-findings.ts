import { noteName } from '../units/index.ts';
import type { Language } from '../words/index.ts';
import { limitText, loadText, newtonText, percentWithin } from './finding-words.ts';
import { neighbours } from './neighbouring-notes.ts';
import type { NoteAnalysis } from './note-analysis.ts';
import type { LoadShare, ScaleAnalysis } from './scale-analysis.ts';
import { beyondLimit, forInformation, type ScaleFinding } from './scale-finding.ts';
import type { ScaleLimits } from './shop-policy.ts';
import { stepBetween, uncertaintyOfStep } from './step-between.ts';

/** The load on either side of every strut, always told, and the step over it where that is too large. */
export function strutFindings(
  analysis: ScaleAnalysis,
  limits: ScaleLimits,
  language: Language,
): ScaleFinding[] {
  return neighbours(analysis.notes)
    .filter(([lower, upper]) => lower.note.section !== upper.note.section)
    .flatMap(([lower, upper]) => [
      loadBesideStrut(lower, upper, analysis, language),
      ...loadStepOverStrut(lower, upper, analysis, limits, language),
    ]);
}

function loadBesideStrut(
  lower: NoteAnalysis,
  upper: NoteAnalysis,
  { sections }: ScaleAnalysis,
  language: Language,
): ScaleFinding {
  const sectionOf = ({ note }: NoteAnalysis): LoadShare =>
    sections.find(({ name }) => name === note.section)!;
  const [below, above] = [sectionOf(lower), sectionOf(upper)];
  return forInformation({
    rule: 'load beside a strut',
    keys: [lower.key, upper.key],
    figure: below.load - above.load,
    unit: 'N',
    sentence: language.say('Beside the strut between {lower} and {upper} pull {below} and {above}.', {
      lower: noteName(lower.key),
      upper: noteName(upper.key),
      below: loadText(below, language),
      above: loadText(above, language),
    }),
  });
}

function loadStepOverStrut(
  lower: NoteAnalysis,
  upper: NoteAnalysis,
  { notes }: ScaleAnalysis,
  limits: ScaleLimits,
  language: Language,
): ScaleFinding[] {
  const limit = limits.largestLoadStepOverStrut;
  const wanted = limits.notesLookedAtBesideStrut.value;
  const below = notes.filter((note) => note.note.section === lower.note.section).slice(-wanted);
  const above = notes.filter((note) => note.note.section === upper.note.section).slice(0, wanted);
  const [meanBelow, meanAbove] = [meanLoad(below), meanLoad(above)];
  const step = stepBetween(meanBelow, meanAbove);
  if (step <= limit.value) return [];
  const standardUncertainty = uncertaintyOfStep(step, 'unisonTension', below, above);
  return [
    beyondLimit(
      {
        rule: 'load step over a strut',
        keys: [lower.key, upper.key],
        figure: step,
        standardUncertainty,
        limit,
        sentence: language.say(
          'Over the strut between {lower} and {upper} the load of a note goes from {from} (mean of {countBelow}) to {to} (mean of {countAbove}): a step of {step} ({limit}).',
          {
            lower: noteName(lower.key),
            upper: noteName(upper.key),
            from: newtonText(meanBelow),
            countBelow: below.length,
            to: newtonText(meanAbove),
            countAbove: above.length,
            step: percentWithin(step, standardUncertainty, language),
            limit: limitText(limit, language),
          },
        ),
      },
      language,
    ),
  ];
}

function meanLoad(notes: readonly NoteAnalysis[]): number {
  return notes.reduce((sum, note) => sum + note.unisonTension, 0) / notes.length;
}
