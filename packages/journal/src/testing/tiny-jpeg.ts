/** A grey JPEG of 2 × 2 pixels that tells nothing beside its picture. */
export const tinyJpeg: Uint8Array = fromHex(`
  ffd8ffe000104a46494600010100000100010000ffe201d84943435f50524f46494c45000101000001c8000000000430
  00006d6e74725247422058595a2007e00001000100000000000061637370000000000000000000000000000000000000
  000000000000000000010000f6d6000100000000d32d0000000000000000000000000000000000000000000000000000
  000000000000000000000000000000000000000000000000000964657363000000f0000000247258595a000001140000
  00146758595a00000128000000146258595a0000013c0000001477747074000001500000001472545243000001640000
  0028675452430000016400000028625452430000016400000028637072740000018c0000003c6d6c7563000000000000
  00010000000c656e5553000000080000001c007300520047004258595a200000000000006fa2000038f5000003905859
  5a2000000000000062990000b785000018da58595a2000000000000024a000000f840000b6cf58595a20000000000000
  f6d6000100000000d32d706172610000000000040000000266660000f2a700000d59000013d000000a5b000000000000
  00006d6c756300000000000000010000000c656e5553000000200000001c0047006f006f0067006c006500200049006e
  0063002e00200032003000310036ffdb0043001b12141714111b1716171e1c1b2028422b28252528513a3d3042605565
  645f555d5b6a7899816a7190735b5d85b586909ea3abadab6780bcc9baa6c799a8aba4ffdb0043011c1e1e2823284e2b
  2b4ea46e5d6ea4a4a4a4a4a4a4a4a4a4a4a4a4a4a4a4a4a4a4a4a4a4a4a4a4a4a4a4a4a4a4a4a4a4a4a4a4a4a4a4a4a4
  a4a4a4a4a4a4a4a4ffc00011080002000203012200021101031101ffc400140001000000000000000000000000000000
  00ffc40014100100000000000000000000000000000000ffc40014010100000000000000000000000000000000ffc400
  14110100000000000000000000000000000000ffda000c03010002110311003f00000fffd9
`);

function fromHex(text: string): Uint8Array {
  const digits = text.replace(/\s/g, '');
  return Uint8Array.from({ length: digits.length / 2 }, (_, index) =>
    Number.parseInt(digits.slice(2 * index, 2 * index + 2), 16),
  );
}

/** A JPEG, the tiny one without another, with segments put in after its first marker. */
export function jpegWith(
  segments: readonly { readonly marker: number; readonly content: Uint8Array }[],
  jpeg = tinyJpeg,
): Uint8Array {
  const bytes = [...jpeg.subarray(0, 2)];
  for (const { marker, content } of segments) {
    const length = content.length + 2;
    bytes.push(0xff, marker, length >> 8, length & 0xff, ...content);
  }
  const whole = new Uint8Array(bytes.length + jpeg.length - 2);
  whole.set(bytes);
  whole.set(jpeg.subarray(2), bytes.length);
  return whole;
}

/**
 * An EXIF segment that says where a photo was taken: 52° 31' 12" N.
 * Source of the layout: CIPA DC-008 (Exif 2.3, 2012), sections 4.5.2 and 4.6.6.
 */
export const locatedExif: Uint8Array = Uint8Array.from([
  ...ascii('Exif\0\0II*\0'),
  ...word(8),
  // The first directory: one field, the pointer to the directory of positions.
  ...short(1),
  ...field({ tag: 0x8825, type: 4, count: 1, value: word(26) }),
  ...word(0),
  // The directory of positions: which half of the earth, and degrees, minutes, seconds as three fractions.
  ...short(2),
  ...field({ tag: 1, type: 2, count: 2, value: ascii('N\0\0\0') }),
  ...field({ tag: 2, type: 5, count: 3, value: word(56) }),
  ...word(0),
  ...[52, 1, 31, 1, 12, 1].flatMap(word),
]);

function ascii(text: string): number[] {
  return Array.from(text, (letter) => letter.charCodeAt(0));
}
function short(value: number): number[] {
  return [value & 0xff, value >> 8];
}
function word(value: number): number[] {
  return [...short(value & 0xffff), ...short(value >>> 16)];
}
function field({
  tag,
  type,
  count,
  value,
}: {
  tag: number;
  type: number;
  count: number;
  value: number[];
}): number[] {
  return [...short(tag), ...short(type), ...word(count), ...value];
}
