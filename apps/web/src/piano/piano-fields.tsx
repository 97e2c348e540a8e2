import { Choice } from '../parts/choice.tsx';
import { Field } from '../parts/field.tsx';
import type { PianoForm, PianoFormProblems } from './piano-form.ts';

interface Props {
  readonly form: PianoForm;
  readonly problems: PianoFormProblems;
  readonly onChange: (form: PianoForm) => void;
  /** Only what has to be known before readings can be entered. */
  readonly isShort?: boolean;
}

/** The fields that describe an instrument. */
export function PianoFields({ form, problems, onChange, isShort }: Props) {
  const field = (name: keyof PianoForm, label: string, hint?: string) => (
    <Field label={label} hint={hint} problem={problems[name]}>
      {(ids) => (
        <input
          {...ids}
          className="input"
          value={form[name]}
          autoComplete="off"
          onChange={(event) => onChange({ ...form, [name]: event.target.value })}
        />
      )}
    </Field>
  );
  const isKnown = form.form !== 'not known yet';
  return (
    <>
      <Choice
        label="Form"
        value={form.form}
        onChange={(value) => onChange({ ...form, form: value })}
        options={[
          { value: 'grand', words: 'grand' },
          { value: 'vertical', words: 'vertical' },
          { value: 'not known yet', words: 'not known yet' },
        ]}
      />
      {isKnown && (
        <div className="fields">
          {field(
            'size',
            form.form === 'grand' ? 'Length over the case' : 'Height over the case',
            'mm; or 71 in, or 1.8 m; empty when not measured',
          )}
          {field('firstNote', 'Lowest note')}
          {field('lastNote', 'Highest note')}
          {field('pitch', 'Pitch of A4 the strings are meant for (Hz)')}
          {!isShort && (
            <>
              {field('maker', 'Maker')}
              {field('model', 'Model')}
              {field('serialNumber', 'Serial number')}
              {field('year', 'Year built')}
            </>
          )}
        </div>
      )}
    </>
  );
}
