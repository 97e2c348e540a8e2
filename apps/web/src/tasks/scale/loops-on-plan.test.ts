import { english, metres } from '@becket/core';
import type { SectionLoops } from '@becket/tasks';
import { describe, expect, it } from 'vitest';
import type { PlanLine } from '../../piano/plan-geometry.ts';
import { loopsOnPlan, loopWords, noteAt } from './loops-on-plan.ts';

/** A note on the plan, 14 mm from the next, slanted by a third of its length. */
const line = (key: number, length: number): PlanLine => {
  const front = { x: (key - 40) * 0.014, y: 0 };
  return {
    key,
    note: `${key}`,
    section: 'tenor',
    winding: 'plain',
    front,
    back: { x: front.x + 0.6 * length, y: 0.8 * length },
    windingFrom: undefined,
    windingTo: undefined,
    isLengthKnown: true,
    isCrossing: false,
  };
};
const lines = [line(40, 0.5), line(41, 0.4)];

/** Three strings of one size and one of another: a loop, a tied string at the change, and a tied one. */
const loops = (backLength: number | undefined): SectionLoops => ({
  section: 'tenor',
  strings: [1, 2, 3, 1].map((string, index) => ({
    key: index < 3 ? 40 : 41,
    string,
    size: index < 3 ? 10 : 9,
    diameter: metres(index < 3 ? 0.001 : 0.0009),
    backLength: backLength === undefined ? undefined : metres(backLength),
  })),
  plan: {
    wires: [
      { joined: 'looped', strings: [0, 1] },
      { joined: 'tied', strings: [2] },
      { joined: 'tied', strings: [3] },
    ],
    tied: 2,
    changesInsideLoops: [3],
  },
  wires: [],
  shifts: [],
});

const points = (path: string) =>
  path
    .split(/[MLC ]+/)
    .filter((part) => part !== '')
    .map(Number);
const firstLeg = (path: string): number => {
  const [x1, y1, x2, y2] = points(path) as [number, number, number, number];
  return Math.hypot(x2 - x1, y2 - y1);
};

describe('loopsOnPlan()', () => {
  it('draws strings to scale from front to hitch pin, on the whole piano and in a section', () => {
    for (const section of [undefined, 'tenor']) {
      const { wires } = loopsOnPlan(lines, [loops(0.1)], { section, isUpright: false });
      // 500 + 100 mm against 400 + 100 mm; drawn to a tenth of a pixel.
      expect(firstLeg(wires[0]!.path) / firstLeg(wires[2]!.path)).toBeCloseTo(600 / 500, 2);
    }
  });

  it('turns a loop round, ends a tied string in a ring, and marks a change inside a loop', () => {
    const { wires, changes } = loopsOnPlan(lines, [loops(0.1)], { section: 'tenor', isUpright: false });
    expect(wires.map(({ path, ring }) => [path.includes('C'), ring !== undefined])).toEqual([
      [true, false],
      [false, true],
      [false, true],
    ]);
    expect(wires.map(({ isOther }) => isOther)).toEqual([false, false, true]);
    expect(changes.map(({ diameter_m, isInsideLoop }) => [diameter_m, isInsideLoop])).toEqual([
      [0.001, false],
      [0.0009, true],
    ]);
  });

  it('keeps everything on its sheet, hitch pins above on a grand and below on a vertical', () => {
    for (const isUpright of [true, false]) {
      for (const section of [undefined, 'tenor']) {
        const drawn = loopsOnPlan([...lines, line(30, 0.9)], [loops(0.1)], { section, isUpright });
        const all = drawn.wires.flatMap(({ path }) => points(path));
        all.forEach((value, index) => {
          expect(value).toBeGreaterThanOrEqual(0);
          expect(value).toBeLessThanOrEqual(index % 2 === 0 ? drawn.width : drawn.height);
        });
        const { front, hitch } = drawn.notes[0]!.strings[0]!;
        expect(hitch.y < front.y).toBe(!isUpright);
        expect(drawn.others.map(({ key }) => key)).toEqual(section === undefined ? [30] : []);
      }
    }
  });

  it('says where no back length was read', () => {
    const view = { section: 'tenor', isUpright: false };
    expect(loopsOnPlan(lines, [loops(undefined)], view).withoutBack).toEqual(['tenor']);
    expect(loopsOnPlan(lines, [loops(0.1)], view).withoutBack).toEqual([]);
  });

  it('finds the note under a finger, and says what its strings share', () => {
    const { notes } = loopsOnPlan(lines, [loops(0.1)], { section: 'tenor', isUpright: false });
    for (const { key, strings } of notes) {
      for (const { front, hitch } of strings)
        expect(noteAt(notes, { x: (front.x + hitch.x) / 2 + 1, y: (front.y + hitch.y) / 2 })).toBe(key);
    }
    expect(loopWords(40, [loops(0.1)], 'mm', english)).toBe(
      'C4, 1.000 mm: string 1 with string 2 and string 3 tied',
    );
    expect(loopWords(60, [loops(0.1)], 'mm', english)).toBeUndefined();
  });
});
