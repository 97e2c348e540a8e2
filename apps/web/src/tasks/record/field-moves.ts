import { type RefObject, useCallback, useEffect, useLayoutEffect, useRef } from 'react';
import { flushSync } from 'react-dom';
import type { JobDesk } from '../../desk/job-desk.ts';
import { type Observable, observable } from '../../parts/observable.ts';
import { cellAt, coverCell, firstCellOf, showCell } from './cell-at.ts';
import type { CellInHand } from './cell-field.tsx';
import type { CellPlace } from './grid.ts';
import type { RecordView } from './record-state.ts';

interface Of {
  readonly desk: JobDesk;
  readonly view: Observable<RecordView>;
  readonly inHand: Observable<CellInHand | undefined>;
  /** The cell that comes after another in the order of reading; undefined at its end. */
  readonly nextOf: (place: CellPlace, direction: 1 | -1) => CellPlace | undefined;
  readonly keepTyped: (place: CellPlace, text: string) => void;
}

export interface FieldMoves {
  readonly field: RefObject<HTMLInputElement | null>;
  /** What holds the field, and is put over the cell. */
  readonly box: RefObject<HTMLDivElement | null>;
  /** What holds the grid; the field is placed by it. */
  readonly frame: RefObject<HTMLDivElement | null>;
  /** The cell that the field came to, in words for speech. */
  readonly told: Observable<string>;
  /** Brings the field to a cell: the value it comes from is kept, the focus stays in it or goes to it. */
  open(place: CellPlace): void;
  /** The focus has gone elsewhere: the value is kept, and the field put away. */
  leave(): void;
  /** Gives the focus to the words of the cell, from where the browser goes on by Tab. */
  stepOut(): void;
  /** To the cell that comes next, or came before. */
  goOn(direction: 1 | -1): void;
  /** Puts a text in the field, instead of what is typed there. */
  putText(text: string): void;
}

/** How the one field of the grid goes from cell to cell, and stays over its cell when that moves. */
export function useFieldMoves({ desk, view, inHand, nextOf, keepTyped }: Of): FieldMoves {
  const told = useRef(observable('')).current;
  const field = useRef<HTMLInputElement>(null);
  const box = useRef<HTMLDivElement>(null);
  const frame = useRef<HTMLDivElement>(null);

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

  const putText = useCallback((text: string) => {
    if (field.current) field.current.value = text;
  }, []);

  return { field, box, frame, told, open, leave, stepOut, goOn, putText };
}

const isSameCell = (one: CellPlace, other: CellPlace): boolean =>
  one.key === other.key && one.quantity === other.quantity;

/** A cell as it is spoken. */
const inWords = (cell: Element | null): string =>
  [cell?.getAttribute('aria-label'), cell?.textContent, cell?.getAttribute('aria-description')]
    .filter(Boolean)
    .join(', ');

const handRest_ms = 150;
