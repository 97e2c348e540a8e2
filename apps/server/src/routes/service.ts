import { importRequestSchema } from '@becket/contract';
import { healthRoute } from '@becket/contract/routes';
import { factSchema } from '@becket/journal';
import { z } from '@hono/zod-openapi';
import type { RouteParts } from '../server-parts.ts';
import { programVersion } from '../version.ts';

export function serviceRoutes({ app, store }: RouteParts): void {
  app.openapi(healthRoute, async (c) => {
    await store.jobs();
    return c.json({ status: 'ok' as const, program: 'becket' as const, version: programVersion }, 200);
  });

  // OpenAPI 3.1 takes JSON Schema as it is. These two are spoken of in the routes, and not part of one.
  app.openAPIRegistry.registerComponent('schemas', 'Fact', schemaOf(factSchema));
  app.openAPIRegistry.registerComponent('schemas', 'ImportRequest', schemaOf(importRequestSchema));
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

function schemaOf(schema: z.ZodType) {
  const { $schema: _dialect, ...plain } = z.toJSONSchema(schema, { io: 'input', unrepresentable: 'any' });
  return plain as object;
}
