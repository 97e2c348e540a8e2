import type { Entry, UnknownFact } from '@becket/journal';
import fc from 'fast-check';

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

export const jobA = ulidFrom(1);
export const jobB = ulidFrom(2);

/** The entry of this number: the same number gives the same entry. */
export function wireEntry(number: number, { job = jobA, step = number + 1 } = {}): Entry {
  const value = 0.8 + (number % 40) / 100;
  return {
    id: ulidFrom(1000 + number),
    job,
    step,
    at: '2026-03-01T10:00:00.000Z',
    by: 'Ada',
    device: 'bench tablet',
    fact: {
      kind: 'reading',
      v: 1,
      quantity: 'wire-diameter',
      place: { key: 1 + (number % 88) },
      value_si: value / 1000,
      asRead: { value, unit: 'mm' },
      origin: 'measured',
      stage: 'as found',
    },
  };
}

export const wireEntries = (count: number, { first = 0, job = jobA } = {}): Entry[] =>
  Array.from({ length: count }, (_, index) => wireEntry(first + index, { job }));

/** A fact of a kind no version of this program has, with anything in it that JSON can carry. */
const strangeFact: fc.Arbitrary<UnknownFact> = fc
  .record({
    kind: fc.string({ minLength: 1, maxLength: 20, unit: 'binary' }).map((word) => `strange ${word}`),
    v: fc.integer({ min: 1, max: 9 }),
    content: fc.jsonValue({ depthSize: 'small', stringUnit: 'binary' }),
  })
  .map((fact) => JSON.parse(JSON.stringify(fact)) as UnknownFact);

/** Entries of two jobs with distinct ids, in any order of steps, by people and devices of any name. */
export const arbitraryEntries: fc.Arbitrary<Entry[]> = fc
  .array(
    fc.record({
      job: fc.constantFrom(jobA, jobB),
      step: fc.integer({ min: 1, max: Number.MAX_SAFE_INTEGER }),
      at: fc
        .date({ min: new Date(0), max: new Date('2999-12-31'), noInvalidDate: true })
        .map((date) => date.toISOString()),
      by: fc.string({ minLength: 1, maxLength: 30, unit: 'binary' }),
      device: fc.string({ minLength: 1, maxLength: 30, unit: 'grapheme' }),
      fact: fc.option(strangeFact, { nil: undefined }),
    }),
    { minLength: 1, maxLength: 25 },
  )
  .map((plans) =>
    plans.map(({ fact, ...rest }, index) => {
      const wire = wireEntry(index);
      return { id: wire.id, ...rest, fact: fact ?? wire.fact };
    }),
  );
