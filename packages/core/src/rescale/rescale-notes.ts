import type { ScaleLimits, ScaleNote } from '../scale/index.ts';
import { stringTension, woundStringTension } from '../strings/index.ts';
import { newtons, requireNotNegative, requireWithin } from '../units/index.ts';
import type { RescaleNote, WindingEnds } from './whole-scale-problem.ts';

export interface RescaleNotesOptions {
  /** Limits of break share, as the shop has set them. */
  readonly limits: Pick<ScaleLimits, 'highestBreakShare' | 'lowestBreakSharePlain' | 'lowestBreakShareWound'>;
  /** How far tension may fall below, and rise above, what was found, as shares: 0.13 is 13 %. */
  readonly tensionDown: number;
  readonly tensionUp: number;
  /** By how many notes the break may move, down or up. */
  readonly breakMayMove: number;
}

/**
 * The notes of a scale that was found, ready to be chosen anew: limits round what is there.
 *
 * A plain note that may become wound takes its bare ends from the wound notes of its bridge, the nearest by key, as bridge and
 * agraffes lie alike there (common practice, no source); where its bridge has none, nothing is known and wound strings are not
 * offered. A note may have as many layers as it was found with.
 *
 * @param notes    each key at most once, in any order
 * @param options  limits, the range of tension, how far the break may move
 * @returns bass to treble
 *
 * Throws: RangeError when an option is out of range.
 * @example  rescaleNotes([{ key: 49, section: 'treble', bridge: 'long', strings: 3, frequency: hertz(440), string: { kind: 'plain', speakingLength: millimetres(400), diameter: millimetres(1) } }], { limits: COMMON_SHOP_POLICY.limits, tensionDown: 0.1, tensionUp: 0.1, breakMayMove: 0 })[0].highestTension  // ≈ 840.3 N
 */
export function rescaleNotes(notes: readonly ScaleNote[], options: RescaleNotesOptions): RescaleNote[] {
  const task = 'the notes of a scale to be chosen anew';
  const { limits, breakMayMove } = options;
  const down = requireWithin(options.tensionDown, 0, 0.9, 'how far tension may fall', task);
  const up = requireNotNegative(options.tensionUp, 'how far tension may rise', task);
  requireNotNegative(breakMayMove, 'how far the break may move', task);
  const inOrder = [...notes].sort((a, b) => a.key - b.key);
  const firstPlain = inOrder.find(({ string }) => string.kind === 'plain')?.key ?? Number.POSITIVE_INFINITY;
  const lastWound =
    inOrder.findLast(({ string }) => string.kind === 'wound')?.key ?? Number.NEGATIVE_INFINITY;
  return inOrder.map((asFound): RescaleNote => {
    const { key, string, frequency } = asFound;
    const tension =
      string.kind === 'wound'
        ? woundStringTension(string, frequency)
        : stringTension({
            diameter: string.diameter,
            speakingLength: string.speakingLength,
            frequency,
            density: string.steelDensity,
          });
    const isPlain = string.kind === 'plain';
    const windingEnds = string.kind === 'wound' ? string.layers : endsBeside(inOrder, asFound);
    return {
      asFound,
      lowestTension: newtons(tension * (1 - down)),
      highestTension: newtons(tension * (1 + up)),
      lowestBreakShare: (isPlain ? limits.lowestBreakSharePlain : limits.lowestBreakShareWound).value,
      highestBreakShare: limits.highestBreakShare.value,
      mayBePlain: isPlain || key >= firstPlain - breakMayMove,
      mayBeWound: !isPlain || key <= lastWound + breakMayMove,
      windingEnds: windingEnds.map(({ bareFront, bareBack }) => ({ bareFront, bareBack })),
    };
  });
}

/** Bare ends of the nearest wound note on the same bridge, of its innermost layer; none where it has none. */
function endsBeside(notes: readonly ScaleNote[], note: ScaleNote): WindingEnds[] {
  let nearest: { distance: number; ends: WindingEnds } | undefined;
  for (const { key, bridge, string } of notes) {
    if (string.kind !== 'wound' || bridge !== note.bridge || string.layers[0] === undefined) continue;
    const distance = Math.abs(key - note.key);
    if (nearest === undefined || distance < nearest.distance) nearest = { distance, ends: string.layers[0] };
  }
  return nearest === undefined ? [] : [nearest.ends];
}
