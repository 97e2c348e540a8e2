import type { PaperFonts } from './fonts.ts';

/** What type-setting asks of the machine that it runs on. */
export interface PaperMeans {
  /** The bytes of the faces to set a paper in. */
  fonts(): Promise<PaperFonts>;
  /**
   * A picture as a JPEG whose longer side is at most so many pixels, on white where it is transparent; quality from 1 to
   * 100. May fail: then the picture is printed as it is.
   */
  smallerJpeg(picture: Uint8Array, wanted: SmallerJpeg): Promise<Uint8Array>;
}

export interface SmallerJpeg {
  readonly longerSide_px: number;
  readonly quality: number;
}
