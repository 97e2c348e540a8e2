import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { paperNames } from './make-paper.ts';

describe('paperNames', () => {
  it('are the papers that the reference page tells of', () => {
    const page = readFileSync(new URL('../../../docs/reference/papers.md', import.meta.url), 'utf8');
    const named = [...page.matchAll(/^\| `([a-z-]+)` +\|/gm)].map(([, name]) => name);
    expect(named.sort()).toEqual([...paperNames].sort());
  });
});
