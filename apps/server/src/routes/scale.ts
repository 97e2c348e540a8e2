import { scaleAsJson } from '@becket/contract';
import { scaleRoute } from '@becket/contract/routes';
import { readJob, scaleAsFound } from '@becket/tasks';
import { type RouteParts, taskContext } from '../server-parts.ts';

export function scaleRoutes(parts: RouteParts): void {
  parts.app.openapi(scaleRoute, async (c) => {
    const job = await readJob(taskContext(parts), c.req.valid('param').job);
    return c.json(scaleAsJson(scaleAsFound(job, {})), 200);
  });
}
