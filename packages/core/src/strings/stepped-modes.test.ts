import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import oracle from '../../../../oracles/stepped-modes/values.json' with { type: 'json' };
import { expectPublished, inputOf, publishedChecks } from '../tables/testing/published-checks.ts';
import { hertz, kilogramsPerMetre, metres, newtonSquareMetres, newtons } from '../units/index.ts';
import { flexibleStringModes } from './stepped-flexible.ts';
import { steppedCharacteristic } from './stepped-minors.ts';
import { steppedStringModes } from './stepped-modes.ts';
import type { SteppedString, StringEnds, StringSegment } from './stepped-string.ts';
import { flexibleTensionAtPitch, stiffTensionAtPitch } from './stepped-tension.ts';
import { hermiteModes } from './testing/hermite-elements.ts';
import { randomSteppedString, randomWoundString } from './testing/random-strings.ts';
import { steppedSegmentsOf } from './wound-modes.ts';
import { woundStringTension } from './wound-string.ts';

const segment = (length: number, density: number, rigidity: number): StringSegment => ({
  length: metres(length),
  linearDensity: kilogramsPerMetre(density),
  flexuralRigidity: newtonSquareMetres(rigidity),
});

/** Greatest relative difference between two lists of frequencies. */
const greatestDifference = (found: readonly number[], expected: readonly number[]): number => {
  expect(found.length).toBe(expected.length);
  return Math.max(...found.map((frequency, index) => Math.abs(frequency / expected[index]! - 1)));
};

describe('steppedStringModes()', () => {
  // Source: clamped-*: root of the transcendental equation (derived); pinned-*: closed form, quoted from C. Gracia and
  // T. Sanz-Perela, Reports@SCM 3 (2017). Also cut into parts, which must change nothing.
  it.each(publishedChecks(/^(clamped|pinned)-/))(
    'gives the published $id, in one piece or cut up',
    (check) => {
      const b = inputOf(check, check.inputs.B === undefined ? 'B_pinned' : 'B');
      const [tension, length, density] = [900, 1.3, 0.01];
      const rigidity = (b * tension * length ** 2) / Math.PI ** 2;
      const ends: StringEnds = check.id.startsWith('clamped') ? 'clamped' : 'pinned';
      const flexible = Math.sqrt(tension / density) / (2 * length);
      for (const parts of [[1], [0.3, 0.7], [1e-6, 0.2, 0.799999], Array(10).fill(0.1)]) {
        const segments = parts.map((part) => segment(part * length, density, rigidity));
        const modes = steppedStringModes({ segments, tension: newtons(tension), ends });
        expectPublished(check, modes.value[inputOf(check, 'n') - 1]! / flexible);
        expect(modes.converged).toBe(true);
      }
    },
  );

  // Source: the two-density string (derived), checks.json stepped-*.
  it.each(publishedChecks(/^stepped-/))('gives the published $id of a flexible string', (check) => {
    const mode = Number(check.id.split('-')[1]);
    const segments = [
      segment(inputOf(check, 'L1_over_L'), 1, 0),
      segment(inputOf(check, 'L2_over_L'), inputOf(check, 'mu2_over_mu1'), 0),
    ];
    const tension = newtons(900);
    const found = [
      flexibleStringModes({ segments, tension }, 4),
      steppedStringModes({ segments, tension, ends: 'pinned' }, 4),
      steppedStringModes({ segments, tension, ends: 'clamped' }, 4),
    ];
    for (const modes of found) {
      expectPublished(check, 2 * Math.PI * modes.value[mode - 1]! * Math.sqrt(1 / 900));
    }
  });

  // Source: string with a point mass (derived; S. Gómez et al., Eur. J. Phys. 28 (2007) 961), checks.json pointmass-*.
  it.each(publishedChecks(/^pointmass-/))(
    'comes to the published $id as a heavy stretch shrinks to a point',
    (check) => {
      const errors = [1e-2, 1e-3, 1e-4, 1e-8].map((width) => {
        const segments = [
          segment((1 - width) / 2, 0.01, 0),
          segment(width, (inputOf(check, 'M_over_muL') * 0.01) / width, 0),
          segment((1 - width) / 2, 0.01, 0),
        ];
        const modes = flexibleStringModes({ segments, tension: newtons(100) }, 2).value;
        return Math.abs(modes[0]! / 50 / check.expected - 1);
      });
      expect(errors[3]).toBeLessThan(1e-7);
      for (let index = 1; index < 3; index += 1) expect(errors[index]).toBeLessThan(errors[index - 1]! / 5);
    },
  );

  // Oracle: oracles/stepped-modes, a matching matrix in high-precision arithmetic. 1e-10: the oracle is printed to 1e-15;
  // a rotation by 16 half waves and the short stretch of 0.1 mm cost a few digits.
  it.each(oracle.values)('agrees with high-precision arithmetic: $name, $ends', (values) => {
    const string: SteppedString = {
      segments: values.segments.map(([length, density, rigidity]) => segment(length!, density!, rigidity!)),
      tension: newtons(values.tension_N),
      ends: values.ends as StringEnds,
    };
    const modes = steppedStringModes(string);
    expect(modes.converged).toBe(true);
    expect(greatestDifference(modes.value, values.frequencies_Hz)).toBeLessThan(1e-10);
  });

  it('agrees to 1e-6 with Hermite finite elements over random wound strings', () => {
    fc.assert(
      fc.property(randomWoundString, fc.constantFrom<StringEnds>('pinned', 'clamped'), (string, ends) => {
        const tension = woundStringTension(string, hertz(60 / string.speakingLength));
        const stepped = { segments: steppedSegmentsOf(string), tension, ends };
        expect(
          greatestDifference(steppedStringModes(stepped).value, hermiteModes(stepped, 16, 20)),
        ).toBeLessThan(1e-6);
      }),
      { numRuns: 8 },
    );
  });

  it('is what Hermite finite elements converge to, with the fourth power of their size', () => {
    const string: SteppedString = {
      segments: [
        segment(0.02, 0.00746, 0.0145),
        segment(1.268, 0.0384, 0.0145),
        segment(0.012, 0.00746, 0.0145),
      ],
      tension: newtons(900),
      ends: 'clamped',
    };
    const exact = steppedStringModes(string, 8).value;
    const [coarse, middle, fine] = [4, 8, 16].map((size) =>
      greatestDifference(hermiteModes(string, 8, size), exact),
    );
    expect(coarse! / middle!).toBeGreaterThan(10);
    expect(middle! / fine!).toBeGreaterThan(10);
    expect(fine!).toBeLessThan(1e-6);
  });

  it('scales: length and time, tension with stiffness, mass', () => {
    fc.assert(
      fc.property(randomSteppedString, fc.double({ min: 0.2, max: 5, noNaN: true }), (string, factor) => {
        const base = steppedStringModes(string).value;
        const stretched = steppedStringModes({
          ...string,
          segments: string.segments.map((part) =>
            segment(part.length * factor, part.linearDensity, part.flexuralRigidity * factor ** 2),
          ),
        }).value;
        const drawn = steppedStringModes({
          ...string,
          tension: newtons(string.tension * factor),
          segments: string.segments.map((part) =>
            segment(part.length, part.linearDensity, part.flexuralRigidity * factor),
          ),
        }).value;
        const heavier = steppedStringModes({
          ...string,
          segments: string.segments.map((part) =>
            segment(part.length, part.linearDensity * factor, part.flexuralRigidity),
          ),
        }).value;
        expect(
          greatestDifference(
            stretched,
            base.map((f) => f / factor),
          ),
        ).toBeLessThan(1e-10);
        expect(
          greatestDifference(
            drawn,
            base.map((f) => f * Math.sqrt(factor)),
          ),
        ).toBeLessThan(1e-10);
        expect(
          greatestDifference(
            heavier,
            base.map((f) => f / Math.sqrt(factor)),
          ),
        ).toBeLessThan(1e-10);
      }),
      { numRuns: 40 },
    );
  });

  it('is the same from either end', () => {
    fc.assert(
      fc.property(randomSteppedString, (string) => {
        const reversed = { ...string, segments: string.segments.toReversed() };
        expect(
          greatestDifference(steppedStringModes(reversed).value, steppedStringModes(string).value),
        ).toBeLessThan(1e-9);
      }),
      { numRuns: 60 },
    );
  });

  it('rises with tension, stiffness and clamping, falls with mass, and lies above the flexible string', () => {
    fc.assert(
      fc.property(randomSteppedString, (drawn) => {
        const string: SteppedString = { ...drawn, ends: 'pinned' };
        const base = steppedStringModes(string).value;
        const change = (by: (part: StringSegment) => StringSegment): number[] =>
          steppedStringModes({ ...string, segments: string.segments.map(by) }).value;
        const others = {
          flexible: flexibleStringModes(string).value,
          heavier: change((part) => segment(part.length, part.linearDensity * 1.01, part.flexuralRigidity)),
          stiffer: change((part) => segment(part.length, part.linearDensity, part.flexuralRigidity * 1.01)),
          tighter: steppedStringModes({ ...string, tension: newtons(string.tension * 1.01) }).value,
          clamped: steppedStringModes({ ...string, ends: 'clamped' }).value,
        };
        base.forEach((frequency, index) => {
          const rounding = frequency * 1e-10;
          expect(others.flexible[index]).toBeLessThan(frequency + rounding);
          expect(others.heavier[index]).toBeLessThan(frequency);
          expect(others.stiffer[index]).toBeGreaterThan(frequency - rounding);
          expect(others.tighter[index]).toBeGreaterThan(frequency);
          expect(others.clamped[index]).toBeGreaterThan(frequency - rounding);
        });
      }),
      { numRuns: 40 },
    );
  });

  it('lies between the bounds that the least and the greatest mass and stiffness set', () => {
    fc.assert(
      fc.property(randomSteppedString, (drawn) => {
        const string: SteppedString = { ...drawn, ends: 'pinned' };
        const length = string.segments.reduce((sum, part) => sum + part.length, 0);
        const densities = string.segments.map((part) => part.linearDensity);
        const rigidities = string.segments.map((part) => part.flexuralRigidity);
        const uniformMode = (n: number, density: number, rigidity: number): number =>
          (n / (2 * length)) *
          Math.sqrt((string.tension + (rigidity * (n * Math.PI) ** 2) / length ** 2) / density);
        steppedStringModes(string).value.forEach((frequency, index) => {
          const low = uniformMode(index + 1, Math.max(...densities), Math.min(...rigidities));
          const high = uniformMode(index + 1, Math.min(...densities), Math.max(...rigidities));
          expect(frequency).toBeGreaterThan(low * (1 - 1e-10));
          expect(frequency).toBeLessThan(high * (1 + 1e-10));
        });
        // Rayleigh: the quotient of a sine bounds the first mode from above.
        let from = 0;
        let potential = 0;
        let inertia = 0;
        for (const part of string.segments) {
          const to = from + part.length;
          const turn = (x: number): number => (length / (4 * Math.PI)) * Math.sin((2 * Math.PI * x) / length);
          const sines = part.length / 2 - (turn(to) - turn(from));
          const cosines = part.length / 2 + (turn(to) - turn(from));
          const k = Math.PI / length;
          potential += string.tension * k ** 2 * cosines + part.flexuralRigidity * k ** 4 * sines;
          inertia += part.linearDensity * sines;
          from = to;
        }
        expect(steppedStringModes(string, 1).value[0]).toBeLessThan(
          (Math.sqrt(potential / inertia) / (2 * Math.PI)) * (1 + 1e-12),
        );
      }),
      { numRuns: 60 },
    );
  });

  it('shares its energy between tension, bending and motion as the derivatives of the frequency say', () => {
    // ω² is of degree 1 in (T, EI) and of degree −1 in μ: T·∂ω²/∂T + Σ EI·∂ω²/∂EI = ω² = −Σ μ·∂ω²/∂μ. The terms are the shares of
    // potential energy in tension and bending, and of kinetic energy in each stretch (Hellmann–Feynman), so none is below zero.
    fc.assert(
      fc.property(randomSteppedString, fc.integer({ min: 1, max: 12 }), (string, mode) => {
        const squared = (changed: SteppedString): number =>
          steppedStringModes(changed, mode).value[mode - 1]! ** 2;
        const h = 1e-4;
        const share = (by: (scale: number) => SteppedString): number =>
          (squared(by(1 + h)) - squared(by(1 - h))) / (2 * h) / squared(string);
        const inTension = share((scale) => ({ ...string, tension: newtons(string.tension * scale) }));
        const inParts = string.segments.map((_, at) => ({
          bending: share((scale) => ({
            ...string,
            segments: string.segments.map((part, index) =>
              segment(part.length, part.linearDensity, part.flexuralRigidity * (index === at ? scale : 1)),
            ),
          })),
          motion: -share((scale) => ({
            ...string,
            segments: string.segments.map((part, index) =>
              segment(part.length, part.linearDensity * (index === at ? scale : 1), part.flexuralRigidity),
            ),
          })),
        }));
        for (const { bending, motion } of inParts) {
          expect(bending).toBeGreaterThan(-1e-6);
          expect(motion).toBeGreaterThan(-1e-6);
        }
        expect(inTension + inParts.reduce((sum, part) => sum + part.bending, 0)).toBeCloseTo(1, 5);
        expect(inParts.reduce((sum, part) => sum + part.motion, 0)).toBeCloseTo(1, 5);
      }),
      { numRuns: 12 },
    );
  });

  it('comes to the uniform string as bare ends vanish, down to lengths that are only rounding', () => {
    const whole = steppedStringModes({
      segments: [segment(1.3, 0.0384, 0.0145)],
      tension: newtons(900),
      ends: 'pinned',
    });
    let previous = 1;
    for (const bare of [1e-2, 1e-3, 1e-4, 1e-6, 1e-9, 1e-14, 1e-100, 5e-324]) {
      const modes = steppedStringModes({
        segments: [segment(bare, 0.00746, 0.0145), segment(1.3 - bare, 0.0384, 0.0145)],
        tension: newtons(900),
        ends: 'pinned',
      });
      expect(modes.value.every(Number.isFinite)).toBe(true);
      const difference = greatestDifference(modes.value, whole.value);
      expect(difference).toBeLessThan(Math.max(previous / 5, 1e-11));
      previous = difference;
    }
  });

  it('neither overflows nor loses digits from a needle to a rope', () => {
    for (const rigidity of [1e-15, 1e-9, 1e-4, 1, 1e4]) {
      for (const length of [0.001, 1, 1000]) {
        const parts = [0.2, 0.5, 0.3].map((part) => segment(part * length, 0.01, rigidity));
        const modes = steppedStringModes({ segments: parts, tension: newtons(500), ends: 'pinned' });
        const expected = modes.value.map((_, index) => {
          const k = ((index + 1) * Math.PI) / length;
          return (k / (2 * Math.PI)) * Math.sqrt((500 + rigidity * k ** 2) / 0.01);
        });
        expect(greatestDifference(modes.value, expected)).toBeLessThan(1e-9);
      }
    }
  });

  it('takes a flexible stretch beside a stiff one as the limit of a vanishing stiffness', () => {
    const withEnd = (rigidity: number): readonly number[] =>
      steppedStringModes({
        segments: [segment(0.4, 0.01, 0.02), segment(0.6, 0.02, rigidity)],
        tension: newtons(700),
        ends: 'pinned',
      }).value;
    expect(greatestDifference(withEnd(1e-9), withEnd(0))).toBeLessThan(1e-5);
    expect(greatestDifference(withEnd(1e-13), withEnd(0))).toBeLessThan(1e-7);
  });

  it.each([
    ['no segment', { segments: [] }, 'at least one segment is needed'],
    ['a negative tension', { tension: newtons(-5) }, 'tension must be > 0: current value is -5'],
    ['a length that is not a number', { segments: [segment(Number.NaN, 1, 1)] }, 'length of segment 1'],
    ['a negative stiffness', { segments: [segment(1, 1, -1)] }, 'flexural rigidity of segment 1 must be ≥ 0'],
  ])('refuses %s', (_, change, message) => {
    const string: SteppedString = {
      segments: [segment(1, 0.01, 0.01)],
      tension: newtons(500),
      ends: 'pinned',
    };
    expect(() => steppedStringModes({ ...string, ...change })).toThrow(message);
  });
});

describe('steppedCharacteristic()', () => {
  it('counts one more mode where its value changes sign, and never misses one', () => {
    fc.assert(
      fc.property(randomSteppedString, fc.double({ min: 0.01, max: 20, noNaN: true }), (string, place) => {
        const { valueAt, modesBelow } = steppedCharacteristic(string);
        const modes = steppedStringModes(string, 24).value;
        const frequency = modes[0]! * place;
        if (modes.some((mode) => Math.abs(mode / frequency - 1) < 1e-6)) return;
        const omega = 2 * Math.PI * frequency;
        const below = modes.filter((mode) => mode < frequency).length;
        if (below === 24) return;
        expect(modesBelow(omega)).toBe(below);
        expect(Math.sign(valueAt(omega))).toBe(below % 2 === 0 ? -1 : 1);
      }),
      { numRuns: 150 },
    );
  });
});

describe('tension at pitch', () => {
  it('puts the first mode on pitch, stiffness ignored or counted', () => {
    fc.assert(
      fc.property(randomSteppedString, (string) => {
        const { segments, ends } = string;
        const frequency = hertz(flexibleStringModes(string, 1).value[0]!);
        const flexible = flexibleTensionAtPitch(segments, frequency);
        expect(flexible.value / string.tension).toBeCloseTo(1, 11);
        const first = hertz(steppedStringModes(string, 1).value[0]!);
        const stiff = stiffTensionAtPitch({ segments, frequency: first, ends });
        expect(stiff.converged).toBe(true);
        expect(Math.abs(stiff.value / string.tension - 1)).toBeLessThan(1e-9);
      }),
      { numRuns: 60 },
    );
  });

  it('is found for a bar whose second mode also sinks below the pitch as it slackens', () => {
    const segments = [
      segment(0.00643, 0.196, 3.0e-4),
      segment(0.00355, 0.3162, 1e-4),
      segment(0.002, 0.0232, 0.3162),
    ];
    const tension = newtons(491);
    const first = steppedStringModes({ segments, tension, ends: 'clamped' }, 1).value[0]!;
    const found = stiffTensionAtPitch({ segments, frequency: first, ends: 'clamped' });
    expect(found.converged).toBe(true);
    expect(found.value / tension).toBeCloseTo(1, 9);
  });

  it('is the flexible tension when there is no stiffness', () => {
    const segments = [segment(0.3, 0.01, 0), segment(0.7, 0.03, 0)];
    expect(stiffTensionAtPitch({ segments, frequency: hertz(50), ends: 'pinned' }).value).toBe(
      flexibleTensionAtPitch(segments, hertz(50)).value,
    );
  });

  it('refuses a bar that sounds higher than asked with no tension at all', () => {
    expect(() =>
      stiffTensionAtPitch({ segments: [segment(0.1, 0.01, 1)], frequency: hertz(50), ends: 'pinned' }),
    ).toThrow('its stiffness alone already sounds higher');
  });
});
