import type { PlainString, WoundString } from '../strings/index.ts';
import type { Hertz } from '../units/index.ts';

/** One note of a scale: what its strings are, how many there are, and where they stand. */
export interface ScaleNote {
  /** 1 = A0 … 88 = C8. */
  readonly key: number;
  /** Run of notes between two plate struts, by the name the user gave it. */
  readonly section: string;
  readonly bridge: string;
  readonly strings: 1 | 2 | 3;
  /** First mode of the flexible string at pitch. */
  readonly frequency: Hertz;
  /** Every string of the unison is taken to be like this one. */
  readonly string: PlainString | WoundString;
}
