import type { Ulid } from '@becket/journal';
import type { TaskContext } from '../context.ts';
import { describeSections, describeUnisons } from '../describe-piano.ts';
import { openJob } from '../open-job.ts';
import { recordReadings } from '../record-reading.ts';

/**
 * An invented grand of two sections with three strings to a note, of which one note each is read: C4 has room to its limit,
 * the 480 mm of A4 leave little.
 */
export async function settlingJob(context: TaskContext): Promise<Ulid> {
  const { id } = await openJob(context, {
    title: 'Settling',
    piano: { form: 'grand', firstKey: 40, lastKey: 51, referencePitch_hz: 440 },
  });
  await describeSections(context, id, [
    { section: 'low', firstKey: 40, lastKey: 45, bridge: 'long', frontTermination: 'agraffe' },
    { section: 'high', firstKey: 46, lastKey: 51, bridge: 'long', frontTermination: 'agraffe' },
  ]);
  await describeUnisons(context, id, [
    { firstKey: 40, lastKey: 51, strings: 3, winding: 'plain', layers: 0 },
  ]);
  const read = (key: number, wire: number, length: number) =>
    [
      { quantity: 'wire-diameter', place: { key }, value: wire, unit: 'mm' },
      { quantity: 'speaking-length', place: { key }, value: length, unit: 'mm' },
    ] as const;
  await recordReadings(context, id, [...read(40, 1.05, 640), ...read(49, 1, 480)]);
  return id;
}
