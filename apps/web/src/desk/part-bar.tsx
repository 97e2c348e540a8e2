import type { Message } from '@becket/core';
import { useLanguage } from '../parts/language.tsx';
import { hashOf, type TaskName, tasks } from './route.ts';
import { useDesk } from './use-desk.ts';

interface Props<Name extends string> {
  readonly task: TaskName;
  /** Name in the address, words on the screen, in their order. */
  readonly parts: Readonly<Record<Name, Message>>;
  readonly shown: Name;
}

/** The parts of a task as places to go to. */
export function PartBar<Name extends string>({ task, parts, shown }: Props<Name>) {
  const language = useLanguage();
  const { say } = language;
  const { desk } = useDesk();
  return (
    <nav aria-label={say('Parts of {task}', { task: say(tasks[task]) })} className="part-bar">
      {(Object.keys(parts) as Name[]).map((one) => (
        <a
          key={one}
          href={hashOf({ place: 'job', job: desk.id, task, part: one })}
          aria-current={one === shown ? 'page' : undefined}
        >
          {say(parts[one])}
        </a>
      ))}
    </nav>
  );
}
