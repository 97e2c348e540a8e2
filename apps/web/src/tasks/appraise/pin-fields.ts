import type { Language } from '@becket/core';
import type { PinChoice } from '@becket/tasks';
import type { LengthUnit } from '../../parts/length-text.ts';
import type { SmallField } from '../../parts/small-form.tsx';

/** What every part of the tuning pins is given. */
export interface PinPartProps {
  readonly choice: PinChoice;
  readonly unit: LengthUnit;
}

/** Which pin a form is about. */
export const pinPlaceFields = ({ say }: Language): SmallField<'note' | 'string'>[] => [
  { name: 'note', label: say('Note') },
  {
    name: 'string',
    label: say('[of a note] String'),
    options: ['1', '2', '3'].map((value) => ({ value, words: value })),
  },
];

export const remarkField = ({ say }: Language): SmallField<'remark'> => ({
  name: 'remark',
  label: say('Remark'),
  hint: say('may stay empty'),
});
