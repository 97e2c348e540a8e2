import { foldJob } from '@becket/journal';
import { openDemoJob, proposeScale, STARTING_PLAN_RULES, tidiedScale } from '@becket/tasks';
import { describe, expect, it } from 'vitest';
import { testContext } from '../../testing/test-job.ts';
import { draftFromFound, draftFromScale, draftOf, nudged, proposalOf } from './draft.ts';
import { answer } from './testing/planned-answer.ts';

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

  it('is kept with its rules, and with what was weighed against it only where it was weighed', () => {
    const draft = draftOf(answer('a', 0.001));
    const kept = proposalOf(draft, 'smoother', { ...STARTING_PLAN_RULES, highestBreakShare: 0.6 });
    expect(kept).toMatchObject({
      name: 'smoother',
      notes: draft.notes,
      strengthTable: STARTING_PLAN_RULES.strengthTable,
      saidAgainst: ['its age is not known'],
      mostBetter: 0,
    });
    expect(kept.limits).toMatchObject({ highestBreakShare: 0.6 });
    const byHand = proposalOf(draftFromFound(draft.notes), 'as it was', STARTING_PLAN_RULES);
    expect(Object.keys(byHand)).not.toContain('saidAgainst');
    expect(Object.keys(byHand)).not.toContain('mostBetter');
  });
});
