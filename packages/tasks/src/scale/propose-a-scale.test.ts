import { inKilonewtons, stringTension } from '@becket/core';
import { asProposedNote, chosenScaleOf, type Job, scaleDigest, scaleNotesOf } from '@becket/journal';
import { describe, expect, it } from 'vitest';
import type { TaskContext } from '../context.ts';
import { openDemoJob } from '../demo/open-demo-job.ts';
import { recordReadings, withdrawEntry } from '../record-reading.ts';
import { scaleAsFound } from '../scale-as-found.ts';
import { memoryContext } from '../testing/memory-context.ts';
import { analysedScale, comparedScales } from './analysed-scale.ts';
import { chooseScale, proposeScale, staleSentence } from './scale-commands.ts';

const quick = { uncertainties: 'left out' } as const;

/** The scale as found with one plain note two hundredths of a millimetre thicker. */
async function oneThicker(context: TaskContext, job: Job, key = 50) {
  const notes = scaleNotesOf(job, 'as found').notes.map(({ key: its, string }) => {
    if (its !== key || string.kind !== 'plain') return asProposedNote(its, string, 'as found');
    return { ...asProposedNote(its, string, 'by hand'), gauge_m: string.diameter + 2e-5 };
  });
  return proposeScale(context, job.id, { name: 'one thicker', notes });
}

describe('a proposed scale', () => {
  it('as found gives the figures of the scale as found, to the last digit', async () => {
    const job = await openDemoJob(memoryContext());
    const { analysis } = analysedScale(job, 'as found');
    expect(analysis).toEqual(scaleAsFound(job).analysis);
  });

  it('changes the note it changes, by the law of the string, and no other', async () => {
    const context = memoryContext();
    const job = await openDemoJob(context);
    const { job: proposed, entry } = await oneThicker(context, job);
    const [before, after] = [
      analysedScale(proposed, 'as found', quick),
      analysedScale(proposed, entry, quick),
    ];
    const { changed, loads } = comparedScales(proposed, before, after);
    expect(changed.map(({ key }) => key)).toEqual([50]);
    const { string, frequency, strings } = after.notes.find(({ key }) => key === 50)!;
    if (string.kind !== 'plain') throw new Error('note 50 of the demo is plain');
    // T = π·ρ·(d·L·f)², the handbook's law (see core/strings), at the new diameter.
    const { diameter, speakingLength } = string;
    const expected = stringTension({ diameter, speakingLength, frequency });
    expect(changed[0]!.after!.tension).toBeCloseTo(expected, 9);
    const all = loads.find(({ of }) => of === 'all')!;
    expect(inKilonewtons(all.after!.load) - inKilonewtons(all.before!.load)).toBeCloseTo(
      (strings * (expected - changed[0]!.before!.tension)) / 1000,
      9,
    );
  });

  it('keeps the uncertainty of the lengths, and takes new wire to be as uncertain as new wire is', async () => {
    const context = memoryContext();
    const { job, entry } = await oneThicker(context, await openDemoJob(context));
    const [found, its] = (['as found', entry] as const).map((which) =>
      scaleNotesOf(job, which).notes.find(({ key }) => key === 50),
    );
    expect(its!.standardUncertainties?.speakingLength).toBe(found!.standardUncertainties?.speakingLength);
    expect(its!.standardUncertainties?.wireDiameter).toBeUndefined();
    expect(scaleNotesOf(job, entry).notes.find(({ key }) => key === 51)).toEqual(
      scaleNotesOf(job, 'as found').notes.find(({ key }) => key === 51),
    );
  });

  it('presses on the bridge with T · sin θ where the angle was read, as found and as proposed', async () => {
    const context = memoryContext();
    const { id } = await openDemoJob(context);
    const { job: read } = await recordReadings(context, id, [
      { quantity: 'bearing-angle', place: { key: 50 }, value: 1.2, unit: 'deg', span_m: 0.1, loaded: true },
    ]);
    const { job, entry } = await oneThicker(context, read);
    const [before, after] = [analysedScale(job, 'as found', quick), analysedScale(job, entry, quick)];
    for (const { analysis } of [before, after]) {
      const { bearing, unisonTension } = analysis.notes.find(({ key }) => key === 50)!;
      expect(bearing!.force).toBeCloseTo(unisonTension * Math.sin((1.2 * Math.PI) / 180), 9);
    }
    const bridge = comparedScales(job, before, after).loads.find(
      (load) => load.after?.bearing !== undefined,
    )!;
    expect(bridge.after!.bearing!.force).toBeGreaterThan(bridge.before!.bearing!.force);
  });

  it('presses on the bridge by a rise over its span too, and by what was read on the new strings', async () => {
    const context = memoryContext();
    const { id, ...opened } = await openDemoJob(context);
    const { speakingLength } = scaleNotesOf({ id, ...opened }, 'as found').notes.find(
      ({ key }) => key === 53,
    )!.string;
    const rise = (key: number, value: number, more: object = {}) =>
      ({
        quantity: 'bearing-rise',
        place: { key },
        value,
        unit: 'mm',
        span_m: 0.12,
        loaded: true,
        ...more,
      }) as const;
    const { job } = await recordReadings(context, id, [
      rise(50, 0.5),
      rise(52, 0.9, { loaded: false }),
      rise(53, 0.8, { span_m: speakingLength + 0.06 }),
      { quantity: 'back-length', place: { key: 53 }, value: 60, unit: 'mm' },
      {
        quantity: 'bearing-angle',
        place: { key: 50 },
        value: 1.5,
        unit: 'deg',
        span_m: 0.1,
        loaded: true,
        stage: 'as strung',
      },
    ]);
    const bearingOf = (key: number, which: 'as found' | 'as strung' = 'as found') => {
      const { bearing, unisonTension } = analysedScale(job, which).analysis.notes.find(
        (note) => note.key === key,
      )!;
      return { bearing, perTension: bearing === undefined ? undefined : bearing.force / unisonTension };
    };
    // The triangles by hand. A gauge laid over the bridge: two straight parts of 60 mm each.
    expect(bearingOf(50).perTension).toBeCloseTo(Math.sin(2 * Math.atan(0.5 / 60)), 9);
    expect(bearingOf(50).bearing!.standardUncertainty).toBeGreaterThan(0);
    // An unloaded board says nothing of the bearing under load.
    expect(bearingOf(52).bearing).toBeUndefined();
    // A span from the front termination to the support behind: the string's own two parts.
    const bend = Math.atan(0.0008 / speakingLength) + Math.atan(0.8 / 60);
    expect(bearingOf(53).perTension).toBeCloseTo(Math.sin(bend), 9);
    // What was read on the new strings stands for them, however it was read before.
    expect(bearingOf(50, 'as strung').perTension).toBeCloseTo(Math.sin((1.5 * Math.PI) / 180), 9);
  });

  it('is chosen with a reason, and says so when a reading changes afterwards', async () => {
    const context = memoryContext();
    const { job, entry } = await oneThicker(context, await openDemoJob(context));
    const { job: chosen } = await chooseScale(context, job.id, { scale: entry, reason: ' evener tenor ' });
    expect(chosenScaleOf(chosen)).toMatchObject({
      name: 'one thicker',
      reason: 'evener tenor',
      digest: scaleDigest(chosen, scaleNotesOf(chosen, entry)),
      changedSince: undefined,
    });
    const { job: again } = await recordReadings(context, job.id, [
      { quantity: 'speaking-length', place: { key: 50 }, value: 399.5, unit: 'mm' },
    ]);
    expect(chosenScaleOf(again)?.changedSince).toMatch(/“one thicker” has changed since it was chosen/);
    expect(staleSentence(again, again.proposals[0]!)).toMatch(/Readings have changed/);
    expect(staleSentence(chosen, chosen.proposals[0]!)).toBeUndefined();
  });

  it('that is withdrawn after it was chosen is said to be gone', async () => {
    const context = memoryContext();
    const { job, entry } = await oneThicker(context, await openDemoJob(context));
    await chooseScale(context, job.id, { scale: entry, reason: 'evener' });
    const without = await withdrawEntry(context, job.id, entry, 'a slip');
    expect(chosenScaleOf(without)?.changedSince).toMatch(/has been withdrawn: choose again/);
    expect(() => scaleNotesOf(without, entry)).toThrow(/may have been withdrawn/);
  });

  it('is refused with one sentence, and nothing is stored', async () => {
    const context = memoryContext();
    const { job } = await oneThicker(context, await openDemoJob(context));
    const entriesBefore = job.entryCount;
    const plain = { winding: 'plain', key: 50, gauge_m: 0.001, from: 'by hand' } as const;
    const propose = (name: string, notes: Parameters<typeof proposeScale>[2]['notes']) =>
      proposeScale(context, job.id, { name, notes });
    await expect(propose('one thicker', [plain])).rejects.toThrow(
      /a name that no other scale of this job has/,
    );
    await expect(propose('  ', [plain])).rejects.toThrow(/a name is needed/);
    const allBare = { wire_m: 0.001, bareFront_m: 1, bareBack_m: 1 };
    await expect(
      propose('all bare', [{ winding: 'wound', key: 5, core_m: 0.0012, layers: [allBare], from: 'by hand' }]),
    ).rejects.toThrow(/bare ends take all of it/);
    await expect(chooseScale(context, job.id, { scale: 'as found', reason: ' ' })).rejects.toThrow(/reason/);
    const { job: after } = await chooseScale(context, job.id, { scale: 'as found', reason: 'it is good' });
    expect(after.entryCount).toBe(entriesBefore + 1);
  });
});

describe('what was strung', () => {
  it('stands in place of what was found where it was measured', async () => {
    const context = memoryContext();
    const { id } = await openDemoJob(context);
    const { job } = await recordReadings(context, id, [
      { quantity: 'wire-diameter', place: { key: 60 }, value: 0.9, unit: 'mm', stage: 'as strung' },
    ]);
    const strung = scaleNotesOf(job, 'as strung').notes.find(({ key }) => key === 60)!;
    expect(strung.string.kind === 'plain' && strung.string.diameter).toBeCloseTo(0.0009, 12);
    const same = (which: 'as found' | 'as strung') =>
      scaleNotesOf(job, which).notes.find(({ key }) => key === 61);
    expect(same('as strung')).toEqual(same('as found'));
  });
});
