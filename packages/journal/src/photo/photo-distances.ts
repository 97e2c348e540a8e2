import type { FactOf } from '../facts/index.ts';

type Photo = Pick<FactOf<'photo'>, 'width' | 'height' | 'marks'>;

/** A length read off a photo. */
export interface PhotoDistance {
  /** Index of the mark among the photo's marks. */
  readonly mark: number;
  readonly length_m: number;
  /** Standard uncertainty from pointing alone [m]; undefined for a length that was measured on the piano. */
  readonly standardUncertainty_m: number | undefined;
  readonly origin: 'measured' | 'inferred from the scale bar';
}

export interface PhotoScale {
  /** Size of a pixel of the photo, as it is kept [m]. */
  readonly metresPerPixel: number;
  readonly distances: readonly PhotoDistance[];
  /**
   * By how much the scale bars differ from each other, (largest − smallest) / mean of their pixel sizes; undefined with
   * one bar. More than a few per cent: the bars do not lie in one plane that faces the camera.
   */
  readonly disagreement: number | undefined;
}

/** How well a point on a photo can be pointed at: 0.2 % of the longer side, about a finger's edge on a tablet. From memory. */
export const pointingShare = 0.002;

/**
 * The lengths marked on a photo, by its scale bars: the marks whose length was measured on the piano.
 *
 *     s = Σ known / Σ p_known,   L = s · p,   u(L)/L = √(2)·u_p·√(1/p² + 1/(Σ p_known)²·m)
 *
 *     p        length of a mark on the photo [pixel]; s: metres per pixel; m: number of scale bars
 *     u_p      uncertainty of one end point: `pointingShare` of the longer side [pixel]
 *
 * @returns undefined without a scale bar: then nothing on the photo has a length.
 * Holds for: marks and bars in one plane that faces the camera. A part that lies nearer or slants is off by more than
 * the stated uncertainty, which covers pointing alone.
 * Error: two digits deserve to be printed.
 * Source: similarity of figures in a central projection; first-order propagation, JCGM 100:2008, section 5.1.2.
 * @example  photoScale({ width: 1000, height: 500, marks: [] })  // = undefined
 */
export function photoScale({ width, height, marks }: Photo): PhotoScale | undefined {
  const lengths = marks.flatMap((mark, index) => {
    if (mark.mark !== 'distance') return [];
    const pixels = Math.hypot((mark.to.x - mark.from.x) * width, (mark.to.y - mark.from.y) * height);
    return pixels > 0 ? [{ index, pixels, known_m: mark.known_m }] : [];
  });
  const bars = lengths.flatMap(({ pixels, known_m }) => (known_m === undefined ? [] : [{ pixels, known_m }]));
  if (bars.length === 0) return undefined;
  const barPixels = bars.reduce((sum, { pixels }) => sum + pixels, 0);
  const metresPerPixel = bars.reduce((sum, { known_m }) => sum + known_m, 0) / barPixels;
  const pointing = pointingShare * Math.max(width, height);
  const sizes = bars.map(({ pixels, known_m }) => known_m / pixels);
  return {
    metresPerPixel,
    disagreement: sizes.length < 2 ? undefined : (Math.max(...sizes) - Math.min(...sizes)) / metresPerPixel,
    distances: lengths.map(({ index, pixels, known_m }) => {
      if (known_m !== undefined)
        return { mark: index, length_m: known_m, standardUncertainty_m: undefined, origin: 'measured' };
      const length_m = metresPerPixel * pixels;
      const relative = Math.SQRT2 * pointing * Math.sqrt(1 / pixels ** 2 + bars.length / barPixels ** 2);
      return {
        mark: index,
        length_m,
        standardUncertainty_m: length_m * relative,
        origin: 'inferred from the scale bar',
      };
    }),
  };
}
