import type { AsFoundNote } from '@becket/journal';

/** The wound strings of a piano, as an order lists them, and what still keeps it from being sent. */
export interface BassStrings {
  readonly notes: readonly AsFoundNote[];
  readonly strings: number;
  readonly incomplete: readonly AsFoundNote[];
}

/** The notes that are strung with wound strings. A note whose stringing nobody described may be one too, and is not hidden. */
export function bassStrings(notes: readonly AsFoundNote[]): BassStrings {
  const wound = notes.filter(({ winding }) => winding === 'wound');
  return {
    notes: wound,
    strings: wound.reduce((sum, { strings }) => sum + (strings ?? 0), 0),
    incomplete: wound.filter(({ string }) => string === undefined),
  };
}
