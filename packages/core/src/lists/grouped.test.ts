import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addToGroup, grouped } from './grouped.ts';

describe('grouped()', () => {
  it('loses nothing, and each group is what a filter of the whole by its name leaves', () => {
    fc.assert(
      fc.property(fc.array(fc.record({ name: fc.nat(4), value: fc.nat() })), (things) => {
        const groups = grouped(things, ({ name }) => name);
        expect([...groups.keys()]).toEqual([...new Set(things.map(({ name }) => name))]);
        for (const [name, own] of groups) expect(own).toEqual(things.filter((thing) => thing.name === name));
      }),
      { seed: 1 },
    );
  });

  it('has no group where there is nothing, and takes undefined for a name like any other', () => {
    expect(grouped([], String).size).toBe(0);
    expect(grouped([1, 2], () => undefined).get(undefined)).toEqual([1, 2]);
  });
});

describe('addToGroup()', () => {
  it('begins a group and goes on with it', () => {
    const groups = new Map<string, number[]>([['bass', [1]]]);
    addToGroup(groups, 'bass', 2);
    addToGroup(groups, 'treble', 3);
    expect(groups).toEqual(
      new Map([
        ['bass', [1, 2]],
        ['treble', [3]],
      ]),
    );
  });
});
