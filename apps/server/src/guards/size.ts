import type { MiddlewareHandler } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { refuse } from '../answer-error.ts';

/**
 * Refuses a body that is larger than the limit, before it is read as far as its length is announced, else as soon as
 * the limit is passed. `what` names it, `instead` says what to do. What is still on its way is thrown away, and after
 * half a second the connection with it: a client that is still sending would not see an answer sooner.
 */
export function atMost(
  bytes: number,
  { what, instead }: { readonly what: string; readonly instead: string },
): MiddlewareHandler {
  return bodyLimit({
    maxSize: bytes,
    onError: (c) => {
      const announced = Number(c.req.header('content-length'));
      const found = Number.isFinite(announced) && announced > bytes ? `${megabytes(announced)} MB` : 'more';
      return refuse(
        c,
        'too-large',
        `Cannot take ${what}: at most ${megabytes(bytes)} MB are taken, ${found} came. ${instead}`,
        { limit: bytes, unit: 'bytes' },
      );
    },
  });
}

const megabytes = (bytes: number): string => String(Number((bytes / 1e6).toPrecision(3)));
