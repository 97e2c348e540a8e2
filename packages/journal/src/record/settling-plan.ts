import {
  A228_MINIMUM,
  analyseNote,
  type Cents,
  COMMON_SHOP_POLICY,
  cents,
  type FallBack,
  fallBack,
  type Newtons,
  type NextOverpull,
  type NoteAnalysis,
  newtons,
  nextOverpull,
  overpullLimit,
  PUBLISHED_STRENGTH_TABLES,
  type Raise,
  strengthTableNamed,
  tensionFactor,
} from '@becket/core';
import type { OverpullLimit, Pass, PassSection, PassValue, Settling } from '../fold/fold-settling.ts';
import type { Job } from '../fold/job.ts';
import { strungScale } from './strung-scale.ts';

/** What a pitch reading of a pass is worth as that of its section. Common practice, no source. */
export const PASS_READING_UNCERTAINTY = { 'mean of the section': cents(1), 'one note': cents(2) } as const;

/** An offset of a section, with its standard uncertainty. */
export interface SectionOffset {
  readonly offset: Cents;
  readonly standardUncertainty: Cents;
}

/** How far up the strings of a section may be pulled, and what they pull with. */
export interface SectionLimit {
  readonly section: string;
  readonly firstKey: number;
  readonly lastKey: number;
  /** Of the string that comes to its share first, at the pitch the piano is strung for; undefined where none can be computed. */
  readonly nearest: { readonly key: number; readonly breakShare: number; readonly offset: Cents } | undefined;
  /** All its strings together, at pitch; of the notes that can be computed. */
  readonly load: Newtons;
  readonly computed: number;
  /** Notes that cannot be computed: they have no part in the limit. */
  readonly notComputed: readonly number[];
}

/** The limits of all sections, and what they rest on. */
export interface SettlingLimits {
  readonly sections: readonly SectionLimit[];
  readonly highestBreakShare: number;
  /** Who set the highest share. */
  readonly source: string;
  /** Who set it for this job, and on which day; undefined where it is the starting one. */
  readonly set: Pick<OverpullLimit, 'entry' | 'by' | 'at'> | undefined;
  readonly strengthTable: string;
  /** Notes whose new wire was measured; the rest is taken as chosen or as found. */
  readonly measured: number;
}

/** What the next pass of one section should be. */
export interface SectionPlan {
  readonly section: string;
  readonly limit: SectionLimit;
  /** The limit in cents of the pitch of that pass; undefined where no string can be computed. */
  readonly highestOffset: Cents | undefined;
  /** Where it stands, read or foretold; undefined where neither is possible. */
  readonly stands: (SectionOffset & { readonly from: 'read' | 'foretold' }) | undefined;
  readonly fallBack: FallBack;
  /** True while no raise of this section tells anything. */
  readonly isDefault: boolean;
  /** Undefined where it is not known where the section stands, or no limit is. */
  readonly next: NextOverpull | undefined;
  /** What the overpull adds to the load of the section at pitch. */
  readonly addedLoad: Newtons | undefined;
}

export interface PassPlan {
  /** Number of the pass it is for. */
  readonly pass: number;
  /** True while that pass is under way. */
  readonly isUnderWay: boolean;
  readonly referencePitch_hz: number;
  readonly sections: readonly SectionPlan[];
  readonly limits: SettlingLimits;
}

/** Where a job starts from. Common practice, no source; set with this table in mind, see `COMMON_SHOP_POLICY`. */
export const STARTING_OVERPULL_LIMIT = {
  highestBreakShare: COMMON_SHOP_POLICY.limits.highestBreakShare.value,
  source: COMMON_SHOP_POLICY.limits.highestBreakShare.source,
  strengthTable: A228_MINIMUM.name,
} as const;

/**
 * How far the strings of each section may be pulled: the notes as strung, chosen or found, at the pitch the piano is described
 * for. The slow part of a plan; it changes with the strings and the limit only, not with a pass.
 *
 * @param set  the limit of this job, as `foldSettling` has it
 */
export function settlingLimits(job: Job, set?: OverpullLimit): SettlingLimits {
  // A share means nothing without its table: of a table that is not known neither is taken.
  const own = PUBLISHED_STRENGTH_TABLES.some(({ name }) => name === set?.strengthTable) ? set : undefined;
  const { highestBreakShare, source, strengthTable } = own ?? STARTING_OVERPULL_LIMIT;
  const scale = strungScale(job);
  const analysed = scale.notes.map(({ note }) =>
    analyseNote(note, {
      uncertainties: 'left out',
      strengthTable: strengthTableNamed(strengthTable),
    }),
  );
  return {
    sections: job.sections.map(({ section, firstKey, lastKey }) => {
      const own = analysed.filter(({ key }) => firstKey <= key && key <= lastKey);
      const nearest = own.reduce<NoteAnalysis | undefined>(
        (most, note) => (most === undefined || note.breakShare > most.breakShare ? note : most),
        undefined,
      );
      const known = new Set(own.map(({ key }) => key));
      return {
        section,
        firstKey,
        lastKey,
        nearest:
          nearest === undefined
            ? undefined
            : {
                key: nearest.key,
                breakShare: nearest.breakShare,
                offset: overpullLimit({ breakShare: nearest.breakShare, highestShare: highestBreakShare }),
              },
        load: newtons(own.reduce((sum, { unisonTension }) => sum + unisonTension, 0)),
        computed: own.length,
        notComputed: Array.from({ length: lastKey - firstKey + 1 }, (_, index) => firstKey + index).filter(
          (key) => !known.has(key),
        ),
      };
    }),
    highestBreakShare,
    source,
    set: own,
    strengthTable,
    measured: scale.notes.filter(({ from }) => from === 'measured').length,
  };
}

/**
 * What the next pass should be, section by section, from this piano's own passes.
 *
 * A section stands where it was read in the pass that is under way; otherwise where it was left less the share of its last
 * raise that it is expected to lose, `fallBack`. It is to be left at `nextOverpull`, and never above `overpullLimit`; where no
 * string of it can be computed no overpull is told.
 *
 * A4 of the pass may be another than the piano is strung for: the limit is then counted from the pitch of the pass.
 */
export function passPlan(job: Job, { passes }: Settling, limits: SettlingLimits): PassPlan {
  const last = passes.at(-1);
  const isUnderWay = last !== undefined && !isFinished(last, job);
  const strungFor = job.piano?.referencePitch_hz ?? 440;
  const referencePitch_hz = last?.referencePitch_hz ?? strungFor;
  const higherBy = 1200 * Math.log2(referencePitch_hz / strungFor);
  return {
    pass: isUnderWay ? last.pass : (last?.pass ?? 0) + 1,
    isUnderWay,
    referencePitch_hz,
    limits,
    sections: limits.sections.map((limit) => {
      const known = fallBack(raisesOf(passes, limit.section));
      const stands = standsAt(passes, limit.section, known);
      const highestOffset = limit.nearest === undefined ? undefined : cents(limit.nearest.offset - higherBy);
      const next =
        stands === undefined || highestOffset === undefined
          ? undefined
          : nextOverpull({
              before: stands.offset,
              beforeUncertainty: stands.standardUncertainty,
              share: known.share,
              shareUncertainty: known.standardUncertainty,
              limit: highestOffset,
            });
      return {
        section: limit.section,
        limit,
        highestOffset,
        stands,
        fallBack: known,
        isDefault: known.shares.length === 0,
        next,
        addedLoad:
          next === undefined
            ? undefined
            : newtons(
                limit.load *
                  (tensionFactor(cents(next.overpull + higherBy)) - tensionFactor(cents(higherBy))),
              ),
      };
    }),
  };
}

/** The raises of a section that a later pass has read again. */
export function raisesOf(passes: readonly Pass[], section: string): Raise[] {
  return passes.flatMap((pass, index): Raise[] => {
    const next = passes[index + 1];
    if (next === undefined) return [];
    const before = offsetOf(sectionOf(pass, section)?.before);
    const after = offsetOf(sectionOf(pass, section)?.after);
    const later = offsetOf(sectionOf(next, section)?.before);
    if (before === undefined || after === undefined || later === undefined) return [];
    // Each pass counts from its own pitch.
    const higherBy = 1200 * Math.log2(next.referencePitch_hz / pass.referencePitch_hz);
    return [
      {
        before: before.offset,
        after: after.offset,
        later: cents(later.offset + higherBy),
        standardUncertainty: cents(
          Math.sqrt(
            (before.standardUncertainty ** 2 +
              after.standardUncertainty ** 2 +
              later.standardUncertainty ** 2) /
              3,
          ),
        ),
      },
    ];
  });
}

/**
 * The offset of a section from what was read in it: the mean of its notes, known to s/√n and no better than one reading of a
 * mean. A mean that was typed beside notes is left out. Undefined where nothing was read.
 */
export function offsetOf(values: readonly PassValue[] | undefined): SectionOffset | undefined {
  if (values === undefined || values.length === 0) return undefined;
  const notes = values.filter(({ key }) => key !== undefined);
  const atBest = PASS_READING_UNCERTAINTY['mean of the section'];
  if (notes.length === 0) return { offset: cents(values.at(-1)!.offset_cents), standardUncertainty: atBest };
  const count = notes.length;
  const mean = notes.reduce((sum, { offset_cents }) => sum + offset_cents, 0) / count;
  if (count === 1) return { offset: cents(mean), standardUncertainty: PASS_READING_UNCERTAINTY['one note'] };
  const variance = notes.reduce((sum, { offset_cents }) => sum + (offset_cents - mean) ** 2, 0) / (count - 1);
  return {
    offset: cents(mean),
    standardUncertainty: cents(Math.max(atBest, Math.sqrt(variance / count))),
  };
}

/** A pass is finished once every section that was to be pulled was left somewhere. */
export function isFinished(pass: Pass, { sections }: Pick<Job, 'sections'>): boolean {
  const named = pass.order.length > 0 ? pass.order : sections.map(({ section }) => section);
  return named.every((section) => (sectionOf(pass, section)?.after.length ?? 0) > 0);
}

const sectionOf = (pass: Pass, section: string): PassSection | undefined =>
  pass.sections.find((one) => one.section === section);

function standsAt(passes: readonly Pass[], section: string, known: FallBack): SectionPlan['stands'] {
  for (let index = passes.length - 1; index >= 0; index -= 1) {
    const own = sectionOf(passes[index]!, section);
    const before = offsetOf(own?.before);
    const after = offsetOf(own?.after);
    // Another pitch since then moves the section by as much.
    const higherBy = 1200 * Math.log2(passes.at(-1)!.referencePitch_hz / passes[index]!.referencePitch_hz);
    if (after === undefined && before === undefined) continue;
    if (after === undefined)
      return {
        offset: cents(before!.offset - higherBy),
        standardUncertainty: before!.standardUncertainty,
        from: 'read',
      };
    if (before === undefined) return undefined;
    const raise = Math.max(0, after.offset - before.offset);
    return {
      offset: cents(after.offset - known.share * raise - higherBy),
      standardUncertainty: cents(Math.hypot(after.standardUncertainty, raise * known.standardUncertainty)),
      from: 'foretold',
    };
  }
  return undefined;
}
