import {
  inches,
  inMillimetres,
  type Metres,
  metres,
  millimetres,
  requireNotNegative,
  requirePositive,
} from '../units/index.ts';
import { english, type Language } from '../words/index.ts';

/** Lengths in which tuning pins are sold. Common practice, from memory. */
export const COMMON_PIN_LENGTHS: readonly { readonly label: string; readonly length_m: number }[] = [
  { label: '2 in', length_m: inches(2) },
  { label: '2⅛ in', length_m: inches(2.125) },
  { label: '2¼ in', length_m: inches(2.25) },
  { label: '2⅜ in', length_m: inches(2.375) },
  { label: '2½ in', length_m: inches(2.5) },
];

/** Air left under the pin, so that it is not driven against the bottom of its hole. Our own figure. */
export const LEAST_GAP_UNDER_PIN: Metres = millimetres(2);

export interface PinLengthFit {
  readonly label: string;
  readonly length: Metres;
  /** How deep the pin sits in the block. */
  readonly depthInBlock: Metres;
  /** What is left under it; below 0 when the hole is too shallow. */
  readonly gapUnder: Metres;
  readonly fits: boolean;
  readonly sentence: string;
}

/**
 * Which pin lengths fit: the part in the block is what is left of the pin under plate and coil.
 *
 *     depth = length − plate − height;   gap = hole − depth ≥ least gap
 *
 * @param holeDepth       of the pin hole in the block [m], > 0
 * @param plateThickness  plate with bushing that the pin passes first [m], ≥ 0
 * @param height          of the pin above the plate, coil and becket included [m], > 0
 * @param language        of the sentences
 *
 * Throws: RangeError when a dimension is outside its range.
 * Source: geometry; lengths are common practice.
 * @example pinLengthFits({ holeDepth: millimetres(35), plateThickness: millimetres(8), height: millimetres(20) }).filter((one) => one.fits).length  // = 4
 */
export function pinLengthFits(
  {
    holeDepth,
    plateThickness,
    height,
    lengths = COMMON_PIN_LENGTHS,
  }: {
    readonly holeDepth: Metres;
    readonly plateThickness: Metres;
    readonly height: Metres;
    readonly lengths?: typeof COMMON_PIN_LENGTHS;
  },
  { say, fixed }: Language = english,
): PinLengthFit[] {
  const task = 'the pin length';
  requirePositive(holeDepth, 'the depth of the hole', task);
  requireNotNegative(plateThickness, 'the thickness of the plate', task);
  requirePositive(height, 'the height of the pin', task);
  return lengths.map(({ label, length_m }) => {
    const depth = length_m - plateThickness - height;
    const gap = holeDepth - depth;
    const fits = depth > 0 && gap >= LEAST_GAP_UNDER_PIN;
    const told = (value: number) => `${fixed(inMillimetres(metres(value)), 1)} mm`;
    return {
      label,
      length: metres(length_m),
      depthInBlock: metres(depth),
      gapUnder: metres(gap),
      fits,
      sentence:
        depth <= 0
          ? say('{size} does not reach the block.', { size: label })
          : fits
            ? say('{size} sits {depth} in the block, {gap} above the bottom of the hole.', {
                size: label,
                depth: told(depth),
                gap: told(gap),
              })
            : say(
                '{size} is too long: it would sit {depth} in a hole of {hole}, and {least} are to be left under it.',
                {
                  size: label,
                  depth: told(depth),
                  hole: told(holeDepth),
                  least: told(LEAST_GAP_UNDER_PIN),
                },
              ),
    };
  });
}
