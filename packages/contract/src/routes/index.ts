// The routes, in the order a client meets them. For the server: they bring the OpenAPI tools with them.

export { addEntriesRoute, readEntriesRoute, watchEntriesRoute } from './entries.ts';
export { importRoute } from './imports.ts';
export { listJobsRoute, openJobRoute, readJobRoute } from './jobs.ts';
export { paperRoute } from './papers.ts';
export { keepBlobRoute, missingBlobsRoute, readBlobRoute } from './photos.ts';
export { scaleRoute } from './scale.ts';
export { healthRoute } from './service.ts';
export { stripCheckRoute } from './strip-check.ts';
