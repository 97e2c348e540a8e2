import { english, type Language } from '@becket/core';
import { type Entry, parseEntry } from '../entry.ts';

/** A line of a journal file that could not be read, kept as it was found. */
export interface UnreadLine {
  readonly line: number;
  readonly text: string;
  readonly problem: string;
}

/** A job as a file: JSON Lines, one entry a line, the file ending in a newline. */
export function writeJournalLines(entries: Iterable<Entry>): string {
  let text = '';
  for (const entry of entries) text += `${JSON.stringify(entry)}\n`;
  return text;
}

/**
 * Entries from the text of a journal file, and the lines that could not be read.
 *
 * A file cut in the middle of its last line (power gone, card pulled out) gives every whole entry and one unread line;
 * the caller decides what to do and must not write over the file.
 */
export function readJournalLines(
  text: string,
  language: Language = english,
): { entries: Entry[]; unread: UnreadLine[] } {
  const entries: Entry[] = [];
  const unread: UnreadLine[] = [];
  const lines = text.replace(/^\uFEFF/, '').split('\n');
  const last = lines.length - 1;
  lines.forEach((raw, index) => {
    const line = raw.trim();
    if (line === '') return;
    const isCut = index === last && !text.endsWith('\n');
    try {
      entries.push(parseEntry(JSON.parse(line), language));
    } catch (error) {
      const problem = isCut
        ? language.say(
            'Line {line} is cut off: the file ends in the middle of an entry. The {whole} whole entries before it were read.',
            { line: index + 1, whole: entries.length },
          )
        : language.say('Line {line} is not an entry: {problem}', {
            line: index + 1,
            problem: error instanceof Error ? error.message : String(error),
          });
      unread.push({ line: index + 1, text: raw, problem });
    }
  });
  return { entries, unread };
}
