import type { ScaleNote } from '@becket/core';
import { asFoundRecord, foldJob, type Job } from '@becket/journal';
import { openDemoJob, type PlanRules, proposeScale, tidiedScale } from '@becket/tasks';
import { beforeAll, describe, expect, it } from 'vitest';
import { testContext } from '../../testing/test-job.ts';
import type { PlanAnswer, planAway } from '../../worker/plan-away.ts';
import {
  answerWords,
  draftFromScale,
  draftOf,
  isShown,
  noMoreThanFound,
  nudged,
  pinnedWords,
  proofWords,
  proposeState,
  sensitivityLines,
  typedLoad,
  typedPercent,
  typedRatio,
  withPartLoad,
} from './propose-state.ts';

let job: Job;
let notes: readonly ScaleNote[];
beforeAll(async () => {
  job = await openDemoJob(testContext());
  notes = asFoundRecord(job).scaleNotes;
});

const plain = (key: number, gauge_m: number) =>
  ({ winding: 'plain', key, gauge_m, from: 'computed' }) as const;
const answer = (name: string, gauge_m: number) => ({
  name,
  notes: [plain(49, gauge_m), plain(50, gauge_m)],
  changedNotes: 1,
  plainSizeChanges: 2,
  tiedStrings: 3,
  tensionUnevenness: 0.0123,
  inharmonicityUnevenness: 0.02,
  isProved: true,
  mostBetter: 0,
  loadChange_n: 0,
  reasonsAgainst: ['its age is not known'],
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

describe('a draft', () => {
  it('changes one wire of one note, and stays as it is where there is no such wire', () => {
    const draft = draftOf(answer('a', 0.001));
    const next = nudged(draft, 49, 'plain', 1, 'metric');
    expect(next.notes[0]).toMatchObject({ key: 49, from: 'by hand' });
    expect(next.notes[1]).toBe(draft.notes[1]);
    // What was said of the answer is not said of what a hand made of it.
    expect(draft.saidAgainst).toEqual(['its age is not known']);
    expect(next.saidAgainst).toBeUndefined();
    expect([draft.mostBetter, next.mostBetter]).toEqual([0, undefined]);
    expect(nudged(draft, 49, 'core', 1, 'metric')).toBe(draft);
    expect(nudged(draft, 12, 'plain', 1, 'metric')).toBe(draft);
  });

  it('copies a kept proposal, and takes a moved size change in', async () => {
    const context = testContext();
    const opened = await openDemoJob(context);
    const { job: kept, entry } = await proposeScale(context, opened.id, {
      name: 'in sizes',
      notes: tidiedScale(opened, undefined),
    });
    const copy = draftFromScale(kept, entry, { key: 50, diameter: 0.000889 });
    expect(copy.from).toBe('in sizes');
    expect(copy.notes.find(({ key }) => key === 50)).toMatchObject({ gauge_m: 0.000889, from: 'by hand' });
    const same = draftFromScale(kept, entry).notes;
    expect(same.map(({ key }) => key)).toEqual(copy.notes.map(({ key }) => key));
    expect(foldJob((await context.store.entries(kept.id)).entries).proposals).toHaveLength(1);
  });
});

describe('words', () => {
  it('tell of slips what the law of the string says: T goes with L² and d²', () => {
    const note = notes.find(({ string }) => string.kind === 'plain')!;
    const [length, wire, ...more] = sensitivityLines(note, 'ASTM A228 minimum');
    expect(more).toEqual([]);
    expect(length!.change).toMatch(/speaking length/);
    // 0.5 mm of about a metre is 0.05 %, so T moves by about 0.1 % and the share with it.
    const tension = Number(/[\d.]+/.exec(length!.tension)![0]);
    expect(tension).toBeGreaterThan(0.2);
    expect(tension).toBeLessThan(3);
    expect(Number(/[\d.]+/.exec(wire!.tension)![0])).toBeGreaterThan(tension);
    expect(length!.tension).toMatch(/ N$/);
    expect(sensitivityLines(note, 'ASTM A228 minimum', 'in')[0]!.tension).toMatch(/ lbf$/);
  });

  it('say what an answer comes to', () => {
    expect(answerWords(answer('a', 0.001))).toBe(
      '1 note changed, load unchanged, tension uneven by 1.2 %, B by 2.0 %, 2 changes of plain size, 3 tied',
    );
    expect(answerWords({ ...answer('a', 0.001), loadChange_n: 1234 })).toContain('changed, load +1.2 kN, ');
    expect(answerWords({ ...answer('a', 0.001), loadChange_n: -1234 }, 'in')).toContain(
      'changed, load −280 lbf, ',
    );
    expect(pinnedWords(new Set([50, 49]))).toMatch(/^Pinned: A4, A#4\./);
  });

  it.each([
    ['165', 165_000],
    ['160,5 kN', 160_500],
    ['', 'none'],
    ['0', undefined],
    ['heavy', undefined],
  ])('reads a load typed as %j', (text, load) => {
    expect(typedLoad(text)).toBe(load);
  });

  it.each([
    ['65', 0.65],
    ['62,5 %', 0.625],
    ['0', undefined],
    ['100', undefined],
    ['', undefined],
    ['much', undefined],
  ])('reads a percentage typed as %j', (text, share) => {
    expect(typedPercent(text)).toBe(share);
  });
});

describe('loads of single bridges and sections', () => {
  const bass = { of: 'bridge', name: 'bass' } as const;

  it('are set, set anew and taken away one by one', () => {
    const once = withPartLoad([], bass, 36_000);
    const both = withPartLoad(once, { of: 'section', name: 'bass' }, 30_000);
    expect(withPartLoad(both, bass, 35_000)).toEqual([
      { of: 'section', name: 'bass', highest_n: 30_000 },
      { ...bass, highest_n: 35_000 },
    ]);
    expect(withPartLoad(both, bass, undefined)).toEqual([{ of: 'section', name: 'bass', highest_n: 30_000 }]);
  });

  it('are no more than was found for every bridge at once, rounded up so that what was found keeps them', () => {
    const found = [
      { name: 'bass', load: 35_871.2 },
      { name: 'long', load: 131_860 },
    ];
    expect(noMoreThanFound(withPartLoad([], bass, 1), 'bridge', found)).toEqual([
      { ...bass, highest_n: 35_880 },
      { of: 'bridge', name: 'long', highest_n: 131_860 },
    ]);
  });
});

describe('what is typed and said about limits', () => {
  it('reads a ratio from 1, with either decimal mark', () => {
    expect(typedRatio('4,5')).toBe(4.5);
    expect(typedRatio('1')).toBe(1);
    for (const none of ['', '0.9', 'thick']) expect(typedRatio(none)).toBeUndefined();
  });

  it('says that all is proved only where all is', () => {
    const proved = answer('one', 0.001);
    expect(proofWords([proved])).toMatch(/^Proved: /);
    expect(proofWords([proved, { ...proved, isProved: false, mostBetter: 0.01 }])).toMatch(
      /^Proved where nothing else is said/,
    );
  });
});
