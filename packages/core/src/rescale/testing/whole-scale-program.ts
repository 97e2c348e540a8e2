import { millimetres, newtons } from '../../units/index.ts';
import type { PreparedScale } from '../whole-scale.ts';
import type { WholeScaleProblem } from '../whole-scale-problem.ts';
import { exampleProblem } from './example-problems.ts';
import type { ScheduleProgram } from './mixed-integer-program.ts';

/** The notes of an example round its break, with few enough wires for the other solver. */
export function roundTheBreak(
  name: 'grand' | 'vertical',
  firstKey: number,
  lastKey: number,
): WholeScaleProblem {
  const whole = exampleProblem(name);
  const isNear = (low: number, high: number) => (diameter: number) =>
    diameter >= low - 1e-9 && diameter <= high;
  return {
    ...whole,
    notes: whole.notes
      .filter(({ asFound }) => asFound.key >= firstKey && asFound.key <= lastKey)
      .map((note) => ({
        ...note,
        lowestTension: newtons(note.lowestTension * 1.04),
        highestTension: newtons(note.highestTension * 0.97),
      })),
    catalogue: {
      plain: whole.catalogue.plain.filter(isNear(0.0009, 0.0012)),
      cores: whole.catalogue.cores.filter(isNear(0.00088, 0.00096)),
      windings: [0.12, 0.16, 0.2, 0.24, 0.28, 0.32, 0.36, 0.4].map(millimetres),
    },
  };
}

/** The stated problem as a mixed-integer program, from the figures of the candidates alone. */
export function programOf({ problem, gathered, asFoundLogTensions }: PreparedScale): ScheduleProgram {
  const { notes, weights, rules } = problem;
  const at = (note: number, candidate: number) => gathered[note]!.candidates[candidate]!;
  const wire = (note: number, candidate: number): number => {
    const { string } = at(note, candidate);
    // To the nanometre: the same size in inches and in millimetres differs in its last digits.
    return string.kind === 'plain'
      ? Math.round(string.diameter * 1e9)
      : -Math.round(string.coreDiameter * 1e9);
  };
  return {
    notes: gathered.map(({ candidates }, note) =>
      candidates.map(({ logTension, isAsFound, tension }, candidate) => ({
        size: wire(note, candidate),
        cost:
          weights.tensionFromFound * (logTension - asFoundLogTensions[note]!) ** 2 +
          (isAsFound ? 0 : weights.changedNote),
        adds: rules.loads.map(({ of, name }) => {
          const { strings, section, bridge } = notes[note]!.asFound;
          const isUnder = of === 'all' || name === (of === 'section' ? section : bridge);
          return isUnder ? strings * tension : 0;
        }),
      })),
    ),
    pairCost: (note, a, b) => {
      const [before, here] = [wire(note - 1, a), wire(note, b)];
      if (before > 0 && here < 0) return Number.POSITIVE_INFINITY;
      if (before < 0 && here > 0) return 0;
      const isOneBridge = notes[note]!.asFound.bridge === notes[note - 1]!.asFound.bridge;
      if (Math.abs(here) > Math.abs(before) && (here > 0 || isOneBridge)) return Number.POSITIVE_INFINITY;
      return here === before ? 0 : weights.sizeChange;
    },
    bendCost: (note, a, b, c) => {
      const counts = new Set([note - 1, note, note + 1].map((index) => notes[index]!.asFound.strings));
      const factor = counts.size === 1 ? 1 : weights.whereUnisonsDiffer;
      const [low, middle, high] = [at(note - 1, a), at(note, b), at(note + 1, c)];
      return (
        factor * weights.tensionBend * (low.logTension - 2 * middle.logTension + high.logTension) ** 2 +
        factor *
          weights.inharmonicityBend *
          (low.logInharmonicity - 2 * middle.logInharmonicity + high.logInharmonicity) ** 2
      );
    },
    minimumRun: (size) => (size > 0 ? rules.minimumRunPlain : rules.minimumRunCore),
    mostOf: rules.loads.map(({ highest }) => highest),
    ties: {
      strings: notes.map(({ asFound }) => asFound.strings),
      begins: notes.map(({ asFound }, note) => notes[note - 1]?.asFound.section !== asFound.section),
      cost: weights.tiedString,
      isLooped: (note, candidate) => wire(note, candidate) > 0,
    },
  };
}
