import { proposedScaleNotes } from '@becket/journal';
import { useDesk } from '../../desk/use-desk.ts';
import { useLanguage } from '../../parts/language.tsx';
import { useObservable } from '../../parts/observable.ts';
import { draftFromFound } from './draft.ts';
import { DraftInHand } from './draft-in-hand.tsx';
import { LeaveItAlone } from './leave-it-alone.tsx';
import { countOf, LeftOut } from './left-out.tsx';
import { NoStringYet } from './no-string-yet.tsx';
import { RulesToPlanBy } from './plan-rules.tsx';
import { PlannedAnswers } from './planned-answers.tsx';
import { PlanningProgress } from './planning-progress.tsx';
import { Proposals } from './proposals-list.tsx';
import { proposeStateOf } from './propose-state.ts';
import { useStartingScale } from './use-starting-scale.ts';

/** Another scale than the one that was found: computed, changed by hand, and kept. */
export function ProposePlace() {
  const language = useLanguage();
  const { say } = language;
  const { desk, job, record } = useDesk();
  const state = proposeStateOf(desk.id);
  const planning = useObservable(state.planning);
  const draft = useObservable(state.draft);
  const { rules, notes, analysis, leftOut } = useStartingScale(state);

  if (job.piano === undefined || record.scaleNotes.length === 0)
    return <NoStringYet title={say('Propose')} />;
  const isBusy = planning.is === 'beginning' || planning.is === 'step';

  function compute(): void {
    if (notes === undefined) return;
    const { year } = job.piano ?? {};
    const tidied = proposedScaleNotes(job, { name: 'tidied', notes });
    state.start(tidied.notes, { year, wires: rules.wires }, language);
  }

  return (
    <>
      <h2>{say('Propose')}</h2>
      <LeaveItAlone />
      <LeftOut
        sentence={say(
          '{count} of {all} notes cannot be computed yet and {count, plural, one {is} other {are}} in no scale that is made here. Enter what they lack first: sizes that are chosen without them may not suit them.',
          { count: countOf(leftOut), all: record.notes.length },
        )}
        notes={leftOut}
      />
      <RulesToPlanBy state={state} rules={rules} begun={analysis} />
      <div className="button-row plan-actions">
        <button
          type="button"
          className="button strong"
          disabled={notes === undefined || isBusy}
          onClick={compute}
        >
          {say('Compute scales')}
        </button>
        {isBusy && (
          <button type="button" className="button" onClick={state.stop}>
            {say('Stop')}
          </button>
        )}
        <button
          type="button"
          className="button"
          disabled={notes === undefined}
          onClick={() => notes && state.draft.set(draftFromFound(notes))}
        >
          {say('Start by hand from as found')}
        </button>
      </div>
      <PlanningProgress planning={planning} isFindingSizes={notes === undefined} />
      {planning.is === 'planned' && (
        <PlannedAnswers planned={planning} draft={draft} onChoose={state.draft.set} />
      )}
      {draft !== undefined && <DraftInHand state={state} draft={draft} rules={rules} />}
      <Proposals />
    </>
  );
}
