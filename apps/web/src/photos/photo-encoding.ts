import { english, type Language } from '@becket/core';
/** A photo as it is kept: a JPEG made anew on this device from the pixels alone. */
export interface EncodedPhoto {
  readonly jpeg: Uint8Array;
  readonly width: number;
  readonly height: number;
}

/** The longer side of a photo as it is kept [pixel]. */
export const longestSide_px = 2560;
/** JPEG quality, 0 to 1. */
export const jpegQuality = 0.85;
/** Larger files are not opened: unpacked, such a picture takes more memory than a tablet has. */
export const largestPicture_bytes = 80_000_000;

/**
 * The size at which a picture is kept: as it is, or made smaller so that its longer side is `longestSide_px`.
 * @example  keptSize({ width: 6000, height: 4000 })  // = { width: 2560, height: 1707 }
 */
export function keptSize({ width, height }: { width: number; height: number }): {
  width: number;
  height: number;
} {
  const scale = Math.min(1, longestSide_px / Math.max(width, height));
  return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) };
}

/**
 * Unpacks a picture, makes it smaller and packs it anew, so that nothing of the file but its pixels is left: turned as
 * its camera says, on white where it is transparent. Runs in a worker, or in the page where a browser has no canvas there.
 * Throws: RangeError with one sentence when the browser cannot read the picture.
 */
export async function encodePhoto(
  file: Blob & { readonly name?: string },
  language: Language = english,
): Promise<EncodedPhoto> {
  const { say } = language;
  const name = file.name ?? say('the picture');
  if (file.size > largestPicture_bytes) {
    throw new RangeError(
      say(
        "Cannot take '{name}': a picture of at most {most} MB is needed, {found} MB were found. Take it with a lower resolution.",
        { name, most: language.plain(largestPicture_bytes / 1e6), found: language.fixed(file.size / 1e6, 0) },
      ),
    );
  }
  let picture: ImageBitmap;
  try {
    picture = await createImageBitmap(file, { imageOrientation: 'from-image' });
  } catch (cause) {
    throw new RangeError(
      say(
        "Cannot take '{name}': a picture that this browser can show is needed, such as a JPEG or PNG; this one is of another kind, damaged or cut off. Save it as a JPEG, or take it again.",
        { name },
      ),
      { cause },
    );
  }
  const size = keptSize(picture);
  const canvas = newCanvas(size);
  const drawing = canvas.getContext('2d') as
    | CanvasRenderingContext2D
    | OffscreenCanvasRenderingContext2D
    | null;
  if (drawing === null)
    throw new RangeError(
      say("Cannot take '{name}': this browser has no memory left. Close other tabs and try again.", { name }),
    );
  drawing.imageSmoothingQuality = 'high';
  drawing.fillStyle = '#fff';
  drawing.fillRect(0, 0, size.width, size.height);
  drawing.drawImage(picture, 0, 0, size.width, size.height);
  picture.close();
  const jpeg = new Uint8Array(await (await jpegOf(canvas, say)).arrayBuffer());
  return { jpeg, ...size };
}

function newCanvas({
  width,
  height,
}: {
  width: number;
  height: number;
}): OffscreenCanvas | HTMLCanvasElement {
  if (typeof OffscreenCanvas !== 'undefined') return new OffscreenCanvas(width, height);
  return Object.assign(document.createElement('canvas'), { width, height });
}

async function jpegOf(canvas: OffscreenCanvas | HTMLCanvasElement, say: Language['say']): Promise<Blob> {
  const options = { type: 'image/jpeg', quality: jpegQuality };
  const packed =
    'convertToBlob' in canvas
      ? await canvas.convertToBlob(options)
      : await new Promise<Blob | null>((done) => canvas.toBlob(done, options.type, options.quality));
  if (packed === null || packed.type !== options.type)
    throw new RangeError(
      say('Cannot take this picture: this browser cannot write a JPEG. Use another browser on this device.'),
    );
  return packed;
}
