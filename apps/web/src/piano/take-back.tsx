import { withdrawEntry } from '@becket/tasks';
import { useDesk } from '../desk/use-desk.ts';
import { useLanguage } from '../parts/language.tsx';
import { once } from '../parts/once.ts';

interface Props {
  readonly entry: string;
  /** What is said of the button: it names what is taken back. */
  readonly spoken: string;
}

/** Takes back one entry of a list, without asking why: for what needs no reason. */
export function TakeBack({ entry, spoken }: Props) {
  const { say } = useLanguage();
  const { desk } = useDesk();
  return (
    <button
      type="button"
      className="button quiet"
      aria-label={spoken}
      onClick={once(() => desk.run((context, id) => withdrawEntry(context, id, entry, say('taken back'))))}
    >
      {say('Take back')}
    </button>
  );
}
