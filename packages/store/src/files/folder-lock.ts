import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { StoreUnavailable } from '../port.ts';

/** Name of the lock's file in the folder; it stays there, empty, when nobody holds it. */
export const lockName = 'lock';

/**
 * Takes the folder for this program alone; gives back how to let it go. Throws: StoreUnavailable when another has it.
 *
 * It is the operating system's own lock, taken through SQLite as Node has no call for it. It ends with the program
 * that holds it, however that ends: a program that was killed leaves no lock behind.
 */
export function takeFolder(folder: string): () => void {
  const lock = new Sqlite(join(folder, lockName), { timeout: 0 });
  try {
    lock.exec('begin exclusive');
  } catch (error) {
    lock.close();
    if (!(error instanceof Sqlite.SqliteError) || !error.code.startsWith('SQLITE_BUSY')) throw error;
    throw new StoreUnavailable(
      'in use',
      folder,
      `Cannot open the store ${folder}: another program has it open, and a folder of files is for one program at a time. Close the other program, then try again.`,
      { cause: error },
    );
  }
  return () => lock.close();
}
