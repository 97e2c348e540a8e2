import { describe, expect, it } from 'vitest';
import { german } from '../german.ts';
import { makeLanguage } from '../words/index.ts';
import { COMMON_LEAVE_ALONE_POLICY, reasonsToLeaveAlone } from './leave-alone.ts';
import { exampleProblem } from './testing/example-problems.ts';
import { bestPreparedScale, type PreparedScale, prepareScale, type WholeScaleAnswer } from './whole-scale.ts';
import type { RescaleWeights } from './whole-scale-problem.ts';

const prepared = prepareScale(exampleProblem('vertical'));
const answerOf = (weights: Partial<RescaleWeights>, scale: PreparedScale = prepared): WholeScaleAnswer => {
  const answer = bestPreparedScale(scale, { ...scale.problem.weights, ...weights });
  if (!answer.feasible) throw new Error(answer.clash.reason);
  return answer;
};
const smooth = answerOf({ tensionFromFound: 0, changedNote: 0 });
const tidied = answerOf({ tensionBend: 0, inharmonicityBend: 0 });
const modern = { year: 1962, isHistoric: undefined };
const rulesOf = (
  ...[instrument, answer = tidied]: [{ year?: number; isHistoric?: boolean }, WholeScaleAnswer?]
) =>
  reasonsToLeaveAlone(prepared, answer, { year: undefined, isHistoric: undefined, ...instrument }).map(
    ({ rule }) => rule,
  );

describe('reasonsToLeaveAlone()', () => {
  it('tells historic, not historic and not known apart', () => {
    expect(rulesOf({ year: 1850 })[0]).toBe('historic instrument');
    // The policy says before 1880, not in it.
    expect(rulesOf({ year: 1879 })[0]).toBe('historic instrument');
    expect(rulesOf({ year: 1880 })).not.toContain('historic instrument');
    expect(rulesOf({ isHistoric: true })[0]).toBe('historic instrument');
    expect(rulesOf({ year: 1962, isHistoric: true })[0]).toBe('historic instrument');
    for (const known of [{ year: 1962 }, { isHistoric: false }, { year: 1850, isHistoric: false }]) {
      expect(rulesOf(known)).not.toContain('historic instrument');
      expect(rulesOf(known)).not.toContain('age not known');
    }
    expect(rulesOf({})[0]).toBe('age not known');
    const { sentence } = reasonsToLeaveAlone(prepared, tidied, { year: 1850, isHistoric: undefined })[0]!;
    expect(sentence).toContain('made in 1850 and counts as historic (before 1880)');
  });

  it('says that the scale is smooth already when a proposed one is proposed again', () => {
    const strung: PreparedScale = prepareScale({
      ...prepared.problem,
      notes: prepared.problem.notes.map((note, index) => ({
        ...note,
        asFound: { ...note.asFound, string: smooth.notes[index]!.string },
      })),
    });
    const again = answerOf({ tensionFromFound: 0, changedNote: 0 }, strung);
    const reasons = reasonsToLeaveAlone(strung, again, modern);
    expect(reasons.map(({ rule }) => rule)).toEqual(['already smooth']);
    expect(reasons[0]!.figures.gain).toBeLessThan(0.02);
    expect(reasons[0]!.sentence).toContain('Leave it as it is');
    // The smooth answer to what was found is worth while.
    expect(rulesOf(modern as { year: number }, smooth)).not.toContain('already smooth');
  });

  it('names each load that would rise, with both figures', () => {
    const reasons = reasonsToLeaveAlone(prepared, smooth, modern).filter(
      ({ rule }) => rule === 'load would rise',
    );
    expect(reasons.length).toBeGreaterThan(0);
    for (const { figures, sentence } of reasons) {
      expect(figures.rise).toBeCloseTo(figures.proposed_N! / figures.found_N! - 1, 12);
      expect(figures.rise).toBeGreaterThan(0.01);
      expect(sentence).toContain(
        `${(figures.found_N! / 1000).toFixed(1)} to ${(figures.proposed_N! / 1000).toFixed(1)} kN`,
      );
    }
    const patient = { ...COMMON_LEAVE_ALONE_POLICY, largestLoadRise: 1 };
    expect(reasonsToLeaveAlone(prepared, smooth, modern, patient)).toEqual([]);
  });
});

describe('a reason in German', () => {
  it('says why the scale of a historic instrument is left alone', () => {
    const [reason] = reasonsToLeaveAlone(
      prepared,
      tidied,
      { year: 1850, isHistoric: undefined },
      undefined,
      makeLanguage('de-DE', german),
    );
    expect(reason!.sentence).toMatch(
      /^Das Instrument wurde 1850 gebaut und gilt als historisch \(vor 1880\)\. Die Mensur lassen, wie sie ist,/,
    );
  });
});
