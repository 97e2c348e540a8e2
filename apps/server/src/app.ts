import { OpenAPIHono } from '@hono/zod-openapi';
import { methodNotAllowed } from 'hono/method-not-allowed';
import { answerError, answerMisfit, refuse } from './answer-error.ts';
import { onlyThisComputer } from './guards/loopback.ts';
import { keepNothing, securityHeaders } from './guards/security-headers.ts';
import { EntryNews } from './live/entry-news.ts';
import { entryRoutes } from './routes/entries.ts';
import { eventRoutes } from './routes/events.ts';
import { importRoutes } from './routes/imports.ts';
import { jobRoutes } from './routes/jobs.ts';
import { paperRoutes } from './routes/papers.ts';
import { photoRoutes } from './routes/photos.ts';
import { scaleRoutes } from './routes/scale.ts';
import { serviceRoutes } from './routes/service.ts';
import { stripCheckRoutes } from './routes/strip-check.ts';
import type { ServerParts } from './server-parts.ts';
import { serveWebApp } from './web-app.ts';

export interface AppParts extends ServerParts {
  /** Folder of the built screens; without it there is the API alone. */
  readonly webRoot?: string | undefined;
  /** Where faults of the program are written. */
  readonly log?: (fault: unknown) => void;
  readonly heartbeat_ms?: number | undefined;
  readonly lookEvery_ms?: number | undefined;
}

export interface BecketApp {
  readonly app: OpenAPIHono;
  /** Ends every stream of events; the rest of the app goes on answering. */
  readonly stopStreams: () => void;
}

/** The whole server but for the port it listens on. Everything that is not listed here is refused. */
export function createApp({
  store,
  now,
  newId,
  webRoot,
  log = console.error,
  heartbeat_ms = 15_000,
  lookEvery_ms,
}: AppParts): BecketApp {
  const app = new OpenAPIHono({ defaultHook: answerMisfit });
  const news = new EntryNews(store, { log, lookEvery_ms });
  let stopStreams = () => {};
  const stopped = new Promise<void>((resolve) => {
    stopStreams = () => {
      resolve();
      news.stop();
    };
  });

  app.onError((error, c) => answerError(c, error, log));
  app.notFound((c) =>
    refuse(
      c,
      'route-not-found',
      `There is nothing at ${c.req.method} ${c.req.path}. See /openapi.json for what there is.`,
    ),
  );
  app.use('*', securityHeaders);
  app.use('*', keepNothing);
  app.use('*', onlyThisComputer);
  app.use(
    '*',
    methodNotAllowed({
      app,
      onMethodNotAllowed: (c, methods) => {
        c.header('Allow', methods.join(', '));
        return refuse(
          c,
          'method-not-allowed',
          `Cannot ${c.req.method} ${c.req.path}: it takes ${methods.join(', ')}.`,
        );
      },
    }),
  );

  const parts = { app, store, now, newId, news };
  serviceRoutes(parts);
  jobRoutes(parts);
  entryRoutes(parts);
  eventRoutes(parts, { stopped, heartbeat_ms });
  stripCheckRoutes(parts);
  scaleRoutes(parts);
  paperRoutes(parts);
  importRoutes(parts);
  photoRoutes(parts);
  serveWebApp(app, webRoot);
  return { app, stopStreams };
}
