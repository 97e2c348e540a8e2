import { describe, expect, it } from 'vitest';
import type { Fact } from '../facts/index.ts';
import type { Place } from '../facts/place.ts';
import { foldJob } from '../fold/fold-job.ts';
import { entryOf } from '../testing/arbitrary-entries.ts';
import { answersThatStand } from './answers-that-stand.ts';

const absent = (place: Place, answer: 'unknown' | 'none'): Fact => ({
  kind: 'reading-absent',
  v: 1,
  quantity: 'pin-height',
  place,
  answer,
});
const read = (place: Place, stage: 'as found' | 'as strung' = 'as found'): Fact => ({
  kind: 'reading',
  v: 1,
  quantity: 'pin-height',
  place,
  value_si: 0.009,
  asRead: { value: 9, unit: 'mm' },
  origin: 'measured',
  stage,
});
const opened: Fact = { kind: 'job-opened', v: 1, title: 'answers' };
const standing = (...facts: Fact[]) =>
  answersThatStand(foldJob([opened, ...facts].map((fact, index) => entryOf(index + 1, index + 1, fact)))).map(
    ({ place, answer }) => [place, answer],
  );

describe('answersThatStand()', () => {
  it('keeps the last answer of a place', () => {
    expect(
      standing(absent({ key: 40, string: 1 }, 'unknown'), absent({ key: 40, string: 1 }, 'none')),
    ).toEqual([[{ key: 40, string: 1 }, 'none']]);
  });

  it('leaves out an answer where something was read after all, at whatever point', () => {
    expect(standing(absent({ key: 40 }, 'unknown'), read({ key: 40, point: 'at the top' }))).toEqual([]);
    const atTheTop = { key: 40, point: 'at the top' };
    expect(standing(absent(atTheTop, 'unknown'), read({ key: 40, point: 'at the thread' }))).toEqual([
      [atTheTop, 'unknown'],
    ]);
  });

  it('keeps what is said of another string, another note, another section, or read of the new stringing', () => {
    const said = absent({ key: 40, string: 1 }, 'none');
    expect(
      standing(said, absent({ key: 40, string: 2 }, 'unknown'), read({ key: 41, string: 1 })),
    ).toHaveLength(2);
    expect(standing(said, read({ key: 40 }), read({ key: 40, string: 1 }, 'as strung'))).toHaveLength(1);
    expect(standing(absent({ section: 'bass' }, 'none'), read({ section: 'tenor' }))).toHaveLength(1);
  });
});
