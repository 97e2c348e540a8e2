import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Hertz, hertz } from '../units/index.ts';
import { fitInharmonicityByLine, fitInharmonicityInCents } from './inharmonicity-fit.ts';

const partialsOf = (frequency: number, b: number, count = 16): Hertz[] =>
  Array.from({ length: count }, (_, index) =>
    hertz((index + 1) * frequency * Math.sqrt(1 + b * (index + 1) ** 2)),
  );

describe.each([
  ['fitInharmonicityByLine()', fitInharmonicityByLine],
  ['fitInharmonicityInCents()', fitInharmonicityInCents],
])('%s', (_, fit) => {
  it('recovers B and f from partials that follow the law, over any range', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 4000, noNaN: true }),
        fc.double({ min: -6, max: -1.5, noNaN: true }),
        fc.integer({ min: 3, max: 16 }),
        (frequency, logB, partials) => {
          const b = 10 ** logB;
          const found = fit(partialsOf(frequency, b), partials);
          expect(found.converged).toBe(true);
          expect(found.partials).toBe(partials);
          expect(Math.abs(found.inharmonicity - b)).toBeLessThan(1e-8 * b + 1e-13);
          expect(found.frequency / frequency).toBeCloseTo(1, 10);
          expect(found.misfitCents).toBeLessThan(1e-6);
        },
      ),
    );
  });

  it('does not change when all partials are transposed', () => {
    const odd = [100, 201, 303, 402, 507, 611].map(hertz);
    const transposed = odd.map((frequency) => hertz(frequency * 1.7));
    expect(fit(transposed).inharmonicity / fit(odd).inharmonicity).toBeCloseTo(1, 9);
  });

  it('finds a B below zero when partials are flat', () => {
    expect(fit(partialsOf(100, -1e-4, 8)).inharmonicity).toBeCloseTo(-1e-4, 9);
  });

  it.each([
    [[100, 200], 3, 'from 2 to the 2 given: current value is 3'],
    [[100, 200], 1, 'current value is 1'],
    [[100, 0, 300], 3, 'partial 2 must be > 0: current value is 0'],
    [[100, Number.NaN, 300], 3, 'partial 2 must be > 0'],
  ])('refuses %j over %d partials', (frequencies, partials, message) => {
    expect(() => fit(frequencies.map(hertz), partials)).toThrow(message);
  });
});

describe('fitInharmonicityInCents()', () => {
  it('is the least of a fine search over B', () => {
    const odd = [100, 201, 303, 402, 507, 611, 716, 824].map(hertz);
    const sum = (b: number): number => {
      const rest = odd.map(
        (f, at) => 1200 * Math.log2(f / (at + 1)) - 600 * Math.log2(1 + b * (at + 1) ** 2),
      );
      const level = rest.reduce((total, value) => total + value, 0) / rest.length;
      return rest.reduce((total, value) => total + (value - level) ** 2, 0);
    };
    const { inharmonicity: b, misfitCents } = fitInharmonicityInCents(odd);
    for (let trial = -0.001; trial < 0.01; trial += 1e-6)
      expect(sum(trial)).toBeGreaterThanOrEqual(sum(b) * (1 - 1e-12));
    expect(misfitCents).toBeCloseTo(Math.sqrt(sum(b) / 8), 9);
  });
});
