import { bearingForce, bearingForceFromRise, metres, newtons, radians } from '@becket/core';
import * as z from 'zod';
import { computeKind, figure, positive } from './compute-kind.ts';

const answer = z.object({ force_N: figure('force on the bridge, at right angles to the string') });

export const downbearingAngle = computeKind({
  kind: 'downbearing_angle',
  summary: 'Force with which a string bears on the bridge, from the angle that deflects it.',
  notes: [
    'force_N = T·sin θ, with θ the whole deflection, −π/2 to π/2; below zero where the string lifts off.',
  ],
  request: z.object({
    kind: z.literal('downbearing_angle'),
    tension_N: positive('tension'),
    deflection_rad: z.number().describe('θ, the whole angle out of a straight line'),
  }),
  answer,
  example: { kind: 'downbearing_angle', tension_N: 700, deflection_rad: 0.0174532925 },
  compute: (request) => ({
    force_N: bearingForce({
      tension: newtons(request.tension_N),
      deflection: radians(request.deflection_rad),
    }),
  }),
});

export const downbearingRise = computeKind({
  kind: 'downbearing_rise',
  summary: 'Force with which a string bears on the bridge, from its rise over two spans.',
  notes: [
    'force_N = T·(h/√(h² + a²) + h/√(h² + b²)), h the rise of the bridge over the line between the supports at distances a and b.',
  ],
  request: z.object({
    kind: z.literal('downbearing_rise'),
    tension_N: positive('tension'),
    rise_m: z.number().describe('h, below zero where the string would not touch'),
    span_front_m: positive('a, front termination to bridge'),
    span_back_m: positive('b, bridge to the support behind'),
  }),
  answer,
  example: { kind: 'downbearing_rise', tension_N: 700, rise_m: 0.001, span_front_m: 0.6, span_back_m: 0.06 },
  compute: (request) => ({
    force_N: bearingForceFromRise({
      tension: newtons(request.tension_N),
      rise: metres(request.rise_m),
      spanFront: metres(request.span_front_m),
      spanBack: metres(request.span_back_m),
    }),
  }),
});
