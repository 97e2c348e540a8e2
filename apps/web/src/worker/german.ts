import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  'Could not save the job as a file: this browser ran out of memory for it, or did not load the part of the program that does it. Nothing was changed; close other tabs, load this page again and try once more.':
    'Der Auftrag ließ sich nicht als Datei sichern: Diesem Browser fehlt der Speicherplatz dafür, oder er hat den Programmteil dafür nicht geladen. Nichts wurde geändert; andere Tabs schließen, diese Seite neu laden und noch einmal versuchen.',
  'Could not make this paper: this browser ran out of memory for it, or has not loaded the part of the program that does it yet. Nothing was changed; close other tabs, load this page again where the server can be reached, and try once more.':
    'Dieses Papier ließ sich nicht erstellen: Diesem Browser fehlt der Speicherplatz dafür, oder er hat den Programmteil dafür noch nicht geladen. Nichts wurde geändert; andere Tabs schließen, diese Seite neu laden, wo der Server erreichbar ist, und noch einmal versuchen.',
};
