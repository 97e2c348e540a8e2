import { type InferredWire, inferWireSizes, nextWireReadings, type WireInferenceProblem } from '@becket/core';
import {
  HEAVY_WEAR,
  LIGHT_WEAR,
  nearestSizes,
  type SimulatedPiano,
  type SimulatedWear,
  simulatedPiano,
} from '../packages/core/src/evidence/testing/simulated-piano.ts';
import { type BenchTopic, type Figure, timed } from './harness.ts';

const PIANOS = 200;

const problemOf = ({ readings, diameters }: SimulatedPiano): WireInferenceProblem => ({
  notes: readings.map((reading) => (reading === null ? [] : [{ diameter: reading }])),
  diameters,
});

/** One note with a reading: what was said of it and what was true. */
interface Judged {
  readonly odds: number;
  readonly isRight: boolean;
  readonly isRightRounded: boolean;
}

function judgedNotes(wear: SimulatedWear, firstSeed = 1, pianos = PIANOS): Judged[] {
  return Array.from({ length: pianos }, (_, index) => simulatedPiano(firstSeed + index, wear)).flatMap(
    (piano) => {
      const nearest = nearestSizes(piano);
      const { notes } = inferWireSizes(problemOf(piano));
      return notes.flatMap(({ choice, odds }: InferredWire, note): Judged[] =>
        nearest[note] === null
          ? []
          : [
              {
                odds,
                isRight: choice === piano.sizes[note],
                isRightRounded: nearest[note] === piano.sizes[note],
              },
            ],
      );
    },
  );
}

const share = (judged: readonly Judged[], isTrue: (one: Judged) => boolean): number =>
  (100 * judged.filter(isTrue).length) / judged.length;

function accuracy(name: string, judged: readonly Judged[], aim?: string): Figure[] {
  return [
    {
      name: `${name}: right on notes read`,
      value: share(judged, (one) => one.isRight),
      unit: '%',
      runs: judged.length,
      ...(aim === undefined ? {} : { aim }),
    },
    {
      name: `${name}: nearest size instead`,
      value: share(judged, (one) => one.isRightRounded),
      unit: '%',
      runs: judged.length,
    },
    {
      name: `${name}: right as the odds say`,
      value: (100 * judged.reduce((sum, one) => sum + one.odds, 0)) / judged.length,
      unit: '%',
      runs: judged.length,
    },
  ];
}

/** For odds in a band: their mean, how often they were right, and on how many notes. */
function calibration(judged: readonly Judged[]): Figure[] {
  const edges = [0, 0.6, 0.7, 0.8, 0.9, 0.95, 0.99, 1.01];
  return edges.slice(1).flatMap((high, index): Figure[] => {
    const low = edges[index]!;
    const band = judged.filter((one) => one.odds >= low && one.odds < high);
    if (band.length === 0) return [];
    const said = (100 * band.reduce((sum, one) => sum + one.odds, 0)) / band.length;
    return [
      {
        name: `odds ${low} to ${Math.min(1, high)}, said ${said.toFixed(1)} %: right`,
        value: share(band, (one) => one.isRight),
        unit: '%',
        runs: band.length,
      },
    ];
  });
}

export const topic: BenchTopic = {
  name: 'evidence',
  run: () => {
    const light = judgedNotes(LIGHT_WEAR);
    const heavy = judgedNotes(HEAVY_WEAR);
    const pianos = Array.from({ length: 50 }, (_, seed) => problemOf(simulatedPiano(seed + 1, HEAVY_WEAR)));
    const each = (turn: number) => pianos[turn % pianos.length]!;
    return [
      timed('sizes of a piano', (turn) => inferWireSizes(each(turn)), { calls: 5, aim: 'under 10 ms' }),
      timed('which string to measure next', (turn) => nextWireReadings(each(turn))),
      ...accuracy('wear -3 ± 5 µm by piano', light, 'at least 96 %'),
      ...accuracy('wear -9 ± 3 µm by piano', heavy, 'at least 95 %'),
      ...accuracy('wear -3 ± 5 µm by note', judgedNotes({ ...LIGHT_WEAR, wearVaries: 'by note' })),
      ...accuracy('wear -9 ± 3 µm by note', judgedNotes({ ...HEAVY_WEAR, wearVaries: 'by note' })),
      // A piano whose whole schedule is a step off moves 200 pianos by half a per cent: more of them say what to expect.
      ...accuracy('wear -3 ± 5 µm by piano, 1000 further pianos', judgedNotes(LIGHT_WEAR, 1001, 1000)),
      ...accuracy('wear -9 ± 3 µm by piano, 1000 further pianos', judgedNotes(HEAVY_WEAR, 1001, 1000)),
      ...accuracy('no wear, 0 ± 2 µm', judgedNotes({ ...LIGHT_WEAR, wear: 0, wearScatter: 2 })),
      ...accuracy('wire thicker by 5 ± 2 µm', judgedNotes({ ...LIGHT_WEAR, wear: 5, wearScatter: 2 })),
      ...accuracy('wear -15 ± 2 µm', judgedNotes({ ...HEAVY_WEAR, wear: -15, wearScatter: 2 })),
      ...accuracy('display of 0.01 mm, wear -9 ± 3 µm', judgedNotes({ ...HEAVY_WEAR, resolution: 10 })),
      ...accuracy('half of the notes unread, wear -9 ± 3 µm', judgedNotes({ ...HEAVY_WEAR, gaps: 0.5 })),
      ...calibration([...light, ...heavy]),
    ];
  },
};
