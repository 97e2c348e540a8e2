import { COMMON_PIN_SIZE_POLICY, inches, inMillimetres } from '@becket/core';
import { describe, expect, it } from 'vitest';
import { readJob } from '../context.ts';
import { type ReadingToRecord, recordReadings } from '../record-reading.ts';
import { slack, torqueJob, torqueReading } from '../testing/torque-job.ts';
import { compareTorque } from './compare-torque.ts';
import { pinChoice } from './pin-choice.ts';
import { choosePinRemedy, logPinsDriven, recordTestPin, setPinLimits, setPinPolicy } from './pin-commands.ts';

const diameter = (key: number, string: number, value: number): ReadingToRecord => ({
  quantity: 'pin-diameter',
  place: { key, string },
  value,
  unit: 'in',
});

/** Pins of 2/0 that hold in the tenor, and of 4/0 that hold less above it. */
async function mixedJob() {
  return torqueJob([
    ...[30, 34, 38, 42].flatMap((key, index) => [
      diameter(key, 1, 0.282),
      torqueReading(key, 1, 14 + index / 2, slack),
    ]),
    ...[54, 58, 62].flatMap((key, index) => [
      diameter(key, 2, 0.291),
      torqueReading(key, 2, 9 + index, slack),
    ]),
  ]);
}

describe('pinChoice()', () => {
  it('keeps mixed sizes apart, each with its own step', async () => {
    const { job } = await mixedJob();
    const choice = pinChoice(job);
    const group = (label: string) => choice.groups.find(({ asFound }) => asFound === label)!;
    expect(choice.isMixed).toBe(true);
    // All 14 N·m or more: one size up. 9 N·m is under 13.6 and over 4.5: two sizes up (common practice, no source).
    expect(group('2/0').advice).toMatchObject({ kind: 'size up', to: { label: '3/0' } });
    expect(group('4/0').advice).toMatchObject({ kind: 'size up', to: { label: '6/0' } });
    expect(group('4/0').adviceRestsOn).toContain('3 pins of this size');
    expect(choice.lawSentence).toContain('0 of 0 count');
    const count = choice.counts.bySize.reduce((sum, { pins }) => sum + pins, 0);
    expect(count).toBe(choice.map.field.pins.length);
  });

  it('predicts the grip of every measured pin once two test pins have been fitted, and not before', async () => {
    const { context, id, job } = await mixedJob();
    await recordTestPin(context, id, {
      key: 54,
      string: 2,
      pinDiameter_m: inches(0.296),
      torque: { value: 12, unit: 'N·m' },
    });
    expect(pinChoice(await readJob(context, id)).law).toBeUndefined();
    await recordTestPin(context, id, {
      key: 58,
      string: 2,
      pinDiameter_m: inches(0.301),
      torque: { value: 16, unit: 'N·m' },
    });
    const before = pinChoice(job);
    expect(
      before.groups.flatMap(({ candidates }) => candidates.flatMap(({ expected }) => expected ?? [])),
    ).toEqual([]);
    const choice = pinChoice(await readJob(context, id));
    // By hand: Δg 3 at 0.005 in and 6 at 0.010 in: 0.6 N·m per thousandth of an inch.
    expect(choice.law!.gripPerDiameter_n * 0.0000254).toBeCloseTo(0.6, 9);
    const advised = choice.groups
      .find(({ asFound }) => asFound === '4/0')!
      .candidates.find(({ isAdvised }) => isAdvised)!;
    const grips = advised.expected!.pins.filter(({ string }) => string === 2).map(({ grip }) => grip);
    expect(grips).toHaveLength(3);
    // 9, 10, 11 and six more.
    for (const [index, grip] of [15, 16, 17].entries()) expect(grips[index]).toBeCloseTo(grip, 9);
  });

  it('takes a diameter of a note for the pin of it that holds least', async () => {
    const { job } = await torqueJob([
      { quantity: 'pin-diameter', place: { key: 75 }, value: 0.296, unit: 'in' },
      torqueReading(75, 1, 12, slack),
      torqueReading(75, 3, 9, slack),
    ]);
    const pin = pinChoice(job).measured.find(({ key, string }) => key === 75 && string === undefined)!;
    expect(pin).toMatchObject({ size: '5/0', torque: { string: 3 } });
  });

  it('leaves out a test pin whose hole nobody read before, and says why', async () => {
    const { context, id } = await mixedJob();
    const job = await recordTestPin(context, id, {
      key: 70,
      string: 1,
      pinDiameter_m: inches(0.296),
      torque: { value: 100, unit: 'in·lbf' },
    });
    const [tried] = pinChoice(job).testPins;
    expect(tried!.leftOutBecause).toContain('no grip as found');
    expect(tried!.torque).toBeCloseTo(11.298, 3);
  });

  it('holds sizes against the largest pin and the plate hole, and says what is not known', async () => {
    const { context, id, job } = await mixedJob();
    expect(pinChoice(job).groups[0]!.candidates[0]!.unknown).toEqual(['the smallest plate hole']);
    expect(pinChoice(job).lengthsNeed).toContain('the depth of the pin hole');
    const limited = await setPinLimits(context, id, {
      largestDiameter_m: inches(0.291),
      plateHoleDiameter_m: inches(0.305),
      holeDepth_m: 0.036,
      plateThickness_m: 0.01,
    });
    // The height of a pin is still not read; 2⅜ in are 60.325 mm, of which 29 mm stay above the block.
    expect(pinChoice(limited).lengths).toBeUndefined();
    const { job: withHeight } = await recordReadings(context, id, [
      { quantity: 'pin-height', place: { key: 40, string: 1 }, value: 19, unit: 'mm' },
    ]);
    const lengths = pinChoice(withHeight).lengths!;
    expect(lengths.map(({ label, fits }) => [label, fits]).at(-1)).toEqual(['2½ in', false]);
    expect(lengths.at(-2)!.gapUnder * 1000).toBeCloseTo(36 - (60.325 - 29), 9);
    const candidates = pinChoice(limited).groups.find(({ asFound }) => asFound === '2/0')!.candidates;
    expect(candidates.map(({ label, against }) => [label, against.length])).toEqual([
      ['2½/0', 0],
      ['3/0', 1],
      ['4/0', 1],
      ['5/0', 2],
    ]);
    // 0.305 − 0.286 in are 0.48 mm, under the half millimetre asked for.
    expect(candidates[1]!.against[0]).toContain('0.48 mm');
  });

  it('names a pin that its size will not mend, and what would', async () => {
    const { context, id } = await mixedJob();
    await recordReadings(context, id, [diameter(66, 2, 0.291), torqueReading(66, 2, 5, slack)]);
    for (const [key, torque, size] of [
      [54, 12, 0.296],
      [58, 16, 0.301],
    ] as const)
      await recordTestPin(context, id, {
        key,
        string: 2,
        pinDiameter_m: inches(size),
        torque: { value: torque, unit: 'N·m' },
      });
    const choice = pinChoice(await readJob(context, id));
    const own = choice.suggested.find(({ key }) => key === 66)!;
    // At 6/0 5 + 6 = 11 N·m, at 7/0 14 N·m: over 13.6.
    expect(own).toMatchObject({ remedy: 'larger pin' });
    expect(inMillimetres(own.diameter!)).toBeCloseTo(7.7724, 4);
    expect(own.because).toContain('11.0 N·m');
  });

  it('counts what a person decided, and logs pins in the order of driving', async () => {
    const { context, id } = await mixedJob();
    await choosePinRemedy(context, id, {
      key: 40,
      string: 2,
      remedy: 'larger pin',
      pinDiameter_m: inches(0.311),
    });
    await choosePinRemedy(context, id, { key: 41, string: 1, remedy: 'plug' });
    await logPinsDriven(context, id, { firstKey: 80, lastKey: 88, pinDiameter_m: inches(0.286) });
    const job = await logPinsDriven(context, id, { firstKey: 40, lastKey: 40, pinDiameter_m: inches(0.286) });
    const { counts, driving } = pinChoice(job);
    expect(counts.bySize.find(({ label }) => label === '8/0')).toMatchObject({ pins: 1, byRemedy: 1 });
    expect(counts.plugs).toBe(1);
    expect(driving.lines.map(({ order, firstKey, pins }) => [order, firstKey, pins])).toEqual([
      [1, 80, 27],
      [2, 40, 3],
    ]);
    expect(driving.pinsDriven).toBe(30);
    expect(driving.left.map(({ firstKey, lastKey }) => [firstKey, lastKey])).toEqual([
      [1, 39],
      [41, 79],
    ]);
  });
});

describe('compareTorque()', () => {
  it('puts each pin as found beside the same pin as strung', async () => {
    const { context, id } = await mixedJob();
    const { job } = await recordReadings(context, id, [
      torqueReading(54, 2, 15, { ...slack, stage: 'as strung' }),
      torqueReading(70, 2, 16, { ...slack, stage: 'as strung' }),
    ]);
    const comparison = compareTorque(job);
    const pin = comparison.pins.find(({ key }) => key === 54)!;
    expect(pin.gained).toBe(6);
    expect(pin.gainedUncertainty).toBeGreaterThan(0);
    expect(comparison.pins.find(({ key }) => key === 70)!.state).toBe('only read as strung');
    expect(comparison.pins.find(({ key }) => key === 58)).toMatchObject({
      state: 'not read again',
      gained: undefined,
    });
    expect(comparison).toMatchObject({ readBothTimes: 1, lowAfter: 0 });
  });
});

describe('the commands of a pin choice', () => {
  it('refuse what does not fit this piano in one sentence, and keep nothing', async () => {
    const { context, id } = await mixedJob();
    const { entryCount } = await readJob(context, id);
    const policy = {
      source: 'our shop',
      sizes: COMMON_PIN_SIZE_POLICY.sizes.map((size) => ({ ...size })),
      firmTorque_n_m: 12,
      veryLooseTorque_n_m: 4,
      sizesUpWhenFirm: 1,
      sizesUpWhenLoose: 2,
    };
    const refusals: readonly (readonly [Promise<unknown>, string])[] = [
      [setPinPolicy(context, id, { ...policy, sizes: [...policy.sizes].reverse() }), 'from small to large'],
      [setPinPolicy(context, id, { ...policy, sizes: [...policy.sizes, policy.sizes[0]!] }), 'found twice'],
      [setPinPolicy(context, id, { ...policy, veryLooseTorque_n_m: 12 }), 'under the firm one'],
      [setPinLimits(context, id, {}), 'at least one figure'],
      [
        setPinLimits(context, id, { largestDiameter_m: 0.008, plateHoleDiameter_m: 0.0075 }),
        '7.50 mm and 8.00 mm were found',
      ],
      [
        recordTestPin(context, id, {
          key: 1,
          string: 3,
          pinDiameter_m: 0.0073,
          torque: { value: 12, unit: 'N·m' },
        }),
        'a string from 1 to 1 of A0',
      ],
      [
        recordTestPin(context, id, {
          key: 40,
          string: 3,
          pinDiameter_m: 0.0073,
          torque: { value: 0, unit: 'N·m' },
        }),
        'a torque above 0',
      ],
      [
        recordTestPin(context, id, {
          key: 40,
          string: 3,
          pinDiameter_m: 0.073,
          torque: { value: 12, unit: 'N·m' },
        }),
        'pinDiameter_m',
      ],
      [choosePinRemedy(context, id, { key: 40, string: 1, remedy: 'larger pin' }), 'its size is needed'],
      [
        choosePinRemedy(context, id, { key: 40, string: 1, remedy: 'as the rest', pinDiameter_m: 0.007 }),
        'no size of its own',
      ],
      [logPinsDriven(context, id, { firstKey: 50, lastKey: 40, pinDiameter_m: 0.0073 }), 'Change them over'],
    ];
    for (const [refused, words] of refusals) await expect(refused).rejects.toThrow(words);
    expect((await readJob(context, id)).entryCount).toBe(entryCount);
    await setPinPolicy(context, id, policy);
    const choice = pinChoice(await readJob(context, id));
    expect(choice.isOwnPolicy).toBe(true);
    expect(choice.map.lowBelow).toBe(12);
  });
});
