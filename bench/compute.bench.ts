import { computeBatch, computeLine } from '@becket/tasks/compute';
import { answerStream, batchesAtOnce, startComputePool } from '../apps/cli/src/compute-pool.ts';
import { inventedGrand } from '../packages/core/src/scale/testing/invented-grand.ts';
import { type BenchTopic, type Figure, medianOf, timed } from './harness.ts';

/** A piano as a request line: the invented grand with every length changed a little, no two pianos alike. */
function pianoLine(turn: number, woundStrings: 'exact modes' | 'core formula'): string {
  const notes = inventedGrand().map(({ key, section, bridge, strings, frequency, string }) => ({
    key,
    section,
    bridge,
    strings,
    f0_Hz: frequency,
    speaking_length_m: string.speakingLength * (1 + (turn % 1000) * 1e-6),
    diameter_m: string.kind === 'plain' ? string.diameter : string.coreDiameter,
    ...(string.kind === 'wound' && {
      layers: string.layers.map((layer) => ({
        wire_diameter_m: layer.wireDiameter,
        start_m: layer.bareFront,
        end_m: layer.bareBack,
      })),
    }),
  }));
  return JSON.stringify({ kind: 'scale', id: turn, notes, wound_strings: woundStrings });
}

interface Took {
  readonly seconds: number;
  /** Of the processor, all threads together: what is left of a busy machine's time when others' work is taken out. */
  readonly cpuSeconds: number;
}

type Answer = Parameters<typeof answerStream>[1];

/** What a batch of pianos takes, from request lines to answer lines. */
async function batchTook(lines: readonly string[], answer: Answer, workers: number): Promise<Took> {
  const cpuBefore = process.cpuUsage();
  const start = performance.now();
  const { answered, errors } = await answerStream(lines, answer, async () => {}, batchesAtOnce(workers));
  const seconds = (performance.now() - start) / 1000;
  const { user, system } = process.cpuUsage(cpuBefore);
  if (answered !== lines.length || errors > 0) throw new Error(`${answered} answered, ${errors} errors`);
  return { seconds, cpuSeconds: (user + system) / 1e6 };
}

async function batches(): Promise<Figure[]> {
  const lines = Array.from({ length: 10_000 }, (_, turn) => pianoLine(turn, 'exact modes'));
  const onThisThread: Answer = async (batch) => computeBatch(batch);
  const beforeStart = performance.now();
  const pool = startComputePool(2);
  // One batch for each thread, of one piano: both have loaded everything when it is answered.
  await Promise.all([pool.answer(lines.slice(0, 1)), pool.answer(lines.slice(0, 1))]);
  const startUp = (performance.now() - beforeStart) / 1000;
  await batchTook(lines.slice(0, 800), pool.answer, 2);
  const figures: Figure[] = [{ name: 'start of 2 threads', value: startUp, unit: 's' }];
  const perPiano: Took[] = [];
  for (const size of [1000, 2000, 5000, 10_000]) {
    const { seconds, cpuSeconds } = await batchTook(lines.slice(0, size), pool.answer, 2);
    perPiano.push({ seconds: seconds / size, cpuSeconds: cpuSeconds / size });
    const name = `${size} pianos, exact modes, 2 threads`;
    figures.push({ name, value: size / seconds, unit: 'pianos/s' });
    figures.push({
      name: `${name}: processor time of a piano`,
      value: (1000 * cpuSeconds) / size,
      unit: 'ms',
    });
  }
  // 1 when growth is linear.
  const [small, , , large] = perPiano;
  figures.push({
    name: 'processor time of a piano, in 10,000 over in 1,000',
    value: large!.cpuSeconds / small!.cpuSeconds,
    unit: 'times',
    aim: 'about 1',
  });
  const speedUps: number[] = [];
  for (let run = 0; run < 3; run += 1) {
    const alone = await batchTook(lines.slice(0, 1000), onThisThread, 1);
    speedUps.push(alone.seconds / (await batchTook(lines.slice(0, 1000), pool.answer, 2)).seconds);
  }
  figures.push({
    name: '2 threads over 1, 1,000 pianos',
    value: medianOf(speedUps),
    unit: 'times',
    range: [Math.min(...speedUps), Math.max(...speedUps)],
    runs: 3,
  });
  const rough = await batchTook(
    lines.map((_, turn) => pianoLine(turn, 'core formula')),
    pool.answer,
    2,
  );
  figures.push({
    name: '10,000 pianos, core formula, 2 threads',
    value: 10_000 / rough.seconds,
    unit: 'pianos/s',
  });
  await pool.close();
  return figures;
}

const plain = (turn: number): string =>
  `{"kind":"plain","speaking_length_m":${0.5 + turn * 1e-9},"diameter_m":0.001,"f0_Hz":300}`;
const wound = (turn: number): string =>
  `{"kind":"wound","speaking_length_m":${1.3 + turn * 1e-9},"core_diameter_m":0.0011,"layers":[{"wire_diameter_m":0.00075,"start_m":0.02,"end_m":0.012}],"f0_Hz":59}`;

export const topic: BenchTopic = {
  name: 'compute',
  run: async () => [
    timed('one line, plain', (turn) => computeLine(plain(turn)), { calls: 500 }),
    timed('one line, wound', (turn) => computeLine(wound(turn)), { calls: 50 }),
    ...(await batches()),
  ],
};
