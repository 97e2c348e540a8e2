import { message } from '@becket/core';
import { type Entry, isKnownFact, type UnknownFact } from '../entry.ts';
import { type Fact, type FactOf, isAsFoundFact } from '../facts/index.ts';
import { amendmentOf, factMeant } from './amendment.ts';
import { foldFurther } from './fold-further.ts';
import { keepFold, longestKnownFold } from './folds-known.ts';
import type { Amendment, Job, Section, Standing, StandingReading, UnisonDescription } from './job.ts';
import { lateEntries } from './late-entries.ts';
import { compareEntries } from './order.ts';
import { standing } from './standing.ts';
import { withdrawnIds } from './withdrawn-ids.ts';

/**
 * The state of a job from its entries.
 *
 * Entries may come in any order and more than once; the result is the same. Withdrawn and replaced entries take no
 * part. Entries of unknown kinds are carried along and shown.
 * Throws: RangeError when there is no entry, or when entries of several jobs are mixed.
 */
export function foldJob(entries: Iterable<Entry>): Job {
  const list = [...entries];
  const known = longestKnownFold(list);
  if (known?.entries.length === list.length) return known.job;
  const further = list.slice(known?.entries.length ?? 0);
  let job = further.length > quickFurther ? undefined : known?.job;
  let last = known?.last;
  for (const entry of further) {
    if (job === undefined || last === undefined) break;
    const isNext = entry.job === job.id && compareEntries(last, entry) < 0;
    job = isNext ? foldFurther(job, entry) : undefined;
    last = entry;
  }
  if (job === undefined || last === undefined) {
    const ordered = uniqueInOrder(list);
    job = foldAnew(ordered);
    last = ordered.at(-1)!;
  }
  keepFold({ entries: list, last, job });
  return job;
}

/** More entries than this at once, such as a table brought in, are folded anew: each step copies the lists it adds to. */
const quickFurther = 20;

/** The same without looking at what was folded before. */
export function foldAnew(ordered: readonly Entry[]): Job {
  const first = ordered[0];
  if (first === undefined)
    throw new RangeError('Cannot fold a job without entries: one job-opened entry is needed, none was found');
  const stranger = ordered.find((entry) => entry.job !== first.job);
  if (stranger !== undefined) {
    throw new RangeError(
      `Cannot fold entries of several jobs together: found ${first.job} and ${stranger.job}`,
    );
  }

  const withdrawnEntries = withdrawnIds(ordered);
  const late = lateEntries(ordered, withdrawnEntries);
  const sections = new Map<string, Section>();
  const unisons = new Map<number, UnisonDescription>();
  const readings: StandingReading[] = [];
  const absences: Standing<FactOf<'reading-absent'>>[] = [];
  const observations: Standing<FactOf<'observation'>>[] = [];
  const sizeStamps: Standing<FactOf<'size-stamp'>>[] = [];
  const windings = new Map<string, Standing<FactOf<'winding-described'>>>();
  const wirePaths: Standing<FactOf<'wire-path'>>[] = [];
  const softParts = new Map<string, Standing<FactOf<'soft-part'>>>();
  const plateParts = new Map<string, Standing<FactOf<'plate-part'>>>();
  const photos = new Map<string, Standing<FactOf<'photo'>>>();
  const samples: Standing<FactOf<'sample-kept'>>[] = [];
  const instruments = new Map<string, Standing<FactOf<'instrument-described'>>>();
  const acceptedGaps: Standing<FactOf<'gap-accepted'>>[] = [];
  const imports: Standing<FactOf<'readings-imported'>>[] = [];
  const damages: Standing<FactOf<'damage-found'>>[] = [];
  const findings: Standing<FactOf<'finding'>>[] = [];
  const testPins: Standing<FactOf<'test-pin'>>[] = [];
  const pinRemedies = new Map<string, Standing<FactOf<'pin-remedy'>>>();
  const pinsDriven: Standing<FactOf<'pins-driven'>>[] = [];
  const decisions: Standing<FactOf<'decision-made'>>[] = [];
  const estimates: Standing<FactOf<'estimate-made'>>[] = [];
  const estimateAnswers: Standing<FactOf<'estimate-answered'>>[] = [];
  const changeAnswers = new Map<string, Standing<FactOf<'change-answered'>>>();
  const hoursWorked: Standing<FactOf<'hours-worked'>>[] = [];
  const proposals: Standing<FactOf<'scale-proposed'>>[] = [];
  let chosenScale: Job['chosenScale'];
  let pinPolicy: Job['pinPolicy'];
  let pinLimits: Job['pinLimits'];
  const unknownEntries: Entry<UnknownFact>[] = [];
  const amendments: Amendment[] = [];
  let opened: Standing<FactOf<'job-opened'>> | undefined;
  let openedAt: string | undefined;
  let piano: Job['piano'];
  let seal: Job['seal'];

  for (const entry of ordered) {
    if (withdrawnEntries.has(entry.id)) continue;
    const { fact } = entry;
    if (!isKnownFact(fact)) {
      unknownEntries.push(entry as Entry<UnknownFact>);
      continue;
    }
    if (seal !== undefined || late.has(entry.id)) noteAmendment(entry as Entry<Fact>, ordered, amendments);
    switch (fact.kind) {
      case 'job-opened':
        opened = standing(entry, fact);
        openedAt ??= opened.at;
        break;
      case 'piano-described':
        piano = standing(entry, fact);
        break;
      case 'section-described':
        sections.set(fact.section, standing(entry, fact));
        break;
      case 'unisons-described':
        for (let key = fact.firstKey; key <= fact.lastKey; key += 1) {
          const { strings, winding, layers } = fact;
          unisons.set(key, { key, strings, winding, layers, entry: entry.id });
        }
        break;
      case 'reading':
        readings.push(standing(entry, fact));
        break;
      case 'reading-absent':
        absences.push(standing(entry, fact));
        break;
      case 'observation':
        observations.push(standing(entry, fact));
        break;
      case 'size-stamp':
        sizeStamps.push(standing(entry, fact));
        break;
      case 'winding-described':
        // What is said of every string of a note later holds for each that something was said of alone.
        if (fact.string === undefined)
          for (const string of [1, 2, 3]) windings.delete(`${fact.key}/${string}`);
        windings.set(`${fact.key}/${fact.string ?? 'all'}`, standing(entry, fact));
        break;
      case 'wire-path':
        wirePaths.push(standing(entry, fact));
        break;
      case 'soft-part':
        softParts.set(`${fact.section}/${fact.part}`, standing(entry, fact));
        break;
      case 'plate-part':
        plateParts.set(`${fact.section}/${fact.part}`, standing(entry, fact));
        break;
      case 'photo':
        if (seal !== undefined && !isAsFoundFact(fact))
          noteLostPhoto(entry, photos.get(fact.digest), amendments);
        photos.set(fact.digest, standing(entry, fact));
        break;
      case 'sample-kept':
        samples.push(standing(entry, fact));
        break;
      case 'instrument-described':
        instruments.set(fact.instrument, standing(entry, fact));
        break;
      case 'gap-accepted':
        acceptedGaps.push(standing(entry, fact));
        break;
      case 'readings-imported':
        imports.push(standing(entry, fact));
        break;
      case 'sealed':
        // The first seal is the seal: what comes later amends it.
        seal ??= standing(entry, fact);
        break;
      case 'damage-found':
        damages.push(standing(entry, fact));
        break;
      case 'finding':
        findings.push(standing(entry, fact));
        break;
      case 'pin-policy-set':
        pinPolicy = standing(entry, fact);
        break;
      case 'pin-limits-set':
        pinLimits = standing(entry, fact);
        break;
      case 'test-pin':
        testPins.push(standing(entry, fact));
        break;
      case 'pin-remedy':
        pinRemedies.set(`${fact.key}/${fact.string}`, standing(entry, fact));
        break;
      case 'pins-driven':
        pinsDriven.push(standing(entry, fact));
        break;
      case 'decision-made':
        decisions.push(standing(entry, fact));
        break;
      case 'estimate-made':
        estimates.push(standing(entry, fact));
        break;
      case 'estimate-answered':
        estimateAnswers.push(standing(entry, fact));
        break;
      case 'change-answered':
        changeAnswers.set(fact.damage, standing(entry, fact));
        break;
      case 'hours-worked':
        hoursWorked.push(standing(entry, fact));
        break;
      case 'scale-proposed':
        proposals.push(standing(entry, fact));
        break;
      case 'scale-chosen':
        chosenScale = standing(entry, fact);
        break;
      case 'withdrawn':
        break;
    }
  }

  return {
    id: first.job,
    title: opened?.title ?? message('untitled job'),
    customer: opened?.customer,
    asks: opened?.asks,
    openedAt,
    piano,
    sections: [...sections.values()].sort(
      (a, b) => a.firstKey - b.firstKey || (a.section < b.section ? -1 : 1),
    ),
    unisons,
    readings,
    absences,
    observations,
    sizeStamps,
    windings: [...windings.values()],
    wirePaths: latestPaths(wirePaths),
    softParts: [...softParts.values()],
    plateParts: [...plateParts.values()],
    photos: [...photos.values()],
    samples,
    instruments,
    acceptedGaps,
    imports,
    seal,
    damages,
    findings,
    pinPolicy,
    pinLimits,
    testPins,
    pinRemedies: [...pinRemedies.values()].filter(({ remedy }) => remedy !== 'as the rest'),
    pinsDriven,
    decisions,
    estimates: [...estimates].sort((a, b) => a.version - b.version),
    estimateAnswers,
    changeAnswers: [...changeAnswers.values()],
    hoursWorked,
    proposals,
    chosenScale,
    amendments,
    unknownEntries,
    withdrawnEntries,
    entryCount: ordered.length,
    lastStep: ordered.at(-1)?.step ?? 0,
  };
}

function uniqueInOrder(entries: Iterable<Entry>): Entry[] {
  const byId = new Map<string, Entry>();
  for (const entry of entries) byId.set(entry.id, entry);
  return [...byId.values()].sort(compareEntries);
}

function noteAmendment(entry: Entry<Fact>, ordered: readonly Entry[], amendments: Amendment[]): void {
  const { fact } = entry;
  const withdrawn =
    fact.kind === 'withdrawn'
      ? factMeant(fact, (id) => ordered.find((other) => other.id === id)?.fact)
      : undefined;
  const amendment = amendmentOf(entry, withdrawn);
  if (amendment !== undefined) amendments.push(amendment);
}

/** A photo of the piano as found that is said to show something else leaves the sealed record: that amends it too. */
function noteLostPhoto(
  { id, at, by, fact }: Entry,
  before: FactOf<'photo'> | undefined,
  amendments: Amendment[],
): void {
  if (before === undefined || !isAsFoundFact(before)) return;
  const reason = 'reason' in fact ? (fact.reason as string | undefined) : undefined;
  amendments.push({ entry: id, at, by, reason, kind: fact.kind });
}

/** Drops every path of which a later one names a string: a string is on one wire only. */
function latestPaths(paths: readonly Standing<FactOf<'wire-path'>>[]): Standing<FactOf<'wire-path'>>[] {
  const taken = new Set<string>();
  const latest: Standing<FactOf<'wire-path'>>[] = [];
  for (const path of [...paths].reverse()) {
    const names = path.strings.map(({ key, string }) => `${key}/${string}`);
    if (names.some((name) => taken.has(name))) continue;
    for (const name of names) taken.add(name);
    latest.push(path);
  }
  return latest.reverse();
}
