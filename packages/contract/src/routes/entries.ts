import { createRoute } from '@hono/zod-openapi';
import { z } from 'zod';
import {
  cursorSchema,
  entriesAddedSchema,
  entriesPageSchema,
  entriesToAddSchema,
} from '../schemas/entries.ts';
import { errorAnswers, jobParams, json } from './parts.ts';

export const readEntriesRoute = createRoute({
  method: 'get',
  path: '/jobs/{job}/entries',
  operationId: 'readEntries',
  summary: 'Entries of a job, after a cursor or from the beginning',
  description: 'A job this server has never heard of has no entries: that is an empty list and not an error.',
  request: { params: jobParams, query: z.object({ after: cursorSchema.optional() }) },
  responses: {
    200: { description: 'The entries, and the cursor to go on from', content: json(entriesPageSchema) },
    ...errorAnswers('request-not-understood', 'cursor-not-known', 'store-unavailable'),
  },
});

export const addEntriesRoute = createRoute({
  method: 'post',
  path: '/jobs/{job}/entries',
  operationId: 'addEntries',
  summary: 'Add entries, all or none',
  description:
    'Idempotent by entry id: sending the same entries again adds nothing and is no error. The job need not be known before.',
  request: { params: jobParams, body: { content: json(entriesToAddSchema), required: true } },
  responses: {
    200: { description: 'The entries are on the disk', content: json(entriesAddedSchema) },
    ...errorAnswers(
      'request-not-understood',
      'entry-not-understood',
      'entry-of-another-job',
      'entry-changed',
      'too-large',
      'type-not-supported',
      'store-unavailable',
    ),
  },
});

export const watchEntriesRoute = createRoute({
  method: 'get',
  path: '/jobs/{job}/events',
  operationId: 'watchEntries',
  summary: 'A message whenever entries have arrived (server-sent events)',
  description:
    'Each message has the event \'entries\' and the data {"cursor": …}: there is something to read up to that cursor. The first comes at once, so that nothing is missed between reading and watching. Lines that begin with a colon only keep the connection alive.',
  request: { params: jobParams },
  responses: {
    200: { description: 'The stream', content: { 'text/event-stream': { schema: z.string() } } },
    ...errorAnswers('request-not-understood', 'store-unavailable'),
  },
});
