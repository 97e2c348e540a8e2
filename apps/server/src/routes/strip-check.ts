import type { StripCheckAnswer } from '@becket/contract';
import { stripCheckRoute } from '@becket/contract/routes';
import { stripCheck } from '@becket/journal';
import { readJob } from '@becket/tasks';
import { type RouteParts, taskContext } from '../server-parts.ts';

export function stripCheckRoutes(parts: RouteParts): void {
  parts.app.openapi(stripCheckRoute, async (c) => {
    const { isPassed, openGaps, gaps } = stripCheck(
      await readJob(taskContext(parts), c.req.valid('param').job),
    );
    return c.json({ isPassed, openGaps, gaps } as StripCheckAnswer, 200);
  });
}
