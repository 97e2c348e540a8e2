import type { SizeLattice } from '../../tables/index.ts';
import { latticeDiameters, US_WIRE_SIZES } from '../../tables/index.ts';
import { type Metres, metres, micrometres } from '../../units/index.ts';
import { type SeededRandom, seededRandom } from './seeded-random.ts';

/** How the plain wire of an invented piano was drawn, worn and read. All lengths in micrometres. */
export interface SimulatedWear {
  /** Mean difference of worn from new diameter; negative is thinner. */
  readonly wear: number;
  /** Standard deviation of that difference. */
  readonly wearScatter: number;
  /** Whether the difference is drawn once for the whole piano or anew for each note. */
  readonly wearVaries: 'by piano' | 'by note';
  /** Standard deviation of one reading with the micrometer. */
  readonly noise: number;
  /** Share of the readings that are slips. */
  readonly slips: number;
  /** Share of the notes without a reading. */
  readonly gaps: number;
  /** Step of the display; 0 for none. */
  readonly resolution: number;
  readonly lattice: SizeLattice;
}

/**
 * The two kinds of wear that the figures in `bench` are given for: light, −3 ± 5 µm, and heavy, −9 ± 3 µm.
 *
 * The rest is chosen so that rounding to the nearest size is right as often as it is said to be in a worn piano, in
 * about 85 and 71 of 100 notes: a hand that repeats to 5 µm, one slip in twenty, one note in ten unread.
 */
export const LIGHT_WEAR: SimulatedWear = {
  wear: -3,
  wearScatter: 5,
  wearVaries: 'by piano',
  noise: 5,
  slips: 0.05,
  gaps: 0.1,
  resolution: 1,
  lattice: US_WIRE_SIZES,
};
export const HEAVY_WEAR: SimulatedWear = { ...LIGHT_WEAR, wear: -9, wearScatter: 3 };

export interface SimulatedPiano {
  /** The sizes of the lattice, thin to thick. */
  readonly diameters: readonly Metres[];
  /** Index into `diameters` of every plain note, bass to treble: the truth. */
  readonly sizes: readonly number[];
  readonly readings: readonly (Metres | null)[];
  /** Difference of the whole piano that was drawn; 0 when it varies by note. */
  readonly bias: Metres;
}

/**
 * An invented piano: 58 to 68 plain notes from size 17 … 20 down to 12½ … 13½, in runs of two or more notes.
 *
 * Runs of one size are 2 to 10 notes, most of them 3 to 6; one step in eight skips a half size. A slip is, as often as not, the
 * size of another string one to three half sizes away, and otherwise anything within 0.1 mm. Common practice for the
 * shape of a plain compass, no source.
 */
export function simulatedPiano(seed: number, wear: SimulatedWear = LIGHT_WEAR): SimulatedPiano {
  const random = seededRandom(seed * 7919 + 17);
  const diameters = latticeDiameters(wear.lattice);
  const sizes = simulatedSchedule(random, wear.lattice, diameters);
  const ownBias = wear.wearVaries === 'by piano' ? wear.wear + wear.wearScatter * random.normal() : 0;
  const readings = sizes.map((size) => {
    if (random.uniform() < wear.gaps) return null;
    const noteBias = wear.wearVaries === 'by note' ? wear.wear + wear.wearScatter * random.normal() : ownBias;
    const read = diameters[slippedSize(random, size, diameters.length, wear.slips)]!;
    const isWild = random.uniform() < wear.slips / 2;
    const wild = isWild ? (2 * random.uniform() - 1) * 100 : 0;
    return rounded(read + micrometres(noteBias + wear.noise * random.normal() + wild), wear.resolution);
  });
  return { diameters, sizes, readings, bias: micrometres(ownBias) };
}

function simulatedSchedule(
  random: SeededRandom,
  lattice: SizeLattice,
  diameters: readonly Metres[],
): number[] {
  const indexOf = (sizeNumber: number) =>
    diameters.indexOf(lattice.sizes.find((size) => size.sizeNumber === sizeNumber)!.diameter);
  const notes = random.integer(58, 68);
  const thickest = indexOf(17 + random.integer(0, 6) / 2);
  const thinnest = indexOf(12.5 + random.integer(0, 2) / 2);
  const schedule: number[] = [];
  let size = thickest;
  while (schedule.length < notes) {
    const stepsLeft = size - thinnest;
    const evenRun = (notes - schedule.length) / (stepsLeft + 1);
    const run = stepsLeft === 0 ? notes : Math.max(2, Math.round(evenRun * (0.5 + random.uniform())));
    for (let note = 0; note < run && schedule.length < notes; note += 1) schedule.push(size);
    size = Math.max(thinnest, size - (random.uniform() < 1 / 8 ? 2 : 1));
  }
  return schedule;
}

function slippedSize(random: SeededRandom, size: number, count: number, slips: number): number {
  if (random.uniform() >= slips / 2) return size;
  const away = random.integer(1, 3) * (random.uniform() < 0.5 ? -1 : 1);
  return Math.min(count - 1, Math.max(0, size + away));
}

function rounded(diameter: number, resolution: number): Metres {
  const step = resolution / 1e6;
  return metres(step === 0 ? diameter : Math.round(diameter / step) * step);
}

/** Rounding every reading to the nearest size: what inference is compared with. */
export function nearestSizes({ diameters, readings }: SimulatedPiano): (number | null)[] {
  return readings.map((reading) =>
    reading === null
      ? null
      : diameters.reduce(
          (best, diameter, index) =>
            Math.abs(diameter - reading) < Math.abs(diameters[best]! - reading) ? index : best,
          0,
        ),
  );
}
