import { join } from 'node:path';
import { openFilesStore } from './files/index.ts';
import { createMemoryStore } from './memory/index.ts';
import { databaseFileIn, openSqliteStore } from './sqlite/index.ts';
import { describeStore, type StoreUnderTest } from './testing/store-suite.ts';
import { temporaryFolders } from './testing/temporary-folder.ts';

const newFolder = temporaryFolders();

const stores: Record<string, StoreUnderTest> = {
  SQLite: {
    newPlace: () => databaseFileIn(newFolder()),
    open: openSqliteStore,
    outlivesItself: true,
    isShared: true,
  },
  files: {
    newPlace: () => join(newFolder(), 'journals'),
    open: openFilesStore,
    outlivesItself: true,
    isShared: false,
  },
  memory: {
    newPlace: () => '',
    open: async () => createMemoryStore(),
    outlivesItself: false,
    isShared: false,
  },
};

for (const [name, store] of Object.entries(stores)) describeStore(name, store);
