import {
  breakLoad,
  inharmonicity,
  type PlainString,
  stringTension,
  type WoundString,
} from '../strings/index.ts';
import { COPPER_DENSITY, STEEL_DENSITY, STEEL_YOUNGS_MODULUS } from '../tables/index.ts';
import { type Metres, type Newtons, newtons } from '../units/index.ts';
import type { RescaleNote, WholeScaleProblem } from './whole-scale-problem.ts';
import { type Densities, exactInharmonicityOfEnds, WindingLayout } from './winding-layout.ts';

/** One string that a note could get, with the figures it is weighed by. */
export interface StringCandidate {
  readonly string: PlainString | WoundString;
  readonly isAsFound: boolean;
  /** Equal for strings of one kind on one size of steel wire. */
  readonly size: number;
  /** The plain wire, or the core. */
  readonly wire: Metres;
  /** Of one string. */
  readonly tension: Newtons;
  readonly logTension: number;
  readonly logInharmonicity: number;
  readonly breakShare: number;
}

/** A hard limit of one string, by a name that a sentence can use. */
export type StringLimitName =
  | 'lowest tension'
  | 'highest tension'
  | 'lowest break share'
  | 'highest break share'
  | 'largest diameter over the core';

/** What a note may choose from, and which limits turned strings away. */
export interface NoteCandidates {
  readonly candidates: readonly StringCandidate[];
  /** How many strings each limit forbade; a string that breaks two counts twice. */
  readonly forbidden: Readonly<Record<StringLimitName, number>>;
}

/** Diameters nearer than half a tenth of a micrometre are one size: rounding of inches and back. */
const SAME_SIZE = 1e7;
const sizeOf = (kind: 'plain' | 'wound', wire: number): number =>
  Math.round(wire * SAME_SIZE) * (kind === 'plain' ? 1 : -1);

/** Whether two strings of one note are made of the same wires with the same bare ends. */
export function isSameString(a: PlainString | WoundString, b: PlainString | WoundString): boolean {
  const alike = (one: number, other: number): boolean => Math.abs(one - other) * SAME_SIZE < 0.5;
  if (a.kind === 'plain' || b.kind === 'plain') {
    return a.kind === 'plain' && b.kind === 'plain' && alike(a.diameter, b.diameter);
  }
  return (
    alike(a.coreDiameter, b.coreDiameter) &&
    a.layers.length === b.layers.length &&
    a.layers.every((layer, index) => {
      const other = b.layers[index]!;
      return (
        alike(layer.wireDiameter, other.wireDiameter) &&
        alike(layer.bareFront, other.bareFront) &&
        alike(layer.bareBack, other.bareBack)
      );
    })
  );
}

/**
 * Every string of the catalogue that a note may have, with its tension and B.
 *
 * Plain strings: the closed forms. Wound strings: tension exactly, by the modes of the flexible string; B by the core formula
 * and the flexible string's own share, calibrated on one string of the note that is solved exactly. A string that breaks a
 * limit of its note is left out, which loses nothing; of two-layer strings one is kept for each core and step of tension
 * (`rules.twoLayerStep`), which may lose: a string left out has one within that step of ln T and on the same core.
 *
 * @param problem  the whole problem
 * @param note     one of its notes
 * @returns strings thick to thin in wire, plain and wound mixed; empty when nothing fits
 *
 * Throws: RangeError when a dimension is not positive and finite.
 * Source: see `WindingLayout`.
 */
export function stringCandidates(problem: WholeScaleProblem, note: RescaleNote): NoteCandidates {
  const gathering = new Gathering(problem, note);
  if (note.pinned !== undefined) gathering.addGiven(note.pinned);
  else {
    if (problem.rules.offersAsFound && gathering.isKindAllowed(note.asFound.string.kind))
      gathering.addGiven(note.asFound.string);
    if (gathering.isKindAllowed('plain')) gathering.addPlain();
    if (gathering.isKindAllowed('wound')) {
      for (let layers = 1; layers <= note.windingEnds.length; layers += 1) gathering.addWound(layers);
    }
  }
  return { candidates: gathering.inOrder(), forbidden: gathering.forbidden };
}

class Gathering {
  readonly forbidden: Record<StringLimitName, number> = {
    'lowest tension': 0,
    'highest tension': 0,
    'lowest break share': 0,
    'highest break share': 0,
    'largest diameter over the core': 0,
  };
  private readonly found: StringCandidate[] = [];
  private readonly breakLoads = new Map<number, number>();
  private readonly windings: readonly Metres[];
  constructor(
    private readonly problem: WholeScaleProblem,
    private readonly note: RescaleNote,
  ) {
    this.windings = [...problem.catalogue.windings].sort((a, b) => a - b);
  }

  isKindAllowed(kind: 'plain' | 'wound'): boolean {
    const { woundBridges } = this.problem.rules;
    if (kind === 'plain') return this.note.mayBePlain;
    return (
      this.note.mayBeWound && (woundBridges === undefined || woundBridges.includes(this.note.asFound.bridge))
    );
  }

  inOrder(): StringCandidate[] {
    return this.found.sort((a, b) => b.wire - a.wire || a.logTension - b.logTension);
  }

  addPlain(): void {
    const { speakingLength } = this.note.asFound.string;
    for (const diameter of this.problem.catalogue.plain) {
      const string: PlainString = { kind: 'plain', speakingLength, diameter };
      if (!this.isThere(string)) this.addPlainString(string);
    }
  }

  /** The string that was found, or that is pinned: as it is, by the same limits. */
  addGiven(string: PlainString | WoundString): void {
    if (string.kind === 'plain') {
      this.addPlainString(string);
      return;
    }
    const layout = new WindingLayout(string.speakingLength, string.layers);
    const windings = string.layers.map(({ wireDiameter }) => wireDiameter);
    const densities = layout.densities(string.coreDiameter, windings, {
      steelDensity: string.steelDensity ?? STEEL_DENSITY,
      windingDensity: string.windingDensity ?? COPPER_DENSITY,
    });
    const { tension } = layout.flexible(densities, this.note.asFound.frequency);
    if (!this.isAllowed(tension, this.breakLoadOf(string.coreDiameter))) return;
    const over = windings.reduce((sum, winding) => sum + 2 * winding, string.coreDiameter as number);
    if (!this.isWindingAllowed(string.coreDiameter, over)) return;
    this.push(string, tension, exactInharmonicityOfEnds(this.withModulus(string), newtons(tension)));
  }

  addWound(layers: number): void {
    const { problem, note } = this;
    const { frequency } = note.asFound;
    const { speakingLength } = note.asFound.string;
    const layout = new WindingLayout(speakingLength, note.windingEnds.slice(0, layers));
    if (!layout.isPossible) return;
    let calibration = 0;
    for (const coreDiameter of problem.catalogue.cores) {
      const load = this.breakLoadOf(coreDiameter);
      for (const windings of this.windingsThatMayFit(layout, coreDiameter, layers)) {
        const densities = layout.densities(coreDiameter, windings, DENSITIES);
        const string: WoundString = {
          kind: 'wound',
          speakingLength,
          coreDiameter,
          layers: windings.map((wireDiameter, layer) => ({ wireDiameter, ...layout.ends[layer]! })),
        };
        if (this.isThere(string)) continue;
        const { tension, inharmonicityOfEnds } = layout.flexible(densities, frequency);
        if (!this.isAllowed(tension, load)) continue;
        if (calibration === 0) {
          const exact = exactInharmonicityOfEnds(this.withModulus(string), newtons(tension));
          calibration = inharmonicityOfEnds > 0 && exact > 0 ? exact / inharmonicityOfEnds : 1;
        }
        this.push(string, tension, calibration * inharmonicityOfEnds);
      }
    }
  }

  /** Windings of one core whose rough tension lies near enough to the limits to be looked at exactly. */
  private windingsThatMayFit(layout: WindingLayout, coreDiameter: Metres, layers: number): Metres[][] {
    const { problem, note, windings } = this;
    const { frequency } = note.asFound;
    const { twoLayerStep, innerOfOuter } = problem.rules;
    const isOne = layers === 1;
    const fitting: Metres[][] = [];
    const nearest = new Map<number, { inner: Metres; outer: Metres; distance: number }>();
    // Tension grows with the outer winding, so those that fit stand together; one beyond each end shows which limit ends it.
    const load = this.breakLoadOf(coreDiameter);
    const least = Math.max(note.lowestTension, note.lowestBreakShare * load) / (1 + ROUGH);
    const most = Math.min(note.highestTension, note.highestBreakShare * load);
    // Numbers alone until a pair fits: a catalogue has thousands of pairs for every core.
    for (let from = 0; from < (isOne ? 1 : windings.length); from += 1) {
      const inner = windings[from]!;
      let [low, high] = [from, windings.length];
      while (low < high) {
        const middle = (low + high) >> 1;
        const outer = windings[middle]!;
        const rough = layout.roughTension(
          coreDiameter,
          isOne ? outer : inner,
          isOne ? 0 : outer,
          frequency,
          DENSITIES,
        );
        if (rough < least) low = middle + 1;
        else high = middle;
      }
      for (let index = Math.max(from, low - 1); index < windings.length; index += 1) {
        const outer = windings[index]!;
        const rough = layout.roughTension(
          coreDiameter,
          isOne ? outer : inner,
          isOne ? 0 : outer,
          frequency,
          DENSITIES,
        );
        const over = coreDiameter + 2 * outer + (isOne ? 0 : 2 * inner);
        if (this.isAllowed(rough, load, ROUGH) && this.isWindingAllowed(coreDiameter, over)) {
          if (isOne || twoLayerStep === 0) fitting.push(isOne ? [outer] : [inner, outer]);
          else {
            const step = Math.round(Math.log(rough) / twoLayerStep);
            const distance = Math.abs(inner / outer - innerOfOuter);
            const before = nearest.get(step);
            if (before === undefined || distance < before.distance)
              nearest.set(step, { inner, outer, distance });
          }
        }
        if (rough > most) break;
      }
    }
    return [...fitting, ...[...nearest.values()].map(({ inner, outer }) => [inner, outer])];
  }

  private addPlainString(string: PlainString): void {
    const tension = stringTension({
      diameter: string.diameter,
      speakingLength: string.speakingLength,
      frequency: this.note.asFound.frequency,
      density: string.steelDensity,
    });
    if (this.isAllowed(tension, this.breakLoadOf(string.diameter))) this.push(string, tension, 0);
  }

  private isAllowed(tension: number, load: number, slack = 0): boolean {
    const { note, forbidden } = this;
    const share = tension / load;
    // Rough tensions are only ever low, and are looked at again exactly.
    const isTooLow = tension * (1 + slack) < note.lowestTension;
    const isTooHigh = tension > note.highestTension;
    const isTooSlack = share * (1 + slack) < note.lowestBreakShare;
    const isTooTaut = share > note.highestBreakShare;
    if (isTooLow) forbidden['lowest tension'] += 1;
    if (isTooHigh) forbidden['highest tension'] += 1;
    if (isTooSlack) forbidden['lowest break share'] += 1;
    if (isTooTaut) forbidden['highest break share'] += 1;
    return !(isTooLow || isTooHigh || isTooSlack || isTooTaut);
  }

  private isWindingAllowed(coreDiameter: number, over: number): boolean {
    // A billionth more is the rounding of a limit that is met exactly.
    if (over / coreDiameter <= this.problem.rules.largestOverCore * (1 + 1e-9)) return true;
    this.forbidden['largest diameter over the core'] += 1;
    return false;
  }

  private breakLoadOf(wire: Metres): number {
    const known = this.breakLoads.get(wire);
    if (known !== undefined) return known;
    const load = breakLoad({
      diameter: wire,
      strength: this.problem.strengthTable.strengthAt(wire).strength,
    });
    this.breakLoads.set(wire, load);
    return load;
  }

  private modulusOf(string: PlainString | WoundString, wire: Metres) {
    return string.youngsModulus ?? this.problem.youngsModulusAt?.(wire) ?? STEEL_YOUNGS_MODULUS;
  }

  private withModulus(string: WoundString): WoundString {
    return { ...string, youngsModulus: this.modulusOf(string, string.coreDiameter) };
  }

  private isThere(string: PlainString | WoundString): boolean {
    const given = this.found[0];
    return given?.isAsFound === true && isSameString(given.string, string);
  }

  private push(string: PlainString | WoundString, tension: number, inharmonicityOfEnds: number): void {
    const wire = string.kind === 'plain' ? string.diameter : string.coreDiameter;
    const byCore = inharmonicity({
      diameter: wire,
      speakingLength: string.speakingLength,
      tension: newtons(tension),
      youngsModulus: this.modulusOf(string, wire),
    });
    this.found.push({
      string,
      isAsFound: isSameString(string, this.note.asFound.string),
      size: sizeOf(string.kind, wire),
      wire,
      tension: newtons(tension),
      logTension: Math.log(tension),
      logInharmonicity: Math.log(byCore + inharmonicityOfEnds),
      breakShare: tension / this.breakLoadOf(wire),
    });
  }
}

/** More than a rough tension is ever low by: 0.2 % with bare ends of any length in use. */
const ROUGH = 0.004;

const DENSITIES: Densities = { steelDensity: STEEL_DENSITY, windingDensity: COPPER_DENSITY };
