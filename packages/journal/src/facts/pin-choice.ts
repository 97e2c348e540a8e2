import { z } from 'zod';
import { placeSchema } from './place.ts';
import { pinFeels } from './reading.ts';

const pinDiameter = z.number().min(0.0055).max(0.0095);

/** The shop's rule for going up in pin size, as it stands for this job. Replaces the one before. */
export const pinPolicySetSchema = z.object({
  kind: z.literal('pin-policy-set'),
  v: z.literal(1),
  source: z.string().min(1).max(200),
  sizes: z
    .array(
      z.object({ label: z.string().min(1).max(20), diameter_m: pinDiameter, source: z.string().max(200) }),
    )
    .min(1),
  firmTorque_n_m: z.number().positive().max(60),
  veryLooseTorque_n_m: z.number().positive().max(60),
  sizesUpWhenFirm: z.int().min(0).max(6),
  sizesUpWhenLoose: z.int().min(0).max(6),
});

/** What this block and plate allow. Each is left out while nobody has measured it. */
export const pinLimitsSetSchema = z.object({
  kind: z.literal('pin-limits-set'),
  v: z.literal(1),
  largestDiameter_m: pinDiameter.optional(),
  /** Smallest hole of the plate web or bushing through which a pin passes. */
  plateHoleDiameter_m: z.number().min(0.005).max(0.02).optional(),
  /** Depth of the pin hole in the block. */
  holeDepth_m: z.number().min(0.01).max(0.1).optional(),
  /** Thickness of plate and bushing that the pin passes before the block. */
  plateThickness_m: z.number().min(0).max(0.05).optional(),
});

/** A pin driven to try the block before the set is bought: what it gives against how much larger it is. */
export const testPinSchema = z.object({
  kind: z.literal('test-pin'),
  v: z.literal(1),
  place: placeSchema,
  pinDiameter_m: pinDiameter,
  pinLength_m: z.number().min(0.04).max(0.09).optional(),
  /** Torque with no string on it. */
  torque_n_m: z.number().positive().max(60),
  asRead: z.object({ value: z.number(), unit: z.enum(['N·m', 'in·lbf']) }),
  feel: z.enum(pinFeels).optional(),
  note: z.string().max(500).optional(),
});

/** A pin that needs something of its own. A later remedy of the same string stands in place of an earlier one. */
export const pinRemedies = ['larger pin', 'bushing', 'plug', 'as the rest'] as const;
export const pinRemedySchema = z.object({
  kind: z.literal('pin-remedy'),
  v: z.literal(1),
  key: z.int().min(1).max(88),
  string: z.int().min(1).max(3),
  remedy: z.enum(pinRemedies),
  pinDiameter_m: pinDiameter.optional(),
  note: z.string().max(500).optional(),
});

/** Pins driven, in the order in which the journal has them. */
export const pinsDrivenSchema = z.object({
  kind: z.literal('pins-driven'),
  v: z.literal(1),
  firstKey: z.int().min(1).max(88),
  lastKey: z.int().min(1).max(88),
  pinDiameter_m: pinDiameter,
  pinLength_m: z.number().min(0.04).max(0.09).optional(),
  note: z.string().max(500).optional(),
});
