import { describe, expect, it } from 'vitest';
import { analyseNote } from '../scale/index.ts';
import { breakLoad, overallDiameter, type WoundString, woundTensionAtPitch } from '../strings/index.ts';
import { metres, millimetres } from '../units/index.ts';
import { isSameString, type StringCandidate, stringCandidates } from './string-candidates.ts';
import { exampleProblem } from './testing/example-problems.ts';

const grand = exampleProblem('grand');
const noteOf = (key: number) => grand.notes.find(({ asFound }) => asFound.key === key)!;
const woundOf = (candidates: readonly StringCandidate[]) =>
  candidates.flatMap((candidate) =>
    candidate.string.kind === 'wound' ? [{ ...candidate, string: candidate.string as WoundString }] : [],
  );

describe('stringCandidates()', () => {
  it('has the exact tension, and B within 0.5 % of the exact modes, for wound strings of one and two layers', () => {
    let [looked, worst] = [0, 0];
    for (const key of [1, 4, 6, 15, 26, 28, 30, 32]) {
      const { asFound } = noteOf(key);
      for (const { string, logTension, logInharmonicity } of woundOf(
        stringCandidates(grand, noteOf(key)).candidates,
      ).filter((_, index) => index % 17 === 0)) {
        const exact = analyseNote({ ...asFound, string }, { uncertainties: 'left out' });
        looked += 1;
        // Newton's steps end at 1e-11 of the phase.
        expect(Math.abs(logTension - Math.log(exact.tension))).toBeLessThan(1e-9);
        worst = Math.max(worst, Math.abs(logInharmonicity - Math.log(exact.inharmonicity)));
      }
    }
    expect(looked).toBeGreaterThan(40);
    expect(worst).toBeLessThan(0.005);
  });

  it('offers every one-layer string within the limits of its note, and none other', () => {
    const { rules, catalogue, strengthTable } = grand;
    for (const key of [8, 19, 29]) {
      const note = { ...noteOf(key), mayBePlain: false };
      const { frequency, string } = note.asFound;
      const expected: WoundString[] = [];
      for (const coreDiameter of catalogue.cores) {
        for (const wireDiameter of catalogue.windings) {
          const one: WoundString = {
            kind: 'wound',
            speakingLength: string.speakingLength,
            coreDiameter,
            layers: [{ wireDiameter, ...note.windingEnds[0]! }],
          };
          if (overallDiameter(one) / coreDiameter > rules.largestOverCore) continue;
          const tension = woundTensionAtPitch({ string: one, frequency, stiffness: 'ignored' }).value;
          const { strength } = strengthTable.strengthAt(coreDiameter);
          const share = tension / breakLoad({ diameter: coreDiameter, strength });
          const isTension = tension >= note.lowestTension && tension <= note.highestTension;
          if (isTension && share >= note.lowestBreakShare && share <= note.highestBreakShare)
            expected.push(one);
        }
      }
      const problem = { ...grand, rules: { ...rules, offersAsFound: false } };
      const offered = woundOf(stringCandidates(problem, note).candidates);
      expect(offered).toHaveLength(expected.length);
      expect(expected.length).toBeGreaterThan(10);
      for (const one of expected)
        expect(offered.some(({ string: other }) => isSameString(one, other))).toBe(true);
    }
  });

  it('leaves out a two-layer string only where one on the same core is kept within the step of tension', () => {
    const few = {
      ...grand,
      catalogue: {
        ...grand.catalogue,
        windings: grand.catalogue.windings.filter((_, index) => index % 3 === 0),
      },
      rules: { ...grand.rules, twoLayerStep: 0.02 },
    };
    const note = noteOf(3);
    const every = woundOf(
      stringCandidates({ ...few, rules: { ...few.rules, twoLayerStep: 0 } }, note).candidates,
    );
    const kept = woundOf(stringCandidates(few, note).candidates);
    expect(kept.length).toBeLessThan(every.length / 2);
    for (const { size, logTension, string } of every) {
      if (string.layers.length < 2) continue;
      // The step is cut by the rough tension, which is up to 0.2 % low.
      const nearest = Math.min(
        ...kept
          .filter((other) => other.size === size)
          .map((other) => Math.abs(other.logTension - logTension)),
      );
      expect(nearest).toBeLessThan(0.02 + 0.004);
    }
  });

  it('offers what was found once, and nothing but what is pinned', () => {
    for (const key of [2, 12, 45]) {
      const { candidates } = stringCandidates(grand, noteOf(key));
      expect(candidates.filter(({ isAsFound }) => isAsFound)).toHaveLength(1);
    }
    const speakingLength = metres(noteOf(45).asFound.string.speakingLength);
    const pinned = { kind: 'plain', speakingLength, diameter: millimetres(0.97) } as const;
    const { candidates } = stringCandidates(grand, { ...noteOf(45), pinned });
    expect(candidates.map(({ string }) => string)).toEqual([pinned]);
  });
});
