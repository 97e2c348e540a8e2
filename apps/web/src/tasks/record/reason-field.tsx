import { useDesk } from '../../desk/use-desk.ts';
import { useLanguage } from '../../parts/language.tsx';
import { usePart } from '../../parts/observable.ts';
import { AmendReason } from '../../piano/amend-reason.tsx';
import { recordViewOf } from './record-state.ts';

/** Asked for once the record is sealed; one reason stands on every amendment made on the Record screens. */
export function ReasonField() {
  const { say } = useLanguage();
  const { desk, job } = useDesk();
  const view = recordViewOf(desk.id);
  const reason = usePart(view, (shown) => shown.reason);
  if (job.seal === undefined) return null;
  return (
    <AmendReason
      hint={say('stands on every amendment you make now')}
      reason={reason}
      onChange={(next) => view.update({ reason: next })}
    />
  );
}

/** The reason as facts take it: left out while nothing is said. */
export function useSaidReason(): { readonly reason?: string } {
  const { desk } = useDesk();
  const reason = usePart(recordViewOf(desk.id), ({ reason }) => reason).trim();
  return reason === '' ? {} : { reason };
}
