/* A vertical of 1.2 m with 85 keys, invented: no instrument was measured or copied for it. */
import { METRIC_WIRE_SIZES } from '@becket/core';
import { between, type Recipe, type RecipeSection, type RecipeUnisons } from './recipe.ts';

const bass = {
  section: 'bass',
  firstKey: 1,
  lastKey: 29,
  bridge: 'bass',
  frontTermination: 'plate edge',
} as const;

export const sections: readonly RecipeSection[] = [
  bass,
  { section: 'tenor', firstKey: 30, lastKey: 56, bridge: 'treble', frontTermination: 'pressure bar' },
  { section: 'treble', firstKey: 57, lastKey: 85, bridge: 'treble', frontTermination: 'pressure bar' },
];

export const unisons: readonly RecipeUnisons[] = [
  { firstKey: 1, lastKey: 4, strings: 1, winding: 'wound', layers: 2 },
  { firstKey: 5, lastKey: 9, strings: 1, winding: 'wound', layers: 1 },
  { firstKey: 10, lastKey: 32, strings: 2, winding: 'wound', layers: 1 },
  { firstKey: 33, lastKey: 85, strings: 3, winding: 'plain', layers: 0 },
];

function longBridge_mm(key: number): number {
  const even = 58.5 * 2 ** ((85 - key) / 13);
  const bend = Math.exp(-0.0011 * Math.max(0, 41 - key) ** 2);
  const strut = key >= 57 ? 1 : 0.99;
  return even * bend * strut;
}

export const recipe: Recipe = {
  lattice: METRIC_WIRE_SIZES,
  sections,
  unisons,
  sizesFrom: [
    [1, 22],
    [4, 21.5],
    [7, 20.5],
    [10, 18.5],
    [14, 18],
    [19, 17.5],
    [30, 15.5],
    [33, 19.5],
    [35, 18.5],
    [37, 18],
    [39, 17.5],
    [43, 17],
    [49, 16.5],
    [55, 16],
    [61, 15.5],
    [67, 15],
    [74, 14.5],
    [80, 14],
  ],
  speakingLength_mm: (key) =>
    key <= bass.lastKey ? 1212 - 7.2 * (key - 1) - 0.12 * (key - 1) ** 2 : longBridge_mm(key),
  woundTension_n: (key) =>
    key <= 9
      ? between(key, { firstKey: 1, lastKey: 9 }, 1020, 890)
      : key <= bass.lastKey
        ? between(key, { firstKey: 10, lastKey: 29 }, 790, 690)
        : between(key, { firstKey: 30, lastKey: 32 }, 700, 690),
  frontLength_mm: (key) => (key <= 29 ? 118 - 1.1 * key : 55 + ((85 - key) * 60) / 55),
  backLength_mm: (key) => (key <= 29 ? 104 - 0.8 * key : 44 + ((85 - key) * 58) / 55),
  bareFront_mm: (key) => 17 - 0.15 * key,
  bareBack_mm: (key) => 13 - 0.1 * key,
  pinDiameter_mm: () => 7.0,
};

export const job = {
  title: 'An invented vertical of 1.2 m (example)',
  customer: 'nobody: this piano does not exist',
  piano: {
    form: 'vertical',
    size_m: 1.2,
    firstKey: 1,
    lastKey: 85,
    maker: 'invented',
    model: 'example of 1.2 m',
    year: 1911,
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
        text: 'Grey felt, 5 mm, under the back lengths, eaten by moths along keys 8 to 15.',
      },
    },
    {
      thing: 'felts',
      place: { section: 'tenor' },
      answer: { is: 'known', text: 'Red felt, 3 mm, above the pressure bar and behind the bridge.' },
    },
    { thing: 'punchings', place: {}, answer: { is: 'none' } },
    {
      thing: 'bars',
      place: { section: 'tenor' },
      answer: { is: 'known', text: 'Pressure bar, five screws, 14 mm above the plate at both ends.' },
    },
    {
      thing: 'loops',
      place: { section: 'treble' },
      answer: { is: 'known', text: 'Looped across the notes; the highest string of A7 is tied.' },
    },
  ],
} as const;
