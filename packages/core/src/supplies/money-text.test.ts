import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { german } from '../german.ts';
import { makeLanguage } from '../words/index.ts';
import { minorUnits } from './minor-units.ts';
import { moneyText, plainMoneyText } from './money-text.ts';
import { parseMoney } from './typed-money.ts';

/** Which space and which apostrophe set off thousands changes from one edition of CLDR to the next. */
const spaced = (text: string) => text.replace(/\s/gu, ' ').replace('’', "'");

describe('moneyText()', () => {
  it('writes as each country does (Unicode CLDR by way of Intl)', () => {
    const written = (locale: string, currency: string, currencyAs: 'code' | 'symbol' | 'none' = 'symbol') =>
      spaced(moneyText(minorUnits(123450), currency, { locale, currencyAs }));
    expect(written('en-GB', 'EUR')).toBe('€1,234.50');
    expect(written('de-DE', 'EUR')).toBe('1.234,50 €');
    expect(written('fr-FR', 'EUR')).toBe('1 234,50 €');
    expect(written('de-CH', 'CHF')).toBe("CHF 1'234.50");
    expect(written('en-US', 'USD')).toBe('$1,234.50');
    expect(written('en-GB', 'JPY', 'code')).toBe('JPY 123,450');
    expect(written('en-GB', 'KWD', 'none')).toBe('123.450');
  });

  it('keeps the digits of ISO 4217 where cash has none', () => {
    expect(spaced(moneyText(minorUnits(123450), 'HUF', { locale: 'en-GB', currencyAs: 'code' }))).toBe(
      'HUF 1,234.50',
    );
  });

  it('is right to the last digit of the largest amount', () => {
    const most = minorUnits(Number.MAX_SAFE_INTEGER);
    expect(moneyText(most, 'EUR', { locale: 'en-GB', currencyAs: 'none' })).toBe('90,071,992,547,409.91');
  });
});

describe('parseMoney()', () => {
  it('reads back what was written, in every country and currency of a shop', () => {
    const locales = [
      'en-GB',
      'en-US',
      'de-DE',
      'de-CH',
      'fr-FR',
      'es-ES',
      'en-IN',
      'sv-SE',
      'pl-PL',
      'pt-BR',
    ];
    fc.assert(
      fc.property(
        fc.integer({ min: -1e13, max: 1e13 }),
        fc.constantFrom(...locales),
        fc.constantFrom('EUR', 'USD', 'CHF', 'JPY'),
        (value, locale, currency) => {
          const written = moneyText(minorUnits(value), currency, { locale, currencyAs: 'none' });
          expect(parseMoney(written, currency), written).toBe(value === 0 ? 0 : value);
        },
      ),
      { seed: 4, numRuns: 400 },
    );
  });

  it('reads back three digits after the point where the decimal sign is known', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -1e13, max: 1e13 }),
        fc.constantFrom('en-GB', 'de-DE'),
        (value, locale) => {
          const written = moneyText(minorUnits(value), 'KWD', { locale, currencyAs: 'none' });
          const decimalSign = locale === 'de-DE' ? ',' : '.';
          expect(parseMoney(written, 'KWD', { decimalSign }), written).toBe(value === 0 ? 0 : value);
        },
      ),
      { seed: 5 },
    );
  });

  it('reads back what a machine is given', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -1e15, max: 1e15 }),
        fc.constantFrom('EUR', 'JPY', 'KWD', 'CLF'),
        (value, currency) =>
          parseMoney(plainMoneyText(minorUnits(value), currency), currency, { decimalSign: '.' }) === value,
      ),
      { seed: 6 },
    );
  });

  it.each([
    ['1.234,50', 123450],
    ['1,234.50', 123450],
    ['1 234,50', 123450],
    ['1\u202f234,50', 123450],
    ["1'234.5", 123450],
    ['1,23,456.00', 12345600],
    ['1.234.567', 123456700],
    ['12', 1200],
    [' 12,5 ', 1250],
    ['0,05', 5],
    ['-20', -2000],
    ['−20.00', -2000],
    ['0', 0],
  ])('reads %s', (typed, minor) => {
    expect(parseMoney(typed, 'EUR')).toBe(minor);
  });

  it('refuses what can be read in two ways, and says how to write it', () => {
    expect(() => parseMoney('1.234', 'EUR')).toThrow(
      "Cannot read '1.234' as an amount: the dot could set off thousands or be the decimal sign. Write 1234, or 1.23 with two digits after it.",
    );
    expect(() => parseMoney('12,345', 'EUR')).toThrow('the comma could set off thousands');
    expect(() => parseMoney('1.234', 'KWD')).toThrow('say which decimal sign you use');
    expect(parseMoney('1.234', 'EUR', { decimalSign: ',' })).toBe(123400);
    expect(parseMoney('1.234', 'KWD', { decimalSign: '.' })).toBe(1234);
    // There is only one way to read it where the currency has no smaller unit.
    expect(parseMoney('1.234', 'JPY')).toBe(1234);
  });

  it('refuses more digits than the currency has', () => {
    for (const typed of ['1234.567', '0.500', '1.2345', '1,234.505'])
      expect(() => parseMoney(typed, 'EUR'), typed).toThrow('at most 2 digits');
    expect(() => parseMoney('1.5', 'JPY')).toThrow('no digits');
    expect(() => parseMoney('99999999999999999', 'EUR')).toThrow('Cannot hold this amount');
  });

  it('refuses what is no amount, in one sentence that says what was found', () => {
    for (const typed of [
      '',
      '  ',
      'abc',
      '€ 5',
      '5 EUR',
      '1,',
      '.5',
      '1.2.3',
      '1,2,34',
      '1..2',
      '1 23',
      '1.234,5,6',
      '--1',
    ])
      expect(() => parseMoney(typed, 'EUR'), typed).toThrow(/^Cannot read an amount: .* was found\. /);
    expect(() => parseMoney('5', 'XXX')).toThrow('ISO 4217');
  });
});

it('says in German which amounts it cannot read', () => {
  const language = makeLanguage('de-DE', german);
  expect(() => parseMoney('1,2345', 'EUR', {}, language)).toThrow(
    /höchstens 2 Stellen stehen, gefunden wurde „1,2345“/,
  );
  expect(() => parseMoney('1.234', 'EUR', {}, language)).toThrow(/Der Punkt könnte Tausender abtrennen/);
  expect(() => parseMoney('', 'EUR', {}, language)).toThrow(/eine Zahl wie 1234,50/);
});
