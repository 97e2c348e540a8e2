import fc from 'fast-check';
import { expect, test } from 'vitest';
import { keysBetween, keysLeft, stringingRuns } from './runs.ts';

const anyNote = fc.record({
  strings: fc.constantFrom(1, 2, 3),
  winding: fc.constantFrom('plain' as const, 'wound' as const),
});

test('stringingRuns() says of every key what the map says, in as few runs as there are changes', () => {
  fc.assert(
    fc.property(fc.array(fc.option(anyNote, { nil: undefined }), { maxLength: 88 }), (notes) => {
      const unisons = new Map(
        notes.flatMap((note, index) =>
          note === undefined
            ? []
            : [
                [
                  index + 1,
                  { key: index + 1, ...note, layers: note.winding === 'wound' ? 1 : 0, entry: 'x' },
                ] as const,
              ],
        ),
      );
      const runs = stringingRuns(unisons);
      for (const { firstKey, lastKey, strings, winding } of runs)
        for (let key = firstKey; key <= lastKey; key += 1)
          expect(unisons.get(key)).toMatchObject({ strings, winding });
      expect(runs.reduce((sum, run) => sum + run.lastKey - run.firstKey + 1, 0)).toBe(unisons.size);
      for (let index = 1; index < runs.length; index += 1) {
        const [before, after] = [runs[index - 1]!, runs[index]!];
        const touch = before.lastKey + 1 === after.firstKey;
        expect(touch && before.strings === after.strings && before.winding === after.winding).toBe(false);
      }
      const left = keysLeft({ firstKey: 1, lastKey: 88 }, (key) => unisons.has(key));
      expect(left.reduce((sum, run) => sum + run.lastKey - run.firstKey + 1, 0)).toBe(88 - unisons.size);
    }),
  );
});

test('two notes are put in their order, whichever was typed first', () => {
  expect(keysBetween('E2', ' a0 ')).toEqual({ firstKey: 1, lastKey: 20 });
  expect(keysBetween('A0', 'E2')).toEqual({ firstKey: 1, lastKey: 20 });
});
