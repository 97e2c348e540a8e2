import { type Message, message, noteName, parseNote } from '@becket/core';
import { mishaps, type Pass } from '@becket/journal';
import { recordMishap } from '@becket/tasks';
import { useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { Choice } from '../../parts/choice.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { once } from '../../parts/once.ts';
import { Problem } from '../../parts/problem.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { TakeBack } from '../../piano/take-back.tsx';

type Mishap = (typeof mishaps)[number];

export const mishapWords: Readonly<Record<Mishap, Message>> = {
  broke: message('broke'),
  slipped: message('slipped'),
  other: message('something else'),
};

const strings = ['not said', '1', '2', '3'] as const;

/** What broke or slipped in a pass. */
export function PassMishaps({ pass }: { pass: Pass }) {
  const { desk } = useDesk();
  const { say } = useLanguage();
  const [what, setWhat] = useState<Mishap>('broke');
  const [noteText, setNoteText] = useState('');
  const [string, setString] = useState<(typeof strings)[number]>('not said');
  const [words, setWords] = useState('');
  const [problem, setProblem] = useState<string>();

  async function keep(): Promise<void> {
    setProblem(undefined);
    try {
      const key = noteText.trim() === '' ? undefined : parseNote(noteText.trim());
      await desk.runHere((context, id) =>
        recordMishap(context, id, {
          passBegun: pass.entry,
          what,
          ...(key === undefined ? {} : { key }),
          ...(key === undefined || string === 'not said' ? {} : { string: Number(string) as 1 | 2 | 3 }),
          ...(words.trim() === '' ? {} : { note: words.trim() }),
        }),
      );
      setNoteText('');
      setString('not said');
      setWords('');
    } catch (error) {
      setProblem(error instanceof Error ? error.message : String(error));
    }
  }

  return (
    <details className="settle-mishaps" open={pass.mishaps.length > 0}>
      <summary>
        {pass.mishaps.length === 0
          ? say('A string broke or slipped')
          : say('Broke or slipped: {count}', { count: pass.mishaps.length })}
      </summary>
      <ul className="plain-list" aria-label={say('What broke or slipped in this pass')}>
        {pass.mishaps.map(({ entry, what: kind, key, string: which, note }) => {
          const place =
            key === undefined
              ? say('whole piano')
              : which === undefined
                ? noteName(key)
                : say('{note}, string {string}', { note: noteName(key), string: which });
          return (
            <li key={entry}>
              {place}: {say(mishapWords[kind])}
              {note !== undefined && ` (${note})`}{' '}
              <TakeBack entry={entry} spoken={say('Take back: {place}', { place })} />
            </li>
          );
        })}
      </ul>
      <form onSubmit={once(keep)} aria-label={say('A string broke or slipped')}>
        <Choice
          label={say('What happened')}
          value={what}
          onChange={setWhat}
          options={mishaps.map((value) => ({ value, words: say(mishapWords[value]) }))}
        />
        <div className="fields">
          <TextField
            label={say('Note')}
            hint={say('such as A4')}
            value={noteText}
            onChange={setNoteText}
            maxLength={6}
          />
          <TextField label={say('In words')} hint={say('may stay empty')} value={words} onChange={setWords} />
        </div>
        <Choice
          label={say('[of a note] String')}
          value={string}
          onChange={setString}
          options={strings.map((value) => ({
            value,
            words: value === 'not said' ? say('not said') : value,
          }))}
        />
        <Problem says={problem} />
        <button type="submit" className="button">
          {say('Note it')}
        </button>
      </form>
    </details>
  );
}
