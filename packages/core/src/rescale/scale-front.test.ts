import { describe, expect, it } from 'vitest';
import { newtons } from '../units/index.ts';
import {
  type FrontProgress,
  type ScaleFront,
  scaleFront,
  weightsAtPlace,
  wholeScaleFront,
} from './scale-front.ts';
import { scaleObjective } from './scale-objective.ts';
import { isSameString } from './string-candidates.ts';
import { exampleProblem } from './testing/example-problems.ts';
import { bestPreparedScale, prepareScale } from './whole-scale.ts';
import { COMMON_RESCALE_WEIGHTS } from './whole-scale-problem.ts';

const prepared = prepareScale(exampleProblem('vertical'));
const { problem } = prepared;
const front = wholeScaleFront(prepared) as ScaleFront;

describe('scaleFront()', () => {
  it('has five to nine answers in order, no two alike', () => {
    expect(front.feasible).toBe(true);
    const { answers } = front;
    expect(answers.length).toBeGreaterThanOrEqual(5);
    expect(answers.length).toBeLessThanOrEqual(9);
    answers.forEach((one, index) => {
      for (const other of answers.slice(index + 1)) {
        expect(other.place).toBeGreaterThan(one.place);
        const areAlike = one.answer.notes.every(({ string }, note) =>
          isSameString(string, other.answer.notes[note]!.string),
        );
        expect(areAlike).toBe(false);
      }
    });
  });

  it('grows smoother and further from what was found, and no answer is worse than another in every respect', () => {
    const { answers } = front;
    for (const [index, { roughness, disturbance, untidiness }] of answers.entries()) {
      const before = answers[index - 1];
      // Of optima under p·R + (1 − p)·D + the rest, R − D never grows with p: add the two inequalities of neighbours.
      if (before !== undefined)
        expect(roughness - disturbance).toBeLessThanOrEqual(before.roughness - before.disturbance + 1e-9);
      for (const [at, other] of answers.entries()) {
        const isWorse =
          other.roughness <= roughness && other.disturbance <= disturbance && other.untidiness <= untidiness;
        if (at !== index) expect(isWorse).toBe(false);
      }
    }
    expect(answers[answers.length - 1]!.roughness).toBeLessThan(answers[0]!.roughness);
    expect(answers[0]!.changes.length).toBeLessThan(answers[answers.length - 1]!.changes.length);
  });

  it('names every change, what it does to the load, and what wire it needs', () => {
    for (const { answer, changes, loadChange, plainWire, woundStrings, newWoundStrings } of front.answers) {
      const changed = new Set(changes.map(({ key }) => key));
      let [load, strings] = [0, 0];
      answer.notes.forEach(({ key, string, tension }, note) => {
        const { asFound } = problem.notes[note]!;
        expect(isSameString(string, asFound.string)).toBe(!changed.has(key));
        load += asFound.strings * tension;
        strings += asFound.strings;
      });
      const found = scaleObjective(
        problem,
        problem.notes.map(({ asFound }) => asFound.string),
      );
      expect(found.parts.changedNotes).toBe(0);
      expect(answer.loads[0]!.load).toBeCloseTo(load, 6);
      // The sum of what was found, from the other end: the first answer's load less its change.
      const first = front.answers[0]!;
      expect(load - loadChange).toBeCloseTo(first.answer.loads[0]!.load - first.loadChange, 6);
      expect(plainWire.reduce((sum, wire) => sum + wire.strings, 0) + woundStrings).toBe(strings);
      expect(newWoundStrings).toBeLessThanOrEqual(woundStrings);
    }
  });

  it('says how far it is, and stops when nobody asks', () => {
    const steps = scaleFront(prepared);
    const seen: FrontProgress[] = [];
    for (let count = 0; count < 3; count += 1) {
      const step = steps.next();
      if (step.done) throw new Error('it ends too early');
      seen.push(step.value);
    }
    expect(seen.map(({ solved }) => solved)).toEqual([1, 2, 3]);
    expect(seen.map(({ of }) => of)).toEqual([9, 9, 9]);
    expect(seen[0]!.latest!.place).toBe(0);
    steps.return(undefined as never);
    expect(steps.next().done).toBe(true);
  });

  it('has the problem itself in its middle', () => {
    expect(weightsAtPlace(COMMON_RESCALE_WEIGHTS, 0.5)).toEqual(COMMON_RESCALE_WEIGHTS);
    const middle = front.answers.find(({ place }) => place === 0.5);
    const own = bestPreparedScale(prepared);
    if (!own.feasible) throw new Error(own.clash.reason);
    expect(middle?.answer.objective).toBeCloseTo(own.objective, 12);
  });

  it('is the clash where there is no scale', () => {
    const loads = [{ of: 'all' as const, highest: newtons(1000) }];
    const none = { ...prepared, problem: { ...problem, rules: { ...problem.rules, loads } } };
    expect(wholeScaleFront(none)).toMatchObject({ feasible: false, clash: { limits: ['highest load'] } });
  });
});
