import type { Catalogue } from '@becket/core';

/** The screens of Settle, in German. */
export const german: Catalogue = {
  'The pass': 'Der Durchgang',
  'How it went': 'Verlauf',
  'Passes, chart, next overpull, follow-ups; its last page has rows to fill in at the piano.':
    'Durchgänge, Diagramm, nächstes Überziehen, Nachtermine; die letzte Seite hat Zeilen zum Ausfüllen am Instrument.',
  'A pass goes by sections, and none is described. Describe them under {place} first.':
    'Ein Durchgang geht nach Abschnitten, und keiner ist beschrieben. Bitte sie erst unter {place} beschreiben.',
  'Go back to pass {pass}': 'Zurück zu Durchgang {pass}',
  'Pass {pass}': 'Durchgang {pass}',
  'Begin pass {pass}': 'Durchgang {pass} beginnen',
  'A4 (Hz)': 'A4 (Hz)',
  'Temperature (°C)': 'Temperatur (°C)',
  'Relative humidity (%)': 'Relative Luftfeuchte (%)',
  'may stay empty': 'darf leer bleiben',
  'Order of the sections': 'Folge der Abschnitte',
  'Pull {section} up earlier': '{section} früher hochziehen',
  Earlier: 'Früher',
  'How far to pull in pass {pass}': 'Wie weit in Durchgang {pass} zu ziehen ist',
  'Overpull by section': 'Überziehen nach Abschnitten',
  'Stands at': 'Steht bei',
  Overpull: 'Überziehen',
  'At most': 'Höchstens',
  'Share lost': 'Verlust',
  Load: 'Last',
  'Cents from A4 = {pitch} Hz, with one standard uncertainty. At most: where the first string comes to {share} % of its break load ({source}; {table}).':
    'Cent von A4 = {pitch} Hz, mit einer Standardunsicherheit. Höchstens: wo die erste Saite {share} % ihrer Bruchlast erreicht ({source}; {table}).',
  'Set for this job by {by}, {day}; it started as {share} % ({source}; {table}).':
    'Für diesen Auftrag gesetzt von {by}, {day}; Anfangswert war {share} % ({source}; {table}).',
  'Cannot set this limit: a number of percent is needed, nothing was found. Type it.':
    'Die Grenze wird nicht gesetzt: Nötig ist eine Zahl in Prozent, nichts wurde gefunden. Bitte eingeben.',
  'Change the limit': 'Grenze ändern',
  'Take the limit back': 'Grenze zurücknehmen',
  'How far up a string may be pulled': 'Wie hoch eine Saite gezogen werden darf',
  'Keep this limit': 'Diese Grenze behalten',
  'Common practice, no source: {share} % by {table}. By a table that gives more strength the same pull is a smaller share: set the limit lower with it.':
    'Gängige Praxis, ohne Quelle: {share} % nach {table}. Nach einer Tabelle mit höherer Festigkeit ist derselbe Zug ein kleinerer Anteil: Mit ihr die Grenze niedriger setzen.',
  'A string breaks below its table at a kink, a nick or a hard bend, and without warning. Leave room for that, stand out of its line and protect the eyes.':
    'An einem Knick, einer Kerbe oder einer scharfen Biegung reißt eine Saite unter dem Tabellenwert, und ohne Vorwarnung. Dafür Raum lassen, nicht in ihrer Flucht stehen und die Augen schützen.',
  'At most, % of the break load': 'Höchstens, % der Bruchlast',
  'What the plan rests on': 'Worauf der Plan beruht',
  'at the limit': 'an der Grenze',
  '1 Before': '1 Vorher',
  '2 Overpull': '2 Überziehen',
  '3 Left at': '3 Danach',
  'Where each section stands before it is pulled: cents, flat is negative.':
    'Wo jeder Abschnitt vor dem Hochziehen steht: Cent, zu tief ist negativ.',
  'How far above pitch each section is to be left. What is told stands beside the field.':
    'Wie weit über der Tonhöhe jeder Abschnitt stehen bleiben soll. Der Vorschlag steht neben dem Feld.',
  'Where each section was left, read before the next one is pulled.':
    'Wo jeder Abschnitt nach dem Hochziehen steht, gemessen, bevor der nächste gezogen wird.',
  '{day}, A4 = {pitch} Hz; {temperature}, {humidity}': '{day}, A4 = {pitch} Hz; {temperature}, {humidity}',
  Step: 'Schritt',
  'Pitch is read': 'Gemessen wird',
  'by section': 'nach Abschnitten',
  'at notes': 'an Tönen',
  'Take the overpulls as told': 'Die Vorschläge übernehmen',
  '{count, plural, one {# overpull} other {# overpulls}} as told':
    '{count, plural, one {# Vorschlag} other {# Vorschläge}} übernommen',
  'taken back at once': 'gleich zurückgenommen',
  'Cannot add {note}: a note of a described section is needed. Choose another.':
    '{note} lässt sich nicht hinzufügen: Gebraucht wird ein Ton eines beschriebenen Abschnitts. Bitte einen anderen wählen.',
  'Another note': 'Weiterer Ton',
  'such as A4': 'etwa A4',
  'Add the note': 'Ton hinzufügen',
  'The last value is read back here.': 'Hier steht der letzte Wert zum Gegenlesen.',
  'Kept: {words}': 'Gespeichert: {words}',
  'Every section was left: pass {pass} is finished.':
    'Jeder Abschnitt ist hochgezogen: Durchgang {pass} ist beendet.',
  'On to the next pass': 'Weiter zum nächsten Durchgang',
  'Put this pass aside': 'Diesen Durchgang beiseitelegen',
  'Take the whole pass back': 'Den ganzen Durchgang zurücknehmen',
  'the whole pass was taken back': 'der ganze Durchgang wurde zurückgenommen',
  'foretold {offset} ± {uncertainty}': 'erwartet {offset} ± {uncertainty}',
  'limit unknown': 'Grenze unbekannt',
  'at most {highest}': 'höchstens {highest}',
  'aimed at {offset}; {most}': 'Ziel {offset}; {most}',
  'no overpull told; {most}': 'kein Vorschlag; {most}',
  'told {overpull} ± {uncertainty}; {most}': 'Vorschlag {overpull} ± {uncertainty}; {most}',
  'Cannot read ‘{text}’ as cents: a number such as -32 or 4.5 is needed. Type it again.':
    '„{text}“ lässt sich nicht als Cent lesen: Gebraucht wird eine Zahl wie -32 oder 4,5. Bitte noch einmal eingeben.',
  'Cannot read ‘{text}’: a number in {unit} is needed. Type it again.':
    '„{text}“ lässt sich nicht lesen: Gebraucht wird eine Zahl in {unit}. Bitte noch einmal eingeben.',
  'A string broke or slipped': 'Eine Saite riss oder rutschte',
  'Broke or slipped: {count}': 'Gerissen oder gerutscht: {count}',
  'What broke or slipped in this pass': 'Was in diesem Durchgang riss oder rutschte',
  'What happened': 'Was geschah',
  'In words': 'In Worten',
  'Note it': 'Notieren',
  'Take back: {place}': 'Zurücknehmen: {place}',
  'Take back: {name}': 'Zurücknehmen: {name}',
  'taken back': 'zurückgenommen',
  'No pass is recorded yet. Begin one under The pass.':
    'Noch ist kein Durchgang eingetragen. Unter „Der Durchgang“ einen beginnen.',
  'Pass {pass}, {day}, A4 = {pitch} Hz': 'Durchgang {pass}, {day}, A4 = {pitch} Hz',
  '{count, plural, =0 {nothing broke or slipped was noted} one {# mishap} other {# mishaps}}':
    '{count, plural, =0 {kein Riss und kein Rutschen notiert} one {# Missgeschick} other {# Missgeschicke}}',
  'Offset from pitch of each section before and after each pass; the figures stand in the table below.':
    'Abweichung jedes Abschnitts von der Tonhöhe vor und nach jedem Durchgang; die Zahlen stehen in der Tabelle darunter.',
  'pass {pass}': 'Durchgang {pass}',
  'Plan a follow-up': 'Nachtermin planen',
  '[a follow-up] For': 'Wofür',
  'Plan it': 'Planen',
  '{what}, {day}': '{what}, {day}',
  'done on {day}': 'erledigt am {day}',
  'It was done': 'Erledigt',
  'It was done: {name}': 'Erledigt: {name}',
  'It is not done yet': 'Doch nicht erledigt',
  'It is not done yet: {name}': 'Doch nicht erledigt: {name}',
  'The follow-up as it was done': 'Der Nachtermin, wie er stattfand',
};
