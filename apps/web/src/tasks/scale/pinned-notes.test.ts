import { describe, expect, it } from 'vitest';
import { pinnedWords, withPin } from './pinned-notes.ts';

describe('pinned notes', () => {
  it('are one more or one less, and the set before stays as it was', () => {
    const none: ReadonlySet<number> = new Set();
    const one = withPin(none, 49, true);
    expect([...none]).toEqual([]);
    expect([...withPin(one, 50, true)]).toEqual([49, 50]);
    expect([...withPin(one, 49, false)]).toEqual([]);
  });

  it('are told in the order of the keys', () => {
    expect(pinnedWords(new Set())).toBe('No note is pinned.');
    expect(pinnedWords(new Set([50, 49]))).toMatch(/^Pinned: A4, A#4\./);
  });
});
