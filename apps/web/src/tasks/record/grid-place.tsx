import { noteName } from '@becket/core';
import type { Absence, ReadingQuantityName, Ulid } from '@becket/journal';
import type { TaskContext } from '@becket/tasks';
import {
  type CSSProperties,
  type KeyboardEvent,
  useCallback,
  useContext,
  useDeferredValue,
  useEffect,
  useMemo,
  useRef,
} from 'react';
import { flushSync } from 'react-dom';
import { sentenceOf } from '../../desk/sentence-of.ts';
import { useDesk } from '../../desk/use-desk.ts';
import { useSettings } from '../../desk/use-device.ts';
import { afterPicture } from '../../parts/after-picture.ts';
import { Field } from '../../parts/field.tsx';
import { LanguageContext, useLanguage } from '../../parts/language.tsx';
import { useObservable, usePart } from '../../parts/observable.ts';
import { queue } from '../../parts/queue.ts';
import { useSame } from '../../parts/use-same.ts';
import { type CellPlace, cellAfter, cellIn, cellOf, columnsFor, type GridCell, gridRows } from './grid.ts';
import { GridRow } from './grid-row.tsx';
import { GridTools, ordinals } from './grid-tools.tsx';
import { inHandOf, instrumentInHand } from './instruments-state.ts';
import { type Question, questionsOf } from './questions.ts';
import { ReadBackBar } from './read-back-bar.tsx';
import { type Outcome, readBackTurns } from './read-back-turns.ts';
import { readingOrder } from './reading-order.ts';
import {
  type Committed,
  commitCell,
  notKept,
  readBackAtOnce,
  recordViewOf,
  type Step,
  sayAbsence,
  shownText,
  undoStep,
} from './record-state.ts';
import { cellAt, markFarRows } from './rows-near.ts';
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
  const inTurn = useRef(queue());
  const active = useRef<{ key: number; quantity: ReadingQuantityName } | undefined>(undefined);

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
  const inHand = useObservable(inHandOf(desk.id));
  const latest = useRef({ rows, unit, inHand });
  latest.current = { rows, unit, inHand };

  const beginTurn = useMemo(() => readBackTurns(view), [view]);

  /** The cell as it stands in the journal now, which the screen may yet have to show. */
  const find = useCallback(
    async (key: number, quantity: ReadingQuantityName) => {
      const now = await desk.latest();
      if (now === undefined) return undefined;
      const cell = cellOf(now.record, key, quantity, readingOrder(now.entries));
      return cell && { ...cell, key, job: now.job };
    },
    [desk],
  );

  /** Keeps what belongs to this cell: said as soon as it is kept, before anything else is drawn that follows from it. */
  const keep = useCallback(
    async (
      outcome: Outcome,
      { key, quantity }: CellPlace,
      task: (context: TaskContext, job: Ulid) => Promise<Committed | undefined>,
    ) => {
      await desk.runTyped(async (context, id) => {
        try {
          outcome(await task(context, id));
        } catch (error) {
          const refusal = sentenceOf(error, language);
          outcome({ readBack: notKept(noteName(key), quantity, refusal, language), step: undefined });
          throw error;
        }
      });
    },
    [desk, language],
  );

  /** Brings the cell that comes next into view while the hand rests: its Enter then has nothing to move. */
  const showNext = useCallback(() => {
    const at = active.current;
    const { order: enterOrder, round: taken } = view.get();
    if (at === undefined || document.activeElement !== cellAt(at.key, at.quantity)) return;
    const next = cellAfter(latest.current.rows, { ...at, direction: 1, order: enterOrder, round: taken });
    const nearby = next && next.key - at.key === 1 ? cellAt(next.key, next.quantity) : null;
    nearby?.scrollIntoView({ block: 'nearest' });
  }, [view]);

  const commit = useCallback(
    (key: number, quantity: ReadingQuantityName, text: string, doubted?: Ulid) => {
      const { round: ownRound, reason } = view.get();
      const { rows: shownRows, unit: typedIn, inHand: held } = latest.current;
      // A reading that is in question is corrected in its own place, whichever round is being taken.
      const roundIn = ({ readings }: GridCell) => {
        const place = readings.findIndex(({ entry }) => entry === doubted);
        return place === -1 ? ownRound : place + 1;
      };
      const shown = cellIn(shownRows, key, quantity);
      const atOnce =
        shown && readBackAtOnce({ ...shown, text, unit: typedIn, round: roundIn(shown.cell) }, language);
      const outcome = beginTurn(atOnce);
      void inTurn.current(async () => {
        // What is typed is seen first: to keep it takes as long as a picture.
        await afterPicture();
        await keep(outcome, { key, quantity }, async (context, id) => {
          const found = await find(key, quantity);
          if (found === undefined) return undefined;
          const { note, cell } = found;
          const instrument = instrumentInHand(found.job, held, quantity)?.instrument;
          const what = { key, note, cell, text, unit: typedIn, round: roundIn(cell), reason, instrument };
          const committed = await commitCell(context, id, what);
          const step = committed?.step && { ...committed.step, typed: { key, quantity, text } };
          return committed && { ...committed, step };
        });
        void afterPicture().then(showNext);
      });
    },
    [beginTurn, find, keep, language, showNext, view],
  );

  const goOn = useCallback(
    (key: number, quantity: ReadingQuantityName, direction: 1 | -1) => {
      const { order: enterOrder, round: taken } = view.get();
      const from = { key, quantity, direction, order: enterOrder, round: taken };
      const next = cellAfter(latest.current.rows, from);
      if (next === undefined) return;
      // On a small screen only one column is there to go to.
      if (next.quantity !== quantity) flushSync(() => view.update({ column: next.quantity }));
      cellAt(next.key, next.quantity)?.focus();
    },
    [view],
  );

  const answerWith = useCallback(
    (answer: Absence) => {
      const at = active.current;
      if (at === undefined) return;
      const { reason } = view.get();
      const outcome = beginTurn(undefined);
      void inTurn.current(() =>
        keep(outcome, at, async (context, id) => {
          const found = await find(at.key, at.quantity);
          return found && sayAbsence(context, id, { ...found, answer, reason });
        }),
      );
      goOn(at.key, at.quantity, 1);
    },
    [beginTurn, find, goOn, keep, view],
  );

  /**
   * A value that is taken back before its row was drawn with it leaves the row as it was drawn: what was typed would stand
   * on in its cell, and be kept again when the cell is left.
   */
  const clearTyped = useCallback(
    async ({ key, quantity, text }: NonNullable<Step['typed']>) => {
      const field = document.querySelector<HTMLInputElement>(`[data-row="${key}"] [data-cell="${quantity}"]`);
      const found = await find(key, quantity);
      if (field === null || found === undefined || field.value !== text) return;
      field.value = shownText(found.cell, view.get().round, latest.current.unit, language);
      if (document.activeElement === field) field.select();
    },
    [find, language, view],
  );

  const undo = useCallback(() => {
    const { reason } = view.get();
    void inTurn.current(async () => {
      const step = view.get().steps.at(-1);
      if (step === undefined) return;
      const readBack = await desk.run((context, id) => undoStep(context, id, step, reason));
      if (readBack === undefined) return;
      if (step.typed !== undefined) await clearTyped(step.typed);
      view.update({ readBack, steps: view.get().steps.filter((one) => one !== step) });
    });
  }, [clearTyped, desk, view]);

  /** Control Z takes the last step back, unless something is half typed: then it is the browser's own. */
  const takeBackKey = (event: KeyboardEvent) => {
    const { target, key } = event;
    if (!(event.ctrlKey || event.metaKey) || event.shiftKey || key.toLowerCase() !== 'z') return;
    if (!(target instanceof HTMLInputElement) || !target.matches('[data-cell]')) return;
    if (target.value !== target.defaultValue) return;
    event.preventDefault();
    undo();
  };

  const enter = useCallback(
    (key: number, quantity: ReadingQuantityName) => {
      active.current = { key, quantity };
      if (view.get().column !== quantity) view.update({ column: quantity });
      // The map follows when the hand rests: to draw it takes longer than the cell that is typed into.
      setTimeout(() => {
        if (active.current?.key === key) desk.selectedKey.set(key);
      }, mapRest_ms);
    },
    [desk, view],
  );

  useEffect(() => {
    // A tablet that is laid aside keeps what was typed and not yet entered. A page that is closed or loaded again does
    // not: what is half typed then may be half a number.
    let isLeaving = false;
    const leave = () => {
      isLeaving = true;
    };
    const keepTyped = () => {
      if (document.visibilityState === 'visible') isLeaving = false;
      const typing = document.activeElement;
      const at = active.current;
      if (document.visibilityState !== 'hidden' || isLeaving || at === undefined) return;
      if (typing instanceof HTMLInputElement && typing.dataset.cell === at.quantity)
        commit(at.key, at.quantity, typing.value);
    };
    addEventListener('pagehide', leave);
    document.addEventListener('visibilitychange', keepTyped);
    return () => {
      removeEventListener('pagehide', leave);
      document.removeEventListener('visibilitychange', keepTyped);
    };
  }, [commit]);

  useEffect(() => {
    // Whoever comes from the plan, a chart or the strip check comes to a note.
    const key = desk.selectedKey.get();
    if (key !== undefined) cellAt(key)?.scrollIntoView({ block: 'center' });
  }, [desk]);

  const table = useRef<HTMLTableElement>(null);
  const shownKeys = useSame(rows.map(({ key }) => key));
  // biome-ignore lint/correctness/useExhaustiveDependencies: other notes are other rows of the table
  useEffect(() => markFarRows(table.current?.querySelectorAll('[data-row]') ?? []), [shownKeys]);

  const sections = useSame([
    ...new Set(record.notes.map((note) => note.section?.section).filter((name) => name !== undefined)),
  ]);
  const openQuestions = [...questions.values()].flat().length;
  const { say } = language;

  return (
    <section aria-label={say('Readings')} className="grid-place" onKeyDown={takeBackKey}>
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
      <table
        ref={table}
        className="grid"
        data-round={round}
        style={{ '--columns': columns.length } as CSSProperties}
      >
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
              onCommit={commit}
              onGoOn={goOn}
              onEnter={enter}
            />
          ))}
        </tbody>
      </table>
      <WoundDoubts />
      <ReadBack onUndo={undo} onSay={answerWith} />
    </section>
  );
}

const mapRest_ms = 150;
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

/** Apart from the grid, so that a value is read back without the grid being drawn again. */
function ReadBack({ onUndo, onSay }: { onUndo: () => void; onSay: (answer: Absence) => void }) {
  const { desk } = useDesk();
  const view = recordViewOf(desk.id);
  const readBack = usePart(view, (shown) => shown.readBack);
  const step = usePart(view, (shown) => shown.steps.at(-1));
  return (
    <ReadBackBar
      readBack={readBack}
      canUndo={step !== undefined}
      undoTitle={step?.title}
      onUndo={onUndo}
      onSay={onSay}
    />
  );
}
