import { createRoute } from '@hono/zod-openapi';
import { healthSchema } from '../schemas/health.ts';
import { errorAnswers, json } from './parts.ts';

export const healthRoute = createRoute({
  method: 'get',
  path: '/health',
  operationId: 'health',
  summary: 'Whether the server and its store answer',
  responses: {
    200: { description: 'They do', content: json(healthSchema) },
    ...errorAnswers('store-unavailable'),
  },
});
