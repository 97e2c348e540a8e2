import type { Ulid } from '@becket/journal';
import { type Cursor, CursorNotKnown } from './port.ts';

/** The entry that arrived as number `arrival` of its job, counted from 1. */
export interface ArrivalAt {
  readonly arrival: number;
  readonly id: Ulid;
}

const beginning = '0';

/** The cursor after this entry; the cursor of the beginning without one. */
export function writeCursor(last: ArrivalAt | undefined): Cursor {
  return last === undefined ? beginning : `${last.arrival}.${last.id}`;
}

/** What a cursor says; undefined at the beginning. Throws CursorNotKnown when it is not a cursor at all. */
export function readCursor(cursor: Cursor | undefined): ArrivalAt | undefined {
  if (cursor === undefined || cursor === beginning) return undefined;
  const parts = /^([1-9]\d{0,14})\.([0-9A-Z]{26})$/.exec(cursor);
  if (parts === null) throw new CursorNotKnown(cursor);
  return { arrival: Number(parts[1]), id: parts[2]! };
}
