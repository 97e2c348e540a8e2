import { cents, comparedSounds, rootMeanSquare } from '@becket/core';
import { asProposedNote, breaksOf, scaleNotesOf } from '@becket/journal';
import { describe, expect, it } from 'vitest';
import { openDemoJob } from '../demo/open-demo-job.ts';
import { memoryContext } from '../testing/memory-context.ts';
import { analysedScale } from './analysed-scale.ts';
import { heardPassage } from './hear-scale.ts';
import { proposeScale } from './scale-commands.ts';

const quick = { uncertainties: 'left out' } as const;

describe('hearing two scales of a job', () => {
  it('plays both at one level, below the headphone limit, and differently where their strings differ', async () => {
    const context = memoryContext();
    const opened = await openDemoJob(context);
    const notes = scaleNotesOf(opened, 'as found').notes.map(({ key, string }) =>
      string.kind === 'plain'
        ? { ...asProposedNote(key, string, 'by hand'), gauge_m: string.diameter * 1.06 }
        : asProposedNote(key, string, 'as found'),
    );
    const { job, entry } = await proposeScale(context, opened.id, { name: 'thick', notes });
    const toHear = { passage: 'unison', key: 45, unisonSpread: cents(0) } as const;
    const heard = (['as found', entry] as const).map((which) =>
      heardPassage(job, analysedScale(job, which, quick), toHear),
    );
    expect(heard.map(({ missing }) => missing)).toEqual([[], []]);
    const [before, after] = comparedSounds(
      heard.map((one) => one.notes),
      44_100,
    );
    expect(20 * Math.log10(rootMeanSquare(after!) / rootMeanSquare(before!))).toBeCloseTo(0, 2);
    const peak = Math.max(
      ...[before!, after!].map((one) => one.reduce((most, x) => Math.max(most, Math.abs(x)), 0)),
    );
    expect(20 * Math.log10(peak)).toBeLessThanOrEqual(-11.99);
    expect(after).not.toEqual(before);
  });

  it('plays thirds over every break, and names the notes that it must leave out', async () => {
    const job = await openDemoJob(memoryContext());
    const scale = analysedScale(job, 'as found', quick);
    const [above] = breaksOf(scale.analysis);
    const toHear = { passage: 'thirds across the break', key: above!, unisonSpread: cents(0) } as const;
    const whole = heardPassage(job, scale, toHear);
    expect(whole.notes.some(({ string }) => string.kind === 'wound')).toBe(true);
    expect(whole.notes.some(({ string }) => string.kind === 'plain')).toBe(true);
    const without = { analysis: { ...scale.analysis, notes: scale.analysis.notes.slice(40) } };
    expect(heardPassage(job, without, toHear).missing.length).toBeGreaterThan(0);
  });
});
