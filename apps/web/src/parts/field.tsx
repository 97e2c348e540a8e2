import { type ReactNode, useId } from 'react';

interface Props {
  readonly label: string;
  readonly hint?: string | undefined;
  readonly problem?: string | undefined;
  readonly children: (ids: {
    id: string;
    'aria-describedby': string | undefined;
    'aria-invalid': boolean | undefined;
  }) => ReactNode;
}

/** A labelled field; its hint and its problem are tied to it for everybody. */
export function Field({ label, hint, problem, children }: Props) {
  const id = useId();
  const noteId = `${id}-note`;
  const note = problem ?? hint;
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      {children({
        id,
        'aria-describedby': note === undefined ? undefined : noteId,
        'aria-invalid': problem === undefined ? undefined : true,
      })}
      {note !== undefined && (
        <span id={noteId} className={problem === undefined ? 'field-hint' : 'field-problem'}>
          {problem === undefined ? note : `▲ ${note}`}
        </span>
      )}
    </div>
  );
}
