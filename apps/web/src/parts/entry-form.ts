import { type Observable, observable } from './observable.ts';

export interface EntryState<Form> {
  readonly form: Form;
  /** Why the last value was not kept, in one sentence. */
  readonly problem: string | undefined;
}

/** What keeping a form comes to: the form for the value that comes next, and the keeping, which may take its time. */
export interface Keeping<Form> {
  readonly next: Form;
  readonly kept: Promise<unknown>;
}

/** A form for one value after the other, as fast as a hand can type them. */
export interface EntryForm<Form> {
  readonly state: Observable<EntryState<Form>>;
  /** Changes some fields, and leaves the others. */
  take(change: Partial<Form>): void;
  /**
   * Keeps what is filled in, and goes on to the next value at once: what is typed meanwhile belongs to that one.
   *
   * What `begin` throws, or its keeping, is the problem that is shown. A value that was refused comes back into the form,
   * unless the next one is being typed there already. A second press while nothing was typed since is passed over.
   */
  keep(begin: (form: Form) => Keeping<Form>): Promise<void>;
}

export function entryForm<Form extends object>(first: Form): EntryForm<Form> {
  const state = observable<EntryState<Form>>({ form: first, problem: undefined });
  /** Forms that stand as they were left by a keeping which has still to end. */
  const untouched = new Set<Form>();
  return {
    state,
    take: (change) => state.update({ form: { ...state.get().form, ...change } }),
    async keep(begin) {
      const { form } = state.get();
      if (untouched.has(form)) return;
      let next: Form | undefined;
      try {
        const keeping = begin(form);
        // A form of its own, also where nothing changes: it is told by it that nothing was typed since.
        next = { ...keeping.next };
        untouched.add(next);
        state.set({ form: next, problem: undefined });
        await keeping.kept;
      } catch (error) {
        const now = state.get().form;
        const problem = error instanceof Error ? error.message : String(error);
        state.set({ form: now === next ? form : now, problem });
      } finally {
        if (next !== undefined) untouched.delete(next);
      }
    },
  };
}
