import { type Language, type Message, message, noteName } from '@becket/core';
import type { AsFoundNote, Job, ReadingQuantityName } from '@becket/journal';
import { placeInWords } from '../every-paper/place-in-words.ts';
import { hasInnerLayer, type OrderNote, orderedQuantities } from './order-lines.ts';

/** Everything a maker of strings would have to ask: blanks, readings that contradict each other, remarks, and what this paper cannot say. */
export function toBeConfirmed(job: Job, lines: readonly OrderNote[], language: Language): string[] {
  return [
    ...blanks(lines, language),
    ...contradictions(lines, language),
    ...remarks(job, lines, language),
    ...makers(lines, language),
  ];
}

function blanks(lines: readonly OrderNote[], language: Language): string[] {
  const { say } = language;
  const items: string[] = [];
  const wanted = lines.filter(({ note }) => note.strings === undefined);
  if (wanted.length > 0)
    items.push(say('Number wanted: {notes} not said.', { notes: notesInWords(wanted, language) }));
  for (const [quantity, line] of orderedQuantities) {
    const asked = lines.filter(
      ({ note }) =>
        note.figures[quantity] === undefined && (quantity !== 'inner-layer-diameter' || hasInnerLayer(note)),
    );
    const parts = (['not read', 'unknown'] as const).flatMap((why) => {
      const own = asked.filter(({ note }) => reasonOf(note, quantity) === why);
      if (own.length === 0) return [];
      const notes = notesInWords(own, language);
      return why === 'unknown'
        ? say('{notes} unknown (somebody looked and could not read it)', { notes })
        : say('{notes} not read', { notes });
    });
    if (parts.length > 0) items.push(say(line, { notes: parts.join('; ') }));
  }
  return items;
}

const reasonOf = (note: AsFoundNote, quantity: ReadingQuantityName) => note.absences[quantity] ?? 'not read';

function contradictions(lines: readonly OrderNote[], { say }: Language): string[] {
  return lines.flatMap(({ note }) =>
    note.contradiction === undefined
      ? []
      : [
          say('{note}: {contradiction}. Measure it again.', {
            note: note.note,
            contradiction: say(note.contradiction),
          }),
        ],
  );
}

/** What was remarked of a wound note when it was read: a replaced string is no pattern for a new one. */
function remarks({ observations }: Job, lines: readonly OrderNote[], language: Language): string[] {
  return lines.flatMap(({ note }) =>
    observations.flatMap(({ thing, place, answer }) =>
      thing === 'remarks' && place.key === note.key && answer.is === 'known'
        ? [
            language.say('{place}: it was remarked “{text}”.', {
              place: placeInWords(place, language),
              text: answer.text,
            }),
          ]
        : [],
    ),
  );
}

/** What the record cannot say yet, or has not said. Common practice of ordering, no source. */
function makers(lines: readonly OrderNote[], language: Language): string[] {
  const { say } = language;
  const lacking = (is: (line: OrderNote) => boolean, line: Message): string[] => {
    const own = lines.filter(is);
    return own.length === 0 ? [] : [say(line, { notes: notesInWords(own, language) })];
  };
  return [
    ...lacking(
      ({ winding }) => (winding?.loopStyle ?? 'unknown') === 'unknown',
      message('Loop style not stated: {notes}.'),
    ),
    ...lacking(
      ({ winding }) => (winding?.twist ?? 'unknown') === 'unknown',
      message('Direction of the winding not stated: {notes}.'),
    ),
    ...lacking(
      ({ note }) => note.figures['hitch-pin-diameter'] === undefined,
      message('Hitch pin diameter not stated: {notes}.'),
    ),
    say('Core round or hexagonal, and whether its ends are flattened under the winding: not stated.'),
    say('Winding wire: copper is assumed; say if it is bare or plated, or of another metal.'),
    ...lacking(
      ({ note }) => note.figures['front-length'] === undefined,
      message(
        'Length of core wire beyond the front termination not stated, as the front length was not read: {notes}.',
      ),
    ),
  ];
}

/** 'A0 to C1, D#1': runs of neighbouring keys drawn together. */
export function notesInWords(
  lines: readonly { readonly note: { readonly key: number } }[],
  { say }: Language,
): string {
  const keys = lines.map(({ note }) => note.key);
  const runs: [number, number][] = [];
  for (const key of keys) {
    const run = runs.at(-1);
    if (run !== undefined && key === run[1] + 1) run[1] = key;
    else runs.push([key, key]);
  }
  return runs
    .map(([from, to]) =>
      from === to ? noteName(from) : say('{first} to {last}', { first: noteName(from), last: noteName(to) }),
    )
    .join(', ');
}
