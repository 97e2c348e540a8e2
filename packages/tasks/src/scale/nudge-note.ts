import { COMMON_WINDING_WIRES, latticeDiameters, type Metres } from '@becket/core';
import type { ProposedNote } from '@becket/journal';
import { type WireLatticeName, wireLattices } from '../infer-wire-sizes.ts';

/** Which wire of a note is changed: the plain wire, the core, or the outermost winding. */
export type NudgedWire = 'plain' | 'core' | 'winding';

/**
 * A note with one wire a size thicker or thinner, by hand. A wire between two sizes goes to the next of them.
 * @returns undefined where there is no such wire or no further size
 */
export function nudgedNote(
  note: ProposedNote,
  { wire, by, wires }: { readonly wire: NudgedWire; readonly by: 1 | -1; readonly wires: WireLatticeName },
): ProposedNote | undefined {
  const steel = latticeDiameters(wireLattices[wires]);
  if (note.winding === 'plain') {
    const gauge_m = wire === 'plain' ? nextSize(steel, note.gauge_m, by) : undefined;
    return gauge_m === undefined ? undefined : { ...note, gauge_m, from: 'by hand' };
  }
  if (wire === 'core') {
    const core_m = nextSize(steel, note.core_m, by);
    return core_m === undefined ? undefined : { ...note, core_m, from: 'by hand' };
  }
  if (wire !== 'winding') return undefined;
  const outer = note.layers.at(-1)!;
  const wire_m = nextSize(COMMON_WINDING_WIRES, outer.wire_m, by);
  if (wire_m === undefined) return undefined;
  return { ...note, layers: [...note.layers.slice(0, -1), { ...outer, wire_m }], from: 'by hand' };
}

/** Nearer than this to a size is that size: rounding of inches and back. */
const SAME_M = 1e-7;

function nextSize(sizes: readonly Metres[], diameter_m: number, by: 1 | -1): number | undefined {
  const inOrder = [...sizes].sort((a, b) => a - b);
  return by === 1
    ? inOrder.find((size) => size > diameter_m + SAME_M)
    : inOrder.findLast((size) => size < diameter_m - SAME_M);
}
