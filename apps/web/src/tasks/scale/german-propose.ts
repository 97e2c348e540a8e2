import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  'load {change}': 'Last {change}',
  'load unchanged': 'Last unverändert',
  'Further curves, loads, beats and each note that changes':
    'Weitere Kurven, Lasten, Schwebungen und jeder Ton, der sich ändert',
  '{count, plural, one {# note is} other {# notes are}} not in it.':
    '{count, plural, one {# Ton fehlt} other {# Töne fehlen}} darin.',
  '{count} of {all} notes cannot be computed yet and {count, plural, one {is} other {are}} in no scale that is made here. Enter what they lack first: sizes that are chosen without them may not suit them.':
    '{count} von {all} Tönen {count, plural, one {kann} other {können}} noch nicht berechnet werden und {count, plural, one {steht} other {stehen}} in keiner Mensur, die hier entsteht. Zuerst eintragen, was fehlt: Drahtstärken, die ohne sie gewählt werden, passen vielleicht nicht zu ihnen.',
  unison: 'Chor',
  'Scales of this job': 'Mensuren dieses Auftrags',
  'Choose “{name}”': '„{name}“ wählen',
  'Change a copy': 'Eine Kopie ändern',
  Withdraw: 'Zurücknehmen',
  'String “{name}”': 'Nach „{name}“ beziehen',
  'Withdraw “{name}”': '„{name}“ zurücknehmen',
  'Withdraw it': 'Zurücknehmen',
  'For whoever asks later.': 'Für alle, die später fragen.',
  'Compute scales': 'Mensuren berechnen',
  'Start by hand from as found': 'Von Hand vom Vorgefundenen ausgehen',
  'Finding the sizes that the old wire most probably had …':
    'Die wahrscheinlichsten Stärken des alten Drahts werden gesucht …',
  'Working out what each note may have …': 'Was jeder Ton haben darf, wird berechnet …',
  '{done} of {of} steps': '{done} von {of} Schritten',
  'Stopped. Nothing was changed.': 'Angehalten. Nichts wurde geändert.',
  'Before you choose “{name}”': 'Bevor Sie „{name}“ wählen',
  'Nothing of the scale as found lies beyond the shop’s limits. Leaving it alone is the first answer: it keeps the instrument as it was made, and needs no proof.':
    'Nichts an der vorgefundenen Mensur liegt außerhalb der Grenzen der Werkstatt. Sie zu lassen ist die erste Antwort: Das Instrument bleibt, wie es gebaut wurde, und das braucht keinen Beweis.',
  '{beyond, plural, one {# finding lies} other {# findings lie}} beyond the shop’s limits. Whether new sizes help with that is seen below; some of it, such as short speaking lengths, no wire mends.':
    '{beyond, plural, one {# Befund liegt} other {# Befunde liegen}} außerhalb der Grenzen der Werkstatt. Ob neue Stärken dagegen helfen, zeigt sich unten; manches, etwa kurze klingende Längen, behebt kein Draht.',
  'Leave a scale alone on an instrument of historic worth, where the owner wants it as its maker made it, and where a load would rise on a plate, bridge or soundboard that is in doubt: there ask a specialist first.':
    'Eine Mensur bleibt, wie sie ist, bei einem Instrument von historischem Wert, wenn der Eigentümer es so will, wie der Hersteller es gebaut hat, und wo die Last auf eine zweifelhafte Gussplatte, einen zweifelhaften Steg oder Resonanzboden steigen würde: Dort zuerst eine Fachkraft fragen.',
  '[how much it counts] little': 'wenig',
  '[how much it counts] as usual': 'wie üblich',
  '[how much it counts] much': 'viel',
  'What counts, and what no scale may break': 'Was zählt und was keine Mensur überschreiten darf',
  'What counts': 'Was zählt',
  'Tension even from note to note': 'Zugkraft gleichmäßig von Ton zu Ton',
  'Inharmonicity even from note to note': 'Inharmonizität gleichmäßig von Ton zu Ton',
  'Few changes of size': 'Wenige Stärkenwechsel',
  'Few tied strings': 'Wenige einzelne Saiten',
  Limits: 'Grenzen',
  'They start from common practice, are the shop’s own, and are not physics. Break loads are by the table chosen here; real wire usually tests stronger.':
    'Sie gehen von gängiger Praxis aus, sind die der Werkstatt und keine Physik. Die Bruchlasten folgen der hier gewählten Tabelle; wirklicher Draht hält im Versuch meist mehr.',
  'Break load by': 'Bruchlast nach',
  'Highest share of the break load (%)': 'Höchster Anteil an der Bruchlast (%)',
  'Lowest share, plain strings (%)': 'Niedrigster Anteil, blanke Saiten (%)',
  'Lowest share, wound strings (%)': 'Niedrigster Anteil, umsponnene Saiten (%)',
  'Tension may leave as found by (%)': 'Zugkraft darf vom Vorgefundenen abweichen um (%)',
  'A size serves at least': 'Eine Stärke gilt für mindestens',
  '{count, plural, one {# note} other {# notes in a row}}':
    '{count, plural, one {# Ton} other {# Töne hintereinander}}',
  'Wire to choose from': 'Draht zur Auswahl',
  'Is this instrument of historic worth?': 'Ist dieses Instrument von historischem Wert?',
  'by its year': 'nach dem Baujahr',
  'keep as found': 'lassen wie vorgefunden',
  'choose anew': 'neu wählen',
  'The break from wound to plain may move by': 'Der Übergang von umsponnen zu blank darf sich verschieben um',
  '[how far] nothing': 'gar nicht',
  '{count, plural, one {# note} other {# notes}}': '{count, plural, one {# Ton} other {# Töne}}',
  'Highest load of all strings (kN)': 'Höchste Last aller Saiten (kN)',
  'As found {load} kN. Left empty, none is asked.': 'Vorgefunden {load} kN. Leer gelassen, gilt keine.',
  'Highest load of single bridges and sections{count, plural, =0 {} other {: # asked}}':
    'Höchste Last einzelner Stege und Abschnitte{count, plural, =0 {} other {: # verlangt}}',
  'Where a bridge, or the soundboard under it, is in doubt: no more than was found. Whether it bears that is for whoever knows the structure.':
    'Wo ein Steg oder der Resonanzboden darunter in Frage steht: nicht mehr als vorgefunden. Ob er das trägt, entscheidet, wer den Aufbau kennt.',
  'No bridge above as found': 'Kein Steg über dem Vorgefundenen',
  'No section above as found': 'Kein Abschnitt über dem Vorgefundenen',
  'Ask for none of these': 'Keine davon verlangen',
  '{of, select, bridge {Bridge} other {Section}} “{name}”, highest load (kN)':
    '{of, select, bridge {Steg} other {Abschnitt}} „{name}“, höchste Last (kN)',
  'A core size serves at least': 'Eine Kernstärke gilt für mindestens',
  'Diameter over the winding, at most so many cores': 'Außendurchmesser, höchstens so viele Kerndrähte',
  'A number from 1 is needed, such as 4.5.': 'Gebraucht wird eine Zahl ab 1, etwa 4,5.',
  'Wound strings may stand on': 'Umsponnene Saiten dürfen stehen auf',
  'the bridge “{name}”': 'dem Steg „{name}“',
  'Proved: of all the strings that were offered, no other choice within these limits does better by what counts here.':
    'Bewiesen: Von allen angebotenen Saiten ergibt keine andere Wahl innerhalb dieser Grenzen Besseres nach dem, was hier zählt.',
  'Proved where nothing else is said: of all the strings that were offered, no other choice within these limits does better by what counts here.':
    'Bewiesen, wo nichts anderes steht: Von allen angebotenen Saiten ergibt keine andere Wahl innerhalb dieser Grenzen Besseres nach dem, was hier zählt.',
  'A load above 0 kN is needed, or nothing.': 'Gebraucht wird eine Last über 0 kN oder nichts.',
  'A number between 0 and 100 is needed.': 'Gebraucht wird eine Zahl zwischen 0 und 100.',
  'Draft, from “{from}”': 'Entwurf, aus „{from}“',
  'draft from “{from}”': 'Entwurf aus „{from}“',
  'Name of this proposal': 'Name dieses Vorschlags',
  'As you will look for it: smoother tenor.': 'So, wie Sie ihn suchen werden: glatterer Tenor.',
  'Keep this as a proposal': 'Als Vorschlag speichern',
  'Put the draft away': 'Entwurf verwerfen',
  'Choose a note, on the chart or on the map, to change it.':
    'Einen Ton im Diagramm oder auf dem Plan wählen, um ihn zu ändern.',
  Core: 'Kerndraht',
  'Outer winding': 'Äußere Umspinnung',
  '{note} in the draft': '{note} im Entwurf',
  '(as found {string})': '(vorgefunden {string})',
  '{tension}, {share} % of the break load, B = {b}': '{tension}, {share} % der Bruchlast, B = {b}',
  '{tension} ({oldTension}), {share} % of the break load ({oldShare} %), B = {b} ({oldB})':
    '{tension} ({oldTension}), {share} % der Bruchlast ({oldShare} %), B = {b} ({oldB})',
  'one size thinner': 'eine Stärke dünner',
  'one size thicker': 'eine Stärke dicker',
  'Pin {note} as it is here': '{note} so festlegen, wie er hier ist',
  'What a small slip does to {note}': 'Was ein kleiner Messfehler bei {note} ausmacht',
  'What a small slip does to this note': 'Was ein kleiner Messfehler bei diesem Ton ausmacht',
  slip: 'Messfehler',
  'every listed size': 'jede gelistete Stärke',
  'only what the shop has': 'nur, was die Werkstatt hat',
  '? No wire is free in the shop’s stock: count it under Order, or choose from every listed size.':
    '? Im Lager der Werkstatt ist kein Draht frei: unter „Bestellen“ zählen oder aus jeder gelisteten Stärke wählen.',
  '{count, plural, one {# size is} other {# sizes are}} free in stock now.':
    '{count, plural, one {# Stärke ist} other {# Stärken sind}} jetzt im Lager frei.',
  'speaking length ± 0.5 mm': 'klingende Länge ± 0,5 mm',
  'wire ± 5 µm': 'Draht ± 5 µm',
  'core ± 5 µm': 'Kerndraht ± 5 µm',
  'windings ± 5 µm': 'Umspinnungen ± 5 µm',
  '± {points} points': '± {points} Prozentpunkte',
  '{notes, plural, one {# note} other {# notes}} changed, {load}, tension uneven by {tension} %, B by {b} %, {changes, plural, one {# change} other {# changes}} of plain size, {tied} tied':
    '{notes, plural, one {# Ton} other {# Töne}} geändert, {load}, Zugkraft um {tension} % ungleichmäßig, B um {b} %, {changes, plural, one {# Wechsel} other {# Wechsel}} der blanken Stärke, {tied} einzeln mit Öse',
  'No note is pinned.': 'Kein Ton ist festgelegt.',
  'Pinned: {notes}. Compute again to fit the others to them.':
    'Festgelegt: {notes}. Noch einmal berechnen, um die übrigen daran anzupassen.',
  'What does more evenness cost?': 'Was kostet mehr Gleichmäßigkeit?',
  'unevenness of tension (%)': 'Ungleichmäßigkeit der Zugkraft (%)',
  'notes changed': 'geänderte Töne',
  'Not proved to be the best: a better one could lower its sum by {share} % at most.':
    'Nicht bewiesen, dass es nichts Besseres gibt: Eine bessere könnte ihre Summe um höchstens {share} % senken.',
  'Could not plan scales: this browser ran out of memory for it, or did not load the part of the program that does it. Nothing was changed; load this page again and try once more.':
    'Die Mensuren ließen sich nicht planen: Dem Browser fehlte der Speicher dafür, oder er hat den Teil des Programms, der es tut, nicht geladen. Nichts wurde geändert; die Seite neu laden und es noch einmal versuchen.',
};
