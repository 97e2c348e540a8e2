import { describeInstrument, openJob, readJob } from '@becket/tasks';
import { describe, expect, it } from 'vitest';
import { testContext } from '../../testing/test-job.ts';
import {
  instrumentForm,
  instrumentInHand,
  instrumentOf,
  instrumentsFor,
  instrumentWords,
  lengthUnitInHand,
  takeInHand,
} from './instruments-state.ts';

const empty = instrumentForm(undefined, 'mm');
const micrometer = { ...empty, name: ' micrometer 1 ', resolution: '0,001' };

describe('an instrument of the job', () => {
  it('has its name, what it shows, its step and what is stated of it', () => {
    expect(instrumentOf({ ...micrometer, stated: '0.003', statedAs: 'limit', usedFor: 'wire' })).toEqual({
      instrument: 'micrometer 1',
      unit: 'mm',
      resolution: 0.001,
      usedFor: 'wire',
      stated: { value: 0.003, as: 'limit' },
    });
  });

  it('is refused without a step, or with one in another unit than it shows', () => {
    expect(() => instrumentOf({ ...micrometer, resolution: '' })).toThrow(/smallest step is needed/);
    expect(() => instrumentOf({ ...micrometer, resolution: '0.0001 in' })).toThrow(/needed in mm/);
  });

  it('comes back into its form as it was kept', () => {
    const kept = { kind: 'instrument-described', v: 1, ...instrumentOf(micrometer) } as const;
    expect(instrumentOf(instrumentForm(kept, 'in'))).toEqual(instrumentOf(micrometer));
    expect(instrumentWords(kept)).toBe('shows mm, step 0.001, uncertainty not stated');
  });

  it('is offered for what it can measure, and held for all quantities of its sort', async () => {
    const context = testContext();
    const { id } = await openJob(context, { title: 'a grand' });
    await describeInstrument(context, id, instrumentOf(micrometer));
    await describeInstrument(
      context,
      id,
      instrumentOf({ ...micrometer, name: 'wrench', measures: 'torque', unit: 'N·m', resolution: '0.1' }),
    );
    const job = await readJob(context, id);
    const names = (quantity: 'wire-diameter' | 'pin-torque') =>
      instrumentsFor(job, quantity).map(({ instrument }) => instrument);
    expect(names('wire-diameter')).toEqual(['micrometer 1']);
    expect(names('pin-torque')).toEqual(['wrench']);
    const inHand = takeInHand({}, 'wire-diameter', 'micrometer 1');
    expect(instrumentInHand(job, inHand, 'core-diameter')?.instrument).toBe('micrometer 1');
    // A rule is for lengths: what is held for diameters is not taken for them.
    expect(instrumentInHand(job, inHand, 'speaking-length')).toBeUndefined();
  });

  it('rules the unit of what it measures, and the screen that of all else', async () => {
    const context = testContext();
    const { id } = await openJob(context, { title: 'a grand' });
    await describeInstrument(context, id, instrumentOf({ ...micrometer, unit: 'mil', resolution: '0.1' }));
    const job = await readJob(context, id);
    const inHand = takeInHand({}, 'wire-diameter', 'micrometer 1');
    const unitOf = (quantity: 'core-diameter' | 'speaking-length') =>
      lengthUnitInHand(job, inHand, quantity, 'mm');
    expect([unitOf('core-diameter'), unitOf('speaking-length')]).toEqual(['mil', 'mm']);
    expect(lengthUnitInHand(job, {}, 'core-diameter', 'in')).toBe('in');
  });

  it('keeps its name for one kind of measuring', async () => {
    const context = testContext();
    const { id } = await openJob(context, { title: 'a grand' });
    await describeInstrument(context, id, instrumentOf(micrometer));
    await expect(
      describeInstrument(context, id, instrumentOf({ ...micrometer, measures: 'torque', unit: 'N·m' })),
    ).rejects.toThrow(/described as showing mm/);
  });
});
