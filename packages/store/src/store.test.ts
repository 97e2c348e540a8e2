import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { openFilesStore } from './files/index.ts';
import { createMemoryStore } from './memory/index.ts';
import { databaseFileIn, openSqliteStore } from './sqlite/index.ts';
import { type BlobsUnderTest, describeBlobs } from './testing/blob-suite.ts';
import { describeStore } from './testing/store-suite.ts';
import { temporaryFolders } from './testing/temporary-folder.ts';

const newFolder = temporaryFolders();

const stores: Record<string, BlobsUnderTest> = {
  SQLite: {
    newPlace: () => databaseFileIn(newFolder()),
    open: openSqliteStore,
    outlivesItself: true,
    isShared: true,
    overwrite: (file, digest, bytes) => {
      const database = new Sqlite(file);
      database.prepare('update blobs set bytes = ? where digest = ?').run(Buffer.from(bytes), digest);
      database.close();
    },
  },
  files: {
    newPlace: () => join(newFolder(), 'journals'),
    open: openFilesStore,
    outlivesItself: true,
    isShared: false,
    overwrite: (folder, digest, bytes) => writeFileSync(join(folder, 'blobs', digest), bytes),
  },
  memory: {
    newPlace: () => '',
    open: async () => createMemoryStore(),
    outlivesItself: false,
    isShared: false,
  },
};

for (const [name, store] of Object.entries(stores)) {
  describeStore(name, store);
  describeBlobs(name, store);
}
