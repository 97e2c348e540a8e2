import type { Catalogue } from '@becket/core';
import { german as facts } from './facts/german.ts';
import { german as record } from './record/german.ts';
import { german as strip } from './strip/german.ts';

/** All messages of this package in German. */
export const german: Catalogue = {
  ...facts,
  ...record,
  ...strip,
  'Cannot read this entry: {problem}': 'Dieser Eintrag lässt sich nicht lesen: {problem}',
  "Cannot read the fact '{kind}' of entry {entry}: {problem}":
    'Die Angabe „{kind}“ des Eintrags {entry} lässt sich nicht lesen: {problem}',
  "Cannot keep this: a text of at most {most} characters is needed, one of {found} was found: '{start} …'. Shorten it.":
    'Das lässt sich nicht festhalten: Nötig ist ein Text von höchstens {most} Zeichen, gefunden wurde einer von {found}: „{start} …“. Den Text kürzen.',
  'Cannot keep this as it does not fit the record: {problem}. Correct it and try again.':
    'Das lässt sich nicht festhalten, weil es nicht in die Aufnahme passt: {problem}. Berichtigen und noch einmal versuchen.',
  'Line {line} is cut off: the file ends in the middle of an entry. The {whole} whole entries before it were read.':
    'Zeile {line} ist abgeschnitten: Die Datei endet mitten in einem Eintrag. Die {whole} vollständigen Einträge davor wurden gelesen.',
  'Cannot merge these journals: entry {entry} stands in both with different content. An entry never changes; keep both files and correct by a further entry.':
    'Diese Journale lassen sich nicht vereinen: Der Eintrag {entry} steht in beiden mit verschiedenem Inhalt. Ein Eintrag ändert sich nie; beide Dateien behalten und durch einen weiteren Eintrag berichtigen.',
  'Line {line} is not an entry: {problem}': 'Zeile {line} ist kein Eintrag: {problem}',
  'untitled job': 'Auftrag ohne Titel',
  'Cannot read this photo: a whole JPEG is needed, one that is damaged or cut off was found. Take the photo again.':
    'Dieses Foto lässt sich nicht lesen: Nötig ist ein vollständiges JPEG, gefunden wurde ein beschädigtes oder abgeschnittenes. Das Foto noch einmal aufnehmen.',
  'Cannot read this photo: a whole JPEG is needed, bytes of another kind were found. Take the photo again.':
    'Dieses Foto lässt sich nicht lesen: Nötig ist ein vollständiges JPEG, gefunden wurden Daten anderer Art. Das Foto noch einmal aufnehmen.',
};
