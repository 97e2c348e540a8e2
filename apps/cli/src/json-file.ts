import { readFile } from 'node:fs/promises';

/** The JSON in a file. Throws: SyntaxError when it is not JSON; the system's error when it cannot be read. */
export async function jsonFrom(path: string): Promise<unknown> {
  const text = await readFile(path, 'utf8');
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch (error) {
    throw new SyntaxError(
      `Cannot read ${path}: JSON is needed, but ${error instanceof Error ? error.message : String(error)}. Mend the file and try again.`,
    );
  }
}
