/*
 * What every benchmark shares: medians of several runs, so that a busy moment does not count, and rows for one table.
 */

/** One measured figure. */
export interface Figure {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  /** What it should be: 'under 1 ms'. Left out where nothing was aimed at. */
  readonly aim?: string;
  /** Fastest and slowest run, in the same unit, where there were several. */
  readonly range?: readonly [number, number];
  readonly runs?: number;
}

/** A file `<topic>.bench.ts` exports one as `topic`. */
export interface BenchTopic {
  readonly name: string;
  readonly run: () => Figure[] | Promise<Figure[]>;
}

export const medianOf = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
};

/**
 * Time of one call [ms], warm: the median over `runs` of the mean over `calls`.
 *
 * @param call   is handed a number that differs from call to call, so that no two do the same work twice
 * @param calls  calls in a run; enough that a run takes some milliseconds
 */
export function timed(
  name: string,
  call: (turn: number) => unknown,
  {
    calls = 1,
    runs = 15,
    warmUp = 3,
    aim,
  }: { calls?: number; runs?: number; warmUp?: number; aim?: string } = {},
): Figure {
  let turn = 0;
  let kept: unknown;
  const once = (): number => {
    const start = performance.now();
    for (let index = 0; index < calls; index += 1) {
      kept = call(turn);
      turn += 1;
    }
    return (performance.now() - start) / calls;
  };
  for (let run = 0; run < warmUp; run += 1) once();
  const times = Array.from({ length: runs }, once);
  // A result that is never looked at may never be computed.
  if (kept === Symbol.for('never')) throw new Error('unreachable');
  return {
    name,
    value: medianOf(times),
    unit: 'ms',
    range: [Math.min(...times), Math.max(...times)],
    runs,
    ...(aim !== undefined && { aim }),
  };
}
