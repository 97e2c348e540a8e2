import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { A4_KEY, hertz } from '../units/index.ts';
import { equalTemperedFrequency } from './equal-temperament.ts';
import { octaveShares, usualOctaveRule } from './octave-rule.ts';
import { centsAboveHarmonic, matchedWidth } from './partials.ts';
import { type NoteInharmonicity, type StretchOptions, stretchedTuning } from './stretched-tuning.ts';
import { historicTemperaments } from './temperament.ts';

const a440: StretchOptions = { referencePitch: hertz(440) };
const keys = Array.from({ length: 88 }, (_, index) => index + 1);

/**
 * Typical inharmonicity over the compass.
 * Source: F. Rigaud, B. David, L. Daudet, DAFx-2011 (parameters as in the checks 'rigaud-B-…').
 */
const typical = (key: number, bass = -5.82, treble = -13.64) =>
  Math.exp(-0.0847 * (key + 20) + bass) + Math.exp(0.0926 * (key + 20) + treble);
const typicalPiano: NoteInharmonicity[] = keys.map((key) => ({ key, inharmonicity: typical(key) }));

/** The sum that the tuning makes least, written out plainly. */
function cost(notes: readonly NoteInharmonicity[], stretch: readonly number[], smoothness: number): number {
  let sum = 0;
  for (let k = 0; k + 12 < notes.length; k++) {
    let asked = 0;
    for (const { lowerPartial, share } of octaveShares(notes[k]!.key, usualOctaveRule)) {
      asked +=
        share *
        (matchedWidth({
          lowerInharmonicity: notes[k]!.inharmonicity,
          upperInharmonicity: notes[k + 12]!.inharmonicity,
          lowerPartial,
          upperPartial: lowerPartial / 2,
        }) -
          1200);
    }
    sum += (stretch[k + 12]! - stretch[k]! - asked) ** 2;
  }
  for (let k = 0; k + 3 < notes.length; k++) {
    sum += smoothness * (stretch[k + 3]! - 3 * stretch[k + 2]! + 3 * stretch[k + 1]! - stretch[k]!) ** 2;
  }
  return sum;
}

/** Small seeded generator of uniform numbers (mulberry32), and normal ones from it (Box and Muller). */
function normalNumbers(seed: number): () => number {
  let state = seed;
  const uniform = () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return (((t ^ (t >>> 14)) >>> 0) + 0.5) / 4294967296;
  };
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}

const standardDeviation = (values: readonly number[]) => {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1));
};

describe('stretchedTuning()', () => {
  it('is equal temperament to the last digit without inharmonicity', () => {
    const notes = keys.map((key) => ({ key, inharmonicity: 0 }));
    const { targets, octaves } = stretchedTuning(notes, { referencePitch: hertz(442) });
    for (const target of targets) {
      expect(target.frequency).toBe(equalTemperedFrequency(target.key, hertz(442)));
      expect(target.stretch).toBe(0);
    }
    for (const octave of octaves) expect(octave.given).toBe(1200);
  });

  it('keeps A4 at the reference pitch, and scales with it', () => {
    const at440 = stretchedTuning(typicalPiano, a440).targets;
    const at435 = stretchedTuning(typicalPiano, { referencePitch: hertz(435) }).targets;
    expect(at440[A4_KEY - 1]!.frequency).toBe(440);
    expect(at440[A4_KEY - 1]!.stretch).toBe(0);
    at440.forEach(({ frequency }, index) => {
      expect(at435[index]!.frequency / frequency).toBeCloseTo(435 / 440, 12);
    });
  });

  it('cannot be bettered: any other curve costs more', () => {
    const { targets } = stretchedTuning(typicalPiano, a440);
    const best = targets.map(({ stretch }) => stretch as number);
    const least = cost(typicalPiano, best, 10);
    const shift = fc.double({ min: -1, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.array(shift, { minLength: 88, maxLength: 88 }), (shifts) => {
        const other = best.map((value, index) => (index === A4_KEY - 1 ? 0 : value + 0.01 * shifts[index]!));
        expect(cost(typicalPiano, other, 10)).toBeGreaterThanOrEqual(least);
      }),
      { seed: 6 },
    );
  });

  it('rises from note to note without a bend for any even course of inharmonicity', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -6.3, max: -5, noNaN: true }),
        fc.double({ min: -14.1, max: -13.2, noNaN: true }),
        (bass, treble) => {
          const notes = keys.map((key) => ({ key, inharmonicity: typical(key, bass, treble) }));
          const { targets } = stretchedTuning(notes, a440);
          for (let k = 1; k < targets.length; k++) {
            expect(targets[k]!.frequency).toBeGreaterThan(targets[k - 1]!.frequency);
            expect(targets[k]!.stretch).toBeGreaterThan(targets[k - 1]!.stretch);
          }
          for (let k = 1; k + 1 < targets.length; k++) {
            const bend = targets[k + 1]!.stretch - 2 * targets[k]!.stretch + targets[k - 1]!.stretch;
            expect(Math.abs(bend)).toBeLessThan(0.5);
          }
        },
      ),
      { seed: 7, numRuns: 60 },
    );
  });

  it('rises in frequency from note to note however ragged the inharmonicity is', () => {
    const factor = fc.double({ min: 0.3, max: 3, noNaN: true });
    fc.assert(
      fc.property(fc.array(factor, { minLength: 88, maxLength: 88 }), (factors) => {
        const notes = typicalPiano.map(({ key, inharmonicity }, index) => ({
          key,
          inharmonicity: inharmonicity * factors[index]!,
        }));
        const { targets } = stretchedTuning(notes, a440);
        for (let k = 1; k < targets.length; k++) {
          expect(targets[k]!.frequency).toBeGreaterThan(targets[k - 1]!.frequency);
        }
      }),
      { seed: 8, numRuns: 60 },
    );
  });

  it('keeps octaves within a tenth of a cent of their rule on an even piano', () => {
    for (const { asked, given } of stretchedTuning(typicalPiano, a440).octaves) {
      expect(Math.abs(asked - given)).toBeLessThan(0.1);
    }
  });

  it('keeps octaves to their rule exactly as smoothness goes to nothing', () => {
    for (const { asked, given } of stretchedTuning(typicalPiano, { ...a440, smoothness: 1e-6 }).octaves) {
      expect(Math.abs(asked - given)).toBeLessThan(1e-4);
    }
  });

  it('shares out a jump of inharmonicity at the break', () => {
    const broken = typicalPiano.map((note) =>
      note.key <= 28 ? note : { ...note, inharmonicity: note.inharmonicity * (note.key <= 34 ? 3 : 1) },
    );
    const largestStep = (smoothness: number) => {
      const { targets } = stretchedTuning(broken, { ...a440, smoothness });
      return Math.max(
        ...targets.slice(1, 48).map(({ stretch }, k) => Math.abs(stretch - targets[k]!.stretch)),
      );
    };
    expect(largestStep(10)).toBeLessThan(largestStep(1e-4) / 2);
  });

  it('stretches a typical piano by tens of cents at the ends and hardly in the middle', () => {
    // Source: O. L. Railsback's measured curve, J. Acoust. Soc. Am. 9 (1938) 274, from memory: some tens of cents flat
    // at the bottom, about thirty sharp at the top, within a few cents from C3 to C5.
    const { targets } = stretchedTuning(typicalPiano, a440);
    expect(targets[0]!.stretch).toBeGreaterThan(-40);
    expect(targets[0]!.stretch).toBeLessThan(-10);
    expect(targets[87]!.stretch).toBeGreaterThan(20);
    expect(targets[87]!.stretch).toBeLessThan(45);
    for (const { stretch } of targets.slice(27, 52)) expect(Math.abs(stretch)).toBeLessThan(4);
  });

  it('adds a temperament on top, the same in every octave', () => {
    const temperament = historicTemperaments.find(({ name }) => name === 'Vallotti')!;
    const equal = stretchedTuning(typicalPiano, a440).targets;
    const unequal = stretchedTuning(typicalPiano, { ...a440, temperament }).targets;
    unequal.forEach(({ stretch, temperamentOffset, frequency }, index) => {
      expect(stretch).toBe(equal[index]!.stretch);
      const added = 1200 * Math.log2(frequency / equal[index]!.frequency);
      expect(added).toBeCloseTo(temperamentOffset, 9);
    });
    expect(unequal[A4_KEY - 1]!.frequency).toBe(440);
  });

  it('works for a short compass that holds A4', () => {
    const { targets } = stretchedTuning(typicalPiano.slice(30, 60), a440);
    expect(targets.map(({ key }) => key)).toEqual(keys.slice(30, 60));
  });

  it('speaks of first partials: ideal first modes lie below by half of 1200·log₂(1 + B)', () => {
    const B = 0.02;
    expect(centsAboveHarmonic(B, 1)).toBe(0);
    expect(600 * Math.log2(1 + B)).toBeCloseTo(17.14, 2);
  });

  it('refuses gaps, too few notes, a compass without A4 and impossible values', () => {
    const without = typicalPiano.filter(({ key }) => key !== 33);
    expect(() => stretchedTuning(without, a440)).toThrow(
      'Cannot compute a stretched tuning as the keys must follow one another: found key 34 after key 32; fill the gap first',
    );
    expect(() => stretchedTuning(typicalPiano.slice(0, 10), a440)).toThrow('at least 25 consecutive notes');
    expect(() => stretchedTuning(typicalPiano.slice(0, 40), a440)).toThrow(
      'A4 (key 49) must be among the notes',
    );
    const negative = typicalPiano.map((note) => (note.key === 1 ? { ...note, inharmonicity: -1e-4 } : note));
    expect(() => stretchedTuning(negative, a440)).toThrow(
      'inharmonicity of A0 must be ≥ 0: current value is -0.0001',
    );
    expect(() => stretchedTuning(typicalPiano, { ...a440, smoothness: 0 })).toThrow(RangeError);
    expect(() => stretchedTuning(typicalPiano, { ...a440, correlation: 2 })).toThrow(RangeError);
  });
});

describe('the uncertainty of a stretched tuning', () => {
  const relative = 0.08;
  const uncertain = typicalPiano.map((note) => ({
    ...note,
    standardUncertainty: relative * note.inharmonicity,
  }));
  const draws = 1500;

  it.each([
    ['independent errors', 0],
    ['one error common to all notes', 1],
  ] as const)('agrees with a Monte Carlo of %s', (_, correlation) => {
    const normal = normalNumbers(20);
    const stretches: number[][] = keys.map(() => []);
    for (let draw = 0; draw < draws; draw++) {
      const common = normal();
      const notes = typicalPiano.map(({ key, inharmonicity }) => ({
        key,
        inharmonicity: inharmonicity * Math.max(0, 1 + relative * (correlation === 1 ? common : normal())),
      }));
      stretchedTuning(notes, a440).targets.forEach(({ stretch }, index) => {
        stretches[index]!.push(stretch);
      });
    }
    const { targets } = stretchedTuning(uncertain, { ...a440, correlation });
    targets.forEach(({ key, standardUncertainty }, index) => {
      if (key === A4_KEY) {
        expect(standardUncertainty!.stretch).toBe(0);
        return;
      }
      // A standard deviation from 1500 draws has a relative standard error of 1.8 %; 9 % is five of them, and the
      // second-order part is below 1 % at u(B)/B = 8 %.
      const ratio = standardDeviation(stretches[index]!) / standardUncertainty!.stretch;
      expect(Math.abs(ratio - 1)).toBeLessThan(0.09);
    });
  });

  it('is left out unless every note has its own, and is zero when all are zero', () => {
    const one = typicalPiano.map((note) => (note.key === 5 ? { ...note, standardUncertainty: 1e-5 } : note));
    expect(stretchedTuning(one, a440).targets[0]!.standardUncertainty).toBeUndefined();
    const exact = typicalPiano.map((note) => ({ ...note, standardUncertainty: 0 }));
    for (const { standardUncertainty } of stretchedTuning(exact, a440).targets) {
      expect(standardUncertainty).toEqual({ stretch: 0, frequency: 0 });
    }
  });

  it('is the same in cents and in hertz', () => {
    for (const { frequency, standardUncertainty } of stretchedTuning(uncertain, a440).targets) {
      const inCents = (1200 / Math.LN2) * (standardUncertainty!.frequency / frequency);
      expect(inCents).toBeCloseTo(standardUncertainty!.stretch, 10);
    }
  });
});
