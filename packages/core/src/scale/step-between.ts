import type { NoteAnalysis } from './note-analysis.ts';
import type { NoteFigureName } from './note-figures.ts';
import { COMMON_INPUTS } from './note-inputs.ts';

/** The larger over the smaller, less one: the same step up or down. */
export function stepBetween(a: number, b: number): number {
  return Math.max(a, b) / Math.min(a, b) - 1;
}

/**
 * Standard uncertainty of the step of a figure between two groups of notes, sum against sum; undefined where a note
 * states none.
 *
 *     u(step) = (1 + step) · u(a/b)/(a/b)
 */
export function uncertaintyOfStep(
  step: number,
  figure: NoteFigureName,
  below: readonly NoteAnalysis[],
  above: readonly NoteAnalysis[],
): number | undefined {
  const relative = relativeUncertaintyOfRatio(below, above, figure);
  return relative === undefined ? undefined : relative * (1 + step);
}

/**
 * u(a/b)/(a/b) of two sums over notes: what both share cancels as far as it acts on both alike.
 *
 *     u²(a/b)/(a/b)² = Σ_common (z_a − z_b)² + Σ_own (z_a² + z_b²)      z: a contribution over its sum
 */
function relativeUncertaintyOfRatio(
  a: readonly NoteAnalysis[],
  b: readonly NoteAnalysis[],
  figure: NoteFigureName,
): number | undefined {
  const common = new Map<string, number>();
  let ownSquares = 0;
  for (const [notes, sign] of [
    [a, 1],
    [b, -1],
  ] as const) {
    const sum = notes.reduce((total, note) => total + note[figure], 0);
    for (const { contributions } of notes) {
      if (contributions === undefined) return undefined;
      for (const [input, contribution] of Object.entries(contributions[figure])) {
        const relative = contribution / sum;
        if (COMMON_INPUTS.has(input)) common.set(input, (common.get(input) ?? 0) + sign * relative);
        else ownSquares += relative ** 2;
      }
    }
  }
  let squares = ownSquares;
  for (const relative of common.values()) squares += relative ** 2;
  return Math.sqrt(squares);
}
