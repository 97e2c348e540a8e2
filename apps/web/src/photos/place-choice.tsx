import { english, type Language, noteName, parseNote } from '@becket/core';
import type { Job, Place } from '@becket/journal';
import { useState } from 'react';
import { Field } from '../parts/field.tsx';
import { useLanguage } from '../parts/language.tsx';
import { SelectField } from '../parts/select-field.tsx';

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
      <SelectField<TypedPlace['choice']>
        label={say('Where on the piano')}
        value={typed.choice}
        onChange={(choice) => onChange({ ...typed, choice })}
        options={[
          { value: 'whole piano', words: say('the whole piano') },
          { value: 'note', words: say('a note') },
          ...job.sections.map(({ section }) => ({
            value: `section ${section}` as const,
            words: say('section {section}', { section }),
          })),
        ]}
      />
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
