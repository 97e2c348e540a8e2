import { gapRanks, placeSchema } from '@becket/journal';
import { z } from 'zod';

export const gapSchema = z
  .looseObject({
    name: z.string().describe("The gap's own name, by which it is accepted: 'wire-diameter/C#3'."),
    place: placeSchema,
    what: z.string(),
    rank: z.enum(gapRanks),
    sentence: z.string(),
    accepted: z.object({ by: z.string(), reason: z.string(), at: z.string() }).optional(),
  })
  .meta({ id: 'Gap' });

export const stripCheckSchema = z
  .object({
    isPassed: z.boolean(),
    openGaps: z.array(gapSchema).describe('Gaps neither closed nor accepted, the gravest rank first.'),
    gaps: z.array(gapSchema).describe('Every gap; accepted ones among them.'),
  })
  .meta({ id: 'StripCheck' });

export type StripCheckAnswer = z.infer<typeof stripCheckSchema>;
