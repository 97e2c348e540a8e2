// What every task is handed
export { JobNotFound, RecordIsSealed, readJob, type TaskContext } from './context.ts';
// Describe the piano
export { checkSections, describePiano, describeSections, describeUnisons } from './describe-piano.ts';
// Jobs
export { type ListedJob, listJobs } from './list-jobs.ts';
// Papers
export {
  type MadePaper,
  makePaper,
  type PaperFormat,
  type PaperName,
  type PaperToMake,
  paperFormats,
  paperNames,
  paperSizes,
} from './make-paper.ts';
export { type NewJob, openJob } from './open-job.ts';
// Record
export {
  type ReadingToRecord,
  readingFact,
  recordAbsence,
  recordObservation,
  recordReadings,
  withdrawEntry,
} from './record-reading.ts';
// Scale
export { type ScaleAsFound, scaleAsFound } from './scale-as-found.ts';
// Before the strip
export { acceptGaps, SurveyIncomplete, sealRecord } from './strip-record.ts';
