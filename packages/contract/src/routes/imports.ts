import { createRoute } from '@hono/zod-openapi';
import { importDoneSchema, importFormSchema } from '../schemas/imports.ts';
import { errorAnswers, jobParams, json } from './parts.ts';

export const importRoute = createRoute({
  method: 'post',
  path: '/jobs/{job}/imports',
  operationId: 'bringInReadings',
  summary: 'Bring a table of readings into a job, all of it or nothing',
  request: {
    params: jobParams,
    body: { content: { 'multipart/form-data': { schema: importFormSchema } }, required: true },
  },
  responses: {
    201: { description: 'The readings are in the job', content: json(importDoneSchema) },
    ...errorAnswers(
      'request-not-understood',
      'job-not-found',
      'record-is-sealed',
      'too-large',
      'type-not-supported',
      'not-possible',
      'import-has-problems',
      'store-unavailable',
    ),
  },
});
