// The port; what stands behind it is imported by apps alone, from '@becket/store/sqlite' and '@becket/store/files'

// Photos, by digest
// For whoever builds another store behind the port
export { type BlobStore, digestPattern, largestBlob_bytes, requireBlobSize, verifiedBlob } from './blobs.ts';
export { type ArrivalAt, readCursor, writeCursor } from './cursor.ts';
export {
  type Cursor,
  CursorNotKnown,
  EntryChanged,
  type JobListing,
  type JournalStore,
  type StoreProblem,
  StoreUnavailable,
} from './port.ts';
export { splitBatch } from './split-batch.ts';
