import { english, type Language } from '@becket/core';
import type { FactOf } from '../facts/index.ts';

export type PhotoMediaType = FactOf<'photo'>['mediaType'];

/** How the file of a photo ends, by its type. */
export const photoFileEndings: Readonly<Record<PhotoMediaType, string>> = {
  'image/jpeg': 'jpg',
  'image/png': 'png',
  'image/webp': 'webp',
};

/**
 * What kind of picture the bytes begin like; undefined when it is none that a job keeps. What a name or a header says
 * of them is not asked.
 *
 * Source: WHATWG, "MIME Sniffing", section 6.1 (image type patterns).
 * @example  photoTypeOf(new Uint8Array([0xff, 0xd8, 0xff, 0xe0]))  // = image/jpeg
 */
export function photoTypeOf(bytes: Uint8Array): PhotoMediaType | undefined {
  const text = String.fromCharCode(...bytes.subarray(0, 14));
  if (text.startsWith('\xff\xd8\xff')) return 'image/jpeg';
  if (text.startsWith('\x89PNG\r\n\x1a\n')) return 'image/png';
  if (text.startsWith('RIFF') && text.startsWith('WEBPVP', 8)) return 'image/webp';
  return undefined;
}

/** What a segment of a JPEG that is no picture may carry: who, where, when, with what. */
const tellingMarkers: Readonly<Record<number, string>> = { 254: 'comment', 225: 'EXIF or XMP', 237: 'IPTC' };

interface Segment {
  readonly marker: number;
  readonly start: number;
  readonly end: number;
}

/**
 * The segments of a JPEG before its picture, each with its marker and where it stands; the rest is the picture.
 * Throws: SyntaxError when the bytes are no JPEG or end before the picture.
 * Source: ITU-T T.81 (1992), annex B.1.1.
 */
function segmentsBeforePicture(bytes: Uint8Array, language: Language): Segment[] {
  const segments: Segment[] = [];
  if (photoTypeOf(bytes) !== 'image/jpeg') throw notAWholeJpeg('another kind', language);
  for (let at = 2; ; ) {
    const marker = bytes[at + 1];
    if (bytes[at] !== 0xff || marker === undefined) throw notAWholeJpeg('damaged', language);
    // A marker may be preceded by any number of fill bytes.
    if (marker === 0xff) {
      at += 1;
      continue;
    }
    // Start of scan: from here on it is picture.
    if (marker === 0xda) return segments;
    const length = ((bytes[at + 2] ?? 0) << 8) | (bytes[at + 3] ?? 0);
    if (length < 2 || at + 2 + length > bytes.length) throw notAWholeJpeg('damaged', language);
    segments.push({ marker, start: at, end: at + 2 + length });
    at += 2 + length;
  }
}

/**
 * The names of what a JPEG tells beside its picture (EXIF with its position and time, XMP, IPTC, comments); an empty
 * list when it tells nothing. Throws SyntaxError when the bytes are no whole JPEG.
 */
export function tellingParts(jpeg: Uint8Array): string[] {
  return segmentsBeforePicture(jpeg, english).flatMap(({ marker }) => tellingMarkers[marker] ?? []);
}

/**
 * The JPEG without anything but its picture and what is needed to show it: EXIF, XMP, IPTC, makers' segments and
 * comments are left out, and so is whatever stands after the end of the picture. Its pixels are the same.
 * Throws SyntaxError when the bytes are no whole JPEG.
 */
export function withoutTellingParts(jpeg: Uint8Array, language: Language = english): Uint8Array {
  const segments = segmentsBeforePicture(jpeg, language);
  // Kept of the application segments: JFIF (0), the colour profile (2) and Adobe's colour transform (14).
  const isKept = ({ marker }: Segment) =>
    marker !== 0xfe && (marker < 0xe0 || marker > 0xef || [0xe0, 0xe2, 0xee].includes(marker));
  const pictureStart = segments.at(-1)?.end ?? 2;
  const parts = [
    jpeg.subarray(0, 2),
    ...segments.filter(isKept).map(({ start, end }) => jpeg.subarray(start, end)),
    jpeg.subarray(pictureStart, endOfPicture(jpeg, pictureStart, language)),
  ];
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** Position after the end-of-image marker. Inside the picture a byte ff is always followed by 00 or another marker. */
function endOfPicture(jpeg: Uint8Array, from: number, language: Language): number {
  for (let at = from; at + 1 < jpeg.length; at += 1) {
    if (jpeg[at] === 0xff && jpeg[at + 1] === 0xd9) return at + 2;
  }
  throw notAWholeJpeg('damaged', language);
}

function notAWholeJpeg(found: 'another kind' | 'damaged', { say }: Language): SyntaxError {
  return new SyntaxError(
    found === 'damaged'
      ? say(
          'Cannot read this photo: a whole JPEG is needed, one that is damaged or cut off was found. Take the photo again.',
        )
      : say(
          'Cannot read this photo: a whole JPEG is needed, bytes of another kind were found. Take the photo again.',
        ),
  );
}
