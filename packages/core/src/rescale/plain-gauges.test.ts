import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hertz, kilogramsPerCubicMetre, metres, millimetres, newtons, pascals } from '../units/index.ts';
import { bestPlainGauges, gaugeObjective, type PlainGaugeProblem } from './plain-gauges.ts';

/** Sut = A/d^m with A = 2211 MPa·mm^m, m = 0.145. Source: Shigley's Mechanical Engineering Design, spring-wire table; from memory. */
const handbookStrength = (diameter: number) => pascals(2211e6 / (diameter * 1000) ** 0.145);

const problemArbitrary = fc
  .record({
    count: fc.integer({ min: 1, max: 6 }),
    sizes: fc.uniqueArray(fc.integer({ min: 30, max: 46 }), { minLength: 1, maxLength: 4 }),
    start: fc.double({ min: 0.35, max: 0.6, noNaN: true }),
    slope: fc.double({ min: 0.9, max: 1, noNaN: true }),
    wobble: fc.array(fc.double({ min: 0.96, max: 1.04, noNaN: true }), { minLength: 6, maxLength: 6 }),
    sizeChangeWeight: fc.constantFrom(0, 0.001, 0.05),
    targetWeight: fc.constantFrom(0, 0.1, 2),
    minimumRun: fc.integer({ min: 1, max: 3 }),
    highest: fc.double({ min: 650, max: 1100, noNaN: true }),
  })
  .map(
    ({
      count,
      sizes,
      start,
      slope,
      wobble,
      sizeChangeWeight,
      targetWeight,
      minimumRun,
      highest,
    }): PlainGaugeProblem => ({
      notes: Array.from({ length: count }, (_, note) => ({
        speakingLength: metres(start * slope ** note * wobble[note]!),
        frequency: hertz(330 * 2 ** (note / 12)),
        targetTension: newtons(750),
        lowestTension: newtons(400),
        highestTension: newtons(highest),
        lowestBreakShare: 0.2,
        highestBreakShare: 0.7,
      })),
      diameters: sizes.map((mil) => millimetres(mil * 0.0254)),
      strengthAt: handbookStrength,
      density: kilogramsPerCubicMetre(7850),
      sizeChangeWeight,
      targetWeight,
      minimumRun,
    }),
  );

/** Every schedule that keeps the rules, written as the rules are said. */
function everySchedule({
  notes,
  diameters,
  strengthAt,
  density,
  minimumRun = 1,
}: PlainGaugeProblem): number[][] {
  let schedules: number[][] = [[]];
  for (let note = 0; note < notes.length; note += 1) {
    schedules = schedules.flatMap((schedule) => diameters.map((_, choice) => [...schedule, choice]));
  }
  return schedules.filter((schedule) => {
    const runs: number[] = [];
    return (
      schedule.every((choice, note) => {
        const {
          speakingLength,
          frequency,
          lowestTension,
          highestTension,
          lowestBreakShare,
          highestBreakShare,
        } = notes[note]!;
        const diameter = diameters[choice]!;
        const tension = Math.PI * density * (diameter * speakingLength * frequency) ** 2;
        const share = tension / ((Math.PI / 4) * diameter ** 2 * strengthAt(diameter));
        const isNew = note === 0 || schedule[note - 1] !== choice;
        if (isNew) runs.push(1);
        else runs[runs.length - 1]! += 1;
        return (
          tension >= lowestTension &&
          tension <= highestTension &&
          share >= lowestBreakShare &&
          share <= highestBreakShare &&
          (note === 0 || diameters[schedule[note - 1]!]! >= diameter)
        );
      }) && runs.every((run) => run >= minimumRun)
    );
  });
}

describe('bestPlainGauges()', () => {
  it('equals the best of every schedule, by enumeration', () => {
    let feasible = 0;
    fc.assert(
      fc.property(problemArbitrary, (problem) => {
        const answer = bestPlainGauges(problem);
        const all = everySchedule(problem).map((schedule) => gaugeObjective(problem, schedule));
        expect(answer.feasible).toBe(all.length > 0);
        if (!answer.feasible) return;
        feasible += 1;
        const best = all.reduce((low, sum) => Math.min(low, sum), Number.POSITIVE_INFINITY);
        expect(answer.objective).toBeCloseTo(best, 10);
        expect(everySchedule(problem)).toContainEqual(answer.choices);
      }),
      { numRuns: 400, seed: 7 },
    );
    expect(feasible).toBeGreaterThan(100);
  });

  it('never breaks a limit, and no feasible choice of 2,000 at random is better', () => {
    const problem = treble(40);
    const answer = bestPlainGauges(problem);
    if (!answer.feasible) throw new Error(answer.reason);
    for (const tension of answer.tensions) {
      expect(tension).toBeGreaterThanOrEqual(500);
      expect(tension).toBeLessThanOrEqual(1000);
    }
    // A small linear congruential generator: chance that is the same every time.
    let seed = 1;
    const random = () => {
      seed = (seed * 1103515245 + 12345) % 2147483648;
      return seed / 2147483648;
    };
    let weighed = 0;
    for (let trial = 0; trial < 2000; trial += 1) {
      const schedule = answer.choices.map((choice) =>
        Math.min(16, Math.max(0, choice + Math.round((random() - 0.5) * 3))),
      );
      schedule.sort((a, b) => b - a);
      const other = gaugeObjective(problem, schedule);
      weighed += 1;
      expect(other).toBeGreaterThanOrEqual(answer.objective - 1e-12);
    }
    expect(weighed).toBe(2000);
  });

  it('keeps a pinned size, and says which note has no size left', () => {
    const problem = treble(20);
    const free = bestPlainGauges(problem);
    if (!free.feasible) throw new Error(free.reason);
    const pinned = free.choices[10]! - 1;
    const notes = problem.notes.map((note, index) => (index === 10 ? { ...note, pinned } : note));
    const answer = bestPlainGauges({ ...problem, notes });
    if (!answer.feasible) throw new Error(answer.reason);
    expect(answer.choices[10]).toBe(pinned);
    expect(answer.objective).toBeGreaterThanOrEqual(free.objective);

    const narrow = problem.notes.map((note, index) =>
      index === 4 ? { ...note, highestTension: newtons(1) } : note,
    );
    const none = bestPlainGauges({ ...problem, notes: narrow });
    expect(none).toMatchObject({ feasible: false, note: 4 });
    expect(none.feasible ? '' : none.reason).toContain('note 5');
  });

  it('scaling every density leaves the sum of a smoothness-only problem alone', () => {
    const problem = { ...treble(30), targetWeight: 0 };
    const wide = problem.notes.map((note) => ({
      ...note,
      highestTension: newtons(5000),
      lowestTension: newtons(1),
      lowestBreakShare: 0,
      highestBreakShare: 9,
    }));
    const one = bestPlainGauges({ ...problem, notes: wide });
    const two = bestPlainGauges({ ...problem, notes: wide, density: kilogramsPerCubicMetre(7800) });
    if (!one.feasible || !two.feasible) throw new Error('both problems have wide limits');
    expect(one.objective).toBeCloseTo(two.objective, 12);
  });

  it('refuses an empty compass and a length of zero', () => {
    expect(() => bestPlainGauges({ ...treble(3), notes: [] })).toThrow(RangeError);
    const notes = treble(3).notes.map((note) => ({ ...note, speakingLength: metres(0) }));
    expect(() => bestPlainGauges({ ...treble(3), notes })).toThrow(/speaking length of note 1/);
  });
});

function treble(count: number): PlainGaugeProblem {
  return {
    notes: Array.from({ length: count }, (_, note) => ({
      speakingLength: metres(0.52 * 2 ** (-note / 12.6)),
      frequency: hertz(330 * 2 ** (note / 12)),
      targetTension: newtons(740),
      lowestTension: newtons(500),
      highestTension: newtons(1000),
      lowestBreakShare: 0.2,
      highestBreakShare: 0.75,
    })),
    diameters: Array.from({ length: 17 }, (_, index) => millimetres((29 + index) * 0.0254)),
    strengthAt: handbookStrength,
    density: kilogramsPerCubicMetre(7850),
    sizeChangeWeight: 0.0005,
    targetWeight: 0.02,
  };
}
