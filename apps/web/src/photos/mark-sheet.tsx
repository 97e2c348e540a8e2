import type { Language } from '@becket/core';
import { inches, millimetres } from '@becket/core';
import type { PhotoMark } from '@becket/journal';
import { useState } from 'react';
import { Sheet } from '../parts/dialog.tsx';
import { Field } from '../parts/field.tsx';
import { useLanguage } from '../parts/language.tsx';
import type { LengthUnit } from '../parts/length-text.ts';
import { readTypedNumber } from '../parts/typed-number.ts';

interface Props {
  readonly mark: PhotoMark;
  readonly unit: LengthUnit;
  readonly onKeep: (mark: PhotoMark) => void;
  readonly onClose: () => void;
}

/** What a label says, or how long a distance is on the piano where that was measured. */
export function MarkSheet({ mark, unit, onKeep, onClose }: Props) {
  const language = useLanguage();
  const { say } = language;
  const [typed, setTyped] = useState('');
  const read = completed(mark, typed, unit, language);
  const isLabel = mark.mark === 'label';
  return (
    <Sheet title={isLabel ? say('Label') : say('Distance')} isOpen onClose={onClose}>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          if (typeof read !== 'string') onKeep(read);
        }}
      >
        <Field
          label={isLabel ? say('Words') : say('Length measured on the piano, in {unit}', { unit })}
          hint={
            isLabel
              ? undefined
              : say('makes it the scale bar of this photo; left empty, its length follows from the scale bar')
          }
          problem={typed.trim() !== '' && typeof read === 'string' ? read : undefined}
        >
          {(ids) => (
            <input
              {...ids}
              className="input"
              value={typed}
              maxLength={200}
              autoComplete="off"
              inputMode={isLabel ? 'text' : 'decimal'}
              // biome-ignore lint/a11y/noAutofocus: the sheet was opened to type into its one field
              autoFocus
              onChange={(event) => setTyped(event.target.value)}
            />
          )}
        </Field>
        <div className="button-row">
          <button type="submit" className="button strong" disabled={typeof read === 'string'}>
            {isLabel ? say('Keep the label') : say('Keep the distance')}
          </button>
          <button type="button" className="button quiet" onClick={onClose}>
            {say('Leave it')}
          </button>
        </div>
      </form>
    </Sheet>
  );
}

/** The mark with what was typed; or one sentence on what is amiss. */
function completed(
  mark: PhotoMark,
  typed: string,
  fieldUnit: LengthUnit,
  language: Language,
): PhotoMark | string {
  if (mark.mark !== 'distance') {
    return typed.trim() === '' ? language.say('A label needs words.') : { ...mark, text: typed.trim() };
  }
  const read = readTypedNumber(typed, language);
  if (read.is === 'empty') return mark;
  if (read.is === 'problem') return read.sentence;
  const { value, unit = fieldUnit } = read;
  if (!(value > 0))
    return language.say('A length above 0 is needed, {found} was found. Type it again.', {
      found: `${language.plain(value)} ${unit}`,
    });
  const scales = { mm: 1, m: 1000, um: 0.001 } as const;
  const known_m = unit === 'in' ? inches(value) : millimetres(value * scales[unit as keyof typeof scales]);
  return { ...mark, known_m };
}
