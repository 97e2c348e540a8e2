import { scaleNotesOf } from '@becket/journal';
import { describe, expect, it } from 'vitest';
import { readJob } from '../context.ts';
import { memoryContext } from '../testing/memory-context.ts';
import { wireJob } from '../testing/wire-job.ts';
import { notesLeftOut } from './notes-left-out.ts';

describe('notesLeftOut()', () => {
  it('names the notes that a scale does not have by what they lack, neighbours together', async () => {
    const context = memoryContext();
    const job = await readJob(context, await wireJob(context));
    const found = notesLeftOut(
      job,
      scaleNotesOf(job, 'as found').notes.map(({ key }) => key),
    );
    // The wound note has no reading at all; the plain ones have their lengths and no wire.
    expect(found.map(({ notes, keys }) => [notes, keys])).toEqual([
      ['B3', [39]],
      ['C4 to D#4', [40, 41, 42, 43]],
    ]);
    expect(found[0]!.because).toMatch(/no core diameter, .*no speaking length/);
    expect(found[1]!.because).toBe('no wire diameter');
  });

  it('is empty where the scale is whole, and leaves wound notes out where plain ones are asked for', async () => {
    const context = memoryContext();
    const job = await readJob(context, await wireJob(context));
    const { scale } = job.chosenScale!;
    const keys = scaleNotesOf(job, scale).notes.map(({ key }) => key);
    expect(notesLeftOut(job, keys).map(({ notes }) => notes)).toEqual(['B3']);
    expect(notesLeftOut(job, keys, undefined, 'plain')).toEqual([]);
  });
});
