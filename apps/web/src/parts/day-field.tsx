import { Field } from './field.tsx';

interface Props {
  readonly label: string;
  readonly hint?: string | undefined;
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

/** The day it is here, as YYYY-MM-DD: by the clock of this device, not that of UTC. */
export function todayHere(now = new Date()): string {
  const two = (value: number) => String(value).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
