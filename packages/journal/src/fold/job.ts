import type { Entry, UnknownFact } from '../entry.ts';
import type { FactOf, Reading } from '../facts/index.ts';
import type { Ulid } from '../ulid.ts';

/** A fact as it stands in the state, with the entry it came from. */
export type Standing<F> = F & {
  readonly entry: Ulid;
  readonly step: number;
  readonly at: string;
  readonly by: string;
};

export type StandingReading = Standing<Reading>;
export type Piano = Standing<FactOf<'piano-described'>>;
export type Section = Standing<FactOf<'section-described'>>;

/** How one note is strung. */
export interface UnisonDescription {
  readonly key: number;
  readonly strings: number;
  readonly winding: 'plain' | 'wound';
  readonly layers: number;
  readonly entry: Ulid;
}

/** A change of the as-found record after its seal. */
export interface Amendment {
  readonly entry: Ulid;
  readonly at: string;
  readonly by: string;
  /** Undefined when the change came without a reason, from a device that did not know of the seal. */
  readonly reason: string | undefined;
  readonly kind: string;
}

/** The state of a job: a fold over its entries. Never stored; always folded anew. */
export interface Job {
  readonly id: Ulid;
  readonly title: string;
  readonly customer: string | undefined;
  /** What the customer asked for, in her own words. */
  readonly asks: string | undefined;
  readonly openedAt: string | undefined;
  readonly piano: Piano | undefined;
  /** In order of their first key. */
  readonly sections: readonly Section[];
  /** By key number. */
  readonly unisons: ReadonlyMap<number, UnisonDescription>;
  /** Every reading that stands, in journal order. */
  readonly readings: readonly StandingReading[];
  readonly absences: readonly Standing<FactOf<'reading-absent'>>[];
  readonly observations: readonly Standing<FactOf<'observation'>>[];
  readonly sizeStamps: readonly Standing<FactOf<'size-stamp'>>[];
  readonly windings: readonly Standing<FactOf<'winding-described'>>[];
  /** One for each wire whose strings have been said; a later path of a string stands in place of an earlier one. */
  readonly wirePaths: readonly Standing<FactOf<'wire-path'>>[];
  readonly softParts: readonly Standing<FactOf<'soft-part'>>[];
  readonly plateParts: readonly Standing<FactOf<'plate-part'>>[];
  readonly photos: readonly Standing<FactOf<'photo'>>[];
  readonly samples: readonly Standing<FactOf<'sample-kept'>>[];
  /** By name. */
  readonly instruments: ReadonlyMap<string, Standing<FactOf<'instrument-described'>>>;
  readonly acceptedGaps: readonly Standing<FactOf<'gap-accepted'>>[];
  readonly imports: readonly Standing<FactOf<'readings-imported'>>[];
  readonly seal: Standing<FactOf<'sealed'>> | undefined;
  /** What came to light after the strip, in journal order: each a line of the change order. */
  readonly damages: readonly Standing<FactOf<'damage-found'>>[];
  /** What the survey says, in journal order; a corrected line is not among them. */
  readonly findings: readonly Standing<FactOf<'finding'>>[];
  /** The shop's rule for pin sizes where this job has its own. */
  readonly pinPolicy: Standing<FactOf<'pin-policy-set'>> | undefined;
  readonly pinLimits: Standing<FactOf<'pin-limits-set'>> | undefined;
  readonly testPins: readonly Standing<FactOf<'test-pin'>>[];
  /** One for each string that has its own. */
  readonly pinRemedies: readonly Standing<FactOf<'pin-remedy'>>[];
  /** In the order of driving. */
  readonly pinsDriven: readonly Standing<FactOf<'pins-driven'>>[];
  /** In journal order; the last one stands. */
  readonly decisions: readonly Standing<FactOf<'decision-made'>>[];
  /** By version, the first first. */
  readonly estimates: readonly Standing<FactOf<'estimate-made'>>[];
  readonly estimateAnswers: readonly Standing<FactOf<'estimate-answered'>>[];
  /** One for each line of the change order that has an answer: the latest. */
  readonly changeAnswers: readonly Standing<FactOf<'change-answered'>>[];
  readonly hoursWorked: readonly Standing<FactOf<'hours-worked'>>[];
  /** Scales that might be strung, in journal order. */
  readonly proposals: readonly Standing<FactOf<'scale-proposed'>>[];
  /** Which scale is strung; undefined until somebody has chosen. */
  readonly chosenScale: Standing<FactOf<'scale-chosen'>> | undefined;
  readonly amendments: readonly Amendment[];
  /** Entries of a kind or version this program does not know: kept, and shown as such. */
  readonly unknownEntries: readonly Entry<UnknownFact>[];
  /** Entries that a later one took out or replaced. */
  readonly withdrawnEntries: ReadonlySet<Ulid>;
  readonly entryCount: number;
  readonly lastStep: number;
}
