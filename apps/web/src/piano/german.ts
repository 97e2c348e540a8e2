import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  // Papers
  Papers: 'Papiere',
  '{words} as a paper': '{words} als Papier',
  'Paper size': 'Papierformat',
  'Look at it': 'Ansehen',
  'Look at {words}': '{words} ansehen',
  '{words} is being made on this device …': '{words} wird auf diesem Gerät erstellt …',
  '{file} is among your downloads.': '{file} liegt bei Ihren Downloads.',
  'Stopped: {words} was not made.': 'Angehalten: {words} wurde nicht erstellt.',
  Stop: 'Anhalten',
  'Opening …': 'Wird geöffnet …',
  'The code to scan on a paper names the address of this page, {address}, which only this computer can open. Before you print a paper that others scan, open Becket by the address it has in the network of the shop.':
    'Der Code auf einem Papier nennt die Adresse dieser Seite, {address}, die nur dieser Rechner öffnen kann. Öffnen Sie Becket unter der Adresse, die es im Netz der Werkstatt hat, bevor Sie ein Papier drucken, das andere scannen.',
  // A paper over the whole screen
  '← Back': '← Zurück',
  'Open it to print': 'Zum Drucken öffnen',
  'Share it': 'Teilen',
  'Save it': 'Speichern',
  Smaller: 'Kleiner',
  Larger: 'Größer',
  'Cannot share {file} from here. Save it, and send it from your files.':
    '{file} lässt sich von hier nicht teilen. Speichern Sie es, und senden Sie es aus Ihren Dateien.',
  'This browser cannot show the pages here. Open it to print, or save it.':
    'Dieser Browser kann die Seiten hier nicht zeigen. Öffnen Sie das Papier zum Drucken, oder speichern Sie es.',
  'no note chosen': 'kein Ton gewählt',
  'Tap a point to see its string.': 'Tippen Sie auf einen Punkt, um seine Saite zu sehen.',
  '▲ see below': '▲ siehe unten',
  '{title} {axis}. Note': '{title} {axis}. Ton',
  note: 'Ton',
  '{woundMark} wound {plainMark} plain; whiskers show one standard uncertainty. {basis}':
    '{woundMark} umsponnen {plainMark} blank; die Striche zeigen eine Standardunsicherheit. {basis}',
  'Drawn plan of the strings: note': 'Gezeichneter Plan der Saiten: Ton',
  'The plan is drawn once the piano is described.':
    'Der Plan wird gezeichnet, sobald das Instrument beschrieben ist.',
  'Speaking lengths to scale, {known} of {all} read; spacing and slant are not measured.':
    'Klingende Längen maßstäblich, {known} von {all} gemessen; Abstand und Schräge sind nicht gemessen.',
  '{count, plural, one {# finding} other {# findings}} of the survey marked.':
    '{count, plural, one {# Befund} other {# Befunde}} der Durchsicht markiert.',
  'length not read yet': 'Länge noch nicht gemessen',
  Form: 'Bauform',
  'not known yet': 'noch nicht bekannt',
  'Length over the case': 'Länge über das Gehäuse',
  'Height over the case': 'Höhe über das Gehäuse',
  'mm; or 71 in, or 1.8 m; empty when not measured': 'mm; oder 71 in, oder 1,8 m; leer, wenn nicht gemessen',
  'Lowest note': 'Tiefster Ton',
  'Highest note': 'Höchster Ton',
  'Pitch of A4 the strings are meant for (Hz)': 'Tonhöhe von A4, für die die Saiten gedacht sind (Hz)',
  Maker: 'Hersteller',
  Model: 'Modell',
  'Year built': 'Baujahr',
  'The last note must lie above the first: {first} to {last} was found.':
    'Der letzte Ton muss über dem ersten liegen: Gefunden wurde {first} bis {last}.',
  "A pitch of A4 from 380 to 480 Hz is needed: '{found}' was found.":
    'Gebraucht wird eine Tonhöhe von A4 zwischen 380 und 480 Hz: Gefunden wurde „{found}“.',
  "A length of a grand or height of a vertical from 500 to 4000 mm is needed: '{found}' was found. Inches are read too: 71 in.":
    'Gebraucht wird die Länge eines Flügels oder die Höhe eines Klaviers von 500 bis 4000 mm: Gefunden wurde „{found}“. Auch Zoll werden gelesen: 71 in.',
  "A year from 1700 on is needed: '{found}' was found. Leave it empty when it is not known.":
    'Gebraucht wird ein Jahr ab 1700: Gefunden wurde „{found}“. Lassen Sie es leer, wenn es nicht bekannt ist.',
  'Save the job as a file': 'Auftrag als Datei sichern',
  'Stop saving': 'Sichern anhalten',
  'Reading the journal …': 'Journal wird gelesen …',
  'Reading photo {photo} of {photos} …': 'Foto {photo} von {photos} wird gelesen …',
  'Writing the file …': 'Datei wird geschrieben …',
  'Stopped: no file was saved, and the job is as it was.':
    'Angehalten: Es wurde keine Datei gesichert, und der Auftrag ist, wie er war.',
  '{entries, plural, one {1 entry} other {{entriesText} entries}} and {photos, plural, one {1 photo} other {{photosText} photos}}':
    '{entries, plural, one {1 Eintrag} other {{entriesText} Einträge}} und {photos, plural, one {1 Foto} other {{photosText} Fotos}}',
  '{fileName} is among your downloads: {held}.': '{fileName} liegt bei Ihren Downloads: {held}.',
  '▲ {fileName} is among your downloads, with {held}. {missing, plural, one {# photo is} other {# photos are}} not on this device, or damaged here; the file is without. Save the job again on the device that took them.':
    '▲ {fileName} liegt bei Ihren Downloads, mit {held}. {missing, plural, one {# Foto ist} other {# Fotos sind}} nicht auf diesem Gerät oder hier beschädigt; in der Datei fehlt das. Sichern Sie den Auftrag noch einmal auf dem Gerät, mit dem fotografiert wurde.',
  'String card': 'Saitenkarte',
  'Tap a string in the plan, or a note, to see what is known of it.':
    'Tippen Sie im Plan auf eine Saite oder auf einen Ton, um zu sehen, was davon bekannt ist.',
  'String card: {note}': 'Saitenkarte: {note}',
  'key {key}': 'Taste {key}',
  '▲ Not computed: {contradiction}.': '▲ Nicht berechnet: {contradiction}.',
  pitch: 'Tonhöhe',
  '{figure} Hz, equal temperament': '{figure} Hz, gleichstufig temperiert',
  'nothing to do': 'nichts zu tun',
  'stringing not described; {where}': 'Bezug nicht beschrieben; {where}',
  '{count, plural, one {# string} other {# strings}}, {kind}; {where}':
    '{count, plural, one {# Saite} other {# Saiten}}, {kind}; {where}',
  'not read yet': 'noch nicht gemessen',
  '{figure} (SI)': '{figure} (SI)',
  '= {tension}, each string; calculated': '= {tension}, je Saite; berechnet',
  'of the break load': 'der Bruchlast',
  '{table}, extended beyond its range': '{table}, über ihren Bereich hinaus verlängert',
  'wound twice': 'doppelt umsponnen',
  wound: 'umsponnen',
  '{count, plural, one {# reading} other {# readings}}':
    '{count, plural, one {# Messwert} other {# Messwerte}}',
  'break share': 'Anteil an der Bruchlast',
  inharmonicity: 'Inharmonizität',
};
