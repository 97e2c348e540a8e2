import { analyseScale, english, type Language, strengthTableNamed } from '@becket/core';
import {
  asProposedNote,
  type Job,
  type ProposedNote,
  proposedScaleNotes,
  scaleNotesOf,
  type WhichScale,
} from '@becket/journal';
import {
  type AnalysedScale,
  keptRules,
  type NudgedWire,
  nudgedNote,
  type PlannedScale,
  type PlanRules,
  type ScaleToPropose,
  type WireLatticeName,
} from '@becket/tasks';
import { scaleName } from './scale-words.ts';

/** A scale that is being made and is not kept yet. */
export interface Draft {
  /** What it started from. */
  readonly from: string;
  readonly notes: readonly ProposedNote[];
  /** What speaks against it; undefined where it was not weighed, or was changed by hand since. */
  readonly saidAgainst?: readonly string[];
  /** How far it is proved to be the best, as in `PlannedScale`; undefined as above. */
  readonly mostBetter?: number;
}

export const draftOf = ({ name, notes, reasonsAgainst, mostBetter }: PlannedScale): Draft => ({
  from: name,
  notes,
  saidAgainst: reasonsAgainst,
  mostBetter,
});

/** A copy of a scale of this job to go on from, with one plain note on another size where it is given. */
export function draftFromScale(
  job: Job,
  which: WhichScale,
  change?: { readonly key: number; readonly diameter: number },
  language: Language = english,
): Draft {
  const { name, notes } = scaleNotesOf(job, which, language);
  const proposal = job.proposals.find(({ entry }) => entry === which);
  const copied = proposal?.notes ?? notes.map(({ key, string }) => asProposedNote(key, string, 'as found'));
  return {
    from: name,
    notes: copied.map((note) =>
      change?.key === note.key && note.winding === 'plain'
        ? { ...note, gauge_m: change.diameter, from: 'by hand' }
        : note,
    ),
  };
}

/** A draft to change by hand, from what was found in whole sizes. */
export const draftFromFound = (notes: readonly ProposedNote[]): Draft => ({
  from: 'as found, in whole sizes',
  notes,
});

/** Whether an answer is what the draft shows. */
export const isShown = (answer: PlannedScale, draft: Draft | undefined): boolean =>
  draft !== undefined && draft.notes === answer.notes;

/** Whether a draft holds work by hand that a new answer would throw away: what is pinned comes back in every answer. */
export const hasHandwork = (draft: Draft | undefined, pinned: ReadonlySet<number>): boolean =>
  draft?.notes.some(({ from, key }) => from === 'by hand' && !pinned.has(key)) ?? false;

/** The draft with one wire of one note a size up or down. */
export function nudged(
  draft: Draft,
  key: number,
  wire: NudgedWire,
  by: 1 | -1,
  wires: WireLatticeName,
): Draft {
  const note = draft.notes.find((one) => one.key === key);
  const next = note === undefined ? undefined : nudgedNote(note, { wire, by, wires });
  if (next === undefined) return draft;
  return { from: draft.from, notes: draft.notes.map((one) => (one.key === key ? next : one)) };
}

/** The draft as a scale with its figures; break shares by the table that it is planned with. */
export function analysedDraft(
  job: Job,
  { notes, from }: Draft,
  strengthTable: string,
  language: Language = english,
): AnalysedScale {
  const scale = proposedScaleNotes(job, { name: 'draft', notes });
  const options = { uncertainties: 'left out', strengthTable: strengthTableNamed(strengthTable) } as const;
  return {
    ...scale,
    name: language.say('draft from “{from}”', { from: scaleName(from, language) }),
    analysis: analyseScale(scale.notes, options),
  };
}

/** A draft as it is kept under a name, with the rules that it was planned by. */
export function proposalOf(draft: Draft, name: string, rules: PlanRules): ScaleToPropose {
  return {
    name,
    notes: [...draft.notes],
    ...keptRules(rules),
    strengthTable: rules.strengthTable,
    ...(draft.saidAgainst === undefined ? {} : { saidAgainst: [...draft.saidAgainst] }),
    ...(draft.mostBetter === undefined ? {} : { mostBetter: draft.mostBetter }),
  };
}
