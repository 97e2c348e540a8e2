import type { Language } from '@becket/core';
import { lengthNumber, type ShownUnit, uncertaintyText } from '../../parts/length-text.ts';
import { lengthKindOf } from '../../piano/length-kind.ts';
import type { GridCell } from './grid.ts';
import type { Question } from './questions.ts';
import { shownText, titleOf } from './record-state.ts';

interface Of {
  /** The name of its note. */
  readonly note: string;
  readonly cell: GridCell;
  readonly question: Question | undefined;
  readonly unit: ShownUnit;
  readonly round: number;
  readonly language: Language;
}

/** A cell of the grid as it is drawn, whether by its words or by the field over it. */
export interface CellLook {
  /** 'A4 speaking length' */
  readonly label: string;
  /** What is recorded in this round. */
  readonly shown: string;
  /** Unknown, none or does not apply, where that was answered. */
  readonly answer: string | undefined;
  readonly description: string | undefined;
  /** '3 readings', where there are several. */
  readonly count: string | undefined;
  readonly isInQuestion: boolean;
}

export function cellLook({ note, cell, question, unit, round, language }: Of): CellLook {
  const { say } = language;
  const { quantity, figure, readings, absence } = cell;
  const shown = shownText(cell, round, unit, language);
  const answer = absence && say(absence);
  const several =
    figure === undefined || readings.length < 2
      ? undefined
      : say('{figure} from {readings} readings {uncertainty}', {
          figure: lengthNumber(figure.value, unit, lengthKindOf(quantity), language),
          readings: readings.length,
          uncertainty: uncertaintyText(figure.standardUncertainty, unit, lengthKindOf(quantity), language),
        });
  return {
    label: titleOf(note, quantity, language),
    shown,
    answer,
    description: [answer, several, question?.sentence].filter(Boolean).join('; ') || undefined,
    count: several && say('{count} readings', { count: readings.length }),
    isInQuestion: question !== undefined,
  };
}
