import { pianoDescribedSchema, ulidSchema } from '@becket/journal';
import { z } from 'zod';

export const listedJobSchema = z
  .object({
    job: ulidSchema,
    title: z.string(),
    customer: z.string().optional(),
    entries: z.int().positive(),
    lastAt: z.iso.datetime().describe('When the last entry was made.'),
    isSealed: z.boolean(),
  })
  .meta({ id: 'ListedJob' });

export const jobListSchema = z
  .object({ jobs: z.array(listedJobSchema).describe('The one last worked on first.') })
  .meta({ id: 'JobList' });

const { kind: _kind, v: _version, reason: _reason, ...pianoFields } = pianoDescribedSchema.shape;

export const newJobSchema = z
  .object({
    title: z.string().trim().min(1).max(200),
    customer: z.string().trim().max(200).optional(),
    piano: z.object(pianoFields).optional().describe('The instrument, when it is already known.'),
    by: z.string().trim().min(1).max(200).describe('Who opens the job: a name the shop uses.'),
    device: z.string().trim().min(1).max(200).optional(),
  })
  .meta({ id: 'NewJob' });

const standing = z.looseObject({
  entry: ulidSchema.describe('The entry this comes from.'),
  step: z.int().positive(),
  at: z.iso.datetime(),
  by: z.string(),
});

/** The state of a job: what the fold of its entries gives, spelled out as JSON. */
export const jobStateSchema = z
  .looseObject({
    id: ulidSchema,
    title: z.string(),
    customer: z.string().optional(),
    openedAt: z.iso.datetime().optional(),
    piano: standing.optional(),
    sections: z.array(standing),
    unisons: z.array(z.looseObject({ key: z.int(), strings: z.int(), winding: z.string(), layers: z.int() })),
    readings: z.array(standing),
    seal: standing.optional(),
    entryCount: z.int().positive(),
    lastStep: z.int().positive(),
  })
  .describe(
    'What stands: a list for each kind of fact, each with the fields of its schema in Fact. Withdrawn and replaced entries take no part.',
  )
  .meta({ id: 'JobState' });

export type JobState = z.infer<typeof jobStateSchema>;
