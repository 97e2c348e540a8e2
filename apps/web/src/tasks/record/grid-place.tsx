import type { Absence } from '@becket/journal';
import {
  type CSSProperties,
  useCallback,
  useContext,
  useDeferredValue,
  useEffect,
  useLayoutEffect,
  useMemo,
  useRef,
} from 'react';
import { flushSync } from 'react-dom';
import { useDesk } from '../../desk/use-desk.ts';
import { useSettings } from '../../desk/use-device.ts';
import { Field } from '../../parts/field.tsx';
import { LanguageContext, useLanguage } from '../../parts/language.tsx';
import { type Observable, observable, useObservable, usePart } from '../../parts/observable.ts';
import { useSame } from '../../parts/use-same.ts';
import { cellAt, coverCell, firstCellOf, showCell } from './cell-at.ts';
import { CellField, type CellInHand } from './cell-field.tsx';
import { useCellKeeping } from './cell-keeping.ts';
import { type CellPlace, cellAfter, cellIn, columnsFor, gridRows } from './grid.ts';
import { GridRow } from './grid-row.tsx';
import { GridTools, ordinals } from './grid-tools.tsx';
import { inHandOf } from './instruments-state.ts';
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

  // The latest of everything, for handlers that stay the same so that 88 rows need not be drawn again.
  const instruments = useObservable(inHandOf(desk.id));
  const now = useRef({ rows, unit, inHand: instruments });
  now.current = { rows, unit, inHand: instruments };

  const texts = useRef(typedTexts()).current;
  useLayoutEffect(() => texts.giveWayTo(entries), [texts, entries]);
  const inHand = useRef(observable<CellInHand | undefined>(undefined)).current;
  const told = useRef(observable('')).current;
  const field = useRef<HTMLInputElement>(null);
  const box = useRef<HTMLDivElement>(null);
  const frame = useRef<HTMLDivElement>(null);

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
      const shown = found && shownText(found.cell, view.get().round, now.current.unit, language);
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

  /** Keeps what stands in the field, and leaves the field where it is. */
  const keepField = useCallback(() => {
    const at = inHand.get();
    if (at?.isTyped === true && field.current !== null) keepTyped(at, field.current.value);
  }, [inHand, keepTyped]);

  /** Lays the field over its cell, wherever that stands by now. */
  const putField = useCallback((at: CellInHand | undefined) => {
    const words = at?.isTyped === true && cellAt(at);
    if (!words || !box.current || !frame.current) return;
    const cell = words.getBoundingClientRect();
    const around = frame.current.getBoundingClientRect();
    const { style } = box.current;
    style.transform = `translate(${cell.left - around.left}px, ${cell.top - around.top}px)`;
    style.width = `${cell.width}px`;
    style.height = `${cell.height}px`;
  }, []);

  const isSteppingOut = useRef(false);
  /** Brings the field to a cell: the value it comes from is kept, the focus stays in it or goes to it. */
  const open = useCallback(
    (place: CellPlace) => {
      if (isSteppingOut.current) return;
      const before = inHand.get();
      if (before?.isTyped !== true || !isSameCell(before, place)) {
        const typedThere = field.current?.value ?? '';
        // On a small screen only one column is there to go to.
        if (view.get().column !== place.quantity) flushSync(() => view.update({ column: place.quantity }));
        const here = { ...place, isTyped: true };
        const words = cellAt(place);
        if (words) showCell(words);
        // Measured before anything is written: the page is laid out once, for its picture.
        putField(here);
        if (before) coverCell(cellAt(before), false);
        coverCell(words, true);
        inHand.set(here);
        if (before?.isTyped === true) keepTyped(before, typedThere);
      }
      // The map follows when the hand rests: to draw it takes longer than the cell that is typed into.
      setTimeout(() => {
        const at = inHand.get();
        if (at === undefined || !isSameCell(at, place)) return;
        desk.selectedKey.set(place.key);
        // The focus did not change with the cell, and so nobody has said it.
        if (before?.isTyped === true && at.isTyped) told.set(inWords(cellAt(place)));
      }, handRest_ms);
      if (document.activeElement === field.current) return;
      field.current?.focus();
      field.current?.select();
    },
    [desk, inHand, keepTyped, putField, told, view],
  );

  const leave = useCallback(() => {
    keepField();
    const at = inHand.get();
    // A window that is left keeps the focus where it is.
    if (at === undefined || document.activeElement === field.current) return;
    coverCell(cellAt(at), false);
    inHand.set({ ...at, isTyped: false });
  }, [inHand, keepField]);

  const stepOut = useCallback(() => {
    const at = inHand.get();
    if (at === undefined) return;
    isSteppingOut.current = true;
    coverCell(cellAt(at), false);
    cellAt(at)?.focus();
    isSteppingOut.current = false;
  }, [inHand]);

  const goOn = useCallback(
    (direction: 1 | -1) => {
      const at = inHand.get();
      const next = at && nextOf(at, direction);
      // At the end of the column there is nowhere to go: the value is kept all the same.
      if (next === undefined) keepField();
      else open(next);
    },
    [inHand, keepField, nextOf, open],
  );

  const answerWith = useCallback(
    (answer: Absence) => {
      const at = inHand.get();
      const said = at && saidBy(at);
      if (at === undefined || said === undefined) return;
      keeping.answer(at, answer);
      // It stands for what was typed there.
      if (said.typed.get()?.is === 'refused') said.typed.set(undefined);
      if (field.current) field.current.value = said.typed.get()?.text ?? said.shown;
      goOn(1);
    },
    [goOn, inHand, keeping, saidBy],
  );

  useEffect(() => {
    // A tablet that is laid aside keeps what was typed and not yet entered. A page that is closed or loaded again does
    // not: what is half typed then may be half a number.
    let isLeaving = false;
    const goAway = () => {
      isLeaving = true;
    };
    const putAway = () => {
      if (document.visibilityState === 'visible') isLeaving = false;
      else if (!isLeaving) keepField();
    };
    addEventListener('pagehide', goAway);
    document.addEventListener('visibilitychange', putAway);
    return () => {
      removeEventListener('pagehide', goAway);
      document.removeEventListener('visibilitychange', putAway);
    };
  }, [keepField]);

  useEffect(() => {
    // Whoever comes from the plan, a chart or the strip check comes to a note.
    const key = desk.selectedKey.get();
    if (key !== undefined) firstCellOf(key)?.scrollIntoView({ block: 'center' });
  }, [desk]);

  // Questions and other columns move the cells.
  useLayoutEffect(() => putField(inHand.get()));
  useEffect(() => {
    const observer = new ResizeObserver(() => putField(inHand.get()));
    if (frame.current) observer.observe(frame.current);
    return () => observer.disconnect();
  }, [inHand, putField]);

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
              'Readings of the compass, {ordinal} reading of each string, in {unit, select, mm {millimetres} other {inches}}. Enter goes on; a question mark says unknown, a dash none, a slash does not apply.',
              { ordinal: say(ordinals[round - 1] ?? ordinals[0]), unit },
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
                  <abbr title={say(label)}>{say(short)}</abbr> <span className="faint">{unit}</span>
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
                unit={unit}
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
          unit={unit}
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

const isSameCell = (one: CellPlace, other: CellPlace): boolean =>
  one.key === other.key && one.quantity === other.quantity;

/** A cell as it is spoken. */
const inWords = (cell: Element | null): string =>
  [cell?.getAttribute('aria-label'), cell?.textContent, cell?.getAttribute('aria-description')]
    .filter(Boolean)
    .join(', ');

const handRest_ms = 150;
const noQuestions: readonly Question[] = [];

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
