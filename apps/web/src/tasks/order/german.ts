import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  // Allowances and tolerances
  'Allowances and tolerances': 'Zugaben und Toleranzen',
  'What is bought beyond what is strung, and how far off a string that comes may be. These figures are the shop’s and hold for every job.':
    'Was über das Aufgezogene hinaus gekauft wird, und wie weit eine gelieferte Saite abweichen darf. Diese Werte gehören der Werkstatt und gelten für jeden Auftrag.',
  'From: {source}': 'Woher: {source}',
  'From: {source}. Set by {by}, {day}; it started as {starting}.':
    'Woher: {source}. Gesetzt von {by}, {day}; anfangs {starting}.',
  Change: 'Ändern',
  'Change: {figure}': 'Ändern: {figure}',
  'Take back': 'Zurücknehmen',
  'Take back: {figure}': 'Zurücknehmen: {figure}',
  'Keep this figure': 'Diesen Wert behalten',
  Figure: 'Wert',
  'Figure, {unit}': 'Wert, {unit}',
  'Where it comes from': 'Woher er stammt',
  'Your own experience, a maker, a book: it is printed beside the figure.':
    'Eigene Erfahrung, ein Hersteller, ein Buch: es wird neben dem Wert gedruckt.',
  'Counting …': 'Wird gezählt …',
  'What this job needs by it': 'Was dieser Auftrag damit braucht',
  'No quantity of this job changes.': 'Keine Menge dieses Auftrags ändert sich.',
  'Nothing in the bass strings of this job changes.': 'An den Basssaiten dieses Auftrags ändert sich nichts.',
  'Core beyond the front termination, {strings, plural, one {# string} other {# strings}}; {note}:':
    'Kerndraht ab der vorderen Auflage, {strings, plural, one {# Saite} other {# Saiten}}; {note}:',
  'Checks that do not pass:': 'Nicht bestandene Prüfungen:',
  'What is added, and what may differ': 'Was zugegeben wird und was abweichen darf',
  'Nothing is added to a length from loop to termination. These figures are the shop’s and hold for every job; the order states them.':
    'Zu den Längen von der Öse bis zur Auflage kommt nichts hinzu. Diese Werte gehören der Werkstatt und gelten für jeden Auftrag; die Bestellung nennt sie.',
  "Cannot set this figure: {kind, select, length {a length in mm or in} share {a number of percent} other {a whole number}} is needed, {found, select, none {nothing} other {'{found}'}} was found. Type it again.":
    "Dieser Wert kann nicht gesetzt werden: {kind, select, length {eine Länge in mm oder in} share {eine Zahl in Prozent} other {eine ganze Zahl}} wird gebraucht, {found, select, none {nichts} other {'{found}'}} stand da. Geben Sie ihn noch einmal ein.",
  'inner layer': 'innere Lage',
  'bare front': 'vorn blank',
  'bare bridge': 'am Steg blank',
  winding: 'Umspinnung',
  'loop to front': 'Öse bis Auflage',
  loop: 'Öse',
  'Bass strings': 'Basssaiten',
  'No wound string is described yet. {link}': 'Noch ist keine umsponnene Saite beschrieben. {link}',
  'Describe the stringing in Record.': 'Den Bezug unter „Aufnehmen“ beschreiben.',
  '{sign} {strings} wound strings, made from {scale}.':
    '{sign} {strings} umsponnene Saiten; Grundlage: {scale}.',
  'Every check passes or is signed.': 'Jede Prüfung ist bestanden oder unterschrieben.',
  'A set made from guesses cannot be sent back: settle the checks below first.':
    'Ein nach Vermutungen gemachter Satz lässt sich nicht zurückgeben: zuerst die Prüfungen unten klären.',
  'The as-found record is not sealed; the paper says so.':
    'Die Bestandsaufnahme ist nicht versiegelt; das steht auch auf dem Papier.',
  'Digest of these strings: {digest}': 'Prüfsumme dieser Saiten: {digest}',
  Checks: 'Prüfungen',
  'Sign checks': 'Prüfungen unterschreiben',
  '{open} {open, plural, one {check does} other {checks do}} not pass. Measure again, or tick what you answer for and sign it by name.':
    '{open} {open, plural, one {Prüfung ist} other {Prüfungen sind}} nicht bestanden. Noch einmal messen, oder ankreuzen, wofür Sie einstehen, und mit Namen unterschreiben.',
  'Tick none': 'Keine ankreuzen',
  'Tick all': 'Alle ankreuzen',
  'Who answers for it': 'Wer dafür einsteht',
  'Why it is right all the same': 'Warum es trotzdem stimmt',
  'Sign {picked} {picked, plural, one {check} other {checks}}':
    '{picked} {picked, plural, one {Prüfung} other {Prüfungen}} unterschreiben',
  '{signed} signed {signed, plural, one {check} other {checks}}':
    '{signed} unterschriebene {signed, plural, one {Prüfung} other {Prüfungen}}',
  'The order is drafted. Print it under Papers, send it, and say so under Orders.':
    'Die Bestellung ist entworfen. Unter „Papiere“ drucken, abschicken und das unter „Bestellungen“ eintragen.',
  'Draft the order': 'Bestellung entwerfen',
  'Who makes the strings': 'Wer die Saiten macht',
  'Draft the bass string order': 'Basssaitenbestellung entwerfen',
  'In {unit, select, mm {millimetres} other {inches}}; ° is worked out from other readings. The paper has both units, tension and ends.':
    'In {unit, select, mm {Millimetern} other {Zoll}}; ° ist aus anderen Messwerten gerechnet. Auf dem Papier stehen beide Einheiten, Zugkraft und Enden.',
  'The core diameter is not known': 'Der Kerndurchmesser ist nicht bekannt',
  'The diameter over the inner layer is not known': 'Der Durchmesser über der inneren Lage ist nicht bekannt',
  'The over-all diameter is not known': 'Der Außendurchmesser ist nicht bekannt',
  'The speaking length is not known': 'Die klingende Länge ist nicht bekannt',
  'The bare end at the front is not known': 'Das blanke Ende vorn ist nicht bekannt',
  'The bare end at the bridge is not known': 'Das blanke Ende am Steg ist nicht bekannt',
  'The winding length is not known': 'Die Länge der Umspinnung ist nicht bekannt',
  'Loop to winding start is not known': 'Der Abstand von der Öse bis zur Umspinnung ist nicht bekannt',
  'The hitch pin diameter is not known': 'Der Durchmesser des Anhangstifts ist nicht bekannt',
  'The loop style is not stated': 'Die Art der Öse ist nicht angegeben',
  'The number of strings is not said': 'Die Zahl der Saiten ist nicht angegeben',
  Supplies: 'Material',
  Orders: 'Bestellungen',
  'Suppliers and stock': 'Lieferanten und Lager',
  'Nothing is ordered yet. Draft an order under {supplies} or {bass}.':
    'Noch ist nichts bestellt. Eine Bestellung unter {supplies} oder {bass} entwerfen.',
  'For the shelf': 'Fürs Lager',
  'Order to {supplier}': 'Bestellung bei {supplier}',
  'drafted {day} by {by}{sent, select, none {} other {, sent {sent}}}{expected, select, none {} other {, expected {expected}}}{needed, select, none {} other {, needed {needed}}}':
    'entworfen {day} von {by}{sent, select, none {} other {, abgeschickt {sent}}}{expected, select, none {} other {, erwartet {expected}}}{needed, select, none {} other {, gebraucht {needed}}}',
  '{count, plural, one {# line} other {# lines}}': '{count, plural, one {# Zeile} other {# Zeilen}}',
  here: 'da',
  '{received} of {quantity} here': '{received} von {quantity} da',
  'It was sent': 'Sie ist abgeschickt',
  'It was confirmed': 'Sie ist bestätigt',
  'Goods received': 'Ware ist da',
  'Cancel the order': 'Bestellung stornieren',
  '{came, plural, one {# line} other {# lines}} came {on}, noted by {by}':
    '{came, plural, one {# Zeile} other {# Zeilen}} geliefert {on}, eingetragen von {by}',
  'That was a slip': 'Das war ein Versehen',
  'The order was sent': 'Die Bestellung ist abgeschickt',
  'The order was confirmed': 'Die Bestellung ist bestätigt',
  'Expected here on': 'Hier erwartet am',
  'Take this delivery back': 'Diese Lieferung zurücknehmen',
  'Take it back': 'Zurücknehmen',
  'What went on the shelf with it is taken off again. Both stay in the journals, with the reason.':
    'Was damit ins Lager kam, wird wieder herausgenommen. Beides bleibt in den Journalen, mit dem Grund.',
  Why: 'Warum',
  'Goods received from {supplier}': 'Ware von {supplier} ist da',
  'It is here': 'Ist da',
  'None of these yet': 'Noch nichts davon',
  '{outstanding} still to come': '{outstanding} stehen noch aus',
  'String by string with both units, checks and digest: for whoever makes the strings.':
    'Saite für Saite mit beiden Einheiten, Prüfungen und Prüfsumme: für den Saitenmacher.',
  'The strings at true length over several sheets. Print at 100 %, and measure both rulers.':
    'Die Saiten in wahrer Länge über mehrere Blätter. Mit 100 % drucken und beide Lineale nachmessen.',
  'By supplier and by size, against the stock, with days to order by.':
    'Nach Lieferant und Größe, mit dem Lager verglichen, mit dem spätesten Tag zum Bestellen.',
  "Cannot note this delivery: a whole number of 0 or more is needed for {what}, '{text}' was found. Correct it.":
    'Die Lieferung wird nicht eingetragen: Für {what} ist eine ganze Zahl ab 0 nötig, gefunden wurde „{text}“. Bitte berichtigen.',
  'Cannot note this delivery: at least one line that came is needed, every count is 0. Type how many came.':
    'Die Lieferung wird nicht eingetragen: Mindestens eine gelieferte Zeile ist nötig, jede Anzahl ist 0. Eingeben, wie viele gekommen sind.',
  'Cannot keep this measure: a string of the order is needed, none was chosen. Choose it.':
    'Der Messwert wird nicht gespeichert: Eine Saite der Bestellung ist nötig, keine wurde gewählt. Bitte wählen.',
  "Cannot keep this measure: a length above 0 in mm or in is needed, {found, select, none {nothing} other {'{found}'}} was found. Type it again.":
    'Der Messwert wird nicht gespeichert: Eine Länge über 0 in mm oder in ist nötig, gefunden wurde {found, select, none {nichts} other {„{found}“}}. Noch einmal eingeben.',
  'Measured when it came': 'Bei der Ankunft gemessen',
  '● Every string is here, measured, and as ordered or taken by name.':
    '● Jede Saite ist da, gemessen und wie bestellt oder namentlich hingenommen.',
  '▲ Do not string this set yet: {what}.': '▲ Diesen Satz noch nicht aufziehen: {what}.',
  'not all of it is here': 'es ist noch nicht alles da',
  '{count, plural, one {# reading differs} other {# readings differ}} from the order':
    '{count, plural, one {# Messwert weicht} other {# Messwerte weichen}} von der Bestellung ab',
  '{count, plural, one {# string is} other {# strings are}} not measured':
    '{count, plural, one {# Saite ist} other {# Saiten sind}} nicht gemessen',
  'Measure a string': 'Eine Saite messen',
  choose: 'wählen',
  What: 'Was',
  'Reading, {unit}': 'Messwert, {unit}',
  'Taken by {name}: {reason}': 'Hingenommen von {name}: {reason}',
  'Take it all the same': 'Trotzdem hinnehmen',
  'Take this string as it came': 'Diese Saite nehmen, wie sie kam',
  'Take it by name': 'Namentlich hinnehmen',
  "Cannot note this: a whole number of {least} or more is needed{kind, select, wire { in grams} other {}}, {found, select, none {nothing} other {'{found}'}} was found. Type it again.":
    'Nicht eingetragen: Eine ganze Zahl ab {least} ist nötig{kind, select, wire {, in Gramm} other {}}; gefunden wurde {found, select, none {nichts} other {„{found}“}}. Noch einmal eingeben.',
  "Cannot note this: {what, select, wire {the diameter of the wire} pin {the diameter of the pin} other {the length of the pin}} in mm or in is needed, {found, select, none {nothing} other {'{found}'}} was found. Type it again.":
    'Nicht eingetragen: {what, select, wire {Der Durchmesser des Drahts} pin {Der Durchmesser des Wirbels} other {Die Länge des Wirbels}} ist nötig, in mm oder in; gefunden wurde {found, select, none {nichts} other {„{found}“}}. Noch einmal eingeben.',
  'Cannot note this: what it is called is needed, nothing was found. Type it.':
    'Nicht eingetragen: Eine Bezeichnung ist nötig, nichts wurde gefunden. Bitte eingeben.',
  'Stock of the shop': 'Lager der Werkstatt',
  "What stands here is the shop's and the same in every job.":
    'Was hier steht, gehört der Werkstatt und ist in jedem Auftrag dasselbe.',
  'To buy again for the shelf': 'Fürs Lager nachzukaufen',
  '{quantity} of {item}: {because}.': '{quantity} – {item}: {because}.',
  'Draft the order to {supplier}': 'Bestellung bei {supplier} entwerfen',
  'Nothing is counted yet. Count what is on the shelf, and jobs are covered from it.':
    'Noch ist nichts gezählt. Was im Lager liegt, zählen; dann werden Aufträge daraus gedeckt.',
  'on hand': 'vorhanden',
  'set aside': 'zurückgelegt',
  free: 'frei',
  'keep at least': 'Mindestbestand',
  'no minimum': 'keiner',
  'Counted {day} by {by}.': 'Gezählt {day} von {by}.',
  '{quantity} for {job} ({by}, {day})': '{quantity} für {job} ({by}, {day})',
  Release: 'Aufheben',
  'counted on the shelf': 'im Lager gezählt',
  'came in': 'eingegangen',
  'was used': 'verbraucht',
  'Noted: {item}.': 'Eingetragen: {item}.',
  'It is taken back.': 'Zurückgenommen.',
  grams: 'Gramm',
  pieces: 'Stück',
  'Count, receive or use': 'Zählen, einlagern oder entnehmen',
  'Note a stock movement': 'Lagerbewegung eintragen',
  'tuning pin': 'Stimmwirbel',
  'What it is called': 'Bezeichnung',
  'Counted in': 'Gezählt in',
  'Diameter, {unit}': 'Durchmesser, {unit}',
  'Length, {unit}': 'Länge, {unit}',
  'May be left out.': 'Kann leer bleiben.',
  'How much, {unit}': 'Wie viel, {unit}',
  "Cannot keep this price list: a lead time of whole days is needed, '{found}' was found. Correct it, or leave it empty.":
    'Die Preisliste wird nicht gespeichert: Eine Lieferzeit in ganzen Tagen ist nötig, gefunden wurde „{found}“. Berichtigen oder leer lassen.',
  '{lines} articles of {supplier} are kept.': '{lines} Artikel von {supplier} sind gespeichert.',
  Suppliers: 'Lieferanten',
  'No price list is kept yet.': 'Noch ist keine Preisliste gespeichert.',
  '{supplier}: {lines} articles in {currency}, kept {day} from {file}; {lead, select, none {lead time not said} other {lead time {lead} {days, plural, one {day} other {days}}}}':
    '{supplier}: {lines} Artikel in {currency}, gespeichert {day} aus {file}; {lead, select, none {Lieferzeit nicht angegeben} other {Lieferzeit {lead} {days, plural, one {Tag} other {Tage}}}}',
  'Bring in a price list': 'Preisliste einlesen',
  "A table as CSV with the columns {columns}. It stands in place of the supplier's list before.":
    'Eine Tabelle als CSV mit den Spalten {columns}. Sie ersetzt die bisherige Liste des Lieferanten.',
  'Save an example': 'Beispiel speichern',
  Supplier: 'Lieferant',
  'Three letters, such as EUR.': 'Drei Buchstaben, etwa EUR.',
  'Lead time, days': 'Lieferzeit, Tage',
  'Price list, CSV': 'Preisliste, CSV',
  'Name the supplier first.': 'Zuerst den Lieferanten nennen.',
  'Counting what the job needs …': 'Was der Auftrag braucht, wird gezählt …',
  'What the job needs': 'Was der Auftrag braucht',
  '{sign} Counted from {scale}.': '{sign} Grundlage der Zählung: {scale}.',
  'Sizes are those that the old wire speaks for. {link}, then buy wire.':
    'Die Stärken sind die, auf die der alte Draht schließen lässt. {link}, dann Draht kaufen.',
  'Choose the scale first': 'Zuerst die Mensur wählen',
  'What is added to what is strung': 'Was zum Aufgezogenen hinzukommt',
  'Change these figures under Suppliers and stock.': 'Diese Werte unter „Lieferanten und Lager“ ändern.',
  'Set aside what the shelf has': 'Zurücklegen, was im Lager ist',
  'tuning pins': 'Stimmwirbel',
  'felts and bushings': 'Filze und Wirbelbuchsen',
  sundries: 'Kleinteile',
  '▲ {count} unknown': '▲ {count} unbekannt',
  '● covered': '● gedeckt',
  '{some} of {all} to buy': '{some} von {all} zu kaufen',
  needed: 'gebraucht',
  'on order': 'bestellt',
  'How it is counted': 'Wie es gezählt ist',
  'And {extras}.': 'Dazu {extras}.',
  'Taken from the shelf': 'Aus dem Lager genommen',
  'Not counted from readings.': 'Nicht aus Messwerten gezählt.',
  'From {entries} {entries, plural, one {entry} other {entries}} of the record.':
    'Aus {entries} {entries, plural, one {Eintrag} other {Einträgen}} der Aufnahme.',
  'From {from} {from, plural, one {string or pin} other {strings or pins}}, {notes}, by {entries} entries of the journal.':
    'Aus {from} {from, plural, one {Saite oder Wirbel} other {Saiten oder Wirbeln}}, {notes}, nach {entries} Einträgen des Journals.',
  'What to buy': 'Was zu kaufen ist',
  'No price list is kept yet. {link}': 'Noch ist keine Preisliste gespeichert. {link}',
  'Bring one in under Suppliers and stock.': 'Unter „Lieferanten und Lager“ eine einlesen.',
  "Days to order by follow from the suppliers' lead times.":
    'Der späteste Tag zum Bestellen folgt aus den Lieferzeiten.',
  '{count} to buy that stand in no price list': '{count} zu kaufen, die in keiner Preisliste stehen',
  'To buy from {supplier}': 'Zu kaufen bei {supplier}',
  '[of a file] price-list-example': 'preisliste-beispiel',
  'order by {day}': 'bestellen bis {day}',
  '▲ A draft of {day} stands under {link}. Send it or cancel it before another is written.':
    '▲ Ein Entwurf vom {day} steht unter {link}. Abschicken oder stornieren, bevor ein weiterer entsteht.',
};
