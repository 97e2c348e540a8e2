import { describe, expect, it } from 'vitest';
import { describeJob } from './describe-job.ts';
import { openJob } from './open-job.ts';
import { jsonOf } from './testing/example-pianos.ts';
import { memoryContext } from './testing/memory-context.ts';

describe('describeJob()', () => {
  it('keeps the piano, its sections, its unisons and what was seen', async () => {
    const context = memoryContext();
    const { id } = await openJob(context, { title: 'a vertical' });
    const job = await describeJob(context, id, jsonOf('vertical', 'job.json'));
    expect(job.piano).toMatchObject({ form: 'vertical', firstKey: 1, lastKey: 85 });
    expect(job.sections.map(({ section }) => section)).toEqual(['bass', 'tenor', 'treble']);
    expect(job.unisons.size).toBe(85);
    expect(job.observations).toHaveLength(5);
  });

  it.each([
    ['no object', 'a grand', /Cannot read this description/],
    [
      'an unknown form',
      { piano: { form: 'square', firstKey: 1, lastKey: 88, referencePitch_hz: 440 } },
      /^Cannot keep this as it does not fit the record: form: .*"grand"\|"vertical"/,
    ],
    [
      'a section without a bridge',
      { sections: [{ section: 'bass', firstKey: 1, lastKey: 20 }] },
      /^Cannot keep this as it does not fit the record: bridge: /,
    ],
    [
      'sections that overlap',
      {
        sections: [
          { section: 'bass', firstKey: 1, lastKey: 20, bridge: 'bass', frontTermination: 'agraffe' },
          { section: 'tenor', firstKey: 20, lastKey: 40, bridge: 'treble', frontTermination: 'agraffe' },
        ],
      },
      /overlap/,
    ],
  ])('refuses %s in one sentence and keeps nothing', async (_, description, sentence) => {
    const context = memoryContext();
    const { id } = await openJob(context, { title: 'a grand' });
    const before = await context.store.entries(id);
    await expect(describeJob(context, id, description)).rejects.toThrow(sentence);
    expect(await context.store.entries(id)).toEqual(before);
  });
});
