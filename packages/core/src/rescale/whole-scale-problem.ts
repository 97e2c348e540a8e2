import type { ScaleNote } from '../scale/index.ts';
import type { PlainString, WoundString } from '../strings/index.ts';
import type { WireStrengthTable } from '../tables/index.ts';
import { type Metres, millimetres, type Newtons, type Pascals } from '../units/index.ts';

/** The wires that strings may be made of: a lattice of sizes, or what a shop has. Plain lists, in any order. */
export interface WireCatalogue {
  readonly plain: readonly Metres[];
  readonly cores: readonly Metres[];
  /** Diameters of winding wire. */
  readonly windings: readonly Metres[];
}

/**
 * Winding wires to start from, an editable list: every 0.02 mm to 1 mm, every 0.05 mm above. Common practice, no source; a
 * string maker's own list is better.
 */
export const COMMON_WINDING_WIRES: readonly Metres[] = [
  ...Array.from({ length: 41 }, (_, index) => millimetres((20 + 2 * index) / 100)),
  ...Array.from({ length: 20 }, (_, index) => millimetres((105 + 5 * index) / 100)),
];

/** Where one layer of winding ends, as bridge, agraffe and hitch pins allow at this note. */
export interface WindingEnds {
  readonly bareFront: Metres;
  readonly bareBack: Metres;
}

/** One note whose string is to be chosen. */
export interface RescaleNote {
  /** What the note is and has: key, section, bridge, count of strings, pitch, string. */
  readonly asFound: ScaleNote;
  readonly lowestTension: Newtons;
  readonly highestTension: Newtons;
  /** Share of the break load, 0 to 1. */
  readonly lowestBreakShare: number;
  readonly highestBreakShare: number;
  readonly mayBePlain: boolean;
  readonly mayBeWound: boolean;
  /** Inner layer first: one entry where one layer is possible, two for two. Empty where nothing is known of them. */
  readonly windingEnds: readonly WindingEnds[];
  /** The string that the user wants here: no other is offered, of whatever kind; limits of tension and break share hold. */
  readonly pinned?: PlainString | WoundString | undefined;
}

/** What each kind of fault costs; all ≥ 0. A weight of 0 leaves it out of the sum. */
export interface RescaleWeights {
  /** Bend of ln T: squared second difference over three neighbours. */
  readonly tensionBend: number;
  /** Bend of ln B, likewise. */
  readonly inharmonicityBend: number;
  /**
   * Factor on a bend whose three notes do not all have as many strings, 0 to 1: where one string becomes two, or two three,
   * string tension steps down on purpose.
   */
  readonly whereUnisonsDiffer: number;
  /** Squared distance of ln T from what was found. */
  readonly tensionFromFound: number;
  /** Each note whose string is another than was found. */
  readonly changedNote: number;
  /** Each change of plain size or of core size. The break itself is none. */
  readonly sizeChange: number;
  /** Each plain string that must be tied because its run within its section is odd. */
  readonly tiedString: number;
}

/** A highest load, of all strings together or of one section or bridge by its name. */
export interface LoadLimit {
  readonly of: 'all' | 'section' | 'bridge';
  /** Left out for 'all'. */
  readonly name?: string | undefined;
  readonly highest: Newtons;
}

/** What no answer may break. */
export interface RescaleRules {
  /** Fewest notes in a row that one plain size, and one core size, must serve; 1 when it does not matter. */
  readonly minimumRunPlain: number;
  readonly minimumRunCore: number;
  /** Plain sizes never grow towards the treble. */
  readonly plainNeverGrows: boolean;
  /** Core sizes never grow towards the treble, within one bridge. */
  readonly coresNeverGrow: boolean;
  /** Largest diameter over all, as a multiple of the core. */
  readonly largestOverCore: number;
  /** Bridges on which wound strings are allowed; undefined for every bridge. */
  readonly woundBridges?: readonly string[] | undefined;
  readonly loads: readonly LoadLimit[];
  /** Whether the string that was found is offered even where its wires are not in the catalogue. */
  readonly offersAsFound: boolean;
  /**
   * Two-layer strings of one core are offered one for each step of ln T this wide, the one whose inner wire is nearest to
   * `innerOfOuter` times the outer. 0 offers all, many times slower.
   */
  readonly twoLayerStep: number;
  readonly innerOfOuter: number;
}

/** A whole scale that is to be chosen anew: plain and wound strings together. */
export interface WholeScaleProblem {
  /** Bass to treble. */
  readonly notes: readonly RescaleNote[];
  readonly catalogue: WireCatalogue;
  readonly strengthTable: WireStrengthTable;
  readonly youngsModulusAt?: ((diameter: Metres) => Pascals) | undefined;
  readonly weights: RescaleWeights;
  readonly rules: RescaleRules;
}

/** Weights to start from, our own: a bend of 3 % in tension counts about as much as one of 6 % in B or one size change. */
export const COMMON_RESCALE_WEIGHTS: RescaleWeights = {
  tensionBend: 1,
  inharmonicityBend: 0.25,
  whereUnisonsDiffer: 0.1,
  tensionFromFound: 0.05,
  changedNote: 0.0003,
  sizeChange: 0.001,
  tiedString: 0.0005,
};

/** Rules to start from. Common practice, no source; the widest winding is limited by what still sounds and bends. */
export const COMMON_RESCALE_RULES: RescaleRules = {
  minimumRunPlain: 3,
  minimumRunCore: 2,
  plainNeverGrows: true,
  coresNeverGrow: true,
  largestOverCore: 4.5,
  loads: [],
  offersAsFound: true,
  twoLayerStep: 0.01,
  innerOfOuter: 0.57,
};
