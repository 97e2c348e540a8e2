import type { Ulid } from '@becket/journal';
import type { TaskContext } from '../context.ts';
import { type ReadingToRecord, recordReadings } from '../record-reading.ts';
import { chooseScale } from '../scale/scale-commands.ts';
import { type PassToRecord, planFollowUp, recordFollowUp, recordPass } from '../settle/settle-commands.ts';
import { stringDemoJob } from './invented-stringing.ts';

/*
 * The invented grand after it was restrung by its old scale: what was measured on its new wire, two passes, the beginning of a
 * third, and the days to come. Every figure is made up.
 */

/** New plain wire by micrometer [mm], string 2: as it was chosen, but for A#4, where half a size more went on. */
const wires: readonly (readonly [key: number, diameter: number])[] = [
  [31, 1.118],
  [36, 1.043],
  [40, 0.991],
  [44, 0.99],
  [50, 0.965],
  [56, 0.915],
  [62, 0.888],
  [70, 0.864],
];

/** Torque of new pins in in·lbf, sharp and flat; string 1. */
const torques: readonly (readonly [key: number, sharp: number, flat: number])[] = [
  [1, 188, 121],
  [5, 186, 112],
  [13, 179, 112],
  [17, 174, 103],
  [21, 181, 115],
  [25, 170, 104],
  [29, 178, 113],
  [33, 176, 105],
  [37, 171, 105],
  [41, 163, 98],
  [45, 168, 101],
  [49, 159, 95],
  [53, 162, 97],
  [57, 151, 84],
  [61, 165, 99],
  [65, 158, 96],
  [68, 169, 101],
  [73, 172, 110],
  [77, 166, 101],
  [81, 179, 118],
  [85, 175, 116],
];

/** Rise over a span of 100 mm with the board loaded [mm]. */
const bearings: readonly (readonly [key: number, rise: number])[] = [
  [8, 0.4],
  [30, 0.7],
  [40, 0.9],
  [58, 0.8],
  [76, 0.6],
];

const order = ['tenor', 'low treble', 'bass', 'high treble'] as const;

/** Where each section stood before and after, in the order in which they are pulled up. */
function pass(
  on: string,
  air: Pick<PassToRecord, 'temperature_c' | 'relativeHumidity_percent'>,
  offsets: readonly (readonly [before: number, aimed: number, after: number] | readonly [before: number])[],
): PassToRecord {
  return {
    on,
    ...air,
    order: [...order],
    values: offsets.flatMap(([before, aimed, after], index) => {
      const section = order[index]!;
      return [
        { value: 'before' as const, section, offset_cents: before },
        ...(aimed === undefined ? [] : [{ value: 'aimed' as const, section, offset_cents: aimed }]),
        ...(after === undefined ? [] : [{ value: 'after' as const, section, offset_cents: after }]),
      ];
    }),
  };
}

/** Adds what came after the stringing to the invented grand; it is not handed over yet. */
export async function settleDemoJob(context: TaskContext, job: Ulid): Promise<void> {
  await chooseScale(context, job, { scale: 'as found', reason: 'the old scale is even, and is kept' });
  await stringDemoJob(context, job);
  const strung = { stage: 'as strung' } as const;
  const readings: ReadingToRecord[] = [
    ...wires.map(
      ([key, value]) =>
        ({ quantity: 'wire-diameter', place: { key, string: 2 }, value, unit: 'mm', ...strung }) as const,
    ),
    ...torques.flatMap(([key, sharp, flat]) =>
      ([sharp, flat] as const).map(
        (value, turn) =>
          ({
            quantity: 'pin-torque',
            place: { key, string: 1 },
            value,
            unit: 'in·lbf',
            condition: { strings: 'on', turning: turn === 0 ? 'sharp' : 'flat' },
            ...strung,
          }) as const,
      ),
    ),
    ...bearings.map(
      ([key, value]) =>
        ({
          quantity: 'bearing-rise',
          place: { key },
          value,
          unit: 'mm',
          span_m: 0.1,
          loaded: true,
          ...strung,
        }) as const,
    ),
  ];
  await recordReadings(context, job, readings);
  await recordPass(context, job, {
    ...pass('2026-05-04', { temperature_c: 20.5, relativeHumidity_percent: 47 }, [
      [-64, 12, 12],
      [-71, 14, 13],
      [-48, 6, 6],
      [-83, 0, 0],
    ]),
    mishaps: [{ what: 'broke', key: 86, string: 2, note: 'at the pin; a new wire is on' }],
  });
  await recordPass(
    context,
    job,
    pass('2026-05-07', { temperature_c: 21, relativeHumidity_percent: 46 }, [
      [-9, 3, 3],
      [-13, 4, 4],
      [-5, 1, 1],
      [-24, 0, 0],
    ]),
  );
  await recordPass(context, job, pass('2026-05-18', { temperature_c: 20 }, [[-2], [-3]]));
  const { entries } = await planFollowUp(context, job, { on: '2026-05-18', what: 'another pass' });
  await recordFollowUp(context, job, { followUp: entries[0]!, on: '2026-05-18' });
  await planFollowUp(context, job, { on: '2026-06-15', what: 'tuning' });
}
