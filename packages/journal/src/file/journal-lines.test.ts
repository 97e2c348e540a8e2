import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arbitraryJournal, entryOf, wireReading } from '../testing/arbitrary-entries.ts';
import { readJournalLines, writeJournalLines } from './journal-lines.ts';

describe('a journal as a file', () => {
  it('comes back as it was written, unknown kinds among it', () => {
    fc.assert(
      fc.property(arbitraryJournal, (journal) => {
        const withUnknown = [
          ...journal,
          entryOf(999, 99, { kind: 'holograph', v: 3, deep: { a: [1, null] } } as never),
        ];
        expect(readJournalLines(writeJournalLines(withUnknown))).toEqual({
          entries: withUnknown,
          unread: [],
        });
      }),
    );
  });

  it('cut anywhere gives every whole entry and at most one unread line', () => {
    fc.assert(
      fc.property(arbitraryJournal, fc.nat(), (journal, cut) => {
        const text = writeJournalLines(journal);
        const part = text.slice(0, cut % text.length);
        const { entries, unread } = readJournalLines(part);
        const whole = part.split('\n').length - 1;
        // A last line that lacks only its newline is whole as well.
        expect(entries.length === whole || entries.length === whole + 1).toBe(true);
        expect(entries).toEqual(journal.slice(0, entries.length));
        expect(unread.length).toBeLessThanOrEqual(1);
        if (unread[0] !== undefined) expect(unread[0].problem).toContain('cut off');
      }),
    );
  });

  it('names the line and the field of a bad entry, keeps its text, and reads the rest', () => {
    const good = JSON.stringify(entryOf(1, 2, wireReading(40, 0.001)));
    const bad = good.replace('"key":40', '"key":140');
    const { entries, unread } = readJournalLines(`${good}\n${bad}\nnot json\n`);
    expect(entries).toHaveLength(1);
    expect(unread.map(({ line }) => line)).toEqual([2, 3]);
    expect(unread[0]?.problem).toContain('place.key');
    expect(unread[0]?.text).toBe(bad);
  });

  it('reads Windows line ends and a byte order mark', () => {
    const good = JSON.stringify(entryOf(1, 2, wireReading(40, 0.001)));
    expect(readJournalLines(`\uFEFF${good}\r\n`).entries).toHaveLength(1);
  });
});
