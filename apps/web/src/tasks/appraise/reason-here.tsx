import { useDesk } from '../../desk/use-desk.ts';
import { useLanguage } from '../../parts/language.tsx';
import { AmendReason } from '../../piano/amend-reason.tsx';

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
    <AmendReason hint={say('stands on everything you keep here now')} reason={reason} onChange={onChange} />
  );
}
