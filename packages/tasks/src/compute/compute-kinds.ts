import type { ComputeKind } from './compute-kind.ts';
import { downbearingAngle, downbearingRise } from './downbearing.ts';
import { gaugeInference } from './gauge-inference.ts';
import { modes } from './modes.ts';
import { octave } from './octave.ts';
import { pinTorque } from './pin-torque.ts';
import { plain } from './plain.ts';
import { rescalePlain } from './rescale-plain.ts';
import { scale } from './scale.ts';
import { wound } from './wound.ts';

/** Every kind of calculation a line can ask for, in the order of the reference page. */
export const computeKinds: readonly ComputeKind[] = [
  plain,
  wound,
  modes,
  scale,
  downbearingAngle,
  downbearingRise,
  pinTorque,
  octave,
  rescalePlain,
  gaugeInference,
];
