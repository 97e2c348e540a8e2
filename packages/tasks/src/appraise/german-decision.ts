import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  'Cannot keep this decision: why it was made is needed, nothing was found. Say why in a sentence.':
    'Die Entscheidung wird nicht gespeichert: Ihr Grund ist nötig, nichts wurde gefunden. In einem Satz sagen, warum.',
  'Cannot keep a go with conditions: at least one condition is needed, none was found. Name it, or choose go.':
    '„Weiter mit Bedingungen“ wird nicht gespeichert: Mindestens eine Bedingung ist nötig, keine wurde gefunden. Sie nennen oder „weiter“ wählen.',
  'Cannot keep a plain go: no condition is needed, {count, plural, one {# was} other {# were}} found. Choose go with conditions, or take them out.':
    '„Weiter“ wird nicht gespeichert: Dazu gehört keine Bedingung, {count, plural, one {# wurde} other {# wurden}} gefunden. „Weiter mit Bedingungen“ wählen oder sie herausnehmen.',
  'a specialist for soundboards': 'eine Fachkraft für Resonanzböden',
  'The soundboard has no crown in {count, plural, one {# reading} other {# readings}}, least at {place}{loaded, select, yes { under the load of the strings} other {}}.':
    'Der Resonanzboden hat in {count, plural, one {# Messwert} other {# Messwerten}} keine Wölbung, am wenigsten hier: {place}{loaded, select, yes {, unter der Last der Saiten} other {}}.',
  'Crown is read again with the strings off, before the scale is settled.':
    'Die Wölbung wird bei abgenommenen Saiten noch einmal gemessen, bevor die Mensur feststeht.',
  'There is no bearing in {count, plural, one {# reading} other {# readings}}, first at {place}.':
    'In {count, plural, one {# Messwert} other {# Messwerten}} gibt es keinen Stegdruck, zuerst hier: {place}.',
  'Why there is no bearing is found out before strings go on.':
    'Warum der Stegdruck fehlt, wird geklärt, bevor Saiten aufgezogen werden.',
  'Why it grows is found out first: {thing}, {place}.':
    'Zuerst wird geklärt, warum es wächst: {thing}, {place}.',
  'An earlier repair fails: {finding}.': 'Eine frühere Reparatur hält nicht: {finding}.',
  'The repair is done anew: {thing}, {place}.': 'Die Reparatur wird neu gemacht: {thing}, {place}.',
  'It was noted as stopping the job: {finding}.':
    'Es wurde vermerkt, dass dies den Auftrag aufhält: {finding}.',
  'It is settled first: {finding}.': 'Dies wird zuerst geklärt: {finding}.',
  'Dealt with {when}: {thing}, {place}.': 'Zu erledigen {when}: {thing}, {place}.',
  'as of {day}': 'Stand {day}',
  'The block itself is in question: {count} of {all} pins have a grip under {limit}, {names}.':
    'Der Stimmstock selbst ist fraglich: {count} von {all} Wirbeln haben ein Haltemoment unter {limit}, {names}.',
  'The pin block is examined with the strings off before pins are ordered.':
    'Der Stimmstock wird bei abgenommenen Saiten untersucht, bevor Wirbel bestellt werden.',
  'a specialist for pin blocks': 'eine Fachkraft für Stimmstöcke',
  '{count, plural, one {# pin grips} other {# pins grip}} less than the string pulls by the figures, {names}.':
    '{count, plural, one {# Wirbel hält} other {# Wirbel halten}} nach den Zahlen weniger, als die Saite zieht, {names}.',
  'holding ratio {ratio}': 'Halteverhältnis {ratio}',
  'These pins are read again in both directions, and get a remedy of their own.':
    'Diese Wirbel werden in beide Richtungen noch einmal gemessen und bekommen eine eigene Abhilfe.',
  'statics; see the torque map': 'Statik; siehe Drehmomentplan',
  'chance {percent} %': 'Wahrscheinlichkeit {percent} %',
  'The block is looked at with the strings off {where}.':
    'Der Stimmstock wird bei abgenommenen Saiten angesehen: {where}.',
  'What goes in for the {size} pins is settled first: bushings, plugs or another block.':
    'Was an die Stelle der {size}-Wirbel kommt, wird zuerst geklärt: Buchsen, Stopfen oder ein anderer Stimmstock.',
  'The size advised for the {size} pins does not fit: {reasons}':
    'Die empfohlene Größe für die {size}-Wirbel passt nicht: {reasons}',
  'A size that block and plate allow is chosen for the {size} pins.':
    'Für die {size}-Wirbel wird eine Größe gewählt, die Stimmstock und Gussplatte zulassen.',
  '{count} of {all} pins with a grip hold less than {limit} ({from}): the rule goes up {sizes, plural, one {# size} other {# sizes}} there. The lowest has {lowest}.':
    '{count} von {all} Wirbeln mit Haltemoment halten weniger als {limit} ({from}): Dort geht die Regel {sizes, plural, one {# Größe} other {# Größen}} höher. Der schwächste hat {lowest}.',
  'Test pins in the worst and in the best place show that the larger size holds, before the set is bought.':
    'Probewirbel an der schlechtesten und an der besten Stelle zeigen, dass die größere Größe hält, bevor der Satz gekauft wird.',
  'Each of the {count} pins with a grip has {limit} or more, by {from}.':
    'Jeder der {count} Wirbel mit Haltemoment hat {limit} oder mehr, nach: {from}.',
  '{names} and {count} more': '{names} und {count} weitere',
  'The plate is judged by a specialist before tension is changed.':
    'Die Gussplatte wird von einer Fachkraft beurteilt, bevor die Zugkraft verändert wird.',
  'a plate repair specialist': 'eine Fachkraft für Gussplatten',
  'Plate bolts and screws are put right with the tension down, to the maker’s data.':
    'Bolzen und Schrauben der Gussplatte werden bei entspannten Saiten in Ordnung gebracht, nach Angaben des Herstellers.',
  'Pin block and flange are looked at with the strings off, and test pins are fitted there.':
    'Stimmstock und Plattenkante werden bei abgenommenen Saiten angesehen, und dort werden Probewirbel gesetzt.',
  'The bridge is mended before strings go on.': 'Der Steg wird ausgebessert, bevor Saiten aufgezogen werden.',
  'The soundboard and its ribs are judged before the scale is settled.':
    'Resonanzboden und Rippen werden beurteilt, bevor die Mensur feststeht.',
  'The soundboard is mended while the strings are off.':
    'Der Resonanzboden wird bei abgenommenen Saiten ausgebessert.',
  'Agraffes, bars and hitch pins are put right before strings go on.':
    'Agraffen, Druckstäbe und Anhangstifte werden in Ordnung gebracht, bevor Saiten aufgezogen werden.',
  'This weighs what was noted and nothing else. Plate and structure are for a specialist, by the maker’s data.':
    'Dies wägt ab, was vermerkt ist, und nichts anderes. Gussplatte und Tragwerk sind Sache einer Fachkraft, nach Angaben des Herstellers.',
  'The strings of a piano pull with many tonnes-force together. Do not loosen plate bolts or screws under tension, and let tension down evenly.':
    'Die Saiten eines Instruments ziehen zusammen mit vielen Tonnen. Bolzen und Schrauben der Gussplatte nicht unter Zug lösen und gleichmäßig entspannen.',
  'Keep to local codes, and leave to licensed trades what they ask for: lifting and moving, solvents, electrical parts in the piano.':
    'Örtliche Vorschriften einhalten und zugelassenen Gewerken überlassen, was sie ihnen vorbehalten: Heben und Transport, Lösemittel, elektrische Teile im Instrument.',
  'Nobody has looked for {thing}{day, select, unknown {} other { since {day}}}.':
    '{day, select, unknown {Noch niemand hat nachgesehen} other {Seit {day} hat niemand nachgesehen}}: {thing}.',
  'Look for {thing}, with a light and with the action out.':
    'Nachsehen, mit Licht und bei ausgebauter Mechanik: {thing}.',
  'Not looked at yet, {part}: {things}.': 'Noch nicht angesehen, {part}: {things}.',
  'Go through this part of the survey: {part}.': 'Diesen Teil der Begutachtung durchgehen: {part}.',
  'Could not be seen: {thing}.': 'Nicht zu sehen: {thing}.',
  'Look for {thing} when the strings are off, and say in the estimate that it is open.':
    'Bei abgenommenen Saiten nachsehen und im Kostenvoranschlag sagen, dass es offen ist: {thing}.',
  'No torque has been read: nothing is known of the grip of the block.':
    'Kein Drehmoment ist gemessen: Über das Haltemoment des Stimmstocks ist nichts bekannt.',
  'Read the torque of pins in every section, in both directions.':
    'Das Drehmoment von Wirbeln in jedem Abschnitt messen, in beide Richtungen.',
  '{count} of {all} pins read have no grip: their direction, or the pull of their strings, is not known.':
    '{count} von {all} gemessenen Wirbeln haben kein Haltemoment: Ihre Drehrichtung oder der Zug ihrer Saiten ist nicht bekannt.',
  'Read these pins in both directions, or slack.':
    'Diese Wirbel in beide Richtungen messen oder bei entspannter Saite.',
  '{count} pins': '{count} Wirbel',
  'The next best is {note} string {string}: it leaves {chance}.':
    'Am meisten bringt {note} Saite {string}: Dann bleiben {chance}.',
  'The torque sample is small: a bad zone of {size} pins in a row lies where nobody has read with a chance of {chance}.':
    'Die Stichprobe ist klein: Mit einer Wahrscheinlichkeit von {chance} liegt eine schlechte Stelle von {size} Wirbeln in Folge dort, wo niemand gemessen hat.',
  'Read more pins, spread over the block.': 'Mehr Wirbel messen, über den Stimmstock verteilt.',
  'Fewer than {fewest} pins have a grip in: {sections}.':
    'Weniger als {fewest} Wirbel mit Haltemoment in: {sections}.',
  'Read at least {fewest} pins in each of these sections.':
    'In jedem dieser Abschnitte mindestens {fewest} Wirbel messen.',
  'Of three strings only string {row} has been read: a crack along another row of pins would not show.':
    'Von drei Saiten ist nur Saite {row} gemessen: Ein Riss entlang einer anderen Wirbelreihe fiele nicht auf.',
  'Read every fifth pin instead of the same one of each note, so that every row is met.':
    'Jeden fünften Wirbel messen statt immer denselben je Ton, damit jede Reihe getroffen wird.',
  '{count} torque readings say nothing of the air: how grip stands to the season is not known.':
    '{count} Drehmomente ohne Angabe zur Luft: Wie das Haltemoment zur Jahreszeit steht, ist nicht bekannt.',
  'Read relative humidity where the piano stands, the same day.':
    'Am selben Tag die relative Luftfeuchte messen, wo das Instrument steht.',
  'Crown of the soundboard has not been read.': 'Die Wölbung des Resonanzbodens ist nicht gemessen.',
  'Read crown with a thread or a straight edge, loaded, and again with the strings off.':
    'Die Wölbung mit Faden oder Lineal messen, unter Last und noch einmal bei abgenommenen Saiten.',
  'Bearing has not been read.': 'Der Stegdruck ist nicht gemessen.',
  'Read bearing in every section before the strip: afterwards it is gone.':
    'Den Stegdruck vor dem Absaiten in jedem Abschnitt messen: Danach ist er weg.',
  'Pitch as found has not been read.': 'Die vorgefundene Tonhöhe ist nicht gemessen.',
  'Read the pitch of some notes in every section: the pull of the strings follows from it.':
    'In jedem Abschnitt die Tonhöhe einiger Töne messen: Daraus folgt der Zug der Saiten.',
  'Relative humidity has not been read.': 'Die relative Luftfeuchte ist nicht gemessen.',
  'Read relative humidity where the piano stands.':
    'Die relative Luftfeuchte messen, wo das Instrument steht.',
  'No pin diameter has been read: the size as found is not known.':
    'Kein Wirbeldurchmesser ist gemessen: Die vorgefundene Größe ist nicht bekannt.',
  'Measure pins with a micrometer in every section, over the thread.':
    'Wirbel in jedem Abschnitt mit der Bügelmessschraube messen, über dem Gewinde.',
  'Fit test pins in the worst and in the best place before pins are ordered.':
    'An der schlechtesten und an der besten Stelle Probewirbel setzen, bevor Wirbel bestellt werden.',
  'the smallest plate hole': 'das kleinste Loch der Gussplatte',
  'What block and plate allow is not known: {needed}.':
    'Was Stimmstock und Gussplatte zulassen, ist nicht bekannt: {needed}.',
  'Measure them before pins are ordered; a hole can be measured once its pin is out.':
    'Vor der Bestellung der Wirbel messen; ein Loch lässt sich messen, sobald sein Wirbel heraus ist.',
};
