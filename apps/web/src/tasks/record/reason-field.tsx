import { useDesk } from '../../desk/use-desk.ts';
import { Field } from '../../parts/field.tsx';
import { useObservable } from '../../parts/observable.ts';
import { recordViewOf } from './record-state.ts';

/** Asked for once the record is sealed; one reason stands on every amendment made on the Record screens. */
export function ReasonField() {
  const { desk, job } = useDesk();
  const view = recordViewOf(desk.id);
  const { reason } = useObservable(view);
  if (job.seal === undefined) return null;
  return (
    <Field label="Reason for changing the sealed record" hint="stands on every amendment you make now">
      {(ids) => (
        <input
          {...ids}
          className="input"
          value={reason}
          maxLength={500}
          onChange={(event) => view.update({ reason: event.target.value })}
        />
      )}
    </Field>
  );
}

/** The reason as facts take it: left out while nothing is said. */
export function useSaidReason(): { readonly reason?: string } {
  const { desk } = useDesk();
  const reason = useObservable(recordViewOf(desk.id)).reason.trim();
  return reason === '' ? {} : { reason };
}
