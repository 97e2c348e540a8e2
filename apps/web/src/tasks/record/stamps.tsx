import { noteName } from '@becket/core';
import { useRef, useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { Choice } from '../../parts/choice.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { useObservable } from '../../parts/observable.ts';
import { once } from '../../parts/once.ts';
import { Problem } from '../../parts/problem.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { keepInPlaceOf } from './keep-in-place-of.ts';
import { ReasonField, useSaidReason } from './reason-field.tsx';
import { newStampForm, stampOf } from './sizes-state.ts';
import { TakenBack, takeBackWithUndo } from './taken-back.tsx';

/** The wire sizes stamped on bridge and plate: entered, changed and taken back. */
export function Stamps() {
  const language = useLanguage();
  const { say, sayNodes } = language;
  const { desk, job } = useDesk();
  const said = useSaidReason();
  const [form, setForm] = useState(newStampForm());
  // The stamp that is changed; undefined while a new one is described.
  const [changed, setChanged] = useState<string>();
  const isChange = job.sizeStamps.some(({ entry }) => entry === changed);
  const fields = useRef<HTMLFormElement>(null);
  const problem = useObservable(desk.problem);

  async function submit(): Promise<void> {
    const done = await desk.run(async (context, id) =>
      keepInPlaceOf(context, id, stampOf(form, language), isChange ? changed : undefined, said),
    );
    if (done === undefined) return;
    setChanged(undefined);
    setForm({ ...newStampForm(), on: form.on, lattice: form.lattice, says: form.says });
  }

  return (
    <section aria-labelledby="stamps">
      <h3 id="stamps">{say('Size stamps: {count}', { count: job.sizeStamps.length })}</h3>
      {job.sizeStamps.length > 0 && (
        <ul className="plain-list row-list">
          {job.sizeStamps.map(({ entry, key, on, text, lattice, says }) => (
            <li key={entry}>
              <span>
                {sayNodes(
                  '{note} “{text}” {says, select, starts {starts here} other {ends here}}, on the {on, select, bridge {bridge} plate {plate} other {elsewhere}}, {numbering}',
                  {
                    note: <strong>{noteName(key)}</strong>,
                    text,
                    says: says === 'starts here' ? 'starts' : 'ends',
                    on,
                    numbering:
                      lattice === 'unknown'
                        ? say('numbering unknown')
                        : say('{lattice} number', { lattice: say(lattice) }),
                  },
                )}
              </span>
              <span className="button-row">
                <button
                  type="button"
                  className="button quiet"
                  aria-label={say('Change the stamp {text} at {note}', { text, note: noteName(key) })}
                  onClick={() => {
                    setForm({ note: noteName(key), on, text, lattice, says });
                    setChanged(entry);
                    fields.current?.scrollIntoView({ block: 'center' });
                    fields.current?.querySelector('input')?.focus();
                  }}
                >
                  {say('Change')}
                </button>
                <button
                  type="button"
                  className="button quiet"
                  aria-label={say('Take back the stamp {text} at {note}', { text, note: noteName(key) })}
                  onClick={once(() =>
                    takeBackWithUndo(
                      desk,
                      {
                        entry,
                        title: say('the stamp {text} at {note}', { text, note: noteName(key) }),
                      },
                      language,
                    ),
                  )}
                >
                  {say('Take back')}
                </button>
              </span>
            </li>
          ))}
        </ul>
      )}
      <form
        ref={fields}
        onSubmit={once(submit)}
        aria-label={isChange ? say('Change the stamp') : say('Add a stamp')}
      >
        <ReasonField />
        <Problem says={problem} />
        <div className="row-form">
          <TextField
            label={say('Note it stands at')}
            hint={say('such as F#3')}
            value={form.note}
            onChange={(value) => setForm({ ...form, note: value })}
          />
          <TextField
            label={say('What is stamped')}
            hint={say('as it stands there, such as 14½')}
            maxLength={40}
            value={form.text}
            onChange={(value) => setForm({ ...form, text: value })}
          />
        </div>
        <div className="tools stamp-choices">
          <Choice
            label={say('Where')}
            value={form.on}
            onChange={(on) => setForm({ ...form, on })}
            options={(['bridge', 'plate', 'elsewhere'] as const).map((value) => ({
              value,
              words: say(value),
            }))}
          />
          <Choice
            label={say('The size')}
            value={form.says}
            onChange={(says) => setForm({ ...form, says })}
            options={(['starts here', 'ends here'] as const).map((value) => ({ value, words: say(value) }))}
          />
          <Choice
            label={say('Its numbering')}
            value={form.lattice}
            onChange={(lattice) => setForm({ ...form, lattice })}
            options={(['unknown', 'US', 'metric'] as const).map((value) => ({
              value,
              words: say(value),
              spoken: say('numbering {lattice}', { lattice: say(value) }),
            }))}
          />
        </div>
        <button type="submit" className="button strong">
          {isChange ? say('Keep the change') : say('Keep the stamp')}
        </button>
        {isChange && (
          <button
            type="button"
            className="button quiet"
            onClick={() => {
              setChanged(undefined);
              setForm(newStampForm());
            }}
          >
            {say('Leave it as it was')}
          </button>
        )}
      </form>
      <TakenBack />
    </section>
  );
}
