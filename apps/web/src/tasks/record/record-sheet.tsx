import { type ReactNode, useEffect } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { FormSheet } from '../../parts/form-sheet.tsx';
import { useObservable } from '../../parts/observable.ts';
import { ReasonField } from './reason-field.tsx';

interface Props {
  readonly title: string;
  readonly keep: string;
  readonly more?: ReactNode;
  readonly onClose: () => void;
  /** Gives back undefined when it failed: the sheet stays open then, with the problem in it. */
  readonly onKeep: () => Promise<unknown>;
  readonly children: ReactNode;
}

/** A form of the record: after the seal it asks for the reason. */
export function RecordSheet({ onClose, onKeep, children, ...rest }: Props) {
  const { desk } = useDesk();
  const problem = useObservable(desk.problem);
  // What went wrong before is not about this form, and what goes wrong in it is over when it is closed.
  useEffect(() => {
    desk.problem.set(undefined);
    return () => desk.problem.set(undefined);
  }, [desk]);
  return (
    <FormSheet
      {...rest}
      problem={problem}
      onClose={onClose}
      onKeep={async () => {
        if ((await onKeep()) !== undefined) onClose();
      }}
    >
      {children}
      <ReasonField />
    </FormSheet>
  );
}
