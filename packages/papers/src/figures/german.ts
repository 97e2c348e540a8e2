import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  '{rest} min': '{rest} min',
  '{hours} h': '{hours} h',
  '{hours} h {rest} min': '{hours} h {rest} min',
  '[mark of a reading] s': 's',
  '[mark of a reading] c': 'c',
  '[mark of a reading] i': 'i',
  'Figures are measured, except: s stamped on the piano, c copied from paper, i inferred.':
    'Die Zahlen sind gemessen, außer: s auf dem Instrument eingeschlagen, c von Papier abgeschrieben, i erschlossen.',
  'not read': 'nicht gemessen',
  unknown: 'unbekannt',
  none: 'keine',
  'does not apply': 'trifft nicht zu',
};
