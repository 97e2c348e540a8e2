import { describe, expect, it } from 'vitest';
import { cheapestSchedule } from './cheapest-schedule.ts';
import { isFound, PLAIN, ScheduleSearch, type SearchStage, WOUND } from './schedule-search.ts';
import { searchRules, searchStages } from './search-stages.ts';
import { seededUniform } from './testing/seeded-uniform.ts';
import { everyChoice, keepsRules, randomSmallProblem, statedSum } from './testing/small-scales.ts';
import { prepareScale } from './whole-scale.ts';

/** Some ten notes across a break with up to a hundred strings each: too many for enumeration, quick enough without bounds. */
function randomStages(seed: number): SearchStage[] {
  const random = seededUniform(seed);
  const count = 6 + Math.floor(random() * 8);
  const breakAt = Math.floor(random() * count);
  const strutAt = Math.floor(random() * count);
  return Array.from({ length: count }, (_, note): SearchStage => {
    const strings = Array.from({ length: 10 + Math.floor(random() * 90) }, () => {
      const isPlain = note > breakAt + 1 || (note >= breakAt - 1 && random() < 0.5);
      return {
        kind: isPlain ? PLAIN : WOUND,
        size: 10 - Math.floor((note + 6 * random()) / 3),
        logTension: 6.6 + 0.3 * random(),
        logInharmonicity: -8 + random(),
        own: random() < 0.1 ? 0 : 0.02 * random(),
      };
    }).sort((a, b) => b.kind - a.kind || b.size - a.size || a.logTension - b.logTension);
    return {
      count: strings.length,
      kind: Uint8Array.from(strings, ({ kind }) => kind),
      size: Int32Array.from(strings, ({ size }) => size),
      logTension: Float64Array.from(strings, ({ logTension }) => logTension),
      logInharmonicity: Float64Array.from(strings, ({ logInharmonicity }) => logInharmonicity),
      own: Float64Array.from(strings, ({ own }) => own),
      strings: note < breakAt ? 2 : 3,
      beginsSection: note === strutAt && note > 0,
      bridge: note < strutAt ? 'bass' : 'long',
      tensionBend: 1,
      inharmonicityBend: 0.25,
    };
  });
}

describe('cheapestSchedule()', () => {
  it('equals the search of all candidates without bounds', () => {
    let found = 0;
    for (let seed = 1; seed <= 60; seed += 1) {
      const stages = randomStages(seed);
      const random = seededUniform(seed + 900);
      const rules = {
        minimumRun: [1 + Math.floor(3 * random()), 1 + Math.floor(2 * random())],
        neverGrows: [random() < 0.7, random() < 0.7],
        sizeChange: random() < 0.3 ? 0 : 0.01,
        tiedString: random() < 0.3 ? 0 : 0.008,
      } as const;
      const bounded = cheapestSchedule(stages, rules, [], 0);
      const all = new ScheduleSearch(stages, rules, {}).cheapest();
      expect(isFound(bounded), `seed ${seed}`).toBe(isFound(all));
      if (!isFound(bounded) || !isFound(all)) continue;
      found += 1;
      expect(bounded.choices, `seed ${seed}`).toEqual(all.choices);
      expect(bounded.cost).toBeCloseTo(all.cost, 12);
      // A schedule that is known, the cheapest itself or another, changes nothing but how long it takes.
      const other = stages.map((stage) => ({
        ...stage,
        tensionBend: 0.2,
        own: stage.own.map((own) => own / 3),
      }));
      const known = [all, new ScheduleSearch(other, rules, {}).cheapest()].filter(isFound);
      const again = cheapestSchedule(
        stages,
        rules,
        known.map(({ choices }) => choices),
        0,
      );
      expect(again, `seed ${seed}`).toMatchObject({ choices: all.choices });
    }
    expect(found).toBeGreaterThan(20);
  });

  it('equals the best of every schedule, by enumeration, when it begins in the treble', () => {
    let found = 0;
    for (let seed = 1; seed <= 250; seed += 1) {
      const problem = randomSmallProblem(seed);
      const { gathered, asFoundLogTensions } = prepareScale(problem);
      const candidates = gathered.map((note) => note.candidates);
      const stages = searchStages(problem, candidates, asFoundLogTensions);
      const cheapest = cheapestSchedule(stages, searchRules(problem.rules, problem.weights), [], 0);
      let least = Number.POSITIVE_INFINITY;
      for (const chosen of everyChoice(candidates)) {
        if (keepsRules(problem, chosen))
          least = Math.min(least, statedSum(problem, chosen, asFoundLogTensions));
      }
      expect(isFound(cheapest), `seed ${seed}`).toBe(Number.isFinite(least));
      if (!isFound(cheapest)) continue;
      found += 1;
      expect(cheapest.cost, `seed ${seed}`).toBeCloseTo(least, 11);
    }
    expect(found).toBeGreaterThan(100);
  });
});
