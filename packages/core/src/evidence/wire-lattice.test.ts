import { describe, expect, it } from 'vitest';
import { METRIC_WIRE_SIZES, nearestSize, US_WIRE_SIZES } from '../tables/index.ts';
import { millimetres, mils } from '../units/index.ts';
import { HEAVY_WEAR, simulatedPiano } from './testing/simulated-piano.ts';
import { inferWireLattice } from './wire-lattice.ts';

const both = [US_WIRE_SIZES, METRIC_WIRE_SIZES];
const notesOf = (seed: number, lattice = US_WIRE_SIZES) =>
  simulatedPiano(seed, { ...HEAVY_WEAR, lattice }).readings.map((reading) =>
    reading === null ? [] : [{ diameter: reading }],
  );

describe('inferWireLattice()', () => {
  it('finds the lattice that a piano was strung from, about as often as it says', () => {
    let [right, said] = [0, 0];
    for (let seed = 1; seed <= 20; seed += 1) {
      for (const lattice of both) {
        const [first, second] = inferWireLattice({ notes: notesOf(seed, lattice), lattices: both });
        expect(first!.odds + second!.odds).toBeCloseTo(1, 9);
        expect(first!.odds).toBeGreaterThanOrEqual(second!.odds);
        if (first!.lattice === lattice) right += 1;
        said += first!.odds;
      }
    }
    expect(right / 40).toBeGreaterThan(0.75);
    expect(Math.abs(right - said) / 40).toBeLessThan(0.15);
  });

  it('is sure of the only one, whatever the readings', () => {
    expect(inferWireLattice({ notes: notesOf(1), lattices: [METRIC_WIRE_SIZES] })[0]!.odds).toBe(1);
  });

  it('lets a stamp settle it: one that is known to be metric, and a number that only one of them has', () => {
    const notes = notesOf(3);
    const free = inferWireLattice({ notes, lattices: both });
    const freeMetric = free.find(({ lattice }) => lattice === METRIC_WIRE_SIZES)!;
    const metricBefore = freeMetric.odds;
    const firstSize = freeMetric.diameters[freeMetric.inference.notes[0]!.choice]!;
    const { sizeNumber, label } = nearestSize(METRIC_WIRE_SIZES, firstSize).sizes[0]!;
    const stamped = inferWireLattice({
      notes,
      lattices: both,
      stamps: [{ note: 0, sizeNumber, says: 'starts here', lattice: METRIC_WIRE_SIZES.name }],
    });
    const metric = stamped.find(({ lattice }) => lattice === METRIC_WIRE_SIZES)!;
    expect(metric.odds).toBeGreaterThan(metricBefore);
    expect(metric.odds).toBeGreaterThan(0.95);
    expect(stamped.find(({ lattice }) => lattice === US_WIRE_SIZES)!.stampsNotUsed).toEqual([
      `The stamp ${label} belongs to metric size numbers, not to US size numbers.`,
    ]);
    // The published metric list leaves out 22½; the American numbers have it.
    const [first, second] = inferWireLattice({
      notes: [[{ diameter: mils(50) }], [], []],
      lattices: both,
      stamps: [{ note: 0, sizeNumber: 22.5, says: 'starts here' }],
    });
    expect(first!.lattice).toBe(US_WIRE_SIZES);
    expect(second!.stampsNotUsed).toEqual(['The stamp 22½ is no size of metric size numbers.']);
  });

  it('does not use a stamp whose number is disputed, and says so', () => {
    const [us] = inferWireLattice({
      notes: [[{ diameter: millimetres(1.4) }]],
      lattices: [US_WIRE_SIZES],
      stamps: [{ note: 0, sizeNumber: 24, says: 'starts here' }],
    });
    expect(us!.stampsNotUsed).toEqual([
      'The stamp 24 has more than one diameter in US size numbers: measure it.',
    ]);
  });

  it('needs a list of sizes', () => {
    expect(() => inferWireLattice({ notes: notesOf(1), lattices: [] })).toThrow(/at least one list of sizes/);
  });
});
