import { english, type Language } from '@becket/core';
import type { Ulid } from '@becket/journal';
import type { JobDesk } from '../../desk/job-desk.ts';
import { useDesk } from '../../desk/use-desk.ts';
import { useLanguage } from '../../parts/language.tsx';
import { type Observable, observable, useObservable } from '../../parts/observable.ts';
import { once } from '../../parts/once.ts';
import { reasonFor, recordViewOf, type Step, takeBack, undoStep } from './record-state.ts';

/** What was taken back last with a button, until it is undone or something else is. It lasts as long as the page. */
const lastByJob = new Map<Ulid, Observable<Step | undefined>>();
function lastTakenBack(job: Ulid): Observable<Step | undefined> {
  const known = lastByJob.get(job) ?? observable<Step | undefined>(undefined);
  lastByJob.set(job, known);
  return known;
}

/** Takes an entry back, so that one tap brings it again. Gives back undefined when it could not be taken back. */
export async function takeBackWithUndo(
  desk: JobDesk,
  { entry, title }: { readonly entry: Ulid; readonly title: string },
  { say }: Language = english,
): Promise<true | undefined> {
  const { reason } = recordViewOf(desk.id).get();
  const entries = await desk.run(async (context, id) =>
    takeBack(context, id, entry, await reasonFor(context, id, reason, say('taken back while recording'))),
  );
  if (entries === undefined) return undefined;
  lastTakenBack(desk.id).set({ title, entries });
  return true;
}

/** Says what was taken back last, with the way to bring it again: a tap with a glove may go to the wrong line. */
export function TakenBack() {
  const { say } = useLanguage();
  const { desk } = useDesk();
  const last = lastTakenBack(desk.id);
  const step = useObservable(last);
  return (
    <div className="taken-back" role="status">
      {step !== undefined && (
        <p>
          {say('Taken back: {what}.', { what: step.title })}{' '}
          <button
            type="button"
            className="button"
            aria-label={say('Bring back {what}', { what: step.title })}
            onClick={once(async () => {
              const { reason } = recordViewOf(desk.id).get();
              const done = await desk.run((context, id) => undoStep(context, id, step, reason));
              if (done !== undefined) last.set(undefined);
            })}
          >
            {say('Undo')}
          </button>
        </p>
      )}
    </div>
  );
}
