import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { newUlid, ulidSchema } from './ulid.ts';

describe('newUlid()', () => {
  it('is a ULID whatever the time and chance', () => {
    fc.assert(
      fc.property(
        fc.date({ min: new Date(0), max: new Date('2999-12-31'), noInvalidDate: true }),
        fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }),
        (at, chance) => {
          expect(ulidSchema.parse(newUlid(at, () => chance))).toHaveLength(26);
        },
      ),
    );
  });

  it('sorts by time', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1 }), fc.integer({ min: 1, max: 1e9 }), (time, later) => {
        const early = newUlid(new Date(time), () => 0.999);
        expect(early < newUlid(new Date(time + later), () => 0)).toBe(true);
      }),
    );
  });

  it('spells the time as the ULID specification does: 1469918176385 is 01ARYZ6S41', () => {
    // The specification's own example, github.com/ulid/spec, from memory.
    expect(newUlid(new Date(1469918176385), () => 0)).toBe('01ARYZ6S410000000000000000');
  });
});
