import { z } from 'zod';
import { ulidSchema } from '../ulid.ts';
import { keySchema, stringNumberSchema } from './place.ts';

const sectionName = z.string().min(1).max(60);
const temperature_c = z.number().min(-30).max(60).optional();
const relativeHumidity_percent = z.number().min(0).max(100).optional();

/** A pass is begun: one raising of the whole piano towards pitch. Left out air is air that was not read. */
export const passBegunSchema = z.object({
  kind: z.literal('pass-begun'),
  v: z.literal(1),
  /** Its number, from 1. */
  pass: z.int().positive().max(99),
  on: z.iso.date(),
  /** A4 that it is tuned to. */
  referencePitch_hz: z.number().min(380).max(480),
  temperature_c,
  relativeHumidity_percent,
  /** The sections in the order in which they are pulled up, so that the load comes on evenly. */
  order: z
    .array(sectionName)
    .max(40)
    .refine((order) => new Set(order).size === order.length, 'each section at most once'),
  note: z.string().max(1000).optional(),
});

/**
 * What a value of a pass tells: where the section stood before it was pulled, how far above pitch it was aimed at, and where it
 * was left.
 */
export const passValueKinds = ['before', 'aimed', 'after'] as const;
export type PassValueKind = (typeof passValueKinds)[number];

/**
 * One offset from pitch, at a note or as the mean of a section. A later value of the same place stands in place of an
 * earlier one.
 */
export const passReadSchema = z.object({
  kind: z.literal('pass-read'),
  v: z.literal(1),
  passBegun: ulidSchema,
  value: z.enum(passValueKinds),
  section: sectionName,
  /** The note that was read; left out where the value is the mean of the section. */
  key: keySchema.optional(),
  /** Cents from the pitch aimed at; flat is negative. */
  offset_cents: z.number().min(-1200).max(600),
});

/**
 * How far up a string of this job may be pulled, as a share of its break load by a named table. A later one stands in place of
 * an earlier one. A table that this program does not know has no effect.
 */
export const overpullLimitSetSchema = z.object({
  kind: z.literal('overpull-limit-set'),
  v: z.literal(1),
  highestBreakShare: z.number().positive().max(1),
  strengthTable: z.string().min(1).max(200),
  /** Whose limit it is, in the words of whoever set it. */
  source: z.string().trim().min(1).max(300),
});

/** What can go wrong with a string that is pulled up. */
export const mishaps = ['broke', 'slipped', 'other'] as const;

export const passMishapSchema = z.object({
  kind: z.literal('pass-mishap'),
  v: z.literal(1),
  passBegun: ulidSchema,
  what: z.enum(mishaps),
  key: keySchema.optional(),
  string: stringNumberSchema.optional(),
  note: z.string().max(500).optional(),
});

export const followUpKinds = ['another pass', 'tuning', 'a look'] as const;

/** A day on which the piano is to be seen again. */
export const followUpPlannedSchema = z.object({
  kind: z.literal('follow-up-planned'),
  v: z.literal(1),
  on: z.iso.date(),
  what: z.enum(followUpKinds),
  note: z.string().max(500).optional(),
});

export const followUpDoneSchema = z.object({
  kind: z.literal('follow-up-done'),
  v: z.literal(1),
  followUp: ulidSchema,
  on: z.iso.date(),
  temperature_c,
  relativeHumidity_percent,
  note: z.string().max(1000).optional(),
});
