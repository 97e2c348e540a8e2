import { describe, expect, it } from 'vitest';
import { newtonMetres } from '../units/index.ts';
import { COMMON_TORQUE_ACCURACY, gripEstimate } from './grip-estimate.ts';
import { meanInterval } from './mean-interval.ts';
import { sectionMean } from './section-mean.ts';
import { seededChance } from './seeded-chance.ts';

const gripsOf = (values: readonly number[], own = 0, shared = 0) =>
  values.map((value) => ({
    grip: newtonMetres(value),
    ownUncertainty: newtonMetres(own),
    sharedUncertainty: newtonMetres(shared),
  }));
const values = [9, 11, 12, 14, 10, 13.5];

describe('sectionMean()', () => {
  it('is the interval of its readings where few of many pins were read and readings are exact', () => {
    const { interval, mean } = sectionMean(gripsOf(values), { pins: 1e9, random: seededChance(3) });
    const plain = meanInterval(values, { random: seededChance(3) })!;
    expect(mean).toBeCloseTo(69.5 / 6, 12);
    expect(interval!.low).toBeCloseTo(plain.low, 6);
    expect(interval!.high).toBeCloseTo(plain.high, 6);
  });

  it('closes in on the mean as all pins are read, but for what the hand and the wrench leave', () => {
    const all = sectionMean(gripsOf(values), { pins: 6, random: seededChance(3) });
    expect(all.interval!.high - all.interval!.low).toBeCloseTo(0, 9);
    const wrench = sectionMean(gripsOf(values, 0, 0.5), { pins: 6, random: seededChance(3) });
    // 1.96 · 0.5 on either side.
    expect(wrench.interval!.high - wrench.mean).toBeCloseTo(0.98, 2);
    const hand = sectionMean(gripsOf(values, 0.5), { pins: 6, random: seededChance(3) });
    expect(hand.interval!.high).toBeGreaterThan(hand.mean);
  });

  it('has no interval from two pins or from pins all alike, and none at all from none', () => {
    expect(sectionMean(gripsOf([9, 11]), { pins: 20, random: seededChance(1) }).interval).toBeUndefined();
    expect(sectionMean(gripsOf([9, 9, 9]), { pins: 20, random: seededChance(1) })).toMatchObject({
      interval: undefined,
      lowest: 9,
      read: 3,
    });
    expect(() => sectionMean([], { pins: 20, random: seededChance(1) })).toThrow(RangeError);
    expect(() => sectionMean(gripsOf(values), { pins: 5, random: seededChance(1) })).toThrow(RangeError);
  });

  // Invented blocks, read sharp-going with a wrench and friction off by what is assumed of them. Two standard deviations of a
  // share of 0.95 in 300 are 0.025; the bench counts a thousand, over more ways of reading.
  it('holds the mean of all pins of a section in about 95 of 100 blocks, over the whole way from the reading', () => {
    const lot = seededChance(31);
    const normal = () => Math.sqrt(-2 * Math.log(1 - lot())) * Math.cos(2 * Math.PI * lot());
    const within = (limit: number) => limit * (2 * lot() - 1);
    const { wrenchLimit, handScatter, frictionLimit } = COMMON_TORQUE_ACCURACY;
    const pull = { pull: newtonMetres(3), standardUncertainty: newtonMetres(0.1) };
    const blocks = 300;
    let held = 0;
    for (let block = 0; block < blocks; block += 1) {
      const [wrench, friction] = [1 + within(wrenchLimit), within(frictionLimit)];
      const pins = Array.from({ length: 60 }, () => 14 + 2 * normal());
      const truth = pins.reduce((sum, one) => sum + one, 0) / pins.length;
      const grips = pins
        .filter((_, index) => index % 5 === block % 5)
        .map((grip) => {
          const torque =
            (grip + (3 + 0.1 * normal()) * (1 + friction)) * wrench * (1 + handScatter * normal());
          return gripEstimate([{ torque: newtonMetres(torque), turning: 'sharp' }], pull)!;
        });
      const interval = sectionMean(grips, { pins: 60, random: seededChance(block) }).interval!;
      if (interval.low <= truth && truth <= interval.high) held += 1;
    }
    expect(held / blocks).toBeGreaterThanOrEqual(0.925);
    expect(held / blocks).toBeLessThanOrEqual(0.985);
  });
});
