import type { ScaleAnalysis } from '@becket/core';
import type { ProposedNote } from '@becket/journal';
import { type NotesLeftOut, notesLeftOut, type PlanRules, tidiedScale } from '@becket/tasks';
import { useMemo } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { useLanguage } from '../../parts/language.tsx';
import { useObservable } from '../../parts/observable.ts';
import { analysedDraft, draftFromFound } from './draft.ts';
import { wiresToUse } from './plan-wires.ts';
import type { ProposeState } from './propose-state.ts';
import { useInferredSizes } from './use-inferred-sizes.ts';

/** What scales are made from: what was found, in whole sizes, gaps filled. */
export interface StartingScale {
  /** The rules that were asked for, with the wires that stand behind them. */
  readonly rules: PlanRules;
  /** Undefined until the sizes of the old wire are known; so are its figures. */
  readonly notes: readonly ProposedNote[] | undefined;
  readonly analysis: ScaleAnalysis | undefined;
  /** Notes that cannot be computed yet. */
  readonly leftOut: readonly NotesLeftOut[];
}

export function useStartingScale(state: ProposeState): StartingScale {
  const language = useLanguage();
  const { job } = useDesk();
  const asked = useObservable(state.rules);
  const askedWires = useObservable(state.askedWires);
  const sizes = useInferredSizes();
  const wires = wiresToUse(askedWires, sizes, asked);
  const rules = useMemo(() => ({ ...asked, wires }), [asked, wires]);
  const notes = useMemo(
    () => (sizes.is === 'there' ? tidiedScale(job, sizes.sizes, wires) : undefined),
    [job, sizes, wires],
  );
  const leftOut = useMemo(
    () =>
      notes === undefined
        ? []
        : notesLeftOut(
            job,
            notes.map(({ key }) => key),
            language,
          ),
    [job, notes, language],
  );
  const analysis = useMemo(
    () => notes && analysedDraft(job, draftFromFound(notes), asked.strengthTable, language).analysis,
    [job, notes, asked.strengthTable, language],
  );
  return { rules, notes, analysis, leftOut };
}
