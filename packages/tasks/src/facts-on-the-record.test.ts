import type { PageTree } from '@becket/papers';
import { beforeAll, describe, expect, it } from 'vitest';
import { asFoundRecordPaper } from '../../papers/src/as-found-record/as-found-record-paper.ts';
import { testOptions } from '../../papers/src/testing/paper-options.ts';
import { readJob } from './context.ts';
import { describeSections, describeUnisons } from './describe-piano.ts';
import { openJob } from './open-job.ts';
import { recordFacts } from './record-facts.ts';
import { type ReadingToRecord, recordAbsence, recordObservation, recordReadings } from './record-reading.ts';
import { memoryContext } from './testing/memory-context.ts';

/** Every fact that Record takes, each with a figure or a word that nothing else has: what the as-found record prints of it. */
const loaded = { span_m: 0.1, loaded: true } as const;
const readings: readonly (readonly [printed: string, reading: ReadingToRecord])[] = [
  [
    '1.021',
    {
      quantity: 'wire-diameter',
      value: 1.021,
      unit: 'mm',
      place: { key: 40, string: 2, point: 'near the bridge' },
      condition: { strings: 'let down', surface: 'corroded' },
    },
  ],
  ['611.5', { quantity: 'speaking-length', value: 611.5, unit: 'mm', place: { key: 40 } }],
  ['91.5', { quantity: 'front-length', value: 91.5, unit: 'mm', place: { key: 40 } }],
  ['92.3', { quantity: 'front-length', value: 92.3, unit: 'mm', place: { key: 41, string: 1 } }],
  ['77.5', { quantity: 'back-length', value: 77.5, unit: 'mm', place: { key: 40 } }],
  ['1.051', { quantity: 'core-diameter', value: 1.051, unit: 'mm', place: { key: 10, string: 1 } }],
  ['1.911', { quantity: 'inner-layer-diameter', value: 1.911, unit: 'mm', place: { key: 10 } }],
  ['3.071', { quantity: 'over-all-diameter', value: 3.071, unit: 'mm', place: { key: 10 } }],
  ['133.5', { quantity: 'loop-to-winding', value: 133.5, unit: 'mm', place: { key: 10 } }],
  ['987.5', { quantity: 'winding-length', value: 987.5, unit: 'mm', place: { key: 10 } }],
  ['17.7', { quantity: 'bare-front', value: 17.7, unit: 'mm', place: { key: 10 } }],
  ['16.6', { quantity: 'bare-back', value: 16.6, unit: 'mm', place: { key: 10 } }],
  ['7.123', { quantity: 'pin-diameter', value: 7.123, unit: 'mm', place: { key: 40, string: 1 } }],
  ['61.4 mm', { quantity: 'pin-length', value: 61.4, unit: 'mm', place: { key: 40, string: 1 } }],
  ['9.4 mm', { quantity: 'pin-height', value: 9.4, unit: 'mm', place: { key: 40, string: 1 } }],
  ['3.25 turns', { quantity: 'pin-coils', value: 3.25, unit: 'turns', place: { key: 40, string: 1 } }],
  ['4.321 mm', { quantity: 'hitch-pin-diameter', value: 4.321, unit: 'mm', place: { key: 40, string: 1 } }],
  [
    '12.34',
    {
      quantity: 'pressure-bar-height',
      value: 12.34,
      unit: 'mm',
      place: { section: 'tenor', point: 'left screw' },
    },
  ],
  ['9.87', { quantity: 'strike-line-spacing', value: 9.87, unit: 'mm', place: { key: 40 } }],
  ['8.76', { quantity: 'bridge-spacing', value: 8.76, unit: 'mm', place: { key: 40 } }],
  ['0.35 mm', { quantity: 'bearing-rise', value: 0.35, unit: 'mm', place: { key: 41 }, ...loaded }],
  ['1.55 deg', { quantity: 'bearing-angle', value: 1.55, unit: 'deg', place: { key: 42 }, ...loaded }],
  [
    '2.25',
    {
      quantity: 'soundboard-crown',
      value: 2.25,
      unit: 'mm',
      place: { section: 'tenor' },
      span_m: 1.1,
      loaded: false,
    },
  ],
  ['-33 cents', { quantity: 'pitch-offset', value: -33, unit: 'cents', place: { key: 49 } }],
  ['47 %', { quantity: 'relative-humidity', value: 47, unit: '%', place: {} }],
  ['21.5 °C', { quantity: 'temperature', value: 21.5, unit: '°C', place: {} }],
];

const strings = [
  { key: 40, string: 1 },
  { key: 40, string: 2 },
];
const facts: Parameters<typeof recordFacts>[2] = [
  { kind: 'size-stamp', key: 60, on: 'plate', text: '0.955', lattice: 'metric', says: 'ends here' },
  { kind: 'winding-described', key: 10, loopStyle: 'twisted loop', twist: 'right' },
  { kind: 'winding-described', key: 10, string: 2, loopStyle: 'double loop', twist: 'left' },
  {
    kind: 'soft-part',
    part: 'punchings',
    section: 'tenor',
    answer: {
      is: 'known',
      thickness_m: 0.00035,
      length_m: 0.5015,
      width_m: 0.0125,
      colour: 'plum',
      where: 'under all',
    },
  },
  { kind: 'soft-part', part: 'felt', section: 'bass', answer: { is: 'none', reason: 'taken out before' } },
  {
    kind: 'plate-part',
    part: 'long bar',
    section: 'tenor',
    isMovable: true,
    distances: [{ from: 'the third agraffe', distance_m: 0.0412 }],
    note: 'screws worn',
  },
  {
    kind: 'wire-path',
    strings,
    joined: 'looped',
    hitchPin: 'pin 7',
    otherHitchPin: 'pin 8',
    note: 'a repair',
  },
  { kind: 'sample-kept', what: 'a piece of wire', label: 'bag 9', place: { key: 40 } },
];
const words = [
  [
    'near the bridge',
    'strings let down, wire corroded',
    'left screw',
    'board under load',
    'board not under load',
  ],
  ['over a span of 1100.0 mm', '“0.955” ends here (metric numbering)', 'plate'],
  [
    'twisted loop',
    'double loop',
    'winding runs: left',
    '0.35 mm',
    '501.5 mm',
    '12.5 mm',
    'plum',
    'under all',
  ],
  ['none: taken out before', 'long bar', '41.2 mm', 'the third agraffe', 'screws worn'],
  ['pin 7', 'pin 8', 'a repair', 'a piece of wire', 'bag 9', 'lid dampers first'],
  ['does not apply: agraffes here', 'unknown: under the rest', 'none: broken off'],
].flat();

describe('what Record takes stands on the as-found record', () => {
  let text: string;
  beforeAll(async () => {
    const context = memoryContext();
    const { id } = await openJob(context, {
      title: 'everything once',
      piano: { form: 'grand', firstKey: 1, lastKey: 88, referencePitch_hz: 440 },
    });
    await describeSections(context, id, [
      { section: 'bass', firstKey: 1, lastKey: 26, bridge: 'bass', frontTermination: 'agraffe' },
      { section: 'tenor', firstKey: 27, lastKey: 88, bridge: 'long', frontTermination: 'pressure bar' },
    ]);
    await describeUnisons(context, id, [
      { firstKey: 1, lastKey: 26, strings: 2, winding: 'wound', layers: 2 },
      { firstKey: 27, lastKey: 88, strings: 3, winding: 'plain', layers: 0 },
    ]);
    await recordReadings(
      context,
      id,
      readings.map(([, reading]) => reading),
    );
    await recordFacts(context, id, facts);
    const absent = (quantity: ReadingToRecord['quantity'], place: ReadingToRecord['place']) => ({
      quantity,
      place,
    });
    await recordAbsence(context, id, {
      ...absent('pressure-bar-height', { section: 'bass' }),
      answer: 'does not apply',
      reason: 'agraffes here',
    });
    await recordAbsence(context, id, {
      ...absent('pin-height', { key: 50 }),
      answer: 'unknown',
      reason: 'under the rest',
    });
    await recordAbsence(context, id, {
      ...absent('wire-diameter', { key: 51, string: 2 }),
      answer: 'none',
      reason: 'broken off',
    });
    await recordObservation(context, id, {
      thing: 'dampers',
      place: { section: 'tenor' },
      answer: { is: 'known', text: 'lid dampers first' },
    });
    const { blocks }: PageTree = asFoundRecordPaper(await readJob(context, id), testOptions);
    text = JSON.stringify(blocks);
  });

  it.each(readings)('as %s', (printed, { quantity }) => {
    expect(text, quantity).toContain(printed);
  });
  it.each(words)('with “%s”', (printed) => {
    expect(text).toContain(printed);
  });
});
