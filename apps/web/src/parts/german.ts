import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  'Papers can be made and looked at without a network.':
    'Papiere lassen sich ohne Netz erstellen und ansehen.',
  'Papers need the network until {size} MB more are on this device; they come by themselves.':
    'Papiere brauchen das Netz, bis noch {size} MB auf diesem Gerät sind; sie kommen von selbst.',
  'Papers need the network: the program is not kept on this device yet.':
    'Papiere brauchen das Netz: Das Programm ist noch nicht auf diesem Gerät gespeichert.',
  'Opening …': 'Wird geöffnet …',
  Pages: 'Seiten',
  'Page {number} of {count}': 'Seite {number} von {count}',
  Close: 'Schließen',
  "Cannot read '{text}' as a number: one such as 1.025, 1,025, 0.0405 in or 15 3/8 in is needed. Type it again.":
    '„{text}“ lässt sich nicht als Zahl lesen: Gebraucht wird eine wie 1,025, 1.025, 0,0405 in oder 15 3/8 in. Geben Sie sie noch einmal ein.',
};
