import type { Catalogue } from '@becket/core';

/** The messages of this folder in German. */
export const german: Catalogue = {
  'Cannot bring in {file}: {problem}': '{file} lässt sich nicht einlesen: {problem}',
  '{count} more cells cannot be read either.': '{count} weitere Zellen sind ebenso wenig lesbar.',
  'Nothing was brought in; correct each cell, or leave it out with a reason.':
    'Nichts wurde übernommen; jede Zelle berichtigen oder mit Grund weglassen.',
  'Cannot bring in {file} again: the same file was brought in on {at} by {by}. To replace its readings, withdraw them first; to add readings, bring in a file that holds only the new ones.':
    '{file} lässt sich nicht noch einmal einlesen: Dieselbe Datei wurde am {at} von {by} eingelesen. Um ihre Messwerte zu ersetzen, diese zuerst zurücknehmen; um Messwerte zu ergänzen, eine Datei nur mit den neuen übernehmen.',
  'Cannot read {source} as a mapping of columns: {problem}. Start from a mapping that was suggested.':
    '{source} ist als Zuordnung der Spalten nicht lesbar: {problem}. Von einer vorgeschlagenen Zuordnung ausgehen.',
  'Cannot read {source} as changes of cells: a list of {fields} is needed, but {problem}.':
    '{source} ist als Änderung von Zellen nicht lesbar: Eine Liste aus {fields} ist nötig, aber {problem}.',
  'Cannot bring in {file} as the piano is not described: its lowest and highest note are needed first. Describe the piano, then bring the file in.':
    '{file} lässt sich nicht einlesen, das Instrument ist nicht beschrieben: Zuerst sind tiefster und höchster Ton nötig. Das Instrument beschreiben, dann die Datei übernehmen.',
  'Cannot bring in {file} with this mapping: a meaning for each of its {columns} columns is needed, {found} were found. Map the columns of this file.':
    '{file} lässt sich mit dieser Zuordnung nicht einlesen: Für jede der {columns} Spalten ist eine Bedeutung nötig, {found} wurden gefunden. Die Spalten dieser Datei zuordnen.',
  'Cannot bring in {file}: a column with the notes is needed, {count, plural, =0 {none is} other {# are}} mapped. Say which one column holds the notes.':
    '{file} lässt sich nicht einlesen: Eine Spalte mit den Tönen ist nötig, zugeordnet {count, plural, =0 {ist keine} other {sind #}}. Sagen, welche eine Spalte die Töne enthält.',
  'Cannot bring in {file} with this mapping: a {quantity} needs its span and whether the board was loaded, a column holds neither. Leave that column out, and enter those readings one by one.':
    '{file} lässt sich mit dieser Zuordnung nicht einlesen ({quantity}): Nötig sind die Spanne und ob der Resonanzboden unter Last war, eine Spalte enthält beides nicht. Die Spalte weglassen und diese Messwerte einzeln eintragen.',
  "Cannot bring in {file} with this mapping: a {quantity} is read in {units}, '{found}' was found. Correct the unit of that column.":
    '{file} lässt sich mit dieser Zuordnung nicht einlesen ({quantity}): Gemessen wird in {units}, gefunden wurde „{found}“. Die Einheit der Spalte berichtigen.',
  'row {row}, column {column}': 'Zeile {row}, Spalte {column}',
  'Cannot change the cell in {cell}: {file} has no such cell. Take row and column from its list of problems.':
    'Die Zelle in {cell} lässt sich nicht ändern: {file} hat sie nicht. Zeile und Spalte aus der Liste der Probleme nehmen.',
  'Cannot change the cell in {cell} twice: one change of a cell is needed.':
    'Die Zelle in {cell} lässt sich nicht zweimal ändern: Je Zelle ist eine Änderung nötig.',
  'Cannot change the cell in {cell} without a reason: say why it is corrected or left out.':
    'Die Zelle in {cell} lässt sich nicht ohne Grund ändern: Sagen, warum sie berichtigt oder weggelassen wird.',
  'column {number}': 'Spalte {number}',
  "Row {row}, column '{column}': {expected} is needed, '{found}' was found.":
    'Zeile {row}, Spalte „{column}“: nötig ist {expected}, gefunden wurde „{found}“.',
  "Row {row}, column '{column}': {expected} is needed, '{found}' was found ({hint}).":
    'Zeile {row}, Spalte „{column}“: nötig ist {expected}, gefunden wurde „{found}“ ({hint}).',
  'Was {suggestion} meant?': 'War {suggestion} gemeint?',
  'a number of strings from 1 to 3': 'eine Anzahl von 1 bis 3 Saiten',
  "'plain' or 'wound'": '„blank“ oder „umsponnen“',
  'a number of layers from 0 to 2': 'eine Anzahl von 0 bis 2 Lagen',
  'a note from {first} to {last}, or a key number from {firstKey} to {lastKey},':
    'ein Ton von {first} bis {last} oder eine Tastennummer von {firstKey} bis {lastKey}',
  '{article, select, an {an} other {a}} {quantity} from {low} to {high} {unit}':
    '{quantity} von {low} bis {high} {unit}{article, select, other {}}',
  '{cell} would fit in {unit}': '{cell} würde in {unit} passen',
  'sections that do not overlap': 'Abschnitte, die sich nicht überschneiden',
  '{note} is in no section; say in which, or leave it so.':
    '{note} liegt in keinem Abschnitt; sagen, in welchem, oder so lassen.',
  'the section that {note} belongs to': 'der Abschnitt, zu dem {note} gehört',
  "the same as in the other rows of section '{section}', '{first}',":
    'dasselbe wie in den anderen Zeilen des Abschnitts „{section}“, „{first}“',
  '0 layers of a plain string': '0 Lagen bei einer blanken Saite',
  '1 or 2 layers of a wound string': '1 oder 2 Lagen bei einer umsponnenen Saite',
  '{strings} {kind, select, wound {wound with {layers} layers} other {plain}}':
    '{strings} {kind, select, wound {umsponnen, Lagen: {layers}} other {blank}}',
  'the stringing of {note} as in row {row}, {stringing},':
    'der Bezug von {note} wie in Zeile {row}, {stringing}',
  'the number of strings is said of {notes}, but nothing tells plain from wound; how they are strung is not brought in.':
    'Die Zahl der Saiten ist genannt für {notes}, aber nichts sagt, ob blank oder umsponnen; ihr Bezug wird nicht übernommen.',
  'plain or wound is said of {notes}, but nothing tells how many strings there are; how they are strung is not brought in.':
    'Blank oder umsponnen ist genannt für {notes}, aber nichts sagt, wie viele Saiten es sind; ihr Bezug wird nicht übernommen.',
  "Row {row}, column '{column}': {doubt}": 'Zeile {row}, Spalte „{column}“: {doubt}',
  'The file is not UTF-8; it was read as Windows-1252 (Latin-1). Look at words with accents before you go on.':
    'Die Datei ist nicht in UTF-8; sie wurde als Windows-1252 (Latin-1) gelesen. Vor dem Weitermachen Wörter mit Umlauten ansehen.',
  'Cannot read {file}: up to {most} rows are needed, more were found. Export only the sheet with the readings and try again.':
    '{file} ist nicht lesbar: Höchstens {most} Zeilen sind zulässig, mehr wurden gefunden. Nur das Blatt mit den Messwerten ausgeben und noch einmal versuchen.',
  'Cannot read {file} as a table: a quotation mark that opens a cell has to close it, one in row {row} does not. Mend that row, or export the sheet as CSV again.':
    '{file} ist als Tabelle nicht lesbar: Ein Anführungszeichen, das eine Zelle öffnet, muss sie schließen, in Zeile {row} fehlt es. Die Zeile ausbessern oder das Blatt noch einmal als CSV ausgeben.',
  'Cannot read {file} as a table: a row of column names and at least one row of readings are needed, {count} filled rows were found. Export the sheet as CSV and try again.':
    '{file} ist als Tabelle nicht lesbar: Eine Zeile mit Spaltennamen und mindestens eine mit Messwerten sind nötig, gefüllte Zeilen: {count}. Das Blatt als CSV ausgeben und noch einmal versuchen.',
  'Cannot read {file} as a table: at least two columns are needed, one was found. Check that the cells are separated by commas, semicolons or tabs.':
    '{file} ist als Tabelle nicht lesbar: Mindestens zwei Spalten sind nötig, eine wurde gefunden. Prüfen, ob die Zellen durch Komma, Semikolon oder Tabulator getrennt sind.',
  'The column names were taken from row {row}; the rows above it were left out.':
    'Die Spaltennamen stammen aus Zeile {row}; die Zeilen darüber sind weggelassen.',
  'Cannot read {file}: up to {most} columns are needed, {count} were found. Export only the columns with the readings and try again.':
    '{file} ist nicht lesbar: Höchstens {most} Spalten sind zulässig, {count} wurden gefunden. Nur die Spalten mit den Messwerten ausgeben und noch einmal versuchen.',
  'Numbers were read with a decimal comma.': 'Zahlen wurden mit Dezimalkomma gelesen.',
  'Cannot read {file}: a file of up to {most} MB is needed, {found} MB were found. Export only the sheet with the readings and try again.':
    '{file} ist nicht lesbar: Höchstens {most} MB sind zulässig, {found} MB wurden gefunden. Nur das Blatt mit den Messwerten ausgeben und noch einmal versuchen.',
  'Cannot read {file}: a table is needed, an empty file was found.':
    '{file} ist nicht lesbar: Eine Tabelle ist nötig, die Datei ist leer.',
  'Cannot read {file} as a table: a text file (CSV) is needed, {kind, select, spreadsheet {a spreadsheet or zip} other {a binary file}} was found. In the spreadsheet, choose "save as CSV" and bring that file in.':
    '{file} ist als Tabelle nicht lesbar: Eine Textdatei (CSV) ist nötig, gefunden wurde {kind, select, spreadsheet {eine Tabellenkalkulation oder ein Zip} other {eine Binärdatei}}. In der Tabellenkalkulation „als CSV speichern“ wählen und diese Datei übernehmen.',
};
