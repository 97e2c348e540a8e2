import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Fact } from '../facts/index.ts';
import { entryOf, ulidFrom } from '../testing/arbitrary-entries.ts';
import { foldStringing } from './fold-stringing.ts';

const wireOn = (...strings: [number, number][]): Fact => ({
  kind: 'wire-on',
  v: 1,
  strings: strings.map(([key, string]) => ({ key, string })),
  diameter_m: 0.001,
});
const mishap = (isOff: boolean, ...strings: [number, number][]): Fact => ({
  kind: 'stringing-mishap',
  v: 1,
  what: 'broke',
  strings: strings.map(([key, string]) => ({ key, string })),
  isOff,
});
const journal = (...facts: Fact[]) => facts.map((fact, index) => entryOf(index + 1, index + 1, fact));

describe('foldStringing()', () => {
  it('has a wire on both strings that it serves', () => {
    const { wires, again } = foldStringing(journal(wireOn([40, 1], [40, 2]), wireOn([40, 3])));
    expect([...wires.keys()]).toEqual(['40/1', '40/2', '40/3']);
    expect(wires.get('40/1')).toBe(wires.get('40/2'));
    expect(again.size).toBe(0);
  });

  it('takes the whole wire off when one of its strings breaks, until another is on', () => {
    const broken = journal(wireOn([40, 1], [40, 2]), wireOn([40, 3]), mishap(true, [40, 2]));
    const { wires, again, mishaps } = foldStringing(broken);
    expect([...wires.keys()]).toEqual(['40/3']);
    expect([...again].sort()).toEqual(['40/1', '40/2']);
    expect(mishaps).toHaveLength(1);
    const mended = foldStringing([...broken, entryOf(9, 9, wireOn([40, 1], [40, 2]))]);
    expect(mended.wires.size).toBe(3);
    expect(mended.again.size).toBe(0);
  });

  it('leaves a string on that slipped and was drawn up again', () => {
    const { wires, mishaps } = foldStringing(journal(wireOn([40, 1]), mishap(false, [40, 1])));
    expect([wires.size, mishaps.length]).toEqual([1, 1]);
  });

  it('forgets what was taken back: a wire, and a mishap with what it took off', () => {
    const entries = journal(wireOn([40, 1]), mishap(true, [40, 1]));
    const withdrawn = (seed: number, step: number): Fact => ({
      kind: 'withdrawn',
      v: 1,
      entry: ulidFrom(1000 + seed),
      reason: `a slip at ${step}`,
    });
    expect(foldStringing([...entries, entryOf(3, 3, withdrawn(2, 3))]).wires.has('40/1')).toBe(true);
    expect(foldStringing([...entries.slice(0, 1), entryOf(3, 3, withdrawn(1, 3))]).wires.size).toBe(0);
  });

  it('says the same of entries in any order and more than once', () => {
    const place = fc.tuple(fc.integer({ min: 40, max: 43 }), fc.integer({ min: 1, max: 3 }));
    const fact = fc.oneof(
      place.map((one) => wireOn(one)),
      place.map(([key, string]) => wireOn([key, string], [key + 1, string])),
      fc.tuple(fc.boolean(), place).map(([isOff, one]) => mishap(isOff, one)),
    );
    fc.assert(
      fc.property(fc.array(fact, { maxLength: 20 }), fc.infiniteStream(fc.nat()), (facts, chance) => {
        const entries = journal(...facts);
        const shuffled = [...entries, ...entries.slice(0, 3)]
          .map((entry) => [chance.next().value, entry] as const)
          .sort(([a], [b]) => a - b)
          .map(([, entry]) => entry);
        expect(foldStringing(shuffled)).toEqual(foldStringing(entries));
      }),
    );
  });
});
