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
 * @example  newUlid(new Date(1), () => 0)  // = 00000000010000000000000000
 */
export const newUlid = (at: Date, random: () => number): Ulid =>
  // The library takes a time of 0 for "now"; one millisecond later keeps it a function of its arguments.
  ulid(Math.max(1, at.getTime()), random);
