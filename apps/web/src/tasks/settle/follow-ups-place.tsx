import './settle.css';
import { type Message, message } from '@becket/core';
import { type FollowUp, followUpKinds } from '@becket/journal';
import { planFollowUp, recordFollowUp, withdrawEntry } from '@becket/tasks';
import { useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { Choice } from '../../parts/choice.tsx';
import { DayField, todayHere } from '../../parts/day-field.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { once } from '../../parts/once.ts';
import { Problem } from '../../parts/problem.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { numberOf } from './settle-state.ts';
import { useSettling } from './use-settling.ts';

type Kind = (typeof followUpKinds)[number];

const kindWords: Readonly<Record<Kind, Message>> = {
  'another pass': message('another pass'),
  tuning: message('tuning'),
  'a look': message('a look'),
};

/** Days on which the piano is seen again: planned, and done. */
export function FollowUpsPlace() {
  const { say } = useLanguage();
  const { settling } = useSettling();
  return (
    <section aria-labelledby="follow-ups">
      <h2 id="follow-ups">{say('Follow-ups')}</h2>
      {settling.followUps.length === 0 ? (
        <p>{say('No follow-up is planned yet.')}</p>
      ) : (
        <ul className="plain-list" aria-label={say('Follow-ups')}>
          {settling.followUps.map((one) => (
            <FollowUpLine key={one.entry} followUp={one} />
          ))}
        </ul>
      )}
      <PlanForm />
    </section>
  );
}

function PlanForm() {
  const { desk } = useDesk();
  const { say } = useLanguage();
  const [on, setOn] = useState('');
  const [what, setWhat] = useState<Kind>('tuning');
  const [note, setNote] = useState('');
  const [problem, setProblem] = useState<string>();
  async function keep(): Promise<void> {
    setProblem(undefined);
    try {
      await desk.runHere((context, id) =>
        planFollowUp(context, id, { on, what, ...(note.trim() === '' ? {} : { note: note.trim() }) }),
      );
      setOn('');
      setNote('');
    } catch (error) {
      setProblem(error instanceof Error ? error.message : String(error));
    }
  }
  return (
    <form onSubmit={once(keep)} aria-label={say('Plan a follow-up')}>
      <h3>{say('Plan a follow-up')}</h3>
      <Choice
        label={say('[a follow-up] For')}
        value={what}
        onChange={setWhat}
        options={followUpKinds.map((value) => ({ value, words: say(kindWords[value]) }))}
      />
      <div className="fields">
        <DayField label={say('On')} value={on} onChange={setOn} />
        <TextField label={say('In words')} hint={say('may stay empty')} value={note} onChange={setNote} />
      </div>
      <Problem says={problem} />
      <button type="submit" className="button strong">
        {say('Plan it')}
      </button>
    </form>
  );
}

function FollowUpLine({ followUp }: { followUp: FollowUp }) {
  const { desk } = useDesk();
  const { say, day, plain } = useLanguage();
  const [isAsked, setAsked] = useState(false);
  const { on, what, note, done, entry } = followUp;
  const name = say('{what}, {day}', { what: say(kindWords[what]), day: day(on) });
  const takeBack = (target: string) =>
    desk.run((context, id) => withdrawEntry(context, id, target, say('taken back')));
  return (
    <li className="settle-day">
      <p>
        <strong>
          {done !== undefined ? '●' : on < todayHere() ? '▲' : '○'} {name}
        </strong>
        {note !== undefined && <span className="faint"> {note}</span>}
        {done === undefined ? (
          on < todayHere() && <span className="warn"> {say('late')}</span>
        ) : (
          <span className="faint">
            {' '}
            {say('done on {day}', { day: day(done.on) })}
            {done.temperature_c !== undefined && `, ${plain(done.temperature_c)} °C`}
            {done.relativeHumidity_percent !== undefined &&
              `, ${say('{percent} % relative humidity', { percent: plain(done.relativeHumidity_percent) })}`}
            {done.note !== undefined && `. ${done.note}`}
          </span>
        )}
      </p>
      <div className="button-row">
        {done === undefined ? (
          <>
            <button
              type="button"
              className="button"
              aria-label={say('It was done: {name}', { name })}
              aria-expanded={isAsked}
              onClick={() => setAsked(!isAsked)}
            >
              {say('It was done')}
            </button>
            <button
              type="button"
              className="button quiet"
              aria-label={say('Take back: {name}', { name })}
              onClick={once(() => takeBack(entry))}
            >
              {say('Take back')}
            </button>
          </>
        ) : (
          <button
            type="button"
            className="button quiet"
            aria-label={say('It is not done yet: {name}', { name })}
            onClick={once(() => takeBack(done.entry))}
          >
            {say('It is not done yet')}
          </button>
        )}
      </div>
      {isAsked && done === undefined && <DoneForm followUp={followUp} onDone={() => setAsked(false)} />}
    </li>
  );
}

function DoneForm({ followUp, onDone }: { followUp: FollowUp; onDone: () => void }) {
  const { desk } = useDesk();
  const language = useLanguage();
  const { say } = language;
  const [on, setOn] = useState(() => todayHere());
  const [temperature, setTemperature] = useState('');
  const [humidity, setHumidity] = useState('');
  const [note, setNote] = useState('');
  const [problem, setProblem] = useState<string>();
  async function keep(): Promise<void> {
    setProblem(undefined);
    try {
      const temperature_c = numberOf(temperature, '°C', language);
      const relativeHumidity_percent = numberOf(humidity, '%', language);
      await desk.runHere((context, id) =>
        recordFollowUp(context, id, {
          followUp: followUp.entry,
          on,
          ...(temperature_c === undefined ? {} : { temperature_c }),
          ...(relativeHumidity_percent === undefined ? {} : { relativeHumidity_percent }),
          ...(note.trim() === '' ? {} : { note: note.trim() }),
        }),
      );
      onDone();
    } catch (error) {
      setProblem(error instanceof Error ? error.message : String(error));
    }
  }
  const empty = say('may stay empty');
  return (
    <form onSubmit={once(keep)} aria-label={say('The follow-up as it was done')}>
      <div className="fields">
        <DayField label={say('On')} value={on} onChange={setOn} />
        <TextField
          label={say('Temperature (°C)')}
          hint={empty}
          value={temperature}
          onChange={setTemperature}
          isNumber
        />
        <TextField
          label={say('Relative humidity (%)')}
          hint={empty}
          value={humidity}
          onChange={setHumidity}
          isNumber
        />
        <TextField label={say('In words')} hint={empty} value={note} onChange={setNote} />
      </div>
      <Problem says={problem} />
      <button type="submit" className="button strong">
        {say('Keep it')}
      </button>
    </form>
  );
}
