/*
 * How probable readings of a worn wire are, for each size it may have been. All lengths in micrometres here, so that
 * densities are of the order of one.
 */

/** One reading of a wire, in micrometres. */
export interface WireReadingInMicrometres {
  readonly diameter: number;
  /** Standard uncertainty stated for this reading; 0 when none was. */
  readonly standardUncertainty: number;
  /** Read where nothing could wear it: at the coil, under the felt. */
  readonly isUnworn: boolean;
}

export interface LikelihoodRules {
  /** Share of readings that are slips: another string, a wrong digit, a speck under the anvil. */
  readonly slipShare: number;
  /** Half of the slips lie within this distance of the size. */
  readonly slipDistance: number;
  /** Standard uncertainty of the zero of the instrument, which an unworn reading still shares. */
  readonly zeroUncertainty: number;
}

/** Of the scatter between notes, the share of the variance that all readings of one note have in common: its own wear. */
const SHARED_SHARE = 0.5;

/** Nodes and weights of Gauss and Hermite for the mean over a normal law, 7 points (M. Abramowitz, I. A. Stegun, table 25.10, √2 · xᵢ and wᵢ/√π; from memory, the test checks their moments). */
export const NORMAL_NODES = [
  [-3.750439717725742, 5.48268855972218e-4],
  [-2.366759410734541, 3.07571239675865e-2],
  [-1.154405394739968, 0.240123178605013],
  [0, 0.457142857142857],
  [1.154405394739968, 0.240123178605013],
  [2.366759410734541, 3.07571239675865e-2],
  [3.750439717725742, 5.48268855972218e-4],
] as const;

/**
 * A table of likelihoods over notes and sizes, for any common bias and scatter.
 *
 *     p(yᵢ | d, b, σ) = Π over the readings of a note, its own wear w averaged out:
 *         (1 − ε) · N(y; d + b + w, s²) + ε · Cauchy(y; d, c)        w ~ N(0, σ²/2),  s² = max(σ²/2, u²)
 *
 * ε is the share of slips, c the distance within which half of them lie: the wide second term keeps a wild reading from
 * saying anything about its note. It does not follow the bias, so it is worked out once.
 *
 * Source: contaminated normal as in P. J. Huber, *Robust Statistics*, 1981, ch. 1; from memory. The parts of the mixture
 * are our own.
 */
export class WireReadingLikelihood {
  private readonly notes: number;
  private readonly slip: Float64Array[];
  readonly table: Float64Array;

  constructor(
    private readonly readings: readonly (readonly WireReadingInMicrometres[])[],
    /** Thick to thin, micrometres. */
    private readonly diameters: readonly number[],
    private readonly rules: LikelihoodRules,
  ) {
    this.notes = readings.length;
    this.table = new Float64Array(this.notes * diameters.length).fill(1);
    this.slip = readings.map((ofNote) =>
      Float64Array.from({ length: ofNote.length * diameters.length }, (_, index) => {
        const reading = ofNote[Math.floor(index / diameters.length)]!;
        return this.slipTerm(reading.diameter - diameters[index % diameters.length]!);
      }),
    );
  }

  private slipTerm(distance: number): number {
    const { slipShare, slipDistance } = this.rules;
    return slipShare / (Math.PI * slipDistance * (1 + (distance / slipDistance) ** 2));
  }

  /** Fills `table` for a bias and a scatter; index note · sizes + rank. */
  fill(bias: number, scatter: number): Float64Array {
    for (let note = 0; note < this.notes; note += 1) {
      const count = this.readings[note]!.length;
      if (count === 1) this.fillFromOne(note, bias, scatter);
      else if (count > 1) this.fillFromSeveral(note, bias, scatter);
    }
    return this.table;
  }

  private fillFromOne(note: number, bias: number, scatter: number): void {
    const { diameters, table } = this;
    const reading = this.readings[note]![0]!;
    const slip = this.slip[note]!;
    const { offset, spread } = this.ownLaw(reading, bias, scatter);
    const variance = spread ** 2 + (reading.isUnworn ? 0 : SHARED_SHARE * scatter ** 2);
    const height = (1 - this.rules.slipShare) / Math.sqrt(2 * Math.PI * variance);
    const steepness = -0.5 / variance;
    const row = note * diameters.length;
    for (let rank = 0; rank < diameters.length; rank += 1) {
      const distance = reading.diameter - diameters[rank]! - offset;
      const power = steepness * distance * distance;
      // Beyond eight standard deviations the normal term is below 1e-14 of its peak.
      table[row + rank] = slip[rank]! + (power > -32 ? height * Math.exp(power) : 0);
    }
  }

  private fillFromSeveral(note: number, bias: number, scatter: number): void {
    const { diameters, table } = this;
    const readings = this.readings[note]!;
    const slip = this.slip[note]!;
    const laws = readings.map((reading) => this.ownLaw(reading, bias, scatter));
    const ownWear = Math.sqrt(SHARED_SHARE) * scatter;
    const row = note * diameters.length;
    for (let rank = 0; rank < diameters.length; rank += 1) {
      let mean = 0;
      for (const [node, weight] of NORMAL_NODES) {
        let product = weight;
        for (let index = 0; index < readings.length; index += 1) {
          const { offset, spread } = laws[index]!;
          const reading = readings[index]!;
          const wear = reading.isUnworn ? 0 : node * ownWear;
          const distance = (reading.diameter - diameters[rank]! - offset - wear) / spread;
          const normal =
            distance * distance < 64
              ? Math.exp(-0.5 * distance * distance) / (spread * Math.sqrt(2 * Math.PI))
              : 0;
          product *= slip[index * diameters.length + rank]! + (1 - this.rules.slipShare) * normal;
        }
        mean += product;
      }
      table[row + rank] = mean;
    }
  }

  /** Where the readings of a size lie, and how far they scatter apart from what their note has in common. */
  private ownLaw(
    { standardUncertainty, isUnworn }: WireReadingInMicrometres,
    bias: number,
    scatter: number,
  ): { offset: number; spread: number } {
    const spread = Math.max(Math.sqrt(1 - SHARED_SHARE) * scatter, standardUncertainty);
    return isUnworn
      ? { offset: 0, spread: Math.hypot(spread, this.rules.zeroUncertainty) }
      : { offset: bias, spread };
  }
}
