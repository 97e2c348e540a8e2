import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  'Something went wrong inside Becket, and nothing was changed: {detail}. Load the page again; if it happens again, save the job as a file and report it.':
    'In Becket ging etwas schief, geändert wurde nichts: {detail}. Die Seite neu laden; wenn es wieder geschieht, den Auftrag als Datei speichern und melden.',
  'Parts of {task}': 'Teile von {task}',
  Appraise: 'Begutachten',
  Record: 'Aufnehmen',
  Scale: 'Mensur',
  Order: 'Bestellen',
  String: 'Beziehen',
  Settle: 'Setzen lassen',
  'Hand over': 'Übergeben',
};
