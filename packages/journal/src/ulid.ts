import { z } from 'zod';

/** A 26-character ULID: sortable by time, unique without a server. Source: ULID specification, github.com/ulid/spec. */
export const ulidSchema = z
  .string()
  .regex(/^[0-7][0-9A-HJKMNP-TV-Z]{25}$/, 'needs a ULID: 26 characters, Crockford base 32');
export type Ulid = z.infer<typeof ulidSchema>;
