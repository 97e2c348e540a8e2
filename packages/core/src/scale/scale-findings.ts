import { noteName } from '../units/index.ts';
import { english, type Language, message, sayKnown } from '../words/index.ts';
import {
  at,
  breakText,
  kilonewtonText,
  limitText,
  loadText,
  newtonText,
  percent,
  percentWithin,
  powerText,
} from './finding-words.ts';
import type { NoteAnalysis } from './note-analysis.ts';
import type { NoteFigureName } from './note-figures.ts';
import { COMMON_INPUTS } from './note-inputs.ts';
import type { LoadShare, ScaleAnalysis } from './scale-analysis.ts';
import { COMMON_SHOP_POLICY, type ScaleLimits, type ShopLimit, type ShopPolicy } from './shop-policy.ts';

/*
 * What stands out in a scale, as plain sentences with the rule and the figure. A finding is a result, never an error; what
 * counts as too much is the shop's policy and not physics.
 */

/** The rules that a scale is looked at by. */
export const scaleRules = [
  'break share over the ceiling',
  'break share under the floor',
  'outside the strength table',
  'tension step over a break',
  'inharmonicity step over a break',
  'impedance step over a break',
  'tension step within a section',
  'foreshortened tenor',
  'uneven tension within a unison',
  'fewer strings than the note below',
  'load step over a strut',
  'load by bridge',
  'load beside a strut',
  'total load',
] as const;
export type ScaleRule = (typeof scaleRules)[number];

/** One thing that stands out, or a figure that is always told. */
export interface ScaleFinding {
  readonly rule: ScaleRule;
  readonly weight: 'beyond a limit' | 'for information';
  /** The notes it is about, in the order of the keys. */
  readonly keys: readonly number[];
  readonly figure: number;
  /** Standard uncertainty of the figure; undefined where it was left out. */
  readonly standardUncertainty: number | undefined;
  readonly unit: '1' | 'N' | 'strings';
  /** What the figure was held against; undefined for a figure that is only told. */
  readonly limit: ShopLimit | undefined;
  /** False when the figure is nearer to its limit than two standard uncertainties: measure before acting. */
  readonly isClear: boolean;
  readonly sentence: string;
  /** The sentence that belongs beside a figure resting on a strength table; empty otherwise. */
  readonly remark: string;
}

/**
 * Everything that stands out in a scale, in the order of `scaleRules`.
 *
 * @param analysis  of the notes that can be computed; rules that need neighbours skip a gap
 * @param policy    the shop's limits; `COMMON_SHOP_POLICY` when not given
 * @param language  of the sentences
 * @returns findings, each with its rule, figure, uncertainty, limit, whose limit it is, and a sentence
 *
 * Holds for: figures at pitch. Steps compare two figures; errors that both share (pitch, density) cancel in them.
 * Source: the limits name theirs; steps, shares and sums are definitions.
 */
export function scaleFindings(
  analysis: ScaleAnalysis,
  policy: ShopPolicy = COMMON_SHOP_POLICY,
  language: Language = english,
): ScaleFinding[] {
  const { limits } = policy;
  const found = [
    ...breakShareFindings(analysis.notes, limits, language),
    ...outsideTableFindings(analysis.notes, language),
    ...stepFindings(analysis.notes, limits, language),
    ...tenorFindings(analysis.notes, limits, language),
    ...unisonFindings(analysis.notes, limits, language),
    ...strutFindings(analysis, limits, language),
    ...loadFindings(analysis, limits, language),
  ];
  return found.sort((a, b) => scaleRules.indexOf(a.rule) - scaleRules.indexOf(b.rule));
}

// Break share

function breakShareFindings(
  notes: readonly NoteAnalysis[],
  limits: ScaleLimits,
  language: Language,
): ScaleFinding[] {
  const ceiling = limits.highestBreakShare;
  const floorOf = (note: NoteAnalysis): ShopLimit =>
    note.note.string.kind === 'plain' ? limits.lowestBreakSharePlain : limits.lowestBreakShareWound;
  const high = runsOf(notes, (note) => note.breakShare > ceiling.value).map((run) =>
    breakShareFinding(
      run,
      { worst: mostBy(run, (note) => note.breakShare), limit: ceiling, side: 'over' },
      language,
    ),
  );
  const low = (['plain', 'wound'] as const).flatMap((kind) =>
    runsOf(notes, (note) => note.note.string.kind === kind && note.breakShare < floorOf(note).value).map(
      (run) => {
        const worst = mostBy(run, (note) => -note.breakShare);
        return breakShareFinding(run, { worst, limit: floorOf(worst), side: 'under' }, language);
      },
    ),
  );
  return [...high, ...low];
}

function breakShareFinding(
  run: readonly NoteAnalysis[],
  { worst, limit, side }: { worst: NoteAnalysis; limit: ShopLimit; side: 'over' | 'under' },
  language: Language,
): ScaleFinding {
  const standardUncertainty = worst.standardUncertainties?.breakShare;
  return finding(
    {
      rule: side === 'over' ? 'break share over the ceiling' : 'break share under the floor',
      keys: run.map((note) => note.key),
      figure: worst.breakShare,
      standardUncertainty,
      limit,
      remark: sayKnown(worst.strengthRemark, language),
      sentence: language.say(
        'Break share is {side, select, over {over the ceiling} other {under the floor}} {where}: {share}{notes, plural, =1 {} other {{side, select, over {, highest} other {, lowest}} at {worst}}} by {table} ({limit}).',
        {
          side,
          where: at(run, language),
          share: percentWithin(worst.breakShare, standardUncertainty, language),
          notes: run.length,
          worst: noteName(worst.key),
          table: sayKnown(worst.strengthTable, language),
          limit: limitText(limit, language),
        },
      ),
    },
    language,
  );
}

function outsideTableFindings(notes: readonly NoteAnalysis[], language: Language): ScaleFinding[] {
  return runsOf(notes, (note) => !note.isWithinStrengthTable).map((run) => ({
    rule: 'outside the strength table' as const,
    weight: 'for information' as const,
    keys: run.map((note) => note.key),
    figure: run[0]!.breakShare,
    standardUncertainty: undefined,
    unit: '1' as const,
    limit: undefined,
    isClear: true,
    sentence: language.say(
      'The wire {where} lies outside the sizes of {table}: its break share is an extension of that table and not a figure from it.',
      { where: at(run, language), table: sayKnown(run[0]!.strengthTable, language) },
    ),
    remark: sayKnown(run[0]!.strengthRemark, language),
  }));
}

// Steps from note to note

const STEPS_OVER_BREAKS = [
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

function stepFindings(
  notes: readonly NoteAnalysis[],
  limits: ScaleLimits,
  language: Language,
): ScaleFinding[] {
  const findings: ScaleFinding[] = [];
  for (const [lower, upper] of neighbours(notes)) {
    if (isBreak(lower, upper)) {
      for (const { figure, rule, limit, name, text, perUnison } of STEPS_OVER_BREAKS) {
        const of = (note: NoteAnalysis): number => note[figure] * (perUnison ? note.note.strings : 1);
        const step = stepBetween(of(lower), of(upper));
        if (step <= limits[limit].value) continue;
        findings.push(
          stepFinding(
            {
              rule,
              limit: limits[limit],
              lower,
              upper,
              figure,
              step,
              sentence: (stepTold) =>
                language.say(
                  '{place}, {lower} to {upper}, {name} goes from {from} to {to}: a step of {step} ({limit}).',
                  {
                    ...stepTold,
                    place: breakText(lower, upper, language),
                    name: language.say(name),
                    from: text(of(lower), language),
                    to: text(of(upper), language),
                  },
                ),
            },
            language,
          ),
        );
      }
    } else {
      const limit = limits.largestTensionStepInSection;
      const step = stepBetween(lower.tension, upper.tension);
      if (step <= limit.value) continue;
      findings.push(
        stepFinding(
          {
            rule: 'tension step within a section',
            limit,
            lower,
            upper,
            figure: 'tension',
            step,
            sentence: (stepTold) =>
              language.say(
                'Within {section}, {lower} to {upper}, string tension goes from {from} to {to}: a step of {step} ({limit}).',
                {
                  ...stepTold,
                  section: lower.note.section,
                  from: newtonText(lower.tension),
                  to: newtonText(upper.tension),
                },
              ),
          },
          language,
        ),
      );
    }
  }
  return findings;
}

function stepFinding(
  step: {
    rule: ScaleRule;
    limit: ShopLimit;
    lower: NoteAnalysis;
    upper: NoteAnalysis;
    figure: NoteFigureName;
    step: number;
    sentence: (stepTold: Readonly<Record<'lower' | 'upper' | 'step' | 'limit', string>>) => string;
  },
  language: Language,
): ScaleFinding {
  const { rule, limit, lower, upper } = step;
  const relative = relativeUncertaintyOfRatio([lower], [upper], step.figure);
  const standardUncertainty = relative === undefined ? undefined : relative * (1 + step.step);
  return finding(
    {
      rule,
      keys: [lower.key, upper.key],
      figure: step.step,
      standardUncertainty,
      limit,
      remark: '',
      sentence: step.sentence({
        lower: noteName(lower.key),
        upper: noteName(upper.key),
        step: percentWithin(step.step, standardUncertainty, language),
        limit: limitText(limit, language),
      }),
    },
    language,
  );
}

/** A break lies where section, bridge, kind of string or count of strings changes: a step is meant to be there. */
function isBreak(lower: NoteAnalysis, upper: NoteAnalysis): boolean {
  return (
    (['section', 'bridge', 'strings'] as const).some((name) => lower.note[name] !== upper.note[name]) ||
    lower.note.string.kind !== upper.note.string.kind
  );
}

/** The larger over the smaller, less one: the same step up or down. */
function stepBetween(a: number, b: number): number {
  return Math.max(a, b) / Math.min(a, b) - 1;
}

/** u(a/b)/(a/b) of two sums over notes: what both share cancels as far as it acts on both alike. */
function relativeUncertaintyOfRatio(
  a: readonly NoteAnalysis[],
  b: readonly NoteAnalysis[],
  figure: NoteFigureName,
): number | undefined {
  const common = new Map<string, number>();
  let ownSquares = 0;
  for (const [notes, sign] of [
    [a, 1],
    [b, -1],
  ] as const) {
    const sum = notes.reduce((total, note) => total + note[figure], 0);
    for (const { contributions } of notes) {
      if (contributions === undefined) return undefined;
      for (const [input, contribution] of Object.entries(contributions[figure])) {
        const relative = contribution / sum;
        if (COMMON_INPUTS.has(input)) common.set(input, (common.get(input) ?? 0) + sign * relative);
        else ownSquares += relative ** 2;
      }
    }
  }
  let squares = ownSquares;
  for (const relative of common.values()) squares += relative ** 2;
  return Math.sqrt(squares);
}

// The low end of the plain strings

function tenorFindings(
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
    finding(
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

// Unisons

function unisonFindings(
  notes: readonly NoteAnalysis[],
  limits: ScaleLimits,
  language: Language,
): ScaleFinding[] {
  const limit = limits.largestTensionSpreadInUnison;
  const uneven = notes.flatMap((note): ScaleFinding[] => {
    const [least, most] = [Math.min(...note.stringTensions), Math.max(...note.stringTensions)];
    const spread = most / least - 1;
    if (spread <= limit.value) return [];
    const standardUncertainty = spreadUncertainty(note, spread);
    return [
      finding(
        {
          rule: 'uneven tension within a unison',
          keys: [note.key],
          figure: spread,
          standardUncertainty,
          limit,
          remark: '',
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
  const fewer = neighbours(notes).flatMap(([lower, upper]): ScaleFinding[] => {
    if (upper.note.strings >= lower.note.strings) return [];
    return [
      {
        rule: 'fewer strings than the note below',
        weight: 'for information',
        keys: [lower.key, upper.key],
        figure: upper.note.strings,
        standardUncertainty: undefined,
        unit: 'strings',
        limit: undefined,
        isClear: true,
        sentence: language.say(
          '{upper} has {few} strings and {lower} below it has {more}: check the count.',
          {
            upper: noteName(upper.key),
            few: upper.note.strings,
            lower: noteName(lower.key),
            more: lower.note.strings,
          },
        ),
        remark: '',
      },
    ];
  });
  return [...uneven, ...fewer];
}

/** Two strings of a unison share pitch, material and all but their own diameters and lengths. */
function spreadUncertainty(note: NoteAnalysis, spread: number): number | undefined {
  if (note.contributions === undefined) return undefined;
  const own = Object.entries(note.contributions.tension).filter(([input]) => !COMMON_INPUTS.has(input));
  const relative = Math.hypot(...own.map(([, contribution]) => contribution)) / note.tension;
  return Math.SQRT2 * relative * (1 + spread);
}

// Loads

function strutFindings(analysis: ScaleAnalysis, limits: ScaleLimits, language: Language): ScaleFinding[] {
  const findings: ScaleFinding[] = [];
  const limit = limits.largestLoadStepOverStrut;
  const wanted = limits.notesLookedAtBesideStrut.value;
  for (const [lower, upper] of neighbours(analysis.notes)) {
    if (lower.note.section === upper.note.section) continue;
    const below = analysis.notes.filter((note) => note.note.section === lower.note.section).slice(-wanted);
    const above = analysis.notes.filter((note) => note.note.section === upper.note.section).slice(0, wanted);
    const [meanBelow, meanAbove] = [meanLoad(below), meanLoad(above)];
    const step = stepBetween(meanBelow, meanAbove);
    const keys = [lower.key, upper.key];
    const section = (name: string): LoadShare => analysis.sections.find((share) => share.name === name)!;
    findings.push({
      rule: 'load beside a strut',
      weight: 'for information',
      keys,
      figure: section(lower.note.section).load - section(upper.note.section).load,
      standardUncertainty: undefined,
      unit: 'N',
      limit: undefined,
      isClear: true,
      sentence: language.say('Beside the strut between {lower} and {upper} pull {below} and {above}.', {
        lower: noteName(lower.key),
        upper: noteName(upper.key),
        below: loadText(section(lower.note.section), language),
        above: loadText(section(upper.note.section), language),
      }),
      remark: '',
    });
    if (step <= limit.value) continue;
    const relative = relativeUncertaintyOfRatio(below, above, 'unisonTension');
    const standardUncertainty = relative === undefined ? undefined : relative * (1 + step);
    findings.push(
      finding(
        {
          rule: 'load step over a strut',
          keys,
          figure: step,
          standardUncertainty,
          limit,
          remark: '',
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
    );
  }
  return findings;
}

/** A compass with at least this many notes is a whole one: the smallest usual is 85. */
const WHOLE_COMPASS = 85;

function loadFindings(analysis: ScaleAnalysis, limits: ScaleLimits, language: Language): ScaleFinding[] {
  const { total, totalUncertainty, totalStrings, notes, bridges } = analysis;
  if (notes.length === 0) return [];
  const byBridge = bridges.map(
    (bridge): ScaleFinding => ({
      rule: 'load by bridge',
      weight: 'for information',
      keys: notes.filter((note) => note.note.bridge === bridge.name).map((note) => note.key),
      figure: bridge.load,
      standardUncertainty: bridge.loadUncertainty,
      unit: 'N',
      limit: undefined,
      isClear: true,
      sentence: language.say("On the bridge '{bridge}' pull {load}, {share} of the whole.", {
        bridge: bridge.name,
        load: loadText(bridge, language),
        share: percent(bridge.load / total, language),
      }),
      remark: '',
    }),
  );
  const isWhole = notes.length >= WHOLE_COMPASS;
  const isHigh = total > limits.highestTotalLoad.value;
  const isLow = isWhole && total < limits.lowestTotalLoad.value;
  const limit = isLow ? limits.lowestTotalLoad : limits.highestTotalLoad;
  return [
    ...byBridge,
    {
      rule: 'total load',
      weight: isHigh || isLow ? 'beyond a limit' : 'for information',
      keys: notes.map((note) => note.key),
      figure: total,
      standardUncertainty: totalUncertainty,
      unit: 'N',
      limit: isHigh || isLow ? limit : undefined,
      isClear: isClearOf(total, limit.value, totalUncertainty),
      sentence: language.say(
        '{compass, select, whole {All {strings} strings together pull} other {The {notes} notes that can be computed have {strings} strings, which together pull}} {load}{judged, select, high {, over {limit}} low {, under {limit}} other {}}.',
        {
          compass: isWhole ? 'whole' : 'part',
          strings: totalStrings,
          notes: notes.length,
          load:
            kilonewtonText(total, language) +
            (totalUncertainty === undefined ? '' : ` ± ${kilonewtonText(totalUncertainty, language)}`),
          judged: isHigh ? 'high' : isLow ? 'low' : 'not',
          limit: limitText(limit, language),
        },
      ),
      remark: '',
    },
  ];
}

function meanLoad(notes: readonly NoteAnalysis[]): number {
  return notes.reduce((sum, note) => sum + note.unisonTension, 0) / notes.length;
}

// What the sentences are made of

function finding(
  parts: Pick<ScaleFinding, 'rule' | 'keys' | 'figure' | 'standardUncertainty' | 'sentence' | 'remark'> & {
    limit: ShopLimit;
  },
  { say }: Language,
): ScaleFinding {
  const isClear = isClearOf(parts.figure, parts.limit.value, parts.standardUncertainty);
  return {
    ...parts,
    weight: 'beyond a limit',
    unit: '1',
    isClear,
    sentence: isClear
      ? parts.sentence
      : `${parts.sentence} ${say('It is so near the limit that the readings cannot tell: measure again.')}`,
  };
}

function isClearOf(figure: number, limit: number, standardUncertainty: number | undefined): boolean {
  return standardUncertainty === undefined || Math.abs(figure - limit) > 2 * standardUncertainty;
}

/** Notes with the next key up, in the order of the keys. */
function neighbours(notes: readonly NoteAnalysis[]): [NoteAnalysis, NoteAnalysis][] {
  return notes.flatMap((upper, index): [NoteAnalysis, NoteAnalysis][] => {
    const lower = notes[index - 1];
    return lower !== undefined && upper.key === lower.key + 1 ? [[lower, upper]] : [];
  });
}

/** Runs of neighbouring notes that all meet a condition. */
function runsOf(notes: readonly NoteAnalysis[], meets: (note: NoteAnalysis) => boolean): NoteAnalysis[][] {
  const runs: NoteAnalysis[][] = [];
  for (const note of notes.filter(meets)) {
    const run = runs[runs.length - 1];
    if (run !== undefined && run[run.length - 1]!.key === note.key - 1) run.push(note);
    else runs.push([note]);
  }
  return runs;
}

function mostBy(notes: readonly NoteAnalysis[], figure: (note: NoteAnalysis) => number): NoteAnalysis {
  return notes.reduce((most, note) => (figure(note) > figure(most) ? note : most));
}
