import { english } from '@becket/core';
import { describe, expect, it } from 'vitest';
import { fileNamePart, paperFileName } from './file-name.ts';
import { languageFor } from './language-for.ts';
import { paperNames } from './make-paper.ts';

const german = await languageFor('de-AT');

describe('the name of a paper’s file', () => {
  it('is the job and the name the paper is asked for by, in English', () => {
    for (const paper of paperNames)
      expect(paperFileName('A small grand', { paper, format: 'pdf', language: english })).toBe(
        `a-small-grand-${paper}.pdf`,
      );
  });

  it('says the paper in German, in letters every system takes', () => {
    const name = (paper: (typeof paperNames)[number], title = 'Flügel von Frau Groß') =>
      paperFileName(title, { paper, format: 'pdf', language: german });
    expect(name('as-found-record')).toBe('fluegel-von-frau-gross-bestandsaufnahme.pdf');
    expect(name('hand-over-record')).toBe('fluegel-von-frau-gross-uebergabeprotokoll.pdf');
    expect(name('estimate', '…')).toBe('auftrag-kostenvoranschlag.pdf');
    const all = paperNames.map((paper) => name(paper));
    expect(new Set(all).size).toBe(paperNames.length);
    for (const one of all) expect(one).toMatch(/^[a-z0-9-]+\.pdf$/);
  });

  it('ends in a letter or a digit however long the title is', () => {
    expect(fileNamePart(`${'a'.repeat(79)} grand`)).toBe('a'.repeat(79));
    expect(fileNamePart('—')).toBe('');
  });
});
