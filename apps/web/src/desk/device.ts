import type { Language } from '@becket/core';
import { newUlid } from '@becket/journal';
import type { TaskContext } from '@becket/tasks';
import type { Observable } from '../parts/observable.ts';
import type { BrowserStore } from '../store/browser-store.ts';
import { type Exchange, startExchange } from '../store/exchange.ts';
import { serverLink } from '../store/server-link.ts';
import { namelessUser, type Settings } from './settings.ts';

/** Everything that belongs to this device rather than to a job. */
export interface Device {
  readonly store: BrowserStore;
  readonly settings: Observable<Settings>;
  readonly language: Observable<Language>;
  readonly exchange: Exchange;
  /** What tasks are handed, with the name as it is set now. */
  context(): TaskContext;
}

/** A number from 0 up to 1 from the browser's own source of chance, so that ids of two devices never meet. */
export function strongRandom(): number {
  const word = crypto.getRandomValues(new Uint32Array(1))[0] ?? 0;
  return word / 2 ** 32;
}

/** A name for a device that has none: 'device K3F9'. */
export function newDeviceName(random: () => number): string {
  const letters = 'ABCDEFGHJKLMNPQRSTUVWXYZ23456789';
  const pick = () => letters[Math.floor(random() * letters.length)];
  return `device ${pick()}${pick()}${pick()}${pick()}`;
}

export function startDevice(
  store: BrowserStore,
  settings: Observable<Settings>,
  language: Observable<Language>,
): Device {
  const now = () => new Date();
  const exchange = startExchange({
    store,
    link: serverLink(),
    now,
    oneAtATime: async (round) => {
      // Where the browser has no locks (an address that is not secure) each tab exchanges; sending twice does no harm.
      if (navigator.locks === undefined) return round();
      await navigator.locks.request('becket-exchange', round);
    },
  });
  addEventListener('online', exchange.wake);
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') exchange.wake();
  });
  exchange.wake();
  return {
    store,
    settings,
    language,
    exchange,
    context: () => ({
      store,
      now,
      newId: () => newUlid(now(), strongRandom),
      by: settings.get().name.trim() || namelessUser,
      device: settings.get().device,
      language: language.get(),
    }),
  };
}
