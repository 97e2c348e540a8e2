import {
  breakLoad,
  breakShare,
  elongation,
  hertz,
  inharmonicity,
  kilogramsPerCubicMetre,
  metres,
  pascals,
  pitchPerKelvin,
  plainLinearDensity,
  stringTension,
  wireStress,
} from '@becket/core';
import * as z from 'zod';
import { computeKind, figure, positive } from './compute-kind.ts';
import { steelParameters, strengthParameters, strengthTableOf } from './wire-parameters.ts';

export const plain = computeKind({
  kind: 'plain',
  summary: 'What a plain steel string does at a frequency.',
  notes: [
    'f0_Hz is the first mode of the flexible string; the first partial lies above it by √(1 + B).',
    'total_wire_length_m is all the wire that is stretched, pin to hitch; the speaking length when it is left out.',
    'alpha_per_K is the expansion of the steel less that of what holds its ends; 11.5e-6 when left out: the string alone warms.',
    'The strength table is named in the answer; outside its range its end value is used and strength_within_table is false. Real piano wire usually tests stronger than the ASTM A228 minimum.',
  ],
  request: z.object({
    kind: z.literal('plain'),
    speaking_length_m: positive('front termination to bridge pin'),
    diameter_m: positive('diameter of the wire'),
    f0_Hz: positive('first mode of the flexible string'),
    ...steelParameters,
    total_wire_length_m: positive('all the wire that is stretched; default the speaking length').optional(),
    alpha_per_K: z.number().describe('net thermal expansion of the wire; default 11.5e-6').optional(),
    ...strengthParameters,
  }),
  answer: z.object({
    linear_density_kg_per_m: figure('ρ·π·d²/4'),
    tension_N: figure('π·ρ·(d·L·f0)²'),
    stress_Pa: figure('tension over the area of the wire'),
    ultimate_strength_Pa: figure('by the named strength table'),
    break_load_N: figure('ultimate strength times the area'),
    percent_break: figure('100 · tension / break load'),
    inharmonicity_B: figure('π³·E·d⁴/(64·T·L²)'),
    elongation_m: figure('T·L/(E·A) over the total wire length'),
    pitch_cents_per_K: figure('−(1200/ln 2)·½·E·A·α/T; below zero where warming flattens'),
    strength_table: z.string().describe('name of the strength table'),
    strength_within_table: z.boolean().describe('whether the diameter lies inside the range of that table'),
  }),
  example: { kind: 'plain', speaking_length_m: 0.62, diameter_m: 0.001, f0_Hz: 261.6256 },
  compute: (request) => {
    const diameter = metres(request.diameter_m);
    const speakingLength = metres(request.speaking_length_m);
    const youngsModulus = request.E_steel_Pa === undefined ? undefined : pascals(request.E_steel_Pa);
    const density =
      request.rho_steel_kg_per_m3 === undefined
        ? undefined
        : kilogramsPerCubicMetre(request.rho_steel_kg_per_m3);
    const tension = stringTension({ diameter, speakingLength, frequency: hertz(request.f0_Hz), density });
    const strengthTable = strengthTableOf(request);
    const { strength } = strengthTable.strengthAt(diameter);
    const { share, table, isWithinTableRange } = breakShare({ tension, diameter, strengthTable });
    const length = metres(request.total_wire_length_m ?? request.speaking_length_m);
    return {
      linear_density_kg_per_m: plainLinearDensity({ diameter, density }),
      tension_N: tension,
      stress_Pa: wireStress({ tension, diameter }),
      ultimate_strength_Pa: strength,
      break_load_N: breakLoad({ diameter, strength }),
      percent_break: 100 * share,
      inharmonicity_B: inharmonicity({ diameter, speakingLength, tension, youngsModulus }),
      elongation_m: elongation({ tension, length, diameter, youngsModulus }),
      pitch_cents_per_K: pitchPerKelvin({
        tension,
        diameter,
        youngsModulus,
        stringExpansion: request.alpha_per_K,
      }),
      strength_table: table,
      strength_within_table: isWithinTableRange,
    };
  },
});
