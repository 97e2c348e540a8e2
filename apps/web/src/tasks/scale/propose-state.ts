import { english, type Language, type ScaleNote } from '@becket/core';
import { type PlanRules, STARTING_PLAN_RULES, type WireLatticeName } from '@becket/tasks';
import { type Observable, observable } from '../../parts/observable.ts';
import { type PlanAnswer, planAway } from '../../worker/plan-away.ts';
import { type Draft, draftOf, hasHandwork } from './draft.ts';

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
