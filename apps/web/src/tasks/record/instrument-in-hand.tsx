import type { ReadingQuantityName } from '@becket/journal';
import { useDesk } from '../../desk/use-desk.ts';
import { useSettings } from '../../desk/use-device.ts';
import { useLanguage } from '../../parts/language.tsx';
import { useObservable } from '../../parts/observable.ts';
import { SelectField } from '../../parts/select-field.tsx';
import { inHandOf, instrumentInHand, instrumentsFor, takeInHand } from './instruments-state.ts';
import { unitWords } from './unit-words.ts';

/**
 * The instrument for the quantity being read. What it measures is typed and shown in its own unit, and every further
 * reading of its sort names it.
 */
export function InstrumentInHand({ quantity }: { quantity: ReadingQuantityName }) {
  const language = useLanguage();
  const { say } = language;
  const { desk, job } = useDesk();
  const { unit } = useSettings();
  const inHand = useObservable(inHandOf(desk.id));
  const known = instrumentsFor(job, quantity);
  if (known.length === 0) return null;
  const held = instrumentInHand(job, inHand, quantity);
  return (
    <SelectField
      label={say('Instrument')}
      hint={
        held === undefined || held.unit === unit
          ? undefined
          : say('What it measures is typed in {unit}, as it shows.', { unit: unitWords(held.unit, language) })
      }
      value={held?.instrument ?? ''}
      onChange={(name) => inHandOf(desk.id).set(takeInHand(inHand, quantity, name))}
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
