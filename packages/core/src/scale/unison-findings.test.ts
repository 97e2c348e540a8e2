import { describe, expect, it } from 'vitest';
import type { PlainString } from '../strings/index.ts';
import { metres } from '../units/index.ts';
import { beyond, findings, grand, lenient, ofRule } from './testing/findings-of.ts';
import { changed } from './testing/invented-grand.ts';

describe('what is told of unisons', () => {
  it('finds strings of one unison that pull unevenly', () => {
    const string = grand[48]!.string as PlainString;
    const notes = changed(grand, (note) =>
      note.key === 49
        ? { individualStrings: [string, { ...string, diameter: metres(string.diameter * 1.02) }, string] }
        : undefined,
    );
    const [finding] = ofRule(beyond(notes, lenient), 'uneven tension within a unison');
    expect(finding!.keys).toEqual([49]);
    expect(finding!.figure).toBeCloseTo(1.02 ** 2 - 1, 9);
  });

  it('questions a note with fewer strings than the one below', () => {
    const notes = changed(grand, (note) => (note.key === 30 ? { strings: 2 } : undefined));
    const [finding] = ofRule(findings(notes, lenient), 'fewer strings than the note below');
    expect(finding).toMatchObject({ keys: [29, 30], figure: 2, weight: 'for information' });
  });
});
