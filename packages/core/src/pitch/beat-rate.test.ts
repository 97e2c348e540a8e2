import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expectPublished, inputOf, publishedChecks } from '../tables/testing/published-checks.ts';
import { hertz } from '../units/index.ts';
import { beatRate } from './beat-rate.ts';
import { equalTemperedFrequency } from './equal-temperament.ts';
import { matchedWidth } from './partials.ts';

const pairs: Record<string, readonly [number, number]> = {
  m3: [6, 5],
  M3: [5, 4],
  P4: [4, 3],
  P5: [3, 2],
  m6: [8, 5],
  M6: [5, 3],
};
const equal = (key: number) => ({ firstPartial: equalTemperedFrequency(key, hertz(440)), inharmonicity: 0 });

describe('beatRate()', () => {
  const published = publishedChecks(/^beat-/);

  it('has all fifty published intervals to be compared with', () => {
    expect(published).toHaveLength(50);
  });

  // Source: B. Capleton 2007, as Table 1 of J. Neurosci. 32(35):12251 (2012), doi 10.1523/JNEUROSCI.0082-12.2012;
  // equal temperament at A4 = 440 Hz, no inharmonicity, rates without their sign.
  it.each(published)('agrees with the published rate $id', (check) => {
    const [lowerPartial, upperPartial] = pairs[check.id.split('-')[1]!]!;
    const { rate } = beatRate({
      lower: equal(inputOf(check, 'lower_midi') - 20),
      upper: equal(inputOf(check, 'upper_midi') - 20),
      lowerPartial,
      upperPartial,
    });
    expectPublished(check, Math.abs(rate));
  });

  it('says wide for the thirds, fourths and major sixths of equal temperament where they are, narrow for the rest', () => {
    const width = (semitones: number, [p, q]: readonly [number, number]) =>
      beatRate({ lower: equal(37), upper: equal(37 + semitones), lowerPartial: p, upperPartial: q }).width;
    // Source: equal temperament against pure ratios, by definition: 400 > 386.3, 500 > 498.0, 900 > 884.4 cents;
    // 300 < 315.6, 700 < 702.0, 800 < 813.7.
    expect(width(4, [5, 4])).toBe('wide');
    expect(width(5, [4, 3])).toBe('wide');
    expect(width(9, [5, 3])).toBe('wide');
    expect(width(3, [6, 5])).toBe('narrow');
    expect(width(7, [3, 2])).toBe('narrow');
    expect(width(8, [8, 5])).toBe('narrow');
    expect(width(12, [2, 1])).toBe('still');
  });

  it('stands still at a matched width, and beats wide above it and narrow below it', () => {
    const B = fc.double({ min: 0, max: 0.02, noNaN: true });
    fc.assert(
      fc.property(B, B, fc.constantFrom([2, 1], [3, 2], [5, 4], [6, 3]), (lowerB, upperB, [p, q]) => {
        const width = matchedWidth({
          lowerInharmonicity: lowerB,
          upperInharmonicity: upperB,
          lowerPartial: p!,
          upperPartial: q!,
        });
        const at = (change: number) =>
          beatRate({
            lower: { firstPartial: hertz(200), inharmonicity: lowerB },
            upper: { firstPartial: hertz(200 * 2 ** ((width + change) / 1200)), inharmonicity: upperB },
            lowerPartial: p!,
            upperPartial: q!,
          });
        expect(at(0).rate).toBeCloseTo(0, 8);
        expect(at(1).width).toBe('wide');
        expect(at(-1).width).toBe('narrow');
      }),
      { seed: 9 },
    );
  });

  it('grows with inharmonicity of the lower note at the upper partials: a fifth of 3:2 is hurt less than 6:4', () => {
    const notes = (B: number) => ({
      lower: { firstPartial: hertz(220), inharmonicity: B },
      upper: { firstPartial: hertz(329.6), inharmonicity: B },
    });
    const change = (lowerPartial: number, upperPartial: number) =>
      beatRate({ ...notes(5e-4), lowerPartial, upperPartial }).rate -
      beatRate({ ...notes(0), lowerPartial, upperPartial }).rate;
    expect(change(3, 2)).toBeLessThan(0);
    expect(change(6, 4)).toBeLessThan(8 * change(3, 2) * 0.9);
  });

  it('carries uncertainty to first order, as numerical differences do', () => {
    const lower = {
      firstPartial: hertz(130.8),
      inharmonicity: 3e-4,
      firstPartialUncertainty: hertz(0.02),
      inharmonicityUncertainty: 2e-5,
    };
    const upper = {
      firstPartial: hertz(164.9),
      inharmonicity: 4e-4,
      firstPartialUncertainty: hertz(0.03),
      inharmonicityUncertainty: 3e-5,
    };
    const interval = { lower, upper, lowerPartial: 5, upperPartial: 4 };
    const rate = (changes: { lower?: object; upper?: object }) =>
      beatRate({ ...interval, lower: { ...lower, ...changes.lower }, upper: { ...upper, ...changes.upper } })
        .rate;
    const here = rate({});
    const parts = [
      rate({ lower: { firstPartial: 130.82 } }) - here,
      rate({ lower: { inharmonicity: 3.2e-4 } }) - here,
      rate({ upper: { firstPartial: 164.93 } }) - here,
      rate({ upper: { inharmonicity: 4.3e-4 } }) - here,
    ];
    expect(beatRate(interval).standardUncertainty).toBeCloseTo(Math.hypot(...parts), 4);
  });

  it('refuses what is not a note or a partial', () => {
    const note = { firstPartial: hertz(100), inharmonicity: 0 };
    expect(() => beatRate({ lower: note, upper: note, lowerPartial: 0, upperPartial: 1 })).toThrow(
      'Cannot compute a beat rate as the partial of the lower note must be a whole number from 1 up: current value is 0',
    );
    expect(() =>
      beatRate({
        lower: { ...note, firstPartial: hertz(-1) },
        upper: note,
        lowerPartial: 2,
        upperPartial: 1,
      }),
    ).toThrow(RangeError);
  });
});
