import { readFileSync } from 'node:fs';
import { asFoundRecord, foldJob, stripCheck } from '@becket/journal';
import { describe, expect, it } from 'vitest';
import { scaleAsFound } from '../scale-as-found.ts';
import { memoryContext } from '../testing/memory-context.ts';
import data from './invented-grand.json' with { type: 'json' };
import { openDemoJob } from './open-demo-job.ts';

const exampleFile = (name: string): string =>
  readFileSync(new URL(`../../../../examples/grand/${name}`, import.meta.url), 'utf8');

describe('openDemoJob()', () => {
  it('opens a job that says it is invented, kept in the store, with every note described', async () => {
    const context = memoryContext();
    const job = await openDemoJob(context);
    expect(job.title).toMatch(/invented/);
    expect(foldJob((await context.store.entries(job.id)).entries)).toEqual(job);
    const { notes } = asFoundRecord(job);
    expect(notes).toHaveLength(88);
    expect(notes.every(({ section, strings, winding }) => section && strings && winding)).toBe(true);
    expect(job.sections.map(({ section, firstKey, lastKey }) => [section, firstKey, lastKey])).toEqual([
      ['bass', 1, 26],
      ['tenor', 27, 50],
      ['low treble', 51, 68],
      ['high treble', 69, 88],
    ]);
  });

  it('has the two wrong cells put right with their reasons, and its gaps left open', async () => {
    const job = await openDemoJob(memoryContext());
    expect(job.imports[0]?.changedCells.map(({ reason }) => reason)).toEqual([
      'a decimal point too many',
      'millimetres in a column of inches',
    ]);
    const { openGaps } = stripCheck(job);
    expect(openGaps.map(({ name }) => name)).toEqual(
      expect.arrayContaining([
        'wire-diameter/A3',
        'speaking-length/G#2',
        'felts/high treble',
        'bearing/bass',
      ]),
    );
    expect(openGaps.map(({ name }) => name)).not.toContain('punchings/tenor');
  });

  it('gives a scale near the truth: 165.9 kN less the notes with gaps', async () => {
    const { analysis, notComputed } = scaleAsFound(await openDemoJob(memoryContext()));
    expect(notComputed.map(({ note }) => note)).toEqual([
      'A#1',
      'E2',
      'G#2',
      'A3',
      'G5',
      'G#5',
      'D6',
      'G#6',
      'G7',
    ]);
    // Nine notes of two or three strings near 720 N each are missing from the sum.
    expect(analysis.total).toBeGreaterThan(144_000);
    expect(analysis.total).toBeLessThan(152_000);
    for (const { key, tension, breakShare } of analysis.notes) {
      expect(tension, `key ${key}`).toBeGreaterThan(600);
      expect(tension, `key ${key}`).toBeLessThan(1250);
      expect(breakShare, `key ${key}`).toBeLessThan(0.7);
    }
  });

  it('holds the same data as examples/grand', () => {
    expect(data.readings).toBe(exampleFile('readings.csv'));
    expect(data.job).toEqual(JSON.parse(exampleFile('job.json')));
    expect(data.mapping).toEqual(JSON.parse(exampleFile('mapping.json')));
    expect(data.corrections).toEqual(JSON.parse(exampleFile('corrections.json')));
  });
});
