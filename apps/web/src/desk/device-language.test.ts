import { describe, expect, it } from 'vitest';
import { localeOf } from './device-language.ts';

describe('localeOf()', () => {
  it('takes the country from the browser where it speaks the chosen language', () => {
    expect(localeOf('Deutsch', ['en-US', 'de-AT'])).toBe('de-AT');
    expect(localeOf('English', ['de-AT', 'en-US'])).toBe('en-US');
  });

  it('takes the first language we speak where nothing is chosen', () => {
    expect(localeOf('as the device', ['fr-CH', 'de-CH', 'en-GB'])).toBe('de-CH');
    expect(localeOf('as the device', ['en'])).toBe('en-GB');
  });

  it('falls back to a country of its own', () => {
    expect(localeOf('Deutsch', ['fr'])).toBe('de-DE');
    expect(localeOf('as the device', [])).toBe('en-GB');
  });
});
