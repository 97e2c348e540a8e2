import { metres } from '@becket/core';
import { asFoundRecord, type Job } from '@becket/journal';
import {
  analysedScale,
  comparedScales,
  openDemoJob,
  proposeScale,
  recordReadings,
  tidiedScale,
} from '@becket/tasks';
import { beforeAll, describe, expect, it } from 'vitest';
import { testContext } from '../../testing/test-job.ts';
import {
  beatText,
  changeLines,
  comparisonCharts,
  scaleChoices,
  signed,
  standingPair,
  summarySentences,
  tableOfPair,
} from './compare-state.ts';
import { breakChoices, middleKey, passagesToHear, startingChoice } from './hear-state.ts';
import { drawnSection } from './loop-drawing.ts';
import { keysText, stringText, wireText } from './scale-words.ts';

const quick = { uncertainties: 'left out' } as const;
let found: Job;
let job: Job;
let entry: string;
beforeAll(async () => {
  const context = testContext();
  found = await openDemoJob(context);
  const notes = tidiedScale(found, undefined).map((note) =>
    note.winding === 'plain' && note.key === 50 ? { ...note, gauge_m: note.gauge_m + 1e-4 } : note,
  );
  ({ job, entry } = await proposeScale(context, found.id, { name: 'one thicker', notes }));
});

describe('two scales side by side', () => {
  it('can be chosen among what there is; a withdrawn one gives way to what stands', () => {
    expect(scaleChoices(job).map(({ words }) => words)).toEqual(['as found', 'one thicker']);
    expect(standingPair(job, { before: 'as found', after: undefined })).toEqual({
      before: 'as found',
      after: entry,
      beside: undefined,
    });
    expect(standingPair(found, { before: entry, after: entry, beside: entry })).toEqual({
      before: 'as found',
      after: 'as found',
      beside: undefined,
    });
  });

  it('are judged by the table that the later one was planned with, if it is one we have', () => {
    const withTable = (strengthTable: string): Job => ({
      ...job,
      proposals: job.proposals.map((proposal) => ({ ...proposal, strengthTable })),
    });
    const pair = { before: 'as found', after: entry };
    expect(tableOfPair(job, pair)).toBeUndefined();
    expect(tableOfPair(withTable('EN 10270-1 SM minimum'), pair)).toBe('EN 10270-1 SM minimum');
    expect(tableOfPair(withTable('a table of somebody else'), pair)).toBeUndefined();
  });

  it('tell in sentences and lines what changes, and draw both in the unit that is asked', () => {
    const [before, after] = [analysedScale(job, 'as found', quick), analysedScale(job, entry, quick)];
    const comparison = comparedScales(job, before, after);
    expect(summarySentences(comparison, before, after, 'mm')[0]).toBe(
      `1 note of ${comparison.notes.length} gets another size.`,
    );
    const line = changeLines(comparison, 'mm').find(({ note }) => note === 'A#4')!;
    expect(Number.parseFloat(line.tensions[1])).toBeGreaterThan(Number.parseFloat(line.tensions[0]));
    const [tension] = comparisonCharts(before, after, 'in');
    expect(tension!.axis).toContain('lbf');
    expect(tension!.series.map(({ name }) => name)).toEqual(['as found', 'one thicker']);
    // Nobody read any bearing here, so there is no chart of it.
    expect(comparisonCharts(before, after, 'mm').map(({ name }) => name)).not.toContain('bearing');
    const three = comparisonCharts(before, after, 'mm', before);
    expect(three[0]!.series).toHaveLength(3);
    // 1 lbf is 4.4482216152605 N exactly (international avoirdupois pound, standard gravity).
    const point = tension!.series[0]!.points.find(({ key }) => key === 50)!;
    const newtons = before.analysis.notes.find(({ key }) => key === 50)!.tension;
    expect(point.value * 4.4482216152605).toBeCloseTo(newtons, 9);
  });
});

describe('the chart of bearing', () => {
  it('has the notes where bearing was read and no others, each with its interval', async () => {
    const context = testContext();
    const { id } = await openDemoJob(context);
    const { job: read } = await recordReadings(context, id, [
      { quantity: 'bearing-rise', place: { key: 50 }, value: 0.5, unit: 'mm', span_m: 0.12, loaded: true },
      { quantity: 'bearing-angle', place: { key: 52 }, value: 1, unit: 'deg', span_m: 0.1, loaded: true },
    ]);
    const scale = analysedScale(read, 'as found');
    const chart = comparisonCharts(scale, scale, 'mm').find(({ name }) => name === 'bearing')!;
    expect(chart.series.map(({ points }) => points.map(({ key }) => key))).toEqual([
      [50, 52],
      [50, 52],
    ]);
    for (const { value, low, high } of chart.series[0]!.points) {
      expect(low).toBeLessThan(value);
      expect(high).toBeGreaterThan(value);
    }
  });
});

describe('words', () => {
  it('say a difference with its sign, and nothing as nothing', () => {
    const kN = (size: number) => `${size.toFixed(1)} kN`;
    expect([signed(1.24, kN), signed(-0.36, kN), signed(0.01, kN)]).toEqual([
      '+1.2 kN',
      '−0.4 kN',
      'no change',
    ]);
    expect([beatText(3.42), beatText(-1.2), beatText(0.01), beatText(undefined)]).toEqual([
      '3.4 wide',
      '1.2 narrow',
      'still',
      '–',
    ]);
  });

  it('call wire by its size number where it is one, and strings by what they are made of', () => {
    // US size 16½ is 0.038 in by the rule (5 + 2n) mils: core/tables/us-wire-sizes.
    expect(wireText(0.0254 * 0.038, 'mm')).toBe('0.965 mm (16½)');
    expect(wireText(0.000978, 'mm')).toBe('0.978 mm');
    const { string } = asFoundRecord(job).scaleNotes[0]!;
    expect(stringText(string, 'mm')).toMatch(/^\d\.\d{3} mm core, wound \d\.\d{3}/);
    expect(stringText(undefined, 'mm')).toBe('not computed');
    expect(keysText([1, 2, 3, 5])).toBe('A0 to B0, C#1');
  });
});

describe('what is heard', () => {
  it('starts at the first break, and names what is left out', () => {
    const scale = analysedScale(job, 'as found', quick);
    expect(breakChoices(scale).length).toBeGreaterThan(0);
    const { passages, leftOut } = passagesToHear(job, [scale, scale], startingChoice, undefined);
    expect(passages).toHaveLength(2);
    expect(leftOut).toMatch(/cannot be computed yet: G#2/);
  });

  it('is the chosen note, A3 before one is chosen; a missing note leaves nothing to play', () => {
    const scale = analysedScale(job, 'as found', quick);
    const choice = { ...startingChoice, passage: 'unison' } as const;
    expect(middleKey(job)).toBe(37);
    expect(passagesToHear(job, [scale, scale], choice, 50).passages[0]!.notes[0]!.key).toBe(50);
    const missing = scale.notComputed[0]!;
    expect(passagesToHear(job, [scale, scale], choice, missing).passages).toEqual([]);
  });
});

describe('drawnSection()', () => {
  it('draws one shape a wire, a tick a string, and each change with its size', () => {
    const strings = [1, 2, 3].map((string) => ({ key: 40, string, size: 10, diameter: metres(0.001) }));
    const higher = { key: 41, string: 1, size: 9, diameter: metres(0.0009) };
    const drawn = drawnSection({
      strings: [...strings, higher],
      plan: {
        wires: [
          { joined: 'looped', strings: [0, 1] },
          { joined: 'tied', strings: [2] },
          { joined: 'tied', strings: [3] },
        ],
        tied: 2,
        changesInsideLoops: [3],
      },
    });
    expect(drawn.wires.map(({ joined, isOther }) => [joined, isOther])).toEqual([
      ['looped', false],
      ['tied', false],
      ['tied', true],
    ]);
    expect(drawn.changes.map(({ diameter_m }) => diameter_m)).toEqual([0.001, 0.0009]);
    expect(drawn.strings.filter(({ isFirstOfNote }) => isFirstOfNote)).toHaveLength(2);
  });
});
