import { jpegSize } from './jpeg-size.ts';

/**
 * The longer side of a photo as it is printed [pixel]: 300 dots to the inch of the widest picture there is, three of them
 * across a Letter page on its side.
 */
export const printedSide_px = 1050;
/** JPEG quality, 1 to 100. */
const printedQuality = 80;

/**
 * A photo as a JPEG with as many pixels as paper shows, so that a paper of many photos can still be sent by mail. For
 * Node; a JPEG that is small enough comes back as it was, and so does everything that cannot be read, and everything where
 * the picture library is not to be had.
 */
export async function printSizedOnNode(bytes: Uint8Array): Promise<Uint8Array> {
  const size = jpegSize(bytes);
  if (size !== undefined && Math.max(size.width, size.height) <= printedSide_px) return bytes;
  try {
    const { default: sharp } = await import('sharp');
    return await sharp(bytes)
      .resize({ width: printedSide_px, height: printedSide_px, fit: 'inside', withoutEnlargement: true })
      // Paper is white where a picture is not there.
      .flatten({ background: '#fff' })
      .jpeg({ quality: printedQuality })
      .toBuffer();
  } catch {
    return bytes;
  }
}
