import { noteName } from '@becket/core';
import { absences, readingQuantities } from '@becket/journal';
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
  placeReadingsOf,
  unitsOfQuantity,
} from './parts-state.ts';
import { keepPlaceReading, type PlaceEntry, placeAnswersOf, placeForm } from './place-reading-state.ts';
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
  const [open, setOpen] = useState<PlaceEntry | 'new'>();
  const whereOf = ({ place }: PlaceEntry) =>
    place.key !== undefined ? noteName(place.key) : (place.section ?? say('the whole piano'));
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
        onAdd={() => setOpen('new')}
      />
      <ul className="plain-list row-list">
        {placeReadingsOf(job, section).map((one) => {
          const { quantity, place, asRead, value_si, origin, span_m, loaded, instrument } = one;
          const { dimension } = readingQuantities[quantity];
          const label = say(readingQuantities[quantity].label);
          const where = whereOf(one);
          return (
            <Line key={one.entry} fact={one} spoken={`${label}, ${where}`} onChange={() => setOpen(one)}>
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
        {placeAnswersOf(job, section).map((one) => {
          const label = say(readingQuantities[one.quantity].label);
          const where = whereOf(one);
          return (
            <Line key={one.entry} fact={one} spoken={`${label}, ${where}`} onChange={() => setOpen(one)}>
              <strong>{label}</strong>, {where}
              {one.place.point !== undefined && `, ${one.place.point}`}:{' '}
              {one.reason === undefined ? say(one.answer) : `${say(one.answer)}: ${one.reason}`}
            </Line>
          );
        })}
      </ul>
      {open !== undefined && (
        <PlaceReadingSheet
          section={section}
          before={open === 'new' ? undefined : open}
          onClose={() => setOpen(undefined)}
        />
      )}
    </section>
  );
}

function PlaceReadingSheet({
  section,
  before,
  onClose,
}: {
  section: string | undefined;
  /** What is changed; undefined for a new one. */
  before: PlaceEntry | undefined;
  onClose: () => void;
}) {
  const language = useLanguage();
  const { say } = language;
  const { desk, job } = useDesk();
  const { unit: screenUnit } = useSettings();
  const said = useSaidReason();
  const inHand = useObservable(inHandOf(desk.id));
  const [form, setForm] = useState(() =>
    placeForm(before, { section, firstSection: job.sections[0]?.section, screenUnit }, language),
  );
  // Until a unit is chosen, the one that the instrument shows.
  const [chosenUnit, setUnit] = useState<PlaceReadingForm['unit'] | undefined>(
    before?.kind === 'reading' ? before.asRead.unit : undefined,
  );
  const [kept, setKept] = useState(0);
  const { quantity } = form;
  const { at } = placeQuantities[quantity];
  const instrument = instrumentInHand(job, inHand, quantity);
  const units = unitsOfQuantity(quantity, screenUnit);
  const unit = chosenUnit ?? instrument?.unit ?? units[0]!;

  const isKnown = form.answer === 'known';
  const keep = () =>
    desk.run((context, id) =>
      keepPlaceReading(
        context,
        id,
        { ...form, unit, instrument: instrument?.instrument },
        { before, screenUnit, isWholePiano: section === undefined, said },
      ),
    );
  async function keepAndGoOn(): Promise<void> {
    if ((await keep()) === undefined) return;
    setForm({ ...form, value: '', note: '', point: '', why: '' });
    setKept(kept + 1);
  }

  return (
    <RecordSheet
      title={before === undefined ? say('A reading here and there') : say(readingQuantities[quantity].label)}
      keep={say('Keep the reading')}
      onClose={onClose}
      onKeep={keep}
      more={
        before === undefined && (
          <button type="button" className="button" onClick={once(keepAndGoOn)}>
            {say('Keep, and another')}
          </button>
        )
      }
    >
      <p role="status" className="faint">
        {kept > 0 && say('{kept, plural, one {# reading} other {# readings}} kept; the next one.', { kept })}
      </p>
      {before === undefined && (
        <SelectField
          label={say('What is read')}
          value={quantity}
          onChange={(next) => {
            setForm({ ...form, quantity: next });
            setUnit(undefined);
          }}
          options={placeQuantityNames.map((value) => ({ value, words: say(readingQuantities[value].label) }))}
        />
      )}
      <Choice
        label={say('What was found')}
        value={form.answer}
        onChange={(answer) => setForm({ ...form, answer })}
        options={[
          { value: 'known', words: say('it was read') },
          ...absences.map((value) => ({ value, words: say(value) })),
        ]}
      />
      {isKnown && (
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
      )}
      <div className="fields">
        {(at === 'note' || at === 'note or section') && (
          <TextField
            label={say('Note')}
            hint={
              !isKnown
                ? say('such as F#3; empty where the answer holds everywhere')
                : at === 'note'
                  ? say('such as F#3')
                  : say('such as F#3; empty for a point of the section')
            }
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
        {isKnown && needsSpan(quantity) && (
          <TextField
            label={say('Span it was read over')}
            hint={say('in {unit}, or with its unit', { unit: unitWords(screenUnit, language) })}
            value={form.span}
            onChange={(span) => setForm({ ...form, span })}
          />
        )}
      </div>
      {isKnown && needsSpan(quantity) && (
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
      {!isKnown && (
        <TextField
          label={say('Why, if there is something to say')}
          value={form.why}
          onChange={(why) => setForm({ ...form, why })}
        />
      )}
    </RecordSheet>
  );
}
