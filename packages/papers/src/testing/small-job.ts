import {
  type Entry,
  type Fact,
  foldJob,
  type Job,
  type ReadingQuantityName,
  type ReadUnit,
  sealOf,
  siFromRead,
} from '@becket/journal';

/*
 * An invented practice piano of twelve notes: two notes with two layers, five with one, five plain; with every kind of
 * answer a paper has to tell apart. No real instrument, person or shop.
 */

/** Ids in order of writing: 26 characters that differ in their number. */
const idOf = (number: number): string => `01SMA${String(number).padStart(21, '0')}`;

export interface SmallJobOptions {
  readonly sealed?: boolean;
}

/** Facts of the small piano in the order they were written. */
function facts(): Fact[] {
  const all: Fact[] = [
    { kind: 'job-opened', v: 1, title: 'Practice piano, north room', customer: 'Ines Okafor' },
    {
      kind: 'piano-described',
      v: 1,
      form: 'vertical',
      size_m: 1.2,
      firstKey: 20,
      lastKey: 31,
      maker: 'no name on the fallboard',
      year: 1931,
      referencePitch_hz: 440,
    },
    {
      kind: 'section-described',
      v: 1,
      section: 'bass',
      firstKey: 20,
      lastKey: 26,
      bridge: 'bass',
      frontTermination: 'agraffe',
    },
    {
      kind: 'section-described',
      v: 1,
      section: 'tenor',
      firstKey: 27,
      lastKey: 31,
      bridge: 'treble',
      frontTermination: 'pressure bar',
    },
    { kind: 'unisons-described', v: 1, firstKey: 20, lastKey: 21, strings: 1, winding: 'wound', layers: 2 },
    { kind: 'unisons-described', v: 1, firstKey: 22, lastKey: 26, strings: 2, winding: 'wound', layers: 1 },
    { kind: 'unisons-described', v: 1, firstKey: 27, lastKey: 30, strings: 3, winding: 'plain', layers: 0 },
  ];
  const read = (
    key: number,
    quantity: ReadingQuantityName,
    values: readonly number[],
    unit: ReadUnit = 'mm',
    more: Partial<Extract<Fact, { kind: 'reading' }>> = {},
  ) => {
    for (const value of values) {
      all.push({
        kind: 'reading',
        v: 1,
        quantity,
        place: { key },
        value_si: siFromRead(value, unit),
        asRead: { value, unit },
        origin: 'measured',
        stage: 'as found',
        ...more,
      });
    }
  };
  for (let key = 20; key <= 26; key += 1) {
    const step = key - 20;
    // Key 22 has no core reading: it is said to be unknown below. Key 25 was never read over all.
    if (key !== 22) read(key, 'core-diameter', [1.2 - 0.025 * step, 1.21 - 0.025 * step]);
    if (key < 22) read(key, 'inner-layer-diameter', [1.7 - 0.05 * step]);
    if (key !== 25)
      read(key, 'over-all-diameter', [2.3 - 0.14 * step, 2.32 - 0.14 * step, 2.31 - 0.14 * step]);
    read(key, 'speaking-length', [1105.5 - 14 * step, 1106 - 14 * step]);
    if (key !== 24) read(key, 'bare-front', [18.5]);
    read(key, 'bare-back', [14 + step / 2]);
  }
  read(20, 'winding-length', [1073]);
  read(21, 'winding-length', [1030]);
  read(20, 'loop-to-winding', [92]);
  read(20, 'hitch-pin-diameter', [4.1]);
  for (let key = 27; key <= 30; key += 1) {
    const step = key - 27;
    if (key !== 29)
      read(key, 'wire-diameter', [1.075 - 0.012 * step, 1.07 - 0.012 * step, 1.085 - 0.012 * step]);
    read(key, 'speaking-length', [1010 - 42 * step, 1011.5 - 42 * step]);
  }
  read(29, 'wire-diameter', [0.041], 'in', { origin: 'stamped' });
  read(27, 'pin-torque', [9.5], 'N·m', { condition: { strings: 'on', turning: 'sharp' } });
  read(27, 'pin-torque', [60], 'in·lbf', { condition: { strings: 'on', turning: 'flat' } });
  read(23, 'pin-diameter', [6.99]);
  const seen = (
    thing: Extract<Fact, { kind: 'observation' }>['thing'],
    section: string | undefined,
    answer: Extract<Fact, { kind: 'observation' }>['answer'],
  ) =>
    all.push({ kind: 'observation', v: 1, thing, place: section === undefined ? {} : { section }, answer });
  all.push(
    {
      kind: 'reading-absent',
      v: 1,
      quantity: 'core-diameter',
      place: { key: 22 },
      answer: 'unknown',
      reason: 'wound to the loop at both ends, core not to be reached',
    },
    { kind: 'reading-absent', v: 1, quantity: 'bare-front', place: { key: 24 }, answer: 'none' },
    {
      kind: 'reading-absent',
      v: 1,
      quantity: 'front-length',
      place: { section: 'tenor' },
      answer: 'does not apply',
    },
    { kind: 'winding-described', v: 1, key: 20, loopStyle: 'twisted loop', twist: 'right' },
    { kind: 'size-stamp', v: 1, key: 29, on: 'bridge', text: '18', lattice: 'US', says: 'starts here' },
    {
      kind: 'wire-path',
      v: 1,
      strings: [
        { key: 27, string: 1 },
        { key: 27, string: 2 },
      ],
      joined: 'looped',
      hitchPin: '1',
    },
    {
      kind: 'soft-part',
      v: 1,
      part: 'felt',
      section: 'bass',
      answer: { is: 'known', thickness_m: 0.004, colour: 'red', where: 'between agraffes and pins' },
    },
    { kind: 'soft-part', v: 1, part: 'punchings', section: 'tenor', answer: { is: 'none' } },
    {
      kind: 'plate-part',
      v: 1,
      part: 'pressure bar',
      section: 'tenor',
      isMovable: true,
      distances: [{ from: 'the left strut', distance_m: 0.021 }],
    },
  );
  seen('felts', 'bass', { is: 'known', text: 'red felt 4 mm, worn through under three strings' });
  seen('punchings', 'bass', { is: 'known', text: 'green punchings under every hitch pin' });
  seen('bars', 'bass', { is: 'none' });
  seen('loops', 'bass', { is: 'known', text: 'every bass string has its own loop' });
  seen('bearing', undefined, { is: 'unknown', reason: 'board not reached from the back' });
  seen('felts', 'tenor', { is: 'does not apply', reason: 'agraffe rail without felt' });
  const remarked = (key: number, text: string) =>
    all.push({ kind: 'observation', v: 1, thing: 'remarks', place: { key }, answer: { is: 'known', text } });
  remarked(23, 'left string is a replacement');
  remarked(28, 'kinked at the pin');
  all.push({
    kind: 'readings-imported',
    v: 1,
    file: 'north-room.csv',
    digest: 'c0ffee'.padEnd(64, '1'),
    rows: 12,
    readings: 40,
    changedCells: [
      { row: 9, column: 'wire', found: '10.75', used: '1.075', reason: 'decimal point slipped' },
      { row: 11, column: 'length', found: '?', used: null, reason: 'not legible' },
    ],
  });
  return all;
}

/** The journal of the small piano: twelve notes, one of them not described, several gaps, three of them accepted. */
export function smallJournal({ sealed = false }: SmallJobOptions = {}): Entry[] {
  const entries: Entry[] = [];
  const add = (fact: Fact, at = '2026-03-02T09:30:00.000Z', by = 'Ada') => {
    const step = entries.length + 1;
    entries.push({ id: idOf(step), job: idOf(0), step, at, by, device: 'bench tablet', fact });
  };
  for (const fact of facts()) add(fact);
  for (const gap of ['core-diameter/F#2', 'bearing/bass', 'bearing/tenor']) {
    add(
      { kind: 'gap-accepted', v: 1, gap, reason: 'cannot be reached without taking the strings off' },
      '2026-03-03T15:00:00.000Z',
      'Bo',
    );
  }
  if (!sealed) return entries;
  add({ kind: 'sealed', v: 1, ...sealOf(entries) }, '2026-03-04T08:05:00.000Z', 'Ada');
  const replaced = entries.find(({ fact }) => {
    const { kind, quantity, place } = fact as Partial<Extract<Fact, { kind: 'reading' }>>;
    return kind === 'reading' && quantity === 'speaking-length' && place?.key === 30;
  })!;
  add(
    {
      kind: 'reading',
      v: 1,
      quantity: 'speaking-length',
      place: { key: 30 },
      value_si: 0.8845,
      asRead: { value: 884.5, unit: 'mm' },
      origin: 'measured',
      stage: 'as found',
      replaces: replaced.id,
      reason: 'read again from the bridge pin marks',
    },
    '2026-03-06T11:20:00.000Z',
    'Bo',
  );
  add(
    {
      kind: 'observation',
      v: 1,
      thing: 'spacing',
      place: { section: 'tenor' },
      answer: { is: 'known', text: '14 mm between unisons' },
    },
    '2026-03-06T11:40:00.000Z',
    'Bo',
  );
  return entries;
}

export const smallJob = (options: SmallJobOptions = {}): Job => foldJob(smallJournal(options));
