// The port; what stands behind it is imported by apps alone, from '@becket/store/sqlite' and '@becket/store/files'
export { type Cursor, EntryChanged, type JobListing, type JournalStore } from './port.ts';
