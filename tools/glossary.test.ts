import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { filesBelow } from './files-below.ts';

const root = resolve(fileURLToPath(import.meta.url), '../..');

describe('the glossary', () => {
  const rows = readFileSync(join(root, 'docs/reference/glossary.md'), 'utf8')
    .split('\n')
    .filter((line) => line.startsWith('| ') && !/^\| (---|word )/.test(line))
    .map((line) => line.split('|').map((cell) => cell.trim()));

  it('has three columns and each word once', () => {
    for (const row of rows) expect(row).toHaveLength(5);
    const words = rows.map(([, word]) => word);
    expect(new Set(words).size).toBe(words.length);
  });

  it('names things that are in the code', () => {
    const source = filesBelow(join(root, 'packages'), /\.ts$/)
      .filter((file) => !file.endsWith('.test.ts'))
      .map((file) => readFileSync(file, 'utf8'))
      .join('\n');
    const names = rows.flatMap(([, , , code]) => [...code!.matchAll(/`([^`]+)`/g)].map((match) => match[1]!));
    expect(names.length).toBeGreaterThan(40);
    const missing = names.filter((name) => !new RegExp(`(?<![\\w-])${name}(?![\\w-])`).test(source));
    expect(missing).toEqual([]);
  });
});
