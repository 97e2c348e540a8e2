import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gigapascals, inDegrees, metres, millimetres, newtons } from '../units/index.ts';
import { type LetDownSection, letDownPlan } from './let-down-plan.ts';

const string = (tension: number) => ({
  tension: newtons(tension),
  wireLength: metres(0.9),
  steelDiameter: millimetres(1),
  pinDiameter: millimetres(7),
});
const sections: LetDownSection[] = ['bass', 'low tenor', 'tenor', 'treble'].map((section, index) => ({
  section,
  strings: [string(600 + 50 * index), string(700)],
}));
const steel = { youngsModulus: gigapascals(202) };

describe('letDownPlan()', () => {
  it('takes everything off in the end, and never more than one pass off a section ahead of the others', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 12 }),
        fc.array(fc.array(fc.double({ min: 300, max: 1200, noNaN: true }), { minLength: 1, maxLength: 4 }), {
          minLength: 1,
          maxLength: 7,
        }),
        (passes, tensions) => {
          const many = tensions.map((own, index) => ({ section: `${index}`, strings: own.map(string) }));
          const first = new Map(
            many.map(({ section, strings }) => [
              section,
              strings.reduce((sum, { tension }) => sum + tension, 0),
            ]),
          );
          const shares = new Map(many.map(({ section }) => [section, 1]));
          const plan = letDownPlan(many, { passes, ...steel });
          expect(plan).toHaveLength(passes);
          for (const { steps } of plan) {
            expect(steps.map(({ section }) => section).sort()).toEqual(
              many.map(({ section }) => section).sort(),
            );
            for (const { section, load } of steps) {
              shares.set(section, load / first.get(section)!);
              const all = [...shares.values()];
              expect(Math.max(...all) - Math.min(...all)).toBeLessThanOrEqual(1 / passes + 1e-12);
            }
          }
          expect(plan.at(-1)?.steps.at(-1)?.totalLoad).toBe(0);
        },
      ),
    );
  });

  it('alternates from the two ends towards the middle, and begins the next pass at the other end', () => {
    const [one, two] = letDownPlan(sections, { passes: 3, ...steel });
    expect(one?.steps.map(({ section }) => section)).toEqual(['bass', 'treble', 'low tenor', 'tenor']);
    expect(two?.steps.map(({ section }) => section)).toEqual(['treble', 'bass', 'tenor', 'low tenor']);
  });

  // Worked by hand: A = π/4 mm² = 7.853982e-7 m²; (700/4 N · 0.9 m)/(202e9 Pa · A) = 0.99275 mm on a radius of 3.5 mm.
  it('turns the pin by the wire that Hooke’s law gives back', () => {
    const [pass] = letDownPlan([{ section: 'one', strings: [string(700)] }], { passes: 4, ...steel });
    expect(inDegrees(pass!.steps[0]!.turn.middle)).toBeCloseTo((0.99275 / 3.5) * (180 / Math.PI), 2);
  });

  it('refuses a string without tension and a single pass', () => {
    expect(() => letDownPlan([{ section: 'one', strings: [string(0)] }], { passes: 3, ...steel })).toThrow(
      /tension must be > 0/,
    );
    expect(() => letDownPlan(sections, { passes: 1, ...steel })).toThrow(/number of passes/);
    expect(() => letDownPlan([], { passes: 3, ...steel })).toThrow(RangeError);
  });
});
