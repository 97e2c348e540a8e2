import fc from 'fast-check';
import type { Entry } from '../entry.ts';
import type { Fact } from '../facts/index.ts';

const alphabet = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';

/** A valid ULID from a number; different numbers give different ids. */
export function ulidFrom(seed: number): string {
  let text = '';
  let rest = seed;
  for (let place = 0; place < 25; place += 1) {
    text = alphabet[rest % 32] + text;
    rest = Math.floor(rest / 32);
  }
  return `0${text}`;
}

export const jobId = ulidFrom(1);

/** An entry with everything but the fact filled in. */
export function entryOf(number: number, step: number, fact: Fact, by = 'Ada'): Entry {
  return {
    id: ulidFrom(1000 + number),
    job: jobId,
    step,
    at: '2026-03-01T10:00:00.000Z',
    by,
    device: 'bench tablet',
    fact,
  };
}

export function wireReading(key: number, value_si: number, replaces?: string): Fact {
  return {
    kind: 'reading',
    v: 1,
    quantity: 'wire-diameter',
    place: { key },
    value_si,
    asRead: { value: value_si * 1000, unit: 'mm' },
    origin: 'measured',
    stage: 'as found',
    ...(replaces === undefined ? {} : { replaces, reason: 'read again' }),
  };
}

/** A journal of 1 to 40 entries: readings, corrections, withdrawals, descriptions; steps may repeat, as on two devices. */
export const arbitraryJournal: fc.Arbitrary<Entry[]> = fc
  .array(
    fc.record({
      step: fc.integer({ min: 2, max: 12 }),
      choice: fc.integer({ min: 0, max: 6 }),
      key: fc.integer({ min: 1, max: 88 }),
      diameter: fc.double({ min: 0.0008, max: 0.0012, noNaN: true }),
      target: fc.nat({ max: 40 }),
    }),
    { maxLength: 40 },
  )
  .map((plans) => {
    const opened: Fact = { kind: 'job-opened', v: 1, title: 'a job' };
    const entries: Entry[] = [entryOf(0, 1, opened)];
    plans.forEach(({ step, choice, key, diameter, target }, index) => {
      const id = ulidFrom(1000 + (target % (index + 1)));
      entries.push(entryOf(index + 1, step, factFor(choice, key, diameter, id)));
    });
    return entries;
  });

function factFor(choice: number, key: number, diameter: number, target: string): Fact {
  switch (choice) {
    case 0:
      return { kind: 'withdrawn', v: 1, entry: target, reason: 'a slip' };
    case 1:
      return wireReading(key, diameter, target);
    case 2:
      return {
        kind: 'section-described',
        v: 1,
        section: key < 44 ? 'low' : 'high',
        firstKey: key,
        lastKey: key,
        bridge: 'treble',
        frontTermination: 'agraffe',
      };
    case 3:
      return {
        kind: 'unisons-described',
        v: 1,
        firstKey: key,
        lastKey: key,
        strings: 1 + (key % 3),
        winding: 'plain',
        layers: 0,
      };
    case 4:
      return { kind: 'sealed', v: 1, digest: 'a'.repeat(64), entries: 1, covers: [target] };
    default:
      return wireReading(key, diameter);
  }
}
