import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  'What does it cost in wire and bass strings?': 'Was kostet sie an Draht und Basssaiten?',
  'Counting what it takes …': 'Der Bedarf wird gezählt …',
  'That cannot be told yet: no two neighbouring notes beside a break can both be computed. Enter what they lack in Record.':
    'Das lässt sich noch nicht sagen: Neben keinem Übergang sind zwei Nachbartöne beide zu berechnen. Unter „Aufnehmen“ eintragen, was ihnen fehlt.',
  'whiskers show one standard uncertainty. {basis}': 'die Striche zeigen eine Standardunsicherheit. {basis}',
  'No string can be computed yet. {link}': 'Noch lässt sich keine Saite berechnen. {link}',
  'There is only the scale as it was found. {link}': 'Es gibt nur die vorgefundene Mensur. {link}',
  'Make a proposal first.': 'Zuerst einen Vorschlag machen.',
  Before: 'Vorher',
  After: 'Nachher',
  'Beside them, in the charts': 'Daneben, in den Diagrammen',
  'The paper compares the scale as found with the one that is chosen, or with the latest proposal.':
    'Das Papier vergleicht die vorgefundene Mensur mit der gewählten oder mit dem letzten Vorschlag.',
  'No scale is chosen for stringing yet.': 'Noch ist keine Mensur zum Beziehen gewählt.',
  'Chosen for stringing: {strong}, because “{reason}”.': 'Zum Beziehen gewählt: {strong}, weil „{reason}“.',
  'What do the bridges and the plate bear?': 'Was tragen Stege und Gussplatte?',
  'Loads before and after': 'Lasten vorher und nachher',
  '[of a figure] change': 'Änderung',
  'bearing, before → after': 'Stegdruck, alt → neu',
  '{before} → {after} ({count, plural, one {# note} other {# notes}} read)':
    '{before} → {after} ({count, plural, one {# Ton} other {# Töne}} gemessen)',
  'How do intervals beat over the break?': 'Wie schweben Intervalle über den Übergang?',
  'Between {breaks}. Beats a second; a row that rises evenly is heard as even. Tuned by {how, select, stretch {the stretch of each scale’s own inharmonicity} other {equal temperament, as too few notes are known for a stretch}}.':
    'Zwischen {breaks}. Schwebungen je Sekunde; eine Reihe, die gleichmäßig steigt, klingt gleichmäßig. Gestimmt {how, select, stretch {mit der Spreizung aus der eigenen Inharmonizität jeder Mensur} other {gleichstufig, weil für eine Spreizung zu wenige Töne bekannt sind}}.',
  '{lower} and {upper}': '{lower} und {upper}',
  'Thirds over the break': 'Terzen über den Übergang',
  'Fifths and octaves over the break': 'Quinten und Oktaven über den Übergang',
  interval: 'Intervall',
  'Which notes change?': 'Welche Töne ändern sich?',
  'Changes note by note': 'Änderungen Ton für Ton',
  'of break': 'der Bruchlast',
  'What wire does the second one take?': 'Welchen Draht braucht die zweite?',
  'Plain wire needed': 'Nötiger blanker Draht',
  'Cores and windings of its wound strings': 'Kerndrähte und Umspinnungen ihrer umsponnenen Saiten',
  'Cores and windings': 'Kerndrähte und Umspinnungen',
  '[use of a wire] plain': 'blank',
  '[use of a wire] winding': 'Umspinnung',
  '[of a wire] use': 'wofür',
  'At the pitch of equal temperament.': 'In gleichstufiger Stimmung.',
  'How hard does each note press on its bridge?': 'Wie stark drückt jeder Ton auf seinen Steg?',
  'bearing of the whole note (N)': 'Stegdruck des ganzen Tons (N)',
  'bearing of the whole note (lbf)': 'Stegdruck des ganzen Tons (lbf)',
  'Only notes at which bearing was read under load. Force = tension × sin of the bearing angle, which a proposal is taken to keep. From a rise the angle follows by its span; a span shorter than the string is a gauge over the bridge, with the bridge in its middle, where the angle is least. What a bridge and its board can bear is a matter for the maker’s data and a specialist.':
    'Nur Töne, an denen der Stegdruck unter Last gemessen wurde. Kraft = Zugkraft × Sinus des Druckwinkels; angenommen ist, dass ein Vorschlag ihn behält. Aus einer Höhe folgt der Winkel mit ihrer Spanne; eine Spanne, die kürzer ist als die Saite, ist eine Lehre über dem Steg mit dem Steg in der Mitte, wo der Winkel am kleinsten ist. Was Steg und Resonanzboden tragen können, sagen die Angaben des Herstellers und eine Fachkraft.',
  '“{after}” has the same sizes as “{before}” at every note: where they read differently it is by less than half a size.':
    '„{after}“ hat an jedem Ton dieselben Stärken wie „{before}“: Wo die Werte abweichen, ist es weniger als eine halbe Stärke.',
  '{count, plural, one {# note of {all} gets} other {# notes of {all} get}} another size.':
    '{count, plural, one {# Ton von {all} bekommt} other {# Töne von {all} bekommen}} eine andere Stärke.',
  'All strings together pull {is} instead of {was}, {change}.':
    'Alle Saiten zusammen ziehen mit {is} statt {was}, {change}.',
  'The strings of all notes that both scales have together pull {is} instead of {was}, {change}.':
    'Die Saiten aller Töne, die beide Mensuren haben, ziehen zusammen mit {is} statt {was}, {change}.',
  'Beyond the shop’s limits: {before, plural, one {# finding} other {# findings}} before, {after, plural, one {# finding} other {# findings}} after.':
    'Außerhalb der Grenzen der Werkstatt: {before, plural, one {# Befund} other {# Befunde}} vorher, {after, plural, one {# Befund} other {# Befunde}} nachher.',
  'Known in one of the two scales only: {notes}.': 'Nur in einer der beiden Mensuren bekannt: {notes}.',
  'no change': 'unverändert',
  still: 'schwebungsfrei',
  '{beats} wide': '{beats} weit',
  '{beats} narrow': '{beats} eng',
  'Turn the volume down before the first sound, above all with headphones; then up until it is pleasant. Both scales play at the same level.':
    'Vor dem ersten Klang die Lautstärke herunterdrehen, vor allem mit Kopfhörern; dann hoch, bis es angenehm ist. Beide Mensuren klingen gleich laut.',
  'What to hear': 'Was zu hören ist',
  'one string': 'eine Saite',
  'thirds across the break': 'Terzen über den Übergang',
  'Which break': 'Welcher Übergang',
  'One note lower': 'Einen Ton tiefer',
  'One note higher': 'Einen Ton höher',
  'or tap the map of the piano': 'oder auf den Plan des Instruments tippen',
  'How still are the unisons?': 'Wie rein sind die Chöre?',
  'Choose another scale for B to compare, or make a proposal.':
    'Zum Vergleichen für B eine andere Mensur wählen oder einen Vorschlag machen.',
  'Keys: {a} and {b} play, {s} stops. What is heard is the strings by themselves, from their exact partials, tuned by each scale’s own stretch. Strike and decay are plausible and alike for both; soundboard and hammers are not in it, so it tells two scales apart and does not say how the piano will sound.':
    'Tasten: {a} und {b} spielen, {s} hält an. Zu hören sind die Saiten allein, aus ihren genauen Teiltönen, gestimmt mit der Spreizung jeder Mensur. Anschlag und Abklingen sind glaubhaft und für beide gleich; Resonanzboden und Hämmer sind nicht dabei. So lassen sich zwei Mensuren unterscheiden; wie das Instrument klingen wird, sagt es nicht.',
  'Could not make this sound: {problem}': 'Dieser Klang ließ sich nicht erzeugen: {problem}',
  'Making the sound …': 'Der Klang wird erzeugt …',
  'one cent apart': 'ein Cent auseinander',
  'two cents apart': 'zwei Cent auseinander',
  'This scale has no break to cross.': 'Diese Mensur hat keinen Übergang.',
  'Left out, as they cannot be computed yet: {notes}.':
    'Weggelassen, weil sie sich noch nicht berechnen lassen: {notes}.',
};
