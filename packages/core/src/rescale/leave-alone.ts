import { inKilonewtons, newtons, requireNotNegative, requirePositive } from '../units/index.ts';
import { english, type Language } from '../words/index.ts';
import { isUnder, loadName } from './scale-clash.ts';
import { type ObjectiveParts, objectiveParts, type WeighedString } from './scale-objective.ts';
import type { PreparedScale, WholeScaleAnswer } from './whole-scale.ts';
import type { RescaleWeights } from './whole-scale-problem.ts';

/** Why a scale may better be left as it is. */
export type LeaveAloneRule = 'historic instrument' | 'age not known' | 'already smooth' | 'load would rise';

export interface LeaveAloneAdvice {
  readonly rule: LeaveAloneRule;
  /** A sentence with its figures and its reason. */
  readonly sentence: string;
  /** The figures in the sentence, by name, in SI. */
  readonly figures: Readonly<Record<string, number>>;
}

/** What a shop goes by; all common practice without a source, to be edited. */
export interface LeaveAlonePolicy {
  /** Instruments made before this year are taken for historic unless the user says otherwise. */
  readonly historicBefore: number;
  /** Smallest share of the roughness that a new scale should take away to be worth it. */
  readonly leastGain: number;
  /** Largest share by which a load may rise. */
  readonly largestLoadRise: number;
}

export const COMMON_LEAVE_ALONE_POLICY: LeaveAlonePolicy = {
  historicBefore: 1880,
  leastGain: 0.2,
  largestLoadRise: 0.01,
};

/** What is known of the instrument. Unknown is not "no". */
export interface InstrumentAge {
  /** Undefined where it is not known. */
  readonly year: number | undefined;
  /** What the user says; undefined where nothing was said, and then the year decides. */
  readonly isHistoric: boolean | undefined;
}

const roughness = (parts: ObjectiveParts, weights: RescaleWeights): number =>
  weights.tensionBend * parts.tensionBend + weights.inharmonicityBend * parts.inharmonicityBend;

/**
 * Reasons to leave a scale as it is, weighed against an answer; empty where none speaks up.
 *
 * - Historic: its scale is part of what it is, and new sizes cannot be told from old ones later.
 * - Already smooth: the answer takes away less of the bends of ln T and ln B than is worth the trouble.
 * - Load: a section, a bridge or the whole would bear more than it was found with. What the plate and the bridges can bear is
 *   not known here: that is for the maker's data or a specialist.
 *
 * @param prepared    the problem that was solved
 * @param answer      one of its answers
 * @param instrument  what is known of its age
 * @param policy      what the shop goes by
 * @param language    of the sentences
 * @returns in the order above, loads from the whole to its parts
 *
 * Throws: RangeError when a limit of the policy is negative or not finite.
 * Source: common practice, no source, for all three rules and their figures.
 */
export function reasonsToLeaveAlone(
  prepared: PreparedScale,
  answer: WholeScaleAnswer,
  instrument: InstrumentAge,
  policy: LeaveAlonePolicy = COMMON_LEAVE_ALONE_POLICY,
  language: Language = english,
): LeaveAloneAdvice[] {
  const task = 'reasons to leave a scale alone';
  requirePositive(policy.historicBefore, 'the year before which an instrument is historic', task);
  requireNotNegative(policy.leastGain, 'the least gain', task);
  requireNotNegative(policy.largestLoadRise, 'the largest rise of a load', task);
  return [
    ...ageAdvice(instrument, policy, language),
    ...smoothnessAdvice(prepared, answer, policy, language),
    ...loadAdvice(prepared, answer, policy, language),
  ];
}

function ageAdvice(
  { year, isHistoric }: InstrumentAge,
  policy: LeaveAlonePolicy,
  { say }: Language,
): LeaveAloneAdvice[] {
  if (isHistoric === false) return [];
  if (isHistoric === true || (year !== undefined && year < policy.historicBefore)) {
    return [
      {
        rule: 'historic instrument',
        sentence:
          year === undefined
            ? say(
                'The instrument counts as historic. Leave its scale as it is unless owner and conservator agree: sizes that are changed cannot be told from the old ones later.',
              )
            : say(
                'The instrument was made in {year} and counts as historic{said, select, yes {} other { (before {limit})}}. Leave its scale as it is unless owner and conservator agree: sizes that are changed cannot be told from the old ones later.',
                { year, said: isHistoric ? 'yes' : 'no', limit: policy.historicBefore },
              ),
        figures: { ...(year !== undefined && { year }), historicBefore: policy.historicBefore },
      },
    ];
  }
  if (year !== undefined) return [];
  return [
    {
      rule: 'age not known',
      sentence: say(
        'The age of the instrument is not known, so it cannot be said whether it is historic (before {limit}). Find that out before its scale is changed.',
        { limit: policy.historicBefore },
      ),
      figures: { historicBefore: policy.historicBefore },
    },
  ];
}

function smoothnessAdvice(
  { problem, asFoundLogTensions, foundFigures }: PreparedScale,
  answer: WholeScaleAnswer,
  { leastGain }: LeaveAlonePolicy,
  language: Language,
): LeaveAloneAdvice[] {
  const { weights } = problem;
  const roughnessOf = (strings: readonly WeighedString[]): number =>
    roughness(objectiveParts(problem, strings, asFoundLogTensions), weights);
  const found = roughnessOf(foundFigures());
  const proposed = roughnessOf(
    answer.notes.map(({ string, isAsFound, tension, inharmonicity }) => ({
      string,
      isAsFound,
      logTension: Math.log(tension),
      logInharmonicity: Math.log(inharmonicity),
    })),
  );
  // A scale without bends cannot be made smoother.
  const gain = found > 0 ? 1 - proposed / found : 0;
  if (gain >= leastGain) return [];
  const { changedNotes } = answer.parts;
  return [
    {
      rule: 'already smooth',
      sentence: language.say(
        'The scale is about as smooth as this answer: changing {notes, plural, one {# note} other {# notes}} takes away {gained, select, some {{gain}} other {none}} of its bends of tension and B, less than the {least} that makes it worth while. Leave it as it is.',
        {
          notes: changedNotes,
          gained: gain > 0 ? 'some' : 'none',
          gain: percent(gain, language),
          least: percent(leastGain, language),
        },
      ),
      figures: { gain, leastGain, changedNotes, roughnessFound: found, roughnessProposed: proposed },
    },
  ];
}

function loadAdvice(
  { problem, asFoundLogTensions }: PreparedScale,
  answer: WholeScaleAnswer,
  { largestLoadRise }: LeaveAlonePolicy,
  language: Language,
): LeaveAloneAdvice[] {
  return answer.loads.flatMap(({ of, name, load }) => {
    const group = { of, name, highest: newtons(0) };
    const found = problem.notes.reduce(
      (sum, { asFound }, note) =>
        isUnder(group, asFound) ? sum + asFound.strings * Math.exp(asFoundLogTensions[note]!) : sum,
      0,
    );
    const rise = load / found - 1;
    if (rise <= largestLoadRise) return [];
    const kN = (value: number): string => language.fixed(inKilonewtons(newtons(value)), 1);
    return [
      {
        rule: 'load would rise' as const,
        sentence: language.say(
          'The load of {name} would rise by {rise}, from {found} to {load} kN. What plate, bridge and soundboard can bear is not known here: keep the load as it was found, or ask whoever knows the structure.',
          {
            name: loadName(group, language),
            rise: percent(rise, language),
            found: kN(found),
            load: kN(load),
          },
        ),
        figures: { rise, largestLoadRise, found_N: found, proposed_N: load },
      },
    ];
  });
}

const percent = (share: number, { fixed }: Language): string => `${fixed(100 * share, 1)} %`;
