import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { filesBelow } from './files-below.ts';

const root = resolve(fileURLToPath(import.meta.url), '../..');

describe('the published values in checks/checks.json', () => {
  const checks: { readonly id: string; readonly source: string }[] = JSON.parse(
    readFileSync(join(root, 'checks/checks.json'), 'utf8'),
  );
  const patterns = filesBelow(join(root, 'packages/core/src'), /\.test\.ts$/).flatMap((file) =>
    [...readFileSync(file, 'utf8').matchAll(/publishedChecks\(\/(.+?)\/\)/g)].map(
      ([, pattern]) => new RegExp(pattern!),
    ),
  );

  it('are each held against core by a test', () => {
    const left = checks.map(({ id }) => id).filter((id) => !patterns.some((pattern) => pattern.test(id)));
    expect(left).toEqual([]);
  });

  it('each name their source, and none stands twice', () => {
    expect(checks.filter(({ source }) => source.trim() === '')).toEqual([]);
    expect(new Set(checks.map(({ id }) => id)).size).toBe(checks.length);
  });
});
