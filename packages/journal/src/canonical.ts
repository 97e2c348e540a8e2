import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import canonicalize from 'canonicalize';

/** Canonical JSON of a value, so that equal values have equal text. Source: RFC 8785 (2020). */
export function canonicalText(value: unknown): string {
  const text = canonicalize(value);
  if (text === undefined) throw new TypeError('Cannot write canonical JSON: the value has no JSON form');
  return text;
}

/** SHA-256 of a text (as UTF-8) or of bytes, hexadecimal. Source: FIPS 180-4. */
export function digestOf(content: string | Uint8Array): string {
  return bytesToHex(sha256(typeof content === 'string' ? utf8ToBytes(content) : content));
}
