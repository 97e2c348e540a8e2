import { describe, expect, it } from 'vitest';
import { parseEntry } from '../entry.ts';
import type { Fact } from '../facts/index.ts';
import { entryOf, ulidFrom } from '../testing/arbitrary-entries.ts';
import { foldJob } from './fold-job.ts';

const opened: Fact = { kind: 'job-opened', v: 1, title: 'a job' };
const crack = (extent_m: number): Extract<Fact, { kind: 'finding' }> => ({
  kind: 'finding',
  v: 1,
  thing: 'board-cracks',
  place: { section: 'treble' },
  answer: { is: 'seen', what: 'a crack beside rib 4', gravity: 'clear', whatToDo: 'nothing', extent_m },
});

describe('foldJob() on the facts of an appraisal', () => {
  it('keeps a corrected finding out, and both in the journal', () => {
    const job = foldJob([
      entryOf(0, 1, opened),
      entryOf(1, 2, crack(0.1)),
      entryOf(2, 3, { ...crack(0.12), replaces: ulidFrom(1001), reason: 'measured again' }),
    ]);
    expect(job.findings.map(({ answer }) => (answer.is === 'seen' ? answer.extent_m : answer.is))).toEqual([
      0.12,
    ]);
    expect(job.entryCount).toBe(3);
  });

  it('lets the latest remedy of a string stand, and "as the rest" takes it back', () => {
    const remedy = (string: number, what: 'bushing' | 'plug' | 'as the rest'): Fact => ({
      kind: 'pin-remedy',
      v: 1,
      key: 40,
      string,
      remedy: what,
    });
    const job = foldJob([
      entryOf(0, 1, opened),
      entryOf(1, 2, remedy(1, 'bushing')),
      entryOf(2, 3, remedy(2, 'plug')),
      entryOf(3, 4, remedy(1, 'as the rest')),
    ]);
    expect(job.pinRemedies.map(({ string, remedy: what }) => [string, what])).toEqual([[2, 'plug']]);
  });

  it('notes a finding after the seal as an amendment', () => {
    const job = foldJob([
      entryOf(0, 1, opened),
      entryOf(1, 2, { kind: 'sealed', v: 1, digest: 'a'.repeat(64), entries: 1, covers: [ulidFrom(1000)] }),
      entryOf(2, 3, { ...crack(0.1), reason: 'seen when the board was cleaned' }),
    ]);
    expect(job.amendments.map(({ kind, reason }) => [kind, reason])).toEqual([
      ['finding', 'seen when the board was cleaned'],
    ]);
  });

  it('refuses a go with conditions that names none', () => {
    const fact = { kind: 'decision-made', v: 1, verdict: 'go with conditions', conditions: [], because: 'x' };
    expect(() => parseEntry({ ...entryOf(1, 2, opened), fact: { ...fact, advised: 'go' } })).toThrow(
      /at least one condition/,
    );
  });
});
