import { describe, expect, it } from 'vitest';
import { newtons } from '../units/index.ts';
import { exampleProblem } from './testing/example-problems.ts';
import { solvedProgram } from './testing/mixed-integer-program.ts';
import { seededUniform } from './testing/seeded-uniform.ts';
import { everyChoice, keepsRules, randomSmallProblem, statedSum } from './testing/small-scales.ts';
import { programOf, roundTheBreak } from './testing/whole-scale-program.ts';
import { bestPreparedScale, prepareScale } from './whole-scale.ts';
import type { LoadLimit, WholeScaleProblem } from './whole-scale-problem.ts';

describe('bestWholeScale() against a mixed-integer program', () => {
  it.each([
    ['grand', 24, 37],
    ['vertical', 27, 39],
  ] as const)(
    'has the optimum of HiGHS round the break of the example %s, free, within a load and within several at once',
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

      // The whole and every bridge at once, each of them tight by itself.
      const together = free.loads
        .filter(({ of }) => of !== 'section')
        .map(({ of, name: its, load }) => ({
          of,
          name: its,
          highest: newtons(load * (of === 'all' ? 0.982 : 0.988)),
        }));
      expect(together.length).toBeGreaterThan(1);
      const all = { ...prepared, problem: { ...problem, rules: { ...problem.rules, loads: together } } };
      const lightest = bestPreparedScale(all);
      if (!lightest.feasible) throw new Error(lightest.clash.reason);
      expect(lightest.proof.isOptimal).toBe(true);
      const theirLightest = await solvedProgram(programOf(all));
      if (theirLightest.status !== 'optimal') throw new Error('the other solver finds no scale');
      expect(lightest.objective).toBeGreaterThan(free.objective);
      expect(Math.abs(lightest.objective - theirLightest.objective)).toBeLessThan(1e-8);
    },
  );
});

/** So many that more than fifty limits tell and some clash together. */
const LAST_SEED = 340;
/** Few enough to try them all. */
const MOST_CHOICES = 10_000;

/** A small scale at random, its notes in three sections of two bridges, its sizes never growing as in the program. */
function inThreeSections(seed: number): WholeScaleProblem {
  const problem = randomSmallProblem(seed);
  const { notes } = problem;
  return {
    ...problem,
    notes: notes.map((note, index) => {
      const third = Math.floor((3 * index) / notes.length);
      const places = { section: ['low', 'middle', 'high'][third]!, bridge: third === 0 ? 'bass' : 'long' };
      return { ...note, asFound: { ...note.asFound, ...places } };
    }),
    rules: { ...problem.rules, plainNeverGrows: true, coresNeverGrow: true, woundBridges: undefined },
  };
}

describe('bestWholeScale() within the load of all strings, of every section and of every bridge at once', () => {
  it('has the optimum of HiGHS, or clashes where no choice of all keeps what is named', async () => {
    const compared = { dearer: 0, atNoCost: 0, oneTooLow: 0, together: 0 };
    for (let seed = 1; seed <= LAST_SEED; seed += 1) {
      const prepared = prepareScale(inThreeSections(seed));
      const free = bestPreparedScale(prepared);
      if (!free.feasible) continue;
      const random = seededUniform(seed);
      // From below what the free answer weighs, where nothing may be light enough, to a limit that tells nothing.
      const loads = free.loads.map(
        ({ of, name, load }): LoadLimit => ({ of, name, highest: newtons(load * (0.92 + 0.09 * random())) }),
      );
      const { problem, gathered } = prepared;
      const within = (these: readonly LoadLimit[]) => ({
        ...problem,
        rules: { ...problem.rules, loads: these },
      });
      const limited = { ...prepared, problem: within(loads) };
      const ours = bestPreparedScale(limited);
      if (ours.feasible) {
        const theirs = await solvedProgram(programOf(limited));
        if (theirs.status !== 'optimal') throw new Error(`the other solver finds no scale: seed ${seed}`);
        expect(ours.proof.isOptimal).toBe(true);
        expect(Math.abs(ours.objective - theirs.objective), `seed ${seed}`).toBeLessThan(1e-8);
        compared[ours.objective > free.objective + 1e-9 ? 'dearer' : 'atNoCost'] += 1;
        continue;
      }
      expect(ours.clash.limits).toEqual(['highest load']);
      const named = loads.filter(({ of, name }) =>
        ours.clash.reason.includes(of === 'all' ? 'all strings' : `${of} '${name}'`),
      );
      compared[named.length > 1 ? 'together' : 'oneTooLow'] += 1;
      const choices = gathered.reduce((count, { candidates }) => count * candidates.length, 1);
      if (choices > MOST_CHOICES) continue;
      // Every choice that keeps the other rules, by what it weighs: those that are named clash, and of several none is needless.
      const kept = [...everyChoice(gathered.map(({ candidates }) => candidates))].filter((chosen) =>
        keepsRules(within([]), chosen),
      );
      const canKeep = (these: readonly LoadLimit[]) =>
        kept.some((chosen) => keepsRules(within(these), chosen));
      expect(canKeep(named), `seed ${seed}`).toBe(false);
      for (const one of named)
        expect(canKeep(named.filter((other) => other !== one)), `seed ${seed}`).toBe(true);
    }
    expect(compared.dearer).toBeGreaterThan(50);
    expect(compared.oneTooLow).toBeGreaterThan(20);
    expect(compared.together).toBeGreaterThan(0);
  });
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
