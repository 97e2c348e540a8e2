import { foldSettling, foldStringing, passPlan, settlingLimits, strungScale } from '@becket/journal';
import { describe, expect, it } from 'vitest';
import { entriesOf, readJob } from '../context.ts';
import { handOverFigures } from '../hand-over/hand-over-figures.ts';
import { stringingFigures } from '../order/stringing-figures.ts';
import { stringingCourse } from '../string/stringing-course.ts';
import { memoryContext } from '../testing/memory-context.ts';
import { settleDemoJob } from './invented-settling.ts';
import { openDemoJob } from './open-demo-job.ts';

describe('settleDemoJob()', () => {
  it('leaves a piano that is settling: two passes made, a third begun, and falls to learn from', async () => {
    const context = memoryContext();
    const { id } = await openDemoJob(context);
    await settleDemoJob(context, id);
    const job = await readJob(context, id);
    const entries = await entriesOf(context, id);
    const settling = foldSettling(entries);
    expect(settling.passes.map(({ pass }) => pass)).toEqual([1, 2, 3]);

    // Every wire of the plan is on; the one of A#4 is thicker than was chosen, and one kinked and was strung again.
    const stringing = foldStringing(entries);
    const course = stringingCourse(job, { figures: stringingFigures(job), stringing, bass: [] });
    expect([course.on, course.strays]).toEqual([course.wires.length, []]);
    expect(
      course.wires
        .filter(({ isOtherSize }) => isOtherSize)
        .flatMap(({ strings }) => strings.map(({ note }) => note)),
    ).toContain('A#4');
    expect(stringing.mishaps.map(({ what, isOff }) => [what, isOff])).toEqual([['kinked', true]]);

    const plan = passPlan(job, settling, settlingLimits(job));
    expect(plan.isUnderWay).toBe(true);
    // Tenor: 76 raised and 21 lost, then 12 raised and 5 lost; bass: 54 and 11, and not read again yet.
    const falls = plan.sections.map(({ section, fallBack }) => [section, fallBack.shares.length]);
    expect(falls).toEqual([
      ['bass', 1],
      ['tenor', 2],
      ['low treble', 2],
      ['high treble', 1],
    ]);
    for (const { next, highestOffset } of plan.sections)
      expect(next!.overpull).toBeLessThanOrEqual(Math.max(0, highestOffset!));

    expect(strungScale(job).notes.filter(({ from }) => from === 'measured')).toHaveLength(8);
    const { done, torque, bearing, stillOpen, deviations } = handOverFigures(job, {
      entries,
      today: '2026-06-01',
    });
    // The old wire of A#4 was one of 0.037 in, 0.9398 mm; worn readings of the others are no deviation.
    expect(deviations).toEqual([{ what: 'A#4, wire: 0.965 mm measured, 0.940 mm chosen.' }]);
    expect(done.find((sentence) => sentence.includes('strung'))).toMatch(
      /^139 wires were strung, noted from .+; one came off on the way\.$/,
    );
    expect(torque.every(({ mean }) => mean !== undefined)).toBe(true);
    expect(bearing.every(({ rises }) => rises.length === 1)).toBe(true);
    expect(stillOpen).toContain('Pass 3 is not finished: tenor, low treble, bass, high treble.');
  });
});
