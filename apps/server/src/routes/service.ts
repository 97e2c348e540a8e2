import { importRequestSchema } from '@becket/contract';
import { healthRoute } from '@becket/contract/routes';
import { factSchema } from '@becket/journal';
import type { RouteParts } from '../server-parts.ts';
import { programVersion } from '../version.ts';

export function serviceRoutes({ app, store }: RouteParts): void {
  app.openapi(healthRoute, async (c) => {
    await store.jobs();
    return c.json({ status: 'ok' as const, program: 'becket' as const, version: programVersion }, 200);
  });

  app.openAPIRegistry.register('Fact', factSchema);
  app.openAPIRegistry.register('ImportRequest', importRequestSchema);
  app.doc31('/openapi.json', {
    openapi: '3.1.0',
    info: {
      title: 'Becket',
      version: programVersion,
      description:
        'The working record of restringing a piano. Every answer that is not a success is an ErrorAnswer: decide by its code, show its message.',
    },
  });
}
