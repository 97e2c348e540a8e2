import { latticeDiameters, type Metres, metres, nearestSize } from '@becket/core';
import { asFoundRecord, asProposedNote, type Job, type ProposedNote } from '@becket/journal';
import { type InferredWireSizes, type WireLatticeName, wireLattices } from '../infer-wire-sizes.ts';

/**
 * The scale as found in whole sizes: each plain note on the size it most probably had, wound strings as they were read.
 *
 * New wire is sold in sizes, and worn wire reads between them. A plain note whose wire nobody read gets the size that its
 * neighbours speak for; one outside the inference, the nearest size.
 */
export function tidiedScale(
  job: Job,
  sizes: InferredWireSizes | undefined,
  wires: WireLatticeName = sizes?.lattice ?? 'US',
): ProposedNote[] {
  const lattice = wireLattices[wires];
  const inferred = new Map((sizes?.notes ?? []).map(({ key, diameter }) => [key, diameter]));
  const thickest = latticeDiameters(lattice).at(-1)!;
  const sizeNear = (diameter: Metres) => nearestSize(lattice, metres(Math.min(diameter, thickest))).diameter;
  return asFoundRecord(job).notes.flatMap(({ key, winding, string, figures, strings }): ProposedNote[] => {
    if (winding === 'wound') return string === undefined ? [] : [asProposedNote(key, string, 'as found')];
    if (figures['speaking-length'] === undefined || strings === undefined) return [];
    const diameter = inferred.get(key) ?? (string?.kind === 'plain' ? string.diameter : undefined);
    if (diameter === undefined) return [];
    return [{ winding: 'plain', key, gauge_m: sizeNear(diameter), from: 'computed' }];
  });
}
