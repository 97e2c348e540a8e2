import { expect, test } from 'vitest';
import type { ExchangeState } from '../store/exchange.ts';
import { exchangeWords } from './exchange-words.ts';

const state = (part: Partial<ExchangeState>): ExchangeState => ({
  server: 'here',
  unsent: 0,
  unsentByJob: new Map(),
  lastAt: undefined,
  problem: undefined,
  serverJobs: [],
  ...part,
});

test.each(['here', 'away', 'not asked yet'] as const)(
  'the sign counts what has not left the device while the server is %s',
  (server) => {
    expect(exchangeWords(state({ server, unsent: 3 })).short).toBe('3 entries only here');
    expect(exchangeWords(state({ server, unsent: 1 })).long).toContain('1 entry has not left this device');
  },
);

test('the sign says that all was sent only when the server said so', () => {
  expect(exchangeWords(state({})).short).toBe('All sent');
  expect(exchangeWords(state({ server: 'not asked yet' })).short).not.toBe('All sent');
});

test('the sign passes on what the server refused', () => {
  expect(exchangeWords(state({ problem: 'Cannot add entry X.', unsent: 2 })).long).toBe(
    'Cannot add entry X.',
  );
});
