import { Field } from './field.tsx';

interface Props {
  readonly label: string;
  readonly hint?: string | undefined;
  readonly problem?: string | undefined;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly maxLength?: number;
  /** Lines of a longer text; one line when not given. */
  readonly rows?: number;
  /** To choose from; anything else may be typed as well. */
  readonly words?: readonly string[];
  readonly isNumber?: boolean;
}

/** A labelled field of words or of one number. */
export function TextField({
  label,
  hint,
  problem,
  value,
  onChange,
  maxLength = 500,
  rows,
  words,
  isNumber = false,
}: Props) {
  return (
    <Field label={label} hint={hint} problem={problem}>
      {(ids) =>
        rows !== undefined ? (
          <textarea
            {...ids}
            className="input"
            rows={rows}
            maxLength={maxLength}
            value={value}
            onChange={(event) => onChange(event.target.value)}
          />
        ) : (
          <>
            <input
              {...ids}
              className="input"
              value={value}
              maxLength={maxLength}
              autoComplete="off"
              inputMode={isNumber ? 'decimal' : undefined}
              list={words === undefined ? undefined : `${ids.id}-words`}
              onChange={(event) => onChange(event.target.value)}
            />
            {words !== undefined && (
              <datalist id={`${ids.id}-words`}>
                {words.map((word) => (
                  <option key={word} value={word} />
                ))}
              </datalist>
            )}
          </>
        )
      }
    </Field>
  );
}
