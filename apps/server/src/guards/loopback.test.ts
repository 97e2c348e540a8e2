import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { AccountsNeeded, isLoopback, requireLoopback } from './loopback.ts';

const octet = fc.integer({ min: 0, max: 255 });

describe('isLoopback()', () => {
  it('is true of all of 127.0.0.0/8 (RFC 6890) and of no other IPv4 address', () => {
    fc.assert(
      fc.property(octet, octet, octet, octet, (a, b, c, d) => {
        expect(isLoopback(`${a}.${b}.${c}.${d}`)).toBe(a === 127);
        expect(isLoopback(`127.${b}.${c}.${d}`)).toBe(true);
      }),
    );
  });

  it.each(['localhost', 'LOCALHOST', '::1', '[::1]'])('is true of %s', (host) =>
    expect(isLoopback(host)).toBe(true),
  );

  it.each([
    '',
    '0.0.0.0',
    '::',
    '[::]',
    '::2',
    'localhost.example.org',
    'example.org',
    '127.0.0.1.example.org',
    '127.0.0.256',
    '127.1',
    '127.0.0.01',
    '2130706433',
    '192.168.1.2',
    '::ffff:192.168.1.2',
  ])('is false of %j', (host) => expect(isLoopback(host)).toBe(false));
});

describe('requireLoopback()', () => {
  it('refuses any other address in one sentence that says what to do', () => {
    expect(() => requireLoopback('0.0.0.0')).toThrow(AccountsNeeded);
    expect(() => requireLoopback('0.0.0.0')).toThrow(
      /^Cannot listen on 0\.0\.0\.0: .*needs accounts.*Listen on 127\.0\.0\.1, ::1 or localhost\.$/,
    );
  });
});
