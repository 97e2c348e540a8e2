import { noteName } from '@becket/core';
import { readingQuantities } from '@becket/journal';
import { recordReadings } from '@becket/tasks';
import { useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { useSettings } from '../../desk/use-device.ts';
import { Choice } from '../../parts/choice.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { useObservable } from '../../parts/observable.ts';
import { once } from '../../parts/once.ts';
import { SelectField } from '../../parts/select-field.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { lengthKindOf } from '../../piano/length-kind.ts';
import { InstrumentInHand } from './instrument-in-hand.tsx';
import { inHandOf, instrumentInHand } from './instruments-state.ts';
import { Line, PartHead } from './part-list.tsx';
import {
  needsSpan,
  type PlaceReadingForm,
  placeQuantities,
  placeQuantityNames,
  placeReadingOf,
  placeReadingsOf,
  unitsOfQuantity,
} from './parts-state.ts';
import { useSaidReason } from './reason-field.tsx';
import { RecordSheet } from './record-sheet.tsx';
import { SectionSelect } from './section-choice.tsx';
import { bothUnits } from './typed-length.ts';
import { unitWords } from './unit-words.ts';

/** What is read here and there: of a section, or of the piano as a whole. */
export function PlaceReadings({ section }: { section: string | undefined }) {
  const language = useLanguage();
  const { plain, say } = language;
  const { job } = useDesk();
  const { unit } = useSettings();
  const [isOpen, setOpen] = useState(false);
  return (
    <section aria-labelledby="place-readings">
      <PartHead
        id="place-readings"
        words={
          section === undefined
            ? say('Air and pitch')
            : say('Bearing, crown, pins, pressure bar, spacing and pitch')
        }
        add={say('Add a reading')}
        onAdd={() => setOpen(true)}
      />
      <ul className="plain-list row-list">
        {placeReadingsOf(job, section).map((one) => {
          const { quantity, place, asRead, value_si, origin, span_m, loaded, instrument } = one;
          const { dimension } = readingQuantities[quantity];
          const label = say(readingQuantities[quantity].label);
          const where =
            place.key !== undefined ? noteName(place.key) : (place.section ?? say('the whole piano'));
          return (
            <Line key={one.entry} fact={one} spoken={`${label}, ${where}`}>
              <strong>{label}</strong>, {where}
              {place.point !== undefined && `, ${place.point}`}:{' '}
              {dimension === 'length'
                ? bothUnits(value_si, unit, lengthKindOf(quantity), language)
                : `${plain(asRead.value)} ${unitWords(asRead.unit, language)}`}
              {span_m !== undefined &&
                `, ${say('over a span of {span}', {
                  span: bothUnits(span_m, unit, 'length', language),
                })}`}
              {loaded !== undefined && `, ${loaded ? say('loaded') : say('unloaded')}`}{' '}
              <span className="faint">{instrument ?? say(origin)}</span>
            </Line>
          );
        })}
      </ul>
      {isOpen && <PlaceReadingSheet section={section} onClose={() => setOpen(false)} />}
    </section>
  );
}

function PlaceReadingSheet({ section, onClose }: { section: string | undefined; onClose: () => void }) {
  const language = useLanguage();
  const { say } = language;
  const { desk, job } = useDesk();
  const { unit: screenUnit } = useSettings();
  const said = useSaidReason();
  const inHand = useObservable(inHandOf(desk.id));
  const [form, setForm] = useState<Omit<PlaceReadingForm, 'unit'>>({
    quantity: section === undefined ? 'relative-humidity' : 'bearing-rise',
    value: '',
    note: '',
    section: section ?? job.sections[0]?.section ?? '',
    point: '',
    span: '',
    loaded: 'not said',
  });
  // Until a unit is chosen, the one that the instrument shows.
  const [chosenUnit, setUnit] = useState<PlaceReadingForm['unit']>();
  const [kept, setKept] = useState(0);
  const { quantity } = form;
  const { at } = placeQuantities[quantity];
  const instrument = instrumentInHand(job, inHand, quantity);
  const units = unitsOfQuantity(quantity, screenUnit);
  const unit = chosenUnit ?? instrument?.unit ?? units[0]!;

  const keep = () =>
    desk.run(async (context, id) =>
      recordReadings(context, id, [
        {
          ...placeReadingOf({ ...form, unit, instrument: instrument?.instrument }, screenUnit, language),
          ...said,
        },
      ]),
    );
  async function keepAndGoOn(): Promise<void> {
    if ((await keep()) === undefined) return;
    setForm({ ...form, value: '', note: '', point: '' });
    setKept(kept + 1);
  }

  return (
    <RecordSheet
      title={say('A reading here and there')}
      keep={say('Keep the reading')}
      onClose={onClose}
      onKeep={keep}
      more={
        <button type="button" className="button" onClick={once(keepAndGoOn)}>
          {say('Keep, and another')}
        </button>
      }
    >
      <p role="status" className="faint">
        {kept > 0 && say('{kept, plural, one {# reading} other {# readings}} kept; the next one.', { kept })}
      </p>
      <SelectField
        label={say('What is read')}
        value={quantity}
        onChange={(next) => {
          setForm({ ...form, quantity: next });
          setUnit(undefined);
        }}
        options={placeQuantityNames.map((value) => ({ value, words: say(readingQuantities[value].label) }))}
      />
      <div className="fields">
        <TextField
          label={say('Value')}
          isNumber
          value={form.value}
          onChange={(value) => setForm({ ...form, value })}
        />
        <SelectField
          label={say('Unit')}
          value={unit}
          onChange={setUnit}
          options={units.map((value) => ({ value, words: unitWords(value, language) }))}
        />
        <InstrumentInHand quantity={quantity} />
      </div>
      <div className="fields">
        {(at === 'note' || at === 'note or section') && (
          <TextField
            label={say('Note')}
            hint={at === 'note' ? say('such as F#3') : say('such as F#3; empty for a point of the section')}
            value={form.note}
            onChange={(note) => setForm({ ...form, note })}
          />
        )}
        {(at === 'section' || at === 'note or section') && (
          <SectionSelect value={form.section} onChange={(next) => setForm({ ...form, section: next })} />
        )}
        <TextField
          label={say('Point')}
          hint={say('where on it, if that matters')}
          maxLength={120}
          value={form.point}
          onChange={(point) => setForm({ ...form, point })}
        />
        {needsSpan(quantity) && (
          <TextField
            label={say('Span it was read over')}
            hint={say('in {unit}, or with its unit', { unit: unitWords(screenUnit, language) })}
            value={form.span}
            onChange={(span) => setForm({ ...form, span })}
          />
        )}
      </div>
      {needsSpan(quantity) && (
        <Choice
          label={say('Were the strings pressing on the board?')}
          value={form.loaded}
          onChange={(loaded) => setForm({ ...form, loaded })}
          options={(['not said', 'loaded', 'unloaded'] as const).map((value) => ({
            value,
            words: say(value),
          }))}
        />
      )}
    </RecordSheet>
  );
}
