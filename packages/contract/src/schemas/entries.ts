import { ulidSchema } from '@becket/journal';
import { z } from 'zod';
import { limits } from '../limits.ts';

/**
 * The outside of an entry. Whether its fact fits is decided by the journal's own reader, which names the field, and
 * keeps facts of kinds and versions it does not know.
 */
export const entrySchema = z
  .looseObject({
    id: ulidSchema,
    job: ulidSchema,
    step: z.int().positive().describe('Lamport counter: one more than the highest step its writer had seen.'),
    at: z.iso.datetime().describe('RFC 3339 UTC. For people; the order of entries is by step, then id.'),
    by: z.string().min(1).max(200),
    device: z.string().min(1).max(200),
    fact: z
      .looseObject({ kind: z.string().min(1), v: z.int().positive() })
      .describe('A fact of a known kind and version fits the schema Fact; any other is kept as it is.'),
  })
  .meta({ id: 'Entry' });

export const cursorSchema = z
  .string()
  .max(60)
  .describe('How far a reader has come. Opaque: hand back what the server gave.')
  .meta({ id: 'Cursor' });

export const entriesPageSchema = z
  .object({
    entries: z.array(entrySchema).describe('In order of their arrival in this store.'),
    cursor: cursorSchema,
  })
  .meta({ id: 'EntriesPage' });

/** The entries are read one by one after this, so that the sentence can say which one is wrong. */
export const entriesToAddSchema = z
  .object({
    entries: z
      .array(z.unknown())
      .describe(`At most ${limits.entriesInBatch}, each as in the schema Entry. All are added or none.`),
  })
  .meta({ id: 'EntriesToAdd' });

export const entriesAddedSchema = z
  .object({
    added: z.int().nonnegative(),
    known: z.int().nonnegative().describe('Entries that were kept already, with the same content.'),
  })
  .meta({ id: 'EntriesAdded' });

export type EntriesPage = z.infer<typeof entriesPageSchema>;
