import { type Message, message, noteName, parseNote } from '@becket/core';
import { isFinished, type Pass, type PassPlan, type PassValueKind } from '@becket/journal';
import { recordPassValues, withdrawEntry } from '@becket/tasks';
import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { Choice } from '../../parts/choice.tsx';
import { useLanguage } from '../../parts/language.tsx';
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
  const [problem, setProblem] = useState<{ row: string; sentence: string }>();
  const [kept, setKept] = useState<readonly Kept[]>([]);
  const fields = useRef(new Map<string, HTMLInputElement>());
  const underWay = useRef(new Map<string, string>());
  const wanted = useRef<'first' | undefined>(isFresh ? 'first' : undefined);
  const told = toldOverpulls(pass, plan);
  const own = passRows(pass, job.sections, step, readAs);
  const rows =
    step === 'aimed' ? own : [...own, ...further.filter(({ id }) => own.every((row) => row.id !== id))];
  const last = kept.at(-1);

  // biome-ignore lint/correctness/useExhaustiveDependencies: after a step the first field of the next one is there
  useEffect(() => {
    if (wanted.current === 'first') fields.current.get(rows[0]?.id ?? '')?.focus();
    wanted.current = undefined;
  }, [step]);

  const nameOf = ({ section, key }: PassRow) => (key === undefined ? section : `${section} ${noteName(key)}`);

  /** True when the field holds nothing that is not kept. */
  async function keep(row: PassRow): Promise<boolean> {
    const field = fields.current.get(row.id);
    const text = field?.value ?? '';
    const before = keptOf(pass, step, row);
    // Only its own: a refusal brings the focus back, and the field that is left by that must not wipe it out.
    setProblem((now) => (now?.row === row.id ? undefined : now));
    try {
      const offset_cents = centsOf(text, language);
      if (offset_cents === undefined || offset_cents === before?.offset_cents) return true;
      // Enter keeps a value and leaves its field, which keeps it as well: the second finds it under way.
      if (underWay.current.get(row.id) === text) return true;
      underWay.current.set(row.id, text);
      const { entries } = await desk.runHere((context, id) =>
        recordPassValues(context, id, [
          {
            passBegun: pass.entry,
            value: step,
            section: row.section,
            offset_cents,
            ...(row.key === undefined ? {} : { key: row.key }),
          },
        ]),
      );
      underWay.current.delete(row.id);
      setKept((now) => [
        ...now,
        { entries, words: `${nameOf(row)}, ${say(stepWords[step])}: ${offsetText(offset_cents, language)}` },
      ]);
      return true;
    } catch (error) {
      underWay.current.delete(row.id);
      setProblem({ row: row.id, sentence: error instanceof Error ? error.message : String(error) });
      return false;
    }
  }

  async function goOn(event: KeyboardEvent, row: PassRow): Promise<void> {
    if (event.key !== 'Enter') return;
    event.preventDefault();
    const next = placeAfter(rows, row, step);
    const isKept = keep(row);
    // At once: what is typed next belongs to the next field, also while this value is being kept.
    if (next?.row !== undefined) {
      const field = fields.current.get(next.row.id);
      field?.focus();
      field?.select();
    }
    if (!(await isKept)) {
      fields.current.get(row.id)?.focus();
    } else if (next?.row !== undefined) {
      return;
    } else if (next !== undefined) {
      wanted.current = 'first';
      setStep(next.step);
    }
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
    for (const entry of [...last.entries].reverse())
      await desk.run((context, id) => withdrawEntry(context, id, entry, say('taken back at once')));
    setKept((now) => now.slice(0, -1));
  }

  function addNote(text: string): string | undefined {
    try {
      const key = parseNote(text.trim());
      const section = job.sections.find(({ firstKey, lastKey }) => firstKey <= key && key <= lastKey);
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
            key={`${step}/${row.id}`}
            row={row}
            name={nameOf(row)}
            step={step}
            pass={pass}
            plan={plan}
            problem={problem?.row === row.id ? problem.sentence : undefined}
            fieldRef={(element) => {
              if (element === null) fields.current.delete(row.id);
              else fields.current.set(row.id, element);
            }}
            onKey={(event) => void goOn(event, row)}
            onLeave={() => void keep(row)}
          />
        ))}
      </ol>
      {step === 'aimed' && told.length > 0 && (
        <button type="button" className="button" onClick={() => void takeTold()}>
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
        <button type="button" className="button" disabled={last === undefined} onClick={() => void undo()}>
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
          onClick={() =>
            void desk
              .run((context, id) =>
                withdrawEntry(context, id, pass.entry, say('the whole pass was taken back')),
              )
              .then(onClose)
          }
        >
          {say('Take the whole pass back')}
        </button>
      </div>
    </>
  );
}

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
  readonly onKey: (event: KeyboardEvent) => void;
  readonly onLeave: () => void;
}

function PassField({ row, name, step, pass, plan, problem, fieldRef, onKey, onLeave }: FieldProps) {
  const language = useLanguage();
  const { say, fixed } = language;
  const before = keptOf(pass, step, row);
  const own = plan.sections.find(({ section }) => section === row.section);
  const hint = hintOf();
  const id = `settle-${step}-${row.id}`;
  return (
    <li>
      <label htmlFor={id}>
        {name} <span className="faint">{say('cents')}</span>
      </label>
      <input
        // What was taken back, or came from elsewhere, stands in the field again.
        key={before?.entry ?? 'none'}
        ref={fieldRef}
        id={id}
        className="input big-value"
        // A sign is typed with full keyboards only; 'text' brings one on every phone.
        inputMode="text"
        enterKeyHint="next"
        autoComplete="off"
        defaultValue={before === undefined ? '' : language.plain(before.offset_cents)}
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
