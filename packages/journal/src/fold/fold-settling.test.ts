import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Entry, parseEntry } from '../entry.ts';
import type { Fact, FactOf } from '../facts/index.ts';
import { entryOf, jobId, ulidFrom } from '../testing/arbitrary-entries.ts';
import { foldHandOver } from './fold-hand-over.ts';
import { foldJob } from './fold-job.ts';
import { foldSettling } from './fold-settling.ts';

const opened: Fact = { kind: 'job-opened', v: 1, title: 'a job' };
const begun = (pass: number): Fact => ({
  kind: 'pass-begun',
  v: 1,
  pass,
  on: '2026-05-04',
  referencePitch_hz: 440,
  order: ['tenor', 'bass'],
});
const read = (
  pass: number,
  value: FactOf<'pass-read'>['value'],
  section: string,
  offset_cents: number,
  key?: number,
): Fact => ({
  kind: 'pass-read',
  v: 1,
  passBegun: ulidFrom(1000 + pass),
  value,
  section,
  offset_cents,
  ...(key === undefined ? {} : { key }),
});
const withdrawn = (entry: number): Fact => ({
  kind: 'withdrawn',
  v: 1,
  entry: ulidFrom(1000 + entry),
  reason: 'a slip',
});
const journal = (facts: readonly Fact[]): Entry[] =>
  [opened, ...facts].map((fact, index) => entryOf(index, index + 1, fact));

describe('foldSettling()', () => {
  it('keeps sections in the order they are pulled up, with the last value of each place', () => {
    const { passes } = foldSettling(
      journal([
        begun(1),
        read(1, 'before', 'bass', -30),
        read(1, 'before', 'tenor', -42, 30),
        read(1, 'before', 'tenor', -40, 34),
        read(1, 'before', 'tenor', -44, 30),
        read(1, 'after', 'bass', 6),
      ]),
    );
    expect(passes).toHaveLength(1);
    const [tenor, bass] = passes[0]!.sections;
    expect([tenor!.section, bass!.section]).toEqual(['tenor', 'bass']);
    expect(tenor!.before.map(({ key, offset_cents }) => [key, offset_cents])).toEqual([
      [30, -44],
      [34, -40],
    ]);
    expect(tenor!.after).toEqual([]);
    expect(bass!.after.map(({ key, offset_cents }) => [key, offset_cents])).toEqual([[undefined, 6]]);
  });

  it('tells the passes by number, whichever was begun first; two of one number as they were begun', () => {
    const { passes } = foldSettling(journal([begun(2), begun(1), begun(2)]));
    expect(passes.map(({ pass, entry }) => [pass, entry])).toEqual([
      [1, ulidFrom(1002)],
      [2, ulidFrom(1001)],
      [2, ulidFrom(1003)],
    ]);
  });

  it('brings the value before back when the later one is taken back, and drops a pass with all of it', () => {
    const facts = [begun(1), read(1, 'before', 'bass', -30), read(1, 'before', 'bass', -3)];
    const bassOf = (more: readonly Fact[]) =>
      foldSettling(journal([...facts, ...more])).passes[0]?.sections.find(({ section }) => section === 'bass')
        ?.before[0]?.offset_cents;
    expect(bassOf([])).toBe(-3);
    expect(bassOf([withdrawn(3)])).toBe(-30);
    expect(foldSettling(journal([...facts, withdrawn(1)])).passes).toEqual([]);
  });

  it('ties what was done to what was planned, by day', () => {
    const plan = (on: string): Fact => ({ kind: 'follow-up-planned', v: 1, on, what: 'tuning' });
    const { followUps } = foldSettling(
      journal([
        plan('2026-07-01'),
        plan('2026-06-01'),
        { kind: 'follow-up-done', v: 1, followUp: ulidFrom(1001), on: '2026-07-03' },
      ]),
    );
    expect(followUps.map(({ on, done }) => [on, done?.on])).toEqual([
      ['2026-06-01', undefined],
      ['2026-07-01', '2026-07-03'],
    ]);
  });

  it('gives the same whatever order entries arrive in, and how often', () => {
    const entries = journal([
      begun(1),
      read(1, 'before', 'bass', -30),
      read(1, 'before', 'bass', -28),
      begun(2),
      read(4, 'before', 'tenor', -9),
      withdrawn(2),
    ]);
    const whole = foldSettling(entries);
    fc.assert(
      fc.property(fc.shuffledSubarray(entries, { minLength: entries.length }), (shuffled) => {
        expect(foldSettling([...shuffled, ...shuffled.slice(0, 2)])).toEqual(whole);
      }),
    );
  });
});

describe('foldHandOver()', () => {
  const handed = (to: string): Fact => ({
    kind: 'handed-over',
    v: 1,
    to,
    on: '2026-06-01',
    signedBy: 'Ada',
    cautions: [],
    aftercare: { tuneOn: [] },
    leftAlone: [],
    deviations: [],
    stillOpen: [],
  });

  it('is the last that stands', () => {
    expect(foldHandOver(journal([]))).toBeUndefined();
    expect(foldHandOver(journal([handed('Ines'), handed('Okafor')]))?.to).toBe('Okafor');
    expect(foldHandOver(journal([handed('Ines'), handed('Okafor'), withdrawn(2)]))?.to).toBe('Ines');
  });
});

describe('the facts of settling', () => {
  it('leave the state of the job as it is, and are known to it', () => {
    const job = foldJob(journal([begun(1), read(1, 'before', 'bass', -30)]));
    expect(job.unknownEntries).toEqual([]);
    expect(job.entryCount).toBe(3);
  });

  it('are refused with an offset beyond what a string can stand at, or a section pulled twice', () => {
    const entry = entryOf(1, 2, read(1, 'before', 'bass', -30));
    expect(() => parseEntry({ ...entry, fact: { ...entry.fact, offset_cents: -1300 } })).toThrow(SyntaxError);
    expect(() =>
      parseEntry({ ...entry, job: jobId, fact: { ...begun(1), order: ['bass', 'bass'] } }),
    ).toThrow('each section at most once');
  });
});
