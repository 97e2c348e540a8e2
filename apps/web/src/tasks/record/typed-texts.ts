import type { Ulid } from '@becket/journal';
import { type Observable, observable } from '../../parts/observable.ts';
import type { CellPlace } from './grid.ts';

/** What was typed into a cell, and its row does not show yet. */
export interface TypedText {
  readonly text: string;
  /** 'being kept' until its row is drawn with it; 'refused' until it is typed anew or let go. */
  readonly is: 'being kept' | 'refused';
  /** What keeps it, once the journal has it. */
  readonly entries?: readonly Ulid[];
}

export interface TypedTexts {
  /** The text of one cell; undefined where its row says all there is. */
  at(place: CellPlace): Observable<TypedText | undefined>;
  /** What was kept gives way to its row once that is drawn with these entries. */
  giveWayTo(entries: readonly { readonly id: Ulid }[]): void;
}

/** The texts between the key and the row that is drawn anew: a cell shows what was typed into it from the key on. */
export function typedTexts(): TypedTexts {
  const cells = new Map<string, Observable<TypedText | undefined>>();
  return {
    at({ key, quantity }) {
      const name = `${key} ${quantity}`;
      const known = cells.get(name);
      if (known !== undefined) return known;
      const fresh = observable<TypedText | undefined>(undefined);
      cells.set(name, fresh);
      return fresh;
    },
    giveWayTo(entries) {
      for (const cell of cells.values()) {
        const last = cell.get()?.entries?.at(-1);
        if (last !== undefined && entries.findLast(({ id }) => id === last) !== undefined)
          cell.set(undefined);
      }
    },
  };
}

/**
 * Whether what stands in the field has to be kept when its cell is left. `shown` is what the row shows, which may be a
 * moment behind the journal: what is being kept goes before it.
 */
export function isToBeKept(text: string, typed: TypedText | undefined, shown: string): boolean {
  return text.trim() !== (typed?.is === 'being kept' ? typed.text.trim() : shown);
}
