import type { Fact } from '@becket/journal';
import { describe, expect, it } from 'vitest';
import { addFacts, readJob } from './context.ts';
import { describePiano } from './describe-piano.ts';
import { openJob } from './open-job.ts';
import { type ReadingToRecord, recordReadings } from './record-reading.ts';
import { memoryContext } from './testing/memory-context.ts';

async function grand() {
  const context = memoryContext();
  const { id } = await openJob(context, { title: 'a grand' });
  await describePiano(context, id, { form: 'grand', firstKey: 1, lastKey: 88, referencePitch_hz: 440 });
  return { context, id };
}
const rise: ReadingToRecord = { quantity: 'bearing-rise', place: { key: 20 }, value: 1.5, unit: 'mm' };

describe('bearing and crown', () => {
  it.each([
    [rise, 'neither'],
    [{ ...rise, span_m: 0.12 }, 'the span alone'],
    [{ ...rise, loaded: true }, 'the load alone'],
    [{ ...rise, loaded: true, span_m: 0 }, 'a span of 0 m'],
    [{ ...rise, quantity: 'soundboard-crown' as const }, 'neither'],
    [{ ...rise, quantity: 'bearing-angle' as const, unit: 'deg' as const }, 'neither'],
  ])('are refused without their span and load, and nothing is kept (%#)', async (reading, found) => {
    const { context, id } = await grand();
    await expect(recordReadings(context, id, [reading])).rejects.toThrow(
      `whether the board was loaded are needed, ${found} was found`,
    );
    expect((await readJob(context, id)).readings).toEqual([]);
  });

  it('are kept with both', async () => {
    const { context, id } = await grand();
    const { job } = await recordReadings(context, id, [{ ...rise, span_m: 0.12, loaded: false }]);
    expect(job.readings).toMatchObject([{ quantity: 'bearing-rise', span_m: 0.12, loaded: false }]);
  });

  it('of an older journal are read as they stand', async () => {
    const { context, id } = await grand();
    const old: Fact = {
      kind: 'reading',
      v: 1,
      quantity: 'bearing-rise',
      place: { key: 20 },
      value_si: 0.0015,
      asRead: { value: 1.5, unit: 'mm' },
      origin: 'measured',
      stage: 'as found',
    };
    const { job } = await addFacts(context, id, [old]);
    expect(job.readings).toMatchObject([{ quantity: 'bearing-rise', value_si: 0.0015 }]);
  });
});
