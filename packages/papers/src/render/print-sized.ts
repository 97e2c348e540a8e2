import { jpegSize } from './jpeg-size.ts';
import type { PaperMeans } from './means.ts';

/**
 * The longer side of a photo as it is printed [pixel]: 300 dots to the inch of the widest picture there is, three of them
 * across a Letter page on its side.
 */
export const printedSide_px = 1050;
/** JPEG quality, 1 to 100. */
const printedQuality = 80;

/**
 * A photo as a JPEG with as many pixels as paper shows, so that a paper of many photos can still be sent by mail. A JPEG
 * that is small enough comes back as it was, and so does everything that cannot be made smaller.
 */
export async function printSized(
  bytes: Uint8Array,
  smallerJpeg: PaperMeans['smallerJpeg'],
): Promise<Uint8Array> {
  const size = jpegSize(bytes);
  if (size !== undefined && Math.max(size.width, size.height) <= printedSide_px) return bytes;
  try {
    return await smallerJpeg(bytes, { longerSide_px: printedSide_px, quality: printedQuality });
  } catch {
    return bytes;
  }
}
