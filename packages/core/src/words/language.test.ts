import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { minorUnits } from '../supplies/index.ts';
import { currencyOf, english, makeLanguage, message, paperSizeOf } from './index.ts';

const german = makeLanguage('de-DE', {
  'not measured': 'nicht gemessen',
  '[of a pin] low': 'schwach',
  '{count, plural, one {# pin} other {# pins}}, {share} %':
    '{share} % – {count, plural, one {# Wirbel} other {# Wirbel}}',
});

describe('a language', () => {
  it('says a message of its catalogue, and one that is missing there in English', () => {
    expect(german.say('not measured')).toBe('nicht gemessen');
    expect(german.say('does not apply')).toBe('does not apply');
  });

  it('keeps the sense in brackets to itself', () => {
    expect(english.say('[of a pin] low')).toBe('low');
    expect(german.say(message('[of a pin] low'))).toBe('schwach');
  });

  it('puts values in, in the order and number of the language', () => {
    const values = { count: 2, share: german.fixed(12.345, 1) };
    expect(german.say('{count, plural, one {# pin} other {# pins}}, {share} %', values)).toBe(
      '12,3 % – 2 Wirbel',
    );
    expect(
      english.say('{count, plural, one {# pin} other {# pins}}, {share} %', { count: 1, share: '3' }),
    ).toBe('1 pin, 3 %');
  });

  it('leaves an apostrophe alone', () => {
    expect(english.say("the maker's {what}", { what: 'data' })).toBe("the maker's data");
    expect(english.say("'{what}' was found", { what: '7 furlongs' })).toBe("'7 furlongs' was found");
  });

  it('refuses a message whose value is not handed in', () => {
    expect(() => english.say('{what} is missing')).toThrow(/what/);
  });

  it('writes every number with as many digits as English does, and only another mark', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        fc.integer({ min: 0, max: 6 }),
        (value, digits) => {
          expect(english.fixed(value, digits)).toBe(value.toFixed(digits));
          expect(german.fixed(value, digits).replace(',', '.')).toBe(value.toFixed(digits));
        },
      ),
    );
  });

  // Expected forms: Unicode CLDR for German and British English.
  it('writes days, rows and money as its country does', () => {
    expect(german.moment('2026-03-01T10:05:00.000Z')).toBe('1. März 2026, 10:05 UTC');
    expect(english.day('2026-03-01T23:59:00.000Z')).toBe('1 March 2026');
    expect(german.list(['Kern', 'Draht', 'Filz'])).toBe('Kern, Draht und Filz');
    expect(english.list(['core', 'wire', 'felt'], 'or')).toBe('core, wire or felt');
    expect(german.money(minorUnits(123450), 'EUR', 'none')).toBe('1.234,50');
  });
});

describe('the country of a locale', () => {
  it('says which paper and which money is usual there', () => {
    expect(['de-DE', 'de', 'en-GB', 'en', 'en-CA'].map(paperSizeOf)).toEqual([
      'A4',
      'A4',
      'A4',
      'Letter',
      'Letter',
    ]);
    expect(['de-AT', 'de-CH', 'en-GB', 'en-US'].map(currencyOf)).toEqual(['EUR', 'CHF', 'GBP', 'USD']);
  });
});
