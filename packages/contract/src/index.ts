// Errors: one list of codes, and from an error to the answer

export { type ErrorAnswer, type ErrorCode, errorAnswer, errorCodeNames, errorCodes } from './errors.ts';

// How much one request may bring
export { limits } from './limits.ts';

// Bodies of requests and answers. The routes themselves are in '@becket/contract/routes'
export {
  cursorSchema,
  type EntriesPage,
  entriesAddedSchema,
  entriesPageSchema,
  entriesToAddSchema,
  entrySchema,
} from './schemas/entries.ts';
export { errorAnswerSchema } from './schemas/error-answer.ts';
export { healthSchema } from './schemas/health.ts';
export {
  type ImportDone,
  importDoneSchema,
  importFormSchema,
  importRequestSchema,
} from './schemas/imports.ts';
export { jobStateAsJson } from './schemas/job-state.ts';
export {
  type JobState,
  jobListSchema,
  jobStateSchema,
  listedJobSchema,
  newJobSchema,
} from './schemas/jobs.ts';
export {
  blobKeptSchema,
  digestSchema,
  digestsToFindSchema,
  missingBlobsSchema,
} from './schemas/photos.ts';
export { scaleAsJson, scaleSchema } from './schemas/scale.ts';
export { gapSchema, type StripCheckAnswer, stripCheckSchema } from './schemas/strip-check.ts';
