import { noteName, parseNote } from '@becket/core';
import { quantitiesOverSpan, readingQuantities } from '@becket/journal';
import { recordReadings, withdrawEntry } from '@becket/tasks';
import { type FormEvent, useRef, useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { useSettings } from '../../desk/use-device.ts';
import { Choice } from '../../parts/choice.tsx';
import { entryForm } from '../../parts/entry-form.ts';
import { Field } from '../../parts/field.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { useObservable } from '../../parts/observable.ts';
import { once } from '../../parts/once.ts';
import { Problem } from '../../parts/problem.tsx';
import { SelectField } from '../../parts/select-field.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { TakeBack } from '../../piano/take-back.tsx';
import { nextKey, type StrungQuantity, strungQuantities, strungReadingOf } from './hand-over-state.ts';

const strings = ['not said', '1', '2', '3'] as const;

/** What is measured on the new strings, one value after the other: Enter keeps it and goes to the next note. */
export function StrungReadings() {
  const { desk, job } = useDesk();
  const { unit: length } = useSettings();
  const language = useLanguage();
  const { say, localDay, plain } = language;
  const [quantity, setQuantity] = useState<StrungQuantity>('wire-diameter');
  const [entry] = useState(() => entryForm({ note: noteName(job.piano?.firstKey ?? 1), value: '' }));
  const { form, problem } = useObservable(entry.state);
  const [string, setString] = useState<(typeof strings)[number]>('not said');
  const [span, setSpan] = useState('100');
  const [isLoaded, setLoaded] = useState<'loaded' | 'not loaded'>('loaded');
  const [kept, setKept] = useState<readonly { entry: string; words: string }[]>([]);
  const field = useRef<HTMLInputElement>(null);
  const needsSpan = quantitiesOverSpan.includes(quantity);
  const { dimension, label } = readingQuantities[quantity];
  const unit = dimension === 'length' ? length : dimension === 'angle' ? 'deg' : 'cents';
  const own = job.readings.filter(
    (one) => one.stage === 'as strung' && (strungQuantities as readonly string[]).includes(one.quantity),
  );
  const last = kept.at(-1);

  function keep(event: FormEvent): void {
    event.preventDefault();
    void entry.keep((typed) => {
      const key = parseNote(typed.note.trim(), undefined, language);
      const reading = strungReadingOf(
        {
          quantity,
          key,
          string: string === 'not said' ? undefined : (Number(string) as 1 | 2 | 3),
          value: typed.value,
          unit,
          span_mm: needsSpan ? span : undefined,
          isLoaded: isLoaded === 'loaded',
        },
        language,
      );
      const words = `${noteName(key)}, ${say(label)}: ${plain(reading.value)} ${unit}`;
      return {
        next: { note: noteName(nextKey(job, key)), value: '' },
        kept: desk
          .runHere((context, id) => recordReadings(context, id, [reading]))
          .then(({ entries }) => setKept((now) => [...now, { entry: entries[0]!, words }])),
      };
    });
    field.current?.focus();
  }

  async function undo(): Promise<void> {
    if (last === undefined) return;
    const done = await desk.run((context, id) =>
      withdrawEntry(context, id, last.entry, say('taken back at once')),
    );
    if (done !== undefined) setKept((now) => now.slice(0, -1));
    field.current?.focus();
  }

  return (
    <details className="strung">
      <summary>
        {say(
          'Measured on the new strings: {count, plural, =0 {nothing yet} one {# reading} other {# readings}}',
          {
            count: own.length,
          },
        )}
      </summary>
      <form onSubmit={keep} aria-label={say('A reading on the new strings')}>
        <div className="fields">
          <SelectField
            label={say('[of a reading] Quantity')}
            value={quantity}
            onChange={setQuantity}
            options={strungQuantities.map((one) => ({
              value: one,
              words: say(readingQuantities[one].label),
            }))}
          />
          <TextField
            label={say('Note')}
            value={form.note}
            onChange={(note) => entry.take({ note })}
            maxLength={6}
          />
          <Field label={`${say(label)} (${unit})`}>
            {(ids) => (
              <input
                {...ids}
                ref={field}
                className="input"
                inputMode="text"
                enterKeyHint="next"
                autoComplete="off"
                value={form.value}
                onChange={(event) => entry.take({ value: event.target.value })}
              />
            )}
          </Field>
          {needsSpan && (
            <TextField label={say('Span (mm)')} value={span} onChange={setSpan} isNumber maxLength={8} />
          )}
        </div>
        <Choice
          label={say('[of a note] String')}
          value={string}
          onChange={setString}
          options={strings.map((one) => ({ value: one, words: one === 'not said' ? say('not said') : one }))}
        />
        {needsSpan && (
          <Choice
            label={say('The board is')}
            value={isLoaded}
            onChange={setLoaded}
            options={[
              { value: 'loaded', words: say('[the board] loaded') },
              { value: 'not loaded', words: say('[the board] not loaded') },
            ]}
          />
        )}
        <Problem says={problem} />
        <div className="button-row">
          <button type="submit" className="button">
            {say('Keep and go on')}
          </button>
          <button type="button" className="button" disabled={last === undefined} onClick={once(undo)}>
            {say('Undo')}
          </button>
        </div>
        <output aria-live="polite">
          {last === undefined ? '' : say('Kept: {words}', { words: last.words })}
        </output>
      </form>
      <ul className="plain-list" aria-label={say('Readings on the new strings')}>
        {own.map((one) => {
          const place =
            one.place.key === undefined
              ? (one.place.section ?? say('whole piano'))
              : one.place.string === undefined
                ? noteName(one.place.key)
                : say('{note}, string {string}', {
                    note: noteName(one.place.key),
                    string: one.place.string,
                  });
          const words = `${place}, ${say(readingQuantities[one.quantity].label)}: ${plain(one.asRead.value)} ${one.asRead.unit}`;
          return (
            <li key={one.entry}>
              {words}{' '}
              <span className="faint">
                {localDay(one.at)}, {one.by}
              </span>{' '}
              <TakeBack entry={one.entry} spoken={say('Take back: {place}', { place: words })} />
            </li>
          );
        })}
      </ul>
    </details>
  );
}
