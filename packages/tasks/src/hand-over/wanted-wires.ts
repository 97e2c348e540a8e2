import { type Metres, metres } from '@becket/core';
import type { Job } from '@becket/journal';
import { type InferredWireSizes, inferredWireSizes } from '../infer-wire-sizes.ts';

/**
 * The plain wire that was to be strung, by key: the size that was chosen; or, where the old size was kept, the one that the
 * readings of the worn wire speak for. A note of which neither is known is left out; empty while no scale is chosen.
 *
 * @param inferred  the sizes of the old wire, where they are at hand already: working them out takes a second
 */
export function wantedWires(job: Job, inferred?: Pick<InferredWireSizes, 'notes'>): Map<number, Metres> {
  if (job.chosenScale === undefined) return new Map();
  const sizes = inferred ?? inferredWireSizes(job);
  const wanted = new Map((sizes?.notes ?? []).map(({ key, diameter }) => [key, diameter]));
  const proposal = job.proposals.find(({ entry }) => entry === job.chosenScale?.scale);
  for (const note of proposal?.notes ?? []) {
    if (note.winding === 'plain' && note.from !== 'as found') wanted.set(note.key, metres(note.gauge_m));
    else if (note.winding === 'wound') wanted.delete(note.key);
  }
  return wanted;
}
