import { describe, expect, it } from 'vitest';
import { linesOf, monthsAfter, pairsOf } from './hand-over-state.ts';

describe('what is typed for a hand-over', () => {
  it('is read line by line, empty lines left out', () => {
    expect(linesOf(' one \n\n two')).toEqual(['one', 'two']);
    expect(pairsOf('damper felt: not ordered\naction')).toEqual([
      { what: 'damper felt', because: 'not ordered' },
      { what: 'action', because: '' },
    ]);
  });

  it('has days to tune on the same day of later months, or the last of a shorter one', () => {
    // By the calendar: February 2027 has 28 days, 2028 is a leap year.
    expect(monthsAfter('2026-06-15', 3)).toBe('2026-09-15');
    expect(monthsAfter('2026-08-31', 6)).toBe('2027-02-28');
    expect(monthsAfter('2027-11-30', 3)).toBe('2028-02-29');
    expect(monthsAfter('', 1)).toBe('');
  });
});
