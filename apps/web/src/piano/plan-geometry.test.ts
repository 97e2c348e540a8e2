import { asFoundRecord, type Entry, type Fact, foldJob } from '@becket/journal';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layOutPlan, nearestKey, type PlanPoint } from './plan-geometry.ts';

function jobOf(facts: readonly Fact[]) {
  const id = (n: number) => `01J0000000000000000000${String(n).padStart(4, '0')}`;
  const entries = facts.map(
    (fact, index): Entry => ({
      id: id(index + 1),
      job: id(0),
      step: index + 1,
      at: '2026-03-01T10:00:00Z',
      by: 'test',
      device: 'test',
      fact,
    }),
  );
  const job = foldJob(entries);
  return { notes: asFoundRecord(job).notes, sections: job.sections };
}

const lengthReading = (key: number, value_m: number): Fact => ({
  kind: 'reading',
  v: 1,
  quantity: 'speaking-length',
  place: { key },
  value_si: value_m,
  asRead: { value: value_m, unit: 'm' },
  origin: 'measured',
  stage: 'as found',
});

const piano: Fact[] = [
  { kind: 'job-opened', v: 1, title: 'plan' },
  { kind: 'piano-described', v: 1, form: 'grand', firstKey: 1, lastKey: 88, referencePitch_hz: 440 },
  {
    kind: 'section-described',
    v: 1,
    section: 'bass',
    firstKey: 1,
    lastKey: 26,
    bridge: 'bass',
    frontTermination: 'agraffe',
  },
  {
    kind: 'section-described',
    v: 1,
    section: 'rest',
    firstKey: 27,
    lastKey: 88,
    bridge: 'long',
    frontTermination: 'agraffe',
  },
];

const length = ({ front, back }: { front: PlanPoint; back: PlanPoint }) =>
  Math.hypot(back.x - front.x, back.y - front.y);

describe('layOutPlan()', () => {
  test('draws every length that was read to scale', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.05, max: 1.5, noNaN: true }), { minLength: 88, maxLength: 88 }),
        (lengths) => {
          const { notes, sections } = jobOf([
            ...piano,
            ...lengths.map((value, index) => lengthReading(index + 1, value)),
          ]);
          const plan = layOutPlan(notes, sections);
          expect(plan.known).toBe(88);
          for (const line of plan.lines) {
            expect(length(line)).toBeCloseTo(lengths[line.key - 1]!, 9);
            // Away from the player, who sits at y = 0.
            expect(line.back.y).toBeGreaterThan(line.front.y);
            for (const { x, y } of [line.front, line.back]) {
              expect(x).toBeGreaterThanOrEqual(-1e-9);
              expect(x).toBeLessThanOrEqual(plan.width + 1e-9);
              expect(y).toBeLessThanOrEqual(plan.height + 1e-9);
            }
          }
        },
      ),
      { numRuns: 20 },
    );
  });

  test('lets the bass strings cross over the others, on top', () => {
    const { notes, sections } = jobOf([...piano, lengthReading(26, 1.1), lengthReading(27, 1.2)]);
    const { lines } = layOutPlan(notes, sections);
    const [bass, tenor] = [lines.find(({ key }) => key === 26)!, lines.find(({ key }) => key === 27)!];
    expect(bass.front.x).toBeLessThan(tenor.front.x);
    expect(bass.back.x).toBeGreaterThan(tenor.back.x);
    expect(lines.indexOf(bass)).toBeGreaterThan(lines.indexOf(tenor));
  });

  test('crosses nothing on one bridge, and marks a length that was not read', () => {
    const { notes, sections } = jobOf(piano.slice(0, 2));
    const plan = layOutPlan(notes, sections);
    expect(plan.known).toBe(0);
    expect(plan.lines.every((line) => !line.isCrossing && !line.isLengthKnown)).toBe(true);
  });

  test('a piano that is not described has an empty plan', () => {
    expect(layOutPlan([], []).lines).toEqual([]);
  });
});

describe('nearestKey()', () => {
  test('finds the string under the finger, and nothing far from all', () => {
    const { notes, sections } = jobOf([...piano, ...notesUp((key) => lengthReading(key, 0.5))]);
    const plan = layOutPlan(notes, sections);
    const line = plan.lines.find(({ key }) => key === 60)!;
    const middle = { x: (line.front.x + line.back.x) / 2, y: (line.front.y + line.back.y) / 2 };
    expect(nearestKey(plan, middle, 0.02)).toBe(60);
    expect(nearestKey(plan, { x: 0.6, y: 3 }, 0.02)).toBeUndefined();
  });
});

function notesUp<T>(make: (key: number) => T): T[] {
  return Array.from({ length: 88 }, (_, index) => make(index + 1));
}
