import { watchEntriesRoute } from '@becket/contract/routes';
import { streamSSE } from 'hono/streaming';
import type { RouteParts } from '../server-parts.ts';

/** `stopped` resolves when the server ends: then every stream does. */
export function eventRoutes(
  { app, news }: RouteParts,
  { stopped, heartbeat_ms }: { stopped: Promise<void>; heartbeat_ms: number },
): void {
  app.openapi(watchEntriesRoute, (c) => {
    const { job } = c.req.valid('param');
    const response = streamSSE(c, async (stream) => {
      const left = new Promise<void>((resolve) => stream.onAbort(resolve));
      const stopWatching = news.watch(job, (cursor) => {
        void stream.writeSSE({ event: 'entries', data: JSON.stringify({ cursor }) });
      });
      // A line that means nothing: it keeps the connection open, and shows when the other side is gone.
      const heartbeat = setInterval(() => void stream.write(': here\n\n'), heartbeat_ms);
      await Promise.race([left, stopped]);
      clearInterval(heartbeat);
      stopWatching();
    });
    response.headers.set('Cache-Control', 'no-store');
    return response;
  });
}
