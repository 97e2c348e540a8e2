import type { ReactNode } from 'react';

interface Props {
  readonly task: string;
  /** What this task will hold, and does not hold yet. */
  readonly missing: readonly string[];
  /** What can be done now instead. */
  readonly children: ReactNode;
}

/** A place that is honest about what is not there yet. */
export function NotYet({ task, missing, children }: Props) {
  return (
    <section className="not-yet">
      <h2>{task}</h2>
      <p>This place is not built yet. Not there:</p>
      <ul>
        {missing.map((one) => (
          <li key={one}>{one}</li>
        ))}
      </ul>
      <h3>What can be done now</h3>
      {children}
    </section>
  );
}
