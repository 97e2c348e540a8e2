import { z } from 'zod';
import { errorCodeNames } from '../errors.ts';

export const errorAnswerSchema = z
  .object({
    code: z.enum(errorCodeNames),
    message: z
      .string()
      .describe('One sentence for the user: what failed, what is needed, what was found, what to do.'),
    details: z.record(z.string(), z.unknown()).optional(),
  })
  .meta({ id: 'ErrorAnswer' });
