import type { Language } from '@becket/core';
import { type KeyboardEvent, type RefObject, useRef } from 'react';
import type { Observable } from '../../parts/observable.ts';
import { useWritten } from '../../parts/use-written.ts';
import { cellLook } from './cell-look.ts';
import { type CellPlace, cellIn, type GridRow, type UnitOf } from './grid.ts';
import type { Question } from './questions.ts';
import type { TypedTexts } from './typed-texts.ts';

/** The cell that is typed into, or was last. */
export interface CellInHand extends CellPlace {
  /** False once the focus is elsewhere: the field is put away, and the cell shows its words. */
  readonly isTyped: boolean;
}

interface Props {
  readonly inHand: Observable<CellInHand | undefined>;
  readonly field: RefObject<HTMLInputElement | null>;
  /** What holds the field, and is put over the cell. */
  readonly box: RefObject<HTMLDivElement | null>;
  readonly rows: readonly GridRow[];
  readonly unitOf: UnitOf;
  readonly round: number;
  readonly language: Language;
  readonly questions: ReadonlyMap<number, readonly Question[]>;
  readonly texts: TypedTexts;
  readonly onGoOn: (direction: 1 | -1) => void;
  /** The browser's own way from cell to cell: by Tab. */
  readonly onStepOut: () => void;
  readonly onLeave: () => void;
  readonly onUndo: () => void;
}

/**
 * The one field of the grid. It lies over the cell in hand and keeps the focus while it goes from cell to cell, so that a
 * key costs the picture of a few words, and not a change of the focus among hundreds of fields.
 */
export function CellField(props: Props) {
  const { inHand, field, box, rows, unitOf, round, language, questions, texts } = props;
  const { onGoOn, onStepOut, onLeave, onUndo } = props;
  const { say } = language;
  const frame = useRef<HTMLDivElement>(null);
  const count = useRef<HTMLElement>(null);

  /** What the field says of its cell, when it came there or last followed it. */
  const written = useRef({ here: nowhere, text: '', stands: '' });
  const write = () => {
    const here = inHand.get() ?? nowhere;
    const found = cellIn(rows, here.key, here.quantity);
    const { current: input } = field;
    box.current!.hidden = found === undefined || !here.isTyped;
    if (found === undefined || input === null) return;
    const typed = texts.at(here).get();
    const question = questions.get(here.key)?.find(({ quantity }) => quantity === here.quantity);
    const unit = unitOf(here.quantity);
    const look = cellLook({ ...found, unit, round, language, question });
    frame.current!.toggleAttribute('data-question', look.isInQuestion);
    frame.current!.toggleAttribute('data-several', look.count !== undefined);
    frame.current!.toggleAttribute('data-refused', typed?.is === 'refused');
    count.current!.textContent = look.count ?? '';
    input.setAttribute('aria-label', look.label);
    const refusal = typed?.is === 'refused' ? say('was refused, and is not kept') : undefined;
    input.setAttribute('aria-description', [refusal, look.description].filter(Boolean).join('; '));
    input.placeholder = look.answer ?? '';
    const before = written.current;
    const text = typed?.text ?? look.shown;
    // What was refused can be let go for what is recorded; what is being kept is as good as recorded.
    written.current = { here, text, stands: typed?.is === 'refused' ? look.shown : text };
    // A field that nobody has typed into follows its cell: left with what stood there before, it would be taken for a
    // correction. What is being typed is never written over.
    if (here === before.here && (input.value !== before.text || text === before.text)) return;
    input.value = text;
    // Without asking for the focus, which it has: that would lay out the page for a picture that changes yet.
    if (here.isTyped) input.setSelectionRange(0, text.length);
  };
  useWritten(write, inHand, textIn(inHand, texts));

  const takeKey = (event: KeyboardEvent<HTMLInputElement>) => {
    const { key, currentTarget: input } = event;
    if (key === 'Enter' || key === 'ArrowDown' || key === 'ArrowUp') {
      event.preventDefault();
      onGoOn(key === 'ArrowUp' || (key === 'Enter' && event.shiftKey) ? -1 : 1);
    } else if (key === 'Tab') {
      onStepOut();
    } else if (key === 'Escape') {
      input.value = written.current.stands;
      input.select();
    } else if (isUndo(event) && input.value === written.current.text) {
      // Where something is half typed it is the browser's own.
      event.preventDefault();
      onUndo();
    }
  };
  return (
    <div ref={box} className="cell-field">
      <ScreenKey label={say('to the cell before')} onPress={() => onGoOn(-1)} field={field} />
      <div ref={frame} className="cell-frame">
        <input
          ref={field}
          className="cell"
          tabIndex={-1}
          inputMode="decimal"
          enterKeyHint="next"
          autoComplete="off"
          spellCheck={false}
          onBlur={(event) => {
            if (event.relatedTarget?.classList.contains(screenKey) !== true) onLeave();
          }}
          onKeyDown={takeKey}
        />
        <small ref={count} className="cell-note" aria-hidden="true" />
      </div>
      <ScreenKey label={say('to the next cell')} onPress={() => onGoOn(1)} field={field} />
    </div>
  );
}

const nowhere: CellInHand = { key: 0, quantity: 'speaking-length', isTyped: false };

/** Whatever is typed and not drawn yet in the cell in hand, as the hand goes from cell to cell. */
const textIn = (inHand: Observable<CellInHand | undefined>, texts: TypedTexts) => ({
  subscribe(listener: () => void) {
    let end = () => {};
    const follow = () => {
      end();
      end = texts.at(inHand.get() ?? nowhere).subscribe(listener);
    };
    follow();
    const endHand = inHand.subscribe(follow);
    return () => {
      endHand();
      end();
    };
  },
});

const isUndo = ({ ctrlKey, metaKey, shiftKey, key }: KeyboardEvent): boolean =>
  (ctrlKey || metaKey) && !shiftKey && key.toLowerCase() === 'z';

const screenKey = 'screen-key';

interface ScreenKeyProps {
  readonly label: string;
  readonly onPress: () => void;
  readonly field: RefObject<HTMLInputElement | null>;
}

/**
 * Where the keys for the field before and the field after lead that stand on the keyboard of a screen: some have no other
 * key that goes on, and look for a field beside the one that is typed into.
 */
function ScreenKey({ label, onPress, field }: ScreenKeyProps) {
  return (
    <input
      className={`${screenKey} unseen`}
      aria-label={label}
      inputMode="decimal"
      onFocus={() => {
        onPress();
        field.current?.focus();
      }}
    />
  );
}
