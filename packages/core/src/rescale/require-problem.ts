import { requireNotNegative, requirePositive, requireWithin } from '../units/index.ts';
import type { LoadLimit, RescaleWeights, WholeScaleProblem } from './whole-scale-problem.ts';

const TASK = 'the best scale';

/** Throws a RangeError that names what of a problem makes no sense. Limits that clash are no error: see `ScaleClash`. */
export function requireProblem({ notes, catalogue, weights, rules }: WholeScaleProblem): void {
  requirePositive(notes.length, 'the number of notes', TASK);
  notes.forEach(({ asFound, lowestTension, highestTension, lowestBreakShare, highestBreakShare }, index) => {
    const before = notes[index - 1]?.asFound.key;
    if (before !== undefined && !(asFound.key > before)) {
      throw new RangeError(
        `Cannot compute ${TASK} as its notes must run from bass to treble, each key once: found key ${asFound.key} after ${before}`,
      );
    }
    const limits = { lowestTension, highestTension, lowestBreakShare, highestBreakShare };
    for (const [name, value] of Object.entries(limits))
      requireNotNegative(value, `the limit '${name}' of note ${asFound.key}`, TASK);
  });
  for (const [name, wires] of Object.entries(catalogue))
    for (const wire of wires) requirePositive(wire, `a diameter of the list '${name}'`, TASK);
  requireWeights(weights);
  requireRun(rules.minimumRunPlain, 'the minimum run of plain sizes');
  requireRun(rules.minimumRunCore, 'the minimum run of cores');
  requirePositive(rules.largestOverCore, 'the largest diameter over the core', TASK);
  requireNotNegative(rules.twoLayerStep, 'the step of two-layer strings', TASK);
  requirePositive(rules.innerOfOuter, 'the share of the inner winding', TASK);
  for (const limit of rules.loads) requireLoad(limit, notes);
}

/** Throws a RangeError where a weight is negative or not a number. */
export function requireWeights(weights: RescaleWeights): void {
  for (const [name, weight] of Object.entries(weights))
    requireNotNegative(weight, `the weight '${name}'`, TASK);
  requireWithin(weights.whereUnisonsDiffer, 0, 1, "the factor 'whereUnisonsDiffer'", TASK);
}

function requireRun(run: number, name: string): void {
  if (!(Number.isInteger(run) && run >= 1)) {
    throw new RangeError(
      `Cannot compute ${TASK} as ${name} must be a whole number from 1: current value is ${run}`,
    );
  }
}

function requireLoad({ of, name, highest }: LoadLimit, notes: WholeScaleProblem['notes']): void {
  requirePositive(highest, 'the highest load', TASK);
  if (of === 'all') return;
  const known = [...new Set(notes.map(({ asFound }) => asFound[of]))];
  if (name !== undefined && known.includes(name)) return;
  throw new RangeError(
    `Cannot compute ${TASK} as a load limit must name a ${of} of the scale (${known.map((one) => `'${one}'`).join(', ')}): found '${name ?? ''}'`,
  );
}
