import { english, type Language } from '@becket/core';
import type { Absence, Job, ReadingQuantityName, ReadUnit, StandingReading, Ulid } from '@becket/journal';
import { readingQuantities, siFromRead } from '@becket/journal';
import {
  RecordIsSealed,
  readJob,
  recordAbsence,
  recordReadings,
  type TaskContext,
  withdrawEntry,
} from '@becket/tasks';
import { lengthNumber, lengthText, otherUnit, type ShownUnit, unitSign } from '../../parts/length-text.ts';
import { type Observable, observable } from '../../parts/observable.ts';
import { numberAsTyped } from '../../parts/typed-number.ts';
import { lengthKindOf } from '../../piano/length-kind.ts';
import type { EnterOrder, GridCell } from './grid.ts';
import { readTypedCell } from './typed-cell.ts';

/** The choices of the Record screen. They last as long as the page. */
export interface RecordView {
  /** Name of the section shown; undefined shows the whole compass. */
  readonly section: string | undefined;
  /** Which reading of each string is being taken, counted from 1. */
  readonly round: number;
  readonly order: EnterOrder;
  readonly withFurther: boolean;
  /** On a small screen one column is shown at a time: this one. */
  readonly column: ReadingQuantityName;
  /** After the seal: why the record is being changed. */
  readonly reason: string;
  readonly readBack: ReadBack | undefined;
  /** What can be taken back, the latest last: each the entries of one step. */
  readonly steps: readonly Step[];
}

export interface Step {
  readonly title: string;
  readonly entries: readonly Ulid[];
  /** What was typed for it, and where. */
  readonly typed?: { readonly key: number; readonly quantity: ReadingQuantityName; readonly text: string };
}

/** What is read back after an entry, large. */
export interface ReadBack {
  /** 'being kept' from the key until the journal has it; then one of the others takes its place. */
  readonly is: 'being kept' | 'saved' | 'taken back' | 'not saved';
  /** 'C#3 wire diameter' */
  readonly title: string;
  /** The value in the unit it was typed in, or the answer; then the other unit. */
  readonly value: string;
  readonly alsoAs: string | undefined;
}

export const newRecordView = (): RecordView => ({
  section: undefined,
  round: 1,
  order: 'next',
  withFurther: false,
  column: 'speaking-length',
  reason: '',
  readBack: undefined,
  steps: [],
});

const views = new Map<Ulid, Observable<RecordView>>();

/** The view of this job's record, kept while the program is open so that coming back finds it as it was. */
export function recordViewOf(job: Ulid): Observable<RecordView> {
  const known = views.get(job);
  if (known !== undefined) return known;
  const fresh = observable(newRecordView());
  views.set(job, fresh);
  return fresh;
}

export interface CellToCommit {
  readonly key: number;
  readonly note: string;
  readonly cell: GridCell;
  readonly text: string;
  readonly unit: ShownUnit;
  readonly round: number;
  /** After the seal; empty before it. */
  readonly reason: string;
  /** The name of the one in hand; left out where none is. */
  readonly instrument?: string | undefined;
}

/** What became of a cell, for the read-back and for taking it back. */
export interface Committed {
  readonly readBack: ReadBack;
  readonly step: Step | undefined;
}

/**
 * What is read back at the key itself, while the journal is still being written: a number or an answer that changes the
 * cell. Undefined for what only the journal can tell, such as what an emptied cell takes back.
 */
export function readBackAtOnce(
  { note, cell, text, unit, round }: Pick<CellToCommit, 'note' | 'cell' | 'text' | 'unit' | 'round'>,
  language: Language = english,
): ReadBack | undefined {
  const { quantity, readings, absence } = cell;
  const title = titleOf(note, quantity, language);
  const typed = readTypedCell(text, quantity, unit, language);
  switch (typed.do) {
    case 'record':
      if (isAsRead(readings[round - 1], typed)) return undefined;
      return {
        is: 'being kept',
        title,
        value: `${numberAsTyped(text, typed.value, language)} ${unitSign(typed.unit)}`,
        alsoAs: alsoAs({ quantity, value_si: siFromRead(typed.value, typed.unit) }, typed.unit, language),
      };
    case 'say':
      if (absence === typed.answer && readings.length === 0) return undefined;
      return { is: 'being kept', title, value: language.say(typed.answer), alsoAs: undefined };
    default:
      return undefined;
  }
}

/** 'C#3 wire diameter': what a cell is called, on the screen and in what is read back of it. */
export const titleOf = (note: string, quantity: ReadingQuantityName, { say }: Language): string =>
  `${note} ${say(readingQuantities[quantity].label)}`;

/** The same reading written otherwise, 1.0 for 1, corrects nothing. */
const isAsRead = (
  reading: StandingReading | undefined,
  { value, unit }: { readonly value: number; readonly unit: ReadUnit },
): boolean => reading?.asRead.value === value && reading.asRead.unit === unit;

/** The read-back of what was refused: what was typed still stands in its cell, and nothing of it is kept. */
export const notKept = (
  note: string,
  quantity: ReadingQuantityName,
  sentence: string,
  language: Language = english,
): ReadBack => ({
  is: 'not saved',
  title: titleOf(note, quantity, language),
  value: sentence,
  alsoAs: undefined,
});

/** What stands in a cell in this round, as it is shown in this unit. */
export function shownText(
  cell: GridCell,
  round: number,
  unit: ShownUnit,
  language: Language = english,
): string {
  const reading = cell.readings[round - 1];
  if (reading === undefined) return '';
  return readingNumber(reading, unit, language);
}

function readingNumber(reading: StandingReading, unit: ShownUnit, language: Language): string {
  // What was read in this unit is shown digit for digit as it was read, with the mark of the language.
  if (reading.asRead.unit === unit || readingQuantities[reading.quantity].dimension !== 'length')
    return language.plain(reading.asRead.value);
  return lengthNumber(reading.value_si, unit, lengthKindOf(reading.quantity), language);
}

/**
 * Keeps what was typed into a cell. A number in an empty place is a further reading; over a reading of this round it
 * corrects it; an emptied cell takes the reading back; an answer takes back the readings it contradicts.
 *
 * Gives back undefined when there is nothing to do. Throws as the tasks do; what it did before stays and can be taken back.
 */
export async function commitCell(
  context: TaskContext,
  job: Ulid,
  { key, note, cell, text, unit, round, reason, instrument }: CellToCommit,
): Promise<Committed | undefined> {
  const language = context.language ?? english;
  const { say } = language;
  const { quantity, readings } = cell;
  if (text.trim() === shownText(cell, round, unit, language)) return undefined;
  const title = titleOf(note, quantity, language);
  const before = readings[round - 1];
  const typed = readTypedCell(text, quantity, unit, language);
  const ownReason = reason.trim() === '' ? undefined : reason.trim();
  switch (typed.do) {
    case 'object':
      return {
        readBack: { is: 'not saved', title, value: typed.sentence, alsoAs: undefined },
        step: undefined,
      };
    case 'nothing': {
      if (before === undefined) return undefined;
      const why = await reasonFor(context, job, reason, say('emptied while recording'));
      const withdrawal = await takeBackWhole(context, job, before.entry, why);
      return {
        readBack: { is: 'taken back', title, value: readingText(before, unit, language), alsoAs: undefined },
        step: { title: say('the emptying of {title}', { title }), entries: withdrawal },
      };
    }
    case 'record': {
      if (isAsRead(before, typed)) return undefined;
      const correction =
        before === undefined
          ? {}
          : {
              replaces: before.entry,
              reason: await reasonFor(context, job, reason, say('typed again while recording')),
            };
      const { entries, job: changed } = await recordReadings(context, job, [
        {
          quantity,
          // What corrects the reading of one string, at one point, is a reading of that string and point.
          place: before?.place ?? { key },
          value: typed.value,
          unit: typed.unit,
          condition: before?.condition,
          instrument: instrument ?? before?.instrument,
          ...(ownReason === undefined ? {} : { reason: ownReason }),
          ...correction,
        },
      ]);
      const recorded = changed.readings.findLast((reading) => reading.entry === entries[0]);
      return {
        readBack: {
          is: 'saved',
          title,
          value: `${numberAsTyped(text, typed.value, language)} ${unitSign(typed.unit)}`,
          alsoAs: recorded && alsoAs(recorded, typed.unit, language),
        },
        step: { title, entries },
      };
    }
    case 'say':
      // The same answer again says nothing new.
      if (cell.absence === typed.answer && readings.length === 0) return undefined;
      return sayAbsence(context, job, { key, note, cell, answer: typed.answer, reason });
  }
}

/** Says that a cell's quantity could not be read, is not there, or does not apply; takes back readings that say otherwise. */
export async function sayAbsence(
  context: TaskContext,
  job: Ulid,
  {
    key,
    note,
    cell,
    answer,
    reason,
  }: Pick<CellToCommit, 'key' | 'note' | 'cell' | 'reason'> & { answer: Absence },
): Promise<Committed> {
  const language = context.language ?? english;
  const { say } = language;
  const title = titleOf(note, cell.quantity, language);
  const ownReason = reason.trim() === '' ? undefined : reason.trim();
  // Before anything is taken back: what is refused leaves everything as it was.
  const why = await reasonFor(context, job, reason, say('found to be: {answer}', { answer: say(answer) }));
  const entries: Ulid[] = [];
  for (const reading of cell.readings)
    entries.push(...(await takeBackWhole(context, job, reading.entry, why)));
  const changed = await recordAbsence(context, job, {
    quantity: cell.quantity,
    place: { key },
    answer,
    ...(ownReason === undefined ? {} : { reason: ownReason }),
  });
  const last = changed.absences.at(-1);
  if (last !== undefined) entries.push(last.entry);
  return {
    readBack: { is: 'saved', title, value: say(answer), alsoAs: undefined },
    step: { title, entries },
  };
}

/** Takes a step back, the last entry of it first. */
export async function undoStep(
  context: TaskContext,
  job: Ulid,
  step: Step,
  reason: string,
): Promise<ReadBack> {
  const { say } = context.language ?? english;
  const why = await reasonFor(context, job, reason, say('taken back while recording'));
  for (const entry of [...step.entries].reverse()) await withdrawEntry(context, job, entry, why);
  return { is: 'taken back', title: step.title, value: say('as it was before'), alsoAs: undefined };
}

/**
 * The reason that was given; without one, what the program can say of itself. After the seal that is no reason.
 * Throws: RecordIsSealed when the record is sealed and no reason was given.
 */
export async function reasonFor(
  context: TaskContext,
  job: Ulid,
  given: string,
  otherwise: string,
): Promise<string> {
  if (given.trim() !== '') return given.trim();
  const { seal } = await readJob(context, job);
  if (seal !== undefined) throw new RecordIsSealed(seal.at, context.language);
  return otherwise;
}

export async function takeBack(
  context: TaskContext,
  job: Ulid,
  entry: Ulid,
  reason: string,
): Promise<Ulid[]> {
  await withdrawEntry(context, job, entry, reason);
  const { entries } = await context.store.entries(job);
  // The withdrawal is the latest entry that names its target.
  const withdrawal = entries.findLast(
    ({ fact }) => fact.kind === 'withdrawn' && (fact as { entry?: Ulid }).entry === entry,
  );
  return withdrawal === undefined ? [] : [withdrawal.id];
}

/**
 * Takes a reading back with every reading that it corrected: a correction that is withdrawn alone lets what it corrected
 * stand again.
 */
export async function takeBackWhole(
  context: TaskContext,
  job: Ulid,
  reading: Ulid,
  reason: string,
): Promise<Ulid[]> {
  const { entries } = await context.store.entries(job);
  const corrected = new Map(
    entries.map(({ id, fact }) => [id, fact.kind === 'reading' && (fact as { replaces?: Ulid }).replaces]),
  );
  const chain = new Set<Ulid>();
  for (let at: Ulid | false | undefined = reading; at && !chain.has(at); at = corrected.get(at))
    chain.add(at);
  const withdrawals: Ulid[] = [];
  for (const entry of chain) withdrawals.push(...(await takeBack(context, job, entry, reason)));
  return withdrawals;
}

export function readingText(reading: StandingReading, unit: ShownUnit, language: Language = english): string {
  return readingQuantities[reading.quantity].dimension === 'length'
    ? lengthText(reading.value_si, unit, lengthKindOf(reading.quantity), language)
    : `${language.plain(reading.asRead.value)} ${unitSign(reading.asRead.unit)}`;
}

/** A length in the unit it was not typed in. */
export function alsoAs(
  { quantity, value_si }: Pick<StandingReading, 'quantity' | 'value_si'>,
  typedIn: ReadUnit,
  language: Language,
): string | undefined {
  if (readingQuantities[quantity].dimension !== 'length') return undefined;
  return lengthText(
    value_si,
    otherUnit(typedIn === 'in' || typedIn === 'mil' ? 'in' : 'mm'),
    lengthKindOf(quantity),
    language,
  );
}

/** Whether a change of the record needs a reason now. */
export const needsReason = (job: Job): boolean => job.seal !== undefined;
