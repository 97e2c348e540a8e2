import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  'Parts of {task}': 'Teile von {task}',
  Appraise: 'Begutachten',
  Record: 'Aufnehmen',
  Scale: 'Mensur',
  Order: 'Bestellen',
  String: 'Beziehen',
  Settle: 'Setzen lassen',
  'Hand over': 'Übergeben',
};
