import { noteName } from '@becket/core';
import { pinFeels, type StandingReading } from '@becket/journal';
import { pinTorqueMap, recordReadings, takeBackEntry } from '@becket/tasks';
import { type FormEvent, useDeferredValue, useEffect, useMemo, useRef, useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { useSettings } from '../../desk/use-device.ts';
import { Choice } from '../../parts/choice.tsx';
import { entryForm } from '../../parts/entry-form.ts';
import { Field } from '../../parts/field.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { useObservable } from '../../parts/observable.ts';
import { once } from '../../parts/once.ts';
import { Problem } from '../../parts/problem.tsx';
import { TableFrame } from '../../parts/table-frame.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { ReasonHere } from './reason-here.tsx';
import { TorqueCompare } from './torque-compare.tsx';
import { TorqueFindings } from './torque-findings.tsx';
import {
  conditionWords,
  newTorqueForm,
  nextPin,
  type TorqueForm,
  torqueQuestion,
  torqueReadingOf,
  torqueText,
  torqueUnits,
  turnings,
} from './torque-state.ts';

/** Torque pin by pin: typed by hand or by the wrench, Enter goes on; below it what the block says so far. */
export function TorquePlace() {
  const language = useLanguage();
  const { say } = language;
  const { job } = useDesk();
  const { unit } = useSettings();
  const [stage, setStage] = useState<TorqueForm['stage']>('as found');
  const [chosen, setChosen] = useState<string>();
  const [wanted, setWanted] = useState<{ key: number; string: number }>();
  const readings = job.readings.filter(({ quantity }) => quantity === 'pin-torque');
  const settled = useDeferredValue(job);
  const isStrung = readings.some((one) => one.stage === 'as strung');
  const before = useMemo(() => pinTorqueMap(settled, { stage: 'as found', language }), [settled, language]);
  const after = useMemo(
    () => (isStrung ? pinTorqueMap(settled, { stage: 'as strung', language }) : undefined),
    [settled, isStrung, language],
  );
  return (
    <section aria-labelledby="torque">
      <h2 id="torque">{say('Pin torque')}</h2>
      <TorqueEntry wanted={wanted} />
      {isStrung && (
        <Choice
          label={say('Show the block')}
          value={stage}
          onChange={setStage}
          options={[
            { value: 'as found', words: say('as found') },
            { value: 'as strung', words: say('newly strung') },
          ]}
        />
      )}
      <TorqueFindings
        map={stage === 'as strung' && after !== undefined ? after : before}
        unit={unit}
        chosen={chosen}
        onChoose={({ name }) => setChosen(name)}
        onRead={setWanted}
      />
      {after !== undefined && <TorqueCompare before={before} after={after} unit={unit} />}
      <TorqueReadings readings={readings} />
    </section>
  );
}

interface Kept {
  readonly entry: string;
  readonly words: string;
  readonly value: string;
  readonly question: string | undefined;
}

function TorqueEntry({ wanted }: { wanted: { key: number; string: number } | undefined }) {
  const language = useLanguage();
  const { say, sayNodes } = language;
  const { desk, job } = useDesk();
  const [entry] = useState(() => entryForm<TorqueForm>(newTorqueForm(job.piano?.firstKey ?? 1)));
  const { form, problem } = useObservable(entry.state);
  const [reason, setReason] = useState('');
  const [kept, setKept] = useState<readonly Kept[]>([]);
  const [isFirst] = useState(() => !job.readings.some(({ quantity }) => quantity === 'pin-torque'));
  const field = useRef<HTMLInputElement>(null);
  const { take } = entry;
  const last = kept.at(-1);

  useEffect(() => {
    if (wanted === undefined) return;
    entry.take({ note: noteName(wanted.key), string: wanted.string as TorqueForm['string'] });
    field.current?.focus();
    field.current?.scrollIntoView({ block: 'center' });
  }, [entry, wanted]);

  function keep(event: FormEvent): void {
    event.preventDefault();
    void entry.keep((typed) => {
      const reading = torqueReadingOf(typed, reason, language);
      return {
        next: { ...typed, value: '', feel: '', ...nextPin(job, typed, language) },
        kept: keepReading(reading, typed),
      };
    });
    field.current?.focus();
  }

  async function keepReading(reading: ReturnType<typeof torqueReadingOf>, typed: TorqueForm): Promise<void> {
    const done = await desk.runHere((context, id) => recordReadings(context, id, [reading]));
    const { place, value, unit } = reading;
    const si = done.job.readings.find((one) => one.entry === done.entries[0])!.value_si;
    setKept((now) => [
      ...now,
      {
        entry: done.entries[0]!,
        words: say('{note} string {string}, {turning}', {
          note: noteName(place.key!),
          string: place.string!,
          turning: say(typed.turning),
        }),
        value: torqueText(si, language),
        question: torqueQuestion({ value, unit }, language),
      },
    ]);
  }

  async function undo(): Promise<void> {
    if (last === undefined) return;
    const done = await desk.run((context, id) =>
      takeBackEntry(context, id, last.entry, { reason, otherwise: say('taken back at once') }),
    );
    if (done !== undefined) setKept((now) => now.slice(0, -1));
    field.current?.focus();
  }

  return (
    <form className="torque-form" onSubmit={keep} aria-label={say('Torque of a pin')}>
      <p className="faint">
        {say(
          'Turn slowly and steadily and read while the pin moves. Sharp-going readings hold the string’s own pull as well, flat-going ones lack it: say which it was. Never stand over a pin that creeps.',
        )}
      </p>
      <details className="torque-how" open={isFirst}>
        <summary>
          {say('Turned {turning} · {unit} · {stage} · every {every, plural, one {note} other {# notes}}', {
            turning: form.isBothWays ? say('sharp, then flat') : say(form.turning),
            unit: form.unit,
            stage: form.stage === 'as found' ? say('as found') : say('newly strung'),
            every: form.every,
          })}
        </summary>
        <div className="fields torque-settings">
          <Choice
            label={say('Pins are turned')}
            value={form.isBothWays ? 'both' : form.turning}
            onChange={(way) =>
              take(
                way === 'both' ? { isBothWays: true, turning: 'sharp' } : { isBothWays: false, turning: way },
              )
            }
            options={[
              ...turnings.map((value) => ({ value, words: say(value) })),
              { value: 'both' as const, words: say('sharp, then flat') },
            ]}
          />
          <Choice
            label={say('Unit of the wrench')}
            value={form.unit}
            onChange={(unit) => take({ unit })}
            options={torqueUnits.map((value) => ({ value, words: value }))}
          />
          <Choice
            label={say('State of the piano')}
            value={form.stage}
            onChange={(stage) => take({ stage })}
            options={[
              { value: 'as found', words: say('as found') },
              { value: 'as strung', words: say('newly strung') },
            ]}
          />
          <Field label={say('After each reading go on by')} hint={say('notes')}>
            {(ids) => (
              <input
                {...ids}
                className="input"
                type="number"
                min={1}
                max={24}
                value={form.every}
                onChange={(event) => take({ every: Math.max(1, Number(event.target.value) || 1) })}
              />
            )}
          </Field>
        </div>
      </details>
      <ReasonHere reason={reason} onChange={setReason} isWanted={form.stage === 'as found'} />
      <div className="torque-entry">
        <TextField label={say('Note')} value={form.note} onChange={(value) => take({ note: value })} />
        <Choice
          label={say('[of a note] String')}
          value={String(form.string)}
          onChange={(string) => take({ string: Number(string) as TorqueForm['string'] })}
          options={(['1', '2', '3'] as const).map((value) => ({
            value,
            words: value,
            spoken: say('string {string}', { string: value }),
          }))}
        />
        <Choice
          label={say('The hand felt')}
          value={form.feel}
          onChange={(feel) => take({ feel })}
          options={pinFeels.map((value) => ({ value, words: say(value) }))}
        />
        <Field
          label={
            form.turning === 'no string pull'
              ? say('Torque ({unit})', { unit: form.unit })
              : say('Torque ({unit}), going {turning, select, sharp {sharp} other {flat}}', {
                  unit: form.unit,
                  turning: form.turning,
                })
          }
        >
          {(ids) => (
            <input
              {...ids}
              ref={field}
              className="input big-value"
              inputMode="decimal"
              enterKeyHint="next"
              autoComplete="off"
              value={form.value}
              onChange={(event) => take({ value: event.target.value })}
            />
          )}
        </Field>
        <button type="submit" className="button strong">
          {say('Keep and go on')}
        </button>
      </div>
      <Problem says={problem} />
      <div className="torque-kept">
        <output aria-live="polite">
          {last === undefined ? (
            <span className="faint">{say('The last reading is read back here.')}</span>
          ) : (
            <>
              {sayNodes('Kept: {words} {strong}', {
                words: last.words,
                strong: <strong className="read-big">{last.value}</strong>,
              })}
              {last.question !== undefined && <span className="question"> ? {last.question}</span>}
            </>
          )}
        </output>
        <button type="button" className="button" disabled={last === undefined} onClick={once(undo)}>
          {say('Undo')}
        </button>
      </div>
    </form>
  );
}

function TorqueReadings({ readings }: { readings: readonly StandingReading[] }) {
  const language = useLanguage();
  const { localDay, plain, say } = language;
  const { desk } = useDesk();
  const [reason, setReason] = useState('');
  if (readings.length === 0) return null;
  return (
    <details className="torque-readings">
      <summary>{say('All {readings} readings as they were taken', { readings: readings.length })}</summary>
      <ReasonHere reason={reason} onChange={setReason} />
      <TableFrame label={say('Torque readings')}>
        <table className="table">
          <thead>
            <tr>
              <th scope="col">{say('Pin')}</th>
              <th scope="col" className="number">
                {say('Torque')}
              </th>
              <th scope="col">{say('How')}</th>
              <th scope="col">{say('Feel')}</th>
              <th scope="col">{say('When, by')}</th>
              <th scope="col">
                <span className="unseen">{say('Take back')}</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {readings.map((one) => {
              const note = one.place.key === undefined ? say('no note') : noteName(one.place.key);
              const pin =
                one.place.string === undefined
                  ? note
                  : say('{note} string {string}', { note, string: one.place.string });
              return (
                <tr key={one.entry}>
                  <th scope="row">{pin}</th>
                  <td className="number">
                    {plain(one.asRead.value)} {one.asRead.unit}
                  </td>
                  <td>
                    {conditionWords(one, language)}
                    {one.stage === 'as strung' && `, ${say('newly strung')}`}
                  </td>
                  <td>{one.feel === undefined ? '' : say(one.feel)}</td>
                  <td>
                    {localDay(one.at)}, {one.by}
                  </td>
                  <td>
                    <button
                      type="button"
                      className="button quiet"
                      aria-label={say('Take back {pin}, {torque} {unit}', {
                        pin,
                        torque: plain(one.asRead.value),
                        unit: one.asRead.unit,
                      })}
                      onClick={once(() =>
                        desk.run((context, id) =>
                          takeBackEntry(context, id, one.entry, {
                            reason,
                            otherwise: say('taken back in the torque list'),
                          }),
                        ),
                      )}
                    >
                      {say('Take back')}
                    </button>
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </TableFrame>
    </details>
  );
}
