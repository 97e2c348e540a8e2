import type { ReadingQuantityName } from '@becket/journal';
import { useDesk } from '../../desk/use-desk.ts';
import { useDevice, useSettings } from '../../desk/use-device.ts';
import { useLanguage } from '../../parts/language.tsx';
import { useObservable } from '../../parts/observable.ts';
import { SelectField } from '../../parts/select-field.tsx';
import { inHandOf, instrumentInHand, instrumentsFor, takeInHand } from './instruments-state.ts';
import { unitWords } from './unit-words.ts';

/**
 * The instrument for the quantity being read. Choosing one sets the unit of the screen where it shows mm or inches, and
 * every further reading of its sort names it.
 */
export function InstrumentInHand({ quantity }: { quantity: ReadingQuantityName }) {
  const language = useLanguage();
  const { say } = language;
  const { desk, job } = useDesk();
  const device = useDevice();
  const { unit } = useSettings();
  const inHand = useObservable(inHandOf(desk.id));
  const known = instrumentsFor(job, quantity);
  if (known.length === 0) return null;
  const held = instrumentInHand(job, inHand, quantity);
  const showsOther = (held?.unit === 'mm' || held?.unit === 'in') && held.unit !== unit;
  return (
    <SelectField
      label={say('Instrument')}
      hint={
        showsOther
          ? say('It shows {shown}; the screen is in {unit}.', {
              shown: unitWords(held.unit, language),
              unit: unitWords(unit, language),
            })
          : undefined
      }
      value={held?.instrument ?? ''}
      onChange={(name) => {
        inHandOf(desk.id).set(takeInHand(inHand, quantity, name));
        const shows = known.find(({ instrument }) => instrument === name)?.unit;
        if (shows === 'mm' || shows === 'in') device.settings.update({ unit: shows });
      }}
      options={[
        { value: '', words: say('not named') },
        ...known.map(({ instrument, unit: shows }) => ({
          value: instrument,
          words: `${instrument} (${unitWords(shows, language)})`,
        })),
      ]}
    />
  );
}
