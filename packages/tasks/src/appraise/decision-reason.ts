import type { Ulid, Verdict } from '@becket/journal';

/** One reason for a verdict, with its figure and the entries it rests on. */
export interface DecisionReason {
  readonly about: 'structure' | 'plate' | 'pin block' | 'pins' | 'soundboard' | 'what is unknown';
  readonly verdict: Verdict;
  readonly sentence: string;
  /** The figure by itself, where there is one: '9.4 N·m (83 in·lbf)'. */
  readonly figure: string | undefined;
  readonly entries: readonly Ulid[];
  /** What has to be done or judged first; undefined for a plain go. */
  readonly condition: string | undefined;
  /** Who judges it; undefined where the technician does. */
  readonly deferTo: string | undefined;
  readonly source: string;
}
