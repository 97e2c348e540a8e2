import { z } from 'zod';

export const healthSchema = z
  .object({ status: z.literal('ok'), program: z.literal('becket'), version: z.string() })
  .meta({ id: 'Health' });
