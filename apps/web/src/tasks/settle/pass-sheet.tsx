import { keyRangeAt, type Message, message, noteName, parseNote } from '@becket/core';
import { foldSettling, isFinished, type Pass, type PassPlan, type PassValueKind } from '@becket/journal';
import { recordPassValues, withdrawEntry } from '@becket/tasks';
import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import { useDesk } from '../../desk/use-desk.ts';
import { Choice } from '../../parts/choice.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { once } from '../../parts/once.ts';
import { TextField } from '../../parts/text-field.tsx';
import { PassMishaps } from './pass-mishaps.tsx';
import {
  centsOf,
  keptOf,
  offsetText,
  type PassRow,
  passRows,
  passSteps,
  placeAfter,
  type ReadAs,
  toldOverpulls,
} from './settle-state.ts';

const stepWords: Readonly<Record<PassValueKind, Message>> = {
  before: message('1 Before'),
  aimed: message('2 Overpull'),
  after: message('3 Left at'),
};

const stepHints: Readonly<Record<PassValueKind, Message>> = {
  before: message('Where each section stands before it is pulled: cents, flat is negative.'),
  aimed: message('How far above pitch each section is to be left. What is told stands beside the field.'),
  after: message('Where each section was left, read before the next one is pulled.'),
};

interface Props {
  readonly pass: Pass;
  readonly plan: PassPlan;
  /** True when it was begun just now: the first field is what comes next. */
  readonly isFresh: boolean;
  readonly onClose: () => void;
}

interface Refused {
  /** The field it was typed into, and its name for a step where that field is not. */
  readonly field: string;
  readonly of: string;
  readonly sentence: string;
}

interface Kept {
  readonly entries: readonly string[];
  readonly words: string;
}

/** One pass, typed step by step: Enter keeps a value and goes to the next section or note. */
export function PassSheet({ pass, plan, isFresh, onClose }: Props) {
  const { desk, job } = useDesk();
  const language = useLanguage();
  const { say, day, plain } = language;
  const [step, setStep] = useState<PassValueKind>(() => firstStep(pass));
  const [readAs, setReadAs] = useState<ReadAs>(() =>
    pass.sections.some(({ before, after }) => [...before, ...after].some(({ key }) => key !== undefined))
      ? 'notes'
      : 'section',
  );
  const [further, setFurther] = useState<readonly PassRow[]>([]);
  const [problem, setProblem] = useState<Refused>();
  const [kept, setKept] = useState<readonly Kept[]>([]);
  const fields = useRef(new Map<string, HTMLInputElement>());
  const underWay = useRef(new Map<string, number>());
  const told = toldOverpulls(pass, plan);
  const own = passRows(pass, job.sections, step, readAs);
  const rows =
    step === 'aimed' ? own : [...own, ...further.filter(({ id }) => own.every((row) => row.id !== id))];
  const last = kept.at(-1);

  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when the sheet has come
  useEffect(() => {
    if (isFresh && rows[0] !== undefined) fields.current.get(fieldId(step, rows[0]))?.focus();
  }, []);

  const nameOf = ({ section, key }: PassRow) => (key === undefined ? section : `${section} ${noteName(key)}`);

  /** What stands in the field of a line; undefined when it is no number, and `problem` says so then. */
  function typedIn(row: PassRow): { readonly offset_cents: number | undefined } | undefined {
    const id = fieldId(step, row);
    // Only its own: a refusal brings the focus back, and the field that is left by that must not wipe it out.
    setProblem((now) => (now?.field === id ? undefined : now));
    try {
      return { offset_cents: centsOf(fields.current.get(id)?.value ?? '', language) };
    } catch (error) {
      refuse(row, error);
      return undefined;
    }
  }

  function refuse(row: PassRow, error: unknown): void {
    const sentence = error instanceof Error ? error.message : String(error);
    setProblem({ field: fieldId(step, row), of: `${nameOf(row)}, ${say(stepWords[step])}`, sentence });
  }

  /** False when it was refused. */
  async function keep(row: PassRow, offset_cents: number | undefined): Promise<boolean> {
    const field = fieldId(step, row);
    // Enter keeps a value and leaves its field, which keeps it as well: the second finds it under way.
    if (offset_cents === undefined || underWay.current.get(field) === offset_cents) return true;
    underWay.current.set(field, offset_cents);
    try {
      const done = await desk.runHere(async (context, id) => {
        // As the journal has it now, which this sheet may have still to draw.
        const passes = desk.now() === undefined ? [] : foldSettling(desk.now()!.entries).passes;
        const stands = passes.find(({ entry }) => entry === pass.entry) ?? pass;
        if (offset_cents === keptOf(stands, step, row)?.offset_cents) return undefined;
        return recordPassValues(context, id, [
          {
            passBegun: pass.entry,
            value: step,
            section: row.section,
            offset_cents,
            ...(row.key === undefined ? {} : { key: row.key }),
          },
        ]);
      });
      if (done === undefined) return true;
      const words = `${nameOf(row)}, ${say(stepWords[step])}: ${offsetText(offset_cents, language)}`;
      setKept((now) => [...now, { entries: done.entries, words }]);
      return true;
    } catch (error) {
      refuse(row, error);
      return false;
    } finally {
      if (underWay.current.get(field) === offset_cents) underWay.current.delete(field);
    }
  }

  /** Goes to a field, of whichever step, at once. */
  function goTo(next: PassValueKind, row: PassRow | undefined): HTMLInputElement | undefined {
    flushSync(() => setStep(next));
    const to = row ?? passRows(pass, job.sections, next, readAs)[0];
    const field = to === undefined ? undefined : fields.current.get(fieldId(next, to));
    field?.focus();
    field?.select();
    return field;
  }

  async function goOn(event: KeyboardEvent<HTMLInputElement>, row: PassRow): Promise<void> {
    if (event.key !== 'Enter') return;
    event.preventDefault();
    const text = event.currentTarget.value;
    const typed = typedIn(row);
    if (typed === undefined) return;
    const keeping = keep(row, typed.offset_cents);
    // At once: what is typed next belongs to the next field, also while this value is being kept.
    const next = placeAfter(rows, row, step);
    const there = next === undefined ? undefined : goTo(next.step, next.row);
    const found = there?.value;
    if (await keeping) return;
    // The refused value has the focus again, unless the next one is being typed: that is not to land in its field.
    if (there !== undefined && there.value !== found) return;
    const back = goTo(step, row);
    if (back !== undefined) back.value = text;
  }

  async function takeTold(): Promise<void> {
    const done = await desk.run((context, id) =>
      recordPassValues(
        context,
        id,
        told.map((one) => ({ passBegun: pass.entry, value: 'aimed' as const, ...one })),
      ),
    );
    if (done !== undefined)
      setKept((now) => [
        ...now,
        {
          entries: done.entries,
          words: say('{count, plural, one {# overpull} other {# overpulls}} as told', {
            count: told.length,
          }),
        },
      ]);
  }

  async function undo(): Promise<void> {
    if (last === undefined) return;
    for (const entry of [...last.entries].reverse()) {
      const done = await desk.run((context, id) =>
        withdrawEntry(context, id, entry, say('taken back at once')),
      );
      if (done === undefined) return;
    }
    setKept((now) => now.slice(0, -1));
  }

  function addNote(text: string): string | undefined {
    try {
      const key = parseNote(text.trim(), undefined, language);
      const section = keyRangeAt(key, job.sections);
      if (section === undefined)
        return say('Cannot add {note}: a note of a described section is needed. Choose another.', {
          note: noteName(key),
        });
      const id = `${section.section}/${noteName(key)}`;
      setFurther((now) =>
        now.some((row) => row.id === id) ? now : [...now, { id, section: section.section, key }],
      );
      return undefined;
    } catch (error) {
      return error instanceof Error ? error.message : String(error);
    }
  }

  return (
    <>
      <p>
        {say('{day}, A4 = {pitch} Hz; {temperature}, {humidity}', {
          day: day(pass.on),
          pitch: plain(pass.referencePitch_hz),
          temperature:
            pass.temperature_c === undefined
              ? say('temperature not read')
              : `${plain(pass.temperature_c)} °C`,
          humidity:
            pass.relativeHumidity_percent === undefined
              ? say('humidity not read')
              : say('{percent} % relative humidity', { percent: plain(pass.relativeHumidity_percent) }),
        })}
      </p>
      <div className="settle-choices">
        <Choice
          label={say('Step')}
          value={step}
          onChange={setStep}
          options={passSteps.map((value) => ({ value, words: say(stepWords[value]) }))}
        />
        {step !== 'aimed' && (
          <Choice
            label={say('Pitch is read')}
            value={readAs}
            onChange={setReadAs}
            options={[
              { value: 'section', words: say('by section') },
              { value: 'notes', words: say('at notes') },
            ]}
          />
        )}
      </div>
      <p className="faint">{say(stepHints[step])}</p>
      <ol className="settle-rows" aria-label={say(stepWords[step])}>
        {rows.map((row) => (
          <PassField
            key={fieldId(step, row)}
            row={row}
            name={nameOf(row)}
            step={step}
            pass={pass}
            plan={plan}
            problem={problem?.field === fieldId(step, row) ? problem.sentence : undefined}
            fieldRef={(element) => {
              if (element === null) fields.current.delete(fieldId(step, row));
              else fields.current.set(fieldId(step, row), element);
            }}
            onKey={(event) => void goOn(event, row)}
            onLeave={() => void keep(row, typedIn(row)?.offset_cents)}
          />
        ))}
      </ol>
      {problem !== undefined && rows.every((row) => fieldId(step, row) !== problem.field) && (
        <p role="alert" className="notice bad">
          ▲ {problem.of}: {problem.sentence}
        </p>
      )}
      {step === 'aimed' && told.length > 0 && (
        <button type="button" className="button" onClick={once(takeTold)}>
          {say('Take the overpulls as told')}
        </button>
      )}
      {step !== 'aimed' && readAs === 'notes' && <AddNote onAdd={addNote} />}
      <div className="settle-kept">
        <output aria-live="polite">
          {last === undefined ? (
            <span className="faint">{say('The last value is read back here.')}</span>
          ) : (
            say('Kept: {words}', { words: last.words })
          )}
        </output>
        <button type="button" className="button" disabled={last === undefined} onClick={once(undo)}>
          {say('Undo')}
        </button>
      </div>
      <PassMishaps pass={pass} />
      {isFinished(pass, job) && (
        <p role="status">{say('Every section was left: pass {pass} is finished.', { pass: pass.pass })}</p>
      )}
      <div className="button-row">
        <button
          type="button"
          className={isFinished(pass, job) ? 'button strong' : 'button'}
          onClick={onClose}
        >
          {isFinished(pass, job) ? say('On to the next pass') : say('Put this pass aside')}
        </button>
        <button
          type="button"
          className="button quiet"
          onClick={once(() =>
            desk
              .run((context, id) =>
                withdrawEntry(context, id, pass.entry, say('the whole pass was taken back')),
              )
              .then(onClose),
          )}
        >
          {say('Take the whole pass back')}
        </button>
      </div>
    </>
  );
}

const fieldId = (step: PassValueKind, row: PassRow): string => `${step}/${row.id}`;

/** The first step that still lacks a value. */
function firstStep({ sections }: Pass): PassValueKind {
  if (sections.some(({ before }) => before.length === 0)) return 'before';
  return sections.some(({ aimed }) => aimed.length === 0) && sections.every(({ after }) => after.length === 0)
    ? 'aimed'
    : 'after';
}

interface FieldProps {
  readonly row: PassRow;
  readonly name: string;
  readonly step: PassValueKind;
  readonly pass: Pass;
  readonly plan: PassPlan;
  readonly problem: string | undefined;
  readonly fieldRef: (element: HTMLInputElement | null) => void;
  readonly onKey: (event: KeyboardEvent<HTMLInputElement>) => void;
  readonly onLeave: () => void;
}

function PassField({ row, name, step, pass, plan, problem, fieldRef, onKey, onLeave }: FieldProps) {
  const language = useLanguage();
  const { say, fixed } = language;
  const before = keptOf(pass, step, row);
  const text = before === undefined ? '' : language.plain(before.offset_cents);
  const input = useRef<HTMLInputElement>(null);
  const shownBefore = useRef(text);
  useEffect(() => {
    const field = input.current;
    // What was taken back, or came from elsewhere, stands in the field again. What is being typed is never written over.
    if (field !== null && (document.activeElement !== field || field.value === shownBefore.current))
      field.value = text;
    shownBefore.current = text;
  }, [text]);
  const own = plan.sections.find(({ section }) => section === row.section);
  const hint = hintOf();
  const id = `settle-${step}-${row.id}`;
  return (
    <li>
      <label htmlFor={id}>
        {name} <span className="faint">{say('cents')}</span>
      </label>
      <input
        ref={(element) => {
          input.current = element;
          fieldRef(element);
        }}
        id={id}
        className="input big-value"
        // A sign is typed with full keyboards only; 'text' brings one on every phone.
        inputMode="text"
        enterKeyHint="next"
        autoComplete="off"
        defaultValue={text}
        aria-describedby={`${id}-note`}
        aria-invalid={problem === undefined ? undefined : true}
        onKeyDown={onKey}
        onBlur={onLeave}
      />
      <span
        id={`${id}-note`}
        className={problem === undefined ? 'field-hint' : 'field-problem'}
        role={problem === undefined ? undefined : 'alert'}
      >
        {problem === undefined ? hint : `▲ ${problem}`}
      </span>
    </li>
  );

  function hintOf(): string {
    if (own === undefined) return '';
    if (step === 'before') {
      return own.stands?.from === 'foretold'
        ? say('foretold {offset} ± {uncertainty}', {
            offset: offsetText(own.stands.offset, language),
            uncertainty: fixed(own.stands.standardUncertainty, 1),
          })
        : '';
    }
    const most =
      own.highestOffset === undefined
        ? say('limit unknown')
        : say('at most {highest}', {
            highest: fixed(Math.max(0, Math.floor(own.highestOffset * 10) / 10), 1),
          });
    if (step === 'after') {
      const aimed = pass.sections.find(({ section }) => section === row.section)?.aimed[0];
      return aimed === undefined
        ? most
        : say('aimed at {offset}; {most}', { offset: offsetText(aimed.offset_cents, language), most });
    }
    return own.next === undefined
      ? say('no overpull told; {most}', { most })
      : say('told {overpull} ± {uncertainty}; {most}', {
          overpull: fixed(own.next.overpull, 1),
          uncertainty: fixed(own.next.standardUncertainty, 1),
          most,
        });
  }
}

function AddNote({ onAdd }: { onAdd: (text: string) => string | undefined }) {
  const { say } = useLanguage();
  const [text, setText] = useState('');
  const [problem, setProblem] = useState<string>();
  return (
    <form
      className="row-form"
      aria-label={say('Another note')}
      onSubmit={(event) => {
        event.preventDefault();
        const found = onAdd(text);
        setProblem(found);
        if (found === undefined) setText('');
      }}
    >
      <TextField
        label={say('Another note')}
        hint={say('such as A4')}
        problem={problem}
        value={text}
        onChange={setText}
        maxLength={6}
      />
      <button type="submit" className="button">
        {say('Add the note')}
      </button>
    </form>
  );
}
