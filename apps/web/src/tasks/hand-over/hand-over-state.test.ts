import { describe, expect, it } from 'vitest';
import { linesOf, monthsAfter, nextKey, pairsOf, strungReadingOf } from './hand-over-state.ts';

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

describe('a reading on the new strings', () => {
  const typed = {
    quantity: 'wire-diameter',
    key: 40,
    string: 2,
    value: '1,025',
    unit: 'mm',
    span_mm: undefined,
    isLoaded: true,
  } as const;

  it('is one of the stage as strung, in the unit it was typed in', () => {
    expect(strungReadingOf(typed)).toEqual({
      quantity: 'wire-diameter',
      place: { key: 40, string: 2 },
      value: 1.025,
      unit: 'mm',
      stage: 'as strung',
    });
    expect(strungReadingOf({ ...typed, value: '41 thou' })).toMatchObject({ value: 0.041, unit: 'in' });
  });

  it('has its span and load where it tells nothing without them', () => {
    const rise = {
      ...typed,
      quantity: 'bearing-rise',
      string: undefined,
      value: '0.6',
      span_mm: '100',
    } as const;
    expect(strungReadingOf(rise)).toMatchObject({ place: { key: 40 }, span_m: 0.1, loaded: true });
    expect(() => strungReadingOf({ ...rise, span_mm: 'wide' })).toThrow('‘wide’ was found');
  });

  it('is refused without a value, and the note after the last is the last', () => {
    expect(() => strungReadingOf({ ...typed, value: ' ' })).toThrow('a value in mm is needed');
    expect(nextKey({ piano: undefined }, 87)).toBe(88);
    expect(nextKey({ piano: undefined }, 88)).toBe(88);
  });
});
