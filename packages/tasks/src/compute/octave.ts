import { matchedWidth } from '@becket/core';
import * as z from 'zod';
import { computeKind, figure, notNegative, positive } from './compute-kind.ts';

const partialNumber = (what: string) => z.int().min(1).max(1000).describe(what);

export const octave = computeKind({
  kind: 'octave',
  summary: 'The upper note of an interval tuned by a pair of partials that coincide.',
  notes: [
    'Both notes are spoken of by their first partial: f_n = n·f·√(1 + B·n²), and f_1 is what is given and answered.',
    'stretch_cents is relative to the pure interval p : q, 1200·log₂(upper / lower) − 1200·log₂(p / q); for an octave, p = 2q, cents beyond 1200.',
  ],
  request: z.object({
    kind: z.literal('octave'),
    lower_first_partial_Hz: positive('first partial of the lower note'),
    B_lower: notNegative('inharmonicity of the lower note'),
    B_upper: notNegative('inharmonicity of the upper note'),
    p_lower: partialNumber('p, the partial of the lower note'),
    q_upper: partialNumber('q, the partial of the upper note that meets it'),
  }),
  answer: z.object({
    upper_first_partial_Hz: figure('first partial of the upper note'),
    stretch_cents: figure('beyond the pure interval p : q'),
  }),
  example: {
    kind: 'octave',
    lower_first_partial_Hz: 220,
    B_lower: 0.0003,
    B_upper: 0.0006,
    p_lower: 4,
    q_upper: 2,
  },
  compute: (request) => {
    const width = matchedWidth({
      lowerInharmonicity: request.B_lower,
      upperInharmonicity: request.B_upper,
      lowerPartial: request.p_lower,
      upperPartial: request.q_upper,
    });
    return {
      upper_first_partial_Hz: request.lower_first_partial_Hz * 2 ** (width / 1200),
      stretch_cents: width - 1200 * Math.log2(request.p_lower / request.q_upper),
    };
  },
});
