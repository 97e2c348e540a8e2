import type { Absence, ReadingQuantityName, Ulid } from '@becket/journal';
import { memo, useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { useDesk, useSelectedKey } from '../../desk/use-desk.ts';
import { useDevice, useSettings } from '../../desk/use-device.ts';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { type LengthUnit, lengthNumber, uncertaintyText } from '../../parts/length-text.ts';
import { useObservable } from '../../parts/observable.ts';
import { lengthKindOf } from '../../piano/length-kind.ts';
import {
  columnsFor,
  type EnterOrder,
  enterOrders,
  type GridCell,
  type GridColumn,
  type GridRow,
  gridRows,
  keyAfter,
} from './grid.ts';
import { InstrumentInHand } from './instrument-in-hand.tsx';
import { inHandOf, instrumentInHand } from './instruments-state.ts';
import { type Question, questionsOf, suggestionText } from './questions.ts';
import { ReadBackBar } from './read-back-bar.tsx';
import { readingOrder } from './reading-order.ts';
import {
  type Committed,
  commitCell,
  queue,
  recordViewOf,
  sayAbsence,
  shownText,
  undoStep,
} from './record-state.ts';
import { WoundDoubts } from './wound-doubts.tsx';

const rounds = [1, 2, 3, 4] as const;
const ordinal = ['1st', '2nd', '3rd', '4th'] as const;

/** The grid of the compass: a row a note, a column a quantity; Enter goes on. */
export function GridPlace() {
  const { desk, job, record, entries } = useDesk();
  const device = useDevice();
  const { unit } = useSettings();
  const [, select] = useSelectedKey();
  const view = recordViewOf(desk.id);
  const shown = useObservable(view);
  const inTurn = useRef(queue());
  const active = useRef<{ key: number; quantity: ReadingQuantityName } | undefined>(undefined);

  const notes = useMemo(
    () =>
      record.notes.filter((note) => shown.section === undefined || note.section?.section === shown.section),
    [record, shown.section],
  );
  const columns = useMemo(() => columnsFor(notes, shown.withFurther), [notes, shown.withFurther]);
  const order = useMemo(() => readingOrder(entries), [entries]);
  const rows = useMemo(() => gridRows(notes, columns, order), [notes, columns, order]);
  const questions = useMemo(() => questionsOf(record), [record]);
  const column = columns.some(({ quantity }) => quantity === shown.column)
    ? shown.column
    : (columns[0]?.quantity ?? 'speaking-length');

  // The latest of everything, for handlers that stay the same so that 88 rows need not be drawn again.
  const inHand = useObservable(inHandOf(desk.id));
  const latest = useRef({ rows, unit, shown, job, inHand });
  latest.current = { rows, unit, shown, job, inHand };

  const take = useCallback(
    (committed: Committed | undefined) => {
      if (committed === undefined) return;
      const { steps } = view.get();
      view.update({
        readBack: committed.readBack,
        steps: committed.step === undefined ? steps : [...steps.slice(-199), committed.step],
      });
    },
    [view],
  );

  const find = useCallback((key: number, quantity: ReadingQuantityName) => {
    const row = latest.current.rows.find((one) => one.key === key);
    const cell = row?.cells.find((one) => one.quantity === quantity);
    return row && cell ? { row, cell } : undefined;
  }, []);

  const commit = useCallback(
    (key: number, quantity: ReadingQuantityName, text: string, doubted?: Ulid) => {
      const { round: ownRound, reason } = latest.current.shown;
      const typedIn = latest.current.unit;
      void inTurn.current(async () => {
        const found = find(key, quantity);
        if (found === undefined) return;
        const { row, cell } = found;
        // A reading that is in question is corrected in its own place, whichever round is being taken.
        const place = cell.readings.findIndex(({ entry }) => entry === doubted);
        const round = place === -1 ? ownRound : place + 1;
        const instrument = instrumentInHand(latest.current.job, latest.current.inHand, quantity)?.instrument;
        const what = { key, note: row.note.note, cell, text, unit: typedIn, round, reason, instrument };
        take(await desk.run((context, id) => commitCell(context, id, what)));
      });
    },
    [desk, find, take],
  );

  const say = (answer: Absence) => {
    const at = active.current;
    if (at === undefined) return;
    void inTurn.current(async () => {
      const found = find(at.key, at.quantity);
      if (found === undefined) return;
      const what = { key: at.key, note: found.row.note.note, cell: found.cell, answer, reason: shown.reason };
      take(await desk.run((context, id) => sayAbsence(context, id, what)));
    });
    goOn(at.key, at.quantity, 1);
  };

  const undo = () => {
    const step = view.get().steps.at(-1);
    if (step === undefined) return;
    void inTurn.current(async () => {
      const readBack = await desk.run((context, id) => undoStep(context, id, step, shown.reason));
      if (readBack) view.update({ readBack, steps: view.get().steps.filter((one) => one !== step) });
    });
  };

  const goOn = useCallback((key: number, quantity: ReadingQuantityName, direction: 1 | -1) => {
    const { order, round } = latest.current.shown;
    const next = keyAfter(latest.current.rows, { key, quantity, direction, order, round });
    if (next !== undefined) cellAt(next, quantity)?.focus();
  }, []);

  const enter = useCallback(
    (key: number, quantity: ReadingQuantityName) => {
      active.current = { key, quantity };
      select(key);
      view.update({ column: quantity });
    },
    [select, view],
  );

  useEffect(() => {
    // A tablet that is laid aside, or a page that is left, keeps what was typed and not yet entered.
    const keepTyped = () => {
      const typing = document.activeElement;
      const at = active.current;
      if (document.visibilityState !== 'hidden' || at === undefined) return;
      if (typing instanceof HTMLInputElement && typing.dataset.cell === at.quantity)
        commit(at.key, at.quantity, typing.value);
    };
    document.addEventListener('visibilitychange', keepTyped);
    return () => document.removeEventListener('visibilitychange', keepTyped);
  }, [commit]);

  useEffect(() => {
    // Whoever comes from the plan, a chart or the strip check comes to a note.
    const key = desk.selectedKey.get();
    if (key !== undefined) cellAt(key)?.scrollIntoView({ block: 'center' });
  }, [desk]);

  const [areToolsOpen, setToolsOpen] = useState(false);
  const sections = [
    ...new Set(record.notes.map((note) => note.section?.section).filter((name) => name !== undefined)),
  ];
  const openQuestions = [...questions.values()].flat().length;

  return (
    <section aria-label="Readings" className="grid-place">
      <div className="tools">
        <Choice
          label="Unit"
          value={unit}
          onChange={(next) => device.settings.update({ unit: next })}
          options={[
            { value: 'mm', words: 'mm', spoken: 'millimetres' },
            { value: 'in', words: 'inch', spoken: 'inches' },
          ]}
        />
        <Choice
          label="Reading of each string"
          value={String(shown.round)}
          onChange={(round) => view.update({ round: Number(round) })}
          options={rounds.map((round) => ({
            value: String(round),
            words: ordinal[round - 1]!,
            spoken: `${ordinal[round - 1]} reading of each string`,
          }))}
        />
        {sections.length > 1 && (
          <Field label="Show">
            {(ids) => (
              <select
                {...ids}
                className="input"
                value={shown.section ?? ''}
                onChange={(event) => view.update({ section: event.target.value || undefined })}
              >
                <option value="">whole compass</option>
                {sections.map((name) => (
                  <option key={name}>{name}</option>
                ))}
              </select>
            )}
          </Field>
        )}
        <div className="only-small">
          <Field label="Column">
            {(ids) => (
              <select
                {...ids}
                className="input"
                value={column}
                onChange={(event) => view.update({ column: event.target.value as ReadingQuantityName })}
              >
                {columns.map(({ quantity, label }) => (
                  <option key={quantity} value={quantity}>
                    {label}
                  </option>
                ))}
              </select>
            )}
          </Field>
        </div>
        <button
          type="button"
          className="button quiet tools-switch"
          aria-label={areToolsOpen ? 'Less to choose' : 'More to choose'}
          aria-expanded={areToolsOpen}
          onClick={() => setToolsOpen(!areToolsOpen)}
        >
          {areToolsOpen ? 'Less' : 'More'}
        </button>
      </div>
      {areToolsOpen && (
        <div className="tools">
          <Field label="Enter goes to">
            {(ids) => (
              <select
                {...ids}
                className="input"
                value={shown.order}
                onChange={(event) => view.update({ order: event.target.value as EnterOrder })}
              >
                {(Object.keys(enterOrders) as EnterOrder[]).map((order) => (
                  <option key={order} value={order}>
                    {enterOrders[order]}
                  </option>
                ))}
              </select>
            )}
          </Field>
          <InstrumentInHand quantity={column} />
          <label className="tick tools-switch">
            <input
              type="checkbox"
              checked={shown.withFurther}
              onChange={(event) => view.update({ withFurther: event.target.checked })}
            />
            front and back lengths, windings, pins
          </label>
        </div>
      )}
      {job.seal !== undefined && (
        <Field label="Reason for changing the sealed record" hint="stands on every amendment you make now">
          {(ids) => (
            <input
              {...ids}
              className="input"
              value={shown.reason}
              maxLength={500}
              onChange={(event) => view.update({ reason: event.target.value })}
            />
          )}
        </Field>
      )}
      {openQuestions > 0 && (
        <p className="faint">
          <span aria-hidden="true">? </span>
          {openQuestions === 1 ? '1 value is' : `${openQuestions} values are`} in question; each stands beside
          its cell and keeps nobody from going on.
        </p>
      )}
      <p className="faint">A value is kept once you leave its cell; what is half typed in it is not.</p>
      <table className="grid" data-round={shown.round}>
        <caption className="unseen">
          Readings of the compass, {ordinal[shown.round - 1]} reading of each string, in{' '}
          {unit === 'mm' ? 'millimetres' : 'inches'}. Enter goes on; a question mark says unknown, a dash
          none, a slash does not apply.
        </caption>
        <thead>
          <tr>
            <th scope="col">note</th>
            {columns.map(({ quantity, short, label }) => (
              <th
                key={quantity}
                scope="col"
                data-quantity={quantity}
                data-on={quantity === column || undefined}
              >
                <abbr title={label}>{short}</abbr> <span className="faint">{unit}</span>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <Row
              key={row.key}
              row={row}
              columns={columns}
              column={column}
              unit={unit}
              round={shown.round}
              questions={questions.get(row.key) ?? noQuestions}
              onCommit={commit}
              onGoOn={goOn}
              onEnter={enter}
            />
          ))}
        </tbody>
      </table>
      <WoundDoubts />
      <ReadBackBar
        readBack={shown.readBack}
        canUndo={shown.steps.length > 0}
        undoTitle={shown.steps.at(-1)?.title}
        onUndo={undo}
        onSay={say}
      />
    </section>
  );
}

const noQuestions: readonly Question[] = [];

function cellAt(key: number, quantity?: ReadingQuantityName): HTMLInputElement | null {
  const which = quantity === undefined ? '[data-cell]' : `[data-cell="${quantity}"]`;
  return document.querySelector(`[data-row="${key}"] ${which}`);
}

interface RowProps {
  readonly row: GridRow;
  readonly columns: readonly GridColumn[];
  readonly column: ReadingQuantityName;
  readonly unit: LengthUnit;
  readonly round: number;
  readonly questions: readonly Question[];
  readonly onCommit: (key: number, quantity: ReadingQuantityName, text: string, doubted?: Ulid) => void;
  readonly onGoOn: (key: number, quantity: ReadingQuantityName, direction: 1 | -1) => void;
  readonly onEnter: (key: number, quantity: ReadingQuantityName) => void;
}

const Row = memo(
  function Row({ row, columns, column, unit, round, questions, onCommit, onGoOn, onEnter }: RowProps) {
    const { note } = row;
    return (
      <>
        {row.beginsSection && (
          <tr className="grid-break">
            <th colSpan={columns.length + 1} scope="colgroup">
              {row.section === undefined
                ? 'in no section'
                : `${row.section.section}: ${row.section.bridge} bridge, ${row.section.frontTermination}`}
            </th>
          </tr>
        )}
        <tr data-row={row.key}>
          <th scope="row">
            <span className="note-name">{note.note}</span>{' '}
            <span className="faint grid-count">
              {note.strings === undefined
                ? 'strings?'
                : `${note.strings}×${note.winding === 'wound' ? ' wound' : ''}`}
            </span>
          </th>
          {row.cells.map((cell, index) => (
            <td
              key={cell.quantity}
              data-quantity={cell.quantity}
              data-on={cell.quantity === column || undefined}
              className={cell.applies ? undefined : 'not-here'}
            >
              {cell.applies ? (
                <CellInput
                  label={`${note.note} ${columns[index]?.label}`}
                  rowKey={row.key}
                  cell={cell}
                  unit={unit}
                  round={round}
                  question={questions.find(({ quantity }) => quantity === cell.quantity)}
                  onCommit={onCommit}
                  onGoOn={onGoOn}
                  onEnter={onEnter}
                />
              ) : (
                <span aria-label="does not belong to this string" role="img">
                  ·
                </span>
              )}
            </td>
          ))}
        </tr>
        {questions.map((question) => (
          <tr
            key={`${question.quantity}-${question.sentence}`}
            className="grid-question"
            data-quantity={question.quantity}
          >
            <td colSpan={columns.length + 1}>
              <div className="question">
                <span>? {question.sentence}</span>
                {question.suggestion_si !== undefined && (
                  <button
                    type="button"
                    className="button quiet"
                    onClick={() =>
                      onCommit(
                        row.key,
                        question.quantity,
                        suggestionText(question.suggestion_si!, unit),
                        question.entry,
                      )
                    }
                  >
                    It is {suggestionText(question.suggestion_si, unit)}
                  </button>
                )}
              </div>
            </td>
          </tr>
        ))}
      </>
    );
  },
  (before, after) =>
    before.columns === after.columns &&
    before.column === after.column &&
    before.unit === after.unit &&
    before.round === after.round &&
    before.questions.map(({ sentence }) => sentence).join() ===
      after.questions.map(({ sentence }) => sentence).join() &&
    signatureOf(before.row) === signatureOf(after.row),
);

/** Two rows of the same signature look alike. */
function signatureOf({ beginsSection, section, note, cells }: GridRow): string {
  const own = cells.map(
    ({ applies, readings, absence }) =>
      `${applies}${readings.map(({ entry }) => entry).join('+')}${absence ?? ''}`,
  );
  return [beginsSection, section?.entry, note.strings, note.winding, note.layers, ...own].join('|');
}

interface CellProps extends Pick<RowProps, 'unit' | 'round' | 'onCommit' | 'onGoOn' | 'onEnter'> {
  readonly label: string;
  readonly rowKey: number;
  readonly cell: GridCell;
  readonly question: Question | undefined;
}

function CellInput({ label, rowKey, cell, unit, round, question, onCommit, onGoOn, onEnter }: CellProps) {
  const input = useRef<HTMLInputElement>(null);
  const text = shownText(cell, round, unit);
  useEffect(() => {
    // What is being typed is never written over.
    if (input.current && document.activeElement !== input.current) input.current.value = text;
  }, [text]);
  const { quantity, figure, readings, absence } = cell;
  const isSeveral = figure !== undefined && readings.length > 1;
  const several = isSeveral
    ? `${lengthNumber(figure.value, unit, lengthKindOf(quantity))} from ${readings.length} readings ${uncertaintyText(figure.standardUncertainty, unit, lengthKindOf(quantity))}`
    : undefined;
  return (
    <div className="cell-frame">
      <input
        ref={input}
        className="cell"
        data-cell={quantity}
        data-question={question === undefined ? undefined : true}
        aria-label={label}
        aria-description={
          [
            absence,
            several &&
              `${several} readings, ${figure && uncertaintyText(figure.standardUncertainty, unit, lengthKindOf(quantity))}`,
            question?.sentence,
          ]
            .filter(Boolean)
            .join('; ') || undefined
        }
        placeholder={absence}
        defaultValue={text}
        inputMode="decimal"
        enterKeyHint="next"
        autoComplete="off"
        spellCheck={false}
        onFocus={(event) => {
          event.target.select();
          onEnter(rowKey, quantity);
        }}
        onBlur={(event) => {
          if (event.target.value.trim() !== text) onCommit(rowKey, quantity, event.target.value);
        }}
        onKeyDown={(event) => {
          if (event.key === 'Enter' || event.key === 'ArrowDown' || event.key === 'ArrowUp') {
            event.preventDefault();
            const isBack = event.key === 'ArrowUp' || (event.key === 'Enter' && event.shiftKey);
            const here = event.currentTarget;
            onGoOn(rowKey, quantity, isBack ? -1 : 1);
            // At the end of the column there is nowhere to go: keep the value all the same.
            if (document.activeElement === here && here.value.trim() !== text)
              onCommit(rowKey, quantity, here.value);
          } else if (event.key === 'Escape') {
            event.currentTarget.value = text;
            event.currentTarget.select();
          }
        }}
      />
      {isSeveral && (
        <small className="cell-note" aria-hidden="true">
          {readings.length} readings
        </small>
      )}
    </div>
  );
}
