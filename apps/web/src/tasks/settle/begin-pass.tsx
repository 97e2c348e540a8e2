import type { Settling } from '@becket/journal';
import { beginPass } from '@becket/tasks';
import { useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { DayField, todayHere } from '../../parts/day-field.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { once } from '../../parts/once.ts';
import { Problem } from '../../parts/problem.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { movedEarlier, numberOf } from './settle-state.ts';

interface Props {
  readonly settling: Settling;
  readonly onBegun: (entry: string) => void;
}

/** Day, pitch, air and the order in which the sections are pulled up. */
export function BeginPass({ settling, onBegun }: Props) {
  const { desk, job } = useDesk();
  const language = useLanguage();
  const { say, plain } = language;
  const last = settling.passes.at(-1);
  const number = (last?.pass ?? 0) + 1;
  const names = job.sections.map(({ section }) => section);
  const [on, setOn] = useState(() => todayHere());
  const [pitch, setPitch] = useState(() =>
    plain(last?.referencePitch_hz ?? job.piano?.referencePitch_hz ?? 440),
  );
  const [temperature, setTemperature] = useState('');
  const [humidity, setHumidity] = useState('');
  const [order, setOrder] = useState<readonly string[]>(() => {
    const before = (last?.order ?? []).filter((section) => names.includes(section));
    return [...before, ...names.filter((section) => !before.includes(section))];
  });
  const [problem, setProblem] = useState<string>();

  async function begin(): Promise<void> {
    setProblem(undefined);
    try {
      const referencePitch_hz = numberOf(pitch, 'Hz', language);
      const temperature_c = numberOf(temperature, '°C', language);
      const relativeHumidity_percent = numberOf(humidity, '%', language);
      const { entries } = await desk.runHere((context, id) =>
        beginPass(context, id, {
          on,
          order: [...order],
          ...(referencePitch_hz === undefined ? {} : { referencePitch_hz }),
          ...(temperature_c === undefined ? {} : { temperature_c }),
          ...(relativeHumidity_percent === undefined ? {} : { relativeHumidity_percent }),
        }),
      );
      onBegun(entries[0]!);
    } catch (error) {
      setProblem(error instanceof Error ? error.message : String(error));
    }
  }

  return (
    <form onSubmit={once(begin)} aria-label={say('Begin pass {pass}', { pass: number })}>
      <h3>{say('Begin pass {pass}', { pass: number })}</h3>
      <div className="fields">
        <DayField label={say('On')} value={on} onChange={setOn} />
        <TextField label={say('A4 (Hz)')} value={pitch} onChange={setPitch} isNumber maxLength={8} />
        <TextField
          label={say('Temperature (°C)')}
          hint={say('may stay empty')}
          value={temperature}
          onChange={setTemperature}
          isNumber
          maxLength={8}
        />
        <TextField
          label={say('Relative humidity (%)')}
          hint={say('may stay empty')}
          value={humidity}
          onChange={setHumidity}
          isNumber
          maxLength={8}
        />
      </div>
      <h4 id="order-of-sections">{say('Order of the sections')}</h4>
      <ol className="settle-order" aria-labelledby="order-of-sections">
        {order.map((section, index) => (
          <li key={section}>
            <span>
              {index + 1}. {section}
            </span>
            <button
              type="button"
              className="button quiet"
              disabled={index === 0}
              aria-label={say('Pull {section} up earlier', { section })}
              onClick={() => setOrder(movedEarlier(order, section))}
            >
              {say('Earlier')}
            </button>
          </li>
        ))}
      </ol>
      <Problem says={problem} />
      <button type="submit" className="button strong">
        {say('Begin pass {pass}', { pass: number })}
      </button>
    </form>
  );
}
