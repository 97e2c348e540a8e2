import { useLanguage } from '../parts/language.tsx';
import { TextField } from '../parts/text-field.tsx';

interface Props {
  readonly reason: string;
  readonly onChange: (reason: string) => void;
  /** What the reason is for, where it is not plain. */
  readonly hint?: string | undefined;
}

/** Why the sealed record is changed: asked for wherever something is kept that changes it. */
export function AmendReason({ reason, onChange, hint }: Props) {
  const { say } = useLanguage();
  return (
    <TextField
      label={say('Reason for changing the sealed record')}
      hint={hint}
      maxLength={500}
      value={reason}
      onChange={onChange}
    />
  );
}
