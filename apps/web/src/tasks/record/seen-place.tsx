import {
  type Absence,
  absences,
  type ObservedThing,
  observedThingNames,
  observedThings,
} from '@becket/journal';
import { recordObservation } from '@becket/tasks';
import { type FormEvent, useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { Choice } from '../../parts/choice.tsx';
import { Sheet } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { useObservable } from '../../parts/observable.ts';
import { TableFrame } from '../../parts/table-frame.tsx';
import { recordViewOf } from './record-state.ts';
import { seenAt, seenWords } from './seen.ts';

interface Place {
  readonly thing: ObservedThing;
  readonly section: string | undefined;
}

/** What is seen rather than measured, section by section. */
export function SeenPlace() {
  const { job } = useDesk();
  const [open, setOpen] = useState<Place>();
  const places = [...job.sections.map(({ section }): string | undefined => section), undefined];
  return (
    <section aria-labelledby="seen">
      <h2 id="seen">Things seen</h2>
      <p>
        Felts, punchings, bars, loops: what the strip takes away and nobody can measure afterwards. What is
        noted of the whole piano speaks for every section.
      </p>
      {places.map((section) => (
        <TableFrame
          label={section === undefined ? 'Seen on the whole piano' : `Seen in section ${section}`}
          key={section ?? 'whole piano'}
        >
          <h3>{section === undefined ? 'The whole piano' : `Section ${section}`}</h3>
          <table className="table">
            <tbody>
              {observedThingNames.map((thing) => {
                const seen = seenAt(job, thing, section);
                const words = `${observedThings[thing]}, ${section === undefined ? 'whole piano' : `section ${section}`}`;
                return (
                  <tr key={thing}>
                    <th scope="row">{observedThings[thing]}</th>
                    <td className="seen-words">
                      {seen === undefined ? <span className="faint">nothing noted</span> : seenWords(seen)}
                    </td>
                    <td className="number">
                      <button
                        type="button"
                        className="button quiet"
                        aria-label={`${seen === undefined ? 'Note' : 'Change'} ${words}`}
                        onClick={() => setOpen({ thing, section })}
                      >
                        {seen === undefined ? 'Note' : 'Change'}
                      </button>
                    </td>
                  </tr>
                );
              })}
            </tbody>
          </table>
        </TableFrame>
      ))}
      {open !== undefined && <SeenSheet place={open} onClose={() => setOpen(undefined)} />}
    </section>
  );
}

type Answer = 'known' | Absence;

function SeenSheet({ place, onClose }: { place: Place; onClose: () => void }) {
  const { desk, job } = useDesk();
  const { thing, section } = place;
  const seen = seenAt(job, thing, section);
  const problem = useObservable(desk.problem);
  const { reason: reasonAfterSeal } = useObservable(recordViewOf(desk.id));
  const [answer, setAnswer] = useState<Answer>(seen?.answer.is ?? 'known');
  const [text, setText] = useState(
    seen === undefined ? '' : seen.answer.is === 'known' ? seen.answer.text : (seen.answer.reason ?? ''),
  );
  const [reason, setReason] = useState(reasonAfterSeal);

  async function submit(event: FormEvent): Promise<void> {
    event.preventDefault();
    const words = text.trim();
    const done = await desk.run((context, id) => {
      if (answer === 'known' && words === '')
        throw new RangeError(
          'Cannot keep this note: words are needed, none were found. Say what is there, or choose one of the other answers.',
        );
      return recordObservation(context, id, {
        thing,
        place: section === undefined ? {} : { section },
        answer:
          answer === 'known'
            ? { is: 'known', text: words }
            : { is: answer, ...(words === '' ? {} : { reason: words }) },
        ...(seen === undefined ? {} : { replaces: seen.entry }),
        ...(reason.trim() === '' ? {} : { reason: reason.trim() }),
      });
    });
    if (done) onClose();
  }

  return (
    <Sheet
      title={`${observedThings[thing]}, ${section === undefined ? 'the whole piano' : `section ${section}`}`}
      isOpen
      onClose={onClose}
    >
      <form onSubmit={submit}>
        {problem !== undefined && (
          <p role="alert" className="notice bad">
            ▲ {problem}
          </p>
        )}
        <Choice
          label="What was found"
          value={answer}
          onChange={setAnswer}
          options={[
            { value: 'known', words: 'it is there' },
            ...absences.map((value) => ({ value, words: value })),
          ]}
        />
        <Field label={answer === 'known' ? 'What is there' : 'Why, if there is something to say'}>
          {(ids) => (
            <textarea
              {...ids}
              className="input"
              rows={4}
              maxLength={answer === 'known' ? 2000 : 500}
              value={text}
              onChange={(event) => setText(event.target.value)}
            />
          )}
        </Field>
        {job.seal !== undefined && (
          <Field label="Reason for changing the sealed record">
            {(ids) => (
              <input
                {...ids}
                className="input"
                value={reason}
                maxLength={500}
                onChange={(event) => setReason(event.target.value)}
              />
            )}
          </Field>
        )}
        <div className="button-row">
          <button type="submit" className="button strong">
            Keep the note
          </button>
          <button type="button" className="button quiet" onClick={onClose}>
            Close
          </button>
        </div>
      </form>
    </Sheet>
  );
}
