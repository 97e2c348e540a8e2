import { diametersOfSize, latticeDiameters, type SizeLattice, sizeLabel } from '../tables/index.ts';
import type { Metres } from '../units/index.ts';
import { english, type Language, sayKnown } from '../words/index.ts';
import {
  COMMON_WIRE_RULES,
  inferWireSizes,
  type WireInference,
  type WireInferenceRules,
  type WireReading,
  type WireSizeStamp,
} from './wire-inference.ts';

/** A size number stamped or written on the piano, before it is known in which lattice it counts. */
export interface SizeNumberStamp {
  /** Index of the note, 0 = first. */
  readonly note: number;
  readonly sizeNumber: number;
  readonly says: 'starts here' | 'ends here';
  /** Name of the lattice it is known to belong to; undefined leaves it to the readings. */
  readonly lattice?: string | undefined;
}

export interface WireLatticeProblem {
  /** Bass to treble; for each note its readings, none where it has not been read. */
  readonly notes: readonly (readonly WireReading[])[];
  /** One, when the user has fixed it, or several to choose among, each as likely as the other beforehand. */
  readonly lattices: readonly SizeLattice[];
  readonly stamps?: readonly SizeNumberStamp[];
  readonly rules?: Partial<WireInferenceRules>;
}

export interface LatticeInference {
  readonly lattice: SizeLattice;
  /** Probability of this lattice among those weighed, 0 to 1. */
  readonly odds: number;
  /** The sizes that `inference` points into, thin to thick. */
  readonly diameters: readonly Metres[];
  /** Its odds hold if this is the lattice. */
  readonly inference: WireInference;
  /** A sentence for each stamp that could not be used here. */
  readonly stampsNotUsed: readonly string[];
}

/**
 * The wire sizes under each lattice, with the odds of the lattices, the most probable first.
 *
 *     P(lattice | readings) = P(readings | lattice) / Σ P(readings | lattice)
 *
 * US and metric half sizes are both about 25 µm apart and lie 11 to 18 µm beside each other, so a bias of that much trades
 * one for the other: the prior of the bias, the steps that drift apart along the compass and stamps decide. Odds of 0.7 for
 * one lattice are a good answer then; ask where the piano was built, or measure unworn wire.
 *
 * A stamp whose number a lattice does not have, or that is known to belong to another, counts against it by the odds of a
 * stamp. One whose number sources dispute (`disputesOf`) is not used.
 *
 * @param language  of the sentences about stamps
 *
 * Throws: as `inferWireSizes`; RangeError without a lattice.
 * Source: Bayes' theorem over a few models; see `inferWireSizes`.
 */
export function inferWireLattice(
  problem: WireLatticeProblem,
  language: Language = english,
): LatticeInference[] {
  const { say } = language;
  if (problem.lattices.length === 0)
    throw new RangeError(
      'Cannot compute the odds of wire sizes as at least one list of sizes is needed: found none',
    );
  const { stampOdds } = { ...COMMON_WIRE_RULES, ...problem.rules };
  const answers = problem.lattices.map((lattice) => {
    const diameters = latticeDiameters(lattice);
    const stamps: WireSizeStamp[] = [];
    const stampsNotUsed: string[] = [];
    let against = 0;
    for (const stamp of problem.stamps ?? []) {
      const { note, sizeNumber, says } = stamp;
      const sizes = diametersOfSize(lattice, sizeNumber);
      const told = { label: sizeLabel(sizeNumber), lattice: sayKnown(lattice.name, language) };
      const diameter = sizes[0]?.diameter;
      if (stamp.lattice !== undefined && stamp.lattice !== lattice.name) {
        against += 1;
        stampsNotUsed.push(
          say('The stamp {label} belongs to {own}, not to {lattice}.', {
            ...told,
            own: sayKnown(stamp.lattice, language),
          }),
        );
      } else if (diameter === undefined) {
        against += 1;
        stampsNotUsed.push(say('The stamp {label} is no size of {lattice}.', told));
      } else if (sizes.length > 1) {
        stampsNotUsed.push(
          say('The stamp {label} has more than one diameter in {lattice}: measure it.', told),
        );
      } else {
        stamps.push({ note, size: diameters.indexOf(diameter), says });
      }
    }
    const inference = inferWireSizes({
      notes: problem.notes,
      diameters,
      stamps,
      ...(problem.rules === undefined ? {} : { rules: problem.rules }),
    });
    const logWorth = inference.logEvidence - against * Math.log(stampOdds);
    return { lattice, diameters, inference, stampsNotUsed, logWorth };
  });
  const best = Math.max(...answers.map((answer) => answer.logWorth));
  const sum = answers.reduce((total, answer) => total + Math.exp(answer.logWorth - best), 0);
  return answers
    .map(({ logWorth, ...answer }) => ({ ...answer, odds: Math.exp(logWorth - best) / sum }))
    .sort((a, b) => b.odds - a.odds);
}
