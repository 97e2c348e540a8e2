import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { millimetres, newtonMetres } from '../units/index.ts';
import { studentShareBelow, studentT } from './student-t.ts';
import { predictedGrip, type TestPinStep, testPinLaw } from './test-pin-law.ts';

const step = (larger_mm: number, gained: number): TestPinStep => ({
  larger: millimetres(larger_mm),
  gripGained: newtonMetres(gained),
});

describe('testPinLaw()', () => {
  // By hand: ΣΔd·Δg = 0.1·3 + 0.2·5 = 1.3, ΣΔd² = 0.05, k = 26 N·m/mm; residuals 0.4 and −0.2, s² = 0.2/1,
  // u(k) = √(0.2/0.05) = 2 N·m/mm; t(1) = 12.71 (JCGM 100:2008, G.2): 26 ± 25.4.
  it('gives the slope, scatter and interval worked by hand', () => {
    const law = testPinLaw([step(0.1, 3), step(0.2, 5)])!;
    expect(law.gripPerDiameter_n).toBeCloseTo(26000, 6);
    expect(law.scatter).toBeCloseTo(Math.sqrt(0.2), 12);
    expect(law.standardUncertainty_n).toBeCloseTo(2000, 6);
    expect(law.interval_n[1] - law.gripPerDiameter_n).toBeCloseTo(12.71 * 2000, -2);
    // ĝ = 8 + 2.6; s·√(1 + 0.01/0.05) = 0.4899; × 12.71 = 6.225.
    const predicted = predictedGrip(law, { grip: newtonMetres(8), larger: millimetres(0.1) });
    expect(predicted.grip).toBeCloseTo(10.6, 12);
    expect(predicted.interval.high - predicted.grip).toBeCloseTo(6.225, 2);
    expect(predicted.chanceBelow(newtonMetres(10.6))).toBeCloseTo(0.5, 12);
    expect(predicted.chanceBelow(predicted.interval.low)).toBeCloseTo(0.025, 6);
    expect(predicted.isBeyondTrials).toBe(false);
    expect(predictedGrip(law, { grip: newtonMetres(8), larger: millimetres(0.3) }).isBeyondTrials).toBe(true);
  });

  it('finds the law that made the steps, and scales with its units', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.02, max: 0.5, noNaN: true }), { minLength: 2, maxLength: 8 }),
        fc.double({ min: 1, max: 80, noNaN: true }),
        (larger, slope) => {
          const law = testPinLaw(larger.map((one) => step(one, slope * one)))!;
          expect(law.gripPerDiameter_n / 1000).toBeCloseTo(slope, 8);
          expect(law.scatter).toBeCloseTo(0, 8);
          const doubled = testPinLaw(larger.map((one) => step(one, 2 * slope * one + 0.1)))!;
          const single = testPinLaw(larger.map((one) => step(one, slope * one + 0.05)))!;
          expect(doubled.gripPerDiameter_n / single.gripPerDiameter_n).toBeCloseTo(2, 8);
        },
      ),
    );
  });

  it('has no law from one test pin, and takes no step back', () => {
    expect(testPinLaw([step(0.1, 3)])).toBeUndefined();
    expect(() => testPinLaw([step(0.1, 3), step(0, 2)])).toThrow(/step in diameter must be > 0/);
    expect(() => testPinLaw([step(0.1, 3), step(0.1, Number.NaN)])).toThrow(/must be finite/);
  });
});

describe('studentShareBelow()', () => {
  it('is the inverse of studentT', () => {
    for (const freedom of [1, 2, 3, 7, 40])
      expect(studentShareBelow(studentT(0.9, freedom), freedom)).toBeCloseTo(0.95, 10);
  });

  // One degree of freedom is the Cauchy distribution: ½ + arctan(t)/π.
  it('is the Cauchy distribution for one degree of freedom', () => {
    for (const t of [-3, -0.5, 0, 2])
      expect(studentShareBelow(t, 1)).toBeCloseTo(0.5 + Math.atan(t) / Math.PI, 12);
  });
});
