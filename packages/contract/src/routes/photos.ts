import { createRoute } from '@hono/zod-openapi';
import { z } from 'zod';
import { blobKeptSchema, digestSchema, digestsToFindSchema, missingBlobsSchema } from '../schemas/photos.ts';
import { errorAnswers, json } from './parts.ts';

const bytes = { schema: z.string().meta({ format: 'binary' }) };
const picture = { 'image/jpeg': bytes, 'image/png': bytes, 'image/webp': bytes };

const digestParams = z.object({
  digest: digestSchema.meta({
    param: { name: 'digest', in: 'path' },
    description: "SHA-256 of the photo's bytes.",
  }),
});

export const keepBlobRoute = createRoute({
  method: 'put',
  path: '/blobs/{digest}',
  operationId: 'keepBlob',
  summary: 'Keep the bytes of a photo under their digest',
  description:
    'Idempotent: sending the same photo again changes nothing. The kind of picture is found from the bytes; the Content-Type is not asked.',
  request: { params: digestParams, body: { content: picture, required: true } },
  responses: {
    200: { description: 'The photo is on the disk', content: json(blobKeptSchema) },
    ...errorAnswers(
      'request-not-understood',
      'too-large',
      'type-not-supported',
      'digest-differs',
      'store-unavailable',
    ),
  },
});

export const readBlobRoute = createRoute({
  method: 'get',
  path: '/blobs/{digest}',
  operationId: 'readBlob',
  summary: 'The bytes of a photo',
  description: 'What a digest names never changes, so that the answer may be kept for good.',
  request: { params: digestParams },
  responses: {
    200: { description: 'The photo', content: picture },
    ...errorAnswers('request-not-understood', 'blob-not-found', 'store-unavailable'),
  },
});

export const missingBlobsRoute = createRoute({
  method: 'post',
  path: '/blobs/missing',
  operationId: 'missingBlobs',
  summary: 'Which of these photos the server does not have',
  request: { body: { content: json(digestsToFindSchema), required: true } },
  responses: {
    200: { description: 'Those it does not have', content: json(missingBlobsSchema) },
    ...errorAnswers('request-not-understood', 'too-large', 'type-not-supported', 'store-unavailable'),
  },
});
