import { english } from '@becket/core';
import { foldJob, stripCheck } from '@becket/journal';
import { describe, expect, it } from 'vitest';
import { germanOptions } from '../testing/german-options.ts';
import { smallJob, smallJournal } from '../testing/small-job.ts';
import { gapName } from './gap-name.ts';

const names = [
  ...stripCheck(smallJob()).gaps,
  // Nothing but sections and unisons: every reading and every thing of a section is a gap.
  ...stripCheck(
    foldJob(
      smallJournal().filter(
        ({ fact }) => /^job-opened$|-described$/.test(fact.kind) && fact.kind !== 'winding-described',
      ),
    ),
  ).gaps,
  ...stripCheck(foldJob(smallJournal().slice(0, 1))).gaps,
].map(({ name }) => name);

describe('gapName()', () => {
  it('is the name that the journal keeps, in English', () => {
    expect(names.length).toBeGreaterThan(60);
    for (const name of names) expect(gapName(name, english)).toBe(name);
  });

  it('says what every gap of a piano is of in German, and and where unless it is a note or a section', () => {
    for (const name of names) {
      const german = gapName(name, germanOptions.language);
      expect(german, name).not.toBe(name);
      expect(german.split('/').slice(1).join('/')).toBe(
        name
          .split('/')
          .slice(1)
          .join('/')
          .replace('no section', 'ohne Abschnitt')
          .replace(/^piano$/, 'Instrument'),
      );
    }
    expect(gapName('over-all-diameter/A2', germanOptions.language)).toBe('Außendurchmesser/A2');
  });

  it('leaves a name that a later program gave', () => {
    expect(gapName('aura/A2', germanOptions.language)).toBe('aura/A2');
  });
});
