import type { Catalogue } from '@becket/core';

/** The screens of Hand over, in German. */
export const german: Catalogue = {
  'For the owner and the next technician; a draft until the piano is handed over.':
    'Für den Besitzer und den nächsten Techniker; ein Entwurf, bis das Instrument übergeben ist.',
  'The passes, and the days to come.': 'Die Durchgänge und die kommenden Termine.',
  'The whole job as one file': 'Der ganze Auftrag als eine Datei',
  'The whole job can be saved as one file at any time. Another device with Becket can bring it in.':
    'Der ganze Auftrag lässt sich jederzeit als eine Datei speichern. Ein anderes Gerät mit Becket kann sie einlesen.',
  'Passes and follow-ups stand under {place}.': 'Durchgänge und Nachtermine stehen unter {place}.',
  'Go to {task}': 'Zu {task}',
  'measured below': 'unten zu messen',
  'Cannot keep this: a value in {unit} is needed, none was found. Type it.':
    'Das lässt sich nicht speichern: Gebraucht wird ein Wert in {unit}, gefunden wurde keiner. Bitte eingeben.',
  'Cannot keep this: the span it was read over is needed in mm, ‘{found}’ was found. Type it again.':
    'Das lässt sich nicht speichern: Gebraucht wird die Spanne der Messung in mm, gefunden wurde „{found}“. Bitte noch einmal eingeben.',
  'Measured on the new strings: {count, plural, =0 {nothing yet} one {# reading} other {# readings}}':
    'An den neuen Saiten gemessen: {count, plural, =0 {noch nichts} one {# Messwert} other {# Messwerte}}',
  'A reading on the new strings': 'Ein Messwert an den neuen Saiten',
  'Readings on the new strings': 'Messwerte an den neuen Saiten',
  '[of a reading] Quantity': 'Größe',
  'Span (mm)': 'Spanne (mm)',
  'The board is': 'Der Boden ist',
  '[the board] loaded': 'belastet',
  '[the board] not loaded': 'unbelastet',
  'The hand-over': 'Die Übergabe',
  'Handed to': 'Übergeben an',
  '[to the owner] Cautions': 'Hinweise',
  'one a line': 'einer je Zeile',
  Care: 'Pflege',
  'such as: 40 to 55 % relative humidity, away from the stove':
    'etwa: 40 bis 55 % relative Luftfeuchte, nicht am Ofen',
  'To be tuned, {count}': 'Zu stimmen, {count}',
  'In 1, 3 and 6 months': 'In 1, 3 und 6 Monaten',
  'New strings are usually tuned so often at first: common practice, no source.':
    'So oft werden neue Saiten anfangs gewöhnlich gestimmt: gängige Praxis, ohne Quelle.',
  'Further care': 'Weitere Pflege',
  'Left alone, and why': 'Belassen, und warum',
  'one a line, the reason after a colon: damper felt: not ordered':
    'eines je Zeile, der Grund nach einem Doppelpunkt: Dämpferfilz: nicht bestellt',
  'Deviations from the chosen scale': 'Abweichungen von der gewählten Mensur',
  'why; may stay empty': 'warum; darf leer bleiben',
  'I have read what is still open; it is handed over as open.':
    'Ich habe gelesen, was noch offen ist; es wird als offen übergeben.',
  'Hand the piano over': 'Das Instrument übergeben',
  'Handed over on {day} to {name}; {signed} answers for it.':
    'Am {day} an {name} übergeben; {signed} steht dafür ein.',
  'No caution was given.': 'Kein Hinweis wurde gegeben.',
  'Nothing was said of the air.': 'Zur Luft wurde nichts gesagt.',
  'No day to tune was named.': 'Kein Stimmtag wurde genannt.',
  'To be tuned on {days}.': 'Zu stimmen am {days}.',
  'No reason was given.': 'Ein Grund wurde nicht genannt.',
  'None was found, or nothing could be compared.': 'Keine gefunden, oder nichts war zu vergleichen.',
  'Open on that day': 'An diesem Tag offen',
  'Take the hand-over back': 'Die Übergabe zurücknehmen',
};
