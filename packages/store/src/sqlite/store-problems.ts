import Database from 'better-sqlite3';
import { StoreUnavailable } from '../port.ts';

/** The sentence for an error of SQLite or of the file system, and whether it is about reading, writing or opening. */
export function storeUnavailable(error: unknown, file: string): unknown {
  if (!(error instanceof Database.SqliteError)) return error;
  const { code } = error;
  const is = (start: string) => code === start || code.startsWith(`${start}_`);
  const options = { cause: error };
  if (is('SQLITE_BUSY') || is('SQLITE_LOCKED')) {
    return new StoreUnavailable(
      'in use',
      file,
      `Cannot use the store ${file}: another program holds it and did not let go in time. Close the other program, then try again.`,
      options,
    );
  }
  if (is('SQLITE_FULL')) {
    return new StoreUnavailable(
      'full',
      file,
      `Cannot write to the store ${file}: there is no room left for it, nothing was added. Make room on the disk, then try again.`,
      options,
    );
  }
  if (is('SQLITE_NOTADB') || is('SQLITE_CORRUPT')) {
    return new StoreUnavailable(
      'damaged',
      file,
      `Cannot read the store ${file}: its content is damaged, nothing was changed. Keep a copy of it as it is, and put back the last good copy.`,
      options,
    );
  }
  if (is('SQLITE_READONLY') || is('SQLITE_PERM') || is('SQLITE_IOERR')) {
    return new StoreUnavailable(
      'cannot be written',
      file,
      `Cannot write to the store ${file}: the system does not allow it (${error.message}). Check who may write to the file and its folder, then try again.`,
      options,
    );
  }
  if (is('SQLITE_CANTOPEN')) return cannotOpen(file, error);
  return error;
}

/** The file or its folder cannot be opened or made. */
export function cannotOpen(path: string, cause: unknown): StoreUnavailable {
  const why = cause instanceof Error ? cause.message : String(cause);
  return new StoreUnavailable(
    'cannot be opened',
    path,
    `Cannot open the store ${path}: the system does not allow it (${why}). Check the path and who may write there, or name another one.`,
    { cause },
  );
}
