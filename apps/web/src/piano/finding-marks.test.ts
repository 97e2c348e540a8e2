import { asFoundRecord, foldJob, type Job } from '@becket/journal';
import { recordFindings } from '@becket/tasks';
import { describe, expect, it } from 'vitest';
import { testContext, testJob } from '../testing/test-job.ts';
import { findingMarks, findingsOfNote } from './finding-marks.ts';
import { layOutPlan } from './plan-geometry.ts';

const seen = { is: 'seen', what: 'a crack', gravity: 'clear', whatToDo: 'before stringing' } as const;

async function surveyed(): Promise<Job> {
  const context = testContext();
  const id = await testJob(context);
  await recordFindings(context, id, [
    { thing: 'bridge-cracks', place: { key: 40 }, answer: seen },
    { thing: 'bridge-cap', place: { key: 40 }, answer: seen },
    { thing: 'board-cracks', place: { section: 'bass' }, answer: seen },
    { thing: 'plate-cracks', place: {}, answer: { is: 'sound' } },
    { thing: 'block-cracks', place: {}, answer: seen, copiedFrom: '2019-05-02' },
  ]);
  return foldJob((await context.store.entries(id)).entries);
}

describe('findings on the drawn plan', () => {
  it('are drawn at their part, on the string of their place, and never over one another', async () => {
    const job = await surveyed();
    const plan = layOutPlan(asFoundRecord(job).notes, job.sections);
    const marks = findingMarks(job, plan);
    expect(marks.map(({ finding }) => finding.thing)).toEqual([
      'bridge-cracks',
      'bridge-cap',
      'board-cracks',
    ]);
    const line = plan.lines.find(({ key }) => key === 40)!;
    expect(marks[0]!.at.y).toBeCloseTo(line.back.y, 12);
    expect(marks[1]!.at.x).toBeGreaterThan(marks[0]!.at.x);
    expect(marks[2]!.at.y).toBeLessThan(marks[0]!.at.y);
  });

  it('belong to the notes of their section, the nearest first', async () => {
    const job = await surveyed();
    expect(findingsOfNote(job, { key: 40, section: 'tenor' }).map(({ thing }) => thing)).toEqual([
      'bridge-cracks',
      'bridge-cap',
    ]);
    expect(findingsOfNote(job, { key: 3, section: 'bass' }).map(({ thing }) => thing)).toEqual([
      'board-cracks',
    ]);
    expect(findingsOfNote(job, { key: 41, section: 'tenor' })).toEqual([]);
  });
});
