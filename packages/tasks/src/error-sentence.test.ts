import { StoreUnavailable } from '@becket/store';
import { describe, expect, it } from 'vitest';
import { JobNotFound } from './context.ts';
import { errorSentence, isForTheUser } from './error-sentence.ts';
import { languageFor } from './language-for.ts';

const thrown = (work: () => unknown): unknown => {
  try {
    return work();
  } catch (error) {
    return error;
  }
};

describe('isForTheUser()', () => {
  it('knows our refusals in every language', async () => {
    const german = await languageFor('de-DE');
    for (const error of [
      new JobNotFound('01J', german),
      new RangeError('Cannot keep this: a name is needed, nothing was found. Say it and try again.'),
      new SyntaxError('messwerte.csv ist nicht lesbar: Eine Tabelle ist nötig, die Datei ist leer.'),
    ])
      expect(isForTheUser(error)).toBe(true);
  });

  it('leaves the words of the engine alone', () => {
    for (const error of [
      thrown(() => new Array(-1)),
      thrown(() => JSON.parse('{"a": nothing}')),
      thrown(() => new Date(Number.NaN).toISOString()),
      thrown(() => (1.5).toFixed(101)),
      new TypeError('Cannot read properties of undefined.'),
      'a text',
    ])
      expect(isForTheUser(error)).toBe(false);
  });
});

describe('errorSentence()', () => {
  it('says in German what stands in the way of a store, which has no language of its own', async () => {
    const error = new StoreUnavailable('full', '/x', 'Cannot write to the store /x: there is no room left.');
    expect(errorSentence(error)).toBe(error.message);
    expect(errorSentence(error, await languageFor('de-DE'))).toMatch(/^In den Speicher lässt sich nicht/);
  });
});
