import { english, type Language } from '@becket/core';
import type { Job } from '@becket/journal';
import { analysedScale, comparedScales, openDemoJob, proposeScale, tidiedScale } from '@becket/tasks';
import { beforeAll, describe, expect, it } from 'vitest';
import { testContext } from '../../testing/test-job.ts';
import { answerWords } from './answer-words.ts';
import { scaleCharts } from './charts.ts';
import { beatText, changeLines, comparisonCharts, scaleChoices, summarySentences } from './compare-state.ts';
import { analysedDraft, draftFromScale } from './draft.ts';
import { passagesToHear, startingChoice } from './hear-state.ts';
import { pinnedWords } from './pinned-notes.ts';
import { keysText } from './scale-words.ts';
import { slipLines } from './slip-lines.ts';

/** English with everything that is said between brackets, so that what is not said stands out. */
const bracketed = {
  ...english,
  say: (...said: Parameters<Language['say']>) => `⟦${english.say(...said)}⟧`,
} as Language;

/** What stands outside the brackets and has words in it; units and note names have none so long. */
function unsaid(texts: readonly string[]): string[] {
  return texts
    .map((text) => {
      let rest = text;
      for (let before = ''; before !== rest; ) {
        before = rest;
        rest = rest.replace(/⟦[^⟦⟧]*⟧/g, '');
      }
      return rest;
    })
    .filter((rest) => /\p{L}{3,}/u.test(rest.replaceAll('mine', '').replaceAll('lbf', '')));
}

let job: Job;
let entry: string;
beforeAll(async () => {
  const context = testContext();
  const found = await openDemoJob(context);
  const notes = tidiedScale(found, undefined).map((note) =>
    note.winding === 'plain' && note.key === 50 ? { ...note, gauge_m: note.gauge_m + 1e-4 } : note,
  );
  ({ job, entry } = await proposeScale(context, found.id, { name: 'mine', notes }));
});

describe('what Scale says', () => {
  it('is said, but for the names people gave', () => {
    const quick = { uncertainties: 'left out' } as const;
    const before = analysedScale(job, 'as found', quick);
    const after = analysedScale(job, entry, quick);
    const comparison = comparedScales(job, before, after);
    const draft = analysedDraft(job, draftFromScale(job, 'as found'), 'ASTM A228 minimum', bracketed);
    const charts = [
      ...scaleCharts(before.analysis, 'in', bracketed),
      ...comparisonCharts(before, after, 'mm', draft, bracketed),
    ];
    const lines = changeLines(comparison, 'in', bracketed);
    const texts = [
      ...charts.flatMap(({ question, axis, basis }) => [question, axis, basis]),
      ...charts.flatMap((chart) =>
        'points' in chart
          ? chart.points.map(({ words }) => words)
          : chart.series.flatMap(({ name, points }) => [name, ...points.map(({ words }) => words)]),
      ),
      ...lines.flatMap(({ wires, tensions, breakShares, inharmonicities }) => [
        ...wires,
        ...tensions,
        ...breakShares,
        ...inharmonicities,
      ]),
      ...scaleChoices(job, bracketed).map(({ words }) => words),
      ...summarySentences(comparison, before, after, 'mm', bracketed),
      ...summarySentences({ ...comparison, changed: [] }, before, after, 'mm', bracketed),
      ...[0, 1, -1].map((rate) => beatText(rate, bracketed)),
      passagesToHear(job, [before, after], startingChoice, undefined, bracketed).leftOut!,
      ...[before, after].flatMap(({ notes }) =>
        [notes[0]!, notes.at(-1)!].flatMap((note) =>
          slipLines(note, 'ASTM A228 minimum', 'in', bracketed).flatMap((line) => Object.values(line)),
        ),
      ),
      pinnedWords(new Set(), bracketed),
      pinnedWords(new Set([49, 50]), bracketed),
      keysText([1, 2, 4], bracketed),
      answerWords(
        {
          name: 'mine',
          notes: [],
          changedNotes: 1,
          plainSizeChanges: 2,
          tiedStrings: 3,
          tensionUnevenness: 0.01,
          inharmonicityUnevenness: 0.02,
          isProved: true,
          mostBetter: 0,
          loadChange_n: 0,
          reasonsAgainst: [],
        },
        'in',
        bracketed,
      ),
    ];
    expect(texts.length).toBeGreaterThan(100);
    expect(unsaid(texts)).toEqual([]);
  });
});
