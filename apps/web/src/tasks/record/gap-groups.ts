import { english, grouped, type Language } from '@becket/core';
import type { Gap } from '@becket/journal';
import { noteRuns } from '@becket/tasks';

/** Gaps of one kind: the same thing missing at several places. */
export interface GapGroup {
  /** 'wire-diameter': what stands before the place in the name of each. */
  readonly kind: string;
  readonly what: string;
  /** What each costs later; undefined where they do not say the same. */
  readonly cost: string | undefined;
  readonly gaps: readonly Gap[];
}

const kindOf = ({ name }: Gap): string => name.split('/')[0]!;

/** Gaps by kind, in the order in which the first of each stands. */
export function gapGroups(gaps: readonly Gap[]): GapGroup[] {
  return [...grouped(gaps, kindOf)].map(([kind, own]) => {
    const costs = new Set(own.map(({ cost }) => cost));
    return { kind, what: own[0]!.what, cost: costs.size === 1 ? own[0]!.cost : undefined, gaps: own };
  });
}

/** Where they are: 'A0 to C1, E1', or the names of sections. */
export function placesOf(gaps: readonly Gap[], language: Language = english): string {
  const keys = gaps.flatMap(({ place }) => (place.key === undefined ? [] : [place.key]));
  const sections = gaps.flatMap(({ place }) =>
    place.key === undefined && place.section !== undefined ? [place.section] : [],
  );
  return [...(keys.length === 0 ? [] : [noteRuns(keys, language)]), ...sections].join(', ');
}
