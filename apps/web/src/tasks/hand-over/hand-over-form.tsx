import { commonCautions, handOver } from '@becket/tasks';
import { useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { useDevice } from '../../desk/use-device.ts';
import { DayField, todayHere } from '../../parts/day-field.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { once } from '../../parts/once.ts';
import { Problem } from '../../parts/problem.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { linesOf, monthsAfter, pairsOf } from './hand-over-state.ts';

interface Props {
  readonly openThings: number;
  /** Sentences, each of which may be given its reason. */
  readonly deviations: readonly string[];
}

/** To whom, when and by whose name; cautions, care, and what was left alone. */
export function HandOverForm({ openThings, deviations }: Props) {
  const { desk, job } = useDesk();
  const { settings } = useDevice();
  const { say } = useLanguage();
  const [to, setTo] = useState(job.customer ?? '');
  const [on, setOn] = useState(() => todayHere());
  const [signedBy, setSignedBy] = useState(() => settings.get().name);
  const [cautions, setCautions] = useState(() => commonCautions.map((text) => say(text)).join('\n'));
  const [climate, setClimate] = useState('');
  const [tuneOn, setTuneOn] = useState<readonly string[]>(['', '', '']);
  const [further, setFurther] = useState('');
  const [leftAlone, setLeftAlone] = useState('');
  const [reasons, setReasons] = useState<Readonly<Record<string, string>>>({});
  const [isRead, setRead] = useState(false);
  const [problem, setProblem] = useState<string>();

  async function keep(): Promise<void> {
    setProblem(undefined);
    try {
      const words = { climate: climate.trim(), further: further.trim() };
      await desk.runHere((context, id) =>
        handOver(context, id, {
          to: to.trim(),
          on,
          signedBy: signedBy.trim(),
          cautions: linesOf(cautions),
          aftercare: {
            ...(words.climate === '' ? {} : { climate: words.climate }),
            tuneOn: tuneOn.filter((one) => one !== '').sort(),
            ...(words.further === '' ? {} : { further: words.further }),
          },
          leftAlone: pairsOf(leftAlone),
          deviationReasons: reasons,
          isOpenAccepted: openThings === 0 || isRead,
        }),
      );
    } catch (error) {
      setProblem(error instanceof Error ? error.message : String(error));
    }
  }

  return (
    <form onSubmit={once(keep)} aria-label={say('The hand-over')}>
      <h3>{say('The hand-over')}</h3>
      <div className="fields">
        <TextField label={say('Handed to')} value={to} onChange={setTo} maxLength={200} />
        <DayField label={say('On')} value={on} onChange={setOn} />
        <TextField label={say('Answered for by')} value={signedBy} onChange={setSignedBy} maxLength={200} />
      </div>
      <TextField
        label={say('[to the owner] Cautions')}
        hint={say('one a line')}
        value={cautions}
        onChange={setCautions}
        maxLength={4000}
        rows={5}
      />
      <h4>{say('Care')}</h4>
      <TextField
        label={say('Air to keep it in')}
        hint={say('such as: 40 to 55 % relative humidity, away from the stove')}
        value={climate}
        onChange={setClimate}
      />
      <div className="fields">
        {tuneOn.map((day, index) => (
          <DayField
            // biome-ignore lint/suspicious/noArrayIndexKey: the fields have no other name than their place
            key={index}
            label={say('To be tuned, {count}', { count: index + 1 })}
            value={day}
            onChange={(value) => setTuneOn(tuneOn.map((one, at) => (at === index ? value : one)))}
          />
        ))}
      </div>
      <button
        type="button"
        className="button"
        onClick={() => setTuneOn([1, 3, 6].map((months) => monthsAfter(on, months)))}
      >
        {say('In 1, 3 and 6 months')}
      </button>
      <p className="faint">
        {say('New strings are usually tuned so often at first: common practice, no source.')}
      </p>
      <TextField
        label={say('Further care')}
        hint={say('may stay empty')}
        value={further}
        onChange={setFurther}
        maxLength={1000}
      />
      <TextField
        label={say('Left alone, and why')}
        hint={say('one a line, the reason after a colon: damper felt: not ordered')}
        value={leftAlone}
        onChange={setLeftAlone}
        maxLength={4000}
        rows={3}
      />
      {deviations.length > 0 && (
        <fieldset className="deviations">
          <legend>{say('Deviations from the chosen scale')}</legend>
          {deviations.map((what) => (
            <TextField
              key={what}
              label={what}
              hint={say('why; may stay empty')}
              value={reasons[what] ?? ''}
              onChange={(because) => setReasons({ ...reasons, [what]: because })}
            />
          ))}
        </fieldset>
      )}
      {openThings > 0 && (
        <label className="tick">
          <input type="checkbox" checked={isRead} onChange={(event) => setRead(event.target.checked)} />
          {say('I have read what is still open; it is handed over as open.')}
        </label>
      )}
      <Problem says={problem} />
      <div>
        <button type="submit" className="button strong">
          {say('Hand the piano over')}
        </button>
      </div>
    </form>
  );
}
