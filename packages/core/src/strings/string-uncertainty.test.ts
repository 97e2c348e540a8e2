import { describe, expect, it } from 'vitest';
import { meanAndDeviation, seededNormals } from '../scale/testing/seeded-normals.ts';
import { A228_MINIMUM } from '../tables/index.ts';
import {
  type Estimate,
  hertz,
  kilogramsPerCubicMetre,
  kilogramsPerMetre,
  metres,
  newtons,
  pascals,
  propagate,
  radians,
} from '../units/index.ts';
import {
  bearingForce,
  bearingForceFromRise,
  breakLoad,
  breakShare,
  elongation,
  inharmonicity,
  longitudinalMode,
  pitchPerKelvin,
  pullOnPin,
  stringFrequency,
  stringImpedance,
  stringTension,
  wireStress,
} from './index.ts';

/*
 * The "Error:" line of every page, as relative exponents, against first-order propagation and against Monte Carlo
 * (JCGM 101:2008, seeded).
 */

type Values = Readonly<Record<string, number>>;
interface Page {
  readonly page: string;
  readonly model: (of: Values) => number;
  readonly inputs: Readonly<Record<string, readonly [value: number, relativeUncertainty: number]>>;
  /** Exponent of each input as the page states it; what is left out must not matter. */
  readonly exponents: Readonly<Record<string, number>>;
}

const T = [700, 0.01] as const;
const d = [0.001, 0.004] as const;
const L = [0.6, 0.002] as const;
const E = [202e9, 0.02] as const;

const pages: readonly Page[] = [
  {
    page: 'stringTension',
    model: (of) =>
      stringTension({
        diameter: metres(of.d!),
        speakingLength: metres(of.L!),
        frequency: hertz(of.f!),
        density: kilogramsPerCubicMetre(of.rho!),
      }),
    inputs: { d, L, f: [262, 0.0003], rho: [7850, 0.002] },
    exponents: { d: 2, L: 2, f: 2, rho: 1 },
  },
  {
    page: 'stringFrequency',
    model: (of) =>
      stringFrequency({
        tension: newtons(of.T!),
        speakingLength: metres(of.L!),
        linearDensity: kilogramsPerMetre(of.mu!),
      }),
    inputs: { T, L, mu: [0.0062, 0.01] },
    exponents: { T: 0.5, L: -1, mu: -0.5 },
  },
  {
    page: 'wireStress',
    model: (of) => wireStress({ tension: newtons(of.T!), diameter: metres(of.d!) }),
    inputs: { T, d },
    exponents: { T: 1, d: -2 },
  },
  {
    page: 'breakLoad',
    model: (of) => breakLoad({ diameter: metres(of.d!), strength: pascals(of.S!) }),
    inputs: { d, S: [2.2e9, 0.02] },
    exponents: { d: 2, S: 1 },
  },
  {
    page: 'inharmonicity',
    model: (of) =>
      inharmonicity({
        diameter: metres(of.d!),
        speakingLength: metres(of.L!),
        tension: newtons(of.T!),
        youngsModulus: pascals(of.E!),
      }),
    inputs: { d, L, T, E },
    exponents: { d: 4, L: -2, T: -1, E: 1 },
  },
  {
    page: 'elongation',
    model: (of) =>
      elongation({
        tension: newtons(of.T!),
        length: metres(of.L!),
        diameter: metres(of.d!),
        youngsModulus: pascals(of.E!),
      }),
    inputs: { T, L, d, E },
    exponents: { T: 1, L: 1, d: -2, E: -1 },
  },
  {
    page: 'pitchPerKelvin',
    model: (of) =>
      pitchPerKelvin({
        tension: newtons(of.T!),
        diameter: metres(of.d!),
        youngsModulus: pascals(of.E!),
        stringExpansion: of.alpha!,
      }),
    inputs: { T, d, E, alpha: [11.5e-6, 0.05] },
    exponents: { T: -1, d: 2, E: 1, alpha: 1 },
  },
  {
    page: 'longitudinalMode',
    model: (of) =>
      longitudinalMode({
        speakingLength: metres(of.L!),
        coreDiameter: metres(of.d!),
        linearDensity: kilogramsPerMetre(of.mu!),
        youngsModulus: pascals(of.E!),
      }),
    inputs: { L, d, mu: [0.0062, 0.01], E },
    exponents: { L: -1, d: 1, mu: -0.5, E: 0.5 },
  },
  {
    page: 'stringImpedance',
    model: (of) => stringImpedance({ tension: newtons(of.T!), linearDensity: kilogramsPerMetre(of.mu!) }),
    inputs: { T, mu: [0.0062, 0.01] },
    exponents: { T: 0.5, mu: 0.5 },
  },
  {
    page: 'bearingForce',
    model: (of) => bearingForce({ tension: newtons(of.T!), deflection: radians(of.theta!) }),
    inputs: { T, theta: [0.0175, 0.1] },
    // u(θ)/tan θ is u(θ)/θ to 0.01 % at 1°.
    exponents: { T: 1, theta: 1 },
  },
  {
    page: 'bearingForceFromRise',
    model: (of) =>
      bearingForceFromRise({
        tension: newtons(of.T!),
        rise: metres(of.h!),
        spanFront: metres(of.a!),
        spanBack: metres(of.b!),
      }),
    inputs: { T, h: [0.001, 0.1], a: [0.6, 0.002], b: [0.06, 0.01] },
    // F ≈ T·h·(1/a + 1/b): the shorter span has 10/11 of the weight.
    exponents: { T: 1, h: 1, a: -1 / 11, b: -10 / 11 },
  },
  {
    page: 'pullOnPin',
    model: (of) =>
      pullOnPin({ tension: newtons(of.T!), pinDiameter: metres(of.D!), wireDiameter: metres(of.d!) }),
    inputs: { T, D: [0.00716, 0.002], d },
    exponents: { T: 1, D: 0.00716 / 0.00816, d: 0.001 / 0.00816 },
  },
];

function estimates(page: Page): Record<string, Estimate> {
  return Object.fromEntries(
    Object.entries(page.inputs).map(([name, [value, relative]]) => [
      name,
      { value, standardUncertainty: relative * value },
    ]),
  );
}

describe.each(pages)('the uncertainty of $page', (page) => {
  const { y } = propagate((of) => ({ y: page.model(of) }), estimates(page));

  it('follows the exponents that its page states', () => {
    for (const [name, [, relative]] of Object.entries(page.inputs)) {
      const exponent = y.contributions[name]! / Math.abs(y.value) / relative;
      const stated = (page.exponents[name] ?? 0) * Math.sign(y.value);
      expect(Math.abs(exponent - stated), `${name}: ${exponent}`).toBeLessThan(0.005);
    }
    expect(Object.keys(page.exponents).sort()).toEqual(Object.keys(page.inputs).sort());
  });

  it('agrees with Monte Carlo', () => {
    const normal = seededNormals(page.page.length);
    const draws = 40_000;
    const sample = Array.from({ length: draws }, () =>
      page.model(
        Object.fromEntries(
          Object.entries(page.inputs).map(([name, [value, relative]]) => [
            name,
            value * (1 + relative * normal()),
          ]),
        ),
      ),
    );
    const ratio = y.standardUncertainty / meanAndDeviation(sample).deviation;
    // Four standard errors of a standard deviation, and 0.5 % for second order.
    expect(Math.abs(ratio - 1)).toBeLessThan(4 / Math.sqrt(2 * draws) + 0.005);
  });
});

describe('the uncertainty of a break share', () => {
  it('is that of tension, diameter and strength; the diameter enters by the area and by the table', () => {
    const { share } = propagate(
      (of) => ({
        share:
          breakShare({ tension: newtons(of.T!), diameter: metres(of.d!), strengthTable: A228_MINIMUM })
            .share / of.S!,
      }),
      {
        T: { value: 700, standardUncertainty: 7 },
        d: { value: 0.001, standardUncertainty: 4e-6 },
        S: { value: 1, standardUncertainty: 0.01 },
      },
    );
    expect(share.contributions.T! / share.value).toBeCloseTo(0.01, 4);
    expect(share.contributions.S! / share.value).toBeCloseTo(-0.01, 4);
    const perDiameter = share.contributions.d! / share.value / 0.004;
    expect(perDiameter).toBeGreaterThan(-2);
    expect(perDiameter).toBeLessThan(-1.8);
  });
});
