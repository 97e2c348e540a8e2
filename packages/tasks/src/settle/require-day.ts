import { english } from '@becket/core';
import type { TaskContext } from '../context.ts';

/** Throws: RangeError unless this is a day of the calendar, as year-month-day. */
export function requireDay({ language = english }: TaskContext, day: string): void {
  const isDay = /^\d{4}-\d{2}-\d{2}$/.test(day) && new Date(`${day}T00:00:00Z`).toJSON()?.startsWith(day);
  if (isDay) return;
  throw new RangeError(
    language.say(
      'Cannot keep this: a day is needed, written as year-month-day such as 2026-05-04, ‘{found}’ was found. Choose the day.',
      { found: day },
    ),
  );
}
