import { type FormEvent, type ReactNode, useRef, useState } from 'react';
import { entryForm, type Keeping } from './entry-form.ts';
import { Field } from './field.tsx';
import { useObservable } from './observable.ts';
import { Problem } from './problem.tsx';

export interface SmallField<Name extends string> {
  readonly name: Name;
  readonly label: string;
  readonly hint?: string;
  /** Which keys a phone shows; words when not said. */
  readonly keys?: 'decimal' | 'text';
  /** One of a few, instead of typing. */
  readonly options?: readonly { readonly value: string; readonly words: string }[];
}

interface Props<Name extends string> {
  readonly label: string;
  readonly fields: readonly SmallField<Name>[];
  readonly start: Readonly<Record<Name, string>>;
  readonly submit: string;
  /** Begins to keep what is filled in, and says what to go on with; what it throws, or its keeping, is shown. */
  readonly onKeep: (values: Readonly<Record<Name, string>>) => Keeping<Readonly<Record<Name, string>>>;
  /** The field that takes the next value. */
  readonly first?: Name;
  readonly isStrong?: boolean;
  readonly children?: ReactNode;
}

/** A few fields that are kept together; Enter keeps them and goes back to the first. */
export function SmallForm<Name extends string>(props: Props<Name>) {
  const { label, fields, start, submit, onKeep, first, isStrong = false, children } = props;
  const [entry] = useState(() => entryForm<Readonly<Record<Name, string>>>(start));
  const { form: values, problem } = useObservable(entry.state);
  const form = useRef<HTMLFormElement>(null);

  function keep(event: FormEvent): void {
    event.preventDefault();
    void entry.keep(onKeep);
    if (entry.state.get().problem === undefined)
      form.current?.querySelector<HTMLElement>(`[name="${first ?? fields[0]?.name}"]`)?.focus();
  }

  return (
    <form ref={form} onSubmit={keep} aria-label={label} className="small-form">
      <div className="fields">
        {fields.map(({ name, label: words, hint, keys, options }) => (
          <Field key={name} label={words} hint={hint}>
            {(ids) => {
              const shared = {
                ...ids,
                name,
                className: 'input',
                value: values[name],
                onChange: (event: { target: { value: string } }) =>
                  entry.take({ [name]: event.target.value } as Partial<Readonly<Record<Name, string>>>),
              };
              return options === undefined ? (
                <input {...shared} inputMode={keys ?? 'text'} autoComplete="off" />
              ) : (
                <select {...shared}>
                  {options.map(({ value, words: option }) => (
                    <option key={value} value={value}>
                      {option}
                    </option>
                  ))}
                </select>
              );
            }}
          </Field>
        ))}
      </div>
      <Problem says={problem} />
      <div className="button-row">
        <button type="submit" className={isStrong ? 'button strong' : 'button'}>
          {submit}
        </button>
        {children}
      </div>
    </form>
  );
}
