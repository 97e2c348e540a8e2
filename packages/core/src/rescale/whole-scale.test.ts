import { describe, expect, it } from 'vitest';
import { stringTension } from '../strings/index.ts';
import { newtons } from '../units/index.ts';
import { seededUniform } from './testing/seeded-uniform.ts';
import {
  candidatesOf,
  everyChoice,
  keepsRules,
  randomSmallProblem,
  statedSum,
} from './testing/small-scales.ts';
import { bestWholeScale, prepareScale } from './whole-scale.ts';
import type { LoadLimit, WholeScaleProblem } from './whole-scale-problem.ts';

/** The least stated sum of every choice that keeps the rules; undefined when none does. */
function bestByEnumeration(problem: WholeScaleProblem): { least: number | undefined; tried: number } {
  const { gathered, asFoundLogTensions } = prepareScale(problem);
  let least: number | undefined;
  let tried = 0;
  for (const chosen of everyChoice(gathered.map(({ candidates }) => candidates))) {
    tried += 1;
    if (!keepsRules(problem, chosen)) continue;
    const sum = statedSum(problem, chosen, asFoundLogTensions);
    if (least === undefined || sum < least) least = sum;
  }
  return { least, tried };
}

/** A limit between the lightest and the heaviest that the candidates allow. */
function randomLoads(problem: WholeScaleProblem, seed: number): LoadLimit[] {
  const random = seededUniform(seed + 5000);
  const candidates = candidatesOf(problem);
  const limits: LoadLimit[] = [{ of: 'all', highest: newtons(1) }];
  if (random() < 0.4) limits.push({ of: 'section', name: 'tenor', highest: newtons(1) });
  const hasLongBridge = problem.notes.some(({ asFound }) => asFound.bridge === 'long bridge');
  if (random() < 0.4 && hasLongBridge)
    limits.push({ of: 'bridge', name: 'long bridge', highest: newtons(1) });
  return limits.map((limit) => {
    let [low, high] = [0, 0];
    problem.notes.forEach(({ asFound }, note) => {
      const isUnder =
        limit.of === 'all' || (limit.of === 'section' ? asFound.section : asFound.bridge) === limit.name;
      if (!isUnder) return;
      const tensions = candidates[note]!.candidates.map(({ tension }) => tension as number);
      low += asFound.strings * Math.min(...tensions);
      high += asFound.strings * Math.max(...tensions);
    });
    return { ...limit, highest: newtons(low + (high - low) * (0.1 + 0.6 * random()) + 1) };
  });
}

describe('bestWholeScale() of small scales across a break', () => {
  it('equals the best of every schedule, by enumeration', () => {
    let [feasible, withBreak, tried] = [0, 0, 0];
    for (let seed = 1; seed <= 400; seed += 1) {
      const problem = randomSmallProblem(seed);
      const answer = bestWholeScale(problem);
      const all = bestByEnumeration(problem);
      tried += all.tried;
      expect(answer.feasible, `seed ${seed}`).toBe(all.least !== undefined);
      if (!answer.feasible || all.least === undefined) continue;
      feasible += 1;
      expect(Math.abs(answer.objective - all.least), `seed ${seed}`).toBeLessThan(1e-12);
      expect(answer.proof.isOptimal).toBe(true);
      if (new Set(answer.notes.map(({ string }) => string.kind)).size === 2) withBreak += 1;
    }
    expect(feasible).toBeGreaterThan(150);
    expect(withBreak).toBeGreaterThan(40);
    expect(tried).toBeGreaterThan(100_000);
  });

  it('equals the best of every schedule within loads, and never breaks one', () => {
    let [bound, feasible, unproved] = [0, 0, 0];
    for (let seed = 1; seed <= 300; seed += 1) {
      const free = randomSmallProblem(seed);
      if (candidatesOf(free).some(({ candidates }) => candidates.length === 0)) continue;
      const problem = { ...free, rules: { ...free.rules, loads: randomLoads(free, seed) } };
      const answer = bestWholeScale(problem);
      const { least } = bestByEnumeration(problem);
      expect(answer.feasible, `seed ${seed}`).toBe(least !== undefined);
      if (!answer.feasible || least === undefined) continue;
      feasible += 1;
      for (const { load, highest } of answer.loads) {
        if (highest !== undefined) expect(load).toBeLessThanOrEqual(highest * (1 + 1e-9));
      }
      if (!answer.proof.isOptimal) unproved += 1;
      expect(answer.proof.lowerBound, `seed ${seed}`).toBeLessThanOrEqual(least + 1e-12);
      expect(answer.objective, `seed ${seed}`).toBeGreaterThanOrEqual(least - 1e-12);
      if (answer.proof.isOptimal)
        expect(Math.abs(answer.objective - least), `seed ${seed}`).toBeLessThan(1e-12);
      const unbound = bestWholeScale(free);
      if (unbound.feasible && unbound.objective < least - 1e-12) bound += 1;
    }
    expect(feasible).toBeGreaterThan(60);
    expect(bound).toBeGreaterThan(25);
    expect(unproved).toBe(0);
  });

  it('keeps limits, runs and pins in every answer', () => {
    let pins = 0;
    for (let seed = 1; seed <= 400; seed += 1) {
      const problem = randomSmallProblem(seed);
      const answer = bestWholeScale(problem);
      if (!answer.feasible) continue;
      answer.notes.forEach(({ string, tension, breakShare }, note) => {
        const limits = problem.notes[note]!;
        expect(tension).toBeGreaterThanOrEqual(limits.lowestTension * (1 - 1e-9));
        expect(tension).toBeLessThanOrEqual(limits.highestTension * (1 + 1e-9));
        expect(breakShare).toBeGreaterThanOrEqual(limits.lowestBreakShare * (1 - 1e-9));
        expect(breakShare).toBeLessThanOrEqual(limits.highestBreakShare * (1 + 1e-9));
        if (limits.pinned !== undefined) {
          pins += 1;
          expect(string).toBe(limits.pinned);
        }
        if (string.kind === 'wound') {
          const over = string.layers.reduce(
            (sum, layer) => sum + 2 * layer.wireDiameter,
            string.coreDiameter as number,
          );
          expect(over / string.coreDiameter).toBeLessThanOrEqual(problem.rules.largestOverCore + 1e-9);
          // A pinned string is the user's own word on where wound strings may be.
          if (limits.pinned === undefined)
            expect(problem.rules.woundBridges ?? [limits.asFound.bridge]).toContain(limits.asFound.bridge);
        } else {
          const { frequency } = limits.asFound;
          expect(tension).toBeCloseTo(stringTension({ ...string, frequency }), 9);
        }
      });
    }
    expect(pins).toBeGreaterThan(20);
  });
});
