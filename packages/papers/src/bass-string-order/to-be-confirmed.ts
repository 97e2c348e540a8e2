import { type Language, noteName } from '@becket/core';
import type { AsFoundNote, Job, ReadingQuantityName } from '@becket/journal';
import { placeInWords } from '../every-paper/place-in-words.ts';
import { hasInnerLayer, type OrderNote, orderedQuantities } from './order-lines.ts';

/** Everything a maker of strings would have to ask: blanks, readings that contradict each other, remarks, and what this paper cannot say. */
export function toBeConfirmed(job: Job, lines: readonly OrderNote[], language: Language): string[] {
  return [...blanks(lines), ...contradictions(lines), ...remarks(job, lines, language), ...makers(lines)];
}

function blanks(lines: readonly OrderNote[]): string[] {
  const items: string[] = [];
  const wanted = lines.filter(({ note }) => note.strings === undefined);
  if (wanted.length > 0) items.push(`Number wanted: ${notesInWords(wanted)} not said.`);
  for (const [quantity, name] of orderedQuantities) {
    const asked = lines.filter(
      ({ note }) =>
        note.figures[quantity] === undefined && (quantity !== 'inner-layer-diameter' || hasInnerLayer(note)),
    );
    const parts = (['not read', 'unknown'] as const).flatMap((why) => {
      const own = asked.filter(({ note }) => reasonOf(note, quantity) === why);
      const words = why === 'unknown' ? 'unknown (somebody looked and could not read it)' : 'not read';
      return own.length === 0 ? [] : [`${notesInWords(own)} ${words}`];
    });
    if (parts.length > 0) items.push(`${capitalised(name)}: ${parts.join('; ')}.`);
  }
  return items;
}

const reasonOf = (note: AsFoundNote, quantity: ReadingQuantityName) => note.absences[quantity] ?? 'not read';

function contradictions(lines: readonly OrderNote[]): string[] {
  return lines.flatMap(({ note }) =>
    note.contradiction === undefined ? [] : [`${note.note}: ${note.contradiction}. Measure it again.`],
  );
}

/** What was remarked of a wound note when it was read: a replaced string is no pattern for a new one. */
function remarks({ observations }: Job, lines: readonly OrderNote[], language: Language): string[] {
  return lines.flatMap(({ note }) =>
    observations.flatMap(({ thing, place, answer }) =>
      thing === 'remarks' && place.key === note.key && answer.is === 'known'
        ? [`${placeInWords(place, language)}: it was remarked “${answer.text}”.`]
        : [],
    ),
  );
}

/** What the record cannot say yet, or has not said. Common practice of ordering, no source. */
function makers(lines: readonly OrderNote[]): string[] {
  const lacking = (is: (line: OrderNote) => boolean, words: string): string[] => {
    const own = lines.filter(is);
    return own.length === 0 ? [] : [`${words}: ${notesInWords(own)}.`];
  };
  return [
    ...lacking(({ winding }) => (winding?.loopStyle ?? 'unknown') === 'unknown', 'Loop style not stated'),
    ...lacking(
      ({ winding }) => (winding?.twist ?? 'unknown') === 'unknown',
      'Direction of the winding not stated',
    ),
    ...lacking(
      ({ note }) => note.figures['hitch-pin-diameter'] === undefined,
      'Hitch pin diameter not stated',
    ),
    'Core round or hexagonal, and whether its ends are flattened under the winding: not stated.',
    'Winding wire: copper is assumed; say if it is bare or plated, or of another metal.',
    ...lacking(
      ({ note }) => note.figures['front-length'] === undefined,
      'Length of core wire beyond the front termination not stated, as the front length was not read',
    ),
  ];
}

/** 'A0 to C1, D#1': runs of neighbouring keys drawn together. */
export function notesInWords(lines: readonly { readonly note: { readonly key: number } }[]): string {
  const keys = lines.map(({ note }) => note.key);
  const runs: [number, number][] = [];
  for (const key of keys) {
    const run = runs.at(-1);
    if (run !== undefined && key === run[1] + 1) run[1] = key;
    else runs.push([key, key]);
  }
  return runs
    .map(([from, to]) => (from === to ? noteName(from) : `${noteName(from)} to ${noteName(to)}`))
    .join(', ');
}

const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
