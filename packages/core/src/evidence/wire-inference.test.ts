import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { latticeDiameters, METRIC_WIRE_SIZES, US_WIRE_SIZES } from '../tables/index.ts';
import { inMicrometres, type Metres, metres, micrometres, millimetres } from '../units/index.ts';
import { enumeratedInference } from './testing/enumerated-inference.ts';
import {
  HEAVY_WEAR,
  LIGHT_WEAR,
  nearestSizes,
  type SimulatedPiano,
  simulatedPiano,
} from './testing/simulated-piano.ts';
import { inferWireSizes, type WireInferenceProblem, type WireReading } from './wire-inference.ts';

const problemOf = ({ readings, diameters }: SimulatedPiano): WireInferenceProblem => ({
  notes: readings.map((reading) => (reading === null ? [] : [{ diameter: reading }])),
  diameters,
});

/** Bias and scatter taken as known, so that one cell of the grid is all there is. */
const known = (bias: number, scatter: number) => ({
  biasMean: micrometres(bias),
  biasDeviation: micrometres(0),
  scatterMedian: micrometres(scatter),
  scatterLogDeviation: 0,
});

const smallCases = fc.record({
  diameters: fc
    .uniqueArray(fc.integer({ min: 700, max: 800 }), { minLength: 1, maxLength: 4 })
    .map((list) => list.sort((a, b) => b - a)),
  readings: fc.array(fc.array(fc.double({ min: 690, max: 810, noNaN: true }), { maxLength: 3 }), {
    minLength: 1,
    maxLength: 5,
  }),
  changeChance: fc.oneof(
    fc.array(fc.double({ min: 0.01, max: 0.9, noNaN: true }), { minLength: 1, maxLength: 3 }),
    fc.constantFrom([0, 0.3], [0, 0, 0.4]),
  ),
  bias: fc.double({ min: -15, max: 10, noNaN: true }),
  scatter: fc.double({ min: 3, max: 12, noNaN: true }),
  stamp: fc.option(
    fc.record({
      note: fc.nat(),
      rank: fc.nat(),
      says: fc.constantFrom('starts here' as const, 'ends here' as const),
    }),
  ),
});

describe('inferWireSizes() on small cases', () => {
  it('equals the enumeration of every schedule: odds, evidence, the most probable and the most notes right', () => {
    fc.assert(
      fc.property(smallCases, ({ diameters, readings, changeChance, bias, scatter, stamp }) => {
        const model = { diameters, readings, changeChance, slipShare: 0.05, slipDistance: 40 };
        const stamps =
          stamp === null
            ? []
            : [{ note: stamp.note % readings.length, rank: stamp.rank % diameters.length, says: stamp.says }];
        const slow = enumeratedInference({ ...model, stamps, stampOdds: 200 }, bias, scatter);
        const fast = inferWireSizes({
          notes: readings.map((ofNote) => ofNote.map((y) => ({ diameter: micrometres(y) }))),
          diameters: diameters.map(micrometres),
          stamps: stamps.map(({ note, rank, says }) => ({ note, size: rank, says })),
          rules: { ...known(bias, scatter), changeChance },
        });
        expect(fast.logEvidence).toBeCloseTo(slow.logEvidence, 8);
        fast.notes.forEach(({ oddsOfSizes }, note) => {
          oddsOfSizes.forEach((odds, rank) => {
            expect(odds).toBeCloseTo(slow.odds[note]![rank]!, 8);
          });
        });
        const sum = fast.notes.reduce((total, note) => total + note.odds, 0);
        expect(sum).toBeCloseTo(slow.sumOfOdds, 8);
        expect(slow.probabilityOf(fast.mostProbable) / slow.most).toBeCloseTo(1, 6);
      }),
      {
        numRuns: 100,
        // Three readings that agree five deviations from the only size.
        examples: [
          [
            {
              diameters: [705],
              readings: [[690, 690, 690], []],
              changeChance: [0.01],
              bias: 0,
              scatter: 3,
              stamp: null,
            },
          ],
        ],
      },
    );
  });

  it('equals the sum over a fine grid where bias and scatter are not known', () => {
    const diameters = [800, 775, 760];
    const readings = [[796], [], [797], [771], [750]];
    const model = { diameters, readings, changeChance: [0.03, 0.12, 0.2], slipShare: 0.05, slipDistance: 40 };
    const sums = readings.map(() => diameters.map(() => 0));
    let all = 0;
    for (let bias = -35; bias <= 25; bias += 0.5) {
      for (let log = -1.2; log <= 1.2; log += 0.1) {
        const answer = enumeratedInference(model, bias, 5.5 * Math.exp(log));
        const weight = Math.exp(answer.logEvidence - 0.5 * ((bias + 4) / 6) ** 2 - 0.5 * (log / 0.35) ** 2);
        all += weight;
        answer.odds.forEach((ofNote, note) => {
          ofNote.forEach((odds, rank) => {
            sums[note]![rank]! += weight * odds;
          });
        });
      }
    }
    const fast = inferWireSizes({
      notes: readings.map((ofNote) => ofNote.map((y) => ({ diameter: micrometres(y) }))),
      diameters: diameters.map(micrometres),
    });
    fast.notes.forEach(({ oddsOfSizes }, note) => {
      oddsOfSizes.forEach((odds, rank) => {
        expect(Math.abs(odds - sums[note]![rank]! / all)).toBeLessThan(0.01);
      });
    });
  });
});

describe('inferWireSizes() on whole pianos', () => {
  const wears = fc.constantFrom(LIGHT_WEAR, HEAVY_WEAR, {
    ...HEAVY_WEAR,
    lattice: METRIC_WIRE_SIZES,
    gaps: 0.4,
  });
  const pianos = fc.record({ seed: fc.integer({ min: 1, max: 1e6 }), wear: wears });

  it('gives a schedule that never grows towards the treble, and odds that are probabilities', () => {
    fc.assert(
      fc.property(pianos, ({ seed, wear }) => {
        const piano = simulatedPiano(seed, wear);
        const { notes, mostProbable } = inferWireSizes(problemOf(piano));
        for (const schedule of [notes.map((note) => note.choice), mostProbable]) {
          for (let note = 1; note < schedule.length; note += 1)
            expect(piano.diameters[schedule[note]!]).toBeLessThanOrEqual(
              piano.diameters[schedule[note - 1]!]!,
            );
        }
        for (const { oddsOfSizes, odds, choice } of notes) {
          expect(oddsOfSizes.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 9);
          expect(Math.min(...oddsOfSizes)).toBeGreaterThanOrEqual(0);
          expect(odds).toBeLessThanOrEqual(1);
          expect(oddsOfSizes[choice]).toBeCloseTo(odds, 12);
        }
      }),
      { numRuns: 12 },
    );
  });

  it('does not care in which order the sizes are listed, nor for a size listed twice', () => {
    fc.assert(
      fc.property(pianos, fc.integer(), ({ seed, wear }, turn) => {
        const piano = simulatedPiano(seed, wear);
        const count = piano.diameters.length;
        const listed = [...piano.diameters, piano.diameters[turn % count] ?? piano.diameters[0]!].reverse();
        const plain = inferWireSizes(problemOf(piano));
        const other = inferWireSizes({ ...problemOf(piano), diameters: listed });
        other.notes.forEach((note, index) => {
          expect(listed[note.choice]).toBe(piano.diameters[plain.notes[index]!.choice]);
          expect(note.odds).toBeCloseTo(plain.notes[index]!.odds, 9);
        });
      }),
      { numRuns: 6 },
    );
  });

  it('moves with its sizes: the same steps elsewhere give the same odds', () => {
    const piano = simulatedPiano(5, HEAVY_WEAR);
    const moved = (length: Metres) => metres(length + 0.0004);
    const plain = inferWireSizes(problemOf(piano));
    const other = inferWireSizes(
      problemOf({
        ...piano,
        diameters: piano.diameters.map(moved),
        readings: piano.readings.map((reading) => (reading === null ? null : moved(reading))),
      }),
    );
    other.notes.forEach((note, index) => {
      expect(note.choice).toBe(plain.notes[index]!.choice);
      expect(note.odds).toBeCloseTo(plain.notes[index]!.odds, 6);
    });
  });

  // Accuracy and calibration over 200 pianos each are measured in bench/evidence.bench.ts; this holds a floor under them.
  it.each([
    { name: 'light wear', wear: LIGHT_WEAR },
    { name: 'heavy wear', wear: HEAVY_WEAR },
  ])('is right far more often than the nearest size, and as often as it says ($name)', ({ wear }) => {
    let [right, rounded, said, all] = [0, 0, 0, 0];
    for (let seed = 1; seed <= 60; seed += 1) {
      const piano = simulatedPiano(seed, wear);
      const { notes } = inferWireSizes(problemOf(piano));
      const nearest = nearestSizes(piano);
      piano.sizes.forEach((size, note) => {
        if (nearest[note] === null) return;
        all += 1;
        if (notes[note]!.choice === size) right += 1;
        if (nearest[note] === size) rounded += 1;
        said += notes[note]!.odds;
      });
    }
    expect(right / all).toBeGreaterThan(0.94);
    expect(right / all).toBeGreaterThan(rounded / all + 0.07);
    expect(Math.abs(said - right) / all).toBeLessThan(0.03);
  });

  it('finds the bias and the scatter that the readings were drawn with', () => {
    for (const seed of [3, 7, 12]) {
      const piano = simulatedPiano(seed, HEAVY_WEAR);
      const { bias, scatter } = inferWireSizes(problemOf(piano));
      expect(Math.abs(inMicrometres(bias.value) - inMicrometres(piano.bias))).toBeLessThan(3);
      expect(bias.low).toBeLessThanOrEqual(bias.value);
      expect(bias.high).toBeGreaterThanOrEqual(bias.value);
      expect(inMicrometres(scatter.value)).toBeGreaterThan(3.5);
      expect(inMicrometres(scatter.value)).toBeLessThan(7);
    }
  });
});

describe('what speaks for a size besides readings', () => {
  const [thick, thin] = [millimetres(0.8), millimetres(0.775)];
  const read = (...readings: readonly (number | null)[]): (readonly WireReading[])[] =>
    readings.map((reading) => (reading === null ? [] : [{ diameter: millimetres(reading) }]));

  it('fills a gap inside a run surely, and one between two runs with a doubt', () => {
    const { notes } = inferWireSizes({
      notes: read(0.797, 0.795, null, 0.798, 0.796, null, 0.771, 0.77, 0.772),
      diameters: [thick, thin],
      rules: known(-4, 5),
    });
    expect(notes[2]).toMatchObject({ choice: 0, difference: undefined });
    expect(notes[2]!.odds).toBeGreaterThan(0.99);
    expect(notes[5]!.odds).toBeLessThan(0.8);
  });

  it('follows a stamp into that gap', () => {
    const problem = {
      notes: read(0.797, 0.795, 0.797, 0.798, 0.796, null, 0.771, 0.77, 0.772),
      diameters: [thick, thin],
      rules: known(-4, 5),
    };
    const starts = inferWireSizes({ ...problem, stamps: [{ note: 5, size: 1, says: 'starts here' }] })
      .notes[5]!;
    const ends = inferWireSizes({ ...problem, stamps: [{ note: 5, size: 0, says: 'ends here' }] }).notes[5]!;
    expect(starts).toMatchObject({ choice: 1 });
    expect(ends).toMatchObject({ choice: 0 });
    expect(Math.min(starts.odds, ends.odds)).toBeGreaterThan(0.98);
  });

  it('does not follow one wild reading, but a run of them', () => {
    const rules = known(-4, 5);
    const one = inferWireSizes({
      notes: read(0.797, 0.796, 0.7, 0.795, 0.797),
      diameters: [thick, thin],
      rules,
    });
    expect(one.notes.map((note) => note.choice)).toEqual([0, 0, 0, 0, 0]);
    const run = inferWireSizes({
      notes: read(0.797, 0.796, 0.77, 0.772, 0.771),
      diameters: [thick, thin],
      rules,
    });
    expect(run.notes.map((note) => note.choice)).toEqual([0, 0, 1, 1, 1]);
  });

  it('keeps a minimum run inside the compass, and not at its ends', () => {
    const sizes = [millimetres(0.825), thick, thin];
    const notes = read(0.822, 0.82, 0.821, 0.795, 0.773, 0.771, 0.772, 0.77);
    const rules = known(-4, 5);
    const free = inferWireSizes({ notes, diameters: sizes, rules });
    expect(free.notes.map((note) => note.choice)).toEqual([0, 0, 0, 1, 2, 2, 2, 2]);
    const bound = inferWireSizes({ notes, diameters: sizes, rules: { ...rules, minimumRun: 2 } });
    expect(bound.notes.filter((note) => note.choice === 1).length).not.toBe(1);
    const atTheEnd = inferWireSizes({
      notes: notes.slice(3),
      diameters: sizes,
      rules: { ...rules, minimumRun: 2 },
    });
    expect(atTheEnd.notes[0]!.choice).toBe(1);
  });

  it('weighs several readings of a note', () => {
    const odds = (readings: readonly number[]) =>
      inferWireSizes({
        notes: [readings.map((reading) => ({ diameter: millimetres(reading) }))],
        diameters: [thick, thin],
        rules: known(0, 6),
      }).notes[0]!.oddsOfSizes[0]!;
    expect(odds([0.794, 0.795])).toBeGreaterThan(odds([0.794]));
    expect(odds([0.7875])).toBeCloseTo(0.5, 6);
    // A reading that is known to be poor says less.
    const poor = inferWireSizes({
      notes: [[{ diameter: millimetres(0.794), standardUncertainty: micrometres(30) }]],
      diameters: [thick, thin],
      rules: known(0, 6),
    }).notes[0]!.oddsOfSizes[0]!;
    expect(poor).toBeLessThan(odds([0.794]));
    expect(poor).toBeGreaterThan(0.5);
  });

  it('says when wear cannot be told from a thinner size, and a reading of unworn wire settles it', () => {
    const notes = read(0.784, 0.783, 0.784, 0.785, 0.759, 0.758, 0.76, 0.759);
    const diameters = [0.825, 0.8, 0.775, 0.75, 0.725].map(millimetres);
    const open = inferWireSizes({ notes, diameters });
    expect(open.shiftDoubt).toBeDefined();
    expect(open.notes[0]!.odds).toBeLessThan(0.98);
    // All of these readings lie 16 µm below one size and 9 µm above the next; under the felt the wire shows 0.800.
    const settled = inferWireSizes({
      notes: notes.map((ofNote, note) =>
        note === 2 ? [...ofNote, { diameter: millimetres(0.8), isUnworn: true }] : ofNote,
      ),
      diameters,
    });
    expect(settled.notes[0]!.choice).toBe(1);
    expect(settled.notes[0]!.odds).toBeGreaterThan(open.notes[0]!.odds);
    expect(settled.notes[0]!.odds).toBeGreaterThan(0.98);
    expect(settled.shiftDoubt).toBeUndefined();
  });
});

describe('inferWireSizes() at its edges', () => {
  const diameters = latticeDiameters(US_WIRE_SIZES);

  it('answers without a single reading, with the odds of the rules alone', () => {
    const { notes, bias } = inferWireSizes({ notes: Array.from({ length: 88 }, () => []), diameters });
    expect(notes).toHaveLength(88);
    for (const note of notes) expect(note.oddsOfSizes.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9);
    expect(inMicrometres(bias.value)).toBeCloseTo(-4, 1);
  });

  it('answers for one note and one size', () => {
    const { notes } = inferWireSizes({
      notes: [[{ diameter: millimetres(0.8) }]],
      diameters: [millimetres(0.825)],
    });
    expect(notes[0]!.choice).toBe(0);
    expect(notes[0]!.odds).toBeCloseTo(1, 12);
  });

  it('stays finite when readings are impossible, or run the wrong way all along', () => {
    const impossible = Array.from({ length: 88 }, (_, note) => [
      { diameter: metres(note % 2 === 0 ? 1 : 1e-6) },
    ]);
    const wrongWay = Array.from({ length: 88 }, (_, note) => [
      { diameter: diameters[Math.floor(note / 4)]! },
    ]);
    for (const notes of [impossible, wrongWay]) {
      const answer = inferWireSizes({ notes, diameters });
      expect(Number.isFinite(answer.logEvidence)).toBe(true);
      for (const note of answer.notes) expect(note.oddsOfSizes.every(Number.isFinite)).toBe(true);
    }
  });

  it('refuses what it cannot use, in one sentence', () => {
    expect(() => inferWireSizes({ notes: [], diameters })).toThrow(/number of notes must be > 0/);
    expect(() => inferWireSizes({ notes: [[]], diameters: [] })).toThrow(/number of sizes must be > 0/);
    expect(() => inferWireSizes({ notes: [[{ diameter: metres(Number.NaN) }]], diameters })).toThrow(
      'Cannot compute the odds of wire sizes as the diameter of a reading must be > 0: current value is NaN',
    );
    expect(() =>
      inferWireSizes({ notes: [[]], diameters, stamps: [{ note: 3, size: 0, says: 'ends here' }] }),
    ).toThrow(/note of a stamp must be from 0 to 0/);
  });
});
