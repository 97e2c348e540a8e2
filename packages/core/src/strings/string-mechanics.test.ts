import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CAST_IRON_EXPANSION_PER_KELVIN, STEEL_YOUNGS_MODULUS } from '../tables/index.ts';
import { expectPublished, inputOf, publishedChecks } from '../tables/testing/published-checks.ts';
import {
  degrees,
  gigapascals,
  hertz,
  inches,
  inInchPounds,
  metres,
  millimetres,
  newtons,
  radians,
} from '../units/index.ts';
import {
  bearingForce,
  bearingForceFromRise,
  deflectionFromRise,
  elongation,
  frequencyAtTension,
  fullLinearDensity,
  longitudinalMode,
  pitchPerKelvin,
  plainLinearDensity,
  pullOnPin,
  stringFrequency,
  stringImpedance,
  wireStress,
} from './index.ts';

const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('elongation()', () => {
  it('is the strain times the length: stress over modulus', () => {
    fc.assert(
      fc.property(positive(300, 1500), positive(0.1, 2.5), positive(0.7, 1.7), (t, length, d) => {
        const wire = { tension: newtons(t), diameter: millimetres(d) };
        const strain = wireStress(wire) / STEEL_YOUNGS_MODULUS;
        expect(elongation({ ...wire, length: metres(length) }) / (strain * length)).toBeCloseTo(1, 12);
      }),
      { seed: 1 },
    );
  });

  it('adds up over front, speaking and back length', () => {
    const of = (length: number) =>
      elongation({ tension: newtons(700), diameter: millimetres(1), length: metres(length) });
    expect(of(0.1) + of(0.6) + of(0.08)).toBeCloseTo(of(0.78), 15);
  });
});

describe('pitchPerKelvin()', () => {
  const string = { tension: newtons(700), diameter: millimetres(1) };

  it('is what the frequency does when the expansion changes the tension by E·A·α', () => {
    const area = (Math.PI / 4) * 1e-6;
    const lost = STEEL_YOUNGS_MODULUS * area * 11.5e-6;
    const warmth = 0.001;
    const warmed = frequencyAtTension({
      frequency: hertz(440),
      tension: newtons(700),
      newTension: newtons(700 - lost * warmth),
    });
    expect((1200 * Math.log2(warmed / 440)) / warmth).toBeCloseTo(pitchPerKelvin(string), 5);
  });

  it('nearly vanishes when a cast iron plate warms with the strings, and is zero when both expand alike', () => {
    const together = pitchPerKelvin({ ...string, endsExpansion: CAST_IRON_EXPANSION_PER_KELVIN });
    expect(together / pitchPerKelvin(string)).toBeCloseTo(1 / 11.5, 3);
    expect(Math.abs(pitchPerKelvin({ ...string, endsExpansion: 11.5e-6 }))).toBe(0);
  });

  it('refuses an expansion that is not a number', () => {
    expect(() => pitchPerKelvin({ ...string, stringExpansion: Number.NaN })).toThrow(RangeError);
  });
});

describe('frequencyAtTension()', () => {
  it('thermal-c7-beat: the beat of a cooled string (checks.json, derived from f ∝ √T)', () => {
    const [check] = publishedChecks(/^thermal-c7-beat$/);
    const frequency = inputOf(check!, 'frequency_Hz');
    const tension = inputOf(check!, 'tension_N');
    const cooled = frequencyAtTension({
      frequency: hertz(frequency),
      tension: newtons(tension),
      newTension: newtons(tension + inputOf(check!, 'delta_tension_N')),
    });
    expectPublished(check!, cooled - frequency);
  });
});

describe('longitudinalMode()', () => {
  it('longitudinal-plain (H. A. Conklin, JASA part III, 1996, as quoted)', () => {
    const [check] = publishedChecks(/^longitudinal-plain$/);
    const coreDiameter = millimetres(1);
    const frequency = longitudinalMode({
      speakingLength: metres(inputOf(check!, 'length_m')),
      coreDiameter,
      linearDensity: plainLinearDensity({ diameter: coreDiameter }),
      youngsModulus: gigapascals(200),
    });
    expectPublished(check!, frequency);
    expect(frequency).toBeCloseTo(2523.8, 1); // √(200e9/7850)/2, as the note of that check says
  });

  it('of plain wire does not depend on its diameter, and a winding lowers it', () => {
    const plain = (d: number) =>
      longitudinalMode({
        speakingLength: metres(1.2),
        coreDiameter: millimetres(d),
        linearDensity: plainLinearDensity({ diameter: millimetres(d) }),
      });
    expect(plain(0.8)).toBeCloseTo(plain(1.4), 9);
    const wound = longitudinalMode({
      speakingLength: metres(1.2),
      coreDiameter: millimetres(1.1),
      linearDensity: fullLinearDensity({
        kind: 'wound',
        speakingLength: metres(1.2),
        coreDiameter: millimetres(1.1),
        layers: [{ wireDiameter: millimetres(0.5), bareFront: metres(0), bareBack: metres(0) }],
      }),
    });
    expect(wound).toBeLessThan(plain(1.1));
  });
});

describe('stringImpedance()', () => {
  it('is tension over wave speed: Z = T / (2·L·f)', () => {
    fc.assert(
      fc.property(positive(300, 1500), positive(0.7, 1.7), positive(0.1, 2), (t, d, length) => {
        const string = {
          tension: newtons(t),
          linearDensity: plainLinearDensity({ diameter: millimetres(d) }),
        };
        const waveSpeed = 2 * length * stringFrequency({ ...string, speakingLength: metres(length) });
        expect((stringImpedance(string) * waveSpeed) / t).toBeCloseTo(1, 12);
      }),
      { seed: 2 },
    );
  });
});

describe('bearingForce()', () => {
  it.each(publishedChecks(/^downbearing-/))('$id ($source)', (check) => {
    const force = bearingForce({
      tension: newtons(inputOf(check, 'tension_any')),
      deflection: degrees(inputOf(check, 'angle_deg')),
    });
    expectPublished(check, force);
  });

  it.each(publishedChecks(/^downbearing-/))(
    '$id: the resultant 2·T·sin(θ/2) agrees within its tolerance as well',
    (check) => {
      const angle = (inputOf(check, 'angle_deg') * Math.PI) / 180;
      expectPublished(check, 2 * inputOf(check, 'tension_any') * Math.sin(angle / 2));
    },
  );

  it('is negative where the string lifts off, and refuses a right angle and more', () => {
    expect(bearingForce({ tension: newtons(700), deflection: degrees(-1) })).toBeLessThan(0);
    expect(() => bearingForce({ tension: newtons(700), deflection: radians(2) })).toThrow(RangeError);
  });
});

describe('bearingForceFromRise()', () => {
  it('agrees with the angle for the small rises of a piano', () => {
    fc.assert(
      fc.property(positive(0.1, 3), positive(0.1, 1.5), positive(0.05, 0.2), (h, front, back) => {
        const bearing = {
          rise: millimetres(h),
          spanFront: metres(front),
          spanBack: metres(back),
        };
        const tension = newtons(700);
        const fromRise = bearingForceFromRise({ ...bearing, tension });
        const fromAngle = bearingForce({ tension, deflection: deflectionFromRise(bearing) });
        expect(fromRise / fromAngle).toBeCloseTo(1, 2);
      }),
      { seed: 3 },
    );
  });

  it('is T·h·(1/a + 1/b) in the limit, and changes sign with the rise', () => {
    const spans = { spanFront: metres(0.6), spanBack: metres(0.06), tension: newtons(700) };
    const force = bearingForceFromRise({ ...spans, rise: metres(1e-6) });
    expect(force / (700 * 1e-6 * (1 / 0.6 + 1 / 0.06))).toBeCloseTo(1, 8);
    expect(bearingForceFromRise({ ...spans, rise: metres(-0.001) })).toBe(
      -bearingForceFromRise({ ...spans, rise: metres(0.001) }),
    );
    expect(bearingForceFromRise({ ...spans, rise: metres(0) })).toBe(0);
  });

  it('refuses a span of zero and a rise that is not a number', () => {
    const bearing = {
      rise: metres(0.001),
      spanFront: metres(0.6),
      spanBack: metres(0.06),
      tension: newtons(700),
    };
    expect(() => bearingForceFromRise({ ...bearing, spanBack: metres(0) })).toThrow(/back span/);
    expect(() => bearingForceFromRise({ ...bearing, rise: metres(Number.NaN) })).toThrow(/rise/);
  });
});

describe('pullOnPin()', () => {
  it('is tension times the arm to the middle of the wire', () => {
    const torque = pullOnPin({
      tension: newtons(700),
      pinDiameter: inches(0.282),
      wireDiameter: millimetres(1),
    });
    expect(torque).toBeCloseTo(700 * (0.0035814 + 0.0005), 9);
    expect(inInchPounds(torque)).toBeCloseTo(25.29, 2);
  });
});
