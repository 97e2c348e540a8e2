import { addToGroup } from '@becket/core';
import type { Entry } from '../entry.ts';
import type { FactOf } from '../facts/index.ts';
import type { PassValueKind } from '../facts/settling.ts';
import type { Ulid } from '../ulid.ts';
import { entriesThatStand } from './entries-that-stand.ts';
import type { Standing } from './job.ts';
import { standing } from './standing.ts';

/** One section in one pass. A list is empty where nobody read it. */
export interface PassSection {
  readonly section: string;
  readonly before: readonly PassValue[];
  readonly aimed: readonly PassValue[];
  readonly after: readonly PassValue[];
}

export interface PassValue {
  readonly entry: Ulid;
  /** The note it was read at; undefined for the mean of the section. */
  readonly key: number | undefined;
  readonly offset_cents: number;
}

/** One pass with all that was read in it. */
export interface Pass extends Standing<Omit<FactOf<'pass-begun'>, 'kind' | 'v'>> {
  /** In the order in which they are pulled up, then any other that was read. */
  readonly sections: readonly PassSection[];
  readonly mishaps: readonly Standing<FactOf<'pass-mishap'>>[];
}

/** A day that was planned, and what became of it. */
export interface FollowUp extends Standing<FactOf<'follow-up-planned'>> {
  readonly done: Standing<FactOf<'follow-up-done'>> | undefined;
}

export type OverpullLimit = Standing<FactOf<'overpull-limit-set'>>;

/** How a piano settles. */
export interface Settling {
  /** By number; two of one number, from two devices, in the order of the journal. */
  readonly passes: readonly Pass[];
  /** By day. */
  readonly followUps: readonly FollowUp[];
  /** The limit of this job where it has its own; the last that stands. */
  readonly limit: OverpullLimit | undefined;
}

/**
 * The passes and follow-ups of a job from its entries, in any order and more than once. A value or a mishap whose pass was
 * withdrawn is not shown; neither is the outcome of a follow-up that was.
 */
export function foldSettling(entries: Iterable<Entry>): Settling {
  const begun: Standing<FactOf<'pass-begun'>>[] = [];
  const reads = new Map<Ulid, Standing<FactOf<'pass-read'>>[]>();
  const mishaps = new Map<Ulid, Standing<FactOf<'pass-mishap'>>[]>();
  const planned: Standing<FactOf<'follow-up-planned'>>[] = [];
  const done = new Map<Ulid, Standing<FactOf<'follow-up-done'>>>();
  let limit: OverpullLimit | undefined;
  for (const entry of entriesThatStand(entries)) {
    const { fact } = entry;
    if (fact.kind === 'pass-begun') begun.push(standing(entry, fact));
    else if (fact.kind === 'pass-read') addToGroup(reads, fact.passBegun, standing(entry, fact));
    else if (fact.kind === 'pass-mishap') addToGroup(mishaps, fact.passBegun, standing(entry, fact));
    else if (fact.kind === 'overpull-limit-set') limit = standing(entry, fact);
    else if (fact.kind === 'follow-up-planned') planned.push(standing(entry, fact));
    else if (fact.kind === 'follow-up-done') done.set(fact.followUp, standing(entry, fact));
  }
  return {
    passes: begun
      .map(({ kind: _, v: __, ...pass }) => ({
        ...pass,
        sections: sectionsOf(pass.order, reads.get(pass.entry) ?? []),
        mishaps: mishaps.get(pass.entry) ?? [],
      }))
      .sort((a, b) => a.pass - b.pass),
    followUps: planned
      .map((plan) => ({ ...plan, done: done.get(plan.entry) }))
      .sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0)),
    limit,
  };
}

function sectionsOf(
  order: readonly string[],
  reads: readonly Standing<FactOf<'pass-read'>>[],
): PassSection[] {
  const names = [...new Set([...order, ...reads.map(({ section }) => section)])];
  return names.map((section) => {
    const valuesOf = (kind: PassValueKind): PassValue[] => {
      const own = reads.filter((one) => one.section === section && one.value === kind);
      // The last of each place stands where the first one stood.
      const latest = new Map(own.map((one) => [one.key, one]));
      return [...latest.values()].map(({ entry, key, offset_cents }) => ({ entry, key, offset_cents }));
    };
    return { section, before: valuesOf('before'), aimed: valuesOf('aimed'), after: valuesOf('after') };
  });
}
