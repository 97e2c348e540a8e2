import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  'The piano is not described yet: its lowest and highest note are needed before a table can be read. {link}':
    'Das Instrument ist noch nicht beschrieben: Bevor eine Tabelle gelesen werden kann, werden sein tiefster und sein höchster Ton gebraucht. {link}',
  'Describe it in Appraise.': 'Unter „Begutachten“ beschreiben.',
  'Bring in a table of readings': 'Tabelle mit Messwerten einlesen',
  'A CSV file from your own spreadsheet: a row a note, columns in any order, inches or millimetres, a point or a comma. Nothing goes into the job before you say so, and then all of it or nothing.':
    'Eine CSV-Datei aus Ihrer eigenen Tabelle: eine Zeile je Ton, Spalten in beliebiger Reihenfolge, Zoll oder Millimeter, Punkt oder Komma. Nichts kommt in den Auftrag, bevor Sie zustimmen, und dann alles oder nichts.',
  'Choose a CSV file': 'CSV-Datei auswählen',
  'See the readings.': 'Zu den Messwerten.',
  'read as {encoding}, decimal mark “{decimalMark}”':
    'gelesen als {encoding}, Dezimalzeichen „{decimalMark}“',
  Columns: 'Spalten',
  'What each column means. This is a suggestion; correct it where it is wrong.':
    'Was jede Spalte bedeutet. Dies ist ein Vorschlag; berichtigen Sie ihn, wo er falsch ist.',
  column: 'Spalte',
  'its first cells': 'ihre ersten Zellen',
  means: 'bedeutet',
  'Cells that cannot be read': 'Zellen, die sich nicht lesen lassen',
  'Every cell can be read.': 'Jede Zelle lässt sich lesen.',
  'Cells in question': 'Fragliche Zellen',
  'No value is in question.': 'Kein Wert ist fraglich.',
  'Changed cells': 'Geänderte Zellen',
  'Changed on the way in; what was found and the reason are kept with the job.':
    'Beim Einlesen geändert; was gefunden wurde und der Grund bleiben beim Auftrag gespeichert.',
  row: 'Zeile',
  becomes: 'wird',
  'take back': 'zurücknehmen',
  'Bring in {readings} readings': '{readings} Messwerte einlesen',
  'Unit of column {name}': 'Einheit der Spalte {name}',
  'thousandths of an inch': 'Tausendstel Zoll',
  'Use instead': 'Stattdessen nehmen',
  'Use instead in {name}': 'Stattdessen nehmen in {name}',
  'Reason for {name}': 'Grund für {name}',
  'Correct {name}': '{name} berichtigen',
  Correct: 'Berichtigen',
  bridge: 'Steg',
  'front termination': 'vordere Auflage',
  size: 'Stärke',
  '{readings} readings of {notes} notes were brought in from {file}.':
    '{readings} Messwerte von {notes} Tönen wurden aus {file} eingelesen.',
  '{file}: {rows} rows, {columns} columns': '{file}: {rows} Zeilen, {columns} Spalten',
  '[a unit] in': 'in',
  'Meaning of column {name}': 'Bedeutung der Spalte {name}',
  'Nothing is brought in while one is left: correct it, or leave it out.':
    'Solange eine bleibt, wird nichts eingelesen: Berichtigen Sie sie, oder lassen Sie sie weg.',
  'They may stay as they are.': 'Sie dürfen bleiben, wie sie sind.',
  '{notes} notes, {blank} blank cells{problems, plural, =0 {} one {; # cell stands in the way} other {; # cells stand in the way}}':
    '{notes} Töne, {blank} leere Zellen{problems, plural, =0 {} one {; # Zelle steht im Weg} other {; # Zellen stehen im Weg}}',
  '… and {count} more. When this many cannot be read, look at the meanings and units of the columns first.':
    '… und {count} weitere. Wenn so viele nicht zu lesen sind, sehen Sie zuerst Bedeutungen und Einheiten der Spalten durch.',
  'row {row}, {column}': 'Zeile {row}, {column}',
  'strings of the note': 'Saiten des Tons',
  'plain or wound': 'blank oder umsponnen',
  'layers of winding': 'Lagen der Umspinnung',
  'slip in the table': 'Versehen in der Tabelle',
  'cannot be right': 'kann nicht stimmen',
};
