import type { ScaleNote } from '@becket/core';
import { asFoundRecord } from '@becket/journal';
import { openDemoJob, type PlanRules } from '@becket/tasks';
import { beforeAll, describe, expect, it } from 'vitest';
import { testContext } from '../../testing/test-job.ts';
import type { PlanAnswer, planAway } from '../../worker/plan-away.ts';
import { isShown } from './draft.ts';
import { proposeState } from './propose-state.ts';
import { answer, plain } from './testing/planned-answer.ts';

let notes: readonly ScaleNote[];
beforeAll(async () => {
  notes = asFoundRecord(await openDemoJob(testContext())).scaleNotes;
});

const on = { year: 1926, wires: 'metric' } as const;

/** A worker that says nothing until it is told to. */
function silentAway() {
  const asked: { rules: PlanRules; say: (answer: PlanAnswer) => void; isOver: boolean }[] = [];
  const away: typeof planAway = ({ rules }, say) => {
    const one = { rules, say, isOver: false };
    asked.push(one);
    return () => {
      one.isOver = true;
    };
  };
  return { asked, away };
}

describe('planning scales', () => {
  it('shows the middle answer for a start, and keeps what is pinned when it is asked again', () => {
    const { asked, away } = silentAway();
    const state = proposeState(away);
    state.start(notes, on);
    expect(state.planning.get()).toEqual({ is: 'beginning' });
    expect(asked[0]!.rules).toMatchObject({ year: 1926, wires: 'metric', pinned: [] });
    asked[0]!.say({ is: 'step', done: 1, of: 9 });
    expect(state.planning.get()).toEqual({ is: 'step', done: 1, of: 9 });
    const answers = [answer('kept', 0.001), answer('middle', 0.00095), answer('smooth', 0.0009)];
    asked[0]!.say({ is: 'planned', answers, eased: [] });
    expect(isShown(answers[1]!, state.draft.get())).toBe(true);
    state.pinned.set(new Set([50]));
    state.start(notes, on);
    expect(asked[1]!.rules.pinned).toEqual([plain(50, 0.00095)]);
  });

  it('does not throw away what was done by hand, unless it is pinned and so comes back', () => {
    const { asked, away } = silentAway();
    const state = proposeState(away);
    const byHand = { ...plain(50, 0.00097), from: 'by hand' } as const;
    state.draft.set({ from: 'as found', notes: [plain(49, 0.001), byHand] });
    const handmade = state.draft.get();
    state.start(notes, on);
    asked[0]!.say({ is: 'planned', answers: [answer('kept', 0.001)], eased: [] });
    expect(state.draft.get()).toBe(handmade);
    state.pinned.set(new Set([50]));
    state.start(notes, on);
    asked[1]!.say({ is: 'planned', answers: [answer('kept', 0.001)], eased: [] });
    expect(state.draft.get()?.from).toBe('kept');
  });

  it('stops what is under way, and the one before when it is started again', () => {
    const { asked, away } = silentAway();
    const state = proposeState(away);
    state.start(notes, on);
    state.stop();
    expect(asked[0]!.isOver).toBe(true);
    expect(state.planning.get()).toEqual({ is: 'stopped' });
    state.start(notes, on);
    state.start(notes, on);
    expect(asked.map(({ isOver }) => isOver)).toEqual([true, true, false]);
  });
});
