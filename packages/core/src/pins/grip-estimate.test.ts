import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { newtonMetres } from '../units/index.ts';
import type { TorqueReading } from './grip.ts';
import { COMMON_TORQUE_ACCURACY, gripEstimate, type TorqueAccuracy } from './grip-estimate.ts';

const read = (torque: number, turning: TorqueReading['turning']): TorqueReading => ({
  torque: newtonMetres(torque),
  turning,
});
const pulled = (pull: number, u = 0) => ({ pull: newtonMetres(pull), standardUncertainty: newtonMetres(u) });
const exact: TorqueAccuracy = { wrenchLimit: 0, handScatter: 0, frictionLimit: 0, source: 'exact' };

describe('gripEstimate()', () => {
  // By statics: τ↑ = g + M and τ↓ = g − M.
  it('finds the grip that made the readings, whichever way they were taken', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 4, max: 30, noNaN: true }),
        fc.double({ min: 0.5, max: 3.9, noNaN: true }),
        (grip, pull) => {
          const sharp = read(grip + pull, 'sharp');
          const flat = read(grip - pull, 'flat');
          for (const readings of [
            [sharp],
            [flat],
            [sharp, flat],
            [read(grip, 'slack')],
            [sharp, sharp, flat],
          ])
            expect(gripEstimate(readings, pulled(pull))!.grip).toBeCloseTo(grip, 9);
          expect(gripEstimate([sharp, flat], undefined)!.grip).toBeCloseTo(grip, 9);
          expect(gripEstimate([sharp, flat], undefined)!.pullFromReadings).toBeCloseTo(pull, 9);
        },
      ),
    );
  });

  it('has no grip from one direction while the pull is unknown, nor from no reading', () => {
    expect(gripEstimate([read(14, 'sharp')], undefined)).toBeUndefined();
    expect(gripEstimate([], pulled(3))).toBeUndefined();
    expect(gripEstimate([read(11, 'slack')], undefined)!.from).toBe('slack string');
  });

  // Worked by hand: hand 5 % of 14 is 0.7; √(0.7² + 0.3²) = 0.7616. Wrench 6 % of 14 is 0.84, friction 10 % of 3 is 0.3:
  // √(0.84² + 0.3²)/√3 = 0.5150. Together √(0.7616² + 0.5150²) = 0.9193.
  it('carries hand, wrench, friction and pull into a single sharp-going reading', () => {
    const estimate = gripEstimate([read(14, 'sharp')], pulled(3, 0.3))!;
    expect(estimate.grip).toBe(11);
    expect(estimate.ownUncertainty).toBeCloseTo(0.7616, 4);
    expect(estimate.sharedUncertainty).toBeCloseTo(0.515, 4);
    expect(estimate.standardUncertainty).toBeCloseTo(0.9193, 4);
  });

  it('drops the uncertainty of the pull with both directions, but not friction', () => {
    const both = [read(14, 'sharp'), read(8, 'flat')];
    const wide = gripEstimate(both, pulled(3, 2))!;
    expect(wide.standardUncertainty).toBeCloseTo(gripEstimate(both, pulled(3))!.standardUncertainty, 12);
    const frictionOnly = gripEstimate(both, pulled(3), { ...exact, frictionLimit: 0.1 })!;
    expect(frictionOnly.standardUncertainty).toBeCloseTo(0.3 / Math.sqrt(3), 12);
  });

  it('is exact when nothing is in doubt, and more readings of one kind narrow the hand only', () => {
    expect(gripEstimate([read(14, 'sharp')], pulled(3), exact)!.standardUncertainty).toBe(0);
    const one = gripEstimate([read(12, 'slack')], undefined)!;
    const four = gripEstimate(
      Array.from({ length: 4 }, () => read(12, 'slack')),
      undefined,
    )!;
    expect(four.ownUncertainty).toBeCloseTo(one.ownUncertainty / 2, 12);
    expect(four.sharedUncertainty).toBe(one.sharedUncertainty);
  });

  it('takes a pin that turns by itself for a grip of 0, and refuses a torque below', () => {
    expect(gripEstimate([read(0, 'slack')], undefined)!.grip).toBe(0);
    expect(() => gripEstimate([read(-1, 'slack')], undefined)).toThrow(/torque must be ≥ 0/);
    expect(COMMON_TORQUE_ACCURACY.source).toContain('no source');
  });
});
