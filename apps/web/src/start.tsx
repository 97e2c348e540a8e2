import { firstUnitOf } from '@becket/core';
import { createRoot } from 'react-dom/client';
import './shell/look.css';
import { newDeviceName, startDevice, strongRandom } from './desk/device.ts';
import { deviceLanguage } from './desk/device-language.ts';
import { sentenceOf } from './desk/sentence-of.ts';
import { type Appearance, deviceSettings } from './desk/settings.ts';
import { App } from './shell/app.tsx';
import { Trouble } from './shell/trouble.tsx';
import { keepProgramUpToDate } from './shell/versions.ts';
import { openBrowserStore } from './store/browser-store.ts';

const root = createRoot(document.getElementById('app')!);

function storageOrNothing(): Storage | undefined {
  try {
    return localStorage;
  } catch {
    return undefined;
  }
}

function show(appearance: Appearance): void {
  if (appearance === 'as the device') delete document.documentElement.dataset.appearance;
  else document.documentElement.dataset.appearance = appearance;
}

const isSmall = matchMedia('(max-width: 599px)').matches;
const settings = deviceSettings(storageOrNothing(), newDeviceName(strongRandom), {
  isSmall,
  // The unit a rule is divided in where this device is; a choice of its own in the settings.
  unit: firstUnitOf(navigator.language),
});
show(settings.get().appearance);
settings.subscribe(() => show(settings.get().appearance));

try {
  const [store, language] = await Promise.all([openBrowserStore(), deviceLanguage(settings)]);
  const device = startDevice(store, settings, language);
  // Asked for once there is something to keep: the browser may otherwise throw it away when space runs short.
  void navigator.storage?.persist?.();
  root.render(<App device={device} />);
} catch (error) {
  root.render(<Trouble sentence={sentenceOf(error)} />);
}
keepProgramUpToDate();
