import { english, type Language } from '@becket/core';
import { loopMap } from '@becket/journal';
import { type KeyboardEvent, useMemo, useRef, useState } from 'react';
import { useDesk, useSelectedKey } from '../../desk/use-desk.ts';
import { useSettings } from '../../desk/use-device.ts';
import { useLanguage } from '../../parts/language.tsx';
import { useObservable } from '../../parts/observable.ts';
import { TextField } from '../../parts/text-field.tsx';
import {
  keepAction,
  type LoopAction,
  type LoopString,
  loopOnFrom,
  loopStepsOf,
  loopStrings,
  loopWithNext,
  notKnown,
  numberPinsFrom,
  sayOfWire,
  tapOn,
  tie,
  undoLoopStep,
  type WireForm,
  wireFormOf,
} from './loops-state.ts';
import { ReasonField, useSaidReason } from './reason-field.tsx';
import './record-parts.css';
import { once } from '../../parts/once.ts';
import { Problem } from '../../parts/problem.tsx';
import { queue } from '../../parts/queue.ts';
import { RecordSheet } from './record-sheet.tsx';
import { SectionChoice, useSection } from './section-choice.tsx';

/** Which strings share a wire, section by section: tapped, or typed by letter. */
export function LoopsPlace() {
  const language = useLanguage();
  const { say } = language;
  const { job } = useDesk();
  const section = useSection();
  const strings = useMemo(() => loopStrings(job, section), [job, section]);
  const { unit } = useSettings();
  const { sections, questions } = useMemo(
    () => loopMap(job, { lengthUnit: unit }, language),
    [job, unit, language],
  );
  const own = sections.find((one) => one.section === section);
  const asked = questions.filter((one) => one.section === section || one.section === undefined);

  return (
    <section aria-labelledby="loops">
      <h2 id="loops">{say('Loops and ties')}</h2>
      <p>
        {say(
          'A looped wire serves two neighbouring pins round one hitch pin; a tied wire has a loop of its own. Tap two strings that share a wire, or choose a string and say what it is.',
        )}
      </p>
      {job.sections.length === 0 ? (
        <p className="notice">{say('No section is described yet: strings are taken section by section.')}</p>
      ) : (
        <>
          <SectionChoice />
          <ReasonField />
          {own !== undefined && (
            <p data-loops role="status">
              {say('{strings} strings: {looped} looped, {tied} tied, {unsaid} not said.', {
                strings: own.strings,
                looped: own.looped,
                tied: own.tied,
                unsaid: own.unsaid.length,
              })}
            </p>
          )}
          {asked.length > 0 && (
            <ul className="plain-list row-list" aria-label={say('Questions')}>
              {asked.map(({ kind, sentence, noted }) => (
                <li key={`${kind}/${sentence}`}>
                  <span>
                    <span aria-hidden="true">? </span>
                    {sentence}
                    {noted !== undefined && <strong> {say('Noted of it: {noted}.', { noted })}</strong>}
                  </span>
                </li>
              ))}
            </ul>
          )}
          {strings.length === 0 ? (
            <p className="notice">{say('How the notes of this section are strung is not described yet.')}</p>
          ) : (
            <Board
              key={section}
              section={section}
              strings={strings}
              asked={
                new Set(
                  asked
                    // A string that nobody has said yet says so itself: a mark on each would hide the others.
                    .filter(({ kind }) => kind !== 'string without a wire')
                    .flatMap((one) => one.strings.map(({ key, string }) => `${key}/${string}`)),
                )
              }
            />
          )}
        </>
      )}
    </section>
  );
}

interface BoardProps {
  readonly section: string | undefined;
  readonly strings: readonly LoopString[];
  readonly asked: ReadonlySet<string>;
}

function Board({ section, strings, asked }: BoardProps) {
  const language = useLanguage();
  const { say, sayNodes } = language;
  const { desk, job } = useDesk();
  const said = useSaidReason();
  const [, select] = useSelectedKey();
  const problem = useObservable(desk.problem);
  const steps = useObservable(loopStepsOf(desk.id));
  const start = Math.max(
    0,
    strings.findIndex(({ joined }) => joined === undefined),
  );
  const [at, setAt] = useState(start);
  const [chosen, setChosen] = useState<number>();
  const [isWireOpen, setWireOpen] = useState(false);
  const board = useRef<HTMLDivElement>(null);
  const inTurn = useRef(queue());
  // Where the next key begins, which the page may have still to draw.
  const latestAt = useRef(at);

  function goTo(index: number, isFocused: boolean): void {
    latestAt.current = index;
    setAt(index);
    if (isFocused) board.current?.querySelector<HTMLElement>(`[data-index="${index}"]`)?.focus();
  }

  type Make = (strings: readonly LoopString[], index: number, language: Language) => LoopAction | undefined;
  /** Gives back undefined when there was nothing to keep, or it could not be kept. */
  function act(make: Make): Promise<LoopAction | undefined> {
    const isFocused = board.current?.contains(document.activeElement) === true;
    return inTurn.current(async () => {
      const here = latestAt.current;
      // A key pressed before the last one was kept, or drawn, must see the strings as that one left them.
      const now = loopStrings(desk.now()?.job ?? job, section);
      let action: LoopAction | undefined;
      const step = await desk.run(async (context, id) => {
        action = make(now, here, language);
        return action && keepAction(context, id, action, { at: here, said });
      });
      if (step === undefined || action === undefined) return undefined;
      const kept = loopStepsOf(desk.id);
      kept.set([...kept.get().slice(-199), step]);
      setChosen(undefined);
      goTo(action.next, isFocused);
      return action;
    });
  }

  function undo(): void {
    const isFocused = board.current?.contains(document.activeElement) === true;
    void inTurn.current(async () => {
      const kept = loopStepsOf(desk.id);
      const step = kept.get().at(-1);
      if (step === undefined) return;
      const done = await desk.run((context, id) =>
        undoLoopStep(context, id, step, { ...said, otherwise: say('taken back while recording') }),
      );
      if (done === undefined) return;
      kept.set(kept.get().slice(0, -1));
      goTo(Math.min(step.at, strings.length - 1), isFocused);
    });
  }

  function tap(index: number): void {
    goTo(index, false);
    select(strings[index]?.key);
    const tapped = tapOn(strings, chosen, index, language);
    if (tapped.do === 'join') void act(() => tapped.action);
    else setChosen(tapped.do === 'choose' ? index : undefined);
  }

  function onKeyDown(event: KeyboardEvent): void {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const step = { ArrowRight: 1, ArrowLeft: -1, ArrowDown: 3, ArrowUp: -3, Home: -999, End: 999 }[event.key];
    const letter = { l: loopWithNext, t: tie, f: loopOnFrom, '?': notKnown }[event.key.toLowerCase()];
    // In turn as well: what is being kept still goes on to its next string, and would lead away from here.
    const inOrder = (move: () => void) => void inTurn.current(async () => move());
    if (step !== undefined)
      inOrder(() => goTo(Math.min(strings.length - 1, Math.max(0, latestAt.current + step)), true));
    else if (letter !== undefined) void act(letter);
    else if (event.key.toLowerCase() === 'u') undo();
    else if (event.key.toLowerCase() === 'w') inOrder(() => setWireOpen(true));
    else return;
    event.preventDefault();
  }

  const here = strings[at];
  const notes = [...new Set(strings.map(({ key }) => key))];
  return (
    <>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the keys are those of the buttons inside */}
      <div className="loop-board" ref={board} onKeyDown={onKeyDown}>
        {notes.map((key) => (
          <div className="loop-note" key={key}>
            <span className="loop-note-name">{strings.find((one) => one.key === key)?.note}</span>
            <div className="loop-strings">
              {strings.map((one, index) =>
                one.key !== key ? null : (
                  <button
                    key={one.name}
                    type="button"
                    className="loop-string"
                    data-index={index}
                    data-joined={one.joined}
                    data-asked={asked.has(`${one.key}/${one.string}`) || undefined}
                    tabIndex={index === at ? 0 : -1}
                    aria-pressed={index === chosen}
                    aria-label={`${one.name}: ${spokenWire(one, language)}`}
                    onFocus={() => goTo(index, false)}
                    onClick={() => tap(index)}
                  >
                    <strong>{one.string}</strong>
                    <small>{wireWords(one, language)}</small>
                    {one.path?.hitchPin !== undefined && (
                      <small>{say('pin {pin}', { pin: pinWords(one, language) })}</small>
                    )}
                    {one.path?.note !== undefined && <small>{say('noted')}</small>}
                  </button>
                ),
              )}
            </div>
          </div>
        ))}
      </div>
      <div className="loop-bar">
        <Problem says={problem} />
        <p aria-live="polite">
          <strong>{here?.name}</strong> {here === undefined ? '' : spokenWire(here, language)}
          {steps.length > 0 && (
            <span className="faint">{`. ${say('Last: {title}', { title: steps.at(-1)!.title })}`}</span>
          )}
        </p>
        <div className="button-row">
          <button
            type="button"
            className="button"
            aria-label={say('Loop with next')}
            onClick={() => void act(loopWithNext)}
          >
            {sayNodes('Loop{withNext} {kbd}', {
              withNext: <span className="wide-only"> {say('with next')}</span>,
              kbd: <kbd className="wide-only">L</kbd>,
            })}
          </button>
          <button type="button" className="button" onClick={() => void act(tie)}>
            {sayNodes('Tied {kbd}', { kbd: <kbd className="wide-only">T</kbd> })}
          </button>
          <button
            type="button"
            className="button"
            aria-label={say('Loop on from here')}
            onClick={() => void act(loopOnFrom)}
          >
            {sayNodes('Loop on{fromHere} {kbd}', {
              fromHere: <span className="wide-only"> {say('from here')}</span>,
              kbd: <kbd className="wide-only">F</kbd>,
            })}
          </button>
          <button type="button" className="button" onClick={() => void act(notKnown)}>
            {sayNodes('Unknown {kbd}', { kbd: <kbd className="wide-only">?</kbd> })}
          </button>
          <button
            type="button"
            className="button"
            aria-label={say('This wire')}
            onClick={() => setWireOpen(true)}
          >
            <span className="wide-only">{say('This wire')}</span>
            <span className="small-only">{say('Wire')}</span> <kbd className="wide-only">W</kbd>
          </button>
          <button type="button" className="button quiet" disabled={steps.length === 0} onClick={undo}>
            {sayNodes('Undo {kbd}', { kbd: <kbd className="wide-only">U</kbd> })}
          </button>
        </div>
      </div>
      {isWireOpen && here !== undefined && (
        <WireSheet
          string={here}
          onClose={() => setWireOpen(false)}
          onKeep={(form) => act((now, index) => now[index] && sayOfWire(now[index], form, index, language))}
          onNumber={(form) => act((now, index) => numberPinsFrom(now, index, form.hitchPin, language))}
        />
      )}
    </>
  );
}

/** Where one wire turns, and what is odd about it. */
function WireSheet({
  string,
  onClose,
  onKeep,
  onNumber,
}: {
  string: LoopString;
  onClose: () => void;
  onKeep: (form: WireForm) => Promise<unknown>;
  onNumber: (form: WireForm) => Promise<unknown>;
}) {
  const language = useLanguage();
  const { say } = language;
  const [form, setForm] = useState(() => wireFormOf(string));
  const close = (done: unknown) => {
    if (done !== undefined) onClose();
  };
  const repair = say("a predecessor's repair");
  return (
    <RecordSheet
      title={say('The wire of {name}: {joined}', {
        name: string.name,
        joined: wireWords(string, language),
      })}
      keep={say('Keep the wire')}
      onClose={onClose}
      onKeep={() => onKeep(form)}
      more={
        <button type="button" className="button" onClick={once(() => onNumber(form).then(close))}>
          {say('Number the pins on from here')}
        </button>
      }
    >
      <div className="fields">
        <TextField
          label={say('Hitch pin')}
          hint={say('its number along the section, or a name of its own')}
          maxLength={40}
          value={form.hitchPin}
          onChange={(hitchPin) => setForm({ ...form, hitchPin })}
        />
        <TextField
          label={say('Second hitch pin')}
          hint={say('where the wire lies round two')}
          maxLength={40}
          value={form.otherHitchPin}
          onChange={(otherHitchPin) => setForm({ ...form, otherHitchPin })}
        />
      </div>
      <TextField
        label={say('[a remark] Note')}
        hint={say('what is odd about it')}
        maxLength={300}
        value={form.note}
        onChange={(note) => setForm({ ...form, note })}
      />
      <p>
        <button
          type="button"
          className="button quiet"
          onClick={() =>
            setForm({ ...form, note: form.note.trim() === '' ? repair : `${form.note.trim()}; ${repair}` })
          }
        >
          {say("It is a predecessor's repair")}
        </button>
      </p>
    </RecordSheet>
  );
}

const pinWords = ({ path }: LoopString, { list }: Language): string =>
  list([path?.hitchPin, path?.otherHitchPin].filter((pin) => pin !== undefined));

/** All that is said of the wire of a string, in one line. */
function spokenWire(string: LoopString, language: Language = english): string {
  const { path } = string;
  return [
    wireWords(string, language),
    ...(path?.hitchPin === undefined
      ? []
      : [language.say('hitch pin {pin}', { pin: pinWords(string, language) })]),
    ...(path?.note === undefined ? [] : [path.note]),
  ].join(', ');
}

function wireWords({ joined, withString }: LoopString, { say }: Language = english): string {
  switch (joined) {
    case 'looped':
      return say('with {string}', { string: withString ?? '' });
    case 'tied':
      return say('tied');
    case 'unknown':
      return say('unknown');
    default:
      return say('[of a wire] not said');
  }
}
