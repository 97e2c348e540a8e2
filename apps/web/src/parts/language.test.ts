import { makeLanguage } from '@becket/core';
import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { screenLanguage } from './language.tsx';

const text = 'See {link} for {count, plural, one {# pin} other {# pins}}.';

describe('sayNodes()', () => {
  it('puts pieces of a screen where the sentence of each language wants them', () => {
    const german = makeLanguage('de-DE', {
      [text]: 'Für {count, plural, one {# Wirbel} other {# Wirbel}} siehe {link}.',
    });
    const link = createElement('a', { href: '/x' }, 'the order');
    const drawn = (language = makeLanguage('en-GB')) => {
      const { sayNodes } = screenLanguage(language);
      return renderToStaticMarkup(createElement('p', null, sayNodes(text as never, { link, count: 2 })));
    };
    expect(drawn()).toBe('<p>See <a href="/x">the order</a> for 2 pins.</p>');
    expect(drawn(german)).toBe('<p>Für 2 Wirbel siehe <a href="/x">the order</a>.</p>');
  });
});
