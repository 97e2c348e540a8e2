import { inflateSync } from 'fflate';

/** A file in a zip, or why it cannot be had. */
export interface ZippedFile {
  readonly name: string;
  /** Undefined when they are damaged; those that are there when the zip ends in the middle of a file that is not compressed. */
  readonly bytes: Uint8Array | undefined;
  readonly problem: 'cut off' | 'damaged' | 'too large' | 'not readable' | undefined;
}

export interface ReadZip {
  readonly files: readonly ZippedFile[];
  /** False when the list at the end of the zip is not there: it was cut off, and the files before that were found one by one. */
  readonly isWhole: boolean;
}

/** Whether the bytes begin like a zip. */
export const isZip = (bytes: Uint8Array): boolean =>
  bytes[0] === 0x50 && bytes[1] === 0x4b && bytes[2] === 0x03 && bytes[3] === 0x04;

interface Header {
  readonly name: string;
  readonly flags: number;
  readonly method: number;
  readonly crc: number;
  readonly packed: number;
  readonly size: number;
  readonly start: number;
}

/**
 * The files of a zip, whole or cut off, each checked by its CRC-32. Nothing is unpacked beyond `limitOf` bytes of a
 * file, whatever the zip says of itself; files with the limit 0 are left out.
 *
 * Source: PKWARE, APPNOTE.TXT 6.3.10 (2022), sections 4.3.7, 4.3.12, 4.3.16 and 4.4. Zip64 and encryption are not read.
 */
export function readZip(bytes: Uint8Array, limitOf: (name: string) => number): ReadZip {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const listed = headersOfList(bytes, view);
  const headers = listed ?? headersInOrder(bytes, view);
  const files = headers.flatMap((header) => {
    const limit = limitOf(header.name);
    return limit === 0 ? [] : [unpack(bytes, header, limit)];
  });
  return { files, isWhole: listed !== undefined };
}

/** What the list at the end of a zip names; undefined when there is none, or it does not fit the file. */
function headersOfList(bytes: Uint8Array, view: DataView): Header[] | undefined {
  const end = endOfList(bytes, view);
  if (end === undefined) return undefined;
  const headers: Header[] = [];
  let at = view.getUint32(end + 16, true);
  for (let count = view.getUint16(end + 10, true); count > 0; count -= 1) {
    if (at + 46 > bytes.length || view.getUint32(at, true) !== 0x02014b50) return undefined;
    const nameLength = view.getUint16(at + 28, true);
    const local = view.getUint32(at + 42, true);
    if (local + 30 > bytes.length || view.getUint32(local, true) !== 0x04034b50) return undefined;
    headers.push({
      name: textOf(bytes.subarray(at + 46, at + 46 + nameLength)),
      flags: view.getUint16(at + 8, true),
      method: view.getUint16(at + 10, true),
      crc: view.getUint32(at + 16, true),
      packed: view.getUint32(at + 20, true),
      size: view.getUint32(at + 24, true),
      start: local + 30 + view.getUint16(local + 26, true) + view.getUint16(local + 28, true),
    });
    at += 46 + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return headers;
}

/** Where the end record stands: it may be followed by a comment of up to 65535 bytes. */
function endOfList(bytes: Uint8Array, view: DataView): number | undefined {
  const first = Math.max(0, bytes.length - 22 - 0xffff);
  for (let at = bytes.length - 22; at >= first; at -= 1)
    if (view.getUint32(at, true) === 0x06054b50) return at;
  return undefined;
}

/** The files from the front on, as far as each says how long it is. */
function headersInOrder(bytes: Uint8Array, view: DataView): Header[] {
  const headers: Header[] = [];
  for (let at = 0; at + 30 <= bytes.length && view.getUint32(at, true) === 0x04034b50; ) {
    const flags = view.getUint16(at + 6, true);
    const nameLength = view.getUint16(at + 26, true);
    const start = at + 30 + nameLength + view.getUint16(at + 28, true);
    if (start > bytes.length) break;
    const packed = view.getUint32(at + 18, true);
    // Written without knowing the length: it would stand behind the file, where it cannot be found from the front.
    if ((flags & 8) !== 0) break;
    headers.push({
      name: textOf(bytes.subarray(at + 30, at + 30 + nameLength)),
      flags,
      method: view.getUint16(at + 8, true),
      crc: view.getUint32(at + 14, true),
      packed,
      size: view.getUint32(at + 22, true),
      start,
    });
    at = start + packed;
  }
  return headers;
}

const textOf = (bytes: Uint8Array): string => new TextDecoder().decode(bytes);

function unpack(
  bytes: Uint8Array,
  { name, flags, method, crc, packed, size, start }: Header,
  limit: number,
): ZippedFile {
  const cannot = (problem: ZippedFile['problem']): ZippedFile => ({ name, bytes: undefined, problem });
  if ((flags & 1) !== 0 || (method !== 0 && method !== 8)) return cannot('not readable');
  if (size > limit) return cannot('too large');
  const content = bytes.subarray(start, start + packed);
  if (content.length < packed) {
    return method === 0 ? { name, bytes: content, problem: 'cut off' } : cannot('cut off');
  }
  let unpacked: Uint8Array;
  try {
    unpacked = method === 0 ? content : inflateSync(content, { out: new Uint8Array(size) });
  } catch {
    return cannot('damaged');
  }
  return unpacked.length === size && crc32(unpacked) === crc
    ? { name, bytes: unpacked, problem: undefined }
    : cannot('damaged');
}

const crcTable = Uint32Array.from({ length: 256 }, (_, byte) => {
  let value = byte;
  for (let bit = 0; bit < 8; bit += 1) value = value & 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
  return value;
});

/**
 * CRC-32 as zip files have it. Source: ISO 3309 (1993); its check value over '123456789' is cbf43926.
 * @example  crc32(new TextEncoder().encode('123456789'))  // = 3421780262
 */
export function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (let at = 0; at < bytes.length; at += 1) crc = (crc >>> 8) ^ crcTable[(crc ^ bytes[at]!) & 0xff]!;
  return (crc ^ 0xffffffff) >>> 0;
}
