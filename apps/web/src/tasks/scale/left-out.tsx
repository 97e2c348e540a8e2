import type { NotesLeftOut } from '@becket/tasks';
import { hashOf } from '../../desk/route.ts';
import { useDesk, useSelectedKey } from '../../desk/use-desk.ts';

/** One sentence of notes that a scale does not have, with what each lacks behind it; nothing where there are none. */
export function LeftOut({ sentence, notes }: { sentence: string; notes: readonly NotesLeftOut[] }) {
  const { desk } = useDesk();
  const [, select] = useSelectedKey();
  if (notes.length === 0) return null;
  return (
    <details className="notice left-out">
      <summary>▲ {sentence}</summary>
      <ul>
        {notes.map(({ keys, notes: names, because }) => (
          <li key={because}>
            <a href={hashOf({ place: 'job', job: desk.id, task: 'record' })} onClick={() => select(keys[0])}>
              {names}
            </a>
            : {because}
          </li>
        ))}
      </ul>
    </details>
  );
}

/** How many notes these are. */
export const countOf = (notes: readonly NotesLeftOut[]): number =>
  notes.reduce((sum, { keys }) => sum + keys.length, 0);
