import { ulidSchema } from '@becket/journal';
import { z } from 'zod';
import { type ErrorCode, errorCodes } from '../errors.ts';
import { errorAnswerSchema } from '../schemas/error-answer.ts';

/** A JSON body of this schema. */
export const json = <Schema extends z.ZodType>(schema: Schema) => ({ 'application/json': { schema } });

/** The part `{job}` of an address. */
export const jobParams = z.object({
  job: ulidSchema.meta({ param: { name: 'job', in: 'path' }, description: 'Id of the job.' }),
});

/** Answers for these codes, one an HTTP status, each saying which codes come with it. */
export function errorAnswers(...codes: readonly ErrorCode[]) {
  const byStatus: Record<
    number,
    { description: string; content: ReturnType<typeof json<typeof errorAnswerSchema>> }
  > = {};
  for (const code of codes) {
    const { status, meaning } = errorCodes[code];
    const before = byStatus[status];
    byStatus[status] = {
      description: `${before === undefined ? '' : `${before.description}; `}\`${code}\`: ${meaning}`,
      content: json(errorAnswerSchema),
    };
  }
  return byStatus;
}
