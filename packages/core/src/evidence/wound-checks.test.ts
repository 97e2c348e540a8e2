import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { metres, millimetres } from '../units/index.ts';
import { seededRandom } from './testing/seeded-random.ts';
import { type WoundReadings, woundContradictions } from './wound-checks.ts';

/** A bass of an invented piano in which everything adds up, read with a rule to about half a millimetre. */
function invented(seed: number, error_mm = 0.4): WoundReadings[] {
  const { normal } = seededRandom(seed);
  const read = (length_mm: number) => millimetres(length_mm + error_mm * Math.max(-2, Math.min(2, normal())));
  return Array.from({ length: 20 }, (_, index): WoundReadings => {
    const speaking = 1260 - 14 * index;
    const bareFront = 22 - 0.3 * index;
    const bareBack = 14;
    const back = 120 + index;
    return {
      key: 1 + index,
      speakingLength: read(speaking),
      backLength: read(back),
      loopToWinding: read(back + bareBack),
      windingLength: read(speaking - bareFront - bareBack),
      bareFront: read(bareFront),
      bareBack: read(bareBack),
      coreDiameter: millimetres(1.5 - 0.025 * Math.floor(index / 3)),
      overAllDiameter: millimetres(5.2 - 0.18 * index),
    };
  });
}

const changed = (notes: readonly WoundReadings[], key: number, change: Partial<WoundReadings>) =>
  notes.map((note) => (note.key === key ? { ...note, ...change } : note));
const found = (notes: readonly WoundReadings[]) =>
  woundContradictions(notes).map(({ check, keys }) => `${check}: ${keys[0]}`);

describe('woundContradictions()', () => {
  it('has nothing to say where everything adds up, whatever is left out', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 1e6 }),
        fc.array(fc.nat(), { maxLength: 60 }),
        (seed, leftOut) => {
          const notes = invented(seed).map((note): WoundReadings => ({ ...note }));
          const names = [
            'speakingLength',
            'backLength',
            'loopToWinding',
            'windingLength',
            'bareFront',
          ] as const;
          for (const place of leftOut) {
            const index = place % notes.length;
            notes[index] = { ...notes[index]!, [names[place % names.length]!]: undefined };
          }
          expect(found(notes)).toEqual([]);
        },
      ),
    );
    expect(woundContradictions([])).toEqual([]);
  });

  it('finds a winding that would reach beyond the termination', () => {
    const [first] = woundContradictions([
      {
        key: 5,
        speakingLength: metres(1.2),
        backLength: metres(0.1),
        loopToWinding: metres(0.115),
        windingLength: metres(1.205),
      },
    ]);
    expect(first!.sentence).toBe(
      'C#1: loop to winding 115.0 mm and winding 1205.0 mm make 1320.0 mm, which lies 20.0 mm beyond the front termination at 1300.0 mm from the hitch pin (back length 100.0 mm, speaking length 1200.0 mm). A winding ends before it: measure again.',
    );
  });

  it('finds bare ends and winding that do not make the speaking length', () => {
    const notes = changed(invented(1), 7, { bareBack: millimetres(24) });
    expect(found(notes)).toEqual([
      'winding and bare ends do not make the speaking length: 7',
      'loop to winding does not reach the bare end: 7',
    ]);
  });

  it('finds diameters that do not grow outwards', () => {
    const notes = changed(invented(1), 20, { innerLayerDiameter: millimetres(1.2) });
    expect(woundContradictions(notes).map(({ sentence }) => sentence)).toEqual([
      'E2: the diameter over the inner layer of 1.200 mm is not more than the core of 1.350 mm beneath it. Measure again.',
    ]);
  });

  it('finds the note that is out of its row, and not its neighbour', () => {
    const tooThick = changed(invented(2), 9, { overAllDiameter: millimetres(4.4) });
    expect(found(tooThick)).toEqual(['row grows to the treble: 9']);
    const tooThin = changed(invented(2), 9, { overAllDiameter: millimetres(3.4) });
    expect(found(tooThin)).toEqual(['row grows to the treble: 9']);
    expect(woundContradictions(tooThick)[0]!.sentence).toBe(
      'F1: the over-all diameter of 4.400 mm is more than the 3.940 mm of E1 towards the bass. It does not usually grow towards the treble: measure F1 again first.',
    );
  });

  it('tells its lengths in inches when asked', () => {
    // 1320.0 mm = 51.969 in; 1 in = 25.4 mm exactly (international inch, 1959).
    const sentences = woundContradictions(
      [
        {
          key: 5,
          speakingLength: millimetres(1200),
          backLength: millimetres(100),
          loopToWinding: millimetres(115),
          windingLength: millimetres(1205),
          coreDiameter: millimetres(1.5),
          overAllDiameter: millimetres(1.4),
        },
      ],
      { lengthUnit: 'in' },
    ).map(({ sentence }) => sentence);
    expect(sentences.join(' ')).toContain('make 51.969 in, which lies 0.787 in beyond');
    expect(sentences.join(' ')).toContain('0.0551 in is not more than the core of 0.0591 in');
    expect(sentences.join(' ')).not.toContain('mm');
  });

  it('finds a winding end that is off the line of its section, however the line slants', () => {
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 18 }), fc.integer({ min: 1, max: 1e6 }), (key, seed) => {
        const notes = invented(seed).map((note) =>
          note.key === key ? { ...note, bareFront: millimetres(38) } : note,
        );
        const only = notes.map(({ key: own, bareFront }) => ({ key: own, bareFront }));
        expect(found(only)).toEqual([`winding end off the line: ${key}`]);
      }),
      { numRuns: 40 },
    );
  });

  it('refuses a length that is negative', () => {
    expect(() => woundContradictions([{ key: 3, bareFront: metres(-0.01) }])).toThrow(
      'Cannot compute whether wound strings agree as bareFront of key 3 must be ≥ 0: current value is -0.01',
    );
  });
});
