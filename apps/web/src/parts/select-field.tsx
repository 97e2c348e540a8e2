import { Field } from './field.tsx';

interface Props<T extends string> {
  readonly label: string;
  readonly hint?: string | undefined;
  readonly value: T;
  readonly onChange: (value: T) => void;
  readonly options: readonly { readonly value: T; readonly words: string }[];
}

/** One of many, in a list that opens. */
export function SelectField<T extends string>({ label, hint, value, onChange, options }: Props<T>) {
  return (
    <Field label={label} hint={hint}>
      {(ids) => (
        <select
          {...ids}
          className="input"
          value={value}
          onChange={(event) => onChange(event.target.value as T)}
        >
          {options.map((option) => (
            <option key={option.value} value={option.value}>
              {option.words}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}
