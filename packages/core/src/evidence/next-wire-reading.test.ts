import { describe, expect, it } from 'vitest';
import { micrometres, millimetres } from '../units/index.ts';
import { nextWireReadingSentence, nextWireReadings } from './next-wire-reading.ts';
import { seededRandom } from './testing/seeded-random.ts';
import { LIGHT_WEAR, simulatedPiano } from './testing/simulated-piano.ts';
import { inferWireSizes, type WireReading } from './wire-inference.ts';

const read = (...readings: readonly (number | null)[]): (readonly WireReading[])[] =>
  readings.map((reading) => (reading === null ? [] : [{ diameter: millimetres(reading) }]));
const diameters = [0.825, 0.8, 0.775].map(millimetres);
const rules = {
  biasMean: micrometres(-4),
  biasDeviation: micrometres(0),
  scatterMedian: micrometres(5),
  scatterLogDeviation: 0,
};

describe('nextWireReadings()', () => {
  it('sends to the middle of a gap between two sizes, where the change may lie', () => {
    const notes = read(0.796, 0.795, 0.797, 0.796, null, null, null, 0.771, 0.77, 0.772, 0.771);
    const [first] = nextWireReadings({ notes, diameters, rules });
    expect(first).toMatchObject({ note: 5, hasReading: false, at: 'anywhere' });
    expect(first!.expectedWrongAfter).toBeLessThan(first!.expectedWrongNow);
    expect(first!.sizes.map(({ size }) => size).sort()).toEqual([1, 2]);
  });

  it('sends to unworn wire when all sizes may be shifted by a step', () => {
    const notes = read(0.784, 0.783, 0.784, 0.785, 0.759, 0.758, 0.76, 0.759);
    const sizes = [0.85, 0.825, 0.8, 0.775, 0.75, 0.725].map(millimetres);
    const [first] = nextWireReadings({ notes, diameters: sizes });
    expect(first!.at).toBe('unworn');
    const anywhere = nextWireReadings({ notes, diameters: sizes }, { canReadUnworn: false });
    expect(anywhere.every(({ at }) => at === 'anywhere')).toBe(true);
    expect(anywhere[0]!.expectedWrongAfter).toBeGreaterThan(first!.expectedWrongAfter + 0.05);
  });

  it('has no advice when nothing is in doubt', () => {
    const notes = Array.from({ length: 6 }, () => read(0.796, 0.796, 0.796).flat());
    expect(nextWireReadings({ notes, diameters: [millimetres(0.8), millimetres(0.6)], rules })).toEqual([]);
  });

  it('promises what following it brings: notes expected wrong fall by about the stated amount', () => {
    let [promised, found, count] = [0, 0, 0];
    for (let seed = 1; seed <= 20; seed += 1) {
      const piano = simulatedPiano(seed, LIGHT_WEAR);
      const notes = piano.readings.map((reading): readonly WireReading[] =>
        reading === null ? [] : [{ diameter: reading }],
      );
      const [first] = nextWireReadings({ notes, diameters: piano.diameters }, { canReadUnworn: false });
      if (first === undefined) continue;
      const { normal } = seededRandom(seed);
      const truth = piano.diameters[piano.sizes[first.note]!]!;
      const reading = { diameter: micrometres((truth + piano.bias) * 1e6 + 5 * normal()) };
      const after = inferWireSizes({
        notes: notes.map((ofNote, note) => (note === first.note ? [...ofNote, reading] : ofNote)),
        diameters: piano.diameters,
      });
      promised += first.expectedWrongNow - first.expectedWrongAfter;
      const before = inferWireSizes({ notes, diameters: piano.diameters });
      found += before.notesExpectedWrong - after.notesExpectedWrong;
      count += 1;
    }
    expect(count).toBeGreaterThan(15);
    expect(found).toBeGreaterThan(0.6 * promised);
    expect(found).toBeLessThan(1.6 * promised);
  });

  it('says it in one sentence', () => {
    const sentence = nextWireReadingSentence(
      {
        note: 34,
        at: 'unworn',
        expectedWrongNow: 2.31,
        expectedWrongAfter: 1.04,
        sizes: [
          { size: 4, odds: 0.61 },
          { size: 5, odds: 0.38 },
        ],
        hasReading: false,
      },
      { note: (note) => `note ${note}`, size: (size) => (size === 4 ? '15½' : '15') },
    );
    expect(sentence).toBe(
      'Measure note 34 next where nothing wore the wire (at the coil or under the felt): it has no reading, 15½ (61 %) or 15 (38 %) fits; of 2.3 notes expected wrong about 1.0 will be left.',
    );
  });
});
