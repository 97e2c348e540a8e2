import { Readable, Writable } from 'node:stream';
import { computeLine } from '@becket/tasks/compute';
import { computeStream } from '../apps/cli/src/commands/compute.ts';
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

/** Seconds that a batch of pianos takes, from request lines to answer lines, the threads started anew. */
async function secondsOf(lines: readonly string[], workers: number): Promise<number> {
  const output = new Writable({ write: (_chunk, _encoding, done) => done() });
  const start = performance.now();
  const { answered, errors } = await computeStream(
    Readable.from(lines.map((line) => `${line}\n`)),
    output,
    workers,
  );
  const seconds = (performance.now() - start) / 1000;
  if (answered !== lines.length || errors > 0) throw new Error(`${answered} answered, ${errors} errors`);
  return seconds;
}

async function batches(): Promise<Figure[]> {
  const lines = Array.from({ length: 10_000 }, (_, turn) => pianoLine(turn, 'exact modes'));
  const figures: Figure[] = [];
  const rates: number[] = [];
  await secondsOf(lines.slice(0, 400), 2);
  for (const size of [1000, 2000, 5000, 10_000]) {
    const seconds = await secondsOf(lines.slice(0, size), 2);
    rates.push(size / seconds);
    figures.push({ name: `${size} pianos, exact modes, 2 threads`, value: seconds, unit: 's' });
    figures.push({
      name: `${size} pianos, exact modes, 2 threads: rate`,
      value: size / seconds,
      unit: 'pianos/s',
    });
  }
  // Time of a piano in the largest batch over that in the smallest: 1 when growth is linear.
  figures.push({
    name: 'time of a piano, 10,000 over 1,000',
    value: rates[0]! / rates.at(-1)!,
    unit: '',
    aim: 'about 1',
  });
  const speedUps: number[] = [];
  for (let run = 0; run < 3; run += 1) {
    const alone = await secondsOf(lines.slice(0, 1000), 1);
    speedUps.push(alone / (await secondsOf(lines.slice(0, 1000), 2)));
  }
  figures.push({
    name: '2 threads over 1, 1,000 pianos',
    value: medianOf(speedUps),
    unit: 'times',
    range: [Math.min(...speedUps), Math.max(...speedUps)],
    runs: 3,
  });
  const rough = lines.map((_, turn) => pianoLine(turn, 'core formula'));
  figures.push({
    name: '10,000 pianos, core formula, 2 threads: rate',
    value: rough.length / (await secondsOf(rough, 2)),
    unit: 'pianos/s',
  });
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
