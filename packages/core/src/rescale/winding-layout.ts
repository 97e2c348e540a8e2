import {
  fitInharmonicityByLine,
  inharmonicity,
  type WoundString,
  woundStringModes,
} from '../strings/index.ts';
import type { Hertz, Metres, Newtons } from '../units/index.ts';
import type { WindingEnds } from './whole-scale-problem.ts';

/** Partials that B is fitted over, as in the analysis of a scale. */
const FITTED_PARTIALS = 8;

/** Of the core and of the winding [kg/m³]. */
export interface Densities {
  readonly steelDensity: number;
  readonly windingDensity: number;
}

/** A stretch of a wound string: how long, and which layers lie on it. */
interface Stretch {
  readonly length: number;
  /** [layer] → whether it lies here, inner first. */
  readonly present: readonly boolean[];
}

/**
 * Where windings begin and end at one note: the part of a wound string that does not change while its wires are chosen.
 *
 * Holds the tension and the bare ends' share of B for many strings of one note fast: tension exactly, by the modes of the
 * flexible stepped string; B as the core formula plus what light ends do to the flexible string. The small rest, stiffness
 * bending the joints, is for the caller to calibrate on one string of the note that is solved exactly.
 *
 * Source: H. Prüfer's angle as in `flexibleStringModes`; the sum of the two parts of B is that of `exactCorrections`, and
 * its error is measured in the tests and in docs/explanation/rescaling.md.
 */
export class WindingLayout {
  private readonly stretches: readonly Stretch[];
  /** Share of ∫ 2·sin²(πx/L) dx that lies on each stretch. */
  private readonly weights: readonly number[];
  /** Phase-like numbers ω·(travel time) of the last string that was solved: where the next one's modes will nearly be. */
  private readonly lastModes = Array.from({ length: FITTED_PARTIALS }, (_, index) => (index + 1) * Math.PI);
  constructor(
    private readonly speakingLength: Metres,
    readonly ends: readonly WindingEnds[],
  ) {
    const cuts = [
      ...new Set([
        0,
        speakingLength,
        ...ends.flatMap((end) => [end.bareFront, speakingLength - end.bareBack]),
      ]),
    ].sort((a, b) => a - b);
    this.stretches = cuts.slice(1).map((to, index) => {
      const middle = (cuts[index]! + to) / 2;
      return {
        length: to - cuts[index]!,
        present: ends.map((end) => end.bareFront < middle && middle < speakingLength - end.bareBack),
      };
    });
    this.weights = cuts
      .slice(1)
      .map((to, index) => squaredSine(to, speakingLength) - squaredSine(cuts[index]!, speakingLength));
  }

  /** Whether every layer leaves something wound. */
  get isPossible(): boolean {
    return this.ends.every(({ bareFront, bareBack }) => bareFront + bareBack < this.speakingLength);
  }

  /** Mass per length of each stretch, front to back. */
  densities(coreDiameter: number, windings: readonly number[], of: Densities): number[] {
    const { steelDensity, windingDensity } = of;
    return this.stretches.map(({ present }) => {
      let inner = coreDiameter;
      let density = (Math.PI / 4) * steelDensity * inner * inner;
      for (let layer = 0; layer < windings.length; layer += 1) {
        if (!present[layer]) continue;
        const outer = inner + 2 * windings[layer]!;
        density += windingDensity * (Math.PI / 4) * (Math.PI / 4) * (outer * outer - inner * inner);
        inner = outer;
      }
      return density;
    });
  }

  /**
   * Rayleigh's closed form of the tension, at most 0.2 % low: to sort out what cannot fit. For one or two windings, 0 where
   * there is no outer one; called for every pair of a catalogue, so it makes no arrays.
   */
  roughTension(
    coreDiameter: number,
    first: number,
    second: number,
    frequency: Hertz,
    densities: Densities,
  ): number {
    const winding = densities.windingDensity * (Math.PI / 4) * (Math.PI / 4);
    let weighted = 0;
    for (let index = 0; index < this.stretches.length; index += 1) {
      const { present } = this.stretches[index]!;
      let over = coreDiameter;
      if (present[0]) over += 2 * first;
      if (present[1]) over += 2 * second;
      weighted += this.weights[index]! * winding * (over * over - coreDiameter * coreDiameter);
    }
    weighted += this.speakingLength * densities.steelDensity * (Math.PI / 4) * coreDiameter * coreDiameter;
    return 4 * this.speakingLength * frequency * frequency * weighted;
  }

  /** Tension of the flexible string at pitch, exactly, and B of the flexible string: what the light ends alone do. */
  flexible(densities: readonly number[], frequency: Hertz): { tension: number; inharmonicityOfEnds: number } {
    // At a tension of 1 N; the modes go with the root of the tension.
    const slowness = densities.map(Math.sqrt);
    let travel = 0;
    for (let index = 0; index < slowness.length; index += 1)
      travel += this.stretches[index]!.length * slowness[index]!;
    let meanY = 0;
    let covariance = 0;
    let first = 0;
    for (let mode = 1; mode <= FITTED_PARTIALS; mode += 1) {
      const omega = this.mode(mode, this.lastModes[mode - 1]! / travel, slowness, travel);
      this.lastModes[mode - 1] = omega * travel;
      if (mode === 1) first = omega;
      const y = (omega / mode) ** 2;
      meanY += y / FITTED_PARTIALS;
      covariance += (mode * mode - MEAN_SQUARE) * y;
    }
    const slope = covariance / SQUARES_VARIANCE;
    return {
      tension: ((2 * Math.PI * frequency) / first) ** 2,
      inharmonicityOfEnds: slope / (meanY - slope * MEAN_SQUARE),
    };
  }

  /** ω at which the phase at the back end is mode·π, by Newton's steps held inside a bracket. */
  private mode(mode: number, guess: number, slowness: readonly number[], travel: number): number {
    const { stretches } = this;
    const target = mode * Math.PI;
    const shift = (stretches.length - 1) * (Math.PI / 2);
    let low = Math.max(0, (target - shift) / travel);
    let high = (target + shift) / travel;
    let omega = Math.min(Math.max(guess, low), high);
    for (let turn = 0; turn < 60; turn += 1) {
      let phase = 0;
      let rate = 0;
      for (let index = 0; index < stretches.length; index += 1) {
        if (index > 0) {
          const ratio = slowness[index]! / slowness[index - 1]!;
          const halfWaves = Math.round(phase / Math.PI);
          const rest = phase - halfWaves * Math.PI;
          const [sine, cosine] = [Math.sin(rest), Math.cos(rest)];
          phase = halfWaves * Math.PI + Math.atan2(ratio * sine, cosine);
          rate *= ratio / (cosine * cosine + ratio * ratio * sine * sine);
        }
        const turnOf = stretches[index]!.length * slowness[index]!;
        phase += omega * turnOf;
        rate += turnOf;
      }
      const miss = phase - target;
      if (Math.abs(miss) < 1e-11 * target) return omega;
      if (miss > 0) high = omega;
      else low = omega;
      const next = omega - miss / rate;
      omega = next > low && next < high ? next : (low + high) / 2;
      if (high - low < 1e-15 * high) return omega;
    }
    return omega;
  }
}

const SQUARES = Array.from({ length: FITTED_PARTIALS }, (_, index) => (index + 1) ** 2);
const MEAN_SQUARE = SQUARES.reduce((sum, square) => sum + square, 0) / FITTED_PARTIALS;
const SQUARES_VARIANCE = SQUARES.reduce((sum, square) => sum + (square - MEAN_SQUARE) ** 2, 0);

/** ∫₀ˣ 2 sin²(πt/L) dt, as in `woundStringTension`. */
function squaredSine(x: number, length: number): number {
  return x - (length / (2 * Math.PI)) * Math.sin((2 * Math.PI * x) / length);
}

/** What bare ends add to B of a string, by its exact modes at a tension. */
export function exactInharmonicityOfEnds(string: WoundString, tension: Newtons): number {
  const partials = woundStringModes({ string, tension, count: FITTED_PARTIALS }).value;
  return (
    fitInharmonicityByLine(partials).inharmonicity -
    inharmonicity({
      diameter: string.coreDiameter,
      speakingLength: string.speakingLength,
      tension,
      youngsModulus: string.youngsModulus,
    })
  );
}
