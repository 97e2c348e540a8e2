import {
  english,
  inches,
  inMetres,
  inMillimetres,
  type Language,
  metres,
  millimetres,
  noteName,
  parseNote,
} from '@becket/core';
import type { Piano } from '@becket/journal';
import { readTypedNumber } from '../parts/typed-number.ts';

/** The description of a piano as it is being typed. */
export interface PianoForm {
  readonly form: 'grand' | 'vertical' | 'not known yet';
  readonly size: string;
  readonly firstNote: string;
  readonly lastNote: string;
  readonly pitch: string;
  readonly maker: string;
  readonly model: string;
  readonly serialNumber: string;
  readonly year: string;
}

export type PianoDescription = Omit<Piano, 'kind' | 'v' | 'entry' | 'step' | 'at' | 'by'>;

/** A form that says nothing but what most pianos are: 88 notes, A4 at 440 Hz. */
export const emptyPianoForm: PianoForm = {
  form: 'not known yet',
  size: '',
  firstNote: 'A0',
  lastNote: 'C8',
  pitch: '440',
  maker: '',
  model: '',
  serialNumber: '',
  year: '',
};

export function formOfPiano(piano: Piano, { plain }: Language = english): PianoForm {
  return {
    form: piano.form,
    size:
      piano.size_m === undefined ? '' : `${plain(Number(inMillimetres(metres(piano.size_m)).toFixed(1)))} mm`,
    firstNote: noteName(piano.firstKey),
    lastNote: noteName(piano.lastKey),
    pitch: plain(piano.referencePitch_hz),
    maker: piano.maker ?? '',
    model: piano.model ?? '',
    serialNumber: piano.serialNumber ?? '',
    year: piano.year === undefined ? '' : String(piano.year),
  };
}

export type PianoFormProblems = Partial<Record<keyof PianoForm, string>>;

/** The description that was typed, or what is wrong with it, field by field; neither while the form is not known. */
export function readPianoForm(
  form: PianoForm,
  language: Language = english,
): {
  readonly piano: PianoDescription | undefined;
  readonly problems: PianoFormProblems;
} {
  const { say } = language;
  if (form.form === 'not known yet') return { piano: undefined, problems: {} };
  const problems: { -readonly [Field in keyof PianoForm]?: string } = {};

  const readKey = (field: 'firstNote' | 'lastNote'): number | undefined => {
    try {
      return parseNote(form[field], undefined, language);
    } catch {
      problems[field] = say(
        "Cannot read '{text}' as a note: a name such as A4 or C#3 is needed. Type it again.",
        {
          text: form[field],
        },
      );
      return undefined;
    }
  };
  const firstKey = readKey('firstNote');
  const lastKey = readKey('lastNote');
  if (firstKey !== undefined && lastKey !== undefined && firstKey >= lastKey)
    problems.lastNote = say('The last note must lie above the first: {first} to {last} was found.', {
      first: form.firstNote,
      last: form.lastNote,
    });

  const pitch = readTypedNumber(form.pitch.replace(/\s*hz\s*$/i, ''), language);
  const referencePitch_hz = pitch.is === 'number' && pitch.unit === undefined ? pitch.value : undefined;
  if (referencePitch_hz === undefined || referencePitch_hz < 380 || referencePitch_hz > 480)
    problems.pitch = say("A pitch of A4 from 380 to 480 Hz is needed: '{found}' was found.", {
      found: form.pitch,
    });

  let size_m: number | undefined;
  const size = readTypedNumber(form.size, language);
  if (size.is === 'number') {
    const { value, unit = 'mm' } = size;
    size_m = unit === 'in' ? inMetres(inches(value)) : unit === 'm' ? value : inMetres(millimetres(value));
  }
  if (size.is === 'problem' || (size_m !== undefined && (size_m < 0.5 || size_m > 4)))
    problems.size = say(
      "A length of a grand or height of a vertical from 500 to 4000 mm is needed: '{found}' was found. Inches are read too: 71 in.",
      { found: form.size },
    );

  const year = form.year.trim() === '' ? undefined : Number(form.year);
  if (year !== undefined && !(Number.isInteger(year) && year >= 1700 && year <= 2200))
    problems.year = say(
      "A year from 1700 on is needed: '{found}' was found. Leave it empty when it is not known.",
      {
        found: form.year,
      },
    );

  if (
    Object.keys(problems).length > 0 ||
    firstKey === undefined ||
    lastKey === undefined ||
    !referencePitch_hz
  )
    return { piano: undefined, problems };
  const words = (text: string) => (text.trim() === '' ? undefined : text.trim());
  return {
    problems,
    piano: {
      form: form.form,
      firstKey,
      lastKey,
      referencePitch_hz,
      ...(size_m === undefined ? {} : { size_m }),
      ...(year === undefined ? {} : { year }),
      ...(words(form.maker) ? { maker: words(form.maker) } : {}),
      ...(words(form.model) ? { model: words(form.model) } : {}),
      ...(words(form.serialNumber) ? { serialNumber: words(form.serialNumber) } : {}),
    },
  };
}
