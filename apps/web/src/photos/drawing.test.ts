import { type PhotoMark, photoScale } from '@becket/journal';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { crossSteps, markOf, markWords, movedBy, shortWords } from './drawing.ts';

const share = fc.double({ min: 0, max: 1, noNaN: true });
const point = fc.record({ x: share, y: share });

test('the cross never leaves the photo, and every other key is left alone', () => {
  const keys = fc.constantFrom('ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown');
  fc.assert(
    fc.property(point, fc.array(keys, { maxLength: 60 }), (start, pressed) => {
      let at = start;
      for (const key of pressed) at = movedBy(at, key, crossSteps.coarse)!;
      for (const value of [at.x, at.y]) {
        expect(value).toBeGreaterThanOrEqual(0);
        expect(value).toBeLessThanOrEqual(1);
      }
    }),
  );
  expect(movedBy({ x: 0.5, y: 0.5 }, 'Enter', 0.1)).toBeUndefined();
});

test('a stroke becomes a mark from end to end; a slip of the finger becomes none', () => {
  expect(markOf('arrow', { x: 0, y: 0 }, { x: 0.5, y: 0.5 })).toEqual({
    mark: 'arrow',
    from: { x: 0, y: 0 },
    to: { x: 0.5, y: 0.5 },
  });
  expect(markOf('distance', { x: 0.5, y: 0.5 }, { x: 0.502, y: 0.5 })).toBeUndefined();
  expect(markOf('label', { x: 0.5, y: 0.5 }, { x: 0.5, y: 0.5 })).toMatchObject({ at: { x: 0.5, y: 0.5 } });
});

describe('the words of a distance', () => {
  const bar: PhotoMark = { mark: 'distance', from: { x: 0, y: 0 }, to: { x: 0.5, y: 0 }, known_m: 0.1 };
  const half: PhotoMark = { mark: 'distance', from: { x: 0, y: 1 }, to: { x: 0.25, y: 1 } };
  const wordsOf = (marks: PhotoMark[], index: number) =>
    [markWords, shortWords].map((words) =>
      words(marks[index]!, index, {
        scale: photoScale({ width: 1000, height: 500, marks }),
        unit: 'mm',
      }),
    );

  test('say in both units what it is, how sure, and where it comes from', () => {
    expect(wordsOf([bar, half], 0)).toEqual([
      'Distance: 100.0 mm = 3.937 in, measured on the piano; the scale bar',
      '100.0 mm',
    ]);
    expect(wordsOf([bar, half], 1)).toEqual([
      'Distance: 50.0 mm = 1.969 in ± 0.6 mm, inferred from the scale bar',
      '≈ 50.0 mm',
    ]);
  });

  test('say that there is no length while none is known', () => {
    expect(wordsOf([half], 0)).toEqual([
      'Distance: no length yet, since no distance on this photo is known',
      '?',
    ]);
  });
});
