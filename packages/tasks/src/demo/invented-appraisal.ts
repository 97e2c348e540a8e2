import type { Ulid } from '@becket/journal';
import { type FindingToRecord, recordFindings } from '../appraise/record-finding.ts';
import type { TaskContext } from '../context.ts';
import { type ReadingToRecord, recordReadings } from '../record-reading.ts';

/*
 * The visit to the invented grand. Every figure is made up: a block that is firm but for a stretch of the low treble, two
 * sizes of pins, a soundboard with an old repair, and a plate of which one part could not be seen.
 */

/** Torque in in·lbf as read going sharp and, where the pin felt loose, going flat as well; every fourth note, string 1. */
const torques: readonly (readonly [key: number, sharp: number, flat?: number])[] = [
  [1, 171],
  [5, 166],
  [9, 158],
  [13, 163],
  [17, 149],
  [21, 155],
  [25, 151],
  [29, 160],
  [33, 157],
  [37, 148],
  [41, 152],
  [45, 146],
  [49, 121, 74],
  [53, 108, 61],
  [57, 101, 55],
  [61, 112, 66],
  [65, 131, 83],
  [69, 150],
  [73, 156],
  [77, 149],
  [81, 161],
  [85, 154],
];

/** Pins by micrometer, in inches: the low treble was given larger ones once. */
const pins: readonly (readonly [key: number, inches: number])[] = [
  [1, 0.2815],
  [13, 0.2819],
  [25, 0.2822],
  [37, 0.2817],
  [45, 0.282],
  [49, 0.2861],
  [53, 0.2858],
  [57, 0.2863],
  [61, 0.286],
  [69, 0.2821],
  [77, 0.2818],
  [85, 0.2816],
];

const pitches: readonly (readonly [key: number, cents: number])[] = [
  [13, -31],
  [25, -36],
  [49, -42],
  [61, -47],
  [73, -38],
];

const sound = { is: 'sound' } as const;
const survey: readonly FindingToRecord[] = [
  {
    thing: 'bridge-cracks',
    place: { section: 'low treble', point: 'front row, three pins' },
    answer: {
      is: 'seen',
      what: 'hairline cracks that run from pin to pin',
      gravity: 'clear',
      whatToDo: 'while the strings are off',
      extent_m: 0.06,
    },
  },
  { thing: 'bridge-cap', place: {}, answer: sound },
  { thing: 'bridge-parting', place: {}, answer: sound },
  { thing: 'bridge-pins', place: {}, answer: sound },
  {
    thing: 'board-cracks',
    place: { section: 'tenor', point: 'along the grain, beside the third rib' },
    answer: {
      is: 'seen',
      what: 'one crack',
      gravity: 'slight',
      whatToDo: 'while the strings are off',
      extent_m: 0.31,
    },
  },
  { thing: 'board-crown', place: {}, answer: sound },
  {
    thing: 'board-repairs',
    place: { section: 'bass' },
    answer: {
      is: 'seen',
      what: 'an old shim, glued in',
      gravity: 'slight',
      whatToDo: 'nothing',
      extent_m: 0.22,
      repair: 'holds',
    },
  },
  { thing: 'rib-parting', place: {}, answer: sound },
  { thing: 'rib-cracks', place: {}, answer: sound },
  { thing: 'block-cracks', place: {}, answer: sound },
  { thing: 'block-layers', place: {}, answer: sound },
  { thing: 'block-flange', place: {}, answer: { is: 'could not be seen', note: 'behind the action' } },
  { thing: 'block-treated', place: {}, answer: sound },
  { thing: 'plate-cracks', place: {}, answer: sound },
  { thing: 'plate-bolts', place: {}, answer: sound },
  { thing: 'agraffes', place: {}, answer: sound },
  { thing: 'pressure-bar', place: {}, answer: sound },
  { thing: 'hitch-pins', place: {}, answer: sound },
  {
    thing: 'dampers',
    place: {},
    answer: { is: 'seen', what: 'felt hard in the bass', gravity: 'slight', whatToDo: 'nothing' },
  },
  { thing: 'felts', place: {}, answer: sound },
  { thing: 'action', place: {}, answer: { is: 'sound', note: 'noted and left aside' } },
];

/** Adds the invented visit to the invented grand. */
export async function appraiseDemoJob(context: TaskContext, job: Ulid): Promise<void> {
  const readings: ReadingToRecord[] = [
    { quantity: 'relative-humidity', place: {}, value: 41, unit: '%' },
    { quantity: 'temperature', place: {}, value: 20, unit: '°C' },
    ...pitches.map(
      ([key, value]) => ({ quantity: 'pitch-offset', place: { key }, value, unit: 'cents' }) as const,
    ),
    ...torques.flatMap(([key, sharp, flat]) => [
      torque(key, sharp, 'sharp', flat !== undefined),
      ...(flat === undefined ? [] : [torque(key, flat, 'flat', true)]),
    ]),
    ...pins.map(
      ([key, value]) => ({ quantity: 'pin-diameter', place: { key, string: 1 }, value, unit: 'in' }) as const,
    ),
  ];
  await recordReadings(context, job, readings);
  await recordFindings(context, job, survey);
}

function torque(key: number, value: number, turning: 'sharp' | 'flat', isLoose: boolean): ReadingToRecord {
  return {
    quantity: 'pin-torque',
    place: { key, string: 1 },
    value,
    unit: 'in·lbf',
    condition: { strings: 'on', turning },
    ...(isLoose ? { feel: 'creeps' as const } : {}),
  };
}
