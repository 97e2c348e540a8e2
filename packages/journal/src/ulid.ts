import { ulid } from 'ulid';
import { z } from 'zod';

/** A 26-character ULID: sortable by time, unique without a server. Source: ULID specification, github.com/ulid/spec. */
export const ulidSchema = z
  .string()
  .regex(/^[0-7][0-9A-HJKMNP-TV-Z]{25}$/, 'needs a ULID: 26 characters, Crockford base 32');
export type Ulid = z.infer<typeof ulidSchema>;

/**
 * A new id from the time and a source of chance, both handed in: `random` gives numbers from 0 up to 1.
 *
 * @example  newUlid(new Date(0), () => 0)  // '00000000000000000000000000'
 */
export const newUlid = (at: Date, random: () => number): Ulid => ulid(at.getTime(), random);
