import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { serveStatic } from '@hono/node-server/serve-static';
import type { Hono } from 'hono';
import { compress } from 'hono/compress';
import { etag } from 'hono/etag';
import { refuse } from './answer-error.ts';

/**
 * Serves the built screens from a folder. Files under assets/ carry a digest of their content in their name and may be
 * kept for ever; the rest is asked after each time, so that a new version is seen at once.
 */
export function serveWebApp(app: Hono, webRoot: string | undefined): void {
  if (webRoot === undefined || !existsSync(join(webRoot, 'index.html'))) {
    app.get('/', (c) =>
      refuse(
        c,
        'route-not-found',
        'The screens are not built yet, so there is nothing to show here. Run npm start, or npm run build -w apps/web.',
      ),
    );
    return;
  }
  // A phone on a poor line waits for a third of the bytes.
  app.use('*', compress());
  app.use('*', etag({ weak: true }));
  app.use(
    '*',
    serveStatic({
      root: webRoot,
      onFound: (_path, c) => {
        const isForEver = c.req.path.startsWith('/assets/');
        c.header('Cache-Control', isForEver ? 'public, max-age=31536000, immutable' : 'no-cache');
      },
    }),
  );
}
