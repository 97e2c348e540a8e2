import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { millimetres } from '../units/index.ts';
import { cutLength, loopPlan, type PlanString, shiftsThatSaveTies } from './loop-plan.ts';

/** Notes of three strings (or of `counts`), one size a note, sizes never growing towards the treble. */
function section(sizes: readonly number[], counts: readonly number[] = sizes.map(() => 3)): PlanString[] {
  return sizes.flatMap((size, note) =>
    Array.from({ length: counts[note]! }, (_, index) => ({ key: 40 + note, string: index + 1, size })),
  );
}
const sections = fc
  .array(fc.record({ drop: fc.boolean(), count: fc.integer({ min: 1, max: 3 }) }), {
    minLength: 0,
    maxLength: 5,
  })
  .map((notes) => {
    const dropsUpTo = (last: number) => notes.slice(0, last + 1).filter(({ drop }) => drop).length;
    return section(
      notes.map((_, note) => 18 - dropsUpTo(note)),
      notes.map(({ count }) => count),
    );
  });

/** Fewest tied strings by trying every way to loop or tie. */
function fewestTied(strings: readonly PlanString[], from = 0): number {
  if (from >= strings.length) return 0;
  const tied = 1 + fewestTied(strings, from + 1);
  const next = strings[from + 1];
  if (next === undefined || next.size !== strings[from]!.size) return tied;
  return Math.min(tied, fewestTied(strings, from + 2));
}

describe('loopPlan()', () => {
  it('ties as few strings as an exhaustive search, loops only neighbours of one size, and uses each string once', () => {
    fc.assert(
      fc.property(sections, (strings) => {
        const { wires, tied } = loopPlan(strings);
        expect(tied).toBe(fewestTied(strings));
        expect(wires.flatMap((wire) => [...wire.strings])).toEqual(strings.map((_, index) => index));
        for (const { strings: pair } of wires) {
          if (pair.length === 2) expect(strings[pair[0]]!.size).toBe(strings[pair[1]]!.size);
        }
      }),
    );
  });

  it('an odd section of one size has one tied string, an even one none', () => {
    expect(loopPlan(section([17, 17, 17])).tied).toBe(1);
    expect(loopPlan(section([17, 17])).tied).toBe(0);
  });

  it('names the string at which a size change falls inside a loop', () => {
    expect(loopPlan(section([18, 17])).changesInsideLoops).toEqual([3]);
    expect(loopPlan(section([18, 18, 17, 17])).changesInsideLoops).toEqual([]);
  });
});

describe('shiftsThatSaveTies()', () => {
  it('finds the shift by one note that mends two odd runs', () => {
    expect(shiftsThatSaveTies(section([18, 18, 18, 17]))).toEqual([
      { fromKey: 43, toKey: 42, tiedBefore: 2, tiedAfter: 0 },
    ]);
  });

  it('promises only what the plan of the moved sizes keeps', () => {
    fc.assert(
      fc.property(sections, (strings) => {
        for (const { fromKey, toKey, tiedAfter, tiedBefore } of shiftsThatSaveTies(strings)) {
          const low = Math.min(fromKey, toKey);
          const size =
            toKey > fromKey
              ? strings.find(({ key }) => key === fromKey - 1)!.size
              : strings.find(({ key }) => key === fromKey)!.size;
          const moved = strings.map((string) => (string.key === low ? { ...string, size } : string));
          expect(fewestTied(moved)).toBe(tiedAfter);
          expect(tiedAfter).toBeLessThan(tiedBefore);
        }
      }),
    );
  });

  it('misses no change that saves a tied string when moved by one note, and gives the best first', () => {
    let saving = 0;
    fc.assert(
      fc.property(sections, (strings) => {
        const keys = [...new Set(strings.map(({ key }) => key))];
        const sizeAt = (key: number) => strings.find((string) => string.key === key)!.size;
        const tied = fewestTied(strings);
        // Every note beside a change takes the size of its neighbour over the change, tried one by one.
        const tries: { fromKey: number; toKey: number; tiedAfter: number }[] = [];
        for (const [low, high] of keys.slice(1).map((key) => [key - 1, key] as const)) {
          if (sizeAt(low) === sizeAt(high)) continue;
          for (const [note, size, toKey] of [
            [high, sizeAt(low), high + 1],
            [low, sizeAt(high), low],
          ] as const) {
            const moved = strings.map((string) => (string.key === note ? { ...string, size } : string));
            const isSizeLost = !moved.some((string) => string.size === sizeAt(note));
            if (!isSizeLost && fewestTied(moved) < tied)
              tries.push({ fromKey: high, toKey, tiedAfter: fewestTied(moved) });
          }
        }
        saving += tries.length;
        const shifts = shiftsThatSaveTies(strings);
        const pick = ({ fromKey, toKey, tiedAfter }: (typeof tries)[number]) => ({
          fromKey,
          toKey,
          tiedAfter,
        });
        expect(new Set(shifts.map((shift) => JSON.stringify(pick(shift))))).toEqual(
          new Set(tries.map((one) => JSON.stringify(pick(one)))),
        );
        shifts.forEach(({ tiedAfter }, index) => {
          expect(tiedAfter).toBeGreaterThanOrEqual(shifts[index - 1]?.tiedAfter ?? 0);
        });
      }),
      { seed: 3, numRuns: 1500 },
    );
    expect(saving).toBeGreaterThan(50);
  });
});

describe('cutLength()', () => {
  const common = {
    pinDiameter: millimetres(7),
    wireDiameter: millimetres(1),
    hitchPinDiameter: millimetres(4),
    coils: 3,
    becket: millimetres(6),
    waste: millimetres(30),
    tie: millimetres(80),
  };
  const string = { front: millimetres(100), speaking: millimetres(500), back: millimetres(120) };
  // Worked by hand: 2·0.72 + 2·(3·π·0.008 + 0.006 + 0.03) + π/2·0.005 = 1.670650 m.
  it('adds up a looped wire as by hand', () => {
    expect(cutLength({ ...common, strings: [string, string] }).total).toBeCloseTo(1.67065, 5);
  });

  it('gives a tied wire its tie and no hitch turn, and its parts add up', () => {
    const { total, parts } = cutLength({ ...common, strings: [string] });
    expect(parts.hitch).toBe(0);
    expect(parts.tie).toBe(0.08);
    expect(Object.values(parts).reduce((sum, part) => sum + part, 0)).toBeCloseTo(total, 12);
  });

  it('refuses a wire of no string and a back length of zero', () => {
    expect(() => cutLength({ ...common, strings: [] })).toThrow(/one or two strings/);
    expect(() => cutLength({ ...common, strings: [{ ...string, back: millimetres(0) }] })).toThrow(
      /back length must be > 0/,
    );
  });
});
