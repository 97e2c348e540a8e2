import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  'Opening …': 'Wird geöffnet …',
  Pages: 'Seiten',
  'Page {number} of {count}': 'Seite {number} von {count}',
  Close: 'Schließen',
  "Cannot read '{text}' as a number: one such as 1.025, 1,025, 0.0405 in or 15 3/8 in is needed. Type it again.":
    '„{text}“ lässt sich nicht als Zahl lesen: Gebraucht wird eine wie 1,025, 1.025, 0,0405 in oder 15 3/8 in. Geben Sie sie noch einmal ein.',
};
