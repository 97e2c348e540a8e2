import { startTransition, useEffect, useState, useSyncExternalStore } from 'react';

/** A value that views can watch. State lives in these; they run without a browser. */
export interface Observable<T> {
  get(): T;
  set(next: T): void;
  /** Changes some fields, and leaves the others. */
  update(part: Partial<T>): void;
  subscribe(listener: () => void): () => void;
}

export function observable<T>(initial: T): Observable<T> {
  let value = initial;
  const listeners = new Set<() => void>();
  const set = (next: T) => {
    if (Object.is(next, value)) return;
    value = next;
    for (const listener of [...listeners]) listener();
  };
  return {
    get: () => value,
    set,
    update: (part) => set({ ...value, ...part }),
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

/** The present value, in a view that is drawn again when it changes. */
export function useObservable<T>(source: Observable<T>): T {
  return useSyncExternalStore(source.subscribe, source.get);
}

/** One part of the present value, in a view that is drawn again only when that part changes. */
export function usePart<T, Part>(source: Observable<T>, part: (value: T) => Part): Part {
  return useSyncExternalStore(source.subscribe, () => part(source.get()));
}

/**
 * The present value, in a view that is drawn again when there is nothing more urgent: what is being typed, and what is
 * read back of it, goes first.
 */
export function useUnhurried<T>(source: Observable<T>): T {
  const [value, setValue] = useState(source.get);
  useEffect(() => {
    const take = () => startTransition(() => setValue(source.get));
    // It may have changed between the first drawing and now.
    take();
    return source.subscribe(take);
  }, [source]);
  return value;
}
