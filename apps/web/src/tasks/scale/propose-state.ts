import {
  analyseScale,
  english,
  type Language,
  noteName,
  type ScaleNote,
  scaleSensitivity,
  strengthTableNamed,
} from '@becket/core';
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
  type NudgedWire,
  nudgedNote,
  type PartLoadLimit,
  type PlannedScale,
  type PlanRules,
  STARTING_PLAN_RULES,
  type WireLatticeName,
} from '@becket/tasks';
import { forceUnits, inForceUnit, loadText } from '../../parts/force-text.ts';
import type { LengthUnit } from '../../parts/length-text.ts';
import { type Observable, observable } from '../../parts/observable.ts';
import { type PlanAnswer, planAway } from '../../worker/plan-away.ts';
import { signed } from './compare-state.ts';
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

export type Planning =
  | { readonly is: 'idle' }
  | { readonly is: 'beginning' }
  | { readonly is: 'stopped' }
  | PlanAnswer;

/** What is being made of one job's scale, kept while the program is open. */
export interface ProposeState {
  readonly rules: Observable<PlanRules>;
  readonly planning: Observable<Planning>;
  readonly draft: Observable<Draft | undefined>;
  readonly pinned: Observable<ReadonlySet<number>>;
  /** The way of numbering that the user asks for; undefined for the one that the old wire speaks for. */
  readonly askedWires: Observable<WireLatticeName | undefined>;
  /** Plans scales from what was found in whole sizes; what is said of them is said in this language. */
  start(notes: readonly ScaleNote[], on: Pick<PlanRules, 'year' | 'wires'>, language?: Language): void;
  stop(): void;
}

export function proposeState(away: typeof planAway = planAway): ProposeState {
  const rules = observable<PlanRules>(STARTING_PLAN_RULES);
  const askedWires = observable<WireLatticeName | undefined>(undefined);
  const planning = observable<Planning>({ is: 'idle' });
  const draft = observable<Draft | undefined>(undefined);
  const pinned = observable<ReadonlySet<number>>(new Set());
  let end: (() => void) | undefined;
  return {
    rules,
    askedWires,
    planning,
    draft,
    pinned,
    start(notes, on, language = english) {
      end?.();
      planning.set({ is: 'beginning' });
      const pins = draft.get()?.notes.filter(({ key }) => pinned.get().has(key)) ?? [];
      const answered = (answer: PlanAnswer) => {
        planning.set(answer);
        if (answer.is === 'planned' && !hasHandwork(draft.get(), pinned.get())) {
          // The middle of the way, for a start: neither the old scale nor the furthest from it.
          const middle = answer.answers[Math.floor((answer.answers.length - 1) / 2)];
          if (middle !== undefined) draft.set(draftOf(middle));
        }
      };
      end = away({ notes, rules: { ...rules.get(), ...on, pinned: pins } }, answered, language);
    },
    stop() {
      end?.();
      end = undefined;
      planning.set({ is: 'stopped' });
    },
  };
}

const states = new Map<string, ProposeState>();
export function proposeStateOf(job: string): ProposeState {
  const known = states.get(job) ?? proposeState();
  states.set(job, known);
  return known;
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

/** Whether a draft holds work by hand that a new answer would throw away: what is pinned comes back in every answer. */
const hasHandwork = (draft: Draft | undefined, pinned: ReadonlySet<number>): boolean =>
  draft?.notes.some(({ from, key }) => from === 'by hand' && !pinned.has(key)) ?? false;

/** Whether an answer is what the draft shows. */
export const isShown = (answer: PlannedScale, draft: Draft | undefined): boolean =>
  draft !== undefined && draft.notes === answer.notes;

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

/** What a slip of the rule or of the micrometer would do to one note, in words. */
export function sensitivityLines(
  note: ScaleNote,
  strengthTable: string,
  unit: LengthUnit = 'mm',
  { fixed, say }: Language = english,
): { change: string; tension: string; share: string; b: string }[] {
  const [sensitivity] = scaleSensitivity([note], {}, { strengthTable: strengthTableNamed(strengthTable) });
  if (sensitivity === undefined) return [];
  const { speakingLength, wireDiameter, windingDiameter } = sensitivity;
  const rows = [
    [say('speaking length ± 0.5 mm'), speakingLength],
    [note.string.kind === 'plain' ? say('wire ± 5 µm') : say('core ± 5 µm'), wireDiameter],
    [say('windings ± 5 µm'), windingDiameter],
  ] as const;
  return rows.flatMap(([change, ways]) => {
    if (ways === undefined) return [];
    const largest = (of: (one: NonNullable<typeof ways>['more']) => number) =>
      Math.max(Math.abs(of(ways.more)), Math.abs(of(ways.less)));
    return [
      {
        change,
        tension: `± ${fixed(
          inForceUnit(
            largest(({ tension }) => tension),
            unit,
          ),
          1,
        )} ${forceUnits[unit]}`,
        share: say('± {points} points', { points: fixed(largest(({ breakShare }) => breakShare) * 100, 1) }),
        b: `± ${fixed(largest(({ inharmonicityShare }) => inharmonicityShare) * 100, 1)} %`,
      },
    ];
  });
}

/** What one answer comes to, in one line. */
export function answerWords(
  answer: PlannedScale,
  unit: LengthUnit = 'mm',
  language: Language = english,
): string {
  const { fixed, say } = language;
  const {
    changedNotes,
    tensionUnevenness,
    inharmonicityUnevenness,
    plainSizeChanges,
    tiedStrings,
    loadChange_n,
  } = answer;
  return say(
    '{notes, plural, one {# note} other {# notes}} changed, {load}, tension uneven by {tension} %, B by {b} %, {changes, plural, one {# change} other {# changes}} of plain size, {tied} tied',
    {
      notes: changedNotes,
      load: /[1-9]/.test(loadText(loadChange_n, unit, language))
        ? say('load {change}', {
            change: signed(loadChange_n, (force) => loadText(force, unit, language), language),
          })
        : say('load unchanged'),
      tension: fixed(tensionUnevenness * 100, 1),
      b: fixed(inharmonicityUnevenness * 100, 1),
      changes: plainSizeChanges,
      tied: tiedStrings,
    },
  );
}

/** One sentence on how good the answers are known to be, for all of them together. */
export const proofWords = (answers: readonly PlannedScale[], { say }: Language = english): string =>
  answers.every(({ isProved }) => isProved)
    ? say(
        'Proved: of all the strings that were offered, no other choice within these limits does better by what counts here.',
      )
    : say(
        'Proved where nothing else is said: of all the strings that were offered, no other choice within these limits does better by what counts here.',
      );

/** The highest load of one bridge or section set anew, or taken away. */
export function withPartLoad(
  limits: readonly PartLoadLimit[],
  part: Pick<PartLoadLimit, 'of' | 'name'>,
  highest_n: number | undefined,
): readonly PartLoadLimit[] {
  const others = limits.filter(({ of, name }) => of !== part.of || name !== part.name);
  return highest_n === undefined ? others : [...others, { ...part, highest_n }];
}

/** No bridge, or no section, above the load that was found; up to ten newtons, so that a rounded figure can be shown. */
export const noMoreThanFound = (
  limits: readonly PartLoadLimit[],
  of: PartLoadLimit['of'],
  found: readonly { readonly name: string; readonly load: number }[],
): readonly PartLoadLimit[] =>
  found.reduce(
    (sofar, { name, load }) => withPartLoad(sofar, { of, name }, Math.ceil(load / 10) * 10),
    limits,
  );

/** A ratio typed as a number from 1; undefined while it is none. */
export function typedRatio(text: string): number | undefined {
  const value = Number(text.trim().replace(',', '.'));
  return text.trim() !== '' && Number.isFinite(value) && value >= 1 ? value : undefined;
}

/** A load typed in kilonewtons; 'none' where nothing is typed, undefined while it is not a load. */
export function typedLoad(text: string): number | 'none' | undefined {
  if (text.trim() === '') return 'none';
  const value = Number(text.trim().replace(',', '.').replace(/kN$/i, ''));
  return Number.isFinite(value) && value > 0 ? value * 1000 : undefined;
}

/** A limit typed as a percentage; undefined while it is not one. */
export function typedPercent(text: string): number | undefined {
  const value = Number(text.trim().replace(',', '.').replace('%', ''));
  return text.trim() !== '' && Number.isFinite(value) && value > 0 && value < 100 ? value / 100 : undefined;
}

export const pinnedWords = (pinned: ReadonlySet<number>, { say }: Language = english): string =>
  pinned.size === 0
    ? say('No note is pinned.')
    : say('Pinned: {notes}. Compute again to fit the others to them.', {
        notes: [...pinned]
          .sort((a, b) => a - b)
          .map(noteName)
          .join(', '),
      });
