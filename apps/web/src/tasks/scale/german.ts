import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  'No wire is cut here for {count, plural, one {# plain note} other {# plain notes}} that cannot be computed yet. Beside them a string may come out tied that shares a wire in the end.':
    'Für {count, plural, one {# blanken Ton, der} other {# blanke Töne, die}} noch nicht berechnet werden {count, plural, one {kann} other {können}}, wird hier kein Draht zugeschnitten. Daneben kann eine Saite einzeln stehen, die am Ende einen Draht teilt.',
  '{count, plural, one {# note is} other {# notes are}} not in it.':
    '{count, plural, one {# Ton fehlt} other {# Töne fehlen}} darin.',
  '{count} of {all} notes cannot be computed yet and {count, plural, one {is} other {are}} in no scale that is made here. Enter what they lack first: sizes that are chosen without them may not suit them.':
    '{count} von {all} Tönen {count, plural, one {kann} other {können}} noch nicht berechnet werden und {count, plural, one {steht} other {stehen}} in keiner Mensur, die hier entsteht. Zuerst eintragen, was fehlt: Drahtstärken, die ohne sie gewählt werden, passen vielleicht nicht zu ihnen.',
  // As found
  'Working out the uncertainties …': 'Die Unsicherheiten werden berechnet …',
  'Every figure carries its standard uncertainty.': 'Jede Zahl trägt ihre Standardunsicherheit.',
  'The uncertainties cannot be worked out: readings of one note contradict each other. See the values in question in Record.':
    'Die Unsicherheiten lassen sich nicht berechnen: Messwerte eines Tons widersprechen einander. Siehe die fraglichen Werte unter „Aufnehmen“.',
  'Scale as found': 'Vorgefundene Mensur',
  'No string can be computed yet: a note needs its stringing, its wire and its speaking length. {link}':
    'Noch lässt sich keine Saite berechnen: Ein Ton braucht seinen Bezug, seinen Draht und seine klingende Länge. {link}',
  'Enter readings in Record.': 'Messwerte unter „Aufnehmen“ eintragen.',
  'Load by section': 'Last nach Abschnitten',
  'Load by bridge': 'Last nach Stegen',
  'All together {load} ({also}){known, select, yes {, ± {uncertainty},} other {}} over {strings} strings{missing, plural, =0 {} one {, without # note that cannot be computed yet} other {, without # notes that cannot be computed yet}}.':
    'Alles zusammen {load} ({also}){known, select, yes {, ± {uncertainty},} other {}} an {strings} Saiten{missing, plural, =0 {} one {, ohne # Ton, der sich noch nicht berechnen lässt} other {, ohne # Töne, die sich noch nicht berechnen lassen}}.',
  'Not computed yet': 'Noch nicht berechnet',
  'What stands out': 'Was auffällt',
  'Nothing that can be computed lies beyond the shop’s limits.':
    'Nichts, was sich berechnen lässt, liegt außerhalb der Grenzen der Werkstatt.',
  'See {note}': '{note} ansehen',
  'Limits are the shop’s own and start from {source}; they are not physics.':
    'Die Grenzen sind die der Werkstatt (Ausgangswerte: {source}); sie sind keine Physik.',
  'also as': 'auch als',
  // Charts
  'tension of one string (N)': 'Zugkraft einer Saite (N)',
  'tension of one string (lbf)': 'Zugkraft einer Saite (lbf)',
  'At the pitch of equal temperament; every string of a unison is taken to be alike.':
    'In gleichstufiger Stimmung; alle Saiten eines Chors gelten als gleich.',
  'tension as a share of the break load (%)': 'Zugkraft als Anteil an der Bruchlast (%)',
  'Break load by the table {tables}.': 'Bruchlast nach der Tabelle {tables}.',
  '{notes} lie outside the table: their figures extend it.':
    'Außerhalb der Tabelle: {notes}. Ihre Zahlen setzen sie fort.',
  '{share} % of the break load': '{share} % der Bruchlast',
  'inharmonicity B, logarithmic': 'Inharmonizität B, logarithmisch',
  'B as in f = n·f₁·√(1 + B·n²).': 'B wie in f = n·f₁·√(1 + B·n²).',
  'Plain strings by the core formula.': 'Blanke Saiten nach der Kernformel.',
  'Wound strings from their exact modes, fitted over partials 1 to 8.':
    'Umsponnene Saiten aus ihren genauen Eigenschwingungen, angepasst an die Teiltöne 1 bis 8.',
  'whiskers show one standard uncertainty. {basis}': 'die Striche zeigen eine Standardunsicherheit. {basis}',
  // Compare
  Compare: 'Vergleichen',
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
    'Nur Töne, an denen der Stegdruck unter Last gemessen wurde. Kraft = Zugkraft × Sinus des Druckwinkels; angenommen ist, dass ein Vorschlag ihn behält. Aus einer Höhe folgt der Winkel mit ihrer Messstrecke; eine Strecke, die kürzer ist als die Saite, ist eine Lehre über dem Steg mit dem Steg in der Mitte, wo der Winkel am kleinsten ist. Was Steg und Resonanzboden tragen können, sagen die Angaben des Herstellers und eine Fachkraft.',
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
  // Hear
  Hear: 'Hören',
  'Turn the volume down before the first sound, above all with headphones; then up until it is pleasant. Both scales play at the same level.':
    'Vor dem ersten Klang die Lautstärke herunterdrehen, vor allem mit Kopfhörern; dann hoch, bis es angenehm ist. Beide Mensuren klingen gleich laut.',
  'What to hear': 'Was zu hören ist',
  'one string': 'eine Saite',
  unison: 'Chor',
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
  // Loops and cuts
  'string {string}': 'Saite {string}',
  '{wire} tied': '{wire} einzeln mit Öse',
  '{one} with {other}': '{one} mit {other}',
  'Loops and cuts': 'Schlaufen und Zuschnitt',
  'No plain string can be computed yet: enter sections, wires and speaking lengths in Record.':
    'Noch lässt sich keine blanke Saite berechnen: Abschnitte, Drähte und klingende Längen unter „Aufnehmen“ eintragen.',
  '{wires, plural, one {# plain wire} other {# plain wires}}, of which {tied}: the fewest with these sizes, as a loop joins two neighbours of one size within a section.':
    '{wires, plural, one {# blanker Draht} other {# blanke Drähte}}, davon {tied}: weniger geht mit diesen Stärken nicht, denn eine Schlaufe verbindet zwei Nachbarn gleicher Stärke in einem Abschnitt.',
  '{count} tied': '{count} einzeln mit Öse',
  'As the worn wire was read, until the sizes it most probably had are worked out …':
    'So wie der abgenutzte Draht gemessen wurde, bis seine wahrscheinlichsten Stärken berechnet sind …',
  'What was found, in the sizes that its wire most probably had.':
    'Das Vorgefundene, in den Stärken, die sein Draht am wahrscheinlichsten hatte.',
  'Cut length = front + speaking + back lengths, {coils} coils and becket on each pin, half a turn round the hitch pin or {tie} for a tied loop, and {waste} waste at each pin (common practice). Cut the first wire of a size, string it, and correct before cutting the rest. Cut ends spring: hold both sides and wear glasses.':
    'Zuschnitt = Vorderlänge + klingende Länge + Hinterlänge, {coils} Windungen und Knick im Wirbelauge an jedem Wirbel, eine halbe Umdrehung um den Anhangstift oder {tie} für eine Öse, und {waste} Abfall an jedem Wirbel (gängige Praxis). Den ersten Draht einer Stärke zuschneiden, aufziehen und berichtigen, bevor die übrigen zugeschnitten werden. Abgeschnittene Enden schnellen weg: beide Seiten festhalten und Schutzbrille tragen.',
  '{section}: {wires, plural, one {# wire} other {# wires}}, {tied} tied':
    '{section}: {wires, plural, one {# Draht} other {# Drähte}}, {tied} einzeln mit Öse',
  'Loops of {section}, drawn': 'Schlaufen von {section}, gezeichnet',
  'A change that moves by one note saves a tied string:':
    'Ein Wechsel, der um einen Ton rückt, spart eine einzelne Saite:',
  'Take it into a draft': 'In einen Entwurf übernehmen',
  'Cut list of {section}': 'Zuschnittliste von {section}',
  '[on both pins] coils': 'Windungen',
  '[on both pins] beckets': 'Wirbelauge',
  '[part of a wire] hitch or tie': 'Anhang oder Öse',
  'Lengths in {unit}': 'Längen in {unit}',
  'rests on': 'beruht auf',
  'Loops on the plan of the piano': 'Schlaufen auf dem Plan des Instruments',
  'Loops on the plan, {section}': 'Schlaufen auf dem Plan, {section}',
  'Show on the plan': 'Auf dem Plan zeigen',
  'Tap the plan to see which strings share a wire.':
    'Auf den Plan tippen, um zu sehen, welche Saiten sich einen Draht teilen.',
  '{label}: note': '{label}: Ton',
  'one wire, two strings': 'ein Draht, zwei Saiten',
  'tied: its own ring': 'einzeln: eigene Öse',
  'the size changes; colours take turns': 'die Stärke wechselt; die Farben wechseln sich ab',
  'a change inside a loop, which costs a tied string':
    'ein Wechsel in einer Schlaufe, der eine einzelne Saite kostet',
  'Lengths and slants as on the plan, bridge to hitch pin included. Choose a section to see its strings apart.':
    'Längen und Schrägen wie auf dem Plan, mit der Strecke vom Steg zum Anhangstift. Einen Abschnitt wählen, um seine Saiten einzeln zu sehen.',
  'Lengths and slants are to scale; the room between strings is widened.':
    'Längen und Schrägen sind maßstäblich; der Raum zwischen den Saiten ist geweitet.',
  'No back length is read in {sections}: 60 mm are drawn.':
    'Keine Hinterlänge gemessen in {sections}: Gezeichnet sind 60 mm.',
  // Scales of this job
  'Scales of this job': 'Mensuren dieses Auftrags',
  'Choose “{name}”': '„{name}“ wählen',
  'Change a copy': 'Eine Kopie ändern',
  Withdraw: 'Zurücknehmen',
  'String “{name}”': 'Nach „{name}“ beziehen',
  'Withdraw “{name}”': '„{name}“ zurücknehmen',
  'Withdraw it': 'Zurücknehmen',
  'For whoever asks later.': 'Für alle, die später fragen.',
  // Propose
  Propose: 'Vorschlagen',
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
  yes: 'ja',
  no: 'nein',
  'keep as found': 'lassen wie vorgefunden',
  'choose anew': 'neu wählen',
  'The break from wound to plain may move by': 'Der Übergang von umsponnen zu blank darf sich verschieben um',
  '[how far] nothing': 'gar nicht',
  '{count, plural, one {# note} other {# notes}}': '{count, plural, one {# Ton} other {# Töne}}',
  'Highest load of all strings (kN)': 'Höchste Last aller Saiten (kN)',
  'Left empty, none is asked.': 'Leer gelassen, gilt keine.',
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
  '{tension} N, {share} % of the break load, B = {b}': '{tension} N, {share} % der Bruchlast, B = {b}',
  '{tension} N ({oldTension} N), {share} % of the break load ({oldShare} %), B = {b} ({oldB})':
    '{tension} N ({oldTension} N), {share} % der Bruchlast ({oldShare} %), B = {b} ({oldB})',
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
  '{notes, plural, one {# note} other {# notes}} changed, tension uneven by {tension} %, B by {b} %, {changes, plural, one {# change} other {# changes}} of plain size, {tied} tied':
    '{notes, plural, one {# Ton} other {# Töne}} geändert, Zugkraft um {tension} % ungleichmäßig, B um {b} %, {changes, plural, one {# Wechsel} other {# Wechsel}} der blanken Stärke, {tied} einzeln mit Öse',
  'No note is pinned.': 'Kein Ton ist festgelegt.',
  'Pinned: {notes}. Compute again to fit the others to them.':
    'Festgelegt: {notes}. Noch einmal berechnen, um die übrigen daran anzupassen.',
  '{core} core, wound {windings}': 'Kerndraht {core}, umsponnen {windings}',
  'as found, in whole sizes': 'vorgefunden, in ganzen Stärken',
  'What does more evenness cost?': 'Was kostet mehr Gleichmäßigkeit?',
  'unevenness of tension (%)': 'Ungleichmäßigkeit der Zugkraft (%)',
  'notes changed': 'geänderte Töne',
  'Not proved to be the best: a better one could lower its sum by {share} % at most.':
    'Nicht bewiesen, dass es nichts Besseres gibt: eine bessere könnte ihre Summe um höchstens {share} % senken.',
  'Could not plan scales: this browser ran out of memory for it, or did not load the part of the program that does it. Nothing was changed; load this page again and try once more.':
    'Die Mensuren ließen sich nicht planen: Dem Browser fehlte der Speicher dafür, oder er hat den Teil des Programms, der es tut, nicht geladen. Nichts wurde geändert; die Seite neu laden und es noch einmal versuchen.',
};
