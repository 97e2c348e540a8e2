import type { Catalogue } from '@becket/core';

/** The messages of this folder in German. */
export const german: Catalogue = {
  'Neither compass nor stringing of this piano is described yet: no wire, pin or string can be counted. Describe it in Record.':
    'Weder Umfang noch Bezug dieses Instruments sind beschrieben: Draht, Wirbel und Saiten lassen sich noch nicht zählen. Unter „Aufnehmen“ beschreiben.',
  'The chosen scale does not have {notes}: their wire is counted in the sizes that the old wire speaks for. Read what they lack, and choose a scale that has them, before wire is bought.':
    'Die gewählte Mensur hat {notes} nicht: Deren Draht ist in den Stärken gezählt, für die der alte Draht spricht. Erst messen, was fehlt, und eine Mensur mit diesen Tönen wählen, bevor Draht gekauft wird.',
  'size of the old wire: not in the chosen scale': 'Stärke des alten Drahts: nicht in der gewählten Mensur',
  // Allowances.
  'Taken where nothing was read': 'Angenommen, wo nichts gemessen ist',
  'Felts, bushings and bridge pins': 'Filze, Wirbelbuchsen und Stegstifte',
  'Bass strings that come: how far off is still right':
    'Gelieferte Basssaiten: welche Abweichung noch stimmt',
  'Bass strings to be ordered': 'Basssaiten, die bestellt werden',
  'by which lengths that belong together may differ':
    'um so viel dürfen zusammengehörige Längen voneinander abweichen',
  'by which the strings of one note may differ in thickness':
    'um so viel dürfen die Saiten eines Tons in der Dicke voneinander abweichen',
  'for spoilage': 'für Verschnitt',
  'spare wires of each size, as long as the longest': 'Ersatzdrähte je Stärke, so lang wie der längste',
  'coils on each pin': 'Windungen je Wirbel',
  'for the eye of each pin': 'für das Auge jedes Wirbels',
  'cut off at each pin': 'an jedem Wirbel abgeschnitten',
  'for the loop of a tied wire': 'für die Öse eines einzelnen Drahts',
  'tuning pin diameter': 'Durchmesser der Stimmwirbel',
  spares: 'Ersatz',
  'spares of each size at the least': 'Ersatz je Größe mindestens',
  'test pins of each size that was not driven yet':
    'Probewirbel je Größe, die noch nicht eingeschlagen wurde',
  spare: 'Ersatz',
  'over the inner layer': 'über der inneren Lage',
  'Cannot set this figure: one of {names} is needed, {found} was found.':
    'Der Wert wird nicht gesetzt: Einer von {names} ist nötig, gefunden wurde {found}.',
  'Cannot set this figure: {kind, select, count {a whole number from 0 to {most}} share {a share from 0 to {most} %} other {a length from 0 to {most} mm}} is needed, {found} was found. Type it again.':
    'Der Wert wird nicht gesetzt: {kind, select, count {Eine ganze Zahl von 0 bis {most}} share {Ein Anteil von 0 bis {most} %} other {Eine Länge von 0 bis {most} mm}} ist nötig, gefunden wurde {found}. Noch einmal eingeben.',
  'Cannot set this figure: where it comes from is needed, nothing was found. Say whose experience or which source it is.':
    'Der Wert wird nicht gesetzt: Seine Herkunft ist nötig, nichts wurde gefunden. Sagen, wessen Erfahrung oder welche Quelle es ist.',
  'Cannot take this figure back: one that the shop has set is needed, {name} is as it started.':
    'Der Wert lässt sich nicht zurücknehmen: Nötig ist einer, den die Werkstatt gesetzt hat; {name} steht auf dem Anfangswert.',

  // Bass strings: the order and what came.
  'a name': 'ein Name',
  'a reason': 'ein Grund',
  "Cannot sign this check: a check of this order that does not pass is needed, '{id}' was found. Its figures may have changed; look at the checks again.":
    'Die Prüfung lässt sich nicht unterschreiben: Eine nicht bestandene Prüfung dieser Bestellung ist nötig, gefunden wurde „{id}“. Ihre Zahlen können sich geändert haben; die Prüfungen noch einmal ansehen.',
  'Cannot draft the bass string order: at least one wound string is needed, none is described. Describe the stringing first.':
    'Die Basssaitenbestellung wird nicht entworfen: Mindestens eine umsponnene Saite ist nötig, keine ist beschrieben. Zuerst den Bezug beschreiben.',
  'Cannot draft the bass string order: every check has to pass or be signed by name, {count, plural, one {# does} other {# do}} not. The first: {first}':
    'Die Basssaitenbestellung wird nicht entworfen: Jede Prüfung muss bestanden oder mit Namen unterschrieben sein, {count, plural, one {# ist} other {# sind}} es nicht. Die erste: {first}',
  'who makes the strings': 'wer die Saiten macht',
  string: 'Saite',
  'Cannot keep this: {what} is needed, nothing was found. Say it and try again.':
    'Nicht gespeichert: Nötig ist {what}, nichts wurde gefunden. Nennen und noch einmal versuchen.',
  'inside of the hitch loop': 'Öse innen',
  '{note} string {string}, {quantity}': '{note} Saite {string}, {quantity}',
  '{name}: {measured} measured; the order states no figure to compare it with.':
    '{name}: {measured} gemessen; die Bestellung nennt keinen Wert zum Vergleich.',
  '{name}: {measured} measured, the hitch pin is {wanted}.':
    '{name}: {measured} gemessen, der Anhangstift hat {wanted}.',
  '{name}: {measured} measured, {wanted} ordered.': '{name}: {measured} gemessen, {wanted} bestellt.',
  'The loop does not go over the pin.': 'Die Öse geht nicht über den Stift.',
  'Do not string it before it is settled with the maker.':
    'Nicht aufziehen, bevor es mit dem Saitenmacher geklärt ist.',
  "Cannot take this difference: one beyond the tolerance is needed, '{id}' was found. Look at what was measured again.":
    'Die Abweichung lässt sich nicht hinnehmen: Eine außerhalb der Toleranz ist nötig, gefunden wurde „{id}“. Das Gemessene noch einmal ansehen.',
  '{sentence} Taken by {name}: {reason}': '{sentence} Hingenommen von {name}: {reason}',

  // Items and quantities.
  "Cannot tell what '{text}' is: something like 'wire 0.991 mm', 'tuning pin 7.163 x 63.5 mm' or 'Felt glue (piece)' is needed{problem}. Take it as the list of the stock writes it.":
    '„{text}“ ist nicht zu erkennen: Nötig ist etwas wie „wire 0.991 mm“, „tuning pin 7.163 x 63.5 mm“ oder „Felt glue (piece)“{problem}. So schreiben, wie es die Lagerliste schreibt.',
  "Cannot take the quantity '{text}': a whole number of {unit} is needed, such as {example}. Correct it and try again.":
    'Die Menge „{text}“ lässt sich nicht übernehmen: Eine ganze Zahl von {unit} ist nötig, etwa {example}. Berichtigen und noch einmal versuchen.',
  'Plain wire {millimetres} mm ({inches} in{size})': 'Blanker Draht {millimetres} mm ({inches} in{size})',
  'length not chosen': 'Länge nicht gewählt',
  '{length} mm long': '{length} mm lang',
  'Tuning pins {diameter} mm, {long}': 'Stimmwirbel {diameter} mm, {long}',
  'metric {size}': 'metrisch {size}',
  '{text} {quantity, plural, one {piece} other {pieces}}': '{text} Stück{quantity, plural, other {}}',
  '{text} {quantity, plural, one {set} other {sets}}': '{text} {quantity, plural, one {Satz} other {Sätze}}',
  'Dry graphite for the bridge': 'Trockengraphit für den Steg',
  'Felt glue': 'Filzleim',
  'Fine abrasive for plate and agraffes': 'Feines Schleifmittel für Gussplatte und Agraffen',
  'Stringing braid': 'Filzborte',
  Felt: 'Filz',
  Punchings: 'Filzscheiben',
  'Pin bushings': 'Wirbelbuchsen',
  'Bridge pins': 'Stegstifte',
  'Bushing for an oversized pin hole': 'Buchse für ein zu weites Wirbelloch',
  'Plug for a pin hole': 'Stopfen für ein Wirbelloch',
  piece: 'Stück',

  // Orders and deliveries.
  'Cannot note this order as {to}: an order that is {allowed} is needed, this one is {state}. Look at its state again.':
    'Die Bestellung lässt sich nicht als „{to}“ eintragen: Nötig ist eine, die „{allowed}“ ist, diese ist „{state}“. Ihren Stand noch einmal ansehen.',
  'Cannot note this delivery: at least one line that came or one thing measured is needed, nothing was found. Say what came.':
    'Die Lieferung wird nicht eingetragen: Mindestens eine gelieferte Zeile oder ein Messwert ist nötig, nichts wurde gefunden. Sagen, was gekommen ist.',
  'Cannot note this delivery: an order that was sent is needed, this one is a draft. Note it as sent first.':
    'Die Lieferung wird nicht eingetragen: Eine abgeschickte Bestellung ist nötig, diese ist ein Entwurf. Zuerst als abgeschickt eintragen.',
  'Cannot note this delivery: a line of the order is needed, line {line} was found. Look at the order again.':
    'Die Lieferung wird nicht eingetragen: Eine Zeile der Bestellung ist nötig, gefunden wurde Zeile {line}. Die Bestellung noch einmal ansehen.',
  'Cannot take this delivery back: one that stands is needed, {delivery} was found. It may have been taken back elsewhere; look at the order again.':
    'Die Lieferung lässt sich nicht zurücknehmen: Eine gültige ist nötig, gefunden wurde {delivery}. Vielleicht wurde sie anderswo zurückgenommen; die Bestellung noch einmal ansehen.',
  'Cannot take this delivery back: a reason is needed, nothing was found. Say why and try again.':
    'Die Lieferung lässt sich nicht zurücknehmen: Ein Grund ist nötig, nichts wurde gefunden. Sagen, warum, und noch einmal versuchen.',
  'Cannot find this order: an order of this job is needed, {id} was found. Look at the orders again.':
    'Die Bestellung ist nicht zu finden: Eine Bestellung dieses Auftrags ist nötig, gefunden wurde {id}. Die Bestellungen noch einmal ansehen.',
  '{supplier}, {what}: {state}; {days}': '{supplier}, {what}: {state}; {days}',
  'bass strings': 'Basssaiten',
  supplies: 'Material',

  // The price list.
  'Cannot keep this price list: the name of the supplier is needed, nothing was found. Type it and try again.':
    'Die Preisliste wird nicht gespeichert: Der Name des Lieferanten ist nötig, nichts wurde gefunden. Eingeben und noch einmal versuchen.',
  'Cannot read {file} as a price list: the columns {needed} are needed, {missing} {count, plural, one {was} other {were}} not found. Name the columns so, and try again.':
    '{file} ist als Preisliste nicht lesbar: Die Spalten {needed} sind nötig, {missing} {count, plural, one {fehlt} other {fehlen}}. Die Spalten so nennen und noch einmal versuchen.',
  'Cannot read row {row} of {file}: in the column {column} {need} is needed, nothing was found. Correct the cell and bring the list in again; nothing was kept.':
    'Zeile {row} von {file} ist nicht lesbar: In der Spalte {column} ist nötig: {need}; nichts wurde gefunden. Die Zelle berichtigen und die Liste noch einmal einlesen; nichts wurde gespeichert.',
  "Cannot read row {row} of {file}: in the column {column} {need} is needed, '{found}' was found. Correct the cell and bring the list in again; nothing was kept.":
    'Zeile {row} von {file} ist nicht lesbar: In der Spalte {column} ist nötig: {need}; gefunden wurde „{found}“. Die Zelle berichtigen und die Liste noch einmal einlesen; nichts wurde gespeichert.',
  'a diameter in millimetres': 'ein Durchmesser in Millimetern',
  'a length in millimetres': 'eine Länge in Millimetern',
  'what it is': 'was es ist',
  'wire, tuning pin or other': 'wire, tuning pin oder other',
  'g, kg, m, mm, piece or set': 'g, kg, m, mm, piece oder set',
  'how much one holds': 'wie viel eine Packung enthält',
  'a number above 0': 'eine Zahl über 0',
  'a whole number': 'eine ganze Zahl',
  'for wire g, kg, m or mm': 'für Draht g, kg, m oder mm',
  'coil, piece or pack': 'coil, piece oder pack',
  "the supplier's number": 'die Nummer des Lieferanten',
  "Cannot read row {row} of {file}: each article once is needed, '{article}' stands in row {before} as well. Remove one of them; nothing was kept.":
    'Zeile {row} von {file} ist nicht lesbar: Jeder Artikel ist einmal nötig, „{article}“ steht auch in Zeile {before}. Einen davon entfernen; nichts wurde gespeichert.',
  'a whole number of days': 'eine ganze Zahl von Tagen',
  'Cannot read row {row} of {file}: {problem}. Correct the row and bring the list in again; nothing was kept.':
    'Zeile {row} von {file} ist nicht lesbar: {problem}. Die Zeile berichtigen und die Liste noch einmal einlesen; nichts wurde gespeichert.',
  "a price of 0 or more is needed, '{found}' was found. Correct the cell.":
    'Ein Preis von 0 oder mehr ist nötig, gefunden wurde „{found}“. Die Zelle berichtigen.',
  'Cannot read row {row} of {file}: {problem}': 'Zeile {row} von {file} ist nicht lesbar: {problem}',

  // Supplies and where they come from.
  "the chosen scale '{name}'": 'die gewählte Mensur „{name}“',
  'Tuning pins, size not settled': 'Stimmwirbel, Größe offen',
  'no pin diameter and torque has been read, so that no size can be advised':
    'weder Wirbeldurchmesser noch Drehmoment gemessen, darum keine Empfehlung zur Größe',
  'the rule for sizes gives no advice for these pins':
    'die Größenregel gibt für diese Wirbel keine Empfehlung',
  'spares ({source})': 'Ersatz ({source})',
  'test pins': 'Probewirbel',
  'one a string, by the rule for sizes{count, plural, =0 {} other {; # by a remedy of their own}}':
    'einer je Saite, nach der Größenregel{count, plural, =0 {} other {; # mit eigener Abhilfe}}',
  '{count} of {all} pins were not measured and are taken as the nearest that was.':
    '{count} von {all} Wirbeln sind nicht gemessen und gelten wie der nächste gemessene.',
  'remedies noted for single pins ({source} add none)':
    'für einzelne Wirbel notierte Abhilfen ({source}: keine weiteren)',
  'Length as of the pins driven last.': 'Länge wie bei den zuletzt eingeschlagenen Wirbeln.',
  'No pin length has been read: choose it before ordering.':
    'Keine Wirbellänge ist gemessen: vor dem Bestellen wählen.',
  'Length {listed}, next to the {found} mm of the pins as found: check it against the depth of the holes.':
    'Länge {listed}, die nächste zu den {found} mm der vorgefundenen Wirbel: mit der Tiefe der Löcher vergleichen.',
  'not counted': 'nicht gezählt',
  '{quantity} on the shelf': '{quantity} im Lager',
  '{quantity} on order': '{quantity} bestellt',
  'Wire: {share} for spoilage and {spare} spare of the longest wire of each size ({source}).':
    'Draht: {share} Verschnitt und {spare} Ersatz des längsten Drahts je Stärke ({source}).',
  'Each wire: {coils} coils and {becket} for the eye on each pin, {waste} cut off there, {tie} for the loop of a tied wire ({source}).':
    'Jeder Draht: {coils} Windungen und {becket} für das Auge je Wirbel, {waste} dort abgeschnitten, {tie} für die Öse eines einzelnen Drahts ({source}).',
  'Where nothing was read: front length {front}, back length {back}, hitch pin {hitchPin} mm, tuning pin {pin} mm ({source}).':
    'Wo nichts gemessen ist: Vorderlänge {front}, Hinterlänge {back}, Anhangstift {hitchPin} mm, Stimmwirbel {pin} mm ({source}).',
  'Pins: {share} spares and {least} of each size at the least ({source}); {test} test pins of a size that was not driven yet ({testSource}).':
    'Wirbel: {share} Ersatz, mindestens {least} je Größe ({source}); {test} Probewirbel einer noch nicht eingeschlagenen Größe ({testSource}).',
  'Felts, bushings and bridge pins: {share} spare ({source}).':
    'Filze, Wirbelbuchsen und Stegstifte: {share} Ersatz ({source}).',
  'by mass, since part of it is on the shelf; look whether the pieces there are long enough':
    'nach Masse, ein Teil ist im Lager; nachsehen, ob die Stücke dort lang genug sind',
  'coil of {size}': 'Ring zu {size}',
  'piece of {size}': 'Stück zu {size}',
  'pack of {count}': 'Packung zu {count}',
  'pack of {count} {unit}': 'Packung zu {count} {unit}',
  "'{section}'": '„{section}“',
  '{part}, {count, plural, one {section} other {sections}} {names}':
    '{part}, {count, plural, one {Abschnitt} other {Abschnitte}} {names}',
  'nobody has said what was found': 'niemand hat gesagt, was vorgefunden wurde',
  "{part}, section '{section}'": '{part}, Abschnitt „{section}“',
  'somebody looked and could not tell': 'angesehen und nicht zu sagen',
  "one a pin of '{section}'": 'eine je Wirbel von „{section}“',
  '{part} was found, but not how many; one a hitch pin would be {count}. Count them before the strip.':
    '{part} vorgefunden, aber nicht gezählt; eine je Anhangstift wären {count}. Vor dem Absaiten zählen.',
  '{part} was found, but not how long it is': '{part} vorgefunden, aber ohne Länge',
  "length as found in '{section}'": 'Länge wie vorgefunden in „{section}“',
  'two a string where the survey found them loose; measure their diameter and length before ordering':
    'zwei je Saite, wo sie bei der Begutachtung locker waren; vor dem Bestellen Durchmesser und Länge messen',
  'spare {percent} %': 'Ersatz {percent} %',
  "the shop's list of sundries ({source})": 'Liste der Werkstatt für Kleinteile ({source})',
  'The stringing of {notes} is not described: their wire and pins are not counted.':
    'Der Bezug von {notes} ist nicht beschrieben: Draht und Wirbel dafür sind nicht gezählt.',
  'Wire is not counted for {notes}: {count} strings without a diameter or a speaking length.':
    'Draht ist nicht gezählt für {notes}: {count} Saiten ohne Durchmesser oder klingende Länge.',
  'spoilage {percent} %': 'Verschnitt {percent} %',
  'spare: {count} of the longest wire': 'Ersatz: {count} des längsten Drahts',
  '{wires} wires for {strings} strings, {tied} of them tied: {length} m to cut':
    '{wires} Drähte für {strings} Saiten, davon {tied} einzeln mit Öse: {length} m zuzuschneiden',
  'taken as read, which is no size yet': 'wie gemessen genommen, noch keine Drahtstärke',
  'taken from the line through the section': 'aus der Linie durch den Abschnitt genommen',
  'taken from the line between its neighbours': 'von der Geraden zwischen den Nachbarn genommen',
  'taken as our starting figure': 'als eigener Anfangswert genommen',
  '{quantity} of {count} of {all} strings {taken}.': '{quantity} von {count} der {all} Saiten {taken}.',
  Diameter: 'Durchmesser',
  'Front length': 'Vorderlänge',
  'Back length': 'Hinterlänge',
  'strings of {notes} notes; ordered on the bass string order, after its checks':
    'Saiten von {notes} Tönen; bestellt mit der Basssaitenbestellung, nach deren Prüfungen',

  // The stock.
  'Cannot take this back: something noted of the stock is needed, {entry} was found. Look at the stock again.':
    'Dies lässt sich nicht zurücknehmen: Ein Eintrag des Lagers ist nötig, gefunden wurde {entry}. Das Lager noch einmal ansehen.',
  'Cannot release this reservation: one that still stands is needed, {reservation} was found. It may have been used up or released elsewhere; look at the stock again.':
    'Die Reservierung lässt sich nicht aufheben: Eine gültige ist nötig, gefunden wurde {reservation}. Vielleicht ist sie verbraucht oder anderswo aufgehoben; das Lager noch einmal ansehen.',
  'Cannot take {item}: something set aside for this job is needed, nothing is. Reserve it first, or note it as used.':
    'Nicht entnommen ({item}): Für diesen Auftrag muss etwas zurückgelegt sein, nichts ist es. Zuerst reservieren oder als verbraucht eintragen.',
  "'{job}' ({by}, {day})": '„{job}“ ({by}, {day})',
  '{who} lacks {quantity}': '{who} fehlen {quantity}',
  '{item}: {onHand}, {reserved} set aside. {lack}.': '{item}: {onHand}, {reserved} zurückgelegt. {lack}.',
  'never counted': 'nie gezählt',
  '{quantity} on hand': '{quantity} vorhanden',
  'set aside before: {who}': 'früher zurückgelegt: {who}',
  "'{job}'": '„{job}“',
  '{quantity} free': '{quantity} frei',
  '{quantity} set aside for {jobs}': '{quantity} zurückgelegt für {jobs}',
  'at least {quantity} wanted': 'mindestens {quantity} gewünscht',

  // The cut list.
  'its diameter is not known': 'ihr Durchmesser ist nicht bekannt',
  'its speaking length is not known': 'ihre klingende Länge ist nicht bekannt',
  'Each pin: {coils} coils, {becket} becket, {waste} cut off; a tied wire {tie} for its loop ({source}).':
    'Je Wirbel: {coils} Windungen, {becket} Knick im Wirbelauge, {waste} abgeschnitten; ein einzelner Draht {tie} für seine Öse ({source}).',
  front: 'vorn',
  speaking: 'klingend',
  back: 'hinten',
  'size inferred': 'Drahtstärke erschlossen',
  'line through the section': 'Linie durch den Abschnitt',
  'line between its neighbours': 'Gerade zwischen den Nachbarn',
};
