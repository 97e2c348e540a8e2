import { inMillimetres, type Metres, type Pascals, pascals, requirePositive } from '../units/index.ts';
import { english, type Language, message } from '../words/index.ts';

/** What a table or law of wire strength says about one diameter. */
export interface WireStrength {
  readonly strength: Pascals;
  /** Standard uncertainty of the figure as the table gives it: rounding, or the scatter of the tests. */
  readonly standardUncertainty: Pascals;
  /** False when the diameter lies outside the table's range and the figure is an extension of it. */
  readonly isWithinRange: boolean;
}

/** Where tensile strength comes from. Every break load and break share names the table it used. */
export interface WireStrengthTable {
  /** Short name to print beside a figure: 'ASTM A228 minimum'. */
  readonly name: string;
  /** What the figures are: the least or most a standard allows, a fitted law, or wire that was pulled. */
  readonly kind: 'minimum' | 'maximum' | 'law' | 'tested';
  readonly source: string;
  readonly smallestDiameter: Metres;
  readonly largestDiameter: Metres;
  /** The sentence that stands beside every figure taken from this table; empty when there is nothing to add. */
  readonly remark: string;
  readonly strengthAt: (diameter: Metres) => WireStrength;
}

/** Stands beside every figure that rests on a specification minimum or on a law fitted to one. */
export const REAL_WIRE_REMARK = message(
  'Sound new piano wire usually tests above this figure; rusted, kinked or fatigued wire can break below it.',
);

/** One row of a strength table. */
export interface StrengthPoint {
  readonly diameter: Metres;
  readonly strength: Pascals;
  readonly standardUncertainty: Pascals;
}

/** A strength table from its rows, and how it introduces itself. */
export interface InterpolatedStrengthTableInput
  extends Pick<WireStrengthTable, 'name' | 'kind' | 'source' | 'remark'> {
  /** Two or more rows, in any order, no diameter twice. */
  readonly points: readonly StrengthPoint[];
}

/**
 * A strength table read between its rows along a straight line in the logarithm of the diameter.
 *
 *     S(d) = S₁ + (S₂ − S₁) · ln(d/d₁) / ln(d₂/d₁)        d₁ ≤ d ≤ d₂ neighbouring rows
 *
 * Drawing raises strength in proportion to the logarithm of the reduction, so the tables are nearly straight in ln d;
 * reading A228 straight in d instead moves a figure by less than 0.5 MPa.
 * Outside the rows the nearest interval is extended and the answer is flagged `isWithinRange: false`; it is for the
 * caller to show that flag. The uncertainty is carried along the same straight line.
 * Throws: RangeError for fewer than two rows, a diameter given twice, or a figure that is not positive.
 */
export function interpolatedStrengthTable(input: InterpolatedStrengthTableInput): WireStrengthTable {
  const task = `the strength table '${input.name}'`;
  const points = [...input.points].sort((a, b) => a.diameter - b.diameter);
  if (points.length < 2) {
    throw new RangeError(
      `Cannot make ${task} as it needs at least two diameters to read between: found ${points.length}`,
    );
  }
  points.forEach((point, index) => {
    requirePositive(point.diameter, 'diameter', task);
    requirePositive(point.strength, 'strength', task);
    if (point.diameter === points[index - 1]?.diameter) {
      throw new RangeError(
        `Cannot make ${task} as each diameter may stand in it once: ${point.diameter * 1000} mm stands twice`,
      );
    }
  });
  const logDiameters = points.map((point) => Math.log(point.diameter));
  const smallest = points[0]!.diameter;
  const largest = points[points.length - 1]!.diameter;

  const strengthAt = (diameter: Metres): WireStrength => {
    requirePositive(diameter, 'diameter', `a strength from '${input.name}'`);
    let upper = points.findIndex((point) => point.diameter >= diameter);
    if (upper === -1) upper = points.length - 1;
    if (upper === 0) upper = 1;
    const [below, above] = [points[upper - 1]!, points[upper]!];
    const share =
      (Math.log(diameter) - logDiameters[upper - 1]!) / (logDiameters[upper]! - logDiameters[upper - 1]!);
    const withinInterval = Math.min(Math.max(share, 0), 1);
    return {
      strength: pascals(below.strength + (above.strength - below.strength) * share),
      standardUncertainty: pascals(
        below.standardUncertainty + (above.standardUncertainty - below.standardUncertainty) * withinInterval,
      ),
      isWithinRange: isWithin(diameter, smallest, largest),
    };
  };
  const { name, kind, source, remark } = input;
  return { name, kind, source, remark, smallestDiameter: smallest, largestDiameter: largest, strengthAt };
}

/** A power or logarithmic law of strength, and how it introduces itself. */
export interface StrengthLawInput
  extends Pick<
    WireStrengthTable,
    'name' | 'kind' | 'source' | 'remark' | 'smallestDiameter' | 'largestDiameter'
  > {
  /** Strength as a function of the diameter [m] → [Pa]. */
  readonly law: (diameter: number) => number;
  /** Standard uncertainty of the law as a share of the strength. */
  readonly relativeUncertainty: number;
}

/** A strength table from a formula; outside its range the formula is still read, and the answer is flagged. */
export function strengthLawTable(input: StrengthLawInput): WireStrengthTable {
  const { name, kind, source, remark, smallestDiameter, largestDiameter, law, relativeUncertainty } = input;
  const strengthAt = (diameter: Metres): WireStrength => {
    requirePositive(diameter, 'diameter', `a strength from '${name}'`);
    const strength = law(diameter);
    return {
      strength: pascals(strength),
      standardUncertainty: pascals(relativeUncertainty * strength),
      isWithinRange: isWithin(diameter, smallestDiameter, largestDiameter),
    };
  };
  return { name, kind, source, remark, smallestDiameter, largestDiameter, strengthAt };
}

/** A diameter that came through inches and back may miss the end of a table by a rounding error. */
const ROUNDING = 1e-9;
function isWithin(diameter: Metres, smallest: Metres, largest: Metres): boolean {
  return diameter >= smallest - ROUNDING * smallest && diameter <= largest + ROUNDING * largest;
}

/** The range of a table as text for a label: '0.711 to 2.032 mm'. */
export function rangeOfTable(table: WireStrengthTable, { say, fixed }: Language = english): string {
  const told = (length: Metres): string => fixed(inMillimetres(length), 3);
  return say('{from} to {to} mm', { from: told(table.smallestDiameter), to: told(table.largestDiameter) });
}
