import { Field } from '../../parts/field.tsx';

interface Props {
  readonly label: string;
  readonly hint?: string;
  /** YYYY-MM-DD, or '' */
  readonly value: string;
  readonly onChange: (value: string) => void;
}

/** A day, in the way the device writes days. */
export function DayField({ label, hint, value, onChange }: Props) {
  return (
    <Field label={label} hint={hint}>
      {(ids) => (
        <input
          {...ids}
          className="input"
          type="date"
          value={value}
          onChange={(event) => onChange(event.target.value)}
        />
      )}
    </Field>
  );
}
