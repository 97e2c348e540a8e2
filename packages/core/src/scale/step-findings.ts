import { noteName } from '../units/index.ts';
import { type Language, message } from '../words/index.ts';
import { breakText, limitText, newtonText, percentWithin, powerText } from './finding-words.ts';
import { neighbours } from './neighbouring-notes.ts';
import type { NoteAnalysis } from './note-analysis.ts';
import { beyondLimit, type ScaleFinding } from './scale-finding.ts';
import type { ScaleLimits } from './shop-policy.ts';
import { stepBetween, uncertaintyOfStep } from './step-between.ts';

/** What steps too far from one note to the next: more is allowed over a break than within a section. */
export function stepFindings(
  notes: readonly NoteAnalysis[],
  limits: ScaleLimits,
  language: Language,
): ScaleFinding[] {
  return neighbours(notes).flatMap(([lower, upper]) =>
    isBreak(lower, upper)
      ? stepsOverBreak(lower, upper, limits, language)
      : stepWithinSection(lower, upper, limits, language),
  );
}

/** A break lies where section, bridge, kind of string or count of strings changes: a step is meant to be there. */
function isBreak(lower: NoteAnalysis, upper: NoteAnalysis): boolean {
  return (
    (['section', 'bridge', 'strings'] as const).some((name) => lower.note[name] !== upper.note[name]) ||
    lower.note.string.kind !== upper.note.string.kind
  );
}

const FIGURES_OVER_BREAKS = [
  {
    figure: 'tension',
    rule: 'tension step over a break',
    limit: 'largestTensionStepOverBreak',
    name: message('string tension'),
    text: newtonText,
    perUnison: false,
  },
  {
    figure: 'inharmonicity',
    rule: 'inharmonicity step over a break',
    limit: 'largestInharmonicityStepOverBreak',
    name: message('inharmonicity B'),
    text: powerText,
    perUnison: false,
  },
  {
    figure: 'impedance',
    rule: 'impedance step over a break',
    limit: 'largestImpedanceStepOverBreak',
    name: message('the impedance of the unison'),
    text: (value: number, { fixed }: Language) => `${fixed(value, 1)} N·s/m`,
    perUnison: true,
  },
] as const;

function stepsOverBreak(
  lower: NoteAnalysis,
  upper: NoteAnalysis,
  limits: ScaleLimits,
  language: Language,
): ScaleFinding[] {
  return FIGURES_OVER_BREAKS.flatMap(({ figure, rule, limit: limitName, name, text, perUnison }) => {
    const of = (note: NoteAnalysis): number => note[figure] * (perUnison ? note.note.strings : 1);
    const limit = limits[limitName];
    const step = stepBetween(of(lower), of(upper));
    if (step <= limit.value) return [];
    const standardUncertainty = uncertaintyOfStep(step, figure, [lower], [upper]);
    const sentence = language.say(
      '{place}, {lower} to {upper}, {name} goes from {from} to {to}: a step of {step} ({limit}).',
      {
        place: breakText(lower, upper, language),
        lower: noteName(lower.key),
        upper: noteName(upper.key),
        name: language.say(name),
        from: text(of(lower), language),
        to: text(of(upper), language),
        step: percentWithin(step, standardUncertainty, language),
        limit: limitText(limit, language),
      },
    );
    return [
      beyondLimit(
        { rule, keys: [lower.key, upper.key], figure: step, standardUncertainty, limit, sentence },
        language,
      ),
    ];
  });
}

function stepWithinSection(
  lower: NoteAnalysis,
  upper: NoteAnalysis,
  limits: ScaleLimits,
  language: Language,
): ScaleFinding[] {
  const rule = 'tension step within a section';
  const limit = limits.largestTensionStepInSection;
  const step = stepBetween(lower.tension, upper.tension);
  if (step <= limit.value) return [];
  const standardUncertainty = uncertaintyOfStep(step, 'tension', [lower], [upper]);
  const sentence = language.say(
    'Within {section}, {lower} to {upper}, string tension goes from {from} to {to}: a step of {step} ({limit}).',
    {
      section: lower.note.section,
      lower: noteName(lower.key),
      upper: noteName(upper.key),
      from: newtonText(lower.tension),
      to: newtonText(upper.tension),
      step: percentWithin(step, standardUncertainty, language),
      limit: limitText(limit, language),
    },
  );
  return [
    beyondLimit(
      { rule, keys: [lower.key, upper.key], figure: step, standardUncertainty, limit, sentence },
      language,
    ),
  ];
}
