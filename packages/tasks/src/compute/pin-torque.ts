import { inInchPounds, inNewtonMetres, metres, newtons, pullOnPin } from '@becket/core';
import * as z from 'zod';
import { computeKind, figure, positive } from './compute-kind.ts';

export const pinTorque = computeKind({
  kind: 'pin_torque',
  summary: 'Turning moment with which a string pulls on its tuning pin.',
  notes: ['torque = T·(D/2 + d/2): the arm reaches to the middle of the wire.'],
  request: z.object({
    kind: z.literal('pin_torque'),
    tension_N: positive('tension in the front length'),
    pin_diameter_m: positive('D, diameter of the pin'),
    wire_diameter_m: positive('d, diameter of the wire, or of the core'),
  }),
  answer: z.object({
    torque_N_m: figure('in newton metres'),
    torque_lbf_in: figure('in pound-force inches'),
  }),
  example: { kind: 'pin_torque', tension_N: 700, pin_diameter_m: 0.0071628, wire_diameter_m: 0.001 },
  compute: (request) => {
    const torque = pullOnPin({
      tension: newtons(request.tension_N),
      pinDiameter: metres(request.pin_diameter_m),
      wireDiameter: metres(request.wire_diameter_m),
    });
    return { torque_N_m: inNewtonMetres(torque), torque_lbf_in: inInchPounds(torque) };
  },
});
