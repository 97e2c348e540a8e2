import type { LengthUnit } from '../parts/length-text.ts';
import { type Observable, observable } from '../parts/observable.ts';

export const appearances = ['as the device', 'light', 'dark'] as const;
export type Appearance = (typeof appearances)[number];

/** Languages by their own names, so that whoever reads only one of them finds it. */
export const languageChoices = ['as the device', 'English', 'Deutsch'] as const;
export type LanguageChoice = (typeof languageChoices)[number];

/** What this device remembers of its user. None of it is part of a job. */
export interface Settings {
  /** The name that stands on every entry made here; empty until somebody has said. */
  readonly name: string;
  /** The device's own name, which stands on every entry made here. */
  readonly device: string;
  readonly unit: LengthUnit;
  readonly appearance: Appearance;
  readonly language: LanguageChoice;
  readonly isPlanShown: boolean;
  /** The same where readings are typed and the plan would stand above them, as on a tablet held upright. */
  readonly isPlanShownAboveReadings: boolean;
}

/** What stands on entries before anybody gave a name. */
export const namelessUser = 'name not given';

/** Settings from what was kept as text; whatever does not fit is taken from the start values. */
export function readSettings(
  text: string | null,
  newDevice: string,
  { isSmall = false, unit = 'mm' }: { readonly isSmall?: boolean; readonly unit?: LengthUnit } = {},
): Settings {
  const start: Settings = {
    name: '',
    device: newDevice,
    unit,
    appearance: 'as the device',
    language: 'as the device',
    // On a small screen the plan would stand before the work; it is a tap away.
    isPlanShown: !isSmall,
    isPlanShownAboveReadings: false,
  };
  let kept: Partial<Record<keyof Settings, unknown>>;
  try {
    kept = (JSON.parse(text ?? '{}') ?? {}) as typeof kept;
  } catch {
    return start;
  }
  const isTrue = (value: unknown, otherwise: boolean) => (typeof value === 'boolean' ? value : otherwise);
  const words = (value: unknown, otherwise: string) =>
    typeof value === 'string' && value.length <= 200 ? value : otherwise;
  return {
    name: words(kept.name, start.name),
    device: words(kept.device, start.device) || start.device,
    unit: kept.unit === 'in' || kept.unit === 'mm' ? kept.unit : start.unit,
    appearance: appearances.find((one) => one === kept.appearance) ?? start.appearance,
    language: languageChoices.find((one) => one === kept.language) ?? start.language,
    isPlanShown: isTrue(kept.isPlanShown, start.isPlanShown),
    isPlanShownAboveReadings: isTrue(kept.isPlanShownAboveReadings, start.isPlanShownAboveReadings),
  };
}

const keptAs = 'becket-settings';

/** The settings of this device, kept at every change, and the same in every tab. */
export function deviceSettings(
  storage: Storage | undefined,
  newDevice: string,
  start: { readonly isSmall?: boolean; readonly unit?: LengthUnit } = {},
): Observable<Settings> {
  const settings = observable(readSettings(storage?.getItem(keptAs) ?? null, newDevice, start));
  const keep = () => {
    try {
      storage?.setItem(keptAs, JSON.stringify(settings.get()));
    } catch {
      // Settings that cannot be kept still hold until the page is left.
    }
  };
  keep();
  settings.subscribe(keep);
  if (typeof addEventListener === 'function') {
    addEventListener('storage', (event) => {
      if (event.key === keptAs && event.newValue) settings.set(readSettings(event.newValue, newDevice));
    });
  }
  return settings;
}
