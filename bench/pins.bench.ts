import {
  COMMON_TORQUE_ACCURACY,
  gripEstimate,
  lowPinPattern,
  meanInterval,
  newtonMetres,
  predictedGrip,
  sectionMean,
  seededChance,
  type TorqueReading,
  testPinLaw,
} from '@becket/core';
import type { Job, StandingReading } from '@becket/journal';
import { decisionAdvice, openDemoJob, pinChoice, pinTorqueMap } from '@becket/tasks';
import { seededRandom } from '../packages/core/src/evidence/testing/seeded-random.ts';
import { pinFieldOf } from '../packages/tasks/src/appraise/pin-field.ts';
import { pinPulls } from '../packages/tasks/src/appraise/pin-pulls.ts';
import { memoryContext } from '../packages/tasks/src/testing/memory-context.ts';
import { type BenchTopic, type Figure, timed } from './harness.ts';

const BLOCKS = 1000;
type Random = ReturnType<typeof seededRandom>;

/** How the grip of the pins of a section scatters: invented, from even to a block with loose pins in it. */
const scatters: Readonly<Record<string, (random: Random) => number>> = {
  normal: ({ normal }) => 14 + 3 * normal(),
  skewed: ({ normal }) => 5 + 8 * Math.exp(0.4 * normal()),
  'one in eight loose': ({ normal, uniform }) => (uniform() < 0.125 ? 6 + normal() : 15 + 1.5 * normal()),
};

const share = (count: number, of: number): number => (100 * count) / of;
const MEAN_AIM = '93 to 97 %';

/** Share of intervals from `read` pins of a section of 60 that hold the mean of all 60; readings exact. */
function samplingCoverage(name: keyof typeof scatters, read: number): Figure {
  const random = seededRandom(100 + read);
  let [covered, tried] = [0, 0];
  for (let block = 0; block < BLOCKS; block += 1) {
    const pins = Array.from({ length: 60 }, () => scatters[name]!(random));
    const truth = pins.reduce((sum, one) => sum + one, 0) / pins.length;
    const start = random.uniform();
    const taken = Array.from(
      { length: read },
      (_, index) => pins[Math.floor(((index + start) * 60) / read)]!,
    );
    const { interval } = sectionMean(
      taken.map((grip) => ({
        grip: newtonMetres(grip),
        ownUncertainty: newtonMetres(0),
        sharedUncertainty: newtonMetres(0),
      })),
      { pins: 60, random: seededChance(block) },
    );
    if (interval === undefined) continue;
    tried += 1;
    if (interval.low <= truth && truth <= interval.high) covered += 1;
  }
  return {
    name: `mean of a section of 60, ${name}, ${read} read: intervals that hold it`,
    value: share(covered, tried),
    unit: '%',
    runs: tried,
    aim: MEAN_AIM,
  };
}

/** Without what a section takes off and a wrench adds, of an endless population. */
function plainCoverage(name: keyof typeof scatters, read: number): Figure {
  const random = seededRandom(200 + read);
  const truth =
    Array.from({ length: 50_000 }, () => scatters[name]!(random)).reduce((sum, one) => sum + one, 0) / 50_000;
  let [covered, tried] = [0, 0];
  for (let block = 0; block < BLOCKS; block += 1) {
    const interval = meanInterval(
      Array.from({ length: read }, () => scatters[name]!(random)),
      { random: seededChance(block) },
    );
    if (interval === undefined) continue;
    tried += 1;
    if (interval.low <= truth && truth <= interval.high) covered += 1;
  }
  return {
    name: `interval of a mean, ${name}, ${read} readings: intervals that hold the mean`,
    value: share(covered, tried),
    unit: '%',
    runs: tried,
    aim: MEAN_AIM,
  };
}

const ways = ['sharp', 'both ways', 'slack', 'each in its own way'] as const;

/**
 * The whole path on invented blocks: grips are drawn, read with a wrench that is off, a hand that scatters, friction and a
 * tension that is not quite the computed one, kept as readings of a job, and mapped. Is the true mean of all pins of a section
 * in its interval? Each block in another way.
 */
function wholePath(job: Job): Figure[] {
  const random = seededRandom(4);
  const field = pinFieldOf(job);
  const pullOf = pinPulls(job, 'as found');
  const pulls = field.pins.map(({ key, string }) => pullOf(key, string));
  const accuracy = COMMON_TORQUE_ACCURACY;
  const evenly = (limit: number) => limit * (2 * random.uniform() - 1);
  const held = new Map(ways.map((way) => [way, { covered: 0, tried: 0 }]));
  for (let block = 0; block < BLOCKS; block += 1) {
    const way = ways[block % ways.length]!;
    const wrench = 1 + evenly(accuracy.wrenchLimit);
    const friction = evenly(accuracy.frictionLimit);
    const middles = new Map(field.sections.map(({ section }) => [section, 12 + 6 * random.uniform()]));
    const grips = field.pins.map(({ section }) => middles.get(section ?? '')! + 2 * random.normal());
    const every = 4 + (block % 3);
    const readings = field.pins.flatMap(({ key, string }, index): StandingReading[] => {
      const known = pulls[index];
      if (index % every !== block % every || known === undefined) return [];
      const pull = known.pull + known.standardUncertainty * random.normal();
      const sharp = ['sharp', grips[index]! + pull * (1 + friction)] as const;
      const flat = ['flat', grips[index]! - pull * (1 - friction)] as const;
      const own = way === 'each in its own way' ? ways[index % 3]! : way;
      const read =
        own === 'sharp' ? [sharp] : own === 'both ways' ? [sharp, flat] : [['slack', grips[index]!] as const];
      return read.map(([turning, torque]) =>
        reading({ key, string }, torque * wrench * (1 + accuracy.handScatter * random.normal()), turning),
      );
    });
    const map = pinTorqueMap({ ...job, readings: [...job.readings, ...readings] }, { seed: block });
    for (const { section, mean } of map.sections) {
      if (mean?.interval === undefined) continue;
      const own = grips.filter((_, index) => field.pins[index]!.section === section);
      const truth = own.reduce((sum, one) => sum + one, 0) / own.length;
      const count = held.get(way)!;
      count.tried += 1;
      if (mean.interval.low <= truth && truth <= mean.interval.high) count.covered += 1;
    }
  }
  return ways.map((way) => {
    const { covered, tried } = held.get(way)!;
    return {
      name: `whole path, read ${way}: section intervals that hold the mean`,
      value: share(covered, tried),
      unit: '%',
      runs: tried,
      aim: MEAN_AIM,
    };
  });
}

function reading(
  place: { key: number; string: number },
  torque: number,
  turning: TorqueReading['turning'],
): StandingReading {
  const value = Math.max(0, torque);
  return {
    kind: 'reading',
    v: 1,
    quantity: 'pin-torque',
    place,
    value_si: value,
    asRead: { value, unit: 'N·m' },
    origin: 'measured',
    stage: 'as found',
    condition: turning === 'slack' ? { strings: 'let down' } : { strings: 'on', turning },
    entry: '00000000000000000000000000' as StandingReading['entry'],
    step: 1,
    at: '2026-03-01T10:00:00Z',
    by: 'bench',
  };
}

const sections = [
  { section: 'bass', firstKey: 1, lastKey: 26 },
  { section: 'tenor', firstKey: 27, lastKey: 50 },
  { section: 'low treble', firstKey: 51, lastKey: 68 },
  { section: 'high treble', firstKey: 69, lastKey: 88 },
];
const pins = Array.from({ length: 88 }, (_, index) => index + 1).flatMap((key) =>
  Array.from({ length: key <= 10 ? 1 : key <= 30 ? 2 : 3 }, (_, string) => ({ key, string: string + 1 })),
);

/**
 * Invented fields with a true pattern: pins in it are low with `inside`, the others with `outside`. How often is it named
 * rightly, and how often is any pattern named?
 */
function patternFigures(
  name: string,
  {
    isIn,
    kind,
    every,
    inside = 0.8,
    outside = 0.1,
  }: {
    readonly isIn: (pin: { key: number; string: number }, random: Random) => boolean;
    readonly kind: string;
    readonly every: number;
    readonly inside?: number;
    readonly outside?: number;
  },
): Figure[] {
  const fields = 200;
  let [named, rightly] = [0, 0];
  for (let field = 0; field < fields; field += 1) {
    const random = seededRandom(1000 + field);
    const read = pins.filter((_, index) => index % every === field % every);
    const shift = random.uniform();
    const own = { ...random, uniform: () => shift };
    const pattern = lowPinPattern(
      read.map((pin) => ({ ...pin, isLow: random.uniform() < (isIn(pin, own) ? inside : outside) })),
      { sections, random: seededChance(field), shuffles: 199 },
    );
    if (pattern.region === undefined) continue;
    named += 1;
    if (pattern.kind === kind) rightly += 1;
  }
  const base = `pattern ${name}, every ${every === 1 ? 'pin' : `${every}. pin`} read`;
  return kind === ''
    ? [
        {
          name: `${base}: a pattern named all the same`,
          value: share(named, fields),
          unit: '%',
          runs: fields,
          aim: 'about 5 %',
        },
      ]
    : [
        { name: `${base}: some pattern named`, value: share(named, fields), unit: '%', runs: fields },
        { name: `${base}: named rightly`, value: share(rightly, fields), unit: '%', runs: fields },
      ];
}

/** A block that is loose all over: is a zone that is looser still named, and is none named where there is none? */
function looseBlockFigures(every: number): Figure[] {
  const fields = 200;
  return [true, false].map((hasZone) => {
    let named = 0;
    for (let field = 0; field < fields; field += 1) {
      const random = seededRandom(5000 + field);
      const first = 29 + 30 * random.uniform();
      const read = pins.filter((_, index) => index % every === field % every);
      const pattern = lowPinPattern(
        read.map((pin) => {
          const isIn = hasZone && pin.key >= first && pin.key < first + 12;
          const grip = newtonMetres(Math.max(0, (isIn ? 6 : 10) + 2 * random.normal()));
          return { ...pin, grip, isLow: grip < 13.6 };
        }),
        { sections, random: seededChance(field), shuffles: 199 },
      );
      if (pattern.region !== undefined) named += 1;
    }
    return {
      name: `loose block ${hasZone ? 'with a looser run of 12 notes' : 'alike all over'}, every ${every}. pin read: a pattern named`,
      value: share(named, fields),
      unit: '%',
      runs: fields,
      ...(hasZone ? {} : { aim: 'about 5 %' }),
    };
  });
}

/** Grip gained by test pins on invented holes: does the interval of the next hole hold what it then has? */
function testPinCoverage(count: number): Figure {
  const random = seededRandom(300 + count);
  const law = (larger: number) => 22_000 * larger + 0.8 * random.normal();
  let covered = 0;
  for (let block = 0; block < BLOCKS; block += 1) {
    const steps = Array.from({ length: count }, () => {
      const larger = (0.08 + 0.2 * random.uniform()) / 1000;
      return { larger: larger as never, gripGained: newtonMetres(law(larger)) };
    });
    const larger = (0.08 + 0.2 * random.uniform()) / 1000;
    const predicted = predictedGrip(testPinLaw(steps)!, { grip: newtonMetres(9), larger: larger as never });
    const truth = 9 + law(larger);
    if (predicted.interval.low <= truth && truth <= predicted.interval.high) covered += 1;
  }
  return {
    name: `next hole after ${count} test pins: intervals that hold its grip`,
    value: share(covered, BLOCKS),
    unit: '%',
    runs: BLOCKS,
    aim: '93 to 97 %',
  };
}

export const topic: BenchTopic = {
  name: 'pins',
  run: async () => {
    const job = await openDemoJob(memoryContext());
    const pullOf = pinPulls(job, 'as found');
    const readEvery = (every: number): Job => ({
      ...job,
      readings: [
        ...job.readings,
        ...pinFieldOf(job).pins.flatMap((pin, index) =>
          index % every === 0
            ? [reading(pin, 14 + (index % 7) + (pullOf(pin.key, pin.string)?.pull ?? 0), 'sharp')]
            : [],
        ),
      ],
    });
    const [few, all] = [readEvery(6), readEvery(1)];
    return [
      timed('torque map, every 6th pin read', () => pinTorqueMap(few), { aim: 'under 100 ms' }),
      timed('torque map, every pin read', () => pinTorqueMap(all), { runs: 7, aim: 'under 500 ms' }),
      timed('pin choice, every 6th pin read', () => pinChoice(few), { aim: 'under 100 ms' }),
      timed('decision advice, every 6th pin read', () => decisionAdvice(few), { aim: 'under 100 ms' }),
      ...Object.keys(scatters).flatMap((name) => [3, 8, 12].map((read) => plainCoverage(name, read))),
      ...Object.keys(scatters).flatMap((name) => [
        samplingCoverage(name, 8),
        samplingCoverage(name, 12),
        samplingCoverage(name, 30),
      ]),
      ...wholePath(job),
      testPinCoverage(2),
      testPinCoverage(4),
      testPinCoverage(8),
      ...[2, 3, 5].flatMap((every) => [
        ...patternFigures('of low pins by lot', { isIn: () => false, kind: '', every, outside: 0.25 }),
        ...patternFigures('of one section', {
          isIn: ({ key }) => key >= 51 && key <= 68,
          kind: 'one section',
          every,
        }),
        ...patternFigures('beside the struts', {
          isIn: ({ key }) => [1, 2, 25, 26, 27, 28, 49, 50, 51, 52, 67, 68, 69, 70, 87, 88].includes(key),
          kind: 'along the flange',
          every,
        }),
        ...patternFigures('of a run of 12 notes', {
          isIn: ({ key }, { uniform }) => key >= 29 + 30 * uniform() && key < 41 + 30 * uniform(),
          kind: 'a line inside the field',
          every,
        }),
        ...patternFigures('of a row', {
          isIn: ({ key, string }) => key > 30 && string === 2,
          kind: 'a line inside the field',
          every,
        }),
      ]),
      ...[2, 5].flatMap(looseBlockFigures),
      {
        name: 'grip of one sharp-going reading of 14 N·m, pull 3 ± 0.1: standard uncertainty',
        value: gripEstimate([{ torque: newtonMetres(14), turning: 'sharp' }], {
          pull: newtonMetres(3),
          standardUncertainty: newtonMetres(0.1),
        })!.standardUncertainty,
        unit: 'N·m',
      },
    ];
  },
};
