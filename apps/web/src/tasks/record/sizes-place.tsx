import { noteName } from '@becket/core';
import { type InferredWireSizes, wireLatticeNames } from '@becket/tasks';
import { useEffect, useState } from 'react';
import { hashOf } from '../../desk/route.ts';
import { useDesk, useSelectedKey } from '../../desk/use-desk.ts';
import { useSettings } from '../../desk/use-device.ts';
import { go } from '../../desk/use-route.ts';
import { Choice } from '../../parts/choice.tsx';
import { focusWhenThere } from '../../parts/focus-when-there.ts';
import { useLanguage } from '../../parts/language.tsx';
import { lengthText } from '../../parts/length-text.ts';
import { useObservable } from '../../parts/observable.ts';
import { TableFrame } from '../../parts/table-frame.tsx';
import { inferSizesAway } from '../../worker/sizes-away.ts';
import './record-parts.css';
import { cellId } from './cell-at.ts';
import { recordViewOf } from './record-state.ts';
import { SizeChart } from './size-chart.tsx';
import { biasSentence, numberingOf, numberingSentence, oddsText, sizeRuns } from './sizes-state.ts';
import { Stamps } from './stamps.tsx';
import { bothUnits } from './typed-length.ts';

/** Which sizes the worn wire most probably was, and what speaks for it. */
export function SizesPlace() {
  const language = useLanguage();
  const { say } = language;
  const { desk, job } = useDesk();
  const numbering = numberingOf(desk.id);
  const asked = useObservable(numbering);
  const [answer, setAnswer] = useState<{ of: typeof job; sizes: InferredWireSizes | undefined }>();
  useEffect(
    () =>
      inferSizesAway(
        job,
        asked === 'as the readings say' ? undefined : asked,
        (sizes) => setAnswer({ of: job, sizes }),
        language,
      ),
    [job, asked, language],
  );
  const isFresh = answer?.of === job;
  return (
    <section aria-labelledby="sizes">
      <h2 id="sizes">{say('Wire sizes')}</h2>
      <p>
        {say(
          'Worn wire reads thin and unevenly. From all readings and stamps together follows the most probable size of every plain note, and how sure that is.',
        )}
      </p>
      <Choice
        label={say('Numbering')}
        value={asked}
        onChange={numbering.set}
        options={[
          { value: 'as the readings say', words: say('let the readings say') },
          ...wireLatticeNames.map((value) => ({ value, words: say(value) })),
        ]}
      />
      <div aria-live="polite" aria-busy={!isFresh}>
        {answer === undefined ? (
          <p className="faint">{say('Working the sizes out…')}</p>
        ) : answer.sizes === undefined ? (
          <p className="notice">
            {say('No size can be inferred yet: a plain note with a wire reading or a stamp is needed.')}
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
  const language = useLanguage();
  const { say, sayNodes } = language;
  const { desk } = useDesk();
  const { unit } = useSettings();
  const [selected, select] = useSelectedKey();
  const doubtful = sizes.notes.filter(({ isDoubtful }) => isDoubtful);

  function measure(key: number): void {
    recordViewOf(desk.id).update({ column: 'wire-diameter', section: undefined });
    select(key);
    const readings = { place: 'job', job: desk.id, task: 'record' } as const;
    go(readings);
    void focusWhenThere(`#${cellId({ key, quantity: 'wire-diameter' })}`, hashOf(readings));
  }

  return (
    <>
      <p data-numbering>{numberingSentence(sizes, language)}</p>
      {sizes.next !== undefined && doubtful.length > 0 && (
        <div className="notice next-string">
          <p>{sizes.next.sentence}</p>
          <button type="button" className="button" onClick={() => measure(sizes.next!.key)}>
            {say('Go to {note}', { note: noteName(sizes.next.key) })}
          </button>
        </div>
      )}
      <SizeChart sizes={sizes} unit={unit} selected={selected} onSelect={select} />
      <p>{biasSentence(sizes, unit, language)}</p>
      {sizes.shiftDoubt !== undefined && <p className="notice">◇ {sizes.shiftDoubt}</p>}
      <h3>
        {sayNodes('Doubtful notes: {doubtful}{among}', {
          doubtful: doubtful.length,
          among: (
            <span className="faint">
              {`, ${say('of {notes} plain notes', { notes: sizes.notes.length })}`}
            </span>
          ),
        })}
      </h3>
      {doubtful.length === 0 ? (
        <p>{say('Every note is at least 90 % sure.')}</p>
      ) : (
        <ul className="plain-list row-list">
          {doubtful.map(({ key, note, size, diameter, odds, otherwise, readings }) => (
            <li key={key}>
              <span>
                <span aria-hidden="true">◇ </span>
                <strong>{note}</strong> {size}, {bothUnits(diameter, unit, 'diameter', language)}:{' '}
                {oddsText(odds, language)}
                {otherwise !== undefined &&
                  `; ${say('else {size}, {odds}', {
                    size: otherwise.size,
                    odds: oddsText(otherwise.odds, language),
                  })}`}
                .{' '}
                <span className="faint">
                  {readings.length === 0
                    ? say('No reading.')
                    : say('Read {diameters}.', {
                        diameters: readings
                          .map(({ value_si }) => lengthText(value_si, unit, 'diameter', language))
                          .join(', '),
                      })}
                </span>
              </span>
              <button type="button" className="button quiet" onClick={() => measure(key)}>
                {say('Measure {note}', { note })}
              </button>
            </li>
          ))}
        </ul>
      )}
      <h3>{say('Sizes along the compass, {lattice} numbers', { lattice: say(sizes.lattice) })}</h3>
      <TableFrame label={say('Sizes along the compass')}>
        <table className="table size-table">
          <thead>
            <tr>
              <th scope="col">{say('size')}</th>
              <th scope="col">{say('inferred diameter')}</th>
              <th scope="col">{say('notes')}</th>
              <th scope="col">{say('least sure')}</th>
            </tr>
          </thead>
          <tbody>
            {sizeRuns(sizes.notes).map(({ size, diameter_m, first, last, notes, least }) => (
              <tr key={first.key}>
                <th scope="row">{size}</th>
                <td>{bothUnits(diameter_m, unit, 'diameter', language)}</td>
                <td>
                  {first.key === last.key
                    ? first.note
                    : say('{first} to {last}', { first: first.note, last: last.note })}{' '}
                  <span className="faint">({notes})</span>
                </td>
                <td>
                  {least.note}, {oddsText(least.odds, language)}
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
