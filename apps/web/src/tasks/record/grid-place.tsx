import type { Absence } from '@becket/journal';
import {
  type CSSProperties,
  useCallback,
  useContext,
  useDeferredValue,
  useLayoutEffect,
  useMemo,
  useRef,
} from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { useSettings } from '../../desk/use-device.ts';
import { Field } from '../../parts/field.tsx';
import { LanguageContext, useLanguage } from '../../parts/language.tsx';
import { type LengthUnit, unitSign } from '../../parts/length-text.ts';
import { type Observable, observable, useObservable, usePart } from '../../parts/observable.ts';
import { useSame } from '../../parts/use-same.ts';
import { cellAt, showCell } from './cell-at.ts';
import { CellField, type CellInHand } from './cell-field.tsx';
import { useCellKeeping } from './cell-keeping.ts';
import { useFieldMoves } from './field-moves.ts';
import {
  type CellPlace,
  cellAfter,
  cellIn,
  columnsFor,
  type GridColumn,
  gridRows,
  type UnitOf,
} from './grid.ts';
import { GridRow } from './grid-row.tsx';
import { GridTools, ordinals } from './grid-tools.tsx';
import { inHandOf, lengthUnitInHand } from './instruments-state.ts';
import { type Question, questionsOf } from './questions.ts';
import { ReadBackBar } from './read-back-bar.tsx';
import { readingOrder } from './reading-order.ts';
import { recordViewOf, shownText } from './record-state.ts';
import { isToBeKept, typedTexts } from './typed-texts.ts';
import { WoundDoubts } from './wound-doubts.tsx';

/** The grid of the compass: a row a note, a column a quantity; Enter goes on. */
export function GridPlace() {
  // The same object for the whole program: what is kept by language is kept by this one.
  const language = useContext(LanguageContext);
  const { desk, job, record, entries } = useDesk();
  const { unit } = useSettings();
  const view = recordViewOf(desk.id);
  const section = usePart(view, (shown) => shown.section);
  const round = usePart(view, (shown) => shown.round);
  const withFurther = usePart(view, (shown) => shown.withFurther);
  const wantedColumn = usePart(view, (shown) => shown.column);

  const notes = useMemo(
    () => record.notes.filter((note) => section === undefined || note.section?.section === section),
    [record, section],
  );
  const columns = useSame(columnsFor(notes, withFurther));
  const order = useMemo(() => readingOrder(entries), [entries]);
  const rows = useMemo(() => gridRows(notes, columns, order), [notes, columns, order]);
  // Every reading is held against all the others for this: typing goes first.
  const settled = useDeferredValue(record);
  const questions = useMemo(() => questionsOf(settled, language), [settled, language]);
  const column = columns.some(({ quantity }) => quantity === wantedColumn)
    ? wantedColumn
    : (columns[0]?.quantity ?? 'speaking-length');

  const instruments = useObservable(inHandOf(desk.id));
  const unitOf = useUnitOf(columns, unit, (quantity) => lengthUnitInHand(job, instruments, quantity, unit));
  // The latest of everything, for handlers that stay the same so that 88 rows need not be drawn again.
  const now = useRef({ rows, unitOf, inHand: instruments });
  now.current = { rows, unitOf, inHand: instruments };

  const texts = useRef(typedTexts()).current;
  useLayoutEffect(() => texts.giveWayTo(entries), [texts, entries]);
  const inHand = useRef(observable<CellInHand | undefined>(undefined)).current;

  const nextOf = useCallback(
    (place: CellPlace, direction: 1 | -1) => {
      const { order: enterOrder, round: taken } = view.get();
      return cellAfter(now.current.rows, { ...place, direction, order: enterOrder, round: taken });
    },
    [view],
  );

  /** Brings the cell that comes next into view while the hand rests: its Enter then has nothing to move. */
  const showNext = useCallback(() => {
    const at = inHand.get();
    if (at?.isTyped !== true) return;
    const next = nextOf(at, 1);
    const words = next && next.key - at.key === 1 && cellAt(next);
    if (words) showCell(words);
  }, [inHand, nextOf]);

  const keeping = useCellKeeping({ desk, view, texts, language, now, onRest: showNext });

  /** What a cell says now: by what was typed into it, and by its row. Undefined where there is no such cell. */
  const saidBy = useCallback(
    (at: CellPlace) => {
      const found = cellIn(now.current.rows, at.key, at.quantity);
      const shown =
        found && shownText(found.cell, view.get().round, now.current.unitOf(at.quantity), language);
      return shown === undefined ? undefined : { typed: texts.at(at), shown };
    },
    [language, texts, view],
  );

  /** Keeps what was typed into a cell, where that is something else than the cell says. */
  const keepTyped = useCallback(
    (at: CellPlace, text: string) => {
      const said = saidBy(at);
      if (said === undefined) return;
      if (isToBeKept(text, said.typed.get(), said.shown)) keeping.keepTyped(at, text);
      else if (said.typed.get()?.is === 'refused') said.typed.set(undefined);
    },
    [keeping, saidBy],
  );

  const { field, box, frame, told, open, leave, stepOut, goOn, putText } = useFieldMoves({
    desk,
    view,
    inHand,
    nextOf,
    keepTyped,
  });

  const answerWith = useCallback(
    (answer: Absence) => {
      const at = inHand.get();
      const said = at && saidBy(at);
      if (at === undefined || said === undefined) return;
      keeping.answer(at, answer);
      // It stands for what was typed there.
      if (said.typed.get()?.is === 'refused') said.typed.set(undefined);
      putText(said.typed.get()?.text ?? said.shown);
      goOn(1);
    },
    [goOn, inHand, keeping, putText, saidBy],
  );

  const sections = useSame([
    ...new Set(record.notes.map((note) => note.section?.section).filter((name) => name !== undefined)),
  ]);
  const openQuestions = [...questions.values()].flat().length;
  const { say } = language;

  return (
    <section aria-label={say('Readings')} className="grid-place">
      <GridTools desk={desk} columns={columns} column={column} sections={sections} />
      {job.seal !== undefined && <ReasonForChange />}
      {openQuestions > 0 && (
        <p className="faint">
          <span aria-hidden="true">? </span>
          {say(
            '{count, plural, one {# value is} other {# values are}} in question; each stands beside its cell and keeps nobody from going on.',
            { count: openQuestions },
          )}
        </p>
      )}
      <p className="faint">
        {say('A value is kept once you leave its cell; what is half typed in it is not.')}
      </p>
      <div ref={frame} className="grid-frame">
        <table className="grid" data-round={round} style={{ '--columns': columns.length } as CSSProperties}>
          <caption className="unseen">
            {say(
              'Readings of the compass, {ordinal} reading of each string; each column names its unit. Enter goes on; a question mark says unknown, a dash none, a slash does not apply.',
              { ordinal: say(ordinals[round - 1] ?? ordinals[0]) },
            )}
          </caption>
          <thead>
            <tr>
              <th scope="col">{say('note')}</th>
              {columns.map(({ quantity, short, label }) => (
                <th
                  key={quantity}
                  scope="col"
                  data-quantity={quantity}
                  data-on={quantity === column || undefined}
                >
                  <abbr title={say(label)}>{say(short)}</abbr>{' '}
                  <span className="faint">{unitSign(unitOf(quantity))}</span>
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <GridRow
                key={row.key}
                row={row}
                language={language}
                columns={columns}
                column={column}
                unitOf={unitOf}
                round={round}
                questions={questions.get(row.key) ?? noQuestions}
                texts={texts}
                onCorrect={keeping.correct}
                onOpen={open}
              />
            ))}
          </tbody>
        </table>
        <CellField
          inHand={inHand}
          field={field}
          box={box}
          rows={rows}
          unitOf={unitOf}
          round={round}
          language={language}
          questions={questions}
          texts={texts}
          onGoOn={goOn}
          onStepOut={stepOut}
          onLeave={leave}
          onUndo={keeping.undo}
        />
      </div>
      <Told told={told} />
      <WoundDoubts />
      <ReadBack onUndo={keeping.undo} onSay={answerWith} />
    </section>
  );
}

const noQuestions: readonly Question[] = [];

/** The unit of each column: the same function for as long as no unit is another. */
function useUnitOf(columns: readonly GridColumn[], screenUnit: LengthUnit, unitNow: UnitOf): UnitOf {
  const units = useSame(columns.map(({ quantity }) => unitNow(quantity)));
  return useMemo(() => {
    const known = new Map(columns.map(({ quantity }, index) => [quantity, units[index]!]));
    return (quantity) => known.get(quantity) ?? screenUnit;
  }, [columns, screenUnit, units]);
}

function ReasonForChange() {
  const { say } = useLanguage();
  const { desk } = useDesk();
  const view = recordViewOf(desk.id);
  const reason = usePart(view, (shown) => shown.reason);
  return (
    <Field
      label={say('Reason for changing the sealed record')}
      hint={say('stands on every amendment you make now')}
    >
      {(ids) => (
        <input
          {...ids}
          className="input"
          value={reason}
          maxLength={500}
          onChange={(event) => view.update({ reason: event.target.value })}
        />
      )}
    </Field>
  );
}

/** Says to a screen reader which cell the field has come to. */
const Told = ({ told }: { told: Observable<string> }) => (
  <span role="status" className="unseen">
    {useObservable(told)}
  </span>
);

/** Apart from the grid, so that a value is read back without the grid being drawn again. */
function ReadBack({ onUndo, onSay }: { onUndo: () => void; onSay: (answer: Absence) => void }) {
  const { desk } = useDesk();
  const view = recordViewOf(desk.id);
  const step = usePart(view, (shown) => shown.steps.at(-1));
  return (
    <ReadBackBar
      view={view}
      canUndo={step !== undefined}
      undoTitle={step?.title}
      onUndo={onUndo}
      onSay={onSay}
    />
  );
}
