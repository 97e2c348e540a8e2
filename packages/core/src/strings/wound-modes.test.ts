import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expectPublished, inputOf, publishedChecks } from '../tables/testing/published-checks.ts';
import { gigapascals, hertz, kilogramsPerCubicMetre, metres, millimetres, newtons } from '../units/index.ts';
import { inharmonicity } from './inharmonicity.ts';
import { fitInharmonicityByLine } from './inharmonicity-fit.ts';
import { stringTension } from './string-tension.ts';
import { randomWoundString } from './testing/random-strings.ts';
import { woundStringModes, woundTensionAtPitch } from './wound-modes.ts';
import { type WoundString, woundStringTension } from './wound-string.ts';

const bassString: WoundString = {
  kind: 'wound',
  speakingLength: metres(1.3),
  coreDiameter: millimetres(1.1),
  layers: [{ wireDiameter: millimetres(0.75), bareFront: millimetres(20), bareBack: millimetres(12) }],
};

describe('woundStringModes()', () => {
  // Source: sine series of 700 terms and cubic Hermite elements, which agree to 2e-8 (derived), checks.json wound-bare-*.
  it.each(publishedChecks(/^wound-bare-/))('gives the published $id', (check) => {
    const modes = woundStringModes({
      string: {
        kind: 'wound',
        speakingLength: metres(inputOf(check, 'length_m')),
        coreDiameter: millimetres(inputOf(check, 'core_mm')),
        layers: [
          {
            wireDiameter: millimetres((inputOf(check, 'overall_mm') - inputOf(check, 'core_mm')) / 2),
            bareFront: millimetres(inputOf(check, 'bare_end1_mm')),
            bareBack: millimetres(inputOf(check, 'bare_end2_mm')),
          },
        ],
        steelDensity: kilogramsPerCubicMetre(inputOf(check, 'rho_steel_kg_m3')),
        windingDensity: kilogramsPerCubicMetre(inputOf(check, 'rho_copper_kg_m3')),
        youngsModulus: gigapascals(inputOf(check, 'young_GPa')),
      },
      tension: newtons(inputOf(check, 'tension_N')),
    });
    const partial = Number(check.id.split('-')[2]);
    expectPublished(check, modes.value[partial - 1]!);
  });

  it('is a plain string when there is no winding', () => {
    const string = { ...bassString, layers: [] };
    const tension = stringTension({
      diameter: string.coreDiameter,
      speakingLength: string.speakingLength,
      frequency: hertz(200),
    });
    expect(woundTensionAtPitch({ string, frequency: hertz(200), stiffness: 'ignored' }).value).toBeCloseTo(
      tension,
      8,
    );
    const b = inharmonicity({
      diameter: string.coreDiameter,
      speakingLength: string.speakingLength,
      tension,
    });
    woundStringModes({ string, tension }).value.forEach((frequency, index) => {
      const n = index + 1;
      expect(frequency / (n * 200 * Math.sqrt(1 + b * n ** 2))).toBeCloseTo(1, 11);
    });
  });

  it('has the inharmonicity of the core formula without bare ends, and more with them', () => {
    const fitted = (bareMillimetres: number): { b: number; core: number } => {
      const bare = millimetres(bareMillimetres);
      const string = {
        ...bassString,
        layers: [{ wireDiameter: millimetres(0.75), bareFront: bare, bareBack: bare }],
      };
      const tension = newtons(900);
      const core = inharmonicity({
        diameter: string.coreDiameter,
        speakingLength: string.speakingLength,
        tension,
      });
      return {
        b: fitInharmonicityByLine(woundStringModes({ string, tension }).value, 8).inharmonicity,
        core,
      };
    };
    expect(fitted(0).b / fitted(0).core).toBeCloseTo(1, 9);
    const ratios = [10, 20, 30, 40, 50].map((bare) => fitted(bare).b / fitted(bare).core);
    ratios.forEach((ratio, index) => {
      expect(ratio).toBeGreaterThan(index === 0 ? 1 : ratios[index - 1]!);
    });
  });
});

describe('woundTensionAtPitch()', () => {
  it('puts partial 1 on pitch when stiffness is counted', () => {
    fc.assert(
      fc.property(randomWoundString, (string) => {
        const frequency = hertz(60 / string.speakingLength);
        const { value: tension } = woundTensionAtPitch({ string, frequency, stiffness: 'counted' });
        expect(woundStringModes({ string, tension, count: 1 }).value[0]! / frequency).toBeCloseTo(1, 10);
      }),
      { numRuns: 40 },
    );
  });

  it('lies above the closed form, which is a Rayleigh quotient, by less than 0.1 % on ordinary bare ends', () => {
    fc.assert(
      fc.property(randomWoundString, (string) => {
        const frequency = hertz(60 / string.speakingLength);
        const exact = woundTensionAtPitch({ string, frequency, stiffness: 'ignored' }).value;
        const closed = woundStringTension(string, frequency);
        expect(closed).toBeLessThan(exact * (1 + 1e-12));
        expect(closed).toBeGreaterThan(exact * 0.99);
        const isOrdinary = string.layers.every(
          (layer) => Math.max(layer.bareFront, layer.bareBack) < 0.05 * string.speakingLength,
        );
        if (isOrdinary) expect(closed).toBeGreaterThan(exact * 0.999);
      }),
    );
  });
});
