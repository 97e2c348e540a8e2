import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  Arrow: 'Pfeil',
  arrow: 'Pfeil',
  label: 'Beschriftung',
  distance: 'Abstand',
  undo: 'rückgängig gemacht',
  'Arrow: {text}': 'Pfeil: {text}',
  'Label: {text}': 'Beschriftung: {text}',
  'Distance: no length yet, since no distance on this photo is known':
    'Abstand: noch keine Länge, denn auf diesem Foto ist kein Abstand bekannt',
  'Distance: {both}, measured on the piano; the scale bar':
    'Abstand: {both}, am Instrument gemessen; der Maßstab',
  'Distance: {both} {uncertainty}, inferred from the scale bar':
    'Abstand: {both} {uncertainty}, aus dem Maßstab erschlossen',
  Label: 'Beschriftung',
  Distance: 'Abstand',
  Words: 'Text',
  'Length measured on the piano, in {unit}': 'Am Instrument gemessene Länge, in {unit}',
  'makes it the scale bar of this photo; left empty, its length follows from the scale bar':
    'macht ihn zum Maßstab dieses Fotos; leer gelassen folgt seine Länge aus dem Maßstab',
  'Keep the label': 'Beschriftung speichern',
  'Keep the distance': 'Abstand speichern',
  'Leave it': 'Lassen',
  'A label needs words.': 'Eine Beschriftung braucht Text.',
  'A length above 0 is needed, {found} was found. Type it again.':
    'Gebraucht wird eine Länge über 0, gefunden wurde {found}. Geben Sie sie noch einmal ein.',
  'The photo': 'Das Foto',
  'Drawing area. Arrow keys move a cross, Enter sets a point, Escape gives a stroke up.':
    'Zeichenfläche. Pfeiltasten bewegen ein Kreuz, Enter setzt einen Punkt, Escape verwirft einen Strich.',
  'Nothing can be drawn until the reason is given.':
    'Solange kein Grund genannt ist, lässt sich nichts zeichnen.',
  'Tap where the label belongs.': 'Tippen Sie dorthin, wo die Beschriftung hingehört.',
  'Draw from one end of the arrow to the other, the tip last.':
    'Ziehen Sie von einem Ende des Pfeils zum anderen, die Spitze zuletzt.',
  'Draw from one end of the distance to the other.': 'Ziehen Sie von einem Ende des Abstands zum anderen.',
  'By keys: the arrow keys move the cross (with Shift far, with Alt finely), Enter sets a point.':
    'Mit Tasten: Die Pfeiltasten bewegen das Kreuz (mit Umschalt weit, mit Alt fein), Enter setzt einen Punkt.',
  '{isBegun, select, yes {cross {left} from the left, {top} from the top, stroke begun} other {cross {left} from the left, {top} from the top}}':
    '{isBegun, select, yes {Kreuz {left} von links, {top} von oben, Strich begonnen} other {Kreuz {left} von links, {top} von oben}}',
  'Add a photo': 'Foto hinzufügen',
  'All photos': 'Alle Fotos',
  'the picture': 'das Bild',
  "Cannot take '{name}': a picture of at most {most} MB is needed, {found} MB were found. Take it with a lower resolution.":
    '„{name}“ lässt sich nicht nehmen: Gebraucht wird ein Bild von höchstens {most} MB, gefunden wurden {found} MB. Nehmen Sie es mit geringerer Auflösung auf.',
  "Cannot take '{name}': a picture that this browser can show is needed, such as a JPEG or PNG; this one is of another kind, damaged or cut off. Save it as a JPEG, or take it again.":
    '„{name}“ lässt sich nicht nehmen: Gebraucht wird ein Bild, das dieser Browser zeigen kann, etwa JPEG oder PNG; dieses ist von anderer Art, beschädigt oder abgeschnitten. Sichern Sie es als JPEG, oder nehmen Sie es noch einmal auf.',
  "Cannot take '{name}': this browser has no memory left. Close other tabs and try again.":
    '„{name}“ lässt sich nicht nehmen: Dieser Browser hat keinen Speicher mehr. Schließen Sie andere Tabs und versuchen Sie es noch einmal.',
  'Cannot take this picture: this browser cannot write a JPEG. Use another browser on this device.':
    'Dieses Bild lässt sich nicht nehmen: Dieser Browser kann kein JPEG schreiben. Nehmen Sie einen anderen Browser auf diesem Gerät.',
  "Cannot take '{name}': this browser ran out of memory for it. Close other tabs, or take it with a lower resolution.":
    '„{name}“ lässt sich nicht nehmen: Der Speicher dieses Browsers reichte dafür nicht. Schließen Sie andere Tabs, oder nehmen Sie es mit geringerer Auflösung auf.',
  'note {note}': 'Ton {note}',
  'note {note}, string {string}': 'Ton {note}, Saite {string}',
  'the piano as found': 'das Instrument wie vorgefunden',
  'the new work': 'die neue Arbeit',
  'What the photo shows': 'Was das Foto zeigt',
  '{count, plural, one {# mark} other {# marks}}':
    '{count, plural, one {# Markierung} other {# Markierungen}}',
  'Reading …': 'Wird gelesen …',
  '▲ damaged': '▲ beschädigt',
  'not on this device yet': 'noch nicht auf diesem Gerät',
  'Reason for changing the sealed record': 'Grund, die versiegelte Aufnahme zu ändern',
  'needed before anything can be drawn': 'nötig, bevor sich etwas zeichnen lässt',
  Draw: 'Zeichnen',
  Undo: 'Rückgängig',
  'Reading the photo …': 'Foto wird gelesen …',
  'This photo is not on this device yet. It comes from the server, once the device that took it has sent it.':
    'Dieses Foto ist noch nicht auf diesem Gerät. Es kommt vom Server, sobald das Gerät, das es aufnahm, es gesendet hat.',
  Marks: 'Markierungen',
  'Take away mark {number}': 'Markierung {number} wegnehmen',
  'Take away': 'Wegnehmen',
  '± is the standard uncertainty of pointing alone. A length holds for what lies in one plane with the scale bar and faces the camera; what lies nearer or slants is off by more. It is never a reading: measure what is to be ordered.':
    '± ist die Standardunsicherheit allein des Zeigens. Eine Länge gilt für das, was mit dem Maßstab in einer Ebene liegt und der Kamera zugewandt ist; was näher liegt oder schräg steht, weicht stärker ab. Sie ist nie ein Messwert: Messen Sie, was bestellt werden soll.',
  '▲ The scale bars on this photo differ by {figure} %: they do not lie in one plane that faces the camera, or one length is wrong.':
    '▲ Die Maßstäbe auf diesem Foto weichen um {figure} % voneinander ab: Sie liegen nicht in einer Ebene, die der Kamera zugewandt ist, oder eine Länge ist falsch.',
  'Change place or words': 'Ort oder Text ändern',
  'Take the photo out': 'Foto herausnehmen',
  '{width} × {height} pixels, {figure} MB; taken in by {by}.':
    '{width} × {height} Pixel, {figure} MB; hereingenommen von {by}.',
  'Place and words': 'Ort und Text',
  Keep: 'Speichern',
  'What it shows': 'Was es zeigt',
  'may stay empty': 'darf leer bleiben',
  'Take the photo out of the record': 'Foto aus der Aufnahme herausnehmen',
  'Take it out': 'Herausnehmen',
  'Its entries stay in the journal, and the picture in the saved job file.':
    'Seine Einträge bleiben im Journal, und das Bild bleibt in der gesicherten Auftragsdatei.',
  Reason: 'Grund',
  'This photo is not in the record any more.': 'Dieses Foto ist nicht mehr in der Aufnahme.',
  'No photo yet. What the strip takes away is best seen on one.':
    'Noch kein Foto. Was beim Absaiten verschwindet, sieht man am besten auf einem.',
  'Photos of this job': 'Fotos dieses Auftrags',
  'Cannot add a photo after the seal before it is said what it shows: choose it above, then add the photo again.':
    'Nach dem Versiegeln lässt sich kein Foto hinzufügen, bevor gesagt ist, was es zeigt: Wählen Sie das oben, und fügen Sie das Foto dann noch einmal hinzu.',
  'Cannot add to the sealed record without a reason: give it above, then add the photo again.':
    'Zur versiegelten Aufnahme lässt sich ohne Grund nichts hinzufügen: Nennen Sie ihn oben, und fügen Sie das Foto dann noch einmal hinzu.',
  'Making photo {number} of {count} ready …': 'Foto {number} von {count} wird vorbereitet …',
  '{count, plural, one {# photo is} other {# photos are}} kept on this device.':
    '{count, plural, one {# Foto ist} other {# Fotos sind}} auf diesem Gerät gespeichert.',
  'Take a photo': 'Foto aufnehmen',
  'Choose photos': 'Fotos auswählen',
  'or drop them here, or paste one': 'oder hierher ziehen oder eines einfügen',
  'Each is made smaller on this device, and where and when it was taken is left out.':
    'Jedes wird auf diesem Gerät verkleinert; wo und wann es aufgenommen wurde, wird weggelassen.',
  "Cannot read '{text}' as a note: a name such as A4 or C#3 is needed. Type it again.":
    '„{text}“ lässt sich nicht als Ton lesen: Gebraucht wird ein Name wie A4 oder C#3. Geben Sie ihn noch einmal ein.',
  'Where on the piano': 'Wo am Instrument',
  'a note': 'ein Ton',
  Note: 'Ton',
  'Making the photo ready …': 'Foto wird vorbereitet …',
  'The photo is kept on this device.': 'Das Foto ist auf diesem Gerät gespeichert.',
};
