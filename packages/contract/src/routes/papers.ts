import { paperFormats, paperNames, paperSizes } from '@becket/tasks';
import { createRoute } from '@hono/zod-openapi';
import { z } from 'zod';
import { errorAnswers, jobParams } from './parts.ts';

const bytes = { schema: z.string().meta({ format: 'binary' }) };

export const paperRoute = createRoute({
  method: 'get',
  path: '/jobs/{job}/papers/{paper}',
  operationId: 'makePaper',
  summary: 'A paper of the job, as PDF or as its table for machines',
  request: {
    params: jobParams.extend({
      paper: z.string().meta({
        param: { name: 'paper', in: 'path' },
        description: `One of: ${paperNames.join(', ')}.`,
      }),
    }),
    query: z.object({
      size: z.enum(paperSizes).default('A4'),
      format: z.enum(paperFormats).default('pdf'),
      language: z
        .string()
        .regex(/^(en|de)(-[A-Z]{2})?$/)
        .default('en')
        .describe('English or German, and the country whose marks are used: en, de, de-AT.'),
      units: z.enum(['mm', 'in']).default('mm').describe('The unit of length that stands first.'),
    }),
  },
  responses: {
    200: { description: 'The paper', content: { 'application/pdf': bytes, 'text/csv': bytes } },
    ...errorAnswers(
      'request-not-understood',
      'job-not-found',
      'paper-not-found',
      'not-possible',
      'store-unavailable',
    ),
  },
});
