import type { Standing } from '@becket/journal';
import type { ReactNode } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { useLanguage } from '../../parts/language.tsx';
import { once } from '../../parts/once.ts';
import { takeBackWithUndo } from './taken-back.tsx';

/** A heading with the way to add one of its kind. */
export function PartHead({
  id,
  words,
  add,
  onAdd,
}: {
  id: string;
  words: string;
  add: string;
  onAdd: () => void;
}) {
  return (
    <div className="part-head">
      <h3 id={id}>{words}</h3>
      <button type="button" className="button" onClick={onAdd}>
        {add}
      </button>
    </div>
  );
}

/** A line with the ways to change it and to take it back. */
export function Line({
  fact,
  spoken,
  onChange,
  children,
}: {
  fact: Standing<object>;
  spoken: string;
  onChange: () => void;
  children: ReactNode;
}) {
  const language = useLanguage();
  const { say } = language;
  const { desk } = useDesk();
  return (
    <li>
      <span>{children}</span>
      <span className="button-row">
        <button
          type="button"
          className="button quiet"
          aria-label={say('Change {what}', { what: spoken })}
          onClick={onChange}
        >
          {say('Change')}
        </button>
        <button
          type="button"
          className="button quiet"
          aria-label={say('Take back {what}', { what: spoken })}
          onClick={once(() => takeBackWithUndo(desk, { entry: fact.entry, title: spoken }, language))}
        >
          {say('Take back')}
        </button>
      </span>
    </li>
  );
}

/** In a form: takes back what stands there; what stood before it stands again. Nothing where nothing stands. */
export function TakeItBack({
  entry,
  title,
  onDone,
}: {
  entry: string | undefined;
  title: string;
  onDone: () => void;
}) {
  const language = useLanguage();
  const { say } = language;
  const { desk } = useDesk();
  if (entry === undefined) return null;
  return (
    <button
      type="button"
      className="button"
      onClick={once(async () => {
        const done = await takeBackWithUndo(desk, { entry, title }, language);
        if (done !== undefined) onDone();
      })}
    >
      {say('Take it back')}
    </button>
  );
}
