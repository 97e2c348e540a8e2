import { z } from 'zod';
import { ulidSchema } from '../ulid.ts';
import { keySchema } from './place.ts';

/** Where a note's sizes in a proposal come from. */
export const proposedOrigins = ['as found', 'computed', 'by hand'] as const;

const wireDiameter = z.number().positive().max(0.006);
const bareEnd = z.number().min(0).max(1);
const digest = z.string().regex(/^[0-9a-f]{64}$/);

const plainNote = z.object({
  winding: z.literal('plain'),
  key: keySchema,
  gauge_m: wireDiameter,
  from: z.enum(proposedOrigins),
});
const woundNote = z.object({
  winding: z.literal('wound'),
  key: keySchema,
  core_m: wireDiameter,
  /** Inner layer first: the winding wire itself, and what it leaves bare of the speaking length. */
  layers: z
    .array(z.object({ wire_m: wireDiameter, bareFront_m: bareEnd, bareBack_m: bareEnd }))
    .min(1)
    .max(2),
  from: z.enum(proposedOrigins),
});

/** One note of a proposed scale. Lengths are not part of it: they are the piano's. */
export const proposedNoteSchema = z.discriminatedUnion('winding', [plainNote, woundNote]);
export type ProposedNote = z.infer<typeof proposedNoteSchema>;

/** A scale that might be strung instead of the one that was found. */
export const scaleProposedSchema = z.object({
  kind: z.literal('scale-proposed'),
  v: z.literal(1),
  /** As the user calls it: 'smoother tenor'. */
  name: z.string().min(1).max(60),
  notes: z
    .array(proposedNoteSchema)
    .min(1)
    .max(88)
    .refine((notes) => new Set(notes.map(({ key }) => key)).size === notes.length, 'each key at most once'),
  /** What was weighed against what when it was computed; left out for a scale made by hand. */
  weights: z.record(z.string().min(1).max(60), z.number()).optional(),
  /** What it had to keep within, each with its figure in the unit that its name gives. */
  limits: z.record(z.string().min(1).max(60), z.number()).optional(),
  /** Where break loads came from. */
  strengthTable: z.string().min(1).max(200).optional(),
  /** What spoke against it when it was computed, each a sentence; left out where nobody looked. */
  saidAgainst: z.array(z.string().min(1).max(600)).max(20).optional(),
  /**
   * How much smaller, as a share of its sum, a better scale could be at most under the same weights and limits; 0 where it is
   * proved that there is none. Left out where nothing was proved: for a scale made or changed by hand.
   */
  mostBetter: z.number().min(0).max(1).optional(),
  /** Digest of the scale as found that it was made from: says later whether the readings have changed. */
  madeFrom: digest,
});

/** Which scale is strung. The latest stands. */
export const scaleChosenSchema = z.object({
  kind: z.literal('scale-chosen'),
  v: z.literal(1),
  /** Entry of the proposal, or the scale as it was found. */
  scale: z.union([z.literal('as found'), ulidSchema]),
  reason: z.string().min(1).max(1000),
  /** Digest of the chosen scale with its lengths, as it was when it was chosen. */
  digest,
});
