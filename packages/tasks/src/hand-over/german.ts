import type { Catalogue } from '@becket/core';

/** The hand-over, in German. */
export const german: Catalogue = {
  '{count, plural, one {One wire was strung} other {# wires were strung}}, noted from {first} to {last}{off, plural, =0 {} one {; one came off on the way} other {; # came off on the way}}.':
    '{count, plural, one {Ein Draht wurde aufgezogen} other {# Drähte wurden aufgezogen}}, notiert vom {first} bis {last}{off, plural, =0 {} one {; einer ging unterwegs ab} other {; # gingen unterwegs ab}}.',
  'Not every wire is noted as being on: {notes}.': 'Nicht jeder Draht ist als aufgezogen notiert: {notes}.',
  '{note}, {quantity}: {measured} mm measured, {chosen} mm chosen.':
    '{note}, {quantity}: {measured} mm gemessen, {chosen} mm gewählt.',
  'Cannot hand this piano over: a job that is not handed over is needed, it was handed to {name} on {day}. Take that back first.':
    'Dieses Instrument kann nicht übergeben werden: Gebraucht wird ein noch nicht übergebener Auftrag, er wurde am {day} an {name} übergeben. Bitte das erst zurücknehmen.',
  'Cannot hand this piano over: days to tune after {day} are needed, {found} was found. Change that day.':
    'Dieses Instrument kann nicht übergeben werden: Gebraucht werden Stimmtage nach dem {day}, gefunden wurde der {found}. Bitte diesen Tag ändern.',
  'Cannot hand this piano over: {count, plural, one {# thing is} other {# things are}} still open, and nobody has said that it was read. Read the list, and say so.':
    'Dieses Instrument kann nicht übergeben werden: {count, plural, one {# Punkt ist} other {# Punkte sind}} noch offen, und niemand hat bestätigt, dass das gelesen wurde. Bitte die Liste lesen und das bestätigen.',
  'Cannot hand this piano over: the name of whoever takes it is needed, none was found. Give the name.':
    'Dieses Instrument kann nicht übergeben werden: Gebraucht wird der Name dessen, der es übernimmt, gefunden wurde keiner. Bitte den Namen angeben.',
  'Cannot hand this piano over: the name of whoever answers for it is needed, none was found. Give the name.':
    'Dieses Instrument kann nicht übergeben werden: Gebraucht wird der Name dessen, der dafür einsteht, gefunden wurde keiner. Bitte den Namen angeben.',
  'Cannot hand this piano over: a reason is needed for what was left alone, “{what}” has none. Give the reason, or take the line out.':
    'Dieses Instrument kann nicht übergeben werden: Für Belassenes wird ein Grund gebraucht, „{what}“ hat keinen. Bitte den Grund angeben oder die Zeile streichen.',
  'The strings below are not those of the hand-over of {day}: a reading was added or changed since.':
    'Die Saiten unten sind nicht die der Übergabe vom {day}: seither kam ein Messwert hinzu oder wurde geändert.',
  'The piano is not described.': 'Das Instrument ist nicht beschrieben.',
  'The as-found record is not sealed.': 'Die Bestandsaufnahme ist nicht versiegelt.',
  'No scale was chosen: nothing says what was to be strung.':
    'Es wurde keine Mensur gewählt: nichts sagt, was aufzuziehen war.',
  'The stringing is not described: {notes}.': 'Die Bezüge sind nicht beschrieben: {notes}.',
  'Size or length is unknown: {notes}.': 'Stärke oder Länge ist unbekannt: {notes}.',
  'The new wire was not measured: {notes}.': 'Der neue Draht wurde nicht gemessen: {notes}.',
  'Pin torque was not read on the new strings: {sections}.':
    'Das Wirbeldrehmoment wurde mit den neuen Saiten nicht gemessen: {sections}.',
  'Bearing was not read on the new strings: {sections}.':
    'Der Stegdruck wurde mit den neuen Saiten nicht gemessen: {sections}.',
  'No pass is recorded: where the pitch stands is unknown.':
    'Kein Durchgang ist eingetragen: Wo die Tonhöhe steht, ist unbekannt.',
  'Pass {pass} is not finished: {sections}.': 'Durchgang {pass} ist nicht beendet: {sections}.',
  'The follow-up of {day} is not done.': 'Der Nachtermin vom {day} ist nicht erledigt.',
  'A follow-up is planned for {day}.': 'Ein Nachtermin ist für den {day} geplant.',
  'The change order has no answer yet: {what}.': 'Das Nachtragsangebot hat noch keine Antwort: {what}.',
  'The scale was left as it was found, decided on {day}: {reason}.':
    'Die Mensur blieb wie vorgefunden, entschieden am {day}: {reason}.',
  'The scale “{name}” was chosen on {day}: {reason}.':
    'Die Mensur „{name}“ wurde am {day} gewählt: {reason}.',
  'New pins of {diameter} mm were driven: {notes}.':
    'Neue Wirbel von {diameter} mm wurden eingeschlagen: {notes}.',
  'New pins of {diameter} × {length} mm were driven: {notes}.':
    'Neue Wirbel von {diameter} × {length} mm wurden eingeschlagen: {notes}.',
  'Found after the strip: {what}. Agreed on {day}: {whatToDo}.':
    'Nach dem Absaiten gefunden: {what}. Am {day} vereinbart: {whatToDo}.',
  'Found after the strip: {what}. Declined on {day}: {whatToDo}.':
    'Nach dem Absaiten gefunden: {what}. Am {day} abgelehnt: {whatToDo}.',
  'The new wire was measured at {measured} of {notes} notes.':
    'Der neue Draht wurde an {measured} von {notes} Tönen gemessen.',
  '{count, plural, one {One pass was made, on {last}} other {# passes were made, from {first} to {last}}}; A4 = {pitch} Hz.':
    '{count, plural, one {Ein Durchgang am {last}} other {# Durchgänge, vom {first} bis zum {last}}}; A4 = {pitch} Hz.',
  'Follow-up of {day}: {what}.': 'Nachtermin vom {day}: {what}.',
};
