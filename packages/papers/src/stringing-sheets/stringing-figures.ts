import type { CutLength, Metres } from '@becket/core';

/*
 * What is worked out from a job for the sheets it is strung by, and handed in with it: papers work nothing out themselves.
 */

export interface StringingFigures {
  /** Which scale is strung, in words. */
  readonly scale: string;
  /** Bass to treble within each section. */
  readonly wires: readonly StringingWire[];
  readonly wound: readonly StringingString[];
  /** Strings that no wire can be cut for, with what is not known. */
  readonly uncounted: readonly (StringingString & { readonly needs: string })[];
  /** Notes whose stringing nobody has described. */
  readonly undescribed: readonly string[];
  /** What each wire gets beyond its way from pin to pin, in a sentence. */
  readonly allowances: string;
}

export interface StringingString {
  readonly key: number;
  readonly note: string;
  /** Counted from the bass side of its unison. */
  readonly string: number;
  readonly section: string | undefined;
}

/** One plain wire: two strings round one hitch pin, or one that is tied. */
export interface StringingWire {
  readonly joined: 'looped' | 'tied';
  readonly strings: readonly StringingString[];
  readonly diameter: Metres;
  /** 'US 15½, metric 0.900'; empty where it is no listed size. */
  readonly size: string;
  readonly cut: CutLength;
  /** What its length rests on that was not read here; each a few words. */
  readonly remarks: readonly string[];
}
