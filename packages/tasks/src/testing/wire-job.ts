import type { Fact, Ulid } from '@becket/journal';
import { addFacts, type TaskContext } from '../context.ts';
import { describeJob } from '../describe-job.ts';
import { openJob } from '../open-job.ts';
import { recordReadings } from '../record-reading.ts';

/**
 * A job of an invented piano of five notes: one wound note of two strings and four plain ones of three, in a chosen scale of
 * two sizes (US 18 and 17), with every length read.
 */
export async function wireJob(context: TaskContext, title = 'five notes'): Promise<Ulid> {
  const { id } = await openJob(context, { title });
  await describeJob(context, id, {
    piano: { form: 'grand', firstKey: 39, lastKey: 43, referencePitch_hz: 440 },
    sections: [
      { section: 'bass', firstKey: 39, lastKey: 39, bridge: 'bass', frontTermination: 'agraffe' },
      { section: 'treble', firstKey: 40, lastKey: 43, bridge: 'treble', frontTermination: 'agraffe' },
    ],
    unisons: [
      { firstKey: 39, lastKey: 39, strings: 2, winding: 'wound', layers: 1 },
      { firstKey: 40, lastKey: 43, strings: 3, winding: 'plain', layers: 0 },
    ],
  });
  const proposed: Fact = {
    kind: 'scale-proposed',
    v: 1,
    name: 'two sizes',
    notes: [40, 41, 42, 43].map((key) => ({
      winding: 'plain' as const,
      key,
      gauge_m: key < 42 ? 0.0010414 : 0.0009906,
      from: 'by hand' as const,
    })),
    madeFrom: 'a'.repeat(64),
  };
  const { entries } = await addFacts(context, id, [proposed]);
  await addFacts(context, id, [
    { kind: 'scale-chosen', v: 1, scale: entries[0]!.id, reason: 'a test', digest: 'b'.repeat(64) },
  ]);
  await recordReadings(
    context,
    id,
    [40, 41, 42, 43].flatMap((key) =>
      (
        [
          ['speaking-length', 700 - 10 * (key - 40)],
          ['front-length', 100],
          ['back-length', 150],
          ['hitch-pin-diameter', 4],
        ] as const
      ).map(([quantity, value]) => ({
        quantity,
        place: { key },
        value,
        unit: 'mm' as const,
        origin: 'measured' as const,
        stage: 'as found' as const,
      })),
    ),
  );
  return id;
}
