import { closeSync, openSync, readSync } from 'node:fs';

/** Marks a SQLite file as Becket's: 'BCKT' in ASCII. */
export const applicationId = 0x42434b54;

/**
 * What stands at the beginning of a file, read without opening it as a database, so that a file that is not ours is
 * not touched in any way.
 *
 * Source: SQLite, "Database File Format", section 1.3: the text 'SQLite format 3' and a NUL at offset 0, the application id at offset 68.
 */
export function fileHeader(file: string): 'absent' | 'empty' | 'ours' | 'another' {
  const header = Buffer.alloc(100);
  let length: number;
  try {
    const handle = openSync(file, 'r');
    try {
      length = readSync(handle, header, 0, header.length, 0);
    } finally {
      closeSync(handle);
    }
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return 'absent';
    throw error;
  }
  if (length === 0) return 'empty';
  const isSqlite = header.toString('latin1', 0, 16) === 'SQLite format 3\0';
  return isSqlite && header.readUInt32BE(68) === applicationId ? 'ours' : 'another';
}
