import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LoadRooms, type SearchLoad } from './load-rooms.ts';

/** Four notes, bass to treble: the first two are a bridge of their own, the third and fourth a section each. */
const adds = [
  [3, 5],
  [4, 6],
  [2, 7],
  [1, 8],
].map((column) => Float64Array.from(column));
const limit = (highest: number, notes: readonly number[]): SearchLoad => ({
  highest,
  adds: adds.map((column, note) => (notes.includes(note) ? column : undefined)),
});
/** Down the notes with one candidate each; the room before the lowest that was taken, undefined when there is none. */
function roomAfter(loads: readonly SearchLoad[], candidates: readonly number[]): number[] | undefined {
  const rooms = new LoadRooms(loads, 4);
  let room: Float64Array | undefined = rooms.full();
  for (const [index, candidate] of candidates.entries())
    room = room && rooms.before(3 - index, room, candidate);
  return room && [...room];
}

describe('LoadRooms', () => {
  it('leaves what the notes after have not taken', () => {
    // 20 − 8 − 2 is left for the two lowest, which can use 11.
    expect(roomAfter([limit(20, [0, 1, 2, 3])], [1, 0])).toEqual([10]);
    expect(roomAfter([limit(20, [0, 1, 2, 3])], [1, 1])).toEqual([5]);
    expect(roomAfter([limit(14, [0, 1, 2, 3])], [1, 1])).toBeUndefined();
  });

  it('makes one room of limits that are about the same notes from there on: the smaller', () => {
    const all = limit(17, [0, 1, 2, 3]);
    expect(roomAfter([all, limit(9, [0, 1])], [1, 0])).toEqual([7]);
    expect(roomAfter([all, limit(6.5, [0, 1])], [1, 0])).toEqual([6.5]);
    // A limit of notes that are behind is over.
    expect(roomAfter([all, limit(9, [2])], [1, 0])).toEqual([7]);
  });

  it('has no more room than can be used', () => {
    expect(roomAfter([limit(1000, [0, 1, 2, 3])], [0])).toEqual([5 + 6 + 7]);
    // The two lowest together may have 8, the third has 7 at most.
    expect(roomAfter([limit(1000, [0, 1, 2, 3]), limit(8, [0, 1])], [0])).toEqual([8, 15]);
  });

  it('turns away what breaks a limit, and nothing else', () => {
    const isIn = fc.subarray([0, 1, 2, 3], { minLength: 1 });
    const limits = fc.array(fc.tuple(fc.integer({ min: 1, max: 30 }), isIn), {
      minLength: 1,
      maxLength: 5,
    });
    const candidates = fc.array(fc.constantFrom(0, 1), { minLength: 4, maxLength: 4 });
    fc.assert(
      fc.property(limits, candidates, (stated, chosen) => {
        const loads = stated.map(([highest, notes]) => limit(highest, notes));
        // Whatever the limits have in common, nested or not.
        const isKept = stated.every(
          ([highest, notes]) =>
            notes.reduce((sum, note) => sum + adds[note]![chosen[3 - note]!]!, 0) <= highest,
        );
        expect(roomAfter(loads, chosen) !== undefined).toBe(isKept);
      }),
      { seed: 4, numRuns: 500 },
    );
  });

  it('turns nothing away where the limit is above the heaviest of all, however the sum is rounded', () => {
    const column = fc.array(fc.double({ min: 100, max: 9000, noNaN: true }), {
      minLength: 12,
      maxLength: 12,
    });
    fc.assert(
      fc.property(column, (heaviest) => {
        const loads = [[0, 12] as const, [3, 9] as const].map(
          ([from, to]): SearchLoad => ({
            highest: 1e9,
            adds: heaviest.map((add, note) =>
              from <= note && note < to ? Float64Array.of(add, add / 2) : undefined,
            ),
          }),
        );
        const rooms = new LoadRooms(loads, 12);
        let room: Float64Array | undefined = rooms.full();
        for (let note = 11; note >= 0; note -= 1) room = room && rooms.before(note, room, 0);
        expect(room).toBeDefined();
      }),
      { seed: 4, numRuns: 200 },
    );
  });
});
