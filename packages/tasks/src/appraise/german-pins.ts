import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  'It is larger than the largest pin allowed here, {largest}.':
    'Er ist dicker als der größte hier zulässige Wirbel, {largest}.',
  'It leaves {left} in the smallest plate hole, {asked} are asked for.':
    'Er lässt im kleinsten Loch der Gussplatte {left}, verlangt sind {asked}.',
  'Support the block from beneath before a pin is driven: a blow on an unsupported block can split it or break the plate.':
    'Den Stimmstock von unten abstützen, bevor ein Wirbel eingeschlagen wird: Ein Schlag auf einen nicht gestützten Stimmstock kann ihn spalten oder die Gussplatte brechen.',
  'Wear eye protection when pins are driven or knocked out.':
    'Beim Ein- und Ausschlagen von Wirbeln Augenschutz tragen.',
  'Fit test pins in the worst and in the best place before the whole set is bought.':
    'An der schlechtesten und an der besten Stelle Probewirbel setzen, bevor der ganze Satz gekauft wird.',
  'Whether a block with cracks or parting layers can be kept is a judgement for a specialist.':
    'Ob ein Stimmstock mit Rissen oder sich lösenden Lagen bleiben kann, beurteilt eine Fachkraft.',
  'Cannot keep this rule: each size is needed once, {size} was found twice. Take one of them out.':
    'Die Regel wird nicht gespeichert: Jede Größe ist einmal nötig, {size} steht zweimal da. Eine davon herausnehmen.',
  'Cannot keep this rule: sizes from small to large are needed, {size} ({diameter}) was found after a larger one. Put them in order.':
    'Die Regel wird nicht gespeichert: Größen von klein nach groß sind nötig, {size} ({diameter}) steht nach einer größeren. Sie ordnen.',
  'Cannot keep this rule: a very loose torque under the firm one is needed, {loose} and {firm} N·m were found. Change one of them.':
    'Die Regel wird nicht gespeichert: Das Moment für „sehr locker“ muss unter dem für „fest“ liegen, gefunden wurden {loose} und {firm} N·m. Eines davon ändern.',
  'Cannot keep these limits: at least one figure is needed, none was found. Give what was measured.':
    'Die Grenzen werden nicht gespeichert: Mindestens eine Zahl ist nötig, keine wurde gefunden. Das Gemessene eintragen.',
  'Cannot keep these limits: a plate hole at least as wide as the largest pin is needed, {hole} and {pin} were found. Measure the hole again, or choose a smaller pin.':
    'Die Grenzen werden nicht gespeichert: Das Loch der Gussplatte muss mindestens so weit sein wie der größte Wirbel, gefunden wurden {hole} und {pin}. Das Loch noch einmal messen oder einen kleineren Wirbel wählen.',
  'this test pin': 'dieser Probewirbel',
  'Cannot keep this test pin: a torque above 0 is needed, {found} was found. A pin that turns freely needs a larger one; note it there.':
    'Der Probewirbel wird nicht gespeichert: Ein Drehmoment über 0 ist nötig, gefunden wurde {found}. Ein Wirbel, der sich frei dreht, braucht einen größeren; dort eintragen.',
  'what this pin needs': 'was dieser Wirbel braucht',
  'Cannot keep a larger pin for {name}: its size is needed, none was found. Choose the size.':
    'Ein größerer Wirbel für {name} wird nicht gespeichert: Seine Größe ist nötig, keine wurde gefunden. Die Größe wählen.',
  'Cannot put {name} back with the rest: no size of its own is needed, {found} was found. Leave the size out.':
    '{name} lässt sich nicht zu den übrigen zurücknehmen: Dazu gehört keine eigene Größe, gefunden wurde {found}. Die Größe weglassen.',
  'these pins': 'diese Wirbel',
  'Cannot log these pins: the first note at or below the last is needed, {first} to {last} was found. Change them over.':
    'Diese Wirbel werden nicht eingetragen: Der erste Ton darf nicht über dem letzten liegen, gefunden wurde {first} bis {last}. Beide tauschen.',
  "Cannot keep {what}: a note from {first} to {last} is needed, {found} was found. Check the note, or the piano's compass.":
    'Nicht gespeichert ({what}): Ein Ton von {first} bis {last} ist nötig, gefunden wurde {found}. Den Ton oder den Umfang des Instruments prüfen.',
  'Cannot keep {what}: a string from 1 to {strings} of {note} is needed, string {string} was found. Check the string, or the stringing of the note.':
    'Nicht gespeichert ({what}): Eine Saite von 1 bis {strings} von {note} ist nötig, gefunden wurde Saite {string}. Die Saite oder den Bezug des Tons prüfen.',
  '{note}, string not said': '{note}, Saite nicht genannt',
  'No pin has a grip yet: read torque first, some of it in every section.':
    'Noch hat kein Wirbel ein Haltemoment: Zuerst Drehmomente messen, einige in jedem Abschnitt.',
  'Grip of {count, plural, one {# pin} other {# pins}} of this size, the pull of the string taken out.':
    'Haltemoment von {count, plural, one {# Wirbel} other {# Wirbeln}} dieser Größe, ohne den Zug der Saite.',
  'No pin of this size was read for torque: grip of the {count} that were, of other sizes.':
    'Kein Wirbel dieser Größe ist gemessen: Haltemoment der {count} gemessenen, von anderer Größe.',
  'the depth of the pin hole': 'die Tiefe des Wirbellochs',
  'the thickness of plate and bushing': 'die Dicke von Gussplatte und Wirbelbuchse',
  'the height of a pin above the plate': 'die Höhe eines Wirbels über der Gussplatte',
  'Its grip is {grip}, very loose (under {limit}): look at the hole and at the block around it first.':
    'Sein Haltemoment ist {grip}, sehr locker (unter {limit}): Zuerst das Loch und den Stimmstock darum ansehen.',
  'At {size} its grip is expected at {grip}, under {firm}; at {larger} at {largerGrip}.':
    'Bei {size} ist ein Haltemoment von {grip} zu erwarten, unter {firm}; bei {larger} von {largerGrip}.',
  'At {size} its grip is expected at {grip}, under {firm}, and no size looked at reaches it.':
    'Bei {size} ist ein Haltemoment von {grip} zu erwarten, unter {firm}, und keine betrachtete Größe erreicht es.',
  'At {size} its grip is expected at {grip}, under {firm}, and no size within the limits reaches it.':
    'Bei {size} ist ein Haltemoment von {grip} zu erwarten, unter {firm}, und keine Größe innerhalb der Grenzen erreicht es.',
  'the firm figure of the rule ({source})': 'der Wert „fest“ der Regel ({source})',
  'as asked': 'wie gefragt',
  'The pull of the string is unknown: length and wire of {note} are needed for its tension.':
    'Der Zug der Saite ist unbekannt: Für die Zugkraft sind Länge und Draht von {note} nötig.',
  'One direction with the string on gives a grip only when the pull is known. Read it the other way as well, or slack.':
    'Eine Richtung bei aufgezogener Saite ergibt nur dann ein Haltemoment, wenn der Zug bekannt ist. Auch andersherum messen oder bei entspannter Saite.',
  'It was not said which way the pin was turned and whether its string was on. Say so, or read it again.':
    'Drehrichtung und ob die Saite aufgezogen war, sind nicht genannt. Nachtragen oder noch einmal messen.',
  'a hole nobody named': 'ein nicht genanntes Loch',
  'nobody said in which hole it was': 'niemand hat gesagt, in welchem Loch er saß',
  'its hole has no grip as found': 'sein Loch hat kein vorgefundenes Haltemoment',
  'the pin as found was not measured': 'der vorgefundene Wirbel ist nicht gemessen',
  'it is not larger than the pin as found': 'er ist nicht dicker als der vorgefundene Wirbel',
  '{fewest} test pins in holes with a grip and a diameter as found are needed to say what a larger pin gains: {counting} of {tried} {counting, plural, one {counts} other {count}}.':
    'Was ein dickerer Wirbel bringt, lässt sich ab {fewest} Probewirbeln sagen, in Löchern mit vorgefundenem Haltemoment und Durchmesser: {counting} von {tried} {counting, plural, one {zählt} other {zählen}}.',
  'A pin larger by 0.1 mm gains {gain} N·m of grip ({low} to {high} at {level} %), from {count} test pins.':
    'Ein um 0,1 mm dickerer Wirbel bringt {gain} N·m Haltemoment ({low} bis {high} bei {level} %), aus {count} Probewirbeln.',
  'The interval reaches to no gain at all: fit more test pins before you rely on it.':
    'Der Bereich reicht bis zu keinem Gewinn: Mehr Probewirbel setzen, bevor man sich darauf verlässt.',
  'The middle of all {count} torque readings, from {note} on, is {middle}, outside the usual {least} to {most} N·m. Were they read in another unit?':
    'Die Mitte aller {count} Drehmomente, ab {note}, liegt bei {middle}, außerhalb der üblichen {least} bis {most} N·m. In einer anderen Einheit gemessen?',
  'Torque was read in dry air, {percent} % relative humidity: pins often hold better in the damp season. Read again before a block is given up.':
    'Das Drehmoment wurde bei trockener Luft gemessen, {percent} % relative Luftfeuchte: In der feuchten Jahreszeit halten Wirbel oft besser. Noch einmal messen, bevor ein Stimmstock aufgegeben wird.',
  'Torque was read in damp air, {percent} % relative humidity: pins often hold less in the dry season. Allow for it before a block is called firm.':
    'Das Drehmoment wurde bei feuchter Luft gemessen, {percent} % relative Luftfeuchte: In der trockenen Jahreszeit halten Wirbel oft weniger. Das berücksichtigen, bevor ein Stimmstock als fest gilt.',
  'Readings were taken in air from {low} to {high} % relative humidity: they are not quite alike.':
    'Gemessen wurde bei {low} bis {high} % relativer Luftfeuchte: Die Messwerte sind nicht ganz vergleichbar.',
};
