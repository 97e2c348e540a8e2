import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expectPublished, inputOf, publishedChecks } from '../tables/testing/published-checks.ts';
import {
  hertz,
  inchPounds,
  inKsi,
  inMegapascals,
  inMils,
  inNewtonMetres,
  inNewtons,
  kilogramForceCentimetres,
  kilogramsForce,
  kilogramsPerCubicMetre,
  kilogramsPerMetre,
  ksi,
  metres,
  millimetres,
  mils,
  newtons,
  poundsForce,
} from '../units/index.ts';
import { plainLinearDensity, stringFrequency, stringTension } from './index.ts';

const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const plain = fc.record({
  diameter: positive(0.6, 1.7).map(millimetres),
  speakingLength: positive(0.04, 2).map(metres),
  frequency: positive(25, 4300).map(hertz),
  density: positive(7700, 7900).map(kilogramsPerCubicMetre),
});

describe('published tensions and frequencies', () => {
  it('tension-forster-g4 (C. Forster, restringing and retuning pianos, 30 May 2005)', () => {
    const [check] = publishedChecks(/^tension-forster-/);
    const tension = stringTension({
      frequency: hertz(inputOf(check!, 'frequency_Hz')),
      speakingLength: metres(inputOf(check!, 'length_m')),
      diameter: metres(2 * inputOf(check!, 'radius_m')),
      density: kilogramsPerCubicMetre(inputOf(check!, 'density_kg_m3')),
    });
    expectPublished(check!, tension);
  });

  it('tension-const-si (J. Mas Cabré, PTG Journal, July 2000, p. 62, as quoted): T = c·(f·L·d)²', () => {
    const [check] = publishedChecks(/^tension-const-/);
    const density = kilogramsPerCubicMetre(inputOf(check!, 'density_kg_m3'));
    const tension = stringTension({
      frequency: hertz(1),
      speakingLength: metres(1),
      diameter: metres(1),
      density,
    });
    expectPublished(check!, tension);
  });

  it('ca94-c4-f1 (Chaigne and Askenfelt, JASA 95, 1994, as carried by a public code)', () => {
    const [check] = publishedChecks(/^ca94-c4-f1$/);
    const length = inputOf(check!, 'length_m');
    const frequency = stringFrequency({
      tension: newtons(inputOf(check!, 'tension_N')),
      speakingLength: metres(length),
      linearDensity: kilogramsPerMetre(inputOf(check!, 'string_mass_kg') / length),
    });
    expectPublished(check!, frequency);
  });

  it.each(publishedChecks(/^chab-.*-f1$/))('$id ($source)', (check) => {
    const linearDensity = plainLinearDensity({
      diameter: millimetres(inputOf(check, 'core_diameter_mm')),
      density: kilogramsPerCubicMetre(inputOf(check, 'equivalent_density_on_core_area_kg_m3')),
    });
    const frequency = stringFrequency({
      tension: newtons(inputOf(check, 'tension_N')),
      speakingLength: metres(inputOf(check, 'length_m')),
      linearDensity,
    });
    expectPublished(check, frequency);
  });
});

describe('published unit conversions', () => {
  const conversions: Readonly<Record<string, number>> = {
    'unit-lbf': inNewtons(poundsForce(1)),
    'unit-inlbf': inNewtonMetres(inchPounds(1)),
    'unit-kgf': inNewtons(kilogramsForce(1)),
    'unit-kgfcm': inNewtonMetres(kilogramForceCentimetres(1)),
    'unit-mil': mils(1) * 1000,
    'unit-ksi': inMegapascals(ksi(1)),
  };
  it.each(publishedChecks(/^unit-/))('$id ($source)', (check) => {
    expectPublished(check, conversions[check.id]!);
  });

  it('read back what they made', () => {
    expect(inMils(mils(33))).toBeCloseTo(33, 12);
    expect(inKsi(ksi(318))).toBeCloseTo(318, 9);
  });
});

describe('stringTension()', () => {
  it('quadruples when diameter, length or frequency doubles', () => {
    fc.assert(
      fc.property(plain, (string) => {
        const tension = stringTension(string);
        for (const name of ['diameter', 'speakingLength', 'frequency'] as const) {
          const doubled = stringTension({ ...string, [name]: (string[name] * 2) as never });
          expect(doubled / tension).toBeCloseTo(4, 9);
        }
      }),
      { seed: 1 },
    );
  });

  it('and stringFrequency() undo each other', () => {
    fc.assert(
      fc.property(plain, (string) => {
        const tension = stringTension(string);
        const frequency = stringFrequency({
          tension,
          speakingLength: string.speakingLength,
          linearDensity: plainLinearDensity(string),
        });
        expect(frequency / string.frequency).toBeCloseTo(1, 12);
      }),
      { seed: 2 },
    );
  });

  it('says which input is wrong and what was found', () => {
    const string = { diameter: millimetres(1), speakingLength: metres(0.4), frequency: hertz(440) };
    expect(() => stringTension({ ...string, diameter: metres(-0.001) })).toThrow(
      'Cannot compute tension as diameter must be > 0: current value is -0.001',
    );
    expect(() => stringTension({ ...string, speakingLength: metres(0) })).toThrow(/speaking length/);
    expect(() => stringTension({ ...string, frequency: hertz(Number.NaN) })).toThrow(/frequency/);
    expect(() =>
      stringTension({ ...string, density: kilogramsPerCubicMetre(Number.POSITIVE_INFINITY) }),
    ).toThrow(/density/);
  });
});
