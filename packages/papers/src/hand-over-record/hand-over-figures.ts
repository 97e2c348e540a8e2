import type { Metres, Radians } from '@becket/core';
import type { FactOf, HandOver, Settling, StrungScale } from '@becket/journal';
import type { TorqueSectionFigures } from '../appraisal-report/appraisal-figures.ts';

/*
 * What is worked out from a job for its hand-over record, and handed in with it: papers work nothing out themselves.
 */

export interface HandOverFigures {
  /** Undefined while the piano has not been handed over: the paper is then a draft. */
  readonly handOver: HandOver | undefined;
  /** As it stands now; `changedSince` says whether it is another than on the day of the hand-over. */
  readonly scale: StrungScale;
  /** The plain wire that was to be strung, by key; printed where the new wire was not measured. */
  readonly wanted: ReadonlyMap<number, Metres>;
  readonly scaleDigest: string;
  readonly changedSince: string | undefined;
  /** What was done, one sentence each, each from a fact of the job. */
  readonly done: readonly string[];
  /** As said at the hand-over, or as it stands now. */
  readonly deviations: FactOf<'handed-over'>['deviations'];
  readonly stillOpen: readonly string[];
  /** Torque as strung, by section. */
  readonly torque: readonly TorqueSectionFigures[];
  readonly bearing: readonly BearingSection[];
  readonly pitch: readonly FinalPitch[];
  readonly settling: Settling;
}

/** Bearing that was read on the new strings, in one section. */
export interface BearingSection {
  readonly section: string;
  readonly angles: BearingSpread<Radians> | undefined;
  /** Rises over one span; spans are never pooled. */
  readonly rises: readonly (BearingSpread<Metres> & { readonly span: Metres | undefined })[];
}

export interface BearingSpread<Value> {
  readonly read: number;
  readonly mean: Value;
  readonly lowest: Value;
  readonly highest: Value;
}

/** Where a section was left, and when. */
export interface FinalPitch {
  readonly section: string;
  /** In the last pass that left it somewhere. */
  readonly left: { readonly offset_cents: number; readonly pass: number; readonly on: string } | undefined;
  /** Read on the new strings apart from any pass, the last reading of each note. */
  readonly read: readonly { readonly key: number; readonly offset_cents: number; readonly at: string }[];
}
