import { readFile } from 'node:fs/promises';
import type { Language } from '@becket/core';

/** The JSON in a file. Throws: SyntaxError when it is not JSON; the system's error when it cannot be read. */
export async function jsonFrom(path: string, { say }: Language): Promise<unknown> {
  const text = await readFile(path, 'utf8');
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch (error) {
    throw new SyntaxError(
      say('Cannot read {path}: JSON is needed, but {problem}. Mend the file and try again.', {
        path,
        problem: error instanceof Error ? error.message : String(error),
      }),
    );
  }
}
