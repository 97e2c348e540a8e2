import { surveyThingNames } from '@becket/journal';
import { describe, expect, it } from 'vitest';
import { decisionAdvice } from '../appraise/decision-advice.ts';
import { pinChoice } from '../appraise/pin-choice.ts';
import { readJob } from '../context.ts';
import { memoryContext } from '../testing/memory-context.ts';
import { appraiseDemoJob } from './invented-appraisal.ts';
import { openDemoJob } from './open-demo-job.ts';

describe('appraiseDemoJob()', () => {
  it('answers the whole survey, and its block is loose where it was invented to be', async () => {
    const context = memoryContext();
    const { id } = await openDemoJob(context);
    await appraiseDemoJob(context, id);
    const job = await readJob(context, id);
    expect(new Set(job.findings.map(({ thing }) => thing))).toEqual(new Set(surveyThingNames));

    const choice = pinChoice(job);
    expect(choice.map.pins).toHaveLength(22);
    // The diameter of A3 was left out of the table, so that nothing tells how hard its string pulls.
    expect(choice.map.pins.filter(({ grip }) => grip === undefined).map(({ name }) => name)).toEqual([
      'A3 string 1',
    ]);
    const low = choice.map.sections
      .filter(({ mean }) => mean !== undefined)
      .sort((a, b) => a.mean!.mean - b.mean!.mean);
    expect(low[0]!.section).toBe('low treble');
    expect(choice.isMixed).toBe(true);
    // Read both ways, the pull that the readings speak for is near the one worked out from the string: within 1 N·m.
    for (const { grip, pull } of choice.map.pins)
      if (grip?.pullFromReadings !== undefined)
        expect(Math.abs(grip.pullFromReadings - pull!.pull)).toBeLessThan(1);

    expect(decisionAdvice(job, choice).verdict).toBe('go with conditions');
  });
});
