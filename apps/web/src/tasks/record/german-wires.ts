import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  Lengths: 'Längen',
  'The bridge and the front terminations are smooth, so the lengths of a section are too. What lies off the line is named; what was not read is filled with an interval and is never taken for a reading.':
    'Der Steg und die vorderen Auflagen verlaufen glatt, also auch die Längen eines Abschnitts. Was neben der Linie liegt, wird genannt; was nicht gemessen wurde, wird mit einem Bereich gefüllt und gilt nie als Messwert.',
  'No section is described yet: a line belongs to one.':
    'Noch ist kein Abschnitt beschrieben: Eine Linie gehört zu einem.',
  'Measure {note}': '{note} messen',
  'Lengths of the section {section}': 'Längen des Abschnitts {section}',
  '{section}: {read} of {notes} read': '{section}: {read} von {notes} gemessen',
  'Every note is read, and every reading lies on the line.':
    'Jeder Ton ist gemessen, und jeder Messwert liegt auf der Linie.',
  'Off the line': 'Neben der Linie',
  'Not read, filled from the line': 'Nicht gemessen, aus der Linie gefüllt',
  filled: 'gefüllt',
  'Wound strings that do not add up': 'Umsponnene Saiten mit Widersprüchen',
  'Loops and ties': 'Schlaufen und Ösen',
  'A looped wire serves two neighbouring pins round one hitch pin; a tied wire has a loop of its own. Tap two strings that share a wire, or choose a string and say what it is.':
    'Ein Draht mit Schlaufe läuft von einem Wirbel um einen Anhangstift zum benachbarten Wirbel; ein einzelner Draht hat seine eigene Öse. Tippen Sie auf zwei Saiten, die sich einen Draht teilen, oder wählen Sie eine Saite und geben Sie an, was sie ist.',
  'No section is described yet: strings are taken section by section.':
    'Noch ist kein Abschnitt beschrieben: Saiten werden Abschnitt für Abschnitt genommen.',
  '{strings} strings: {looped} looped, {tied} tied, {unsaid} not said.':
    '{strings} Saiten: {looped} mit Schlaufe, {tied} einzeln mit Öse, {unsaid} nicht angegeben.',
  Questions: 'Fragen',
  'How the notes of this section are strung is not described yet.':
    'Wie die Töne dieses Abschnitts bezogen sind, ist noch nicht beschrieben.',
  // Stands under every string of a section, three side by side on a phone.
  '[of a wire] not said': 'offen',
  noted: 'notiert',
  'Loop with next': 'Mit der nächsten verbinden',
  'with next': 'mit der nächsten',
  'Tied {kbd}': 'Einzeln {kbd}',
  'Loop on from here': 'Ab hier weiter mit Schlaufen',
  'from here': 'ab hier',
  'Unknown {kbd}': 'Unbekannt {kbd}',
  'This wire': 'Dieser Draht',
  Wire: 'Draht',
  'Undo {kbd}': 'Rückgängig {kbd}',
  'Keep the wire': 'Draht speichern',
  'Number the pins on from here': 'Stifte ab hier durchzählen',
  'Hitch pin': 'Anhangstift',
  'its number along the section, or a name of its own': 'seine Nummer im Abschnitt oder ein eigener Name',
  'Second hitch pin': 'Zweiter Anhangstift',
  'where the wire lies round two': 'wo der Draht um zwei liegt',
  'what is odd about it': 'was daran auffällt',
  "It is a predecessor's repair": 'Es ist die Reparatur eines Vorgängers',
  tied: 'einzeln mit Öse',
  'Cannot keep this wire: its first hitch pin is needed beside the second, none was found. Fill in the first, or clear both.':
    'Der Draht lässt sich nicht speichern: Neben dem zweiten wird der erste Anhangstift gebraucht, gefunden wurde keiner. Füllen Sie den ersten aus, oder leeren Sie beide.',
  '{name}: its wire': '{name}: sein Draht',
  "Cannot number the hitch pins: a whole number to begin with is needed, '{found}' was found. Type the number of this wire's pin.":
    'Die Anhangstifte lassen sich nicht durchzählen: Gebraucht wird eine ganze Zahl als Anfang, gefunden wurde „{found}“. Geben Sie die Nummer des Stifts dieses Drahts ein.',
  'Cannot number the hitch pins: wires that are said are needed, none was found from here on. Say first which strings share a wire.':
    'Die Anhangstifte lassen sich nicht durchzählen: Gebraucht werden Drähte, zu denen etwas angegeben ist, ab hier wurde keiner gefunden. Geben Sie zuerst an, welche Saiten sich einen Draht teilen.',
  '{name} tied': '{name} einzeln mit Öse',
  '{name} unknown': '{name} unbekannt',
  'such as F#3': 'etwa F#3',
  'Tap the chart to see a note.': 'Tippen Sie auf das Diagramm, um einen Ton zu sehen.',
  'Wire readings and inferred sizes. Note': 'Drahtmesswerte und erschlossene Stärken. Ton',
  'diameter, {unit}, against the note; right: size': 'Durchmesser, {unit}, über dem Ton; rechts: Stärke',
  '○ a reading; ━ the size that is most probable; ◇ a doubtful note.':
    '○ ein Messwert; ━ die wahrscheinlichste Stärke; ◇ ein zweifelhafter Ton.',
  'Wire sizes': 'Drahtstärken',
  'Worn wire reads thin and unevenly. From all readings and stamps together follows the most probable size of every plain note, and how sure that is.':
    'Abgenutzter Draht misst sich dünn und ungleich. Aus allen Messwerten und Einschlägen zusammen folgt die wahrscheinlichste Stärke jedes blanken Tons, und wie sicher sie ist.',
  Numbering: 'Nummerierung',
  'let the readings say': 'die Messwerte entscheiden lassen',
  'Working the sizes out…': 'Stärken werden ausgerechnet …',
  'No size can be inferred yet: a plain note with a wire reading or a stamp is needed.':
    'Noch lässt sich keine Stärke erschließen: Gebraucht wird ein blanker Ton mit einem Drahtmesswert oder einem Einschlag.',
  'Go to {note}': 'Zu {note}',
  'Every note is at least 90 % sure.': 'Jeder Ton ist mindestens zu 90 % sicher.',
  'No reading.': 'Kein Messwert.',
  'Sizes along the compass, {lattice} numbers': 'Stärken über den Umfang, Nummern {lattice}',
  'Sizes along the compass': 'Stärken über den Umfang',
  'inferred diameter': 'erschlossener Durchmesser',
  'least sure': 'am unsichersten',
  'numbering unknown': 'Nummerierung unbekannt',
  '{lattice} number': 'Nummer {lattice}',
  'Take back the stamp {text} at {note}': 'Einschlag {text} bei {note} zurücknehmen',
  'Add a stamp': 'Einschlag hinzufügen',
  'Note it stands at': 'Ton, bei dem er steht',
  'What is stamped': 'Was eingeschlagen ist',
  'as it stands there, such as 14½': 'wie es dasteht, etwa 14½',
  'The size': 'Die Stärke',
  'Its numbering': 'Ihre Nummerierung',
  'Keep the stamp': 'Einschlag speichern',
  'over 99 %': 'über 99 %',
  'You fixed the {lattice} numbering; the readings and stamps are not asked.':
    'Sie haben die Nummerierung {lattice} festgelegt; Messwerte und Einschläge werden nicht gefragt.',
  'Cannot keep this stamp: what stands there is needed, nothing was found. Type the number as it is stamped.':
    'Der Einschlag lässt sich nicht speichern: Gebraucht wird, was dasteht, gefunden wurde nichts. Geben Sie die Nummer ein, wie sie eingeschlagen ist.',
  'see Lengths': 'siehe „Längen“',
  'about the line within {scatter}': 'um die Linie innerhalb {scatter}',
  '{length}, 95 %: {low} to {high}': '{length}, 95 %: {low} bis {high}',
  'taken back while recording': 'beim Aufnehmen zurückgenommen',
  'pin {pin}': 'Stift {pin}',
  'Last: {title}': 'Zuletzt: {title}',
  'Loop{withNext} {kbd}': 'Schlaufe{withNext} {kbd}',
  'Loop on{fromHere} {kbd}': 'Weiter in Schlaufen{fromHere} {kbd}',
  "a predecessor's repair": 'Reparatur eines Vorgängers',
  'The wire of {name}: {joined}': 'Der Draht von {name}: {joined}',
  'hitch pin {pin}': 'Anhangstift {pin}',
  'with {string}': 'mit {string}',
  '{count} hitch pins from {first} on': '{count} Anhangstifte ab {first}',
  '{count} wires from {name} on': '{count} Drähte ab {name}',
  '{first} and {second} on one wire': '{first} und {second} auf einem Draht',
  'size {size}, {diameter}, {odds}; {readings, plural, =0 {no reading} other {read {values}}}':
    'Nummer {size}, {diameter}, {odds}; {readings, plural, =0 {kein Messwert} other {gemessen {values}}}',
  doubtful: 'zweifelhaft',
  US: 'US',
  metric: 'metrisch',
  'Doubtful notes: {doubtful}{among}': 'Zweifelhafte Töne: {doubtful}{among}',
  'of {notes} plain notes': 'von {notes} blanken Tönen',
  'else {size}, {odds}': 'sonst {size}, {odds}',
  'Read {diameters}.': 'Gemessen {diameters}.',
  'Size stamps: {count}': 'Einschläge: {count}',
  '{note} “{text}” {says, select, starts {starts here} other {ends here}}, on the {on, select, bridge {bridge} plate {plate} other {elsewhere}}, {numbering}':
    '{note} „{text}“ {says, select, starts {beginnt hier} other {endet hier}}, {on, select, bridge {am Steg} plate {an der Gussplatte} other {anderswo}}, {numbering}',
  elsewhere: 'anderswo',
  'starts here': 'beginnt hier',
  'ends here': 'endet hier',
  'numbering {lattice}': 'Nummerierung {lattice}',
  'The readings and stamps speak for {lattice} numbers{odds, select, none {} other { ({odds})}}.':
    'Messwerte und Einschläge sprechen für Nummern {lattice}{odds, select, none {} other { ({odds})}}.',
  '{difference} {is, select, thinner {thinner} other {thicker}}':
    '{difference} {is, select, thinner {dünner} other {dicker}}',
  'As a whole the readings are {bias} than new wire (between {low} and {high}, 95 %); single readings scatter by {scatter}.':
    'Insgesamt sind die Messwerte {bias} als neuer Draht (zwischen {low} und {high}, 95 %); einzelne Messwerte streuen um {scatter}.',
  '{is, select, further {Further: } other {}}{rest, plural, one {# thing does} other {# things do}} not add up among the wound strings of this section; {link}.':
    '{is, select, further {Außerdem: } other {}}{rest, plural, one {# Angabe passt} other {# Angaben passen}} bei den umsponnenen Saiten dieses Abschnitts nicht zusammen; {link}.',
};
