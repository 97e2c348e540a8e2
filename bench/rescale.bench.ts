import {
  bestPreparedScale,
  bestWholeScale,
  newtons,
  prepareScale,
  type WholeScaleProblem,
  wholeScaleFront,
} from '@becket/core';
import { exampleProblem } from '../packages/core/src/rescale/testing/example-problems.ts';
import { loadedSolver, solvedProgram } from '../packages/core/src/rescale/testing/mixed-integer-program.ts';
import { programOf, roundTheBreak } from '../packages/core/src/rescale/testing/whole-scale-program.ts';
import { type BenchTopic, type Figure, medianOf, timed } from './harness.ts';

const grand = exampleProblem('grand');

/** The same problem with its highest tensions a billionth higher each time, so that no two runs do the same work. */
function moved(problem: WholeScaleProblem, turn: number): WholeScaleProblem {
  return {
    ...problem,
    notes: problem.notes.map((note) => ({
      ...note,
      highestTension: newtons(note.highestTension * (1 + (turn + 1) * 1e-9)),
    })),
  };
}

/** The grand with a winding wire left out, or one put between every two. */
function withWindings(share: 0.5 | 1 | 2): WholeScaleProblem {
  const { windings } = grand.catalogue;
  const chosen =
    share === 1
      ? windings
      : share === 0.5
        ? windings.filter((_, index) => index % 2 === 0)
        : windings.flatMap((wire, index) => {
            const next = windings[index + 1];
            return next === undefined ? [wire] : [wire, ((wire + next) / 2) as typeof wire];
          });
  return { ...grand, catalogue: { ...grand.catalogue, windings: chosen } };
}

function withinLoad(problem: WholeScaleProblem): WholeScaleProblem {
  const free = bestWholeScale(problem);
  if (!free.feasible) throw new Error(free.clash.reason);
  const highest = newtons(free.loads[0]!.load * 0.99);
  return { ...problem, rules: { ...problem.rules, loads: [{ of: 'all', highest }] } };
}

/** The total 2 % and every section 1.5 % below what the free answer weighs: where loads tell most partial scales apart. */
function withinEveryLoad(problem: WholeScaleProblem): WholeScaleProblem {
  const free = bestWholeScale(problem);
  if (!free.feasible) throw new Error(free.clash.reason);
  const loads = free.loads.flatMap(({ of, name, load }) =>
    of === 'bridge' ? [] : [{ of, name, highest: newtons(load * (of === 'all' ? 0.98 : 0.985)) }],
  );
  return { ...problem, rules: { ...problem.rules, loads } };
}

/** The answer, when it is proved: a bench that measures an answer without proof would measure another thing. */
function proved(problem: WholeScaleProblem): void {
  const answer = bestWholeScale(problem);
  if (!answer.feasible || !answer.proof.isOptimal) throw new Error('there is no proved scale');
}

/** Both solvers on the notes round the break, one after the other, so that the machine is the same for both. */
async function againstTheOther(): Promise<Figure[]> {
  await loadedSolver();
  const prepared = prepareScale(roundTheBreak('grand', 24, 37));
  const program = programOf(prepared);
  const [ours, theirs, ratios]: number[][] = [[], [], []];
  for (let run = 0; run < 3; run += 1) {
    const start = performance.now();
    const own = bestPreparedScale(prepared);
    const middle = performance.now();
    const other = await solvedProgram(program);
    const end = performance.now();
    if (!own.feasible || other.status !== 'optimal') throw new Error('there is no scale');
    if (Math.abs(own.objective - other.objective) > 1e-8) throw new Error('the two optima differ');
    ours!.push(middle - start);
    theirs!.push(end - middle);
    ratios!.push((end - middle) / (middle - start));
  }
  const figure = (name: string, values: readonly number[], unit: string): Figure => ({
    name,
    value: medianOf(values),
    unit,
    range: [Math.min(...values), Math.max(...values)],
    runs: values.length,
  });
  const candidates = prepared.gathered.reduce((sum, note) => sum + note.candidates.length, 0);
  return [
    figure(`14 notes round the break, ${candidates} strings: ours`, ours!, 'ms'),
    figure('the same by HiGHS', theirs!, 'ms'),
    figure('HiGHS over ours, same run, same optimum', ratios!, '×'),
  ];
}

/** Processor time of one call: what it would take alone, where the clock also counts what else the machine does. */
function processorTime(name: string, call: (turn: number) => unknown, runs: number): Figure {
  call(0);
  const times = Array.from({ length: runs }, (_, turn) => {
    const before = process.cpuUsage();
    call(turn + 1);
    const { user, system } = process.cpuUsage(before);
    return (user + system) / 1000;
  });
  return { name, value: medianOf(times), unit: 'ms', range: [Math.min(...times), Math.max(...times)], runs };
}

/** What one optimum allocates, as far as nothing was freed meanwhile: the largest of some runs. */
function memory(): Figure {
  const used = (): number => {
    const { heapUsed, arrayBuffers } = process.memoryUsage();
    return heapUsed + arrayBuffers;
  };
  const prepared = prepareScale(grand);
  const allocated = Array.from({ length: 5 }, () => {
    const before = used();
    const answer = bestPreparedScale(prepared);
    if (!answer.feasible) throw new Error(answer.clash.reason);
    return (used() - before) / 2 ** 20;
  });
  return { name: 'memory that one optimum takes', value: Math.max(...allocated), unit: 'MiB', runs: 5 };
}

function growth(): Figure[] {
  return ([0.5, 1, 2] as const).map((share) => {
    const problem = withWindings(share);
    const answer = bestWholeScale(problem);
    const candidates = answer.feasible ? answer.proof.candidates : 0;
    return timed(
      `whole piano, ${problem.catalogue.windings.length} winding wires, ${candidates} strings weighed`,
      (turn) => bestWholeScale(moved(problem, turn)),
      { runs: 5, warmUp: 1 },
    );
  });
}

export const topic: BenchTopic = {
  name: 'rescale',
  run: async () => {
    const loaded = withinLoad(grand);
    const everywhere = withinEveryLoad(grand);
    return [
      timed(
        'whole grand, plain and wound, one optimum with its strings worked out',
        (turn) => bestWholeScale(moved(grand, turn)),
        {
          runs: 9,
          aim: 'under 250 ms',
        },
      ),
      timed('trade-off front of the grand', (turn) => wholeScaleFront(prepareScale(moved(grand, turn))), {
        runs: 5,
        warmUp: 1,
        aim: 'under 2000 ms',
      }),
      processorTime('processor time of the one optimum', (turn) => bestWholeScale(moved(grand, turn)), 9),
      processorTime(
        'processor time of the front',
        (turn) => wholeScaleFront(prepareScale(moved(grand, turn))),
        3,
      ),
      timed('whole grand within a load 1 % lower, proved', (turn) => bestWholeScale(moved(loaded, turn)), {
        runs: 3,
        warmUp: 1,
      }),
      processorTime(
        'processor time within a total 2 % and every section 1.5 % lower, proved',
        (turn) => proved(moved(everywhere, turn)),
        3,
      ),
      ...growth(),
      ...(await againstTheOther()),
      memory(),
    ];
  },
};
