import {
  bestPlainGauges,
  handbookStrengthLaw,
  hertz,
  kilogramsPerCubicMetre,
  metres,
  newtons,
  pascals,
  SHIGLEY_A228_LAW,
  type WireStrengthTable,
} from '@becket/core';
import * as z from 'zod';
import { computeKind, figure, notNegative, positive } from './compute-kind.ts';
import { steelParameters, strengthParameters } from './wire-parameters.ts';

/** A limit for the whole run, or one for each note. */
const limit = (what: string) =>
  z.union([z.number(), z.array(z.number()).min(1)]).describe(`${what}; one for all notes, or one for each`);

export const rescalePlain = computeKind({
  kind: 'rescale_plain',
  summary: 'The best plain sizes of a run of notes under hard limits, exactly.',
  notes: [
    'Minimises Σ (second differences of ln T)² + λ · (number of size changes) + μ · Σ (ln(T / target))², with diameters that never grow towards the treble. T = π·ρ·(d·L·f)².',
    'choice_index counts in diameters_m as given, from 0. When nothing fits, feasible is false and reason says which limits clash at which note.',
    "Strength is Shigley's law (A = 2211 MPa·mm^m, m = 0.145) and the density 7850 kg/m³ unless given.",
  ],
  request: z.object({
    kind: z.literal('rescale_plain'),
    speaking_lengths_m: z.array(positive('speaking length')).min(1).max(1000).describe('one for each note'),
    freqs_Hz: z
      .array(positive('first mode of the flexible string'))
      .min(1)
      .max(1000)
      .describe('one for each note'),
    diameters_m: z
      .array(positive('diameter'))
      .min(1)
      .max(200)
      .describe('the sizes to choose from, in any order'),
    tension_lo_N: limit('lowest tension'),
    tension_hi_N: limit('highest tension'),
    percent_break_lo: limit('lowest tension as per cent of the break load'),
    percent_break_hi: limit('highest tension as per cent of the break load'),
    target_tensions_N: z
      .union([positive('target'), z.array(positive('target').nullable())])
      .nullish()
      .describe('tension that each note should stay near; null where none is wanted'),
    lambda_size_change: notNegative('λ, what one size change costs').default(0),
    mu_target: notNegative('μ, the weight of the distance from the targets').default(0),
    minimum_run: z.int().min(1).max(1000).describe('fewest notes that one size serves in a row').default(1),
    order: z
      .enum(['bass to treble', 'treble to bass'])
      .describe('order of the notes')
      .default('bass to treble'),
    rho_steel_kg_per_m3: steelParameters.rho_steel_kg_per_m3,
    ...strengthParameters,
  }),
  answer: z.object({
    objective: figure('the sum that was minimised').nullable(),
    choice_index: z
      .array(z.int())
      .nullable()
      .describe('index into diameters_m for each note, in the order of the request'),
    tensions_N: z.array(figure('tension')).nullable(),
    size_changes: z.int().nullable(),
    feasible: z.boolean(),
    reason: z.string().optional().describe('which limits clash, where nothing fits'),
  }),
  example: {
    kind: 'rescale_plain',
    speaking_lengths_m: [0.4, 0.378, 0.357, 0.337],
    freqs_Hz: [440, 466.1637615, 493.8833013, 523.2511306],
    diameters_m: [0.0009144, 0.0009398, 0.0009652, 0.0009906],
    tension_lo_N: 500,
    tension_hi_N: 900,
    percent_break_lo: 30,
    percent_break_hi: 65,
    target_tensions_N: [700, 700, 700, 700],
    lambda_size_change: 0.0005,
    mu_target: 0.02,
    order: 'bass to treble',
  },
  compute: (request) => {
    const count = request.speaking_lengths_m.length;
    const perNote = <T>(name: string, given: T | readonly T[]): readonly T[] => {
      if (!Array.isArray(given)) return Array.from({ length: count }, () => given as T);
      if (given.length !== count) {
        throw new RangeError(
          `Cannot rescale as ${name} must have one value for each of the ${count} notes: found ${given.length}`,
        );
      }
      return given;
    };
    const frequencies = perNote('freqs_Hz', request.freqs_Hz);
    const lowest = perNote('tension_lo_N', request.tension_lo_N);
    const highest = perNote('tension_hi_N', request.tension_hi_N);
    const lowestShare = perNote('percent_break_lo', request.percent_break_lo);
    const highestShare = perNote('percent_break_hi', request.percent_break_hi);
    const targets = perNote<number | null>('target_tensions_N', request.target_tensions_N ?? null);
    const inOrder = <T>(values: readonly T[]): T[] =>
      request.order === 'treble to bass' ? [...values].reverse() : [...values];
    const strength = strengthOf(request);
    const answer = bestPlainGauges({
      notes: inOrder(
        request.speaking_lengths_m.map((speakingLength, note) => {
          const target = targets[note];
          return {
            speakingLength: metres(speakingLength),
            frequency: hertz(frequencies[note]!),
            targetTension: target === null || target === undefined ? undefined : newtons(target),
            lowestTension: newtons(lowest[note]!),
            highestTension: newtons(highest[note]!),
            lowestBreakShare: lowestShare[note]! / 100,
            highestBreakShare: highestShare[note]! / 100,
          };
        }),
      ),
      diameters: request.diameters_m.map(metres),
      strengthAt: (diameter) => strength.strengthAt(diameter).strength,
      density: kilogramsPerCubicMetre(request.rho_steel_kg_per_m3 ?? 7850),
      sizeChangeWeight: request.lambda_size_change,
      targetWeight: request.mu_target,
      minimumRun: request.minimum_run,
    });
    if (!answer.feasible) {
      return {
        objective: null,
        choice_index: null,
        tensions_N: null,
        size_changes: null,
        feasible: false,
        reason: answer.reason,
      };
    }
    return {
      objective: answer.objective,
      choice_index: inOrder(answer.choices),
      tensions_N: inOrder(answer.tensions),
      size_changes: answer.sizeChanges,
      feasible: true,
    };
  },
});

/** The law of the request; Shigley's without one, with no end to its range, since the sizes are the user's own. */
function strengthOf({
  sut_A_MPa_mm_m,
  sut_m,
}: {
  sut_A_MPa_mm_m?: number | undefined;
  sut_m?: number | undefined;
}): WireStrengthTable {
  if ((sut_A_MPa_mm_m === undefined) !== (sut_m === undefined)) {
    throw new RangeError(
      'Cannot use a strength law as both sut_A_MPa_mm_m and sut_m are needed: found only one of them',
    );
  }
  return handbookStrengthLaw({
    strengthAtOneMillimetre: pascals((sut_A_MPa_mm_m ?? 2211) * 1e6),
    exponent: sut_m ?? 0.145,
    source: sut_m === undefined ? SHIGLEY_A228_LAW.source : 'given with the request',
    smallestDiameter: metres(Number.MIN_VALUE),
    largestDiameter: metres(Number.MAX_VALUE),
  });
}
