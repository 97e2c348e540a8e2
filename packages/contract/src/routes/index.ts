// The routes, in the order a client meets them. Server only: they bring the OpenAPI tools with them.

export { addEntriesRoute, readEntriesRoute, watchEntriesRoute } from './entries.ts';
export { listJobsRoute, openJobRoute, readJobRoute } from './jobs.ts';
export { healthRoute } from './service.ts';
export { stripCheckRoute } from './strip-check.ts';
