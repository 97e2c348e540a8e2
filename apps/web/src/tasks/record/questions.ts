import type { AsFoundRecord, Job, ReadingQuantityName } from '@becket/journal';

/** A doubt about a value, beside its cell. It blocks nothing. */
export interface Question {
  readonly quantity: ReadingQuantityName;
  readonly sentence: string;
}

/** The values in question, by key. */
export function questionsOf(_job: Job, _record: AsFoundRecord): ReadonlyMap<number, readonly Question[]> {
  return new Map();
}
