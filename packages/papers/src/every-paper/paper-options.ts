import type { Language, LengthUnit } from '@becket/core';
import type { Orders } from '@becket/journal';

/** What a paper needs to know beside the job. */
export interface PaperOptions {
  /** The day printed on the paper: RFC 3339 UTC. */
  readonly at: string;
  /** What the paper is written in. */
  readonly language: Language;
  /** The unit that stands first. */
  readonly firstUnit: LengthUnit;
  /** Where the job is found again; without it the paper has no code to scan. */
  readonly address?: string | undefined;
  /** Whether the entries under the seal are all there and unchanged; undefined when nobody has checked. */
  readonly isSealIntact?: boolean | undefined;
  /** What was ordered for this job, and which checks are signed; for papers about orders. */
  readonly orders?: Orders | undefined;
}
