import type { ExchangeState } from '../store/exchange.ts';

export interface ExchangeWords {
  /** A mark beside the words, so that a glance is enough; the words say the same. */
  readonly mark: '●' | '○' | '▲';
  readonly short: string;
  readonly long: string;
}

/** What the sign in the header says. Never silent about an entry that exists on one device only. */
export function exchangeWords({ server, unsent, problem }: ExchangeState): ExchangeWords {
  const entries = `${unsent} ${unsent === 1 ? 'entry' : 'entries'}`;
  const has = unsent === 1 ? 'has' : 'have';
  if (problem !== undefined) return { mark: '▲', short: `${entries} only here`, long: problem };
  if (unsent > 0) {
    return {
      mark: server === 'away' ? '▲' : '○',
      short: `${entries} only here`,
      long:
        server === 'away'
          ? `${entries} ${has} not left this device: the server cannot be reached. They are kept here, and go out when it is back.`
          : `${entries} ${has} not left this device yet, and ${unsent === 1 ? 'is' : 'are'} on the way to the server.`,
    };
  }
  switch (server) {
    case 'here':
      return { mark: '●', short: 'All sent', long: 'Everything on this device is on the server too.' };
    case 'away':
      return {
        mark: '▲',
        short: 'Server away',
        long: 'The server cannot be reached. Everything made on this device had reached it before; what you do now is kept here.',
      };
    case 'not asked yet':
      return { mark: '○', short: 'Asking the server', long: 'The server has not answered yet.' };
  }
}
