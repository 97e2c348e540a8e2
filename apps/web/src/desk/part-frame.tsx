import type { Message } from '@becket/core';
import { type ReactNode, Suspense } from 'react';
import { useLanguage } from '../parts/language.tsx';
import { PartBar } from './part-bar.tsx';
import { type TaskName, tasks } from './route.ts';

interface Props<Name extends string> {
  readonly task: TaskName;
  readonly parts: Readonly<Record<Name, Message>>;
  readonly shown: Name;
  /** The part that is shown; it may still be on its way. */
  readonly children: ReactNode;
}

/** A task with its parts: its name for whoever cannot see it, the bar of its parts, and the part that is shown. */
export function PartFrame<Name extends string>({ task, parts, shown, children }: Props<Name>) {
  const { say } = useLanguage();
  return (
    <>
      <div className="task-head">
        <h2 className="unseen">{say(tasks[task])}</h2>
        <PartBar task={task} parts={parts} shown={shown} />
      </div>
      <Suspense fallback={<p>{say('Opening …')}</p>}>{children}</Suspense>
    </>
  );
}
