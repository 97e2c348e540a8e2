import { asFoundRecord } from '@becket/journal';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { recordReadings } from '../record-reading.ts';
import { memoryContext } from '../testing/memory-context.ts';
import { openOneSection } from '../testing/one-section.ts';
import { STARTING_CUT_POLICY } from './cut-policy.ts';
import { wireEnds } from './wire-ends.ts';

/** Front lengths [mm] read at some notes of one section of keys 40 to 52. */
async function endsOf(fronts: ReadonlyMap<number, number>) {
  const context = memoryContext();
  const id = await openOneSection(context, { firstKey: 40, lastKey: 52 });
  const { job } = await recordReadings(
    context,
    id,
    [...fronts].map(([key, value]) => ({ quantity: 'front-length', place: { key }, value, unit: 'mm' })),
  );
  const { notes } = asFoundRecord(job);
  const endsAt = wireEnds(notes, STARTING_CUT_POLICY);
  return (key: number) => {
    const { value, from } = endsAt(notes.find((note) => note.key === key)!).front;
    return { mm: value * 1000, from };
  };
}

describe('wireEnds()', () => {
  it('takes the line between the nearest notes that were read, and beyond the last of them its length', async () => {
    const at = await endsOf(
      new Map([
        [42, 120],
        [46, 112],
        [50, 100],
      ]),
    );
    expect(at(42)).toEqual({ mm: 120, from: 'as read' });
    // Worked by hand: a quarter of the way from 120 down to 112, three quarters of the way from 112 down to 100.
    expect(at(43).mm).toBeCloseTo(118, 9);
    expect(at(49).mm).toBeCloseTo(103, 9);
    expect(at(40)).toEqual({ mm: 120, from: 'line between its neighbours' });
    expect(at(52).mm).toBeCloseTo(100, 9);
  });

  it('takes the figure of the policy where the section has no reading', async () => {
    expect((await endsOf(new Map()))(45)).toEqual({ mm: 120, from: 'starting figure' });
  });

  it('gives back a straight line wherever on it readings were taken', () =>
    fc.assert(
      fc.asyncProperty(
        fc.uniqueArray(fc.integer({ min: 40, max: 52 }), { minLength: 2, maxLength: 6 }),
        fc.integer({ min: 60, max: 90 }),
        async (keys, base) => {
          const line = (key: number) => base + 2 * (key - 40);
          const at = await endsOf(new Map(keys.map((key) => [key, line(key)])));
          for (let key = Math.min(...keys); key <= Math.max(...keys); key++)
            expect(at(key).mm).toBeCloseTo(line(key), 6);
        },
      ),
      { numRuns: 20 },
    ));
});
