import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  'Something went wrong inside Becket, and nothing was changed: {detail}. Load the page again; if it happens again, save the job as a file and report it.':
    'In Becket ging etwas schief, geändert wurde nichts: {detail}. Die Seite neu laden; wenn es wieder geschieht, den Auftrag als Datei speichern und melden.',
  'Cannot open the journals on this device: a later version of Becket wrote them. Load this page again to get that version.':
    'Die Journale auf diesem Gerät lassen sich nicht öffnen: Eine spätere Fassung von Becket hat sie geschrieben. Die Seite neu laden, um diese Fassung zu bekommen.',
  'Cannot keep anything on this device: the browser does not let this page store data. Leave private browsing, or allow site data for this address, and load again.':
    'Auf diesem Gerät lässt sich nichts speichern: Der Browser erlaubt dieser Seite keine Daten. Den privaten Modus verlassen oder Website-Daten für diese Adresse zulassen und neu laden.',
  'Cannot keep this on the device: its storage is full. Nothing was changed; free some space, or save the job as a file and remove other data, and try again.':
    'Dies lässt sich nicht auf dem Gerät speichern: Sein Speicher ist voll. Nichts wurde geändert; Platz schaffen oder den Auftrag als Datei speichern und andere Daten entfernen, dann noch einmal versuchen.',
  'Cannot keep this on the device: the browser refused to write. Nothing was changed; load the page again and repeat the last step.':
    'Dies lässt sich nicht auf dem Gerät speichern: Der Browser hat das Schreiben abgelehnt. Nichts wurde geändert; die Seite neu laden und den letzten Schritt wiederholen.',
  'Parts of {task}': 'Teile von {task}',
  Appraise: 'Begutachten',
  Record: 'Aufnehmen',
  Order: 'Bestellen',
  String: 'Beziehen',
  Settle: 'Setzen lassen',
  'Hand over': 'Übergeben',
};
