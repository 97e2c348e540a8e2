import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  'Every reading with its origin, what was seen, the photos, the gaps and the seal.':
    'Jeder Messwert mit seiner Herkunft, was gesehen wurde, die Fotos, die Lücken und das Siegel.',
  'What came to light after the strip, and what it costs.':
    'Was nach dem Absaiten zutage kam und was es kostet.',
  'The as-found record as a paper': 'Die Bestandsaufnahme als Blatt',
  'Found after the strip': 'Nach dem Absaiten gefunden',
  'The as-found record is not sealed yet. Until the strings are off, what is seen belongs in the record itself. {link}':
    'Die Bestandsaufnahme ist noch nicht versiegelt. Bis die Saiten ab sind, gehört das Gesehene in die Aufnahme selbst. {link}',
  'Go to the strip check.': 'Zur Prüfung vor dem Absaiten.',
  'Look again now that the strings are off: under the felts, at the bridge caps, along the plate webs and the pin block. What nobody could see before is a change order, and the customer decides. A cracked plate or a loose block wants a specialist before anything else is done.':
    'Sehen Sie noch einmal hin, jetzt, da die Saiten ab sind: unter den Filzen, an den Stegdoppeln, entlang der Spreizen und am Stimmstock. Was vorher niemand sehen konnte, ist ein Nachtragsangebot, und der Kunde entscheidet. Eine gerissene Gussplatte oder ein loser Stimmstock verlangt eine Fachkraft, bevor irgendetwas anderes geschieht.',
  'Note damage': 'Schaden notieren',
  Gravity: 'Schwere',
  'Put it on the change order': 'Auf das Nachtragsangebot setzen',
  'Nothing was found after the strip so far.': 'Bisher wurde nach dem Absaiten nichts gefunden.',
  'Change order, draft: {title}': 'Nachtragsangebot, Entwurf: {title}',
  'Print the draft': 'Entwurf drucken',
  'Not priced yet': 'Noch ohne Preis',
  'days not known': 'Tage nicht bekannt',
  '{days} working days': '{days} Arbeitstage',
  'Noted by {by}.': 'Notiert von {by}.',
  'Take back {what}': '{what} zurücknehmen',
  'no price yet': 'noch kein Preis',
  'Agreed, customer, date:': 'Vereinbart, Kunde, Datum:',
  "Cannot keep the price: an amount of 0 or more is needed, '{found}' was found. Correct it.":
    'Der Preis wird nicht gespeichert: Ein Betrag von 0 oder mehr wird gebraucht, gefunden wurde „{found}“. Bitte berichtigen.',
  'Cannot note this damage: {what} is needed, nothing was found. Say it in a few words.':
    'Der Schaden lässt sich nicht notieren: Es fehlt {what}. Sagen Sie es in wenigen Worten.',
  "Cannot note this damage: a number of working days of 0 or more is needed, '{found}' was found. Correct it, or leave it empty.":
    'Der Schaden lässt sich nicht notieren: Gebraucht wird eine Zahl von Arbeitstagen ab 0, gefunden wurde „{found}“. Berichtigen Sie sie, oder lassen Sie sie leer.',
  'Letting the strings down': 'Saiten entspannen',
  'No plan can be made yet: sections and the tension of some strings are needed. Let the strings down evenly over the whole plate, in several passes, never one section alone.':
    'Noch lässt sich kein Plan machen: Gebraucht werden Abschnitte und die Zugkraft einiger Saiten. Entspannen Sie die Saiten gleichmäßig über die ganze Gussplatte, in mehreren Durchgängen, nie einen Abschnitt allein.',
  '{passes} passes': '{passes} Durchgänge',
  'Print the plan': 'Plan drucken',
  'For {title}: {strings} strings. Each pass takes the same share off every string; turn each pin towards flat by the middle figure, less on the short wires, more on the long ones.':
    'Für {title}: {strings} Saiten. Jeder Durchgang nimmt jeder Saite denselben Anteil; drehen Sie jeden Wirbel um den mittleren Wert tiefer, weniger bei kurzen Drähten, mehr bei langen.',
  'turn of each pin (eighths of a turn)': 'Drehung je Wirbel (Achtel einer Drehung)',
  'from – to': 'von – bis',
  'its load': 'seine Last',
  'Not reckoned, as their tension is not known: {what}. Let them down with their neighbours; the loads are without them.':
    'Nicht gerechnet, da ihre Zugkraft nicht bekannt ist: {what}. Entspannen Sie sie mit ihren Nachbarn; die Lasten gelten ohne sie.',
  'Friction at the bearings makes the real turn somewhat larger than the figure.':
    'Wegen der Reibung an den Auflagen ist die wirkliche Drehung etwas größer als der Wert.',
  'Noted of it: {noted}.': 'Dazu notiert: {noted}.',
  'Strip check': 'Prüfung vor dem Absaiten',
  'What was found': 'Was gefunden wurde',
  'Does not add up: {open}': 'Passt nicht zusammen: {open}',
  'These are there, and say different things of one string or wire. They do not keep the record from being sealed; once the strings are off nobody can look again.':
    'Diese Angaben sind da und sagen Verschiedenes über eine Saite oder einen Draht. Sie hindern das Versiegeln nicht; sind die Saiten ab, kann niemand mehr nachsehen.',
  'Go there': 'Dorthin',
  'The seal fixes the as-found record with a digest. After it every change is an amendment with a reason, and papers show it.':
    'Das Siegel hält die Bestandsaufnahme mit einer Prüfsumme fest. Danach ist jede Änderung ein Nachtrag mit Grund, und Papiere zeigen ihn.',
  'Seal the as-found record': 'Bestandsaufnahme versiegeln',
  'Seal {digest}, over {entries} entries.': 'Siegel {digest}, über {entries} Einträge.',
  'Reason for accepting the ticked gaps': 'Grund, die angehakten Lücken anzunehmen',
  'it stands in the record, with your name': 'er steht in der Aufnahme, mit Ihrem Namen',
  'Accepted by name: {count}': 'Namentlich angenommen: {count}',
  'Later: {cost}': 'Später: {cost}',
  'Fill what can be had. What cannot, or need not, is ticked and accepted by name, with the reason.':
    'Füllen, was zu haben ist. Was nicht zu haben oder nicht nötig ist, wird angehakt und mit Grund namentlich angenommen.',
  'Go to {name}': 'Zu {name}',
  'such as a crack along the bridge pins': 'etwa ein Riss an den Stegstiften',
  'if it belongs to one, such as F#3': 'falls es zu einem gehört, etwa F#3',
  'Why it did not show before the strip': 'Warum es vor dem Absaiten nicht zu sehen war',
  'such as under the felt': 'etwa unter dem Filz',
  'empty while it is not known': 'leer, solange er nicht bekannt ist',
  'photo of {moment}': 'Foto vom {moment}',
  'Found after the as-found record was sealed on {day}. Nothing of it is agreed until the customer has signed.':
    'Gefunden, nachdem die Bestandsaufnahme am {day} versiegelt wurde. Nichts davon ist vereinbart, bis der Kunde unterschrieben hat.',
  '{what}, {where} ({gravity}). To do: {whatToDo}. Not seen before: {reason}. {price}, {days}. {by}':
    '{what}, {where} ({gravity}). Zu tun: {whatToDo}. Vorher nicht gesehen: {reason}. {price}, {days}. {by}',
  'With a photo.': 'Mit Foto.',
  'taken off the change order': 'vom Nachtragsangebot genommen',
  'Together: {sum}{days, select, none {} other {, {days} working days}}{withoutPrice, plural, =0 {} other {; # not priced yet}}{withoutDays, plural, =0 {} other {; days not known for #}}.':
    'Zusammen: {sum}{days, select, none {} other {, {days} Arbeitstage}}{withoutPrice, plural, =0 {} other {; # noch ohne Preis}}{withoutDays, plural, =0 {} other {; Tage nicht bekannt bei #}}.',
  'what to do about it': 'was dagegen zu tun ist',
  'why it did not show before the strip': 'warum es vor dem Absaiten nicht zu sehen war',
  '{degrees}° ({eighths} eighths)': '{degrees}° ({eighths} Achtel)',
  'until every string is slack': 'bis jede Saite entspannt ist',
  'Lost for ever once the strings are off': 'Für immer verloren, sobald die Saiten ab sind',
  'Costly to find out later': 'Später nur aufwendig herauszufinden',
  'Convenient to have': 'Nützlich zu haben',
  '{passed} Nothing is open{gaps, plural, =0 {} other {; {count} gaps were accepted by name}}.':
    '{passed} Nichts ist offen{gaps, plural, =0 {} other {; {count} Lücken wurden namentlich angenommen}}.',
  'Passed.': 'Bestanden.',
  '{notPassed} {count} {gaps, plural, one {gap is} other {gaps are}} open: {ranks}.':
    '{notPassed} {count} {gaps, plural, one {Lücke ist} other {Lücken sind}} offen: {ranks}.',
  'Not passed.': 'Nicht bestanden.',
  'Accept {count} {gaps, plural, one {gap} other {gaps}} by name':
    '{count} {gaps, plural, one {Lücke} other {Lücken}} namentlich annehmen',
  'Found after the strip: {count}': 'Nach dem Absaiten gefunden: {count}',
  '{rank}: {count} open': '{rank}: {count} offen',
  'tick all {count}': 'alle {count} anhaken',
  'Accepted by {by}: {reason}.': 'Angenommen von {by}: {reason}.',
};
