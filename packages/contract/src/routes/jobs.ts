import { createRoute } from '@hono/zod-openapi';
import { jobListSchema, jobStateSchema, newJobSchema } from '../schemas/jobs.ts';
import { errorAnswers, jobParams, json } from './parts.ts';

export const listJobsRoute = createRoute({
  method: 'get',
  path: '/jobs',
  operationId: 'listJobs',
  summary: 'Every job in the store',
  responses: {
    200: { description: 'The jobs', content: json(jobListSchema) },
    ...errorAnswers('store-unavailable'),
  },
});

export const openJobRoute = createRoute({
  method: 'post',
  path: '/jobs',
  operationId: 'openJob',
  summary: 'Open a job',
  description:
    'Asked twice, it opens two jobs. A client that may have to try again makes the first entries itself and sends them to /jobs/{job}/entries.',
  request: { body: { content: json(newJobSchema), required: true } },
  responses: {
    201: {
      description: 'The job as it stands; its address is in the Location header',
      content: json(jobStateSchema),
    },
    ...errorAnswers(
      'request-not-understood',
      'not-possible',
      'too-large',
      'type-not-supported',
      'store-unavailable',
    ),
  },
});

export const readJobRoute = createRoute({
  method: 'get',
  path: '/jobs/{job}',
  operationId: 'readJob',
  summary: 'The state of a job, folded from its entries',
  request: { params: jobParams },
  responses: {
    200: { description: 'The state', content: json(jobStateSchema) },
    ...errorAnswers('request-not-understood', 'job-not-found', 'store-unavailable'),
  },
});
