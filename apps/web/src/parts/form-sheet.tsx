import type { ReactNode } from 'react';
import { Sheet } from './dialog.tsx';
import { useLanguage } from './language.tsx';
import { once } from './once.ts';
import { Problem } from './problem.tsx';

interface Props {
  readonly title: string;
  /** Words of the button that keeps it. */
  readonly keep: string;
  readonly canKeep?: boolean;
  /** What went wrong at the last try. */
  readonly problem?: string | undefined;
  /** Further ways out, beside keep and close. */
  readonly more?: ReactNode;
  /** Resolves when it is kept or refused: until then it is not asked again. */
  readonly onKeep: () => Promise<unknown>;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

const intoSight = (notice: HTMLElement | null): void => notice?.scrollIntoView({ block: 'nearest' });

/** A form above the page: the fields, the problem, then keep or close. */
export function FormSheet({ title, keep, canKeep = true, problem, more, onKeep, onClose, children }: Props) {
  const { say } = useLanguage();
  return (
    <Sheet title={title} isOpen onClose={onClose}>
      <form onSubmit={once(async () => canKeep && onKeep())}>
        {children}
        {problem !== undefined && (
          // Beside the button that was tapped: at the head of a long form nobody would see it.
          <div ref={intoSight}>
            <Problem says={problem} />
          </div>
        )}
        <div className="button-row">
          <button type="submit" className="button strong" disabled={!canKeep}>
            {keep}
          </button>
          {more}
          <button type="button" className="button quiet" onClick={onClose}>
            {say('Close')}
          </button>
        </div>
      </form>
    </Sheet>
  );
}
