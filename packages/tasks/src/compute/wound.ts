import {
  breakShare,
  fitInharmonicityByLine,
  fitInharmonicityInCents,
  fullLinearDensity,
  hertz,
  inharmonicity,
  kilogramsPerCubicMetre,
  metres,
  overallDiameter,
  pascals,
  speakingMass,
  type WoundString,
  woundStringModes,
  woundTensionAtPitch,
} from '@becket/core';
import * as z from 'zod';
import { computeKind, figure, notNegative, positive } from './compute-kind.ts';
import { steelParameters, strengthParameters, strengthTableOf } from './wire-parameters.ts';

export const wound = computeKind({
  kind: 'wound',
  summary: 'Mass, tension, partials and inharmonicity of a wound string.',
  notes: [
    'Layers are given inner first. start_m and end_m are the lengths that a layer leaves bare, from the front termination and from the bridge pin. A layer lies on whatever is beneath it; where an outer one reaches past the inner, on the core.',
    'Mass of a layer: ρ·(π/4)·(π/4)·(D_out² − D_in²), touching turns of round wire.',
    'tension_uniform_full_N takes the full density all along; tension_flexible_exact_N puts the first mode of the flexible stepped string at f0_Hz; tension_stiff_exact_N puts the first partial of the stiff string there. Pinned ends.',
    'Partials, B_core_formula and fits are at tension_flexible_exact_N. The stiffness is that of the core alone.',
    'B_fit8 and B_fit16 use partials 1 to 8 and 1 to 16 of f_n = n·f·√(1 + B·n²): linear by least squares of (f_n/n)² on n², cents by least squares in cents with f and B free.',
  ],
  request: z.object({
    kind: z.literal('wound'),
    speaking_length_m: positive('front termination to bridge pin'),
    core_diameter_m: positive('diameter of the steel core'),
    layers: z
      .array(
        z.object({
          wire_diameter_m: positive('diameter of the winding wire'),
          start_m: notNegative('bare length at the front'),
          end_m: notNegative('bare length at the back'),
        }),
      )
      .max(4)
      .describe('windings, inner first; none makes a plain string'),
    f0_Hz: positive('first mode'),
    ...steelParameters,
    rho_winding_kg_per_m3: positive('density of the windings; default copper, 8930').optional(),
    rho_copper_kg_per_m3: positive('the same, of copper windings; give one of the two').optional(),
    ...strengthParameters,
  }),
  answer: z.object({
    full_density_kg_per_m: figure('mass per length where every layer is present'),
    outer_diameter_m: figure('over every layer'),
    speaking_mass_kg: figure('mass of the speaking length'),
    tension_uniform_full_N: figure('4·L²·f0² times the full density'),
    tension_flexible_exact_N: figure('first mode of the flexible string at f0'),
    tension_stiff_exact_N: figure('first partial of the stiff string at f0'),
    partials_Hz: z.array(z.number()).length(16).describe('partials 1 to 16'),
    B_core_formula: figure('π³·E·d⁴/(64·T·L²) of the core; leaves out the bare ends'),
    B_fit8_linear: figure('fitted over partials 1 to 8'),
    B_fit16_linear: figure('fitted over partials 1 to 16'),
    B_fit8_cents: figure('fitted over partials 1 to 8, in cents'),
    B_fit16_cents: figure('fitted over partials 1 to 16, in cents'),
    core_percent_break: figure('100 · tension_flexible_exact_N / break load of the core'),
    strength_table: z.string().describe('name of the strength table'),
    strength_within_table: z
      .boolean()
      .describe('whether the core diameter lies inside the range of that table'),
  }),
  example: {
    kind: 'wound',
    speaking_length_m: 1.3,
    core_diameter_m: 0.0011,
    layers: [{ wire_diameter_m: 0.00075, start_m: 0.02, end_m: 0.012 }],
    f0_Hz: 58.27,
  },
  compute: (request) => {
    if (request.rho_winding_kg_per_m3 !== undefined && request.rho_copper_kg_per_m3 !== undefined) {
      throw new RangeError(
        'Cannot use two densities for one winding: give rho_winding_kg_per_m3 or rho_copper_kg_per_m3, found both',
      );
    }
    const windingDensity = request.rho_winding_kg_per_m3 ?? request.rho_copper_kg_per_m3;
    const string: WoundString = {
      kind: 'wound',
      speakingLength: metres(request.speaking_length_m),
      coreDiameter: metres(request.core_diameter_m),
      layers: request.layers.map((layer) => ({
        wireDiameter: metres(layer.wire_diameter_m),
        bareFront: metres(layer.start_m),
        bareBack: metres(layer.end_m),
      })),
      ...(request.rho_steel_kg_per_m3 !== undefined && {
        steelDensity: kilogramsPerCubicMetre(request.rho_steel_kg_per_m3),
      }),
      ...(windingDensity !== undefined && { windingDensity: kilogramsPerCubicMetre(windingDensity) }),
      ...(request.E_steel_Pa !== undefined && { youngsModulus: pascals(request.E_steel_Pa) }),
    };
    const frequency = hertz(request.f0_Hz);
    const fullDensity = fullLinearDensity(string);
    const { value: tension } = woundTensionAtPitch({ string, frequency, stiffness: 'ignored' });
    const { value: stiffTension } = woundTensionAtPitch({ string, frequency, stiffness: 'counted' });
    const { value: partials } = woundStringModes({ string, tension, count: 16 });
    const strength = breakShare({
      tension,
      diameter: string.coreDiameter,
      strengthTable: strengthTableOf(request),
    });
    return {
      full_density_kg_per_m: fullDensity,
      outer_diameter_m: overallDiameter(string),
      speaking_mass_kg: speakingMass(string),
      tension_uniform_full_N: 4 * string.speakingLength ** 2 * frequency ** 2 * fullDensity,
      tension_flexible_exact_N: tension,
      tension_stiff_exact_N: stiffTension,
      partials_Hz: partials,
      B_core_formula: inharmonicity({
        diameter: string.coreDiameter,
        speakingLength: string.speakingLength,
        tension,
        youngsModulus: string.youngsModulus,
      }),
      B_fit8_linear: fitInharmonicityByLine(partials, 8).inharmonicity,
      B_fit16_linear: fitInharmonicityByLine(partials, 16).inharmonicity,
      B_fit8_cents: fitInharmonicityInCents(partials, 8).inharmonicity,
      B_fit16_cents: fitInharmonicityInCents(partials, 16).inharmonicity,
      core_percent_break: 100 * strength.share,
      strength_table: strength.table,
      strength_within_table: strength.isWithinTableRange,
    };
  },
});
