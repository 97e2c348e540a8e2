import { z } from 'zod';
import { stringPlaceSchema } from './wire-path.ts';

/** The strings of one wire: two where it turns round a hitch pin, one where it is tied or wound. */
const stringsOfOneWire = z
  .array(stringPlaceSchema)
  .min(1)
  .max(2)
  .refine(
    ([one, other]) => other === undefined || one?.key !== other.key || one.string !== other.string,
    'two different strings',
  );

/** A wire is on the piano: coiled on its pins, on its hitch pin, and drawn up far enough to stay there. */
export const wireOnSchema = z.object({
  kind: z.literal('wire-on'),
  v: z.literal(1),
  strings: stringsOfOneWire,
  /** Of the plain wire that went on [m]; left out for a wound string, whose sizes were measured when it came. */
  diameter_m: z.number().min(0.0003).max(0.004).optional(),
  note: z.string().min(1).max(500).optional(),
});

/** What can go wrong with a wire while a piano is strung. */
export const stringingMishaps = ['broke', 'slipped', 'kinked', 'wrong wire', 'other'] as const;
export type StringingMishap = (typeof stringingMishaps)[number];

export const stringingMishapSchema = z.object({
  kind: z.literal('stringing-mishap'),
  v: z.literal(1),
  what: z.enum(stringingMishaps),
  strings: stringsOfOneWire,
  /** True when the wire came off, so that these strings have to be strung again. */
  isOff: z.boolean(),
  note: z.string().min(1).max(500).optional(),
});
