import { describe, expect, it } from 'vitest';
import { parseEntry } from '../entry.ts';
import type { Fact } from '../facts/index.ts';
import { entryOf, ulidFrom } from '../testing/arbitrary-entries.ts';
import { foldJob } from './fold-job.ts';

const opened: Fact = { kind: 'job-opened', v: 1, title: 'a job' };
const proposed = (name: string): Extract<Fact, { kind: 'scale-proposed' }> => ({
  kind: 'scale-proposed',
  v: 1,
  name,
  notes: [
    {
      winding: 'wound',
      key: 20,
      core_m: 0.0011,
      layers: [{ wire_m: 0.0007, bareFront_m: 0.02, bareBack_m: 0.015 }],
      from: 'as found',
    },
    { winding: 'plain', key: 40, gauge_m: 0.00095, from: 'computed' },
  ],
  weights: { 'size change': 1e-4 },
  madeFrom: 'a'.repeat(64),
});
const chosen = (scale: string): Fact => ({
  kind: 'scale-chosen',
  v: 1,
  scale,
  reason: 'evener across the break',
  digest: 'b'.repeat(64),
});

describe('foldJob() on proposed scales', () => {
  it('keeps every proposal, drops a withdrawn one, and lets the latest choice stand', () => {
    const job = foldJob([
      entryOf(0, 1, opened),
      entryOf(1, 2, proposed('first')),
      entryOf(2, 3, proposed('second')),
      entryOf(3, 4, chosen(ulidFrom(1001))),
      entryOf(4, 5, chosen('as found')),
      entryOf(5, 6, { kind: 'withdrawn', v: 1, entry: ulidFrom(1001), reason: 'a slip' }),
    ]);
    expect(job.proposals.map(({ name }) => name)).toEqual(['second']);
    expect(job.chosenScale?.scale).toBe('as found');
  });

  it('goes back to the choice before when the last one is withdrawn', () => {
    const job = foldJob([
      entryOf(0, 1, opened),
      entryOf(1, 2, proposed('first')),
      entryOf(2, 3, chosen(ulidFrom(1001))),
      entryOf(3, 4, chosen('as found')),
      entryOf(4, 5, { kind: 'withdrawn', v: 1, entry: ulidFrom(1003), reason: 'changed my mind' }),
    ]);
    expect(job.chosenScale?.scale).toBe(ulidFrom(1001));
  });

  it('refuses a proposal that names a key twice, or a choice without a reason', () => {
    const twice = proposed('twice');
    const [, plain] = twice.notes;
    const parsed = (fact: unknown) => () => parseEntry({ ...entryOf(1, 2, opened), fact });
    expect(parsed({ ...twice, notes: [plain, plain] })).toThrow(/each key at most once/);
    expect(parsed({ ...chosen('as found'), reason: '' })).toThrow(SyntaxError);
  });
});
