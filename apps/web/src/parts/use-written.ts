import { useLayoutEffect } from 'react';

/**
 * Writes into the elements of a view what stands elsewhere, now and whenever a source says that it changed: `write` sets
 * texts and attributes itself. For what changes at a key, so that its picture does not wait for a drawing of the page;
 * everything else is drawn from its state as usual. What is written so, the view leaves alone.
 */
export function useWritten(
  write: () => void,
  ...sources: readonly { subscribe(listener: () => void): () => void }[]
): void {
  useLayoutEffect(() => {
    write();
    const ends = sources.map((source) => source.subscribe(write));
    return () => {
      for (const end of ends) end();
    };
  });
}
