import { describe, expect, it } from 'vitest';
import { millimetres, newtons } from '../units/index.ts';
import { exampleProblem } from './testing/example-problems.ts';
import { type ScheduleProgram, solvedProgram } from './testing/mixed-integer-program.ts';
import { seededUniform } from './testing/seeded-uniform.ts';
import { keepsRules, statedSum } from './testing/small-scales.ts';
import { bestPreparedScale, type PreparedScale, prepareScale } from './whole-scale.ts';
import type { WholeScaleProblem } from './whole-scale-problem.ts';

/** The notes of an example round its break, with few enough wires for the other solver. */
function roundTheBreak(name: 'grand' | 'vertical', firstKey: number, lastKey: number): WholeScaleProblem {
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
function programOf({ problem, gathered, asFoundLogTensions }: PreparedScale): ScheduleProgram {
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
        adds: rules.loads.map(() => notes[note]!.asFound.strings * tension),
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

describe('bestWholeScale() against a mixed-integer program', () => {
  it.each([
    ['grand', 24, 37],
    ['vertical', 27, 39],
  ] as const)(
    'has the optimum of HiGHS round the break of the example %s, free and within a load',
    async (name, firstKey, lastKey) => {
      const prepared = prepareScale(roundTheBreak(name, firstKey, lastKey));
      const free = bestPreparedScale(prepared);
      if (!free.feasible) throw new Error(free.clash.reason);
      expect(new Set(free.notes.map(({ string }) => string.kind)).size).toBe(2);
      const theirs = await solvedProgram(programOf(prepared));
      if (theirs.status !== 'optimal') throw new Error('the other solver finds no scale');
      // Its gap is closed to 1e-12 of these sums, its tolerance on whole numbers is 1e-9.
      expect(Math.abs(free.objective - theirs.objective)).toBeLessThan(1e-8);

      const highest = newtons(free.loads[0]!.load * 0.985);
      const { problem } = prepared;
      const light = {
        ...prepared,
        problem: { ...problem, rules: { ...problem.rules, loads: [{ of: 'all' as const, highest }] } },
      };
      const lighter = bestPreparedScale(light);
      if (!lighter.feasible) throw new Error(lighter.clash.reason);
      expect(lighter.proof.isOptimal).toBe(true);
      const theirLighter = await solvedProgram(programOf(light));
      if (theirLighter.status !== 'optimal') throw new Error('the other solver finds no scale');
      expect(lighter.objective).toBeGreaterThan(free.objective);
      expect(Math.abs(lighter.objective - theirLighter.objective)).toBeLessThan(1e-8);
    },
  );
});

describe('bestWholeScale() of a whole piano', () => {
  it('is no worse than 10,000 random schedules that keep the rules', () => {
    const prepared = prepareScale(exampleProblem('grand'));
    const { problem, gathered, asFoundLogTensions } = prepared;
    const answer = bestPreparedScale(prepared);
    if (!answer.feasible) throw new Error(answer.clash.reason);
    const best = answer.notes.map(
      ({ string }, note) => gathered[note]!.candidates.find((candidate) => candidate.string === string)!,
    );
    expect(keepsRules(problem, best)).toBe(true);
    expect(statedSum(problem, best, asFoundLogTensions)).toBeCloseTo(answer.objective, 10);

    // Other windings on the same core anywhere, another size over a stretch: near the best, where a better one would be.
    const random = seededUniform(88);
    const below = (count: number): number => Math.floor(random() * count);
    let [kept, tries] = [0, 0];
    while (kept < 10_000 && tries < 400_000) {
      tries += 1;
      const chosen = [...best];
      for (let change = 0; change <= below(3); change += 1) {
        const start = below(chosen.length);
        const length = 1 + below(6);
        const towards = gathered[start]!.candidates[below(gathered[start]!.candidates.length)]!;
        for (let note = start; note < Math.min(start + length, chosen.length); note += 1) {
          const { candidates } = gathered[note]!;
          const isWinding = random() < 0.5 && chosen[note]!.string.kind === 'wound';
          const size = isWinding ? chosen[note]!.size : towards.size;
          const ofSize = candidates.filter((candidate) => candidate.size === size);
          if (ofSize.length > 0) chosen[note] = ofSize[below(ofSize.length)]!;
        }
      }
      if (!keepsRules(problem, chosen) || chosen.every((candidate, note) => candidate === best[note]))
        continue;
      kept += 1;
      expect(statedSum(problem, chosen, asFoundLogTensions)).toBeGreaterThanOrEqual(answer.objective - 1e-12);
    }
    expect(kept).toBe(10_000);
  });
});
