import type { Catalogue } from '@becket/core';

/** Settling, in German. */
export const german: Catalogue = {
  'Cannot set this limit: from {least} to {most} % of the break load are needed, {found} was found. Type it again.':
    'Die Grenze wird nicht gesetzt: Nötig sind {least} bis {most} % der Bruchlast, gefunden wurde {found}. Noch einmal eingeben.',
  'Cannot set this limit: a table of break loads is needed ({names}), ‘{found}’ was found. Choose one of them.':
    'Die Grenze wird nicht gesetzt: Nötig ist eine Tabelle der Bruchlasten ({names}), gefunden wurde ‚{found}‘. Eine davon wählen.',
  'Cannot set this limit: whose limit it is is needed, nothing was found. Say whose experience or which source it is.':
    'Die Grenze wird nicht gesetzt: Nötig ist, von wem sie stammt, nichts wurde gefunden. Sagen, wessen Erfahrung oder welche Quelle es ist.',
  'Cannot keep this: a day is needed, written as year-month-day such as 2026-05-04, ‘{found}’ was found. Choose the day.':
    'Das lässt sich nicht speichern: Gebraucht wird ein Tag als Jahr-Monat-Tag wie 2026-05-04, gefunden wurde „{found}“. Bitte den Tag wählen.',
  'Cannot plan this: one follow-up of a kind on one day is needed, {day} has it already. Choose another day, or take the first back.':
    'Das lässt sich nicht planen: An einem Tag ist nur ein Nachtermin jeder Art möglich, am {day} steht er schon. Bitte einen anderen Tag wählen oder den ersten zurücknehmen.',
  'Cannot keep this follow-up: one that was planned is needed, none of that name was found. Plan it first.':
    'Dieser Nachtermin lässt sich nicht speichern: Gebraucht wird ein geplanter, gefunden wurde keiner dieses Namens. Bitte ihn erst planen.',
  'Cannot keep this follow-up: one that is not done yet is needed, it was done on {day}. Take that back first.':
    'Dieser Nachtermin lässt sich nicht speichern: Gebraucht wird ein noch offener, dieser wurde am {day} erledigt. Bitte das erst zurücknehmen.',
  'Cannot begin a pass: the sections of the piano are needed, none is described. Describe them under Record first.':
    'Ein Durchgang lässt sich nicht beginnen: Gebraucht werden die Abschnitte des Instruments, beschrieben ist keiner. Bitte sie erst unter „Aufnehmen“ beschreiben.',
  'Cannot begin pass {number}: a number that is not taken is needed, pass {number} is recorded already. Go on with it, or take it back.':
    'Durchgang {number} lässt sich nicht beginnen: Gebraucht wird eine freie Nummer, Durchgang {number} ist schon eingetragen. Bitte mit ihm fortfahren oder ihn zurücknehmen.',
  'Cannot begin a pass: a pitch of A4 from 380 to 480 Hz is needed, {found} Hz was found. Check the figure.':
    'Ein Durchgang lässt sich nicht beginnen: Gebraucht wird eine Tonhöhe von A4 zwischen 380 und 480 Hz, gefunden wurden {found} Hz. Bitte die Zahl prüfen.',
  'Cannot keep this: a pass that was begun is needed, none of that name was found. It may have been taken back; begin a pass.':
    'Das lässt sich nicht speichern: Gebraucht wird ein begonnener Durchgang, gefunden wurde keiner dieses Namens. Vielleicht wurde er zurückgenommen; bitte einen Durchgang beginnen.',
  'Cannot keep this pitch: a note of {section} is needed ({first} to {last}), {found} was found. Choose another note or section.':
    'Diese Tonhöhe lässt sich nicht speichern: Gebraucht wird ein Ton von {section} ({first} bis {last}), gefunden wurde {found}. Bitte einen anderen Ton oder Abschnitt wählen.',
  'Cannot keep this overpull: from 0 to 600 cents above pitch are needed, {found} was found. Check the sign and the decimal mark.':
    'Dieses Überziehen lässt sich nicht speichern: Gebraucht werden 0 bis 600 Cent über der Tonhöhe, gefunden wurde {found}. Bitte Vorzeichen und Komma prüfen.',
  'Cannot keep this pitch: from −1200 to 600 cents are needed, {found} was found. Check the sign and the decimal mark.':
    'Diese Tonhöhe lässt sich nicht speichern: Gebraucht werden −1200 bis 600 Cent, gefunden wurde {found}. Bitte Vorzeichen und Komma prüfen.',
  'Cannot keep an overpull of {found} cents for {section}: at most {highest} cents are needed for {note} to stay within {share} % of its break load. Aim lower.':
    'Ein Überziehen von {found} Cent lässt sich für {section} nicht speichern: Höchstens {highest} Cent sind möglich, damit {note} innerhalb von {share} % der Bruchlast bleibt. Bitte weniger vorsehen.',
  'Cannot keep this: words are needed for what went wrong, none were found. Say what it was.':
    'Das lässt sich nicht speichern: Gebraucht werden Worte dafür, was schiefging, gefunden wurden keine. Bitte sagen, was es war.',
  'Cannot keep this: the note of the string is needed, none was found. Say which string it was.':
    'Das lässt sich nicht speichern: Gebraucht wird der Ton der Saite, gefunden wurde keiner. Bitte sagen, welche Saite es war.',
  'Cannot keep this: a note from {first} to {last} is needed, {found} was found. Check the note.':
    'Das lässt sich nicht speichern: Gebraucht wird ein Ton von {first} bis {last}, gefunden wurde {found}. Bitte den Ton prüfen.',
  'Cannot keep this: a string from 1 to {strings} of {note} is needed, string {found} was found. Check the string.':
    'Das lässt sich nicht speichern: Gebraucht wird eine Saite von 1 bis {strings} von {note}, gefunden wurde Saite {found}. Bitte die Saite prüfen.',
  'Cannot keep this: a section of the piano is needed, none is described. Describe it first.':
    'Das lässt sich nicht speichern: Gebraucht wird ein Abschnitt des Instruments, beschrieben ist keiner. Bitte ihn erst beschreiben.',
  'Cannot keep this: a section of this piano is needed ({names}), ‘{found}’ was found. Choose one of them.':
    'Das lässt sich nicht speichern: Gebraucht wird ein Abschnitt dieses Instruments ({names}), gefunden wurde „{found}“. Bitte einen davon wählen.',
  '{sections}: no fall of this piano is known yet, so the starting figure is used, {share} ± {uncertainty} % of the raise lost (common practice, no source). Two passes are needed: read each section again before the next one.':
    '{sections}: Von diesem Instrument ist noch kein Nachgeben bekannt, daher gilt der Anfangswert, {share} ± {uncertainty} % der Anhebung gehen verloren (gängige Praxis, ohne Quelle). Gebraucht werden zwei Durchgänge: Jeden Abschnitt vor dem nächsten noch einmal messen.',
  '{sections}: no string can be computed, so no overpull is told. Its wire and its lengths are needed.':
    '{sections}: Keine Saite lässt sich berechnen, daher wird kein Überziehen genannt. Gebraucht werden Draht und Längen.',
  '{notes} cannot be computed and have no part in the limit.':
    '{notes}: Das lässt sich nicht berechnen und geht in die Grenze nicht ein.',
  '{sections}: where it stands is not known. Read it before it is pulled up.':
    '{sections}: Wo er steht, ist nicht bekannt. Vor dem Hochziehen messen.',
  '{section}: {note} is above the limit at its pitch already ({share} % of its break load). Do not pull it over; look at its wire under Scale.':
    '{section}: {note} liegt schon in seiner Tonhöhe über der Grenze ({share} % der Bruchlast). Nicht überziehen; den Draht unter „Mensur“ ansehen.',
  '{sections}: the limit of the break load holds the overpull down. More passes are needed there, not a higher pull.':
    '{sections}: Die Grenze der Bruchlast hält das Überziehen niedrig. Dort sind mehr Durchgänge nötig, kein höherer Zug.',
  'Relative humidity went from {before} to {after} % between the last two passes: part of the fall is the soundboard’s, not the wire’s.':
    'Die relative Luftfeuchte ging zwischen den letzten beiden Durchgängen von {before} auf {after} %: Ein Teil des Nachgebens kommt vom Resonanzboden, nicht vom Draht.',
};
