import { readJob } from '@becket/tasks';
import { describe, expect, it } from 'vitest';
import { testContext, testJob } from '../../testing/test-job.ts';
import { type StringOrder, stringAfter } from './string-order.ts';
import { commitString, newStringRound } from './strings-state.ts';

const context = testContext();
const id = await testJob(context);
const c4 = { key: 40, string: 1, name: 'C4·1' };
await commitString(context, id, { ...c4, string: 2 }, '1.02', {
  round: newStringRound,
  instrument: undefined,
  screenUnit: 'mm',
  reason: '',
});
const job = await readJob(context, id);

const after = (
  order: StringOrder,
  { key, string }: { key: number; string: number },
  {
    section = 'tenor',
    quantity = 'wire-diameter' as 'wire-diameter' | 'speaking-length',
    direction = 1 as 1 | -1,
  } = {},
) => {
  const next = stringAfter(job, { section, quantity, from: { key, string }, order, direction });
  return next && `${next.section} ${next.row.name}`;
};

describe('stringAfter()', () => {
  it('goes on string by string, and back', () => {
    expect(after('next', c4)).toBe('tenor C4·2');
    expect(after('next', { key: 40, string: 3 })).toBe('tenor C#4·1');
    expect(after('next', c4, { direction: -1 })).toBe('tenor B3·3');
  });

  it('passes over strings that have a value', () => {
    expect(after('next-open', c4)).toBe('tenor C4·3');
  });

  it('stays with one string of each note, or of every second or third', () => {
    expect(after('same-string', { key: 40, string: 3 })).toBe('tenor C#4·3');
    expect(after('every-second', c4)).toBe('tenor D4·1');
    expect(after('every-third', c4, { direction: -1 })).toBe('tenor A3·1');
  });

  it('goes on into the next section that has such strings, and ends with the compass', () => {
    const lengths = { section: 'bass', quantity: 'speaking-length' } as const;
    expect(after('next', { key: 26, string: 2 }, lengths)).toBe('tenor B2·1');
    expect(after('every-second', { key: 26, string: 2 }, lengths)).toBe('tenor C3·2');
    // Three strings to the note above the break, two below it.
    expect(
      after('same-string', { key: 27, string: 3 }, { ...lengths, section: 'tenor', direction: -1 }),
    ).toBe('bass A#2·2');
    // No plain wire in the bass.
    expect(after('next', { key: 27, string: 1 }, { direction: -1 })).toBeUndefined();
    expect(after('next', { key: 88, string: 3 })).toBeUndefined();
  });
});
