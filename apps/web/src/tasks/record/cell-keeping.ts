import { type Language, noteName } from '@becket/core';
import type { Absence, Ulid } from '@becket/journal';
import type { TaskContext } from '@becket/tasks';
import { type RefObject, useMemo, useRef } from 'react';
import type { JobDesk } from '../../desk/job-desk.ts';
import { sentenceOf } from '../../desk/sentence-of.ts';
import { afterPicture } from '../../parts/after-picture.ts';
import type { Observable } from '../../parts/observable.ts';
import { queue } from '../../parts/queue.ts';
import { type CellPlace, cellIn, cellOf, type GridCell, type GridRow, type UnitOf } from './grid.ts';
import { type InHand, instrumentInHand } from './instruments-state.ts';
import { readBackTurns } from './read-back-turns.ts';
import { readingOrder } from './reading-order.ts';
import {
  type Committed,
  commitCell,
  notKept,
  type RecordView,
  readBackAtOnce,
  sayAbsence,
  undoStep,
} from './record-state.ts';
import type { TypedText, TypedTexts } from './typed-texts.ts';

/** What the grid shows now; it is read when a value is typed. */
export interface GridNow {
  readonly rows: readonly GridRow[];
  readonly unitOf: UnitOf;
  readonly inHand: InHand;
}

export interface CellKeeping {
  /** Keeps what was typed into a cell. It stands there until its row is drawn with it. */
  keepTyped(place: CellPlace, text: string): void;
  /** Puts right the reading that is in question, whichever round is being taken. */
  correct(place: CellPlace, text: string, doubted: Ulid): void;
  answer(place: CellPlace, answer: Absence): void;
  undo(): void;
}

interface Of {
  readonly desk: JobDesk;
  readonly view: Observable<RecordView>;
  readonly texts: TypedTexts;
  readonly language: Language;
  readonly now: RefObject<GridNow>;
  /** Called when a value was kept and seen. */
  readonly onRest: () => void;
}

/** Keeps the values of the grid, one after the other: each is read back at its key, and kept after its picture. */
export function useCellKeeping({ desk, view, texts, language, now, onRest }: Of): CellKeeping {
  const inTurn = useRef(queue()).current;
  return useMemo(() => {
    const beginTurn = readBackTurns(view);

    /** The cell as it stands in the journal now, which the screen may yet have to show. */
    const find = async ({ key, quantity }: CellPlace) => {
      const latest = await desk.latest();
      if (latest === undefined) return undefined;
      const cell = cellOf(latest.record, key, quantity, readingOrder(latest.entries));
      return cell && { ...cell, key, job: latest.job };
    };

    /** Said as soon as it is kept, before anything else is drawn that follows from it. */
    const keep = (
      { key, quantity }: CellPlace,
      outcome: (committed: Committed | undefined) => void,
      task: (context: TaskContext, job: Ulid) => Promise<Committed | undefined>,
    ) =>
      desk.runTyped(async (context, id) => {
        try {
          outcome(await task(context, id));
        } catch (error) {
          const refusal = sentenceOf(error, language);
          outcome({ readBack: notKept(noteName(key), quantity, refusal, language), step: undefined });
          throw error;
        }
      });

    const keepText = (
      place: CellPlace,
      text: string,
      roundIn: (cell: GridCell) => number,
      outcome: (committed: Committed | undefined) => void = () => {},
    ) => {
      const { reason } = view.get();
      const { rows, unitOf, inHand } = now.current;
      const unit = unitOf(place.quantity);
      const shown = cellIn(rows, place.key, place.quantity);
      const readBack = beginTurn(
        shown && readBackAtOnce({ ...shown, text, unit, round: roundIn(shown.cell) }, language),
      );
      const tell = (committed: Committed | undefined) => {
        readBack(committed);
        outcome(committed);
      };
      void inTurn(async () => {
        // What is typed is seen first: to keep it takes as long as a picture.
        await afterPicture();
        await keep(place, tell, async (context, id) => {
          const found = await find(place);
          if (found === undefined) return undefined;
          const { key, note, cell } = found;
          const instrument = instrumentInHand(found.job, inHand, place.quantity)?.instrument;
          const what = { key, note, cell, text, unit, round: roundIn(cell), reason, instrument };
          const committed = await commitCell(context, id, what);
          return committed?.step === undefined
            ? committed
            : { ...committed, step: { ...committed.step, typed: { ...place, text } } };
        });
        void afterPicture().then(onRest);
      });
    };

    return {
      keepTyped(place, text) {
        const round = view.get().round;
        const typed = texts.at(place);
        const own: TypedText = { text, is: 'being kept' };
        typed.set(own);
        keepText(
          place,
          text,
          () => round,
          (committed) => {
            // Something else was typed there meanwhile.
            if (typed.get() !== own) return;
            const entries = committed?.step?.entries;
            if (committed?.readBack.is === 'not saved') typed.set({ text, is: 'refused' });
            else typed.set(entries && { ...own, entries });
            texts.giveWayTo(desk.now()?.entries ?? []);
          },
        );
      },
      correct(place, text, doubted) {
        const round = view.get().round;
        keepText(place, text, ({ readings }) => {
          const index = readings.findIndex(({ entry }) => entry === doubted);
          return index === -1 ? round : index + 1;
        });
      },
      answer(place, answer) {
        const { reason } = view.get();
        const readBack = beginTurn(undefined);
        void inTurn(() =>
          keep(place, readBack, async (context, id) => {
            const found = await find(place);
            return found && sayAbsence(context, id, { ...found, answer, reason });
          }),
        );
      },
      undo() {
        const { reason } = view.get();
        void inTurn(async () => {
          const step = view.get().steps.at(-1);
          if (step === undefined) return;
          const readBack = await desk.run((context, id) => undoStep(context, id, step, reason));
          if (readBack === undefined) return;
          const typed = step.typed && texts.at(step.typed);
          // It may not have been drawn yet, and is not to be.
          if (typed?.get()?.text === step.typed?.text) typed?.set(undefined);
          view.update({ readBack, steps: view.get().steps.filter((one) => one !== step) });
        });
      },
    };
  }, [desk, inTurn, language, now, onRest, texts, view]);
}
