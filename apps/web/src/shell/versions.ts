import { registerSW } from 'virtual:pwa-register';
import { keepLaterFiles } from '../parts/later-files.ts';
import { observable } from '../parts/observable.ts';

export interface Versions {
  /** A newer version lies ready and starts when it is asked to. */
  readonly isNewerReady: boolean;
  /** This version is kept on the device and starts without a network. */
  readonly isReadyOffline: boolean;
}

export const versions = observable<Versions>({ isNewerReady: false, isReadyOffline: false });

let change: ((reload?: boolean) => Promise<void>) | undefined;

/** Keeps the program itself on the device, and watches for a newer version. */
export function keepProgramUpToDate(): void {
  if (!('serviceWorker' in navigator)) return;
  const later = keepLaterFiles();
  void bringFirstFiles()
    // Whatever it was: the service worker fetches what is missing itself, and is tried again with the next start.
    .catch(() => {})
    .then(() => {
      register(later);
    });
}

function register(later: ReturnType<typeof keepLaterFiles>): void {
  change = registerSW({
    immediate: true,
    onNeedRefresh: () => {
      versions.update({ isNewerReady: true });
      later.newerIsReady();
    },
    onOfflineReady: () => versions.update({ isReadyOffline: true }),
  });
  void navigator.serviceWorker.getRegistration().then((registration) => {
    if (registration?.active) versions.update({ isReadyOffline: true });
  });
}

/** A browser opens as many lines to one server (HTTP/1.1). */
const lines = 6;

/**
 * On the first visit, what the service worker will ask for, into the cache of the browser: a service worker asks for one file
 * after the other, and on a line that takes its time for each answer nearly two hundred of them would be most of the waiting.
 */
async function bringFirstFiles(): Promise<void> {
  if ((await navigator.serviceWorker.getRegistration()) !== undefined) return;
  const response = await fetch('kept-first.json');
  const files: string[] = response.ok ? await response.json() : [];
  const next = files.values();
  await Promise.all(
    Array.from({ length: lines }, async () => {
      for (const url of next) await (await fetch(url, { priority: 'low' })).arrayBuffer();
    }),
  );
}

/** Starts the newer version. Everything that was typed and entered is kept already. */
export function startNewerVersion(): void {
  void change?.(true);
}
