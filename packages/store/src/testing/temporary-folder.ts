import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';

/** Gives new empty folders for the tests of a file, and removes them when its tests are done. */
export function temporaryFolders(): () => string {
  const made: string[] = [];
  afterAll(() => {
    for (const folder of made) rmSync(folder, { recursive: true, force: true });
  });
  return () => {
    const folder = mkdtempSync(join(tmpdir(), 'becket-test-'));
    made.push(folder);
    return folder;
  };
}
