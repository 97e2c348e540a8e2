import { message } from '@becket/core';
import { type Absence, type ReadingQuantityName, readingQuantities } from '@becket/journal';
import { type KeyboardEvent, memo, useCallback, useDeferredValue, useEffect, useMemo, useRef } from 'react';
import { flushSync } from 'react-dom';
import { hashOf } from '../../desk/route.ts';
import { useDesk, useSelectedKey } from '../../desk/use-desk.ts';
import { useSettings } from '../../desk/use-device.ts';
import { Field } from '../../parts/field.tsx';
import { useLanguage } from '../../parts/language.tsx';
import type { ShownUnit } from '../../parts/length-text.ts';
import { useObservable } from '../../parts/observable.ts';
import { queue } from '../../parts/queue.ts';
import { SelectField } from '../../parts/select-field.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { InstrumentInHand } from './instrument-in-hand.tsx';
import { inHandOf, instrumentInHand, lengthUnitInHand } from './instruments-state.ts';
import { questionsOf } from './questions.ts';
import { ReadBackBar } from './read-back-bar.tsx';
import { ReasonField } from './reason-field.tsx';
import './record-parts.css';
import { reasonFor, recordViewOf, takeBack, undoStep } from './record-state.ts';
import { SectionChoice, useSection } from './section-choice.tsx';
import { type StringOrder, stringAfter, stringOrders } from './string-order.ts';
import {
  commitString,
  pointsOf,
  quantitiesIn,
  type StringRound,
  type StringRow,
  stringQuantities,
  stringReadingWords,
  stringRoundOf,
  stringRows,
  unitInHand,
} from './strings-state.ts';
import { unitWords } from './unit-words.ts';
import { WoundDoubts } from './wound-doubts.tsx';

/** String by string: each string of a unison on its own, at a named point, in a stated condition. Enter goes on. */
export function StringsPlace() {
  const language = useLanguage();
  const { say } = language;
  const { desk, job, record } = useDesk();
  const { unit } = useSettings();
  const [, select] = useSelectedKey();
  const view = recordViewOf(desk.id);
  const shown = useObservable(view);
  const inHand = useObservable(inHandOf(desk.id));
  const section = useSection();
  const wantedRound = stringRoundOf(desk.id);
  const wanted = useObservable(wantedRound);
  const inTurn = useRef(queue());
  const active = useRef<string>(undefined);

  const offered = useMemo(() => quantitiesIn(job, section), [job, section]);
  // A section of wound strings has no plain wire: its first quantity is shown then.
  const quantity = offered.includes(wanted.quantity) ? wanted.quantity : (offered[0] ?? 'wire-diameter');
  const round = { ...wanted, quantity };
  const rows = useMemo(() => stringRows(job, { section, quantity }), [job, section, quantity]);
  const instrument = instrumentInHand(job, inHand, quantity);
  const ownUnit = unitInHand(quantity, instrument, unit);
  // Typing goes first: a doubt may come a moment later.
  const settled = useDeferredValue(record);
  const questions = useMemo(() => questionsOf(settled, language), [settled, language]);
  const questionOf = (row: StringRow): string =>
    (questions.get(row.key) ?? [])
      .filter(({ entry }) => row.readings.some((one) => one.entry === entry))
      .map(({ sentence }) => sentence)
      .join('\n');
  const readCount = rows.filter(({ readings, absence }) => readings.length > 0 || absence).length;

  // The latest of everything, for handlers that stay the same so that rows need not be drawn again.
  const latest = useRef({ job, section, rows, round, instrument, unit, reason: shown.reason });
  latest.current = { job, section, rows, round, instrument, unit, reason: shown.reason };

  const commit = useCallback(
    (name: string, text: string) => {
      const { rows: now, round: ownRound, instrument: held, unit: screenUnit, reason } = latest.current;
      const row = now.find((one) => one.name === name);
      if (row === undefined || text.trim() === '') return;
      void inTurn.current(async () => {
        const committed = await desk.run((context, id) =>
          commitString(
            context,
            id,
            row,
            text,
            { round: ownRound, instrument: held, screenUnit, reason },
            language,
          ),
        );
        if (committed === undefined) {
          // What was refused comes back into its field, unless something else was typed there since.
          const input = inputOf(name);
          if (input !== null && input.value === '') input.value = text;
          const title = `${name} ${language.say(readingQuantities[ownRound.quantity].label)}`;
          view.update({
            readBack: { is: 'not saved', title, value: desk.problem.get() ?? '', alsoAs: undefined },
          });
          return;
        }
        const { steps } = view.get();
        view.update({
          readBack: committed.readBack,
          steps: committed.step === undefined ? steps : [...steps.slice(-199), committed.step],
        });
      });
    },
    [desk, view, language],
  );

  useEffect(() => {
    // A tablet that is laid aside keeps what was typed and not yet entered.
    const keepTyped = () => {
      const typing = document.activeElement;
      if (document.visibilityState !== 'hidden' || !(typing instanceof HTMLInputElement)) return;
      const name = typing.dataset.string;
      if (name === undefined) return;
      const text = typing.value;
      typing.value = '';
      commit(name, text);
    };
    document.addEventListener('visibilitychange', keepTyped);
    return () => document.removeEventListener('visibilitychange', keepTyped);
  }, [commit]);

  const goOn = useCallback(
    (name: string, direction: 1 | -1): boolean => {
      const { job: now, rows: own, section: here, round: ownRound } = latest.current;
      const from = own.find((one) => one.name === name);
      const next =
        from &&
        stringAfter(now, {
          section: here,
          quantity: ownRound.quantity,
          from,
          order: ownRound.order,
          direction,
        });
      if (next === undefined) return false;
      // What is typed is kept as the field is left, before its section leaves the page.
      const field = inputOf(name);
      if (next.section !== here) {
        field?.blur();
        flushSync(() => view.update({ section: next.section }));
      }
      inputOf(next.row.name)?.focus();
      return true;
    },
    [view],
  );

  const enter = useCallback(
    (row: StringRow) => {
      active.current = row.name;
      select(row.key);
    },
    [select],
  );

  const takeOut = useCallback(
    (row: StringRow, entry: string, words: string) => {
      const title = language.say('the taking back of {words}, {name}', { words, name: row.name });
      void inTurn.current(async () => {
        const { reason } = latest.current;
        const entries = await desk.run(async (context, id) =>
          takeBack(
            context,
            id,
            entry,
            await reasonFor(context, id, reason, language.say('taken back while recording')),
          ),
        );
        if (entries === undefined) return;
        view.update({
          readBack: { is: 'taken back', title: row.name, value: words, alsoAs: undefined },
          steps: [...view.get().steps.slice(-199), { title, entries }],
        });
      });
    },
    [desk, view, language],
  );

  const answerWith = (answer: Absence) => {
    if (active.current === undefined) return;
    commit(active.current, answer);
    goOn(active.current, 1);
  };

  const undo = () => {
    void inTurn.current(async () => {
      const step = view.get().steps.at(-1);
      if (step === undefined) return;
      const readBack = await desk.run((context, id) => undoStep(context, id, step, view.get().reason));
      if (readBack) view.update({ readBack, steps: view.get().steps.filter((one) => one !== step) });
    });
  };
  /** Control Z takes the last step back, unless something is half typed: then it is the browser's own. */
  const takeBackKey = (event: KeyboardEvent) => {
    const { target, key } = event;
    if (!(event.ctrlKey || event.metaKey) || event.shiftKey || key.toLowerCase() !== 'z') return;
    if (!(target instanceof HTMLInputElement) || target.dataset.string === undefined || target.value !== '')
      return;
    event.preventDefault();
    undo();
  };

  if (job.sections.length === 0)
    return (
      <p className="notice">{say('No section is described yet: strings are taken section by section.')}</p>
    );
  return (
    <section aria-labelledby="strings" className="strings-place">
      <h2 id="strings">{say('String by string')}</h2>
      <SectionChoice />
      <RoundFields round={round} offered={offered} onChange={wantedRound.set} />
      <ReasonField />
      {rows.length === 0 ? (
        <p className="notice">{say('How the notes of this section are strung is not described yet.')}</p>
      ) : (
        <>
          <p data-strings role="status">
            {say(
              '{read} of {rows} strings have their {quantity}. Numbers are read in {unit}{instrument, select, none {} other { by {instrument}}}; one typed with its unit keeps it.',
              {
                read: readCount,
                rows: rows.length,
                quantity: say(readingQuantities[quantity].label),
                unit: unitWords(ownUnit, language),
                instrument: instrument?.instrument ?? 'none',
              },
            )}
          </p>
          <ol
            className="string-rows"
            aria-label={say('Strings of the section {section}', { section: section ?? '' })}
            onKeyDown={takeBackKey}
          >
            {rows.map((row) => (
              <Row
                // What was refused stands in its field: of another quantity it would be kept as that.
                key={`${quantity}/${row.name}`}
                row={row}
                question={questionOf(row)}
                quantity={quantity}
                unit={lengthUnitInHand(job, inHand, quantity, unit)}
                onCommit={commit}
                onGoOn={goOn}
                onEnter={enter}
                onTakeOut={takeOut}
              />
            ))}
          </ol>
          <WoundDoubts />
        </>
      )}
      <ReadBackBar
        view={view}
        canUndo={shown.steps.length > 0}
        undoTitle={shown.steps.at(-1)?.title}
        onUndo={undo}
        onSay={answerWith}
      />
    </section>
  );
}

function inputOf(name: string): HTMLInputElement | null {
  return document.querySelector(`input[data-string="${name}"]`);
}

/** The groups of quantities, in words. */
const groupWords = {
  'The wire': message('The wire'),
  Lengths: message('Lengths'),
  'Tuning pin': message('Tuning pin'),
  'Hitch pin': message('Hitch pin'),
} as const satisfies Record<keyof typeof stringQuantities, string>;

const stringsChoices = [
  { value: 'not said', words: message('not said') },
  { value: 'on', words: message('on, at tension') },
  { value: 'let down', words: message('let down') },
  { value: 'off', words: message('off') },
] as const;
const surfaceChoices = [
  { value: 'not said', words: message('not said') },
  { value: 'bright', words: message('bright') },
  { value: 'corroded', words: message('corroded') },
  { value: 'cleaned', words: message('cleaned') },
] as const;

/** What holds for all readings taken now: quantity, instrument, point, state. */
function RoundFields({
  round,
  offered,
  onChange,
}: {
  round: StringRound;
  offered: readonly ReadingQuantityName[];
  onChange: (round: StringRound) => void;
}) {
  const language = useLanguage();
  const { say } = language;
  const { desk, job } = useDesk();
  return (
    <div className="fields round-fields">
      <Field label={say('What is read')}>
        {(ids) => (
          <select
            {...ids}
            className="input"
            value={round.quantity}
            onChange={(event) =>
              // A point on a wire is none on a pin.
              onChange({ ...round, quantity: event.target.value as ReadingQuantityName, point: '' })
            }
          >
            {Object.entries(stringQuantities).map(([group, quantities]) => (
              <optgroup key={group} label={say(groupWords[group as keyof typeof groupWords])}>
                {(Object.keys(quantities) as ReadingQuantityName[])
                  .filter((name) => offered.includes(name))
                  .map((name) => (
                    <option key={name} value={name}>
                      {say(readingQuantities[name].label)}
                    </option>
                  ))}
              </optgroup>
            ))}
          </select>
        )}
      </Field>
      <TextField
        label={say('Point')}
        hint={say('may stay empty')}
        maxLength={120}
        words={pointsOf(job, round.quantity, language)}
        value={round.point}
        onChange={(point) => onChange({ ...round, point })}
      />
      <SelectField
        label={say('The strings are')}
        value={round.strings}
        onChange={(strings) => onChange({ ...round, strings })}
        options={stringsChoices.map(({ value, words }) => ({ value, words: say(words) }))}
      />
      <SelectField
        label={say('The wire is')}
        value={round.surface}
        onChange={(surface) => onChange({ ...round, surface })}
        options={surfaceChoices.map(({ value, words }) => ({ value, words: say(words) }))}
      />
      <SelectField
        label={say('Enter goes to')}
        value={round.order}
        onChange={(order) => onChange({ ...round, order })}
        options={(Object.keys(stringOrders) as StringOrder[]).map((value) => ({
          value,
          words: say(stringOrders[value]),
        }))}
      />
      <InstrumentInHand quantity={round.quantity} />
      <p className="instruments-link">
        <a
          className="button quiet"
          href={hashOf({ place: 'job', job: desk.id, task: 'record', part: 'instruments' })}
        >
          {job.instruments.size === 0 ? say('Describe an instrument') : say('Instruments')}
        </a>
      </p>
    </div>
  );
}

interface RowProps {
  readonly row: StringRow;
  /** Doubts about its readings, one a line; empty without one. */
  readonly question: string;
  readonly quantity: ReadingQuantityName;
  readonly unit: ShownUnit;
  readonly onCommit: (name: string, text: string) => void;
  readonly onGoOn: (name: string, direction: 1 | -1) => boolean;
  readonly onEnter: (row: StringRow) => void;
  readonly onTakeOut: (row: StringRow, entry: string, words: string) => void;
}

const Row = memo(
  function Row({ row, question, quantity, unit, onCommit, onGoOn, onEnter, onTakeOut }: RowProps) {
    const language = useLanguage();
    const { say } = language;
    const { name, readings, ofNote, absence } = row;
    function send(input: HTMLInputElement): void {
      const text = input.value;
      input.value = '';
      onCommit(name, text);
    }
    function onKeyDown(event: KeyboardEvent<HTMLInputElement>): void {
      const direction = { Enter: event.shiftKey ? -1 : 1, ArrowDown: 1, ArrowUp: -1 }[event.key];
      if (event.key === 'Escape') event.currentTarget.value = '';
      if (direction === undefined) return;
      event.preventDefault();
      const here = event.currentTarget;
      // Leaving the field keeps what is in it; at the end of the section there is nowhere to go.
      if (!onGoOn(name, direction as 1 | -1)) send(here);
    }
    return (
      <li className="string-row" data-first={row.string === 1 || undefined}>
        <strong className="string-name">{name}</strong>
        <input
          className="input"
          data-string={name}
          aria-label={`${name} ${say(readingQuantities[quantity].label)}`}
          placeholder={absence === undefined ? undefined : say(absence)}
          inputMode="decimal"
          enterKeyHint="next"
          autoComplete="off"
          spellCheck={false}
          onFocus={() => onEnter(row)}
          onBlur={(event) => send(event.currentTarget)}
          onKeyDown={onKeyDown}
        />
        <span className="string-readings">
          {readings.map((reading) => {
            const words = stringReadingWords(reading, unit, language);
            return (
              <button
                key={reading.entry}
                type="button"
                className="button quiet string-reading"
                aria-label={say('Take back {words}, {name}', { words, name })}
                onClick={() => onTakeOut(row, reading.entry, words)}
              >
                {words} <span aria-hidden="true">×</span>
              </button>
            );
          })}
          {ofNote > 0 && row.string === 1 && (
            <span className="faint">{say('and {count} of the note', { count: ofNote })}</span>
          )}
        </span>
        {question !== '' && (
          <div className="string-question">
            {question.split('\n').map((sentence) => (
              <p key={sentence}>
                <span aria-hidden="true">? </span>
                {sentence}
              </p>
            ))}
          </div>
        )}
      </li>
    );
  },
  (before, after) =>
    before.quantity === after.quantity &&
    before.unit === after.unit &&
    before.question === after.question &&
    before.row.name === after.row.name &&
    before.row.ofNote === after.row.ofNote &&
    before.row.absence === after.row.absence &&
    before.row.readings.length === after.row.readings.length &&
    before.row.readings.every(({ entry }, index) => entry === after.row.readings[index]?.entry),
);
