import { Choice } from '../parts/choice.tsx';
import { useLanguage } from '../parts/language.tsx';
import { TextField } from '../parts/text-field.tsx';
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
  const { say } = useLanguage();
  const field = (name: keyof PianoForm, label: string, hint?: string) => (
    <TextField
      label={label}
      hint={hint}
      problem={problems[name]}
      value={form[name]}
      onChange={(value) => onChange({ ...form, [name]: value })}
    />
  );
  const isKnown = form.form !== 'not known yet';
  return (
    <>
      <Choice
        label={say('Form')}
        value={form.form}
        onChange={(value) => onChange({ ...form, form: value })}
        options={[
          { value: 'grand', words: say('grand') },
          { value: 'vertical', words: say('vertical') },
          { value: 'not known yet', words: say('not known yet') },
        ]}
      />
      {isKnown && (
        <div className="fields">
          {field(
            'size',
            form.form === 'grand' ? say('Length over the case') : say('Height over the case'),
            say('mm; or 71 in, or 1.8 m; empty when not measured'),
          )}
          {field('firstNote', say('Lowest note'))}
          {field('lastNote', say('Highest note'))}
          {field('pitch', say('Pitch of A4 the strings are meant for (Hz)'))}
          {!isShort && (
            <>
              {field('maker', say('Maker'))}
              {field('model', say('Model'))}
              {field('serialNumber', say('Serial number'))}
              {field('year', say('Year built'))}
            </>
          )}
        </div>
      )}
    </>
  );
}
