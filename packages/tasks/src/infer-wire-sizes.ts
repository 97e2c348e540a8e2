import {
  diametersOfSize,
  english,
  inferWireLattice,
  type Language,
  type LatticeInference,
  METRIC_WIRE_SIZES,
  type Metres,
  metres,
  nextWireReadingSentence,
  nextWireReadings,
  noteName,
  type SizeLattice,
  type SizeNumberStamp,
  sizeLabel,
  US_WIRE_SIZES,
  type WireReading,
  type WireSizeStamp,
} from '@becket/core';
import type { Job, StandingReading } from '@becket/journal';

/** Ways of numbering that a piano's wire may follow. */
export const wireLattices = { US: US_WIRE_SIZES, metric: METRIC_WIRE_SIZES } as const;
export type WireLatticeName = keyof typeof wireLattices;
export const wireLatticeNames = Object.keys(wireLattices) as WireLatticeName[];

/** A note's plain wire as it most probably was. */
export interface InferredWireSize {
  readonly key: number;
  readonly note: string;
  readonly readings: readonly StandingReading[];
  /** '15½'. */
  readonly size: string;
  readonly diameter: Metres;
  /** Probability of this size, 0 to 1, if the chosen way of numbering is the right one. */
  readonly odds: number;
  /** The next most probable size, and its probability. */
  readonly otherwise: { readonly size: string; readonly odds: number } | undefined;
  readonly isDoubtful: boolean;
}

export interface InferredWireSizes {
  readonly lattice: WireLatticeName;
  /** Whether the user fixed the way of numbering; else the readings and stamps chose it. */
  readonly isLatticeFixed: boolean;
  readonly latticeOdds: Readonly<Partial<Record<WireLatticeName, number>>>;
  /** The plain compass, bass to treble. */
  readonly notes: readonly InferredWireSize[];
  /** Common difference of the readings from new wire, with the middle 95 %. */
  readonly bias: LatticeInference['inference']['bias'];
  readonly scatter: LatticeInference['inference']['scatter'];
  readonly notesExpectedWrong: number;
  /** The doubt that every size could be a step thicker or thinner; undefined where the readings tell. */
  readonly shiftDoubt: string | undefined;
  /** The string to measure next that would help most, in one sentence; undefined when nothing is in doubt. */
  readonly next: { readonly key: number; readonly sentence: string } | undefined;
  /** Stamps that could not be used, one sentence each. */
  readonly stampsNotUsed: readonly string[];
}

/** What of a job the inference looks at. */
export type ReadForWireSizes = Pick<Job, 'unisons' | 'readings' | 'sizeStamps'>;

/** Below this a note is called doubtful. The shop may think otherwise; common practice, no source. */
const DOUBTFUL_BELOW = 0.9;

/** Points of a wire that neither hammer, hand nor rust have worn. */
const unworn = /\b(coil|under the felt|under felt|at the pin)\b/i;

/**
 * The wire sizes that the readings and stamps of a job speak for, along its plain compass.
 *
 * Readings of all strings of a note count; a reading whose point is the coil or under the felt counts as unworn wire.
 * @param options.lattice  the way of numbering, when the user knows it; chosen by evidence without it
 * @returns undefined while no plain note is described or nothing of one is read or stamped
 */
export function inferredWireSizes(
  job: ReadForWireSizes,
  {
    lattice,
    language = english,
  }: { readonly lattice?: WireLatticeName | undefined; readonly language?: Language | undefined } = {},
): InferredWireSizes | undefined {
  const keys = [...job.unisons.values()]
    .filter(({ winding }) => winding === 'plain')
    .map(({ key }) => key)
    .sort((a, b) => a - b);
  const place = new Map(keys.map((key, index) => [key, index]));
  const readings = keys.map((): StandingReading[] => []);
  for (const reading of job.readings) {
    const index = reading.place.key === undefined ? undefined : place.get(reading.place.key);
    if (index === undefined || reading.quantity !== 'wire-diameter' || reading.stage !== 'as found') continue;
    readings[index]!.push(reading);
  }
  const { stamps, stampsNotUsed } = stampsOf(job, place, language);
  if (keys.length === 0 || (stamps.length === 0 && readings.every((own) => own.length === 0)))
    return undefined;

  const notes = readings.map((own) => own.map(wireReadingOf));
  const lattices: SizeLattice[] =
    lattice === undefined ? Object.values(wireLattices) : [wireLattices[lattice]];
  const weighed = inferWireLattice({ notes, lattices, stamps }, language);
  const best = weighed[0]!;
  const { inference, diameters } = best;
  const label = (size: number): string => labelOf(best.lattice, diameters[size]!);
  const [advice] = nextWireReadings({ notes, diameters, stamps: sizeStamps(stamps, best) });
  return {
    lattice: nameOf(best.lattice),
    isLatticeFixed: lattice !== undefined,
    latticeOdds: Object.fromEntries(weighed.map((one) => [nameOf(one.lattice), one.odds])),
    notes: inference.notes.map(({ choice, odds, oddsOfSizes }, index) => {
      const second = oddsOfSizes
        .map((share, size) => ({ size: label(size), odds: share, index: size }))
        .filter((one) => one.index !== choice)
        .reduce((a, b) => (b.odds > a.odds ? b : a), { size: '', odds: 0, index: -1 });
      return {
        key: keys[index]!,
        note: noteName(keys[index]!),
        readings: readings[index]!,
        size: label(choice),
        diameter: diameters[choice]!,
        odds,
        otherwise: second.odds > 0.005 ? { size: second.size, odds: second.odds } : undefined,
        isDoubtful: odds < DOUBTFUL_BELOW,
      };
    }),
    bias: inference.bias,
    scatter: inference.scatter,
    notesExpectedWrong: inference.notesExpectedWrong,
    shiftDoubt:
      inference.shiftDoubt === undefined
        ? undefined
        : language.say(
            'All sizes could lie a step off, with {percent} % probability: worn wire alone does not tell. Measure where nothing wore the wire, at the coil or under the felt, or look for a stamp.',
            { percent: Math.round(100 * inference.shiftDoubt.probability) },
          ),
    next:
      advice === undefined
        ? undefined
        : {
            key: keys[advice.note]!,
            sentence: nextWireReadingSentence(
              advice,
              { note: (note) => noteName(keys[note]!), size: label },
              language,
            ),
          },
    stampsNotUsed: [...stampsNotUsed, ...best.stampsNotUsed],
  };
}

function wireReadingOf({ value_si, uncertainty_si, place }: StandingReading): WireReading {
  return {
    diameter: metres(value_si),
    ...(uncertainty_si === undefined ? {} : { standardUncertainty: metres(uncertainty_si) }),
    ...(place.point !== undefined && unworn.test(place.point) ? { isUnworn: true } : {}),
  };
}

/** Stamps with a size number on a plain note; the others are named. */
function stampsOf(
  job: ReadForWireSizes,
  place: ReadonlyMap<number, number>,
  { say }: Language,
): { stamps: SizeNumberStamp[]; stampsNotUsed: string[] } {
  const stamps: SizeNumberStamp[] = [];
  const stampsNotUsed: string[] = [];
  for (const { key, text, says, lattice } of job.sizeStamps) {
    const note = place.get(key);
    const sizeNumber = sizeNumberIn(text);
    if (note === undefined || sizeNumber === undefined) {
      stampsNotUsed.push(
        say("The stamp '{stamp}' at {note} is not used: {why}.", {
          stamp: text,
          note: noteName(key),
          why: note === undefined ? say('the note has no plain string') : say('it is not a size number'),
        }),
      );
      continue;
    }
    stamps.push({
      note,
      sizeNumber,
      says,
      ...(lattice === 'unknown' ? {} : { lattice: wireLattices[lattice].name }),
    });
  }
  return { stamps, stampsNotUsed };
}

/** '14½', '14 1/2', '14.5' and '14,5' are one number. */
function sizeNumberIn(text: string): number | undefined {
  const compact = text.trim().replace(',', '.');
  const parts = /^(\d+)\s*(½|1\/2|\.5)?$/.exec(compact);
  return parts === null ? undefined : Number(parts[1]) + (parts[2] === undefined ? 0 : 0.5);
}

/** Stamps in the terms of one list of sizes; disputed and foreign ones do not count. */
function sizeStamps(
  stamps: readonly SizeNumberStamp[],
  { lattice, diameters }: LatticeInference,
): WireSizeStamp[] {
  return stamps.flatMap(({ note, sizeNumber, says, lattice: own }): WireSizeStamp[] => {
    const sizes = diametersOfSize(lattice, sizeNumber);
    if (sizes.length !== 1 || (own !== undefined && own !== lattice.name)) return [];
    return [{ note, size: diameters.indexOf(sizes[0]!.diameter), says }];
  });
}

function labelOf(lattice: SizeLattice, diameter: Metres): string {
  const size = lattice.sizes.find((one) => one.diameter === diameter)!;
  return sizeLabel(size.sizeNumber);
}

const nameOf = (lattice: SizeLattice): WireLatticeName =>
  wireLatticeNames.find((name) => wireLattices[name] === lattice)!;
