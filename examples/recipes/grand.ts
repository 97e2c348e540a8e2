/* A grand of 1.8 m, invented: no instrument was measured or copied for it. */
import { US_WIRE_SIZES } from '@becket/core';
import { between, type Recipe, type RecipeSection, type RecipeUnisons } from './recipe.ts';

const bass = {
  section: 'bass',
  firstKey: 1,
  lastKey: 26,
  bridge: 'bass',
  frontTermination: 'agraffe',
} as const;

export const sections: readonly RecipeSection[] = [
  bass,
  { section: 'tenor', firstKey: 27, lastKey: 50, bridge: 'treble', frontTermination: 'agraffe' },
  { section: 'low treble', firstKey: 51, lastKey: 68, bridge: 'treble', frontTermination: 'capo' },
  { section: 'high treble', firstKey: 69, lastKey: 88, bridge: 'treble', frontTermination: 'capo' },
];

export const unisons: readonly RecipeUnisons[] = [
  { firstKey: 1, lastKey: 5, strings: 1, winding: 'wound', layers: 2 },
  { firstKey: 6, lastKey: 10, strings: 1, winding: 'wound', layers: 1 },
  // The lowest four notes of the tenor are wound too, on the treble bridge.
  { firstKey: 11, lastKey: 30, strings: 2, winding: 'wound', layers: 1 },
  { firstKey: 31, lastKey: 88, strings: 3, winding: 'plain', layers: 0 },
];

/** Lengths halve in a little more than an octave; below key 40 the bridge bends away: the hockey stick. */
function longBridge_mm(key: number): number {
  const even = 52.1 * 2 ** ((88 - key) / 13.15);
  const bend = Math.exp(-0.0009 * Math.max(0, 40 - key) ** 2);
  // Each strut lets the bridge pins start anew, a little off the curve.
  const strut = key >= 69 ? 1 : key >= 51 ? 0.992 : 0.985;
  return even * bend * strut;
}

export const recipe: Recipe = {
  lattice: US_WIRE_SIZES,
  sections,
  unisons,
  sizesFrom: [
    [1, 23],
    [4, 22],
    [7, 21],
    [11, 18.5],
    [15, 18],
    [20, 17.5],
    [27, 16],
    [31, 19.5],
    [33, 19],
    [35, 18],
    [37, 17.5],
    [40, 17],
    [45, 16.5],
    [50, 16],
    [56, 15.5],
    [61, 15],
    [67, 14.5],
    [73, 14],
    [79, 13.5],
    [85, 13],
  ],
  speakingLength_mm: (key) =>
    key <= bass.lastKey ? 1368 - 9.5 * (key - 1) - 0.16 * (key - 1) ** 2 : longBridge_mm(key),
  woundTension_n: (key) =>
    key <= 10
      ? between(key, { firstKey: 1, lastKey: 10 }, 1130, 980)
      : key <= bass.lastKey
        ? between(key, { firstKey: 11, lastKey: 26 }, 830, 745)
        : between(key, { firstKey: 27, lastKey: 30 }, 760, 735),
  frontLength_mm: (key) => (key <= 26 ? 150 - 2.2 * key : 62 + ((88 - key) * 70) / 61),
  backLength_mm: (key) => (key <= 26 ? 128 - 0.9 * key : 48 + ((88 - key) * 62) / 61),
  bareFront_mm: (key) => 20 - 0.2 * key,
  bareBack_mm: (key) => 15 - 0.14 * key,
  // 2/0 pins; the top octave was gone over once before and has 3/0.
  pinDiameter_mm: (key) => (key >= 77 ? 0.286 : 0.282) * 25.4,
};

export const job = {
  title: 'An invented grand of 1.8 m (example)',
  customer: 'nobody: this piano does not exist',
  piano: {
    form: 'grand',
    size_m: 1.8,
    firstKey: 1,
    lastKey: 88,
    maker: 'invented',
    model: 'example of 1.8 m',
    year: 1926,
    referencePitch_hz: 440,
  },
  sections,
  unisons,
  observations: [
    {
      thing: 'felts',
      place: { section: 'bass' },
      answer: {
        is: 'known',
        text: 'Green braid, 4 mm, woven between the back lengths; red felt, 3 mm, before the agraffes.',
      },
    },
    {
      thing: 'felts',
      place: { section: 'tenor' },
      answer: {
        is: 'known',
        text: 'Red felt, 3 mm, before the agraffes; green braid, 4 mm, behind the bridge.',
      },
    },
    {
      thing: 'felts',
      place: { section: 'low treble' },
      answer: { is: 'known', text: 'Red felt, 3 mm, before the capo; no braid behind the bridge.' },
    },
    {
      thing: 'punchings',
      place: { section: 'bass' },
      answer: { is: 'known', text: 'Green punchings, 2 mm, under each hitch loop.' },
    },
    { thing: 'punchings', place: { section: 'tenor' }, answer: { is: 'none' } },
    { thing: 'punchings', place: { section: 'low treble' }, answer: { is: 'none' } },
    { thing: 'punchings', place: { section: 'high treble' }, answer: { is: 'none' } },
    { thing: 'bars', place: { section: 'bass' }, answer: { is: 'does not apply' } },
    { thing: 'bars', place: { section: 'tenor' }, answer: { is: 'does not apply' } },
    {
      thing: 'bars',
      place: { section: 'high treble' },
      answer: {
        is: 'known',
        text: 'Five movable bars behind the bridge, one for four notes each; the lowest stands 21 mm from the bridge pins, the highest 12 mm.',
      },
    },
    {
      thing: 'loops',
      place: { section: 'bass' },
      answer: { is: 'known', text: 'Every wound string has its own single loop.' },
    },
    {
      thing: 'loops',
      place: { section: 'high treble' },
      answer: { is: 'known', text: 'Looped throughout, across the notes; no tied string.' },
    },
    {
      thing: 'bearing',
      place: { section: 'tenor' },
      answer: {
        is: 'known',
        text: 'Rocks a little on the bridge gauge at C4, more at A4: some bearing in both places.',
      },
    },
  ],
} as const;
