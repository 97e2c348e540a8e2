import type { Language } from '@becket/core';
import type { ReadingQuantityName, Ulid } from '@becket/journal';
import { memo, useRef } from 'react';
import type { ShownUnit } from '../../parts/length-text.ts';
import { useWritten } from '../../parts/use-written.ts';
import { cellId } from './cell-at.ts';
import { cellLook } from './cell-look.ts';
import type { CellPlace, GridCell, GridColumn, GridRow as Row, UnitOf } from './grid.ts';
import { type Question, suggestionText } from './questions.ts';
import type { TypedTexts } from './typed-texts.ts';

interface RowProps {
  readonly row: Row;
  readonly language: Language;
  readonly columns: readonly GridColumn[];
  readonly column: ReadingQuantityName;
  readonly unitOf: UnitOf;
  readonly round: number;
  readonly questions: readonly Question[];
  readonly texts: TypedTexts;
  readonly onCorrect: (place: CellPlace, text: string, doubted: Ulid) => void;
  readonly onOpen: (place: CellPlace) => void;
}

/** One note of the grid, with what is in question of it. Drawn again only when something of it changed. */
export const GridRow = memo(
  function GridRow(props: RowProps) {
    const { row, language, columns, column, unitOf, round, questions, texts, onCorrect, onOpen } = props;
    const { say } = language;
    const { note } = row;
    return (
      <>
        {row.beginsSection && (
          <tr className="grid-break">
            <th colSpan={columns.length + 1} scope="colgroup">
              {row.section === undefined
                ? say('in no section')
                : say('{section}: {bridge} bridge, {termination}', {
                    section: row.section.section,
                    bridge: row.section.bridge === 'unknown' ? say('unknown') : row.section.bridge,
                    termination: say(row.section.frontTermination),
                  })}
            </th>
          </tr>
        )}
        <tr data-row={row.key}>
          <th scope="row">
            <span className="note-name">{note.note}</span>{' '}
            <span className="faint grid-count">
              {note.strings === undefined
                ? say('strings?')
                : note.winding === 'wound'
                  ? say('{strings}× wound', { strings: note.strings })
                  : `${note.strings}×`}
            </span>
          </th>
          {row.cells.map((cell) => (
            <td
              key={cell.quantity}
              data-quantity={cell.quantity}
              data-on={cell.quantity === column || undefined}
              className={cell.applies ? undefined : 'not-here'}
            >
              {cell.applies ? (
                <CellWords
                  note={note.note}
                  language={language}
                  rowKey={row.key}
                  cell={cell}
                  unit={unitOf(cell.quantity)}
                  round={round}
                  question={questions.find(({ quantity }) => quantity === cell.quantity)}
                  texts={texts}
                  onOpen={onOpen}
                />
              ) : (
                <span aria-label={say('does not belong to this string')} role="img">
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
              <div className="question-line">
                <span>? {question.sentence}</span>
                {question.suggestion_si !== undefined && (
                  <button
                    type="button"
                    className="button quiet"
                    onClick={() => {
                      const place = { key: row.key, quantity: question.quantity };
                      onCorrect(
                        place,
                        suggestionText(question.suggestion_si!, unitOf(question.quantity)),
                        question.entry,
                      );
                      // The question goes away with its button: the focus goes back to the cell it was about.
                      onOpen(place);
                    }}
                  >
                    {say('It is {length}', {
                      length: suggestionText(question.suggestion_si, unitOf(question.quantity), language),
                    })}
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
    before.language === after.language &&
    before.columns === after.columns &&
    before.column === after.column &&
    before.unitOf === after.unitOf &&
    before.round === after.round &&
    before.questions.map(({ sentence }) => sentence).join() ===
      after.questions.map(({ sentence }) => sentence).join() &&
    // A note keeps its object while nothing of it changes, and its cells are made from it.
    before.row.note === after.row.note &&
    before.row.beginsSection === after.row.beginsSection,
);

interface CellProps extends Pick<RowProps, 'language' | 'round' | 'texts' | 'onOpen'> {
  readonly note: string;
  readonly rowKey: number;
  readonly cell: GridCell;
  readonly unit: ShownUnit;
  readonly question: Question | undefined;
}

/** A cell as words. For speech and for the keyboard it is a field, and it becomes the field when it is met. */
function CellWords({ note, language, rowKey, cell, unit, round, question, texts, onOpen }: CellProps) {
  const place = { key: rowKey, quantity: cell.quantity };
  const look = cellLook({ note, cell, question, unit, round, language });
  const typed = texts.at(place);
  const frame = useRef<HTMLDivElement>(null);
  const words = useRef<HTMLSpanElement>(null);
  useWritten(() => {
    const { shown, answer } = look;
    const text = typed.get()?.text ?? shown;
    frame.current!.toggleAttribute('data-refused', typed.get()?.is === 'refused');
    words.current!.textContent = text || (answer ?? '');
    words.current!.classList.toggle('answer', text === '' && answer !== undefined);
  }, typed);
  return (
    <div
      ref={frame}
      className="cell-frame"
      data-question={look.isInQuestion || undefined}
      data-several={look.count && true}
    >
      {/* biome-ignore lint/a11y/useSemanticElements: it stands for such an element, which would cost every picture of the page */}
      <span
        ref={words}
        role="textbox"
        id={cellId(place)}
        tabIndex={0}
        className="cell"
        data-cell={cell.quantity}
        aria-label={look.label}
        aria-description={look.description}
        // The focus goes straight to the field: it is not let go of between, and a keyboard on the screen stays.
        onMouseDown={(event) => {
          if (event.button !== 0) return;
          event.preventDefault();
          onOpen(place);
        }}
        onFocus={() => onOpen(place)}
      />
      {look.count !== undefined && (
        <small className="cell-note" aria-hidden="true">
          {look.count}
        </small>
      )}
    </div>
  );
}
