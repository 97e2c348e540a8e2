import { message } from '@becket/core';
import { z } from 'zod';
import { ulidSchema } from '../ulid.ts';
import { placeSchema } from './place.ts';

/** The parts of a piano that a survey goes through, in the order in which they can be seen at a visit. */
export const surveyParts = {
  bridges: message('bridges'),
  soundboard: message('soundboard'),
  ribs: message('ribs, from beneath'),
  'pin-block': message('pin block'),
  plate: message('plate'),
  terminations: message('agraffes, bars and hitch pins'),
  'soft-parts': message('dampers and felts'),
  action: message('action'),
} as const;
export type SurveyPart = keyof typeof surveyParts;

/** What a survey looks at, each on its part, in the trade's words. Common practice, no source. */
export const surveyThings = {
  'bridge-cracks': { part: 'bridges', label: message('cracks at the bridge pins') },
  'bridge-cap': { part: 'bridges', label: message('bridge cap') },
  'bridge-parting': { part: 'bridges', label: message('bridge parting from the board') },
  'bridge-pins': { part: 'bridges', label: message('loose bridge pins') },
  'board-cracks': { part: 'soundboard', label: message('cracks in the soundboard') },
  'board-crown': { part: 'soundboard', label: message('crown of the soundboard') },
  'board-repairs': { part: 'soundboard', label: message('earlier repairs of the soundboard') },
  'rib-parting': { part: 'ribs', label: message('ribs parting from the board') },
  'rib-cracks': { part: 'ribs', label: message('cracked ribs') },
  'block-cracks': { part: 'pin-block', label: message('cracks in the pin block') },
  'block-layers': { part: 'pin-block', label: message('layers of the pin block parting') },
  'block-flange': { part: 'pin-block', label: message('gap between pin block and plate flange') },
  'block-treated': { part: 'pin-block', label: message('pin holes treated with liquid') },
  'plate-cracks': { part: 'plate', label: message('cracks in the plate') },
  'plate-bolts': { part: 'plate', label: message('plate bolts and screws') },
  agraffes: { part: 'terminations', label: message('agraffes') },
  'pressure-bar': { part: 'terminations', label: message('pressure bar and capo') },
  'hitch-pins': { part: 'terminations', label: message('hitch pins') },
  dampers: { part: 'soft-parts', label: message('dampers') },
  felts: { part: 'soft-parts', label: message('felts and braid') },
  action: { part: 'action', label: message('action (noted and left aside)') },
} as const satisfies Record<string, { part: SurveyPart; label: string }>;
export type SurveyThing = keyof typeof surveyThings;
export const surveyThingNames = Object.keys(surveyThings) as [SurveyThing, ...SurveyThing[]];

/** How far it has gone. Common practice, no source. */
export const findingGravities = ['slight', 'clear', 'grave'] as const;
/** When it is dealt with. */
export const findingRemedies = [
  'nothing',
  'while the strings are off',
  'before stringing',
  'stops the job',
] as const;
export const repairStates = ['holds', 'fails', 'cannot tell'] as const;

/**
 * Something looked at on the structure: seen with its place, gravity and what to do; or sound; or why there is no answer.
 * *Sound*, *could not be seen* and *does not apply* are three different things.
 */
export const findingSchema = z.object({
  kind: z.literal('finding'),
  v: z.literal(1),
  thing: z.enum(surveyThingNames),
  place: placeSchema,
  answer: z.discriminatedUnion('is', [
    z.object({
      is: z.literal('seen'),
      what: z.string().min(1).max(1000),
      gravity: z.enum(findingGravities),
      whatToDo: z.enum(findingRemedies),
      /** How long or wide it is, so that a later survey can tell whether it grew. */
      extent_m: z.number().positive().max(3).optional(),
      /** For an earlier repair: whether it still does its work. */
      repair: z.enum(repairStates).optional(),
    }),
    z.object({ is: z.literal('sound'), note: z.string().max(1000).optional() }),
    z.object({ is: z.enum(['could not be seen', 'does not apply']), note: z.string().max(1000).optional() }),
  ]),
  /** SHA-256 of photos of this job, hexadecimal. */
  photos: z
    .array(z.string().regex(/^[0-9a-f]{64}$/))
    .max(12)
    .optional(),
  /** Day of an earlier survey that this line was copied from; left out for what was seen now. */
  copiedFrom: z.iso.date().optional(),
  replaces: ulidSchema.optional(),
  /** Why it was said or changed after the seal, or in place of an earlier line. */
  reason: z.string().min(1).max(500).optional(),
});
