/**
 * Width and height of a JPEG in pixels, from the head of its frame; undefined when the bytes are no JPEG that can be set
 * in a PDF, which takes baseline and progressive frames of 1, 3 or 4 components of 8 bits.
 *
 * Source: ITU-T T.81 (1992), annexes B.1.1 and B.2.2; ISO 32000-1 (2008), 7.4.8.
 */
export function jpegSize(bytes: Uint8Array): { width: number; height: number } | undefined {
  if (bytes[0] !== 0xff || bytes[1] !== 0xd8) return undefined;
  const wordAt = (at: number): number => ((bytes[at] ?? 0) << 8) | (bytes[at + 1] ?? 0);
  for (let at = 2; at + 9 < bytes.length; ) {
    if (bytes[at] !== 0xff) return undefined;
    const marker = bytes[at + 1]!;
    // A marker may be preceded by any number of fill bytes.
    if (marker === 0xff) {
      at += 1;
      continue;
    }
    if (marker === 0xc0 || marker === 0xc1 || marker === 0xc2) {
      const [height, width] = [wordAt(at + 5), wordAt(at + 7)];
      const isSettable = bytes[at + 4] === 8 && [1, 3, 4].includes(bytes[at + 9]!);
      return isSettable && width > 0 && height > 0 ? { width, height } : undefined;
    }
    // The picture itself, and no frame was seen.
    if (marker === 0xda || marker === 0xd9) return undefined;
    at += 2 + wordAt(at + 2);
  }
  return undefined;
}
