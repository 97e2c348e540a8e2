import { createRoute } from '@hono/zod-openapi';
import { scaleSchema } from '../schemas/scale.ts';
import { errorAnswers, jobParams, json } from './parts.ts';

export const scaleRoute = createRoute({
  method: 'get',
  path: '/jobs/{job}/scale',
  operationId: 'scaleAsFound',
  summary:
    'The scale as it was found: tension, break share and inharmonicity of every note, loads by section and bridge',
  request: { params: jobParams },
  responses: {
    200: { description: 'The scale', content: json(scaleSchema) },
    ...errorAnswers('request-not-understood', 'job-not-found', 'not-possible', 'store-unavailable'),
  },
});
