import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  'Bass string order': 'Basssaitenbestellung',
  'Strings wanted': 'Bestellte Saiten',
  'Made from': 'Gefertigt nach',
  'Digest of the strings': 'Prüfsumme der Saiten',
  Allowances: 'Zugaben',
  '[of goods] Order': 'Bestellung',
  'To be confirmed before ordering': 'Vor der Bestellung zu klären',
  'Strings made to order cannot be sent back. Tick each line once it is settled and written in.':
    'Auf Bestellung gefertigte Saiten lassen sich nicht zurückgeben. Jede Zeile abhaken, sobald sie geklärt und eingetragen ist.',
  'If an old string goes along as a pattern': 'Wenn eine alte Saite als Muster beiliegt',
  'Coil it, tie it in three places and cover both ends before it is posted: old wire springs and cuts.':
    'Vor dem Versand aufrollen, an drei Stellen binden und beide Enden abdecken: Alter Draht federt und schneidet.',
  'The strings': 'Die Saiten',
  'Wound strings to be made from {scale}. No figure is improved, smoothed or rounded to a size; a figure that nobody has is a blank.':
    'Umsponnene Saiten, zu fertigen nach: {scale}. Keine Zahl ist verbessert, geglättet oder auf eine Drahtnummer gerundet; was niemand weiß, bleibt zum Eintragen frei.',
  'none in any length from loop to termination. Core beyond the front termination: front length, {coils} coils on the pin, {becket} for its eye and {waste} to cut off; a tuning pin that was not measured counts as {pin} ({sources}).':
    'keine in den Längen von der Öse bis zur Auflage. Kerndraht ab der vorderen Auflage: Vorderlänge, {coils} Windungen auf dem Wirbel, {becket} für das Wirbelauge und {waste} zum Abschneiden; ein nicht gemessener Stimmwirbel zählt mit {pin} ({sources}).',
  'Tolerances of the checks': 'Toleranzen der Prüfungen',
  'lengths that belong together {length}; core and over-all diameter of the strings of one note {diameter} ({sources})':
    'zusammengehörige Längen {length}; Kern- und Außendurchmesser der Saiten eines Tons {diameter} ({sources})',
  '[strings] none: no note of this record is described as wound':
    'keine: Kein Ton dieser Aufnahme ist als umsponnen beschrieben',
  '{strings} for {notes, plural, one {# note} other {# notes}}{unsaid, plural, =0 {} one {; for # note the number is not said} other {; for # notes the number is not said}}':
    '{strings} für {notes, plural, one {# Ton} other {# Töne}}{unsaid, plural, =0 {} one {; für # Ton ist die Anzahl nicht angegeben} other {; für # Töne ist die Anzahl nicht angegeben}}',
  'This order may not be whole': 'Diese Bestellung ist vielleicht nicht vollständig',
  'For {count, plural, one {# note} other {# notes}} ({first} and up) nobody has said whether the strings are plain or wound. They are not in this order.':
    'Für {count, plural, one {# Ton} other {# Töne}} ({first} und höher) hat niemand gesagt, ob die Saiten blank oder umsponnen sind. Sie fehlen in dieser Bestellung.',
  'Windings, loops and ends': 'Umspinnung, Ösen und Enden',
  '[of a string in its unison] side': 'Seite',
  'loop style': 'Form der Öse',
  'winding runs, seen from the loop': 'Umspinnung läuft, von der Öse gesehen',
  'inner winding wire': 'innerer Spinndraht',
  'outer winding wire': 'äußerer Spinndraht',
  'winding wire': 'Spinndraht',
  'core beyond front': 'Kerndraht ab Auflage',
  single: 'einzig',
  middle: 'Mitte',
  'NOT SIGNED: {sentence}': 'NICHT UNTERZEICHNET: {sentence}',
  '{sentence} Signed by {name} on {day}: {reason}': '{sentence} Unterzeichnet von {name} am {day}: {reason}',
  '[of an order] Checks': 'Prüfungen',
  'The figures agree with each other: bare ends and winding make the speaking length, loop and back length agree, diameters grow outwards, rows run evenly, and no core is above its share of the break load.':
    'Die Zahlen stimmen miteinander überein: Blanke Enden und Umspinnung ergeben die klingende Länge, Öse und Hinterlänge passen zusammen, die Durchmesser wachsen nach außen, die Reihen verlaufen gleichmäßig, und kein Kerndraht liegt über seinem Anteil an der Bruchlast.',
  'These figures do not agree. The strings must not be made before each is measured again or signed by name.':
    'Diese Zahlen stimmen nicht überein. Die Saiten dürfen nicht gefertigt werden, bevor jede noch einmal gemessen oder namentlich unterzeichnet ist.',
  '{missing} figures are missing, see above; 0 of them are signed for.':
    '{missing} Zahlen fehlen, siehe oben; für keine davon hat jemand unterzeichnet.',
  '{missing} figures are missing, see above; {signed} of them are signed for by {names}.':
    '{missing} Zahlen fehlen, siehe oben; für {signed} davon hat unterzeichnet: {names}.',
  'Not ready to be sent: {count, plural, one {# check is} other {# checks are}} neither passed nor signed.':
    'Noch nicht zu versenden: {count, plural, one {# Prüfung ist} other {# Prüfungen sind}} weder bestanden noch unterzeichnet.',
  'Before this goes out': 'Bevor das hinausgeht',
  sent: 'abgeschickt',
  confirmed: 'bestätigt',
  cancelled: 'storniert',
  drafted: 'entworfen',
  'partly delivered': 'teilweise geliefert',
  delivered: 'geliefert',
  'drafted {day}': 'entworfen am {day}',
  'sent {day}': 'abgeschickt am {day}',
  'expected {day}': 'erwartet am {day}',
  'Speaking length: {notes}.': 'Klingende Länge: {notes}.',
  'Core: {notes}.': 'Kerndraht: {notes}.',
  'Over inner layer: {notes}.': 'Durchmesser über der inneren Lage: {notes}.',
  'Over all: {notes}.': 'Außendurchmesser: {notes}.',
  'Bare at front: {notes}.': 'Vorn blank: {notes}.',
  'Bare at bridge: {notes}.': 'Am Steg blank: {notes}.',
  'Loop to winding: {notes}.': 'Öse bis Umspinnung: {notes}.',
  'Winding length: {notes}.': 'Länge der Umspinnung: {notes}.',
  'loop to winding': 'Öse bis Umspinnung',
  'loop to front termination': 'Öse bis Auflage vorn',
  '[layers, in a very narrow column] lay': 'Lg.',
  '[share of the break load] of core': 'Kern',
  'Wound strings': 'Umsponnene Saiten',
  tension: 'Zugkraft',
  '[beside a line to write on] not read': 'offen',
  'not computed': 'nicht berechnet',
  'Side: as seen from the keyboard, left is the bass side. Lay: layers of winding. Speaking length: front termination to bridge pin. Bare ends: unwound, inside the speaking length. Lengths from the loop are from its inside, where it lies on the hitch pin. ° worked out from other readings.':
    'Seite: von der Tastatur aus gesehen, links ist die Bassseite. Lg.: Lagen der Umspinnung. Klingende Länge: von der vorderen Auflage bis zum Stegstift. Blanke Enden: ohne Umspinnung, innerhalb der klingenden Länge. Längen ab der Öse zählen von ihrer Innenseite, wo sie am Anhangstift anliegt. ° aus anderen Messwerten errechnet.',
  'Tension of one string at its pitch: {tension} (steel core, copper winding, bare ends counted as bare); u: its standard uncertainty, with what is common for instruments and materials. Of core: tension as a share of the break load of the core by {table} ({share}).':
    'Zugkraft einer Saite auf Tonhöhe: {tension} (Kerndraht Stahl, Umspinnung Kupfer, blanke Enden als blank gerechnet); u: ihre Standardunsicherheit, mit den üblichen Werten für Messgeräte und Werkstoffe. Kern: Zugkraft als Anteil an der Bruchlast des Kerndrahts nach {table} ({share}).',
  '* The core lies outside the range of that table; the figure is an extension of it.':
    '* Der Kerndraht liegt außerhalb dieser Tabelle; die Zahl setzt sie fort.',
  'Number wanted: {notes} not said.': 'Stückzahl: {notes} nicht angegeben.',
  '{notes} unknown (somebody looked and could not read it)':
    '{notes} unbekannt (nachgesehen und nicht abzulesen)',
  '{notes} not read': '{notes} nicht gemessen',
  '{first} to {last}': '{first} bis {last}',
  '{note}: {contradiction}. Measure it again.': '{note}: {contradiction}. Noch einmal messen.',
  '{place}: it was remarked “{text}”.': '{place}: Bemerkt wurde „{text}“.',
  'Loop style not stated: {notes}.': 'Form der Öse nicht angegeben: {notes}.',
  'Direction of the winding not stated: {notes}.': 'Richtung der Umspinnung nicht angegeben: {notes}.',
  'Hitch pin diameter not stated: {notes}.': 'Durchmesser des Anhangstifts nicht angegeben: {notes}.',
  'Core round or hexagonal, and whether its ends are flattened under the winding: not stated.':
    'Kerndraht rund oder sechskantig, und ob er unter den Enden der Umspinnung flach geschlagen ist: nicht angegeben.',
  'Winding wire: copper is assumed; say if it is bare or plated, or of another metal.':
    'Spinndraht: angenommen ist Kupfer; angeben, ob blank oder überzogen oder aus anderem Metall.',
  'Length of core wire beyond the front termination not stated, as the front length was not read: {notes}.':
    'Länge des Kerndrahts ab der vorderen Auflage nicht angegeben, weil die Vorderlänge nicht gemessen wurde: {notes}.',
};
