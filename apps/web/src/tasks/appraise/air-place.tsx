import { english, type Language, noteName, parseNote } from '@becket/core';
import { type ReadingQuantityName, readingQuantities } from '@becket/journal';
import { type ReadingToRecord, recordReadings, takeBackEntry } from '@becket/tasks';
import { useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { Field } from '../../parts/field.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { once } from '../../parts/once.ts';
import { Problem } from '../../parts/problem.tsx';
import { readTypedNumber } from '../../parts/typed-number.ts';
import { ReasonHere } from './reason-here.tsx';

const shown: readonly ReadingQuantityName[] = ['pitch-offset', 'relative-humidity', 'temperature'];

/** Pitch as found, and the air it was read in: what torque and pitch depend on. */
export function AirPlace() {
  const language = useLanguage();
  const { localMoment, plain, say } = language;
  const { desk, job } = useDesk();
  const [note, setNote] = useState('A4');
  const [cents, setCents] = useState('');
  const [humidity, setHumidity] = useState('');
  const [temperature, setTemperature] = useState('');
  const [reason, setReason] = useState('');
  const [problem, setProblem] = useState<string>();
  const readings = job.readings.filter(({ quantity }) => shown.includes(quantity));

  async function keep(): Promise<void> {
    setProblem(undefined);
    try {
      const wanted = [
        readingOf(
          'pitch-offset',
          cents,
          'cents',
          note.trim() === '' ? undefined : parseNote(note.trim(), undefined, language),
          language,
        ),
        readingOf('relative-humidity', humidity, '%', undefined, language),
        readingOf('temperature', temperature, '°C', undefined, language),
      ].filter((reading) => reading !== undefined);
      if (wanted.length === 0)
        throw new RangeError(
          say('Cannot keep this: at least one value is needed, none was found. Type one.'),
        );
      const words = reason.trim();
      await desk.runHere((context, id) =>
        recordReadings(
          context,
          id,
          wanted.map((reading) => (words === '' ? reading : { ...reading, reason: words })),
        ),
      );
      setCents('');
      setHumidity('');
      setTemperature('');
    } catch (error) {
      setProblem(error instanceof Error ? error.message : String(error));
    }
  }

  const field = (label: string, hint: string, value: string, set: (value: string) => void) => (
    <Field label={label} hint={hint}>
      {(ids) => (
        <input
          {...ids}
          className="input"
          // A sign is typed with full keyboards only; 'text' brings one on every phone.
          inputMode="text"
          autoComplete="off"
          value={value}
          onChange={(event) => set(event.target.value)}
        />
      )}
    </Field>
  );

  return (
    <section aria-labelledby="air">
      <h2 id="air">{say('Pitch and air as found')}</h2>
      <p>
        {say(
          'Read the air before the torque: a block grips less in a dry season. Pitch at a few notes says how far the whole piano has to come.',
        )}
      </p>
      <ReasonHere reason={reason} onChange={setReason} />
      <form onSubmit={once(keep)} aria-label={say('Pitch and air')}>
        <div className="fields">
          {field(say('Note'), say('that the pitch was read at'), note, setNote)}
          {field(say('Pitch (cents)'), say('below is negative: -35'), cents, setCents)}
          {field(say('Relative humidity (%)'), say('in the room, near the piano'), humidity, setHumidity)}
          {field(say('Temperature (°C)'), say('may stay empty'), temperature, setTemperature)}
        </div>
        <Problem says={problem} />
        <button type="submit" className="button strong">
          {say('Keep what is filled in')}
        </button>
      </form>
      <ul className="plain-list" aria-label={say('Pitch and air, kept')}>
        {readings.map((one) => (
          <li key={one.entry}>
            {one.place.key === undefined
              ? say(readingQuantities[one.quantity].label)
              : say('{quantity} at {note}', {
                  quantity: say(readingQuantities[one.quantity].label),
                  note: noteName(one.place.key),
                })}
            :{' '}
            <strong>
              {plain(one.asRead.value)} {one.asRead.unit === 'cents' ? say('cents') : one.asRead.unit}
            </strong>{' '}
            <span className="faint">
              {localMoment(one.at)}, {one.by}
            </span>{' '}
            <button
              type="button"
              className="button quiet"
              aria-label={say('Take back {label} {figure}', {
                label: say(readingQuantities[one.quantity].label),
                figure: plain(one.asRead.value),
              })}
              onClick={once(() =>
                desk.run((context, id) =>
                  takeBackEntry(context, id, one.entry, { reason, otherwise: say('taken back') }),
                ),
              )}
            >
              {say('Take back')}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

function readingOf(
  quantity: ReadingQuantityName,
  text: string,
  unit: ReadingToRecord['unit'],
  key?: number,
  language: Language = english,
): ReadingToRecord | undefined {
  const { say } = language;
  const typed = readTypedNumber(text.replace('−', '-'), language);
  if (typed.is === 'empty') return undefined;
  if (typed.is === 'problem' || typed.unit !== undefined)
    throw new RangeError(
      say("Cannot read '{found}' as {label}: a number in {unit} is needed. Type it again.", {
        found: text.trim(),
        label: say(readingQuantities[quantity].label),
        unit: unit === 'cents' ? say('cents') : unit,
      }),
    );
  return { quantity, place: key === undefined ? {} : { key }, value: typed.value, unit };
}
