import { type Entry, type Fact, foldJob, type Job, type ReadingQuantityName } from '@becket/journal';

/**
 * An invented grand of 88 notes, complete and without an error, to see how papers run over many pages. Its lengths and
 * sizes follow smooth laws of our own; it stands for no instrument.
 */
export function wholeCompassJob(): Job {
  const facts: Fact[] = [
    { kind: 'job-opened', v: 1, title: 'Whole compass' },
    {
      kind: 'piano-described',
      v: 1,
      form: 'grand',
      size_m: 1.8,
      firstKey: 1,
      lastKey: 88,
      referencePitch_hz: 440,
    },
    section('bass', 1, 20, 'bass', 'agraffe'),
    section('tenor', 21, 44, 'treble', 'agraffe'),
    section('middle', 45, 67, 'treble', 'agraffe'),
    section('treble', 68, 88, 'treble', 'capo'),
    { kind: 'unisons-described', v: 1, firstKey: 1, lastKey: 8, strings: 1, winding: 'wound', layers: 1 },
    { kind: 'unisons-described', v: 1, firstKey: 9, lastKey: 26, strings: 2, winding: 'wound', layers: 1 },
    { kind: 'unisons-described', v: 1, firstKey: 27, lastKey: 88, strings: 3, winding: 'plain', layers: 0 },
  ];
  const read = (key: number, quantity: ReadingQuantityName, millimetres: number) => {
    for (const slip of [0, 0.004, -0.003]) {
      const value = Number((millimetres * (1 + slip)).toFixed(4));
      facts.push({
        kind: 'reading',
        v: 1,
        quantity,
        place: { key },
        value_si: value / 1000,
        asRead: { value, unit: 'mm' },
        origin: 'measured',
        stage: 'as found',
      });
    }
  };
  for (let key = 1; key <= 88; key += 1) {
    if (key <= 26) {
      read(key, 'core-diameter', 1.45 - 0.018 * key);
      read(key, 'over-all-diameter', 5.2 * 0.945 ** (key - 1) + 0.35);
      read(key, 'speaking-length', key <= 20 ? 1330 - 14 * key : 1180 - 18 * (key - 21));
      read(key, 'bare-front', 22);
      read(key, 'bare-back', 15);
    } else {
      read(key, 'wire-diameter', 1.1 - 0.005 * (key - 27));
      read(key, 'speaking-length', 52 * 2 ** ((88 - key) / 13));
    }
  }
  const entries: Entry[] = facts.map((fact, index) => ({
    id: idOf(index + 1),
    job: idOf(0),
    step: index + 1,
    at: '2026-05-04T08:00:00.000Z',
    by: 'Ada',
    device: 'bench tablet',
    fact,
  }));
  return foldJob(entries);
}

const idOf = (number: number): string => `01WHE${String(number).padStart(21, '0')}`;

function section(
  name: string,
  firstKey: number,
  lastKey: number,
  bridge: string,
  frontTermination: Extract<Fact, { kind: 'section-described' }>['frontTermination'],
): Fact {
  return { kind: 'section-described', v: 1, section: name, firstKey, lastKey, bridge, frontTermination };
}
