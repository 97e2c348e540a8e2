import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expectPublished, inputOf, publishedChecks } from '../tables/testing/published-checks.ts';
import {
  hertz,
  inMillimetres,
  kilogramsPerCubicMetre,
  metres,
  millimetres,
  type Newtons,
} from '../units/index.ts';
import { randomWoundString } from './testing/random-strings.ts';
import {
  fullLinearDensity,
  overallDiameter,
  segmentsOf,
  speakingMass,
  type WoundString,
  woundStringTension,
} from './wound-string.ts';

const bassString: WoundString = {
  kind: 'wound',
  speakingLength: metres(1.3),
  coreDiameter: millimetres(1.1),
  layers: [{ wireDiameter: millimetres(0.75), bareFront: millimetres(20), bareBack: millimetres(12) }],
};

describe('fullLinearDensity()', () => {
  // Source: geometry of touching turns (derived), checks.json wound-mu-*.
  it.each(publishedChecks(/^wound-mu-/))('gives the published $id', (check) => {
    const density = fullLinearDensity({
      kind: 'wound',
      speakingLength: metres(1),
      coreDiameter: millimetres(inputOf(check, 'core_mm')),
      layers: [
        {
          wireDiameter: millimetres((inputOf(check, 'overall_mm') - inputOf(check, 'core_mm')) / 2),
          bareFront: metres(0),
          bareBack: metres(0),
        },
      ],
      steelDensity: kilogramsPerCubicMetre(inputOf(check, 'rho_steel_kg_m3')),
      windingDensity: kilogramsPerCubicMetre(inputOf(check, 'rho_copper_kg_m3')),
    });
    expectPublished(check, density);
  });

  it('gives the same mass for a close helix counted turn by turn along the wire', () => {
    // A helix of pitch p on the diameter through the wire's middle; turns touch across the slope: w = p · cos α.
    const wire = 0.75e-3;
    const middle = 1.1e-3 + wire;
    const slope = Math.asin(wire / (Math.PI * middle)); // w = p·cos α and p = π·D·tan α give sin α = w/(πD)
    const pitch = wire / Math.cos(slope);
    const wireLengthPerLength = (Math.PI * middle) / Math.cos(slope) / pitch;
    const helix = 7850 * (Math.PI / 4) * 1.1e-3 ** 2 + 8930 * (Math.PI / 4) * wire ** 2 * wireLengthPerLength;
    expect(fullLinearDensity(bassString)).toBeCloseTo(helix, 12);
  });
});

describe('segmentsOf()', () => {
  it('cuts unequal layers into five stretches that rise and fall by layer', () => {
    const segments = segmentsOf({
      ...bassString,
      layers: [
        { wireDiameter: millimetres(0.4), bareFront: millimetres(15), bareBack: millimetres(10) },
        { wireDiameter: millimetres(0.8), bareFront: millimetres(30), bareBack: millimetres(22) },
      ],
    });
    expect(segments.map((segment) => segment.layersPresent)).toEqual([0, 1, 2, 1, 0]);
    expect(segments.map((segment) => inMillimetres(segment.overallDiameter).toFixed(1))).toEqual([
      '1.1',
      '1.9',
      '3.5',
      '1.9',
      '1.1',
    ]);
  });

  it('lays an outer layer on the core where it reaches past the inner one', () => {
    const segments = segmentsOf({
      ...bassString,
      layers: [
        { wireDiameter: millimetres(0.4), bareFront: millimetres(30), bareBack: millimetres(30) },
        { wireDiameter: millimetres(0.8), bareFront: millimetres(10), bareBack: millimetres(30) },
      ],
    });
    expect(inMillimetres(segments[1]!.overallDiameter)).toBeCloseTo(2.7, 9);
  });

  it('adds up to the speaking length and lies between bare and full density', () => {
    fc.assert(
      fc.property(randomWoundString, (string) => {
        const segments = segmentsOf(string);
        const total = segments.reduce((sum, segment) => sum + segment.length, 0);
        expect(total).toBeCloseTo(string.speakingLength, 12);
        const bare = fullLinearDensity({ ...string, layers: [] });
        for (const segment of segments) {
          expect(segment.linearDensity).toBeGreaterThanOrEqual(bare * (1 - 1e-12));
          expect(segment.linearDensity).toBeLessThanOrEqual(fullLinearDensity(string) * (1 + 1e-12));
          expect(segment.overallDiameter).toBeLessThanOrEqual(overallDiameter(string) * (1 + 1e-12));
        }
        expect(speakingMass(string)).toBeLessThanOrEqual(
          fullLinearDensity(string) * string.speakingLength * (1 + 1e-12),
        );
      }),
    );
  });
});

describe('woundStringTension()', () => {
  const tensionAt59 = (string: WoundString): Newtons => woundStringTension(string, hertz(59.16));

  it('is that of a plain string when there is no winding', () => {
    const plain = tensionAt59({ ...bassString, layers: [] });
    expect(plain).toBeCloseTo(Math.PI * 7850 * (1.1e-3 * 1.3 * 59.16) ** 2, 9);
  });

  it('quadruples with the frequency and ignores which end is the front', () => {
    fc.assert(
      fc.property(randomWoundString, (string) => {
        const reversed: WoundString = {
          ...string,
          layers: string.layers.map((layer) => ({
            ...layer,
            bareFront: layer.bareBack,
            bareBack: layer.bareFront,
          })),
        };
        const tension = woundStringTension(string, hertz(50));
        expect(woundStringTension(string, hertz(100)) / tension).toBeCloseTo(4, 12);
        expect(woundStringTension(reversed, hertz(50)) / tension).toBeCloseTo(1, 12);
      }),
    );
  });

  it('lies above the mean density, which gives light ends too much say, and below the full density', () => {
    const perDensity = 4 * (1.3 * 59.16) ** 2;
    expect(tensionAt59(bassString)).toBeGreaterThan(perDensity * (speakingMass(bassString) / 1.3));
    expect(tensionAt59(bassString)).toBeLessThan(perDensity * fullLinearDensity(bassString));
  });

  it('refuses, by name, a layer that leaves nothing wound', () => {
    const string = {
      ...bassString,
      layers: [{ wireDiameter: millimetres(0.75), bareFront: metres(0.7), bareBack: metres(0.7) }],
    };
    expect(() => tensionAt59(string)).toThrow(
      'Cannot compute the tension of a wound string as the bare ends of layer 1 must leave some of the speaking length wound',
    );
  });

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('refuses a speaking length of %d m', (length) => {
    expect(() => tensionAt59({ ...bassString, speakingLength: metres(length) })).toThrow(RangeError);
  });
});
