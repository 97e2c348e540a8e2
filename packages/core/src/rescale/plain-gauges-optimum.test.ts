import { describe, expect, it } from 'vitest';
import { A228_MINIMUM, latticeDiameters, US_WIRE_SIZES } from '../tables/index.ts';
import { hertz, kilogramsPerCubicMetre, type Metres, metres, newtons } from '../units/index.ts';
import { bestPlainGauges, gaugeObjective, type PlainGaugeProblem } from './plain-gauges.ts';
import { examplePianos } from './testing/example-pianos.ts';
import { type ScheduleProgram, solvedProgram } from './testing/mixed-integer-program.ts';
import { seededUniform } from './testing/seeded-uniform.ts';

/*
 * The optimum of the dynamic programming against that of HiGHS on a mixed-integer formulation of its own. The costs of the
 * program below are worked out here from the statement of the problem, not by the code under test.
 */

const density = kilogramsPerCubicMetre(7850);
const strengthAt = (diameter: Metres) => A228_MINIMUM.strengthAt(diameter).strength;

/** The same problem for the other solver; `candidates[i][a]` says which diameter stands behind a column. */
function programOf(problem: PlainGaugeProblem): { program: ScheduleProgram; candidates: number[][] } {
  const tension = (note: number, choice: number): number => {
    const { speakingLength, frequency } = problem.notes[note]!;
    return Math.PI * density * (problem.diameters[choice]! * speakingLength * frequency) ** 2;
  };
  const candidates = problem.notes.map((limits, note) =>
    problem.diameters.flatMap((diameter, choice) => {
      const force = tension(note, choice);
      const share = force / ((Math.PI / 4) * diameter ** 2 * strengthAt(diameter));
      const isAllowed =
        force >= limits.lowestTension &&
        force <= limits.highestTension &&
        share >= limits.lowestBreakShare &&
        share <= limits.highestBreakShare &&
        (limits.pinned === undefined || limits.pinned === choice);
      return isAllowed ? [choice] : [];
    }),
  );
  const log = (note: number, candidate: number): number =>
    Math.log(tension(note, candidates[note]![candidate]!));
  const diameterOf = (note: number, candidate: number) => problem.diameters[candidates[note]![candidate]!]!;
  return {
    candidates,
    program: {
      notes: candidates.map((choices, note) =>
        choices.map((choice, candidate) => {
          const target = problem.notes[note]!.targetTension;
          return {
            size: choice,
            cost:
              target === undefined
                ? 0
                : problem.targetWeight * (log(note, candidate) - Math.log(target)) ** 2,
          };
        }),
      ),
      pairCost: (note, a, b) => {
        const [before, here] = [diameterOf(note - 1, a), diameterOf(note, b)];
        if (here > before) return Number.POSITIVE_INFINITY;
        return here === before ? 0 : problem.sizeChangeWeight;
      },
      bendCost: (note, a, b, c) => (log(note - 1, a) - 2 * log(note, b) + log(note + 1, c)) ** 2,
      minimumRun: () => problem.minimumRun ?? 1,
    },
  };
}

function randomProblem(seed: number): PlainGaugeProblem {
  const random = seededUniform(seed);
  const between = (low: number, high: number): number => low + (high - low) * random();
  const count = Math.floor(between(3, 13));
  const sizes = Math.floor(between(2, 7));
  const firstMil = Math.floor(between(30, 38));
  const start = between(0.4, 0.55);
  return {
    notes: Array.from({ length: count }, (_, note) => ({
      speakingLength: metres(start * 2 ** (-note / between(11.5, 13.5))),
      frequency: hertz(330 * 2 ** (note / 12)),
      targetTension: random() < 0.7 ? newtons(between(600, 850)) : undefined,
      lowestTension: newtons(between(300, 500)),
      highestTension: newtons(between(800, 1200)),
      lowestBreakShare: 0.2,
      highestBreakShare: between(0.55, 0.75),
    })),
    diameters: Array.from({ length: sizes }, (_, index) => metres((firstMil + index) * 2.54e-5)),
    strengthAt,
    density,
    sizeChangeWeight: [0, 0.0007, 0.02][Math.floor(between(0, 3))]!,
    targetWeight: [0, 0.05, 1][Math.floor(between(0, 3))]!,
    minimumRun: Math.floor(between(1, 4)),
  };
}

/** The plain notes of an example piano by the sizes of the American lattice, near what was found. */
function compassOf(notes: (typeof examplePianos)[number]['notes']): PlainGaugeProblem {
  return {
    notes: notes.flatMap(({ string, frequency }) => {
      if (string.kind !== 'plain') return [];
      const asFound = Math.PI * density * (string.diameter * string.speakingLength * frequency) ** 2;
      return [
        {
          speakingLength: string.speakingLength,
          frequency,
          targetTension: newtons(asFound),
          // Five sizes a note: with all that break share alone allows, the other solver takes minutes.
          lowestTension: newtons(asFound * 0.88),
          highestTension: newtons(asFound * 1.14),
          lowestBreakShare: 0.25,
          highestBreakShare: 0.7,
        },
      ];
    }),
    diameters: latticeDiameters(US_WIRE_SIZES),
    strengthAt,
    density,
    sizeChangeWeight: 0.0004,
    targetWeight: 0.02,
    minimumRun: 3,
  };
}

describe('bestPlainGauges() against a mixed-integer program', () => {
  it('has the optimum of HiGHS on 120 random compasses, and the same sizes where none other is as good', async () => {
    let feasible = 0;
    let alike = 0;
    for (let seed = 1; seed <= 120; seed += 1) {
      const problem = randomProblem(seed);
      const answer = bestPlainGauges(problem);
      const { program, candidates } = programOf(problem);
      const other = await solvedProgram(program);
      expect(answer.feasible, `seed ${seed}`).toBe(other.status === 'optimal');
      if (!answer.feasible || other.status !== 'optimal') continue;
      feasible += 1;
      // The solver closes its gap to 1e-12 of these sums; its tolerance on whole numbers is 1e-9.
      expect(Math.abs(answer.objective - other.objective), `seed ${seed}`).toBeLessThan(1e-8);
      const theirs = other.choices.map((candidate, note) => candidates[note]![candidate]!);
      if (theirs.every((choice, note) => choice === answer.choices[note])) alike += 1;
      // Where the sizes differ, both must be as good: weighed by the same rule.
      else expect(gaugeObjective(problem, theirs)).toBeCloseTo(answer.objective, 10);
    }
    expect(feasible).toBeGreaterThan(60);
    expect(alike).toBeGreaterThan(feasible / 2);
  });

  it.each(examplePianos)(
    'has the optimum of HiGHS on the plain notes of the example $name',
    async ({ notes }) => {
      const problem = compassOf(notes);
      const answer = bestPlainGauges(problem);
      if (!answer.feasible) throw new Error(answer.reason);
      const { program, candidates } = programOf(problem);
      const other = await solvedProgram(program);
      if (other.status !== 'optimal') throw new Error('the other solver finds no schedule');
      expect(Math.abs(answer.objective - other.objective)).toBeLessThan(1e-8);
      expect(other.choices.map((candidate, note) => candidates[note]![candidate])).toEqual(answer.choices);
    },
  );
});
