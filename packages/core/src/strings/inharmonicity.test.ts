import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expectPublished, inputOf, publishedChecks } from '../tables/testing/published-checks.ts';
import { cents, gigapascals, hertz, metres, millimetres, newtons, pascals } from '../units/index.ts';
import {
  inharmonicity,
  inharmonicityCents,
  inharmonicityFromCents,
  partialFrequency,
  stringTension,
} from './index.ts';

describe('published inharmonicities', () => {
  it.each(publishedChecks(/^chab-.*-B$/))('$id ($source)', (check) => {
    const coefficient = inharmonicity({
      diameter: millimetres(inputOf(check, 'core_diameter_mm')),
      speakingLength: metres(inputOf(check, 'length_m')),
      tension: newtons(inputOf(check, 'tension_N')),
      youngsModulus: gigapascals(inputOf(check, 'young_GPa')),
    });
    expectPublished(check, coefficient);
  });

  it('ca94-c4-B (Chaigne and Askenfelt, JASA 95, 1994): B = π²·EI/(T·L²)', () => {
    const [check] = publishedChecks(/^ca94-c4-B$/);
    // Any string with E·I/(T·L²) = ε will do: choose d = 1 mm, T = 670 N, L = 0.62 m and the E that follows.
    const [diameter, tension, length] = [0.001, 670, 0.62];
    const secondMoment = (Math.PI * diameter ** 4) / 64;
    const youngsModulus = (inputOf(check!, 'epsilon') * tension * length ** 2) / secondMoment;
    const coefficient = inharmonicity({
      diameter: metres(diameter),
      speakingLength: metres(length),
      tension: newtons(tension),
      youngsModulus: pascals(youngsModulus),
    });
    expectPublished(check!, coefficient);
  });

  it('young-const (R. W. Young, JASA 24(3), May 1952, abstract): cents = K·n²·d²/(f²·L⁴)', () => {
    const [check] = publishedChecks(/^young-const$/);
    // E/ρ in cm²/s² → m²/s²; the cents of partial n for small B·n², with T from the law of tension.
    const density = 7850;
    const youngsModulus = pascals(inputOf(check!, 'E_over_rho_cm2_s2') * 1e-4 * density);
    const [diameter, speakingLength, frequency] = [millimetres(1), metres(0.6), hertz(262)];
    const tension = stringTension({ diameter, speakingLength, frequency });
    const coefficient = inharmonicity({ diameter, speakingLength, tension, youngsModulus });
    const centsPerSquare = (600 / Math.LN2) * coefficient;
    const inCentimetres = 100;
    const constant =
      (centsPerSquare * frequency ** 2 * (speakingLength * inCentimetres) ** 4) /
      (diameter * inCentimetres) ** 2;
    expectPublished(check!, constant);
  });

  it('young-B-from-cents (definition)', () => {
    const [check] = publishedChecks(/^young-B-from-cents$/);
    expectPublished(check!, inharmonicityFromCents(cents(inputOf(check!, 'delta_cents'))));
  });

  it('young-c4-mode2 (R. W. Young, JASA 24(3), 1952, abstract): about 1.2 cents at middle C of a real piano', () => {
    const [check] = publishedChecks(/^young-c4-mode2$/);
    const partial = inputOf(check!, 'mode');
    // The C4 string of Chaigne and Askenfelt (JASA 95, 1994) as a piano of the same kind.
    const [published] = publishedChecks(/^ca94-c4-B$/);
    expectPublished(check!, inharmonicityCents({ inharmonicity: published!.expected, partial }));
  });

  it('rigaud-B-… (Rigaud, David and Daudet, DAFx-2011, as quoted): plain strings of the published set are of that size', () => {
    // The curve is a typical one and real pianos scatter by a factor of two: compared with the chab-unwrapped strings.
    const keyOf: Readonly<Record<string, number>> = { 'C#5': 73, 'G#5': 80, G6: 91, C7: 96, F3: 53, A3: 57 };
    for (const [name, midi] of Object.entries(keyOf)) {
      const [check] = publishedChecks(new RegExp(`^chab-unwrapped-${name}-B$`));
      const typical = Math.exp(-0.0847 * midi - 5.82) + Math.exp(0.0926 * midi - 13.64);
      const ratio = check!.expected / typical;
      expect(ratio, name).toBeGreaterThan(0.5);
      expect(ratio, name).toBeLessThan(2);
    }
  });

  it.each(publishedChecks(/^rigaud-B-/))('$id: the curve used above is the published one', (check) => {
    const midi = inputOf(check, 'midi');
    expectPublished(check, Math.exp(-0.0847 * midi - 5.82) + Math.exp(0.0926 * midi - 13.64));
  });
});

describe('inharmonicity()', () => {
  const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });

  it('of a plain string at pitch goes as d² / (f² · L⁴): tension included', () => {
    const b = (d: number, length: number, f: number): number => {
      const string = { diameter: millimetres(d), speakingLength: metres(length), frequency: hertz(f) };
      return inharmonicity({ ...string, tension: stringTension(string) });
    };
    fc.assert(
      fc.property(positive(0.7, 1.6), positive(0.05, 1.5), positive(50, 4000), (d, length, f) => {
        expect(b(2 * d, length, f) / b(d, length, f)).toBeCloseTo(4, 9);
        expect(b(d, 2 * length, f) / b(d, length, f)).toBeCloseTo(1 / 16, 9);
        expect(b(d, length, 2 * f) / b(d, length, f)).toBeCloseTo(1 / 4, 9);
      }),
      { seed: 3 },
    );
  });

  it('refuses zero, negative and not a number', () => {
    const string = { diameter: millimetres(1), speakingLength: metres(0.4), tension: newtons(700) };
    for (const wrong of [0, -1, Number.NaN]) {
      expect(() => inharmonicity({ ...string, diameter: metres(wrong) })).toThrow(/diameter must be > 0/);
      expect(() => inharmonicity({ ...string, tension: newtons(wrong) })).toThrow(/tension must be > 0/);
      expect(() => inharmonicity({ ...string, youngsModulus: pascals(wrong) })).toThrow(/Young's modulus/);
    }
  });
});

describe('partialFrequency()', () => {
  it('is the harmonic series without stiffness', () => {
    for (let n = 1; n <= 16; n += 1) {
      expect(partialFrequency({ frequency: hertz(110), inharmonicity: 0, partial: n })).toBe(110 * n);
    }
  });

  it('lies above n times the first mode by inharmonicityCents()', () => {
    const string = { inharmonicity: 4e-4, partial: 10 };
    const ratio = partialFrequency({ ...string, frequency: hertz(100) }) / 1000;
    expect(1200 * Math.log2(ratio)).toBeCloseTo(inharmonicityCents(string), 9);
  });

  it('refuses a negative B', () => {
    expect(() => partialFrequency({ frequency: hertz(100), inharmonicity: -1e-4, partial: 1 })).toThrow(
      RangeError,
    );
    expect(() => inharmonicityFromCents(cents(-1))).toThrow(RangeError);
  });
});
