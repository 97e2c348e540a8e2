import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chanceAllMissed, hiddenZones } from './missed-zone.ts';

/** Every way to take `count` of `pins` pins. */
function* everySample(pins: number, count: number, from = 0): Generator<number[]> {
  if (count === 0) {
    yield [];
    return;
  }
  for (let pin = from; pin <= pins - count; pin += 1) {
    for (const rest of everySample(pins, count - 1, pin + 1)) yield [pin, ...rest];
  }
}

describe('chanceAllMissed()', () => {
  it('equals the share of all samples that miss, by enumeration', () => {
    for (let pins = 1; pins <= 9; pins += 1) {
      for (let bad = 0; bad <= pins; bad += 1) {
        for (let measured = 0; measured <= pins; measured += 1) {
          let all = 0;
          let missing = 0;
          for (const sample of everySample(pins, measured)) {
            all += 1;
            if (sample.every((pin) => pin >= bad)) missing += 1;
          }
          expect(chanceAllMissed({ pins, bad, measured })).toBeCloseTo(missing / all, 12);
        }
      }
    }
  });

  it('refuses more bad pins than there are', () => {
    expect(() => chanceAllMissed({ pins: 5, bad: 6, measured: 1 })).toThrow(RangeError);
  });
});

describe('hiddenZones()', () => {
  const field = fc.integer({ min: 1, max: 40 }).chain((pins) =>
    fc.record({
      pins: fc.constant(pins),
      size: fc.integer({ min: 1, max: pins }),
      measured: fc.uniqueArray(fc.integer({ min: 0, max: pins - 1 })),
    }),
  );

  it('equals the share of zone places without a measured pin, and no other pin would lower it further', () => {
    fc.assert(
      fc.property(field, ({ pins, size, measured }) => {
        const chanceOf = (taken: readonly number[]) => {
          let missed = 0;
          for (let start = 0; start + size <= pins; start += 1) {
            if (!taken.some((pin) => pin >= start && pin < start + size)) missed += 1;
          }
          return missed / (pins - size + 1);
        };
        const answer = hiddenZones({ pins, size, measured });
        expect(answer.chanceMissed).toBeCloseTo(chanceOf(measured), 12);
        const best = Math.min(...Array.from({ length: pins }, (_, pin) => chanceOf([...measured, pin])));
        expect(answer.chanceAfterNext).toBeCloseTo(best, 12);
        if (answer.nextPin !== undefined)
          expect(chanceOf([...measured, answer.nextPin])).toBeCloseTo(best, 12);
      }),
    );
  });
});
