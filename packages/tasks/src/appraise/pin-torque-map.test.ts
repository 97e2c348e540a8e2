import { medianOf, metres, newtonMetres, newtons, pullOnPin } from '@becket/core';
import { describe, expect, it } from 'vitest';
import { addFacts } from '../context.ts';
import { openJob } from '../open-job.ts';
import { recordReadings } from '../record-reading.ts';
import { scaleAsFound } from '../scale-as-found.ts';
import { memoryContext } from '../testing/memory-context.ts';
import { slack, torqueJob, torqueReading, turned } from '../testing/torque-job.ts';
import { pinTorqueMap } from './pin-torque-map.ts';

describe('pinTorqueMap()', () => {
  it('takes the pull out of a single direction with the tension of the note, at the pitch it stood at', async () => {
    const { job } = await torqueJob([
      torqueReading(49, 2, 14),
      { quantity: 'pin-diameter', place: { key: 49, string: 2 }, value: 7.1, unit: 'mm' },
      { quantity: 'pitch-offset', place: { key: 49 }, value: -100, unit: 'cents' },
    ]);
    const [pin] = pinTorqueMap(job).pins;
    const note = scaleAsFound(job, { woundStrings: 'core formula' }).analysis.notes.find(
      ({ key }) => key === 49,
    )!;
    // 100 cents flat: the frequency is lower by 2^(1/12) and the tension by its square.
    const tension = newtons(note.tension / 2 ** (1 / 6));
    const { string } = note.note;
    const wire = string.kind === 'plain' ? string.diameter : string.coreDiameter;
    const read = job.readings.filter(
      ({ quantity, place }) => quantity === 'pin-diameter' && place.key === 49 && (place.string ?? 2) === 2,
    );
    const pinDiameter = metres(medianOf(read.map(({ value_si }) => value_si)));
    const pull = pullOnPin({ tension, pinDiameter, wireDiameter: wire });
    expect(pin!.pull!.pitchFrom).toBe('read on the note');
    expect(pin!.pull!.pinDiameterFrom).toBe('read on the pin');
    expect(pin!.pull!.pull).toBeCloseTo(pull, 12);
    expect(pin!.grip!.grip).toBeCloseTo(14 - pin!.pull!.pull, 12);
    expect(pin!.margin).toBeCloseTo(14 - 2 * pin!.pull!.pull, 12);
    expect(pin!.holdingRatio).toBeCloseTo(pin!.grip!.grip / pin!.pull!.pull, 12);
  });

  it('keeps directions and states of one pin apart, and readings of a note without a string to themselves', async () => {
    const { job } = await torqueJob([
      torqueReading(40, 1, 15),
      torqueReading(40, 1, 9, turned('flat')),
      torqueReading(40, 2, 12, slack),
      torqueReading(40, undefined, 10, slack),
      torqueReading(41, 1, 11, { condition: { strings: 'on' } }),
    ]);
    const map = pinTorqueMap(job);
    expect(map.pins.map(({ name, grip }) => [name, grip?.from, grip?.grip])).toEqual([
      ['C4, string not said', 'slack string', 10],
      ['C4 string 1', 'both directions', 12],
      ['C4 string 2', 'slack string', 12],
      ['C#4 string 1', undefined, undefined],
    ]);
    expect(map.pins[1]!.byKind).toEqual({ sharp: 15, flat: 9 });
    expect(map.pins[3]!.whyNoGrip).toContain('which way the pin was turned');
    const tenor = map.sections.find(({ section }) => section === 'tenor')!;
    expect(tenor).toMatchObject({ read: 4, withGrip: 3 });
    expect(tenor.byKind.map(({ kind, count }) => [kind, count])).toEqual([
      ['sharp', 1],
      ['flat', 1],
      ['slack', 2],
      ['not said', 1],
    ]);
    // The middle pin stands for a note read without its string.
    const place = map.field.pins[map.pins[0]!.pin!];
    expect(place).toMatchObject({ key: 40, string: 2 });
  });

  it('calls the pull unknown where the note has no tension, and asks for the other direction', async () => {
    const context = memoryContext();
    const { id } = await openJob(context, { title: 'a bare job' });
    const { job } = await recordReadings(context, id, [
      torqueReading(40, 1, 15),
      torqueReading(41, 1, 15),
      torqueReading(41, 1, 9, turned('flat')),
    ]);
    const map = pinTorqueMap(job);
    expect(map.pins[0]).toMatchObject({ grip: undefined, pull: undefined, margin: undefined });
    expect(map.pins[0]!.whyNoGrip).toContain('Read it the other way');
    expect(map.pins[1]!.grip!.grip).toBe(12);
    expect(map.pins[1]!.holdingRatio).toBeUndefined();
    expect(map.zone).toBeUndefined();
    expect(map.field.pins).toEqual([]);
  });

  it('asks about a torque that fits its neighbours only in the other unit, and refuses nothing', async () => {
    const { job } = await torqueJob([
      ...[40, 42, 44, 46, 48].map((key, index) => torqueReading(key, 1, 12 + index / 4)),
      torqueReading(45, 1, 12, { unit: 'in·lbf' }),
    ]);
    const map = pinTorqueMap(job);
    expect(map.pins).toHaveLength(6);
    expect(map.questions).toHaveLength(1);
    expect(map.questions[0]!.sentence).toContain('12 N·m?');
    expect(map.questions[0]!.suggestion).toBeCloseTo(12, 9);
  });

  it('bins every grip once, and counts low ones by the rule of the job', async () => {
    const values = [5.2, 8.9, 9.1, 13.5, 13.7, 15];
    const { job } = await torqueJob(
      values.map((value, index) => torqueReading(30 + 3 * index, 1, value, slack)),
    );
    const map = pinTorqueMap(job);
    expect(map.bins.flatMap(({ pins }) => pins)).toHaveLength(6);
    expect(map.bins[0]).toMatchObject({ from: 5, to: 6 });
    // 120 in·lbf are 13.56 N·m.
    expect(map.pins.filter(({ isLow }) => isLow)).toHaveLength(4);
    expect(pinTorqueMap(job, { lowBelow: newtonMetres(9) }).pins.filter(({ isLow }) => isLow)).toHaveLength(
      2,
    );
  });

  it('says where a zone can hide: nothing is hidden once every pin of a section is read', async () => {
    const { job: bare } = await torqueJob([]);
    const bass = pinTorqueMap(bare).field.pins.filter(({ section }) => section === 'bass');
    const { job } = await torqueJob(
      bass.map(({ key, string }, index) => torqueReading(key, string, 12 + (index % 5), slack)),
    );
    const map = pinTorqueMap(job, { zonePins: 1 });
    expect(map.sections[0]!.zone).toMatchObject({ chanceMissed: 0, next: undefined });
    expect(map.sections[1]!.zone!.chanceMissed).toBe(1);
    expect(map.zone!.chanceMissed).toBeCloseTo(1 - bass.length / map.field.pins.length, 12);
  });

  it('shows the air of the reading, or that of the day, and cautions about a dry or a damp day', async () => {
    const { job } = await torqueJob([
      { quantity: 'relative-humidity', place: {}, value: 28, unit: '%' },
      torqueReading(40, 1, 12, slack),
      torqueReading(41, 1, 12, { condition: { strings: 'off', relativeHumidity_percent: 66 } }),
    ]);
    const { pins, season } = pinTorqueMap(job);
    expect(pins.map(({ readings }) => readings[0]!.relativeHumidity?.from)).toEqual([
      'read the same day',
      'said with the reading',
    ]);
    expect(season).toMatchObject({ lowest_percent: 28, highest_percent: 66, withoutHumidity: 0 });
    expect(season.cautions).toHaveLength(3);
  });

  it('takes the wrench and the hand at what is stated of them, and says where nothing is', async () => {
    const { context, id } = await torqueJob([
      torqueReading(40, 1, 12, { ...slack, instrument: 'wrench' }),
      torqueReading(41, 1, 12, slack),
    ]);
    const { job } = await addFacts(context, id, [
      {
        kind: 'instrument-described',
        v: 1,
        instrument: 'wrench',
        unit: 'N·m',
        resolution: 0.1,
        stated: { value: 0.24, as: 'limit' },
      },
    ]);
    const [stated, assumed] = pinTorqueMap(job).pins;
    // A limit of 0.24 N·m is 2 % of 12 N·m, and its standard uncertainty 0.24/√3.
    expect(stated!.worth).toMatchObject({ wrenchFrom: 'stated of the wrench', handFrom: 'assumed' });
    expect(stated!.grip!.sharedUncertainty).toBeCloseTo(0.24 / Math.sqrt(3), 12);
    expect(assumed!.worth.wrenchFrom).toBe('assumed');
    expect(assumed!.grip!.sharedUncertainty).toBeCloseTo((0.06 * 12) / Math.sqrt(3), 12);
  });

  it('keeps what was found apart from what was strung', async () => {
    const { job } = await torqueJob([
      torqueReading(40, 1, 9, slack),
      torqueReading(40, 1, 15, { ...slack, stage: 'as strung' }),
    ]);
    expect(pinTorqueMap(job).pins[0]!.grip!.grip).toBe(9);
    expect(pinTorqueMap(job, { stage: 'as strung' }).pins[0]!.grip!.grip).toBe(15);
  });
});
