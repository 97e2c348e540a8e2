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
const OWN_WEAR_SHARE = 0.5;

/** Of more readings of one note than this, those nearest their median count: the sum over slips doubles with each. */
const MOST_READINGS = 6;

/** Beyond this many standard deviations the normal term is below 1e-14 of its peak. */
const FAR_OFF = 8;

/**
 * A table of likelihoods over notes and sizes, for any common bias and scatter.
 *
 *     p(y₁ … y_m | d, b, σ) = Σ_S  Π_{j∉S} ε·Cauchy(yⱼ; d, c)  ·  (1 − ε)^|S| · N(y_S; d + b, s²·I + τ²·11ᵀ)
 *
 * The sum goes over every set S of readings that are no slips. ε is the share of slips and c the distance within which
 * half of them lie: that wide term keeps a wild reading from saying anything about its note, and as it does not follow the
 * bias it is worked out once. Readings of one note share its own wear, τ² = σ²/2; what is left of the variance, or the
 * uncertainty that was stated where that is more, each has for itself: s² = max(σ²/2, u²). An unworn reading has neither
 * bias nor wear, only the zero of the instrument.
 *
 * Source: contaminated normal as in P. J. Huber, *Robust Statistics*, 1981, ch. 1; from memory. The parts of the mixture
 * are our own.
 */
export class WireReadingLikelihood {
  private readonly notes: readonly NoteReadings[];
  readonly table: Float64Array;

  constructor(
    readings: readonly (readonly WireReadingInMicrometres[])[],
    /** Thick to thin, micrometres. */
    private readonly diameters: readonly number[],
    private readonly rules: LikelihoodRules,
  ) {
    this.notes = readings.map((ofNote) => {
      const worn = nearestTheMedian(ofNote.filter((reading) => !reading.isUnworn));
      const unworn = ofNote.filter((reading) => reading.isUnworn);
      const wornWithSlips = worn.map((reading) => this.withSlips(reading));
      return {
        worn: wornWithSlips,
        slipsOfSets: this.slipsOfSets(wornWithSlips),
        unworn: unworn.map((reading) => this.withSlips(reading)),
      };
    });
    this.table = new Float64Array(readings.length * diameters.length);
  }

  private withSlips(reading: WireReadingInMicrometres): ReadingWithSlips {
    const { slipShare, slipDistance } = this.rules;
    const slip = Float64Array.from(this.diameters, (diameter) => {
      const distance = (reading.diameter - diameter) / slipDistance;
      return slipShare / (Math.PI * slipDistance * (1 + distance * distance));
    });
    return { diameter: reading.diameter, standardUncertainty: reading.standardUncertainty, slip };
  }

  /** For each rank and set of good readings, by the bits of its index: the product of the slip terms of the others. */
  private slipsOfSets(worn: readonly ReadingWithSlips[]): Float64Array {
    const sets = 1 << worn.length;
    return Float64Array.from({ length: this.diameters.length * sets }, (_, place) =>
      worn.reduce(
        (product, { slip }, index) =>
          ((place % sets) & (1 << index)) === 0 ? product * slip[Math.floor(place / sets)]! : product,
        1,
      ),
    );
  }

  /** Fills `table` for a bias and a scatter; index note · sizes + rank. */
  fill(bias: number, scatter: number): Float64Array {
    this.table.fill(1);
    this.notes.forEach((ofNote, note) => {
      const { worn, unworn } = ofNote;
      if (worn.length === 1) this.multiplyByOne(note, worn[0]!, { bias, ownWear: OWN_WEAR_SHARE, scatter });
      else if (worn.length > 1) this.multiplyBySeveral(note, ofNote, { bias, scatter });
      for (const reading of unworn)
        this.multiplyByOne(note, reading, { bias: undefined, ownWear: 0, scatter });
    });
    return this.table;
  }

  /** The part of the standard deviation that a reading has for itself. */
  private static spread(reading: ReadingWithSlips, scatter: number): number {
    return Math.max(Math.sqrt(1 - OWN_WEAR_SHARE) * scatter, reading.standardUncertainty);
  }

  private multiplyByOne(
    note: number,
    reading: ReadingWithSlips,
    { bias, ownWear, scatter }: { bias: number | undefined; ownWear: number; scatter: number },
  ): void {
    const { diameters, table, rules } = this;
    const zero = bias === undefined ? rules.zeroUncertainty : 0;
    const variance = WireReadingLikelihood.spread(reading, scatter) ** 2 + zero ** 2 + ownWear * scatter ** 2;
    const height = (1 - rules.slipShare) / Math.sqrt(2 * Math.PI * variance);
    const steepness = -0.5 / variance;
    const unbiased = reading.diameter - (bias ?? 0);
    const row = note * diameters.length;
    for (let rank = 0; rank < diameters.length; rank += 1) {
      const distance = unbiased - diameters[rank]!;
      const power = steepness * distance * distance;
      table[row + rank]! *=
        reading.slip[rank]! + (power > -0.5 * FAR_OFF ** 2 ? height * Math.exp(power) : 0);
    }
  }

  private multiplyBySeveral(
    note: number,
    { worn, slipsOfSets }: NoteReadings,
    { bias, scatter }: { bias: number; scatter: number },
  ): void {
    const { diameters, table, rules } = this;
    const sets = setSums(worn, scatter, 1 - rules.slipShare);
    const reach = FAR_OFF * Math.hypot(scatter, ...worn.map((reading) => reading.standardUncertainty));
    const thinnest = Math.min(...worn.map((reading) => reading.diameter)) - reach;
    const thickest = Math.max(...worn.map((reading) => reading.diameter)) + reach;
    const row = note * diameters.length;
    for (let rank = 0; rank < diameters.length; rank += 1) {
      const expected = diameters[rank]! + bias;
      const ofRank = rank * sets.length;
      // The empty set, all readings slips, is all there is far from every reading.
      let sum = slipsOfSets[ofRank]!;
      if (expected > thinnest && expected < thickest) {
        for (let set = 1; set < sets.length; set += 1) {
          const { height, precision, weighed, squares, pull } = sets[set]!;
          const off = weighed - expected * precision;
          // Σ r²/s² less what the wear of the note takes up: (Σ r/s²)² / (Σ 1/s² + 1/τ²).
          const power = squares - expected * (2 * weighed - expected * precision) - off * off * pull;
          sum += slipsOfSets[ofRank + set]! * height * Math.exp(-0.5 * power);
        }
      }
      table[row + rank]! *= sum;
    }
  }
}

interface ReadingWithSlips {
  readonly diameter: number;
  readonly standardUncertainty: number;
  /** The slip term of this reading, by rank. */
  readonly slip: Float64Array;
}

interface NoteReadings {
  readonly worn: readonly ReadingWithSlips[];
  readonly slipsOfSets: Float64Array;
  readonly unworn: readonly ReadingWithSlips[];
}

/** What the normal term of one set of readings needs: Σ 1/s², Σ y/s², Σ y²/s², 1/(Σ 1/s² + 1/τ²), and its height. */
interface SetSums {
  readonly precision: number;
  readonly weighed: number;
  readonly squares: number;
  readonly pull: number;
  readonly height: number;
}

/** For every set of readings, as the bits of its index. */
function setSums(worn: readonly ReadingWithSlips[], scatter: number, goodShare: number): SetSums[] {
  const ownPrecision = 1 / (OWN_WEAR_SHARE * scatter ** 2);
  const variances = worn.map(({ standardUncertainty }) =>
    Math.max((1 - OWN_WEAR_SHARE) * scatter ** 2, standardUncertainty ** 2),
  );
  return Array.from({ length: 1 << worn.length }, (_, set): SetSums => {
    let [precision, weighed, squares, height] = [0, 0, 0, 1];
    for (let index = 0; index < worn.length; index += 1) {
      if ((set & (1 << index)) === 0) continue;
      const [y, variance] = [worn[index]!.diameter, variances[index]!];
      precision += 1 / variance;
      weighed += y / variance;
      squares += (y * y) / variance;
      height *= goodShare / Math.sqrt(2 * Math.PI * variance);
    }
    const pull = 1 / (precision + ownPrecision);
    return { precision, weighed, squares, pull, height: height * Math.sqrt(ownPrecision * pull) };
  });
}

function nearestTheMedian(
  readings: readonly WireReadingInMicrometres[],
): readonly WireReadingInMicrometres[] {
  if (readings.length <= MOST_READINGS) return readings;
  const sorted = [...readings].sort((a, b) => a.diameter - b.diameter);
  const median = sorted[sorted.length >> 1]!.diameter;
  return sorted
    .sort((a, b) => Math.abs(a.diameter - median) - Math.abs(b.diameter - median))
    .slice(0, MOST_READINGS);
}
