import type { ReactNode } from 'react';
import { useLanguage } from './language.tsx';

interface Props {
  readonly task: string;
  /** What this task will hold, and does not hold yet. */
  readonly missing: readonly string[];
  /** What can be done now instead. */
  readonly children: ReactNode;
}

/** A place that is honest about what is not there yet. */
export function NotYet({ task, missing, children }: Props) {
  const { say } = useLanguage();
  return (
    <section className="not-yet">
      <h2>{task}</h2>
      <p>{say('This place is not built yet. Not there:')}</p>
      <ul>
        {missing.map((one) => (
          <li key={one}>{one}</li>
        ))}
      </ul>
      <h3>{say('What can be done now')}</h3>
      {children}
    </section>
  );
}
