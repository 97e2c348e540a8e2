import { english, type Language } from '@becket/core';
import { type Job, unitsForDimension, waysOfStating } from '@becket/journal';
import { describeInstrument } from '@becket/tasks';
import { useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { useSettings } from '../../desk/use-device.ts';
import { Choice } from '../../parts/choice.tsx';
import { FormSheet } from '../../parts/form-sheet.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { useObservable } from '../../parts/observable.ts';
import { SelectField } from '../../parts/select-field.tsx';
import { TextField } from '../../parts/text-field.tsx';
import {
  type Instrument,
  instrumentForm,
  instrumentOf,
  instrumentWords,
  measuredDimensions,
  statedWords,
} from './instruments-state.ts';
import './record-parts.css';
import { TakeBack } from '../../piano/take-back.tsx';
import { unitWords } from './unit-words.ts';

/** The measuring tools of this job: what each shows, how finely, and how far it may be off. */
export function InstrumentsPlace() {
  const language = useLanguage();
  const { say } = language;
  const { job } = useDesk();
  const [open, setOpen] = useState<Instrument | 'new'>();
  const known = [...job.instruments.values()];
  return (
    <section aria-labelledby="instruments">
      <h2 id="instruments">{say('Instruments')}</h2>
      <p>
        {say(
          'A reading that names its instrument is worth what that instrument can tell: its smallest step, and what is stated of it. Choose the one in hand where readings are entered.',
        )}
      </p>
      {known.length === 0 && (
        <p className="notice">
          {say('None is described yet: no uncertainty can be stated of a single reading then.')}
        </p>
      )}
      <ul className="plain-list row-list" aria-label={say('Instruments of this job')}>
        {known.map((one) => (
          <li key={one.instrument}>
            <span>
              <strong>{one.instrument}</strong> {instrumentWords(one, language)}
              {one.usedFor !== undefined && `; ${one.usedFor}`}
              <span className="faint">; {readingsWords(job, one.instrument, language)}</span>
            </span>
            <span className="button-row">
              <button
                type="button"
                className="button quiet"
                aria-label={say('Change {instrument}', { instrument: one.instrument })}
                onClick={() => setOpen(one)}
              >
                {say('Change')}
              </button>
              <TakeBack
                entry={one.entry}
                spoken={say('Take back {instrument}', { instrument: one.instrument })}
              />
            </span>
          </li>
        ))}
      </ul>
      <button type="button" className="button" onClick={() => setOpen('new')}>
        {say('Describe an instrument')}
      </button>
      {open !== undefined && (
        <InstrumentSheet before={open === 'new' ? undefined : open} onClose={() => setOpen(undefined)} />
      )}
    </section>
  );
}

/** How many readings rest on an instrument: taking it back takes what it says of them. */
function readingsWords({ readings }: Job, name: string, { say }: Language = english): string {
  const count = readings.filter(({ instrument }) => instrument === name).length;
  return count === 0
    ? say('no reading names it')
    : say('{count, plural, one {# reading names} other {# readings name}} it', { count });
}

function InstrumentSheet({ before, onClose }: { before: Instrument | undefined; onClose: () => void }) {
  const language = useLanguage();
  const { say } = language;
  const { desk } = useDesk();
  const { unit } = useSettings();
  const problem = useObservable(desk.problem);
  const [form, setForm] = useState(() => instrumentForm(before, unit, language));

  async function keep(): Promise<void> {
    const done = await desk.run(async (context, id) =>
      describeInstrument(context, id, instrumentOf(form, language)),
    );
    if (done !== undefined) onClose();
  }

  return (
    <FormSheet
      title={before === undefined ? say('An instrument') : before.instrument}
      keep={say('Keep the instrument')}
      problem={problem}
      onKeep={keep}
      onClose={onClose}
    >
      {before === undefined && (
        <TextField
          label={say('Its name in the shop')}
          hint={say('readings carry it, such as micrometer 1')}
          maxLength={120}
          value={form.name}
          onChange={(name) => setForm({ ...form, name })}
        />
      )}
      <div className="fields">
        {before === undefined && (
          <SelectField
            label={say('What it measures')}
            value={form.measures}
            onChange={(measures) =>
              setForm({
                ...form,
                measures,
                unit: measures === 'length' ? unit : unitsForDimension(measures)[0]!,
              })
            }
            options={measuredDimensions.map(({ value, words }) => ({ value, words: say(words) }))}
          />
        )}
        <SelectField
          label={say('Unit it shows')}
          value={form.unit}
          onChange={(next) => setForm({ ...form, unit: next })}
          options={unitsForDimension(form.measures).map((value) => ({
            value,
            words: unitWords(value, language),
          }))}
        />
        <TextField
          label={say('Smallest step')}
          hint={say('in {unit}: the last digit, or the finest line', {
            unit: unitWords(form.unit, language),
          })}
          isNumber
          value={form.resolution}
          onChange={(resolution) => setForm({ ...form, resolution })}
        />
      </div>
      <TextField
        label={say('Stated uncertainty')}
        hint={say('in {unit}; empty when nothing is stated, which is not the same as none', {
          unit: unitWords(form.unit, language),
        })}
        isNumber
        value={form.stated}
        onChange={(stated) => setForm({ ...form, stated })}
      />
      {form.stated.trim() !== '' && (
        <Choice
          label={say('Stated as')}
          value={form.statedAs}
          onChange={(statedAs) => setForm({ ...form, statedAs })}
          options={waysOfStating.map((value) => ({ value, words: say(statedWords[value]) }))}
        />
      )}
      <TextField
        label={say('What it is used for')}
        hint={say('may stay empty')}
        maxLength={200}
        value={form.usedFor}
        onChange={(usedFor) => setForm({ ...form, usedFor })}
      />
    </FormSheet>
  );
}
