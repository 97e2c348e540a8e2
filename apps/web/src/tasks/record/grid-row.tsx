import type { Language } from '@becket/core';
import type { ReadingQuantityName, Ulid } from '@becket/journal';
import { memo, useEffect, useRef } from 'react';
import { type LengthUnit, lengthNumber, uncertaintyText } from '../../parts/length-text.ts';
import { lengthKindOf } from '../../piano/length-kind.ts';
import type { GridCell, GridColumn, GridRow as Row } from './grid.ts';
import { type Question, suggestionText } from './questions.ts';
import { shownText } from './record-state.ts';
import { cellAt } from './rows-near.ts';

interface RowProps {
  readonly row: Row;
  readonly language: Language;
  readonly columns: readonly GridColumn[];
  readonly column: ReadingQuantityName;
  readonly unit: LengthUnit;
  readonly round: number;
  readonly questions: readonly Question[];
  readonly onCommit: (key: number, quantity: ReadingQuantityName, text: string, doubted?: Ulid) => void;
  readonly onGoOn: (key: number, quantity: ReadingQuantityName, direction: 1 | -1) => void;
  readonly onEnter: (key: number, quantity: ReadingQuantityName) => void;
}

/** One note of the grid, with what is in question of it. Drawn again only when something of it changed. */
export const GridRow = memo(
  function GridRow(props: RowProps) {
    const { row, language, columns, column, unit, round, questions, onCommit, onGoOn, onEnter } = props;
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
          {row.cells.map((cell, index) => (
            <td
              key={cell.quantity}
              data-quantity={cell.quantity}
              data-on={cell.quantity === column || undefined}
              className={cell.applies ? undefined : 'not-here'}
            >
              {cell.applies ? (
                <CellInput
                  label={`${note.note} ${columns[index] && say(columns[index].label)}`}
                  language={language}
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
              <div className="question">
                <span>? {question.sentence}</span>
                {question.suggestion_si !== undefined && (
                  <button
                    type="button"
                    className="button quiet"
                    onClick={() => {
                      onCommit(
                        row.key,
                        question.quantity,
                        suggestionText(question.suggestion_si!, unit),
                        question.entry,
                      );
                      // The question goes away with its button: the focus goes back to the cell it was about.
                      cellAt(row.key, question.quantity)?.focus();
                    }}
                  >
                    {say('It is {length}', {
                      length: suggestionText(question.suggestion_si, unit, language),
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
    before.unit === after.unit &&
    before.round === after.round &&
    before.questions.map(({ sentence }) => sentence).join() ===
      after.questions.map(({ sentence }) => sentence).join() &&
    // A note keeps its object while nothing of it changes, and its cells are made from it.
    before.row.note === after.row.note &&
    before.row.beginsSection === after.row.beginsSection,
);

interface CellProps
  extends Pick<RowProps, 'language' | 'unit' | 'round' | 'onCommit' | 'onGoOn' | 'onEnter'> {
  readonly label: string;
  readonly rowKey: number;
  readonly cell: GridCell;
  readonly question: Question | undefined;
}

function CellInput(props: CellProps) {
  const { label, language, rowKey, cell, unit, round, question, onCommit, onGoOn, onEnter } = props;
  const { say } = language;
  const input = useRef<HTMLInputElement>(null);
  const { quantity, figure, readings, absence } = cell;
  const text = shownText(cell, round, unit, language);
  const shownBefore = useRef(text);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the sign of an answer, which was typed, makes room for it
  useEffect(() => {
    const typing = input.current;
    if (typing === null) return;
    const isFocused = document.activeElement === typing;
    // What is being typed is never written over. A cell that nobody has typed into follows even while it has the
    // focus: left with what it showed before, it would be taken for a correction.
    if (!isFocused || typing.value === shownBefore.current) {
      typing.value = text;
      if (isFocused) typing.select();
    }
    shownBefore.current = text;
  }, [text, absence]);
  const isSeveral = figure !== undefined && readings.length > 1;
  const several = isSeveral
    ? say('{figure} from {readings} readings {uncertainty}', {
        figure: lengthNumber(figure.value, unit, lengthKindOf(quantity), language),
        readings: readings.length,
        uncertainty: uncertaintyText(figure.standardUncertainty, unit, lengthKindOf(quantity), language),
      })
    : undefined;
  return (
    <div className="cell-frame">
      {/* Drawn where the row is far from the screen: for speech and for the keyboard it is the field itself. */}
      {/* biome-ignore lint/a11y/useSemanticElements: it stands for such an element, which would cost every picture of the page */}
      <span
        role="textbox"
        tabIndex={0}
        className="cell-afar"
        aria-label={label}
        onFocus={() => cellAt(rowKey, quantity)?.focus()}
      >
        {text || (absence && say(absence))}
      </span>
      <input
        ref={input}
        className="cell"
        data-cell={quantity}
        data-question={question === undefined ? undefined : true}
        data-several={isSeveral || undefined}
        aria-label={label}
        aria-description={
          [absence && say(absence), several, question?.sentence].filter(Boolean).join('; ') || undefined
        }
        placeholder={absence && say(absence)}
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
          {say('{count} readings', { count: readings.length })}
        </small>
      )}
    </div>
  );
}
