import {
  type AsFoundRecord,
  asFoundRecord,
  type Entry,
  foldJob,
  type StandingReading,
} from '@becket/journal';
import { doubtfulReadings, readJob, recordReadings, withdrawEntry } from '@becket/tasks';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { testContext, testJob } from '../../testing/test-job.ts';
import { questionsOf } from './questions.ts';

/** The sentences of every note, each reading held against all others at once and nothing remembered. */
function sentencesOfTheWhole({ notes }: AsFoundRecord): [number, string[]][] {
  const readings = notes.flatMap(({ figures }) =>
    Object.values(figures).flatMap((figure): readonly StandingReading[] => figure.readings),
  );
  const isAlike = (a: number, b: number) => {
    const [one, other] = [notes[a]!, notes[b]!];
    return one.section === other.section && one.winding === other.winding && one.layers === other.layers;
  };
  const runOf = (key: number) => {
    const at = notes.findIndex((note) => note.key === key);
    let [first, last] = [at, at];
    while (first > 0 && isAlike(first - 1, at)) first -= 1;
    while (last < notes.length - 1 && isAlike(last + 1, at)) last += 1;
    return { firstKey: notes[first]!.key, lastKey: notes[last]!.key };
  };
  const doubted = doubtfulReadings(readings, runOf);
  return notes.flatMap(({ key }) => {
    const own = doubted.filter(({ index }) => readings[index]!.place.key === key);
    return own.length === 0 ? [] : [[key, [...new Set(own.map(({ sentence }) => sentence))]]];
  });
}

const steps = fc.array(
  fc.oneof(
    {
      weight: 5,
      arbitrary: fc.record({
        key: fc.integer({ min: 22, max: 34 }),
        // By the millimetre, so that values are often alike; now and then far too short.
        length_mm: fc.integer({ min: 0, max: 3 }).map((step) => 900 + step),
        slip: fc.constantFrom(1, 1, 1, 4),
        quantity: fc.constantFrom('speaking-length' as const, 'winding-length' as const),
        string: fc.constantFrom(undefined, 1, 2),
      }),
    },
    { weight: 1, arbitrary: fc.record({ takeBack: fc.nat() }) },
  ),
  { minLength: 1, maxLength: 40 },
);

test('asked again after each reading, the questions are those of the whole record', async () => {
  let asked = 0;
  await fc.assert(
    fc.asyncProperty(steps, async (all) => {
      const context = testContext();
      const job = await testJob(context);
      // As a device holds its journal: what was read once stays the same object.
      const held: Entry[] = [];
      for (const step of all) {
        if ('takeBack' in step) {
          const { readings } = await readJob(context, job);
          const reading = readings[step.takeBack % Math.max(1, readings.length)];
          if (reading !== undefined) await withdrawEntry(context, job, reading.entry, 'misread');
        } else {
          const { key, string, quantity, length_mm, slip } = step;
          const place = string === undefined || key <= 26 ? { key } : { key, string };
          await recordReadings(context, job, [{ quantity, place, value: length_mm / slip, unit: 'mm' }]);
        }
        held.push(...(await context.store.entries(job)).entries.slice(held.length));
        const record = asFoundRecord(foldJob(held));
        const sentences = [...questionsOf(record)].map(([key, own]) => [
          key,
          own.map(({ sentence }) => sentence),
        ]);
        expect(sentences).toEqual(sentencesOfTheWhole(record));
        asked += sentences.length;
      }
    }),
    { numRuns: 60 },
  );
  expect(asked).toBeGreaterThan(0);
});
