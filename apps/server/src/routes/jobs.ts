import { jobStateAsJson, limits } from '@becket/contract';
import { listJobsRoute, openJobRoute, readJobRoute } from '@becket/contract/routes';
import { listJobs, type NewJob, openJob, readJob } from '@becket/tasks';
import { atMost } from '../guards/size.ts';
import { type RouteParts, taskContext } from '../server-parts.ts';

export function jobRoutes(parts: RouteParts): void {
  const { app, news } = parts;

  app.openapi(listJobsRoute, async (c) => c.json({ jobs: await listJobs(taskContext(parts)) }, 200));

  app.use(
    '/jobs',
    atMost(limits.jsonBytes, { what: 'this job', instead: 'Shorten what is said of it, and try again.' }),
  );
  app.openapi(openJobRoute, async (c) => {
    const { by, device, ...job } = c.req.valid('json');
    const opened = await openJob(taskContext(parts, { by, device }), job as NewJob);
    news.announce(opened.id);
    c.header('Location', `/jobs/${opened.id}`);
    return c.json(jobStateAsJson(opened), 201);
  });

  app.openapi(readJobRoute, async (c) => {
    const job = await readJob(taskContext(parts), c.req.valid('param').job);
    return c.json(jobStateAsJson(job), 200);
  });
}
