import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  'Keep and go on': 'Speichern und weiter',
  'Unit of the wrench': 'Einheit des Schlüssels',
  'The hand felt': 'Die Hand spürte',
  'Where does the block hold?': 'Wo hält der Stimmstock?',
  'Tap a pin to see its figures.': 'Tippen Sie auf einen Wirbel, um seine Werte zu sehen.',
  'Grip of {shown} pins along the compass': 'Haltemoment von {shown} Wirbeln über den Umfang',
  'grip (N·m)': 'Haltemoment (N·m)',
  'grip (in·lbf)': 'Haltemoment (in·lbf)',
  'How are the grips spread?': 'Wie streuen die Haltemomente?',
  'Before and after stringing': 'Vor und nach dem Beziehen',
  'As found': 'Wie vorgefunden',
  'Newly strung': 'Neu bezogen',
  'Grip before and after': 'Haltemoment vorher und nachher',
  Pin: 'Wirbel',
  Gained: 'Gewonnen',
  low: 'schwach',
  'Nothing was read yet. Read every section, and both ends of each; every fourth note is a fair first round.':
    'Noch wurde nichts gemessen. Messen Sie jeden Abschnitt und beide Enden; jeder vierte Ton ist eine gute erste Runde.',
  'What it looks like: {kind}': 'Wonach es aussieht: {kind}',
  'Common practice, no source.': 'Gängige Praxis, ohne Quelle.',
  '? No humidity was read that day: grip moves with the season. Take it under Pitch and air.':
    '? An dem Tag wurde keine Luftfeuchte gemessen: Das Haltemoment geht mit der Jahreszeit. Messen Sie sie unter „Stimmhöhe und Luft“.',
  'What may still hide': 'Was noch verborgen sein kann',
  'Read {note} string {string} next': 'Als Nächstes {note}, Saite {string} messen',
  'Torque by section': 'Drehmoment nach Abschnitt',
  'By section': 'Nach Abschnitt',
  Read: 'Gemessen',
  'Mean grip': 'Mittleres Haltemoment',
  '95 % interval': '95-%-Bereich',
  Lowest: 'Kleinstes',
  Low: 'Schwach',
  'Zone missed': 'Zone übersehen',
  '{withGrip} of {pins}': '{withGrip} von {pins}',
  'too few': 'zu wenige',
  'Pin by pin': 'Wirbel für Wirbel',
  'Torque by pin': 'Drehmoment nach Wirbel',
  'Pin by pin: grip − pull = margin; a pin holds its string while the ratio is above 1':
    'Wirbel für Wirbel: Haltemoment − Zug = Reserve; ein Wirbel hält seine Saite, solange das Verhältnis über 1 liegt',
  Grip: 'Haltemoment',
  'String’s pull': 'Zug der Saite',
  Margin: 'Reserve',
  Ratio: 'Verhältnis',
  From: 'Aus',
  Feel: 'Gefühl',
  'Show the block': 'Stimmstock zeigen',
  'newly strung': 'neu bezogen',
  '{note} string {string}, {turning}': '{note}, Saite {string}, {turning}',
  'Torque of a pin': 'Drehmoment eines Wirbels',
  'Turn slowly and steadily and read while the pin moves. Sharp-going readings hold the string’s own pull as well, flat-going ones lack it: say which it was. Never stand over a pin that creeps.':
    'Drehen Sie langsam und gleichmäßig und lesen Sie ab, während sich der Wirbel bewegt. Werte beim Höherdrehen enthalten auch den Zug der Saite, beim Tieferdrehen fehlt er: Sagen Sie, was es war. Beugen Sie sich nie über einen Wirbel, der kriecht.',
  'sharp, then flat': 'höher, dann tiefer',
  'Pins are turned': 'Wirbel werden gedreht',
  'State of the piano': 'Zustand des Instruments',
  'After each reading go on by': 'Nach jedem Messwert weiter um',
  'string {string}': 'Saite {string}',
  'Torque ({unit})': 'Drehmoment ({unit})',
  'The last reading is read back here.': 'Hier steht der letzte Messwert zum Gegenlesen.',
  'Kept: {words} {strong}': 'Gespeichert: {words} {strong}',
  'All {readings} readings as they were taken': 'Alle {readings} Messwerte, wie sie genommen wurden',
  'Torque readings': 'Drehmomentwerte',
  Torque: 'Drehmoment',
  How: 'Wie',
  'When, by': 'Wann, von wem',
  'Take back {pin}, {torque} {unit}': '{pin}, {torque} {unit} zurücknehmen',
  'Cannot keep this torque: the note of the pin is needed, none was found. Type it.':
    'Das Drehmoment lässt sich nicht speichern: Gebraucht wird der Ton des Wirbels, gefunden wurde keiner. Geben Sie ihn ein.',
  'Cannot keep this torque: a value is needed, nothing was found. Type what the wrench shows.':
    'Das Drehmoment lässt sich nicht speichern: Gebraucht wird ein Wert, gefunden wurde nichts. Geben Sie ein, was der Schlüssel zeigt.',
  "Cannot read '{found}' as a torque: a number such as 118 or 13.5 N·m is needed. Type it again.":
    '„{found}“ lässt sich nicht als Drehmoment lesen: Gebraucht wird eine Zahl wie 118 oder 13,5 N·m. Geben Sie sie noch einmal ein.',
  'direction not said': 'Richtung nicht angegeben',
  'no string pull': 'ohne Saitenzug',
  'string state not said': 'Zustand der Saite nicht angegeben',
  '{torque} {unit} is less than a pin takes that a finger can turn. Was it read in another unit?':
    '{torque} {unit} ist weniger, als ein Wirbel braucht, den ein Finger drehen kann. Wurde in einer anderen Einheit gemessen?',
  '{torque} {unit} would twist most pins off. Was it read in in·lbf, or is a point missing?':
    '{torque} {unit} würde die meisten Wirbel abdrehen. Wurde in in·lbf gemessen, oder fehlt ein Komma?',
  '{pin} grip {grip} {uncertainty}{pull, select, none {} other {, string pulls {pull}}}{margin, select, none {} other {, margin {margin}}}{feels, select, none {} other {; felt: {feels}}}':
    '{pin} Haltemoment {grip} {uncertainty}{pull, select, none {} other {, Zug der Saite {pull}}}{margin, select, none {} other {, Spielraum {margin}}}{feels, select, none {} other {; gefühlt: {feels}}}',
  'Dots: grip with one standard uncertainty. Bands: mean of the section with its 95 % interval. Dashed: {torque}, {source}. Short lines: pull of the string.':
    'Punkte: Haltemoment mit einer Standardunsicherheit. Bänder: Mittel des Abschnitts mit seinem 95-%-Bereich. Gestrichelt: {torque}, {source}. Kurze Striche: Zug der Saite.',
  'Triangles: torque as read, ▲ going sharp with the string’s pull in it, ▼ going flat without it; no grip is known there.':
    'Dreiecke: Drehmoment wie gemessen, ▲ beim Höherdrehen mit dem Zug der Saite darin, ▼ beim Tieferdrehen ohne ihn; dort ist kein Haltemoment bekannt.',
  'Pins by grip: {bars}': 'Wirbel nach Haltemoment: {bars}',
  '{from} to {to}: {pins}': '{from} bis {to}: {pins}',
  '{both, plural, one {# pin was} other {# pins were}} read both times; {low, plural, one {# of the newly strung is} other {# of the newly strung are}} below {torque}.':
    '{both, plural, one {# Wirbel wurde} other {# Wirbel wurden}} beide Male gemessen; {low, plural, one {# der neu bezogenen liegt} other {# der neu bezogenen liegen}} unter {torque}.',
  'Read at {low}{high, select, none {} other { to {high}}} % relative humidity{without, plural, =0 {} other {; # readings without}}.':
    'Gemessen bei {low}{high, select, none {} other { bis {high}}} % relativer Luftfeuchte{without, plural, =0 {} one {; # Messwert ohne} other {; # Messwerte ohne}}.',
  'A bad zone of {size} pins in a row would have been missed with a chance of {chance}, wherever it lies.':
    'Eine schlechte Zone von {size} Wirbeln nebeneinander wäre mit einer Wahrscheinlichkeit von {chance} übersehen worden, wo immer sie liegt.',
  '{note} string {string} next lowers it most, to {percent} %.':
    '{note}, Saite {string} als nächste senkt sie am meisten, auf {percent} %.',
  '{without, plural, one {# pin has} other {# pins have}} a reading but no grip':
    '{without, plural, one {# Wirbel hat} other {# Wirbel haben}} einen Messwert, aber kein Haltemoment',
  flat: 'tiefer',
  sharp: 'höher',
  'Turned {turning} · {unit} · {stage} · every {every, plural, one {note} other {# notes}}':
    'Gedreht: {turning} · {unit} · {stage} · {every, plural, one {jeder Ton} other {alle # Töne}}',
  'Torque ({unit}), going {turning, select, sharp {sharp} other {flat}}':
    'Drehmoment ({unit}), {turning, select, sharp {beim Höherdrehen} other {beim Tieferdrehen}}',
  'no note': 'kein Ton',
  'taken back in the torque list': 'in der Drehmomentliste zurückgenommen',
  'turned {turning, select, sharp {sharp} other {flat}}':
    '{turning, select, sharp {höher} other {tiefer}} gedreht',
  '[of a note] String': 'Saite',
};
