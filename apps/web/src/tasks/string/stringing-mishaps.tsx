import { type Message, message, noteName, parseNote } from '@becket/core';
import { type Stringing, type StringingMishap, type StringPlace, stringingMishaps } from '@becket/journal';
import { noteStringingMishap } from '@becket/tasks';
import { useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { Choice } from '../../parts/choice.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { once } from '../../parts/once.ts';
import { Problem } from '../../parts/problem.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { TakeBack } from '../../piano/take-back.tsx';
import { stringsText } from './wire-text.ts';

const words: Readonly<Record<StringingMishap, Message>> = {
  broke: message('broke'),
  slipped: message('slipped'),
  kinked: message('kinked'),
  'wrong wire': message('wrong wire'),
  other: message('something else'),
};

const strings = ['1', '2', '3'] as const;

interface Props {
  readonly stringing: Stringing;
  /** The string that the form begins with: of the wire that went on last. */
  readonly suggested: StringPlace | undefined;
}

/** What went wrong while stringing, and whether the wire came off. */
export function StringingMishaps({ stringing, suggested }: Props) {
  const { desk } = useDesk();
  const { say } = useLanguage();
  const [what, setWhat] = useState<StringingMishap>('broke');
  const [typed, setTyped] = useState<{ note?: string; string?: (typeof strings)[number] }>({});
  const [isOff, setOff] = useState<'off' | 'on'>('off');
  const [more, setMore] = useState('');
  const [problem, setProblem] = useState<string>();
  const noteText = typed.note ?? (suggested === undefined ? '' : noteName(suggested.key));
  const string = typed.string ?? (String(suggested?.string ?? 1) as (typeof strings)[number]);
  const { mishaps } = stringing;

  async function keep(): Promise<void> {
    setProblem(undefined);
    try {
      const key = parseNote(noteText.trim());
      await desk.runHere((context, id) =>
        noteStringingMishap(context, id, {
          what,
          strings: [{ key, string: Number(string) as 1 | 2 | 3 }],
          isOff: isOff === 'off',
          ...(more.trim() === '' ? {} : { note: more.trim() }),
        }),
      );
      setTyped({});
      setMore('');
    } catch (error) {
      setProblem(error instanceof Error ? error.message : String(error));
    }
  }

  return (
    <details className="strung-mishaps" open={mishaps.length > 0}>
      <summary>
        {mishaps.length === 0
          ? say('Something went wrong with a wire')
          : say('Went wrong: {count}', { count: mishaps.length })}
      </summary>
      <ul className="plain-list" aria-label={say('What went wrong while stringing')}>
        {mishaps.map(({ entry, what: kind, strings: own, isOff: cameOff, note }) => {
          const place = stringsText({
            strings: own.map((one) => ({ ...one, note: noteName(one.key), section: undefined })),
          });
          return (
            <li key={entry}>
              {place}: {say(words[kind])}, {cameOff ? say('came off') : say('stays on')}
              {note !== undefined && ` (${note})`}{' '}
              <TakeBack entry={entry} spoken={say('Take back: {place}', { place })} />
            </li>
          );
        })}
      </ul>
      <form onSubmit={once(keep)} aria-label={say('Something went wrong with a wire')}>
        <Choice
          label={say('What happened')}
          value={what}
          onChange={setWhat}
          options={stringingMishaps.map((value) => ({ value, words: say(words[value]) }))}
        />
        <div className="fields">
          <TextField
            label={say('Note')}
            hint={say('such as A4')}
            value={noteText}
            onChange={(note) => setTyped((now) => ({ ...now, note }))}
            maxLength={6}
          />
          <TextField label={say('In words')} hint={say('may stay empty')} value={more} onChange={setMore} />
        </div>
        <Choice
          label={say('[of a note] String')}
          value={string}
          onChange={(one) => setTyped((now) => ({ ...now, string: one }))}
          options={strings.map((value) => ({ value, words: value }))}
        />
        <Choice
          label={say('The wire')}
          value={isOff}
          onChange={setOff}
          options={[
            { value: 'off', words: say('came off: it is strung again') },
            { value: 'on', words: say('stays on') },
          ]}
        />
        <Problem says={problem} />
        <button type="submit" className="button">
          {say('Note it')}
        </button>
      </form>
    </details>
  );
}
