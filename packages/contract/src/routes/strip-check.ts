import { createRoute } from '@hono/zod-openapi';
import { stripCheckSchema } from '../schemas/strip-check.ts';
import { errorAnswers, jobParams, json } from './parts.ts';

export const stripCheckRoute = createRoute({
  method: 'get',
  path: '/jobs/{job}/strip-check',
  operationId: 'stripCheck',
  summary: 'What the as-found record still lacks before the strings may come off',
  request: { params: jobParams },
  responses: {
    200: { description: 'The strip check', content: json(stripCheckSchema) },
    ...errorAnswers('request-not-understood', 'job-not-found', 'store-unavailable'),
  },
});
