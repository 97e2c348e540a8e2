import { metres } from '@becket/core';
import {
  type Entry,
  type Fact,
  type FactOf,
  foldHandOver,
  foldJob,
  foldSettling,
  type Job,
  passPlan,
  type ReadingQuantityName,
  type ReadUnit,
  scaleDigest,
  settlingLimits,
  siFromRead,
  strungScale,
} from '@becket/journal';
import type { HandOverFigures } from '../hand-over-record/hand-over-figures.ts';
import type { SettlingFigures } from '../settling-log/settling-figures.ts';
import { smallJournal } from './small-job.ts';

/*
 * The invented practice piano after it was restrung: two passes and the beginning of a third, a string that broke, follow-ups
 * done and to come, three wires measured, and the hand-over. No real instrument, person or shop.
 */

const idOf = (number: number): string => `01SET${String(number).padStart(21, '0')}`;

/** Ids of the passes, in their order. */
const passIds = [idOf(1), idOf(2), idOf(3)] as const;

const pass = (number: 1 | 2 | 3, on: string, air: Partial<FactOf<'pass-begun'>>): Fact => ({
  kind: 'pass-begun',
  v: 1,
  pass: number,
  on,
  referencePitch_hz: 440,
  order: ['tenor', 'bass'],
  ...air,
});

const read = (
  number: 1 | 2 | 3,
  value: FactOf<'pass-read'>['value'],
  section: string,
  offset_cents: number,
  key?: number,
): Fact => ({
  kind: 'pass-read',
  v: 1,
  passBegun: passIds[number - 1]!,
  value,
  section,
  offset_cents,
  ...(key === undefined ? {} : { key }),
});

const strung = (key: number, quantity: ReadingQuantityName, value: number, unit: ReadUnit = 'mm'): Fact => ({
  kind: 'reading',
  v: 1,
  quantity,
  place: { key },
  value_si: siFromRead(value, unit),
  asRead: { value, unit },
  origin: 'measured',
  stage: 'as strung',
  ...(quantity === 'bearing-rise' ? { span_m: 0.1, loaded: true } : {}),
});

const facts: readonly Fact[] = [
  pass(1, '2026-03-05', { temperature_c: 20.5, relativeHumidity_percent: 48 }),
  pass(2, '2026-03-07', { temperature_c: 21 }),
  pass(3, '2026-03-09', {}),
  // Tenor: up from −62 to +8, found at −10: 18 of 70 lost. Bass: −40 to 0, found at −6: 6 of 40.
  read(1, 'before', 'tenor', -60, 27),
  read(1, 'before', 'tenor', -64, 30),
  read(1, 'aimed', 'tenor', 8),
  read(1, 'after', 'tenor', 8),
  read(1, 'before', 'bass', -40),
  read(1, 'after', 'bass', 0),
  read(2, 'before', 'tenor', -10),
  read(2, 'aimed', 'tenor', 3),
  read(2, 'after', 'tenor', 3),
  read(2, 'before', 'bass', -6),
  read(2, 'after', 'bass', 1),
  read(3, 'before', 'tenor', -1),
  {
    kind: 'pass-mishap',
    v: 1,
    passBegun: passIds[0],
    what: 'broke',
    key: 29,
    string: 2,
    note: 'at the pin; a new wire is on',
  },
  { kind: 'follow-up-planned', v: 1, on: '2026-03-08', what: 'a look' },
  { kind: 'follow-up-planned', v: 1, on: '2026-04-08', what: 'tuning', note: 'before Easter' },
  { kind: 'follow-up-done', v: 1, followUp: idOf(17), on: '2026-03-08', relativeHumidity_percent: 47 },
  strung(27, 'wire-diameter', 1.075),
  strung(28, 'wire-diameter', 1.05),
  strung(30, 'wire-diameter', 1.025),
  // Nobody has read a length of the highest note: its wire is known, and no more.
  strung(31, 'wire-diameter', 1),
  strung(28, 'bearing-rise', 0.6),
  strung(30, 'bearing-rise', 0.4),
];

const handedOver: Fact = {
  kind: 'handed-over',
  v: 1,
  to: 'Ines Okafor',
  on: '2026-03-10',
  signedBy: 'Ada',
  cautions: ['New strings stretch: the piano goes flat several times in its first year.'],
  aftercare: { climate: '40 to 55 % relative humidity', tuneOn: ['2026-04-08', '2026-07-01'] },
  leftAlone: [{ what: 'The damper felt', because: 'it damps well, and was not ordered' }],
  deviations: [{ what: 'E3, wire: 1.050 mm measured, 1.063 mm chosen.' }],
  stillOpen: ['Pin torque was not read on the new strings: bass, tenor.'],
};

/** The journal; handed over or not. */
export function settledJournal({ isHandedOver = true } = {}): Entry[] {
  const before = smallJournal({ sealed: true });
  const { job } = before[0]!;
  return [
    ...before,
    ...[...facts, ...(isHandedOver ? [handedOver] : [])].map((fact, index) => ({
      id: idOf(index + 1),
      job,
      step: before.length + index + 1,
      at: '2026-03-10T09:00:00.000Z',
      by: 'Ada',
      device: 'bench tablet',
      fact,
    })),
  ];
}

export const settledJob = (entries: readonly Entry[] = settledJournal()): Job => foldJob(entries);

/** What the settling log is handed; the remark stands for those that a task makes. */
export function settledFigures(entries: readonly Entry[] = settledJournal()): SettlingFigures {
  const job = foldJob(entries);
  const settling = foldSettling(entries);
  return {
    settling,
    plan: passPlan(job, settling, settlingLimits(job)),
    remarks: ['bass: where it stands was foretold (for a test).'],
    today: '2026-03-10',
  };
}

/** What the hand-over record is handed; sentences and torque stand for those that a task makes. */
export function handOverTestFigures(entries: readonly Entry[] = settledJournal()): HandOverFigures {
  const job = foldJob(entries);
  const handOver = foldHandOver(entries);
  const scale = strungScale(job);
  return {
    handOver,
    scale,
    wanted: new Map(),
    scaleDigest: scaleDigest(job, { notes: scale.notes.map(({ note }) => note) }),
    changedSince: undefined,
    done: ['3 passes were made (for a test).'],
    deviations: handOver?.deviations ?? [],
    stillOpen: handOver?.stillOpen ?? ['Nobody has read the torque (for a test).'],
    torque: [],
    bearing: [
      { section: 'bass', angles: undefined, rises: [] },
      {
        section: 'tenor',
        angles: undefined,
        rises: [
          {
            read: 2,
            mean: metres(0.0005),
            lowest: metres(0.0004),
            highest: metres(0.0006),
            span: metres(0.1),
          },
        ],
      },
    ],
    pitch: [
      { section: 'bass', left: { offset_cents: 1, pass: 2, on: '2026-03-07' }, read: [] },
      {
        section: 'tenor',
        left: { offset_cents: 3, pass: 2, on: '2026-03-07' },
        read: [{ key: 28, offset_cents: -0.5, at: '2026-03-10T09:00:00.000Z' }],
      },
    ],
    settling: foldSettling(entries),
  };
}
