import { describe, expect, it } from 'vitest';
import { german } from '../german.ts';
import { millimetres, newtons } from '../units/index.ts';
import { makeLanguage } from '../words/index.ts';
import { exampleProblem } from './testing/example-problems.ts';
import { randomSmallProblem } from './testing/small-scales.ts';
import { bestWholeScale } from './whole-scale.ts';
import type { RescaleNote, RescaleRules, WholeScaleProblem } from './whole-scale-problem.ts';

const grand = exampleProblem('grand');
/** The plain notes 51 to 60 alone: ten notes of one section, as found in 16 and 15½. */
const treble: WholeScaleProblem = {
  ...grand,
  notes: grand.notes.filter(({ asFound }) => asFound.key >= 51 && asFound.key <= 60),
};
const clashOf = (problem: WholeScaleProblem) => {
  const answer = bestWholeScale(problem);
  if (answer.feasible) throw new Error('there is a scale');
  return answer.clash;
};
const withNote = (key: number, change: Partial<RescaleNote>, problem = treble): WholeScaleProblem => ({
  ...problem,
  notes: problem.notes.map((note) => (note.asFound.key === key ? { ...note, ...change } : note)),
});
const withRules = (rules: Partial<RescaleRules>, problem = treble): WholeScaleProblem => ({
  ...problem,
  rules: { ...problem.rules, ...rules },
});
const pinnedPlain = (key: number, diameter_mm: number): Partial<RescaleNote> => {
  const { speakingLength } = grand.notes.find(({ asFound }) => asFound.key === key)!.asFound.string;
  return { pinned: { kind: 'plain', speakingLength, diameter: millimetres(diameter_mm) } };
};

describe('the clash that leaves no scale', () => {
  it('is there for none of the notes as they are', () => {
    expect(bestWholeScale(treble).feasible).toBe(true);
  });

  it('names the note that no string fits and the limits that turned all away', () => {
    const tooLow = clashOf(withNote(55, { highestTension: newtons(10) }));
    expect(tooLow).toMatchObject({ firstKey: 55, lastKey: 55 });
    expect(tooLow.limits).toContain('highest tension');
    expect(tooLow.reason).toContain('note 55');
    const tooStrong = clashOf(withNote(53, { highestBreakShare: 0.31, lowestBreakShare: 0.3 }));
    expect(tooStrong.limits).toContain('highest break share');
    expect(tooStrong.firstKey).toBe(53);
  });

  it('names a pinned string that breaks a limit', () => {
    const clash = clashOf(withNote(57, pinnedPlain(57, 1.3)));
    expect(clash.limits[0]).toBe('pinned string');
    expect(clash.limits).toContain('highest tension');
    expect(clash.firstKey).toBe(57);
  });

  it('names the diameter over the core', () => {
    const bass = { ...grand, notes: grand.notes.filter(({ asFound }) => asFound.key <= 6) };
    const clash = clashOf(withRules({ largestOverCore: 1.2 }, bass));
    expect(clash.limits).toContain('largest diameter over the core');
    expect(clash.firstKey).toBe(1);
  });

  it('names the shortest run of notes and the rule between them', () => {
    // A thin string pinned below a thicker one.
    const grows = withNote(56, pinnedPlain(56, 0.9144), withNote(54, pinnedPlain(54, 0.889)));
    expect(clashOf(grows)).toMatchObject({
      limits: ['plain sizes never grow', 'pinned string'],
      firstKey: 54,
      lastKey: 56,
    });
    expect(bestWholeScale(withRules({ plainNeverGrows: false, minimumRunPlain: 1 }, grows)).feasible).toBe(
      true,
    );
    // Three sizes on three neighbours cannot each serve three notes.
    const short = [
      [54, 0.9398],
      [55, 0.9144],
      [56, 0.889],
    ].reduce((problem, [key, size]) => withNote(key!, pinnedPlain(key!, size!), problem), treble);
    expect(clashOf(short)).toMatchObject({
      limits: ['minimum run of plain sizes', 'pinned string'],
      firstKey: 54,
      lastKey: 56,
    });
    expect(bestWholeScale(withRules({ minimumRunPlain: 1 }, short)).feasible).toBe(true);
  });

  it('names plain strings that would stand below wound ones', () => {
    const { notes } = grand;
    const wound = notes.find(({ asFound }) => asFound.key === 30)!;
    const plain = notes.find(({ asFound }) => asFound.key === 31)!;
    const upsideDown = {
      ...grand,
      notes: [
        { ...plain, asFound: { ...plain.asFound, key: 30 }, mayBeWound: false },
        { ...wound, asFound: { ...wound.asFound, key: 31 }, mayBePlain: false },
      ],
      rules: { ...grand.rules, minimumRunPlain: 1, minimumRunCore: 1 },
    };
    expect(clashOf(upsideDown).limits).toEqual(['wound below plain']);
  });

  it('names the load and says what the lightest scale has', () => {
    const clash = clashOf(
      withRules({ loads: [{ of: 'section', name: 'low treble', highest: newtons(10_000) }] }),
    );
    expect(clash.limits).toEqual(['highest load']);
    expect(clash.reason).toMatch(
      /section 'low treble' cannot be kept: the lightest scale has \d+\.\d kN, 10\.0 kN/,
    );
  });

  it('says so where nothing is offered', () => {
    const clash = clashOf(withNote(52, { mayBePlain: false, mayBeWound: false }));
    expect(clash).toMatchObject({ limits: ['nothing offered'], firstKey: 52, lastKey: 52 });
  });

  it('names a part of the compass and a limit for every scale that the rules forbid', () => {
    let clashes = 0;
    for (let seed = 1; seed <= 400; seed += 1) {
      const problem = randomSmallProblem(seed);
      const answer = bestWholeScale(problem);
      if (answer.feasible || answer.clash.firstKey === answer.clash.lastKey) continue;
      clashes += 1;
      const { limits, firstKey, lastKey, reason } = answer.clash;
      expect(reason).toContain(`notes ${firstKey} to ${lastKey}`);
      expect(limits.length).toBeGreaterThan(0);
    }
    expect(clashes).toBeGreaterThan(20);
  });

  it('is no throw; only input that makes no sense throws, and says what', () => {
    const loads = (of: 'section' | 'bridge', name: string) => [{ of, name, highest: newtons(1e5) }];
    const nonsense: [WholeScaleProblem, RegExp][] = [
      [{ ...treble, notes: [] }, /number of notes/],
      [
        { ...treble, notes: [...treble.notes].reverse() },
        /from bass to treble, each key once: found key 59 after 60/,
      ],
      [{ ...treble, weights: { ...treble.weights, sizeChange: -1 } }, /weight 'sizeChange'/],
      [{ ...treble, weights: { ...treble.weights, whereUnisonsDiffer: 2 } }, /from 0 to 1/],
      [
        withRules({ minimumRunPlain: 2.5 }),
        /minimum run of plain sizes must be a whole number from 1: current value is 2.5/,
      ],
      [withRules({ minimumRunCore: 0 }), /minimum run of cores/],
      [withRules({ twoLayerStep: Number.NaN }), /step of two-layer strings/],
      [
        withRules({ loads: loads('section', 'attic') }),
        /name a section of the scale \('low treble'\): found 'attic'/,
      ],
      [withNote(55, { highestTension: newtons(Number.NaN) }), /'highestTension' of note 55/],
      [
        { ...treble, catalogue: { ...treble.catalogue, plain: [millimetres(0)] } },
        /diameter of the list 'plain'/,
      ],
    ];
    for (const [problem, message] of nonsense) {
      expect(() => bestWholeScale(problem)).toThrow(RangeError);
      expect(() => bestWholeScale(problem)).toThrow(message);
    }
  });
});

describe('a clash in German', () => {
  const reasonOf = (problem: WholeScaleProblem) => {
    const answer = bestWholeScale(problem, makeLanguage('de-DE', german));
    return answer.feasible ? undefined : answer.clash.reason;
  };

  it('names the limit of a note, and the rule between notes', () => {
    expect(reasonOf(withNote(55, { highestTension: newtons(10) }))).toMatch(
      /^Keine Saite passt auf Ton 55\. Die Grenzen? .* keine übrig: die größte Zugkraft/,
    );
    expect(reasonOf(withNote(56, pinnedPlain(56, 0.9144), withNote(54, pinnedPlain(54, 0.889))))).toBe(
      'Keine Mensur führt durch die Töne 54 bis 56, denn die Regel „blanke Stärken nehmen nie zu“ verträgt sich nicht mit dem, was dort passt und festgelegt ist. Dort eine Grenze weiten oder die Regel lockern.',
    );
  });
});
