import { noteName } from '@becket/core';
import { type InferredWireSizes, recordFacts, wireLatticeNames, withdrawEntry } from '@becket/tasks';
import { type FormEvent, useEffect, useState } from 'react';
import { useDesk, useSelectedKey } from '../../desk/use-desk.ts';
import { useSettings } from '../../desk/use-device.ts';
import { go } from '../../desk/use-route.ts';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { lengthText } from '../../parts/length-text.ts';
import { useObservable } from '../../parts/observable.ts';
import { TableFrame } from '../../parts/table-frame.tsx';
import { inferSizesAway } from '../../worker/sizes-away.ts';
import { ReasonField, useSaidReason } from './reason-field.tsx';
import './record-parts.css';
import { recordViewOf } from './record-state.ts';
import { SizeChart } from './size-chart.tsx';
import {
  biasSentence,
  newStampForm,
  numberingOf,
  numberingSentence,
  oddsText,
  sizeRuns,
  stampOf,
} from './sizes-state.ts';
import { bothUnits } from './typed-length.ts';

/** Which sizes the worn wire most probably was, and what speaks for it. */
export function SizesPlace() {
  const { desk, job } = useDesk();
  const numbering = numberingOf(desk.id);
  const asked = useObservable(numbering);
  const [answer, setAnswer] = useState<{ of: typeof job; sizes: InferredWireSizes | undefined }>();
  useEffect(
    () =>
      inferSizesAway(job, asked === 'as the readings say' ? undefined : asked, (sizes) =>
        setAnswer({ of: job, sizes }),
      ),
    [job, asked],
  );
  const isFresh = answer?.of === job;
  return (
    <section aria-labelledby="sizes">
      <h2 id="sizes">Wire sizes</h2>
      <p>
        Worn wire reads thin and unevenly. From all readings and stamps together follows the most probable
        size of every plain note, and how sure that is.
      </p>
      <Choice
        label="Numbering"
        value={asked}
        onChange={numbering.set}
        options={[
          { value: 'as the readings say', words: 'let the readings say' },
          ...wireLatticeNames.map((value) => ({ value, words: value })),
        ]}
      />
      <div aria-live="polite" aria-busy={!isFresh}>
        {answer === undefined ? (
          <p className="faint">Working the sizes out…</p>
        ) : answer.sizes === undefined ? (
          <p className="notice">
            No size can be inferred yet: a plain note with a wire reading or a stamp is needed.
          </p>
        ) : (
          <Sizes sizes={answer.sizes} />
        )}
      </div>
      <Stamps />
    </section>
  );
}

function Sizes({ sizes }: { sizes: InferredWireSizes }) {
  const { desk } = useDesk();
  const { unit } = useSettings();
  const [selected, select] = useSelectedKey();
  const doubtful = sizes.notes.filter(({ isDoubtful }) => isDoubtful);

  function measure(key: number): void {
    recordViewOf(desk.id).update({ column: 'wire-diameter', section: undefined });
    select(key);
    go({ place: 'job', job: desk.id, task: 'record' });
  }

  return (
    <>
      <p data-numbering>{numberingSentence(sizes)}</p>
      {sizes.next !== undefined && (
        <div className="notice next-string">
          <p>{sizes.next.sentence}</p>
          <button type="button" className="button" onClick={() => measure(sizes.next!.key)}>
            Go to {noteName(sizes.next.key)}
          </button>
        </div>
      )}
      <SizeChart sizes={sizes} unit={unit} selected={selected} onSelect={select} />
      <p>{biasSentence(sizes, unit)}</p>
      {sizes.shiftDoubt !== undefined && <p className="notice">◇ {sizes.shiftDoubt}</p>}
      <h3>
        Doubtful notes: {doubtful.length}
        <span className="faint">, of {sizes.notes.length} plain notes</span>
      </h3>
      {doubtful.length === 0 ? (
        <p>Every note is at least 90 % sure.</p>
      ) : (
        <ul className="plain-list">
          {doubtful.map(({ key, note, size, diameter, odds, otherwise, readings }) => (
            <li key={key}>
              <span>
                <span aria-hidden="true">◇ </span>
                <strong>{note}</strong> {size}, {bothUnits(diameter, unit, 'diameter')}: {oddsText(odds)}
                {otherwise !== undefined && `; else ${otherwise.size}, ${oddsText(otherwise.odds)}`}.{' '}
                <span className="faint">
                  {readings.length === 0
                    ? 'No reading.'
                    : `Read ${readings.map(({ value_si }) => lengthText(value_si, unit, 'diameter')).join(', ')}.`}
                </span>
              </span>
              <button type="button" className="button quiet" onClick={() => measure(key)}>
                Measure {note}
              </button>
            </li>
          ))}
        </ul>
      )}
      <h3>Sizes along the compass, {sizes.lattice} numbers</h3>
      <TableFrame label="Sizes along the compass">
        <table className="table size-table">
          <thead>
            <tr>
              <th scope="col">size</th>
              <th scope="col">inferred diameter</th>
              <th scope="col">notes</th>
              <th scope="col">least sure</th>
            </tr>
          </thead>
          <tbody>
            {sizeRuns(sizes.notes).map(({ size, diameter_m, first, last, notes, least }) => (
              <tr key={first.key}>
                <th scope="row">{size}</th>
                <td>{bothUnits(diameter_m, unit, 'diameter')}</td>
                <td>
                  {first.key === last.key ? first.note : `${first.note} to ${last.note}`}{' '}
                  <span className="faint">({notes})</span>
                </td>
                <td>
                  {least.note}, {oddsText(least.odds)}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </TableFrame>
      {sizes.stampsNotUsed.length > 0 && (
        <ul>
          {sizes.stampsNotUsed.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      )}
    </>
  );
}

function Stamps() {
  const { desk, job } = useDesk();
  const said = useSaidReason();
  const [form, setForm] = useState(newStampForm());
  const problem = useObservable(desk.problem);

  async function submit(event: FormEvent): Promise<void> {
    event.preventDefault();
    const done = await desk.run(async (context, id) =>
      recordFacts(context, id, [{ ...stampOf(form), ...said }]),
    );
    if (done) setForm({ ...newStampForm(), on: form.on, lattice: form.lattice, says: form.says });
  }

  return (
    <section aria-labelledby="stamps">
      <h3 id="stamps">Size stamps: {job.sizeStamps.length}</h3>
      {job.sizeStamps.length > 0 && (
        <ul className="plain-list">
          {job.sizeStamps.map(({ entry, key, on, text, lattice, says }) => (
            <li key={entry}>
              <span>
                <strong>{noteName(key)}</strong> “{text}” {says}, on the {on},{' '}
                {lattice === 'unknown' ? 'numbering unknown' : `${lattice} number`}
              </span>
              <button
                type="button"
                className="button quiet"
                aria-label={`Take back the stamp ${text} at ${noteName(key)}`}
                onClick={() =>
                  void desk.run((context, id) =>
                    withdrawEntry(context, id, entry, said.reason ?? 'taken back while recording'),
                  )
                }
              >
                Take back
              </button>
            </li>
          ))}
        </ul>
      )}
      <form onSubmit={submit} aria-label="Add a stamp">
        <ReasonField />
        {problem !== undefined && <p className="notice bad">▲ {problem}</p>}
        <div className="row-form">
          <Field label="Note it stands at" hint="such as F#3">
            {(ids) => (
              <input
                {...ids}
                className="input"
                value={form.note}
                onChange={(event) => setForm({ ...form, note: event.target.value })}
              />
            )}
          </Field>
          <Field label="What is stamped" hint="as it stands there, such as 14½">
            {(ids) => (
              <input
                {...ids}
                className="input"
                value={form.text}
                maxLength={40}
                onChange={(event) => setForm({ ...form, text: event.target.value })}
              />
            )}
          </Field>
        </div>
        <div className="tools stamp-choices">
          <Choice
            label="Where"
            value={form.on}
            onChange={(on) => setForm({ ...form, on })}
            options={(['bridge', 'plate', 'elsewhere'] as const).map((value) => ({ value, words: value }))}
          />
          <Choice
            label="The size"
            value={form.says}
            onChange={(says) => setForm({ ...form, says })}
            options={(['starts here', 'ends here'] as const).map((value) => ({ value, words: value }))}
          />
          <Choice
            label="Its numbering"
            value={form.lattice}
            onChange={(lattice) => setForm({ ...form, lattice })}
            options={(['unknown', 'US', 'metric'] as const).map((value) => ({
              value,
              words: value,
              spoken: `numbering ${value}`,
            }))}
          />
        </div>
        <button type="submit" className="button strong">
          Keep the stamp
        </button>
      </form>
    </section>
  );
}
