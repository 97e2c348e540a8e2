import { english, type Language } from '@becket/core';
import type { ExchangeState } from '../store/exchange.ts';

export interface ExchangeWords {
  /** A mark beside the words, so that a glance is enough; the words say the same. */
  readonly mark: '●' | '○' | '▲';
  readonly short: string;
  readonly long: string;
}

/** What the sign in the header says. Never silent about an entry that exists on one device only. */
export function exchangeWords(
  { server, unsent, problem }: ExchangeState,
  { say }: Language = english,
): ExchangeWords {
  const onlyHere = say('{count, plural, one {# entry} other {# entries}} only here', { count: unsent });
  if (problem !== undefined) return { mark: '▲', short: onlyHere, long: problem };
  if (unsent > 0) {
    return {
      mark: server === 'away' ? '▲' : '○',
      short: onlyHere,
      long:
        server === 'away'
          ? say(
              '{count, plural, one {# entry has} other {# entries have}} not left this device: the server cannot be reached. They are kept here, and go out when it is back.',
              { count: unsent },
            )
          : say(
              '{count, plural, one {# entry has not left this device yet, and is} other {# entries have not left this device yet, and are}} on the way to the server.',
              { count: unsent },
            ),
    };
  }
  switch (server) {
    case 'here':
      return {
        mark: '●',
        short: say('All sent'),
        long: say('Everything on this device is on the server too.'),
      };
    case 'away':
      return {
        mark: '▲',
        short: say('Server away'),
        long: say(
          'The server cannot be reached. Everything made on this device had reached it before; what you do now is kept here.',
        ),
      };
    case 'not asked yet':
      return { mark: '○', short: say('Asking the server'), long: say('The server has not answered yet.') };
  }
}
