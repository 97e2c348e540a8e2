import { limits } from '@becket/contract';
import { keepBlobRoute, missingBlobsRoute, readBlobRoute } from '@becket/contract/routes';
import { digestOf, photoTypeOf } from '@becket/journal';
import { Refused } from '../answer-error.ts';
import { atMost } from '../guards/size.ts';
import type { RouteParts } from '../server-parts.ts';

export function photoRoutes({ app, store }: RouteParts): void {
  app.use(
    '/blobs/missing',
    atMost(limits.digestsBytes, { what: 'this list of digests', instead: 'Send it in several parts.' }),
  );
  app.openapi(missingBlobsRoute, async (c) => {
    const missing = await store.blobs.missing(c.req.valid('json').digests);
    return c.json({ missing: [...missing] }, 200);
  });

  app.use(
    '/blobs/:digest',
    atMost(limits.blobBytes, {
      what: 'this photo',
      instead: 'Make it smaller and try again; nothing was kept.',
    }),
  );
  app.openapi(keepBlobRoute, async (c) => {
    const { digest } = c.req.valid('param');
    const bytes = new Uint8Array(await c.req.arrayBuffer());
    if (photoTypeOf(bytes) === undefined) {
      throw new Refused(
        'type-not-supported',
        `Cannot keep this photo: a JPEG, PNG or WebP picture is needed, ${bytes.length === 0 ? 'nothing' : 'bytes of another kind'} came. Send the picture itself; nothing was kept.`,
      );
    }
    const found = digestOf(bytes);
    if (found !== digest) {
      throw new Refused(
        'digest-differs',
        `Cannot keep this photo: bytes of the digest ${digest} are needed, ${bytes.length} bytes of the digest ${found} came. They were changed or cut off on the way: send them again; nothing was kept.`,
        { found },
      );
    }
    await store.blobs.put(bytes);
    return c.json({ digest, bytes: bytes.length }, 200);
  });

  app.openapi(readBlobRoute, async (c) => {
    const { digest } = c.req.valid('param');
    const bytes = await store.blobs.get(digest);
    if (bytes === undefined) {
      throw new Refused(
        'blob-not-found',
        `Cannot find the photo ${digest}: this server does not have it. It may still be on the device that took it, until that one has been in touch.`,
      );
    }
    return c.body(bytes as Uint8Array<ArrayBuffer>, 200, {
      'Content-Type': photoTypeOf(bytes) ?? 'application/octet-stream',
      // Kept by the browser alone: photos of a customer's home are nobody else's.
      'Cache-Control': 'private, max-age=31536000, immutable',
      ETag: `"${digest}"`,
    });
  });
}
