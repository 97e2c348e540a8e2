import type { ReactNode } from 'react';

/** A table that scrolls sideways in its own frame on a small screen, with the keyboard too. */
export function TableFrame({ label, children }: { label: string; children: ReactNode }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a frame that scrolls has to be reached with the keyboard
    <section className="table-frame" aria-label={label} tabIndex={0}>
      {children}
    </section>
  );
}
