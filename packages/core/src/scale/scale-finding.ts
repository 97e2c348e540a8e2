import type { Language } from '../words/index.ts';
import type { ShopLimit } from './shop-policy.ts';

/*
 * One thing that stands out in a scale, as a plain sentence with the rule and the figure. A finding is a result, never an
 * error; what counts as too much is the shop's policy and not physics.
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

/** A share, step or growth that lies beyond its limit; the sentence says so where the readings cannot tell. */
export function beyondLimit(
  parts: Pick<ScaleFinding, 'rule' | 'keys' | 'figure' | 'standardUncertainty' | 'sentence'> & {
    readonly limit: ShopLimit;
    readonly remark?: string;
  },
  { say }: Language,
): ScaleFinding {
  const isClear = isClearOf(parts.figure, parts.limit.value, parts.standardUncertainty);
  return {
    remark: '',
    ...parts,
    weight: 'beyond a limit',
    unit: '1',
    isClear,
    sentence: isClear
      ? parts.sentence
      : `${parts.sentence} ${say('It is so near the limit that the readings cannot tell: measure again.')}`,
  };
}

/** A figure that is told and held against nothing. */
export function forInformation(
  parts: Pick<ScaleFinding, 'rule' | 'keys' | 'figure' | 'unit' | 'sentence'> &
    Partial<Pick<ScaleFinding, 'standardUncertainty' | 'remark'>>,
): ScaleFinding {
  return {
    standardUncertainty: undefined,
    remark: '',
    ...parts,
    weight: 'for information',
    limit: undefined,
    isClear: true,
  };
}

/** |figure − limit| > 2·u: the readings can tell on which side of the limit it lies. */
export function isClearOf(figure: number, limit: number, standardUncertainty: number | undefined): boolean {
  return standardUncertainty === undefined || Math.abs(figure - limit) > 2 * standardUncertainty;
}
