import { useDesk } from '../../desk/use-desk.ts';
import { Field } from '../../parts/field.tsx';
import { useLanguage } from '../../parts/language.tsx';

/** Asked for once the record is sealed, where what is kept would change it. */
export function ReasonHere({
  reason,
  onChange,
  isWanted = true,
}: {
  reason: string;
  onChange: (reason: string) => void;
  isWanted?: boolean;
}) {
  const { say } = useLanguage();
  const { job } = useDesk();
  if (job.seal === undefined || !isWanted) return null;
  return (
    <Field
      label={say('Reason for changing the sealed record')}
      hint={say('stands on everything you keep here now')}
    >
      {(ids) => (
        <input
          {...ids}
          className="input"
          value={reason}
          maxLength={500}
          onChange={(event) => onChange(event.target.value)}
        />
      )}
    </Field>
  );
}
