import { english, type Language, noteName, parseNote } from '@becket/core';
import type { Job, Place } from '@becket/journal';
import { useState } from 'react';
import { Field } from '../parts/field.tsx';
import { useLanguage } from '../parts/language.tsx';

/** What stands in the two fields, before it is a place. */
export interface TypedPlace {
  readonly choice: 'whole piano' | 'note' | `section ${string}`;
  readonly note: string;
}

export const typedPlaceOf = ({ key, section }: Place): TypedPlace => ({
  choice: key !== undefined ? 'note' : section === undefined ? 'whole piano' : `section ${section}`,
  note: key === undefined ? '' : noteName(key),
});

/** The place, or one sentence on what is amiss. */
export function readPlace({ choice, note }: TypedPlace, language: Language = english): Place | string {
  const { say } = language;
  if (choice === 'whole piano') return {};
  if (choice !== 'note') return { section: choice.slice('section '.length) };
  try {
    return { key: parseNote(note.trim(), undefined, language) };
  } catch {
    return say("Cannot read '{text}' as a note: a name such as A4 or C#3 is needed. Type it again.", {
      text: note.trim(),
    });
  }
}

/** Where on the piano a photo belongs. */
export function PlaceChoice({
  job,
  typed,
  onChange,
}: {
  job: Job;
  typed: TypedPlace;
  onChange: (typed: TypedPlace) => void;
}) {
  const language = useLanguage();
  const { say } = language;
  const [wasLeft, setLeft] = useState(false);
  const place = readPlace(typed, language);
  const problem = wasLeft && typeof place === 'string' ? place : undefined;
  return (
    <>
      <Field label={say('Where on the piano')}>
        {(ids) => (
          <select
            {...ids}
            className="input"
            value={typed.choice}
            onChange={(event) => onChange({ ...typed, choice: event.target.value as TypedPlace['choice'] })}
          >
            <option value="whole piano">{say('the whole piano')}</option>
            <option value="note">{say('a note')}</option>
            {job.sections.map(({ section }) => (
              <option key={section} value={`section ${section}`}>
                {say('section {section}', { section })}
              </option>
            ))}
          </select>
        )}
      </Field>
      {typed.choice === 'note' && (
        <Field label={say('Note')} problem={problem}>
          {(ids) => (
            <input
              {...ids}
              className="input"
              value={typed.note}
              autoComplete="off"
              onBlur={() => setLeft(true)}
              onChange={(event) => onChange({ ...typed, note: event.target.value })}
            />
          )}
        </Field>
      )}
    </>
  );
}
