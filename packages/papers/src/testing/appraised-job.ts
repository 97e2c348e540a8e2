import { type Entry, type Fact, type FactOf, foldJob, type Job, siFromRead } from '@becket/journal';

/*
 * An invented grand of 60 strings at the end of its appraisal: surveyed with every kind of answer, measured, decided and
 * priced. No real instrument, person or shop.
 */

const idOf = (number: number): string => `01APP${String(number).padStart(21, '0')}`;
const digestOf = (letter: string): string => letter.repeat(64);

const described: Fact[] = [
  { kind: 'job-opened', v: 1, title: 'Practice grand, music school', customer: 'Ines Okafor' },
  {
    kind: 'piano-described',
    v: 1,
    form: 'grand',
    size_m: 1.75,
    firstKey: 21,
    lastKey: 44,
    maker: 'no name on the fallboard',
    year: 1926,
    referencePitch_hz: 440,
  },
  {
    kind: 'section-described',
    v: 1,
    section: 'bass',
    firstKey: 21,
    lastKey: 32,
    bridge: 'bass',
    frontTermination: 'agraffe',
  },
  {
    kind: 'section-described',
    v: 1,
    section: 'treble',
    firstKey: 33,
    lastKey: 44,
    bridge: 'treble',
    frontTermination: 'capo',
  },
  { kind: 'unisons-described', v: 1, firstKey: 21, lastKey: 32, strings: 2, winding: 'wound', layers: 1 },
  { kind: 'unisons-described', v: 1, firstKey: 33, lastKey: 44, strings: 3, winding: 'plain', layers: 0 },
];

const photo = (letter: string, section: string, shows: string): Fact => ({
  kind: 'photo',
  v: 1,
  digest: digestOf(letter),
  mediaType: 'image/jpeg',
  bytes: 120_000,
  width: 1600,
  height: 1200,
  place: { section },
  shows,
  marks: [],
});

const survey: Fact[] = [
  photo('a', 'treble', 'bridge from above'),
  photo('b', 'bass', 'old shim in the board'),
  {
    kind: 'finding',
    v: 1,
    thing: 'bridge-cracks',
    place: { section: 'treble', key: 40 },
    answer: {
      is: 'seen',
      what: 'a crack runs through the pins of three notes',
      gravity: 'grave',
      whatToDo: 'before stringing',
      extent_m: 0.062,
    },
    photos: [digestOf('a')],
  },
  { kind: 'finding', v: 1, thing: 'bridge-cap', place: {}, answer: { is: 'sound' } },
  {
    kind: 'finding',
    v: 1,
    thing: 'board-repairs',
    place: { section: 'bass' },
    answer: {
      is: 'seen',
      what: 'an old shim along the third rib',
      gravity: 'slight',
      whatToDo: 'nothing',
      repair: 'cannot tell',
    },
    photos: [digestOf('b')],
  },
  {
    kind: 'finding',
    v: 1,
    thing: 'board-cracks',
    place: {},
    answer: { is: 'sound', note: 'looked at with a lamp' },
  },
  {
    kind: 'finding',
    v: 1,
    thing: 'block-layers',
    place: {},
    answer: { is: 'could not be seen', note: 'the plate covers it' },
  },
  { kind: 'finding', v: 1, thing: 'plate-cracks', place: {}, answer: { is: 'sound' } },
  { kind: 'finding', v: 1, thing: 'pressure-bar', place: {}, answer: { is: 'does not apply' } },
  {
    kind: 'finding',
    v: 1,
    thing: 'dampers',
    place: { section: 'treble' },
    answer: {
      is: 'seen',
      what: 'the felts are hard',
      gravity: 'clear',
      whatToDo: 'while the strings are off',
    },
  },
];

const read = (
  quantity: Extract<Fact, { kind: 'reading' }>['quantity'],
  key: number | undefined,
  [value, unit]: readonly [number, Parameters<typeof siFromRead>[1]],
  more: Partial<Extract<Fact, { kind: 'reading' }>> = {},
): Fact => ({
  kind: 'reading',
  v: 1,
  quantity,
  place: key === undefined ? {} : { key, string: 1 },
  value_si: siFromRead(value, unit),
  asRead: { value, unit },
  origin: 'measured',
  stage: 'as found',
  ...more,
});

const measured: Fact[] = [
  read('relative-humidity', undefined, [41, '%']),
  read('temperature', undefined, [20.5, '°C']),
  ...[24, 33, 44].map((key, index) => read('pitch-offset', key, [[-38, -31, -45][index]!, 'cents'])),
  ...Array.from({ length: 24 }, (_, index) =>
    read('pin-torque', 21 + index, [8 + ((index * 7) % 11), 'N·m'], { condition: { strings: 'let down' } }),
  ),
  ...[21, 30, 40].map((key) => read('pin-diameter', key, [6.99, 'mm'])),
];

const decision: Fact = {
  kind: 'decision-made',
  v: 1,
  verdict: 'go with conditions',
  conditions: ['The treble bridge is mended before new strings go on.', 'A test pin holds in the treble.'],
  because: 'The plate is sound and the board rings; the bridge can be mended.',
  advised: 'go with conditions',
};

const hour = 6800;
const estimate: FactOf<'estimate-made'> = {
  kind: 'estimate-made',
  v: 1,
  version: 1,
  currency: 'EUR',
  pricesIncludeTax: false,
  lines: [
    {
      id: 'stringing',
      group: 'labour',
      what: 'Put on the new strings',
      amount: { by: 'time', minutes: 510, hourlyRateMinorUnits: hour },
      taxRate_basisPoints: 1900,
    },
    {
      id: 'mend-bridge',
      group: 'labour',
      what: 'Mend the treble bridge',
      amount: { by: 'time', minutes: 375, hourlyRateMinorUnits: hour },
      taxRate_basisPoints: 1900,
    },
    {
      id: 'bass-strings',
      group: 'materials',
      what: 'Wound strings, made to order',
      amount: { by: 'quantity', quantity_thousandths: 24_000, unit: 'strings', unitPriceMinorUnits: 1490 },
      taxRate_basisPoints: 1900,
    },
    {
      id: 'plain-wire',
      group: 'materials',
      what: 'Plain wire',
      amount: { by: 'quantity', quantity_thousandths: 385, unit: 'kg', unitPriceMinorUnits: 5999 },
      taxRate_basisPoints: 1900,
    },
    {
      id: 'carriage',
      group: 'other',
      what: 'Carriage to the workshop and back',
      amount: { by: 'quantity', quantity_thousandths: 1000, unit: 'trip', unitPriceMinorUnits: 18_000 },
      taxRate_basisPoints: 700,
    },
    {
      id: 'if-block',
      group: 'labour',
      what: 'Mend the pin block',
      amount: { by: 'time', minutes: 960, hourlyRateMinorUnits: hour },
      taxRate_basisPoints: 1900,
      ifFound: 'layers of the pin block part',
    },
    {
      id: 'if-shim',
      group: 'labour',
      what: 'Shim the board anew',
      amount: { by: 'time', minutes: 140, hourlyRateMinorUnits: hour },
      taxRate_basisPoints: 1900,
      ifFound: 'the old shim does not hold',
    },
  ],
  validUntil: '2026-06-30',
  workingDays: 12,
};

export interface AppraisedJobOptions {
  /** How far the estimate has come: not made, made, accepted, or accepted and then made anew. */
  readonly estimate?: 'none' | 'made' | 'accepted' | 'made anew';
  /** Left out for a job of which nothing but its opening is known. */
  readonly isEmpty?: boolean;
}

export function appraisedJob({ estimate: stage = 'made', isEmpty = false }: AppraisedJobOptions = {}): Job {
  if (isEmpty) return foldJob(entriesOf([{ kind: 'job-opened', v: 1, title: 'A visit' }]));
  const before = [...described, ...survey, ...measured, decision];
  const accepted: Fact = {
    kind: 'estimate-answered',
    v: 1,
    estimate: idOf(before.length + 1),
    answer: 'accepted',
    name: 'Ines Okafor',
    on: '2026-05-06',
    conditionalLines: ['if-shim'],
    note: 'Please before the autumn term.',
  };
  const second: Fact = {
    ...estimate,
    version: 2,
    lines: estimate.lines.filter(({ id }) => id !== 'carriage'),
    note: 'The carriage is arranged by the school.',
  };
  const stages = {
    none: [],
    made: [estimate],
    accepted: [estimate, accepted],
    'made anew': [estimate, accepted, second],
  };
  return foldJob(entriesOf([...before, ...stages[stage]]));
}

const entriesOf = (facts: readonly Fact[]): Entry[] =>
  facts.map((fact, index) => ({
    id: idOf(index + 1),
    job: idOf(0),
    step: index + 1,
    at: '2026-05-04T08:00:00.000Z',
    by: 'Ada',
    device: 'visit phone',
    fact,
  }));
