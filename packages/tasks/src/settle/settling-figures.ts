import { COMMON_FALL_BACK, english, type Language, noteName } from '@becket/core';
import {
  type Entry,
  foldSettling,
  type Job,
  type PassPlan,
  passPlan,
  type Settling,
  settlingLimits,
} from '@becket/journal';
import type { SettlingFigures } from '@becket/papers';
import { noteRuns } from '../note-runs.ts';

/** What the settling log prints. */
export function settlingFigures(
  job: Job,
  { entries, today }: { entries: readonly Entry[]; today: string },
  language: Language = english,
): SettlingFigures {
  const settling = foldSettling(entries);
  const plan = passPlan(job, settling, settlingLimits(job, settling.limit));
  return { settling, plan, remarks: planRemarks(settling, plan, language), today };
}

/** The air may differ by so much between two passes before part of a fall is the board’s. Common practice, no source. */
const HUMIDITY_APART_PERCENT = 8;

/**
 * What a plan rests on and lacks, one sentence each: the starting figure where there is no fall yet, sections that nothing is
 * told of, sections that the limit holds down, and air that changed from pass to pass.
 */
export function planRemarks(
  { passes }: Settling,
  { sections }: PassPlan,
  language: Language = english,
): string[] {
  const { say, fixed, list } = language;
  const remarks: string[] = [];
  const named = (some: PassPlan['sections']) => list(some.map(({ section }) => section));
  const starting = sections.filter(({ isDefault }) => isDefault);
  if (starting.length > 0)
    remarks.push(
      say(
        '{sections}: no fall of this piano is known yet, so the starting figure is used, {share} ± {uncertainty} % of the raise lost (common practice, no source). Two passes are needed: read each section again before the next one.',
        {
          sections: named(starting),
          share: fixed(COMMON_FALL_BACK.share * 100, 0),
          uncertainty: fixed(COMMON_FALL_BACK.standardUncertainty * 100, 0),
        },
      ),
    );
  const noLimit = sections.filter(({ highestOffset }) => highestOffset === undefined);
  if (noLimit.length > 0)
    remarks.push(
      say(
        '{sections}: no string can be computed, so no overpull is told. Its wire and its lengths are needed.',
        { sections: named(noLimit) },
      ),
    );
  const partly = sections.filter(
    ({ highestOffset, limit }) => highestOffset !== undefined && limit.notComputed.length > 0,
  );
  if (partly.length > 0)
    remarks.push(
      say('{notes} cannot be computed and have no part in the limit.', {
        notes: noteRuns(
          partly.flatMap(({ limit }) => limit.notComputed),
          language,
        ),
      }),
    );
  const nowhere = sections.filter(
    ({ stands, highestOffset }) => stands === undefined && highestOffset !== undefined,
  );
  if (nowhere.length > 0)
    remarks.push(
      say('{sections}: where it stands is not known. Read it before it is pulled up.', {
        sections: named(nowhere),
      }),
    );
  for (const { section, highestOffset, limit } of sections) {
    if (highestOffset === undefined || highestOffset >= 0 || limit.nearest === undefined) continue;
    remarks.push(
      say(
        '{section}: {note} is above the limit at its pitch already ({share} % of its break load). Do not pull it over; look at its wire under Scale.',
        {
          section,
          note: noteName(limit.nearest.key),
          share: fixed(limit.nearest.breakShare * 100, 0),
        },
      ),
    );
  }
  const limited = sections.filter(
    ({ next, highestOffset }) =>
      next?.isLimited === true && highestOffset !== undefined && highestOffset >= 0,
  );
  if (limited.length > 0)
    remarks.push(
      say(
        '{sections}: the limit of the break load holds the overpull down. More passes are needed there, not a higher pull.',
        { sections: named(limited) },
      ),
    );
  const [before, last] = [passes.at(-2), passes.at(-1)];
  const [dry, damp] = [before?.relativeHumidity_percent, last?.relativeHumidity_percent];
  if (dry !== undefined && damp !== undefined && Math.abs(damp - dry) > HUMIDITY_APART_PERCENT)
    remarks.push(
      say(
        'Relative humidity went from {before} to {after} % between the last two passes: part of the fall is the soundboard’s, not the wire’s.',
        { before: fixed(dry, 0), after: fixed(damp, 0) },
      ),
    );
  return remarks;
}
