import { english, makeLanguage } from '@becket/core';
import { describe, expect, it } from 'vitest';
import { tickText } from './tick-text.ts';

// Expected forms: Unicode CLDR for British English and German, from memory.
describe('tickText()', () => {
  it.each(['0', '1,000', '0.50', '−20', '12.5'])('leaves %s as it is in English', (text) => {
    expect(tickText(text, english)).toBe(text);
  });

  it.each([
    ['1,000', 'de-DE', '1.000'],
    ['0.50', 'de-DE', '0,50'],
    ['−20', 'de-DE', '−20'],
  ])('writes %s in %s as %s', (text, locale, written) => {
    expect(tickText(text, makeLanguage(locale))).toBe(written);
  });
});
