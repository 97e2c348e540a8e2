import type { Catalogue } from '@becket/core';

/** The messages of the tasks that lie beside the folders: describing, recording, letting down, sealing. */
export const german: Catalogue = {
  '[of a file] appraisal report': 'Befundbericht',
  '[of a file] appraisal annex': 'Technischer Anhang',
  '[of a file] estimate': 'Kostenvoranschlag',
  '[of a file] as-found record': 'Bestandsaufnahme',
  '[of a file] scale comparison': 'Mensurvergleich',
  '[of a file] bass string order': 'Basssaitenbestellung',
  '[of a file] bass string plan': 'Basssaitenplan',
  '[of a file] purchase list': 'Einkaufsliste',
  '[of a file] change order': 'Nachtragsangebot',
  '[of a file] stringing sheets': 'Bezugsblätter',
  '[of a file] cut list': 'Zuschnittliste',
  '[of a file] settling log': 'Setzprotokoll',
  '[of a file] hand-over record': 'Übergabeprotokoll',
  '[of a file] job': 'Auftrag',
  'Cannot open this store: files of Becket’s are needed, others were found and left as they are. Name another place.':
    'Der Speicher lässt sich nicht öffnen: Dateien von Becket sind nötig, andere wurden gefunden und so gelassen. Einen anderen Ort nennen.',
  'Cannot open this store: a later version of Becket has written to it. Use that version, or a newer one.':
    'Der Speicher lässt sich nicht öffnen: Eine spätere Fassung von Becket hat darin geschrieben. Diese oder eine neuere verwenden.',
  'Cannot use this store: another program has it open. Close the other program, then try again.':
    'Der Speicher lässt sich nicht verwenden: Ein anderes Programm hat ihn geöffnet. Das andere Programm schließen und noch einmal versuchen.',
  'Cannot open this store: the system does not allow it. Check the place and who may read and write there.':
    'Der Speicher lässt sich nicht öffnen: Das System erlaubt es nicht. Den Ort prüfen und wer dort lesen und schreiben darf.',
  'Cannot write to this store: the system does not allow it, nothing was added. Check who may write there, then try again.':
    'In den Speicher lässt sich nicht schreiben: Das System erlaubt es nicht, nichts wurde hinzugefügt. Prüfen, wer dort schreiben darf, und noch einmal versuchen.',
  'Cannot write to this store: there is no room left, nothing was added. Make room on the device, then try again.':
    'In den Speicher lässt sich nicht schreiben: Es ist kein Platz mehr, nichts wurde hinzugefügt. Auf dem Gerät Platz schaffen und noch einmal versuchen.',
  'Cannot read this from the store: its content is damaged, nothing was changed. Keep a copy as it is, and put back the last good copy.':
    'Dies lässt sich nicht aus dem Speicher lesen: Sein Inhalt ist beschädigt, nichts wurde geändert. Eine Kopie aufheben, wie sie ist, und die letzte gute Kopie zurückspielen.',
  'Cannot add entry {entry}: an entry of that id with other content is already kept. Nothing was added; correct by a further entry.':
    'Der Eintrag {entry} wird nicht hinzugefügt: Ein Eintrag dieser Kennung mit anderem Inhalt ist schon gespeichert. Nichts wurde hinzugefügt; durch einen weiteren Eintrag berichtigen.',
  "Cannot go on from cursor '{cursor}': this store did not give it, or was restored from an older copy since. Read from the beginning, and send again what is not there.":
    'Ab „{cursor}“ geht es nicht weiter: Dieser Speicher hat die Marke nicht vergeben oder wurde seither aus einer älteren Kopie zurückgespielt. Von vorn lesen und noch einmal senden, was fehlt.',
  'Cannot find job {job}: this store has no entries of it. List the jobs and take an id from there.':
    'Auftrag {job} ist nicht zu finden: Hier gibt es keine Einträge davon. Die Aufträge auflisten und eine Kennung von dort nehmen.',
  'Cannot change the as-found record as it was sealed on {at}: a reason is needed, none was given. Give the reason and try again.':
    'Die Bestandsaufnahme lässt sich so nicht ändern, sie wurde am {at} versiegelt: Ein Grund ist nötig, keiner wurde genannt. Den Grund nennen und noch einmal versuchen.',
  'Cannot keep this instrument: a name is needed, none was found. Call it as you call it in the shop, such as micrometer 1.':
    'Das Messgerät wird nicht gespeichert: Ein Name ist nötig, keiner wurde gefunden. So nennen, wie es in der Werkstatt heißt, etwa Bügelmessschraube 1.',
  'the smallest step of {name}': 'der kleinste Schritt von {name}',
  'the uncertainty stated of {name}': 'die angegebene Unsicherheit von {name}',
  'Cannot describe {name} as showing {unit}: it is described as showing {before}, and readings may name it. Give the other instrument a name of its own.':
    '{name} lässt sich nicht mit der Anzeige {unit} beschreiben: Beschrieben ist {before}, und Messwerte können es nennen. Dem anderen Messgerät einen eigenen Namen geben.',
  'Cannot keep this instrument: {what} must be a number above 0, {found} was found. Type it in the unit the instrument shows.':
    'Das Messgerät wird nicht gespeichert ({what}): Eine Zahl über 0 ist nötig, gefunden wurde {found}. In der Einheit eingeben, die das Gerät anzeigt.',
  'Cannot read this description of a piano: {problem}':
    'Diese Beschreibung eines Instruments ist nicht lesbar: {problem}',
  "Cannot keep the compass {first} to {last}: it must hold every section, and the section '{section}' goes from {from} to {to}. Change that section first, or the compass.":
    'Der Umfang {first} bis {last} lässt sich nicht festhalten: Er muss jeden Abschnitt enthalten, und der Abschnitt „{section}“ reicht von {from} bis {to}. Zuerst diesen Abschnitt ändern oder den Umfang.',
  'Cannot keep the compass {first} to {last}: it must hold every reading, and {count, plural, one {# lies} other {# lie}} outside, such as at {note}. Take back what is not of this piano first, or change the compass.':
    'Der Umfang {first} bis {last} lässt sich nicht festhalten: Er muss jeden Messwert enthalten, und {count, plural, one {# liegt} other {# liegen}} außerhalb, etwa bei {note}. Zuerst zurücknehmen, was nicht zu diesem Instrument gehört, oder den Umfang ändern.',
  'the notes {first} to {last}': 'die Töne {first} bis {last}',
  "section '{section}'": 'Abschnitt „{section}“',
  "Cannot keep these sections as '{lower}' ({lowerFirst} to {lowerLast}) and '{upper}' ({upperFirst} to {upperLast}) overlap: each note belongs to one section. Change where one of them begins or ends.":
    'Die Abschnitte werden nicht gespeichert: „{lower}“ ({lowerFirst} bis {lowerLast}) und „{upper}“ ({upperFirst} bis {upperLast}) überschneiden sich, jeder Ton gehört zu einem Abschnitt. Anfang oder Ende eines davon ändern.',
  "Cannot keep {what} as it leaves the compass: {first} to {last} is needed, {foundFirst} to {foundLast} was found. Correct the section, or the piano's compass.":
    'Nicht gespeichert ({what}): außerhalb des Umfangs; nötig ist {first} bis {last}, gefunden wurde {foundFirst} bis {foundLast}. Den Abschnitt oder den Umfang des Instruments berichtigen.',
  'Cannot note this as found after the strip: a sealed as-found record is needed, it is not sealed yet. Until then note it under Seen.':
    'Dies lässt sich nicht als nach dem Absaiten gefunden eintragen: Eine versiegelte Bestandsaufnahme ist nötig, sie ist noch nicht versiegelt. Bis dahin unter „Gesehen“ eintragen.',
  'Cannot note damage at {note}: this piano goes from {first} to {last}. Check the note.':
    'Bei {note} lässt sich kein Schaden eintragen: Dieses Instrument reicht von {first} bis {last}. Den Ton prüfen.',
  "Cannot note damage in the section '{section}': this piano has {sections}. Choose one of them, or the whole piano.":
    'Im Abschnitt „{section}“ lässt sich kein Schaden eintragen: Dieses Instrument hat {sections}. Einen davon wählen oder das ganze Instrument.',
  'no section described': 'keinen beschriebenen Abschnitt',
  'Cannot tie that photo to the damage: a photo of this job is needed, none of that name was found. Add the photo first.':
    'Das Foto lässt sich nicht mit dem Schaden verbinden: Ein Foto dieses Auftrags ist nötig, keines dieses Namens wurde gefunden. Zuerst das Foto aufnehmen.',
  'All sizes could lie a step off, with {percent} % probability: worn wire alone does not tell. Measure where nothing wore the wire, at the coil or under the felt, or look for a stamp.':
    'Alle Drahtstärken könnten um eine Nummer daneben liegen, mit {percent} % Wahrscheinlichkeit: Abgenutzter Draht allein sagt es nicht. Dort messen, wo nichts den Draht abgenutzt hat, an der Windung oder unter dem Filz, oder nach einem Stempel suchen.',
  "The stamp '{stamp}' at {note} is not used: {why}.":
    'Der Stempel „{stamp}“ bei {note} wird nicht verwendet: {why}.',
  'the note has no plain string': 'der Ton hat keine blanke Saite',
  'it is not a size number': 'es ist keine Drahtnummer',
  'Tensions are those at A4 = {pitch} Hz; strings that stand flat carry less, and come down sooner.':
    'Die Zugkräfte gelten bei A4 = {pitch} Hz; Saiten, die tiefer stehen, tragen weniger und sind eher entspannt.',
  'for {count, plural, one {# note} other {# notes}} the middle value of their section':
    'für {count, plural, one {# Ton} other {# Töne}} der mittlere Wert des Abschnitts',
  'for {count, plural, one {# note} other {# notes}} the middle value of the piano':
    'für {count, plural, one {# Ton} other {# Töne}} der mittlere Wert des Instruments',
  'for {count, plural, one {# note} other {# notes}} {usual} mm (usual, not read)':
    'für {count, plural, one {# Ton} other {# Töne}} {usual} mm (üblich, nicht gemessen)',
  'The {quantity} was not read everywhere: {taken} is taken.':
    'Nicht überall gemessen ({quantity}): Angenommen ist {taken}.',
  'this stamp': 'dieser Stempel',
  'this winding': 'diese Umspinnung',
  'this wire': 'dieser Draht',
  'this part': 'dieses Teil',
  'this sample': 'dieses Muster',
  'Cannot keep {what}: a note with wound strings is needed, {note} is described as plain. Choose another note, or correct its stringing.':
    'Nicht gespeichert ({what}): Ein Ton mit umsponnenen Saiten ist nötig, {note} ist als blank beschrieben. Einen anderen Ton wählen oder den Bezug berichtigen.',
  'Cannot keep {what}: the stringing of {note} is needed, it is not described. Describe it under Sections first.':
    'Nicht gespeichert ({what}): Der Bezug von {note} ist nötig und nicht beschrieben. Zuerst unter „Abschnitte“ beschreiben.',
  'Cannot keep this wire: two different strings are needed, {note} string {string} was found twice. Choose its other string, or say that it is tied.':
    'Dieser Draht wird nicht gespeichert: Zwei verschiedene Saiten sind nötig, {note} Saite {string} steht zweimal da. Die andere Saite wählen oder sagen, dass sie einzeln mit Öse ist.',
  "Cannot keep {what}: a section of this piano is needed ({sections}), '{found}' was found. Choose one, or describe it first.":
    'Nicht gespeichert ({what}): Ein Abschnitt dieses Instruments ist nötig ({sections}), gefunden wurde „{found}“. Einen wählen oder ihn zuerst beschreiben.',
  'Cannot change the photo {digest}…: this job has no photo of that digest. Take one from its list.':
    'Das Foto {digest}… lässt sich nicht ändern: Dieser Auftrag hat kein Foto mit dieser Prüfsumme. Eines aus seiner Liste nehmen.',
  "Cannot tie a photo to key {key}: this piano has keys {first} to {last}. Check the note, or the piano's compass.":
    'Ein Foto lässt sich nicht mit Taste {key} verbinden: Dieses Instrument hat die Tasten {first} bis {last}. Den Ton oder den Umfang des Instruments prüfen.',
  "Cannot tie a photo to the section '{section}': this piano has {sections}. Choose one of them, or the whole piano.":
    'Ein Foto lässt sich nicht mit dem Abschnitt „{section}“ verbinden: Dieses Instrument hat {sections}. Einen davon wählen oder das ganze Instrument.',
  'no sections yet': 'noch keine Abschnitte',
  "Cannot record this {quantity}: a unit of {units} is needed, '{found}' was found.":
    'Nicht eingetragen ({quantity}): Eine Einheit aus {units} ist nötig, gefunden wurde „{found}“.',
  'Cannot record this {quantity}: a value from {low} to {high} {unit} is needed, {found} {unit} was found. Check the unit and the decimal mark.':
    'Nicht eingetragen ({quantity}): Ein Wert von {low} bis {high} {unit} ist nötig, gefunden wurde {found} {unit}. Einheit und Komma prüfen.',
  'Cannot record this {quantity}: an instrument that shows a {dimension} is needed, {instrument} shows {unit}. Choose another instrument, or none.':
    'Nicht eingetragen ({quantity}): Ein Messgerät für {dimension} ist nötig, {instrument} zeigt {unit}. Ein anderes Messgerät wählen oder keines.',
  torque: 'Drehmoment',
  angle: 'Winkel',
  count: 'Anzahl',
  'pitch offset': 'Abweichung der Tonhöhe',
  neither: 'keines von beiden',
  'the span alone': 'nur die Spanne',
  'the load alone': 'nur die Last',
  'a span of {span} m': 'eine Spanne von {span} m',
  'Cannot record this {quantity}: the span it was read over and whether the board was loaded are needed, {found} was found. Give the span, and loaded or unloaded.':
    'Nicht eingetragen ({quantity}): Nötig sind die Spanne der Messung und ob der Resonanzboden unter Last war, gefunden wurde {found}. Die Spanne angeben und „unter Last“ oder „ohne Last“.',
  "Cannot record at {note}: this piano goes from {first} to {last}. Check the note, or the piano's compass.":
    'Bei {note} lässt sich nichts eintragen: Dieses Instrument reicht von {first} bis {last}. Den Ton oder den Umfang des Instruments prüfen.',
  'Cannot seal the as-found record: no open gap is needed, {count} were found ({names}). Record each, or accept it by name with a reason.':
    'Die Bestandsaufnahme lässt sich nicht versiegeln: Keine Lücke darf offen sein, {count} wurden gefunden ({names}). Jede aufnehmen oder einzeln mit Grund hinnehmen.',
  "Cannot accept the gap '{name}': the strip check has no open gap of that name. Take a name from its list.":
    'Die Lücke „{name}“ lässt sich nicht hinnehmen: Die Prüfung vor dem Absaiten hat keine offene Lücke dieses Namens. Einen Namen aus ihrer Liste nehmen.',
  'Cannot seal this record again: it was sealed on {at} by {by}. Later changes are amendments with a reason.':
    'Die Bestandsaufnahme lässt sich nicht noch einmal versiegeln: Sie wurde am {at} von {by} versiegelt. Spätere Änderungen sind Nachträge mit Grund.',
  "Cannot make this paper: a {what} of {names} is needed, '{found}' was found.":
    'Das Papier wird nicht erstellt ({what}): Eines von {names} ist nötig, gefunden wurde „{found}“.',
  paper: 'Papier',
  format: 'Format',
  'paper size': 'Papierformat',
};
