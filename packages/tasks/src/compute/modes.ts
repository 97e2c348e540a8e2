import {
  fitInharmonicityByLine,
  type Hertz,
  kilogramsPerMetre,
  metres,
  newtonSquareMetres,
  newtons,
  steppedStringModes,
} from '@becket/core';
import * as z from 'zod';
import { computeKind, notNegative, positive } from './compute-kind.ts';

/** B by a line, or null where the line through (f_n/n)² does not cut the axis above zero and no B exists. */
function fittedB(frequencies: readonly Hertz[], partials: number): number | null {
  try {
    return fitInharmonicityByLine(frequencies, partials).inharmonicity;
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}

export const modes = computeKind({
  kind: 'modes',
  summary: 'The first 16 modes of a string of several stretches.',
  notes: [
    'Segments run front to back; the ends are both pinned or both clamped. An EI_N_m2 of 0 is a stretch that does not resist bending.',
    'A B_fit is null where the modes do not follow f_n = n·f·√(1 + B·n²) even roughly: least squares of (f_n/n)² on n² then has no positive intercept.',
  ],
  request: z.object({
    kind: z.literal('modes'),
    segments: z
      .array(
        z.object({
          length_m: positive('length of the stretch'),
          mu_kg_per_m: positive('its mass per length'),
          EI_N_m2: notNegative('its flexural rigidity'),
        }),
      )
      .min(1)
      .max(1000)
      .describe('stretches, front to back'),
    tension_N: positive('tension'),
    ends: z.enum(['pinned', 'clamped']).describe('how both ends are held'),
  }),
  answer: z.object({
    frequencies_Hz: z.array(z.number()).length(16).describe('modes 1 to 16'),
    B_fit8_linear: z.number().nullable().describe('fitted over modes 1 to 8'),
    B_fit16_linear: z.number().nullable().describe('fitted over modes 1 to 16'),
  }),
  example: {
    kind: 'modes',
    segments: [
      { length_m: 0.02, mu_kg_per_m: 0.00746, EI_N_m2: 0.0145 },
      { length_m: 1.28, mu_kg_per_m: 0.0384, EI_N_m2: 0.0145 },
    ],
    tension_N: 900,
    ends: 'pinned',
  },
  compute: (request) => {
    const { value: frequencies } = steppedStringModes({
      segments: request.segments.map((segment) => ({
        length: metres(segment.length_m),
        linearDensity: kilogramsPerMetre(segment.mu_kg_per_m),
        flexuralRigidity: newtonSquareMetres(segment.EI_N_m2),
      })),
      tension: newtons(request.tension_N),
      ends: request.ends,
    });
    return {
      frequencies_Hz: frequencies,
      B_fit8_linear: fittedB(frequencies, 8),
      B_fit16_linear: fittedB(frequencies, 16),
    };
  },
});
