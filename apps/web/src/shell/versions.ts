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

/** Starts the newer version. Everything that was typed and entered is kept already. */
export function startNewerVersion(): void {
  void change?.(true);
}
