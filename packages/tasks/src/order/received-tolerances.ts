import { message } from '@becket/core';
import type { ReceivedQuantity } from '@becket/journal';

/** By how much a string may differ from its order before somebody has to look: plain data, for the shop to change. */
export interface ReceivedTolerances {
  readonly source: string;
  readonly tolerance_m: Readonly<Record<Exclude<ReceivedQuantity, 'hitch-loop-diameter'>, number>>;
}

/** A micrometer on a core, callipers over a winding, a rule along it. Common practice, no source. */
export const STARTING_RECEIVED_TOLERANCES: ReceivedTolerances = {
  source: message('common practice, no source'),
  tolerance_m: {
    'core-diameter': 0.00001,
    'inner-layer-diameter': 0.00004,
    'over-all-diameter': 0.00005,
    'winding-length': 0.003,
    'loop-to-winding': 0.003,
  },
};
