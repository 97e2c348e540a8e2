import { type ReactNode, useState } from 'react';
import { Choice } from '../parts/choice.tsx';
import { useLanguage } from '../parts/language.tsx';
import { once } from '../parts/once.ts';
import { Problem } from '../parts/problem.tsx';
import { TextField } from '../parts/text-field.tsx';
import { TakeBack } from './take-back.tsx';

interface Option<Value extends string> {
  readonly value: Value;
  readonly words: string;
}

/** A mishap as it is typed. */
export interface MishapTyped<What extends string, Which extends string> {
  readonly what: What;
  readonly note: string;
  readonly string: Which;
  readonly words: string;
}

interface Props<What extends string, Which extends string> {
  /** What the form is called, and the fold while nothing is in it. */
  readonly title: string;
  /** What the fold is called once something is. */
  readonly titleWithCount: string;
  readonly listLabel: string;
  readonly kept: readonly { readonly entry: string; readonly place: string; readonly told: string }[];
  /** What is chosen to begin with. */
  readonly first: What;
  readonly whats: readonly Option<What>[];
  readonly strings: readonly Option<Which>[];
  /** What the form begins with, and begins with again after each that is kept. */
  readonly start: { readonly note: string; readonly string: Which };
  /** What it throws is shown. */
  readonly onKeep: (typed: MishapTyped<What, Which>) => Promise<unknown>;
  /** Further questions of the form. */
  readonly children?: ReactNode;
}

/** What went wrong with a string: all that was noted, and a form for one more, folded away while there is none. */
export function Mishaps<What extends string, Which extends string>(props: Props<What, Which>) {
  const { title, titleWithCount, listLabel, kept, first, whats, strings, start, onKeep, children } = props;
  const { say } = useLanguage();
  const [what, setWhat] = useState(first);
  const [place, setPlace] = useState<Partial<typeof start>>({});
  const [words, setWords] = useState('');
  const [problem, setProblem] = useState<string>();
  const { note, string } = { ...start, ...place };

  async function keep(): Promise<void> {
    setProblem(undefined);
    try {
      await onKeep({ what, note: note.trim(), string, words: words.trim() });
      setPlace({});
      setWords('');
    } catch (error) {
      setProblem(error instanceof Error ? error.message : String(error));
    }
  }

  return (
    <details className="mishaps" open={kept.length > 0}>
      <summary>{kept.length === 0 ? title : titleWithCount}</summary>
      <ul className="plain-list" aria-label={listLabel}>
        {kept.map(({ entry, place: where, told }) => (
          <li key={entry}>
            {where}: {told} <TakeBack entry={entry} spoken={say('Take back: {place}', { place: where })} />
          </li>
        ))}
      </ul>
      <form onSubmit={once(keep)} aria-label={title}>
        <Choice label={say('What happened')} value={what} onChange={setWhat} options={whats} />
        <div className="fields">
          <TextField
            label={say('Note')}
            hint={say('such as A4')}
            value={note}
            onChange={(next) => setPlace((now) => ({ ...now, note: next }))}
            maxLength={6}
          />
          <TextField label={say('In words')} hint={say('may stay empty')} value={words} onChange={setWords} />
        </div>
        <Choice
          label={say('[of a note] String')}
          value={string}
          onChange={(next) => setPlace((now) => ({ ...now, string: next }))}
          options={strings}
        />
        {children}
        <Problem says={problem} />
        <button type="submit" className="button">
          {say('Note it')}
        </button>
      </form>
    </details>
  );
}
