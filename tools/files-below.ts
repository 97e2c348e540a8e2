import { readdirSync } from 'node:fs';
import { join } from 'node:path';

const skipped = new Set(['node_modules', 'dist', '.git', '.becket', 'data', 'coverage', 'test-results']);

/** Paths of the files below a folder whose name fits, in a stable order. */
export function filesBelow(folder: string, fits: RegExp): string[] {
  return readdirSync(folder, { withFileTypes: true })
    .sort((a, b) => (a.name < b.name ? -1 : 1))
    .flatMap((item) => {
      if (item.isDirectory()) return skipped.has(item.name) ? [] : filesBelow(join(folder, item.name), fits);
      return fits.test(item.name) ? [join(folder, item.name)] : [];
    });
}
