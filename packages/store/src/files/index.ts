export { type FilesStore, openFilesStore } from './open-files-store.ts';
