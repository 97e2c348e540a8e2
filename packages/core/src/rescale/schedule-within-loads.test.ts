import { describe, expect, it } from 'vitest';
import { newtons } from '../units/index.ts';
import { isFound } from './schedule-search.ts';
import { scheduleWithinLoads } from './schedule-within-loads.ts';
import { searchRules, searchStages } from './search-stages.ts';
import { exampleProblem } from './testing/example-problems.ts';
import { seededUniform } from './testing/seeded-uniform.ts';
import { everyChoice, keepsRules, randomSmallProblem, statedSum } from './testing/small-scales.ts';
import { bestPreparedScale, prepareScale } from './whole-scale.ts';
import type { LoadLimit } from './whole-scale-problem.ts';

describe('scheduleWithinLoads()', () => {
  it('tells a true bound where it was not let to prove its answer', () => {
    let [unproved, apart] = [0, 0];
    for (let seed = 1; seed <= 250; seed += 1) {
      const free = randomSmallProblem(seed);
      const prepared = prepareScale(free);
      const candidates = prepared.gathered.map((note) => note.candidates);
      if (candidates.some((here) => here.length === 0)) continue;
      const random = seededUniform(seed);
      const adds = free.notes.map(({ asFound }, note) =>
        Float64Array.from(candidates[note]!, ({ tension }) => asFound.strings * tension),
      );
      const sum = (pick: (values: Float64Array) => number) =>
        adds.reduce((total, column) => total + pick(column), 0);
      const [low, high] = [sum((column) => Math.min(...column)), sum((column) => Math.max(...column))];
      const highest = low + (high - low) * (0.1 + 0.4 * random()) + 1;
      const found = scheduleWithinLoads(
        searchStages(free, candidates, prepared.asFoundLogTensions),
        searchRules(free.rules, free.weights),
        [{ highest, adds }],
        0,
      );
      const limits: LoadLimit[] = [{ of: 'all', highest: newtons(highest) }];
      const problem = { ...free, rules: { ...free.rules, loads: limits } };
      let least = Number.POSITIVE_INFINITY;
      for (const chosen of everyChoice(candidates)) {
        if (keepsRules(problem, chosen))
          least = Math.min(least, statedSum(problem, chosen, prepared.asFoundLogTensions));
      }
      if (!('choices' in found && isFound(found))) {
        // What is said to be impossible must be so.
        if (!('clashing' in found && !found.isProven)) expect(least).toBe(Number.POSITIVE_INFINITY);
        continue;
      }
      expect(found.lowerBound, `seed ${seed}`).toBeLessThanOrEqual(least + 1e-12);
      expect(found.cost, `seed ${seed}`).toBeGreaterThanOrEqual(least - 1e-12);
      const load = found.choices.reduce((total, choice, note) => total + adds[note]![choice]!, 0);
      expect(load).toBeLessThanOrEqual(highest);
      if (found.isProven) expect(found.cost).toBeCloseTo(least, 11);
      else unproved += 1;
      if (found.cost > least + 1e-9) apart += 1;
    }
    expect(unproved).toBeGreaterThan(10);
    // The narrow walk mostly finds the optimum all the same, without knowing it.
    expect(apart).toBeLessThan(unproved);
  });

  it.each([
    ['vertical', ['all', 'bridge treble'], 0.985],
    ['grand', ['bridge bass', 'bridge treble'], 0.985],
    ['grand', ['all', 'section bass', 'section tenor', 'section low treble', 'section high treble'], 0.985],
  ] as const)('keeps loads of the whole %s at once and proves its answer: %j', (piano, limited, share) => {
    const prepared = prepareScale(exampleProblem(piano));
    const { problem } = prepared;
    const free = bestPreparedScale(prepared);
    if (!free.feasible) throw new Error(free.clash.reason);
    const loads = limited.map((name): LoadLimit => {
      const known = free.loads.find((one) => name === (one.of === 'all' ? 'all' : `${one.of} ${one.name}`))!;
      // A little less than its sections together, that it may tell where they do not.
      const part = known.of === 'all' && limited.length > 2 ? share - 0.005 : share;
      return { of: known.of, name: known.name, highest: newtons(known.load * part) };
    });
    const answer = bestPreparedScale({
      ...prepared,
      problem: { ...problem, rules: { ...problem.rules, loads } },
    });
    if (!answer.feasible) throw new Error(answer.clash.reason);
    expect(answer.proof.isOptimal).toBe(true);
    expect(answer.proof.lowerBound).toBeCloseTo(answer.objective, 9);
    expect(answer.objective).toBeGreaterThan(free.objective);
    const kept = answer.loads.filter(({ highest }) => highest !== undefined);
    expect(kept).toHaveLength(limited.length);
    for (const { load, highest } of kept) expect(load).toBeLessThanOrEqual(highest! * (1 + 1e-9));
  });
});
