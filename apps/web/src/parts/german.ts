import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  'Opening …': 'Wird geöffnet …',
  Pages: 'Seiten',
  'Page {number} of {count}': 'Seite {number} von {count}',
};
