import type { Catalogue } from '@becket/core';

/** The messages of this folder in German, and the words of the survey that it says. */
export const german: Catalogue = {
  accepted: 'angenommen',
  declined: 'abgelehnt',
  agreed: 'vereinbart',
  'the whole piano': 'das ganze Instrument',
  'it grew by {by} mm{day, select, unknown {} other { since {day}}}; readings agree within {error} mm.':
    '{day, select, unknown {} other {seit {day} }}um {by} mm gewachsen; Messwerte stimmen auf {error} mm überein.',
  'it is judged graver{day, select, unknown {} other { since {day}}}; it was not measured both times.':
    '{day, select, unknown {} other {seit {day} }}schwerer beurteilt; nicht beide Male gemessen.',
  'it is judged graver{day, select, unknown {} other { since {day}}}.':
    '{day, select, unknown {} other {seit {day} }}schwerer beurteilt.',
  'as before{day, select, unknown {} other { since {day}}}, by eye: it was not measured both times.':
    '{day, select, unknown {} other {seit {day} }}unverändert, nach Augenschein: nicht beide Male gemessen.',
  'as before{day, select, unknown {} other { since {day}}}: {by} mm apart, and readings agree within {error} mm.':
    '{day, select, unknown {} other {seit {day} }}unverändert: {by} mm Unterschied, und Messwerte stimmen auf {error} mm überein.',
  'it reads {by} mm shorter{day, select, unknown {} other { since {day}}}: was it mended, or measured another way?':
    '{day, select, unknown {} other {seit {day} }}{by} mm kürzer gemessen: ausgebessert oder anders gemessen?',
  'it was seen{day, select, unknown {} other { on {day}}} and is sound now.':
    '{day, select, unknown {früher} other {am {day}}} gesehen, jetzt in Ordnung.',
  'sound, as{day, select, unknown {} other { on {day}}}.':
    'in Ordnung, wie {day, select, unknown {zuvor} other {am {day}}}.',
  'new: it was looked at before and nothing was noted.': 'neu: früher angesehen, und nichts war vermerkt.',
  'the earlier survey does not speak of it.': 'die frühere Begutachtung sagt nichts dazu.',
  'noted{day, select, unknown {} other { on {day}}} and not looked at again.':
    '{day, select, unknown {früher} other {am {day}}} vermerkt und nicht wieder angesehen.',
  'it could not be seen this time.': 'diesmal nicht zu sehen.',
  'there is nothing to compare it with.': 'es gibt nichts zum Vergleichen.',
  'Cannot copy the survey: an earlier job is needed, this job itself was found. Choose another one.':
    'Die Begutachtung lässt sich nicht übernehmen: Ein früherer Auftrag ist nötig, gewählt ist dieser Auftrag selbst. Einen anderen wählen.',
  'Cannot copy the survey of ‘{title}’: at least one line is needed, it has none. Choose another job.':
    'Die Begutachtung von „{title}“ lässt sich nicht übernehmen: Mindestens eine Zeile ist nötig, sie hat keine. Einen anderen Auftrag wählen.',
  'Cannot copy the survey of ‘{title}’: one made before this job was opened on {day} is needed, a line of {found} was found. Choose the earlier job.':
    'Die Begutachtung von „{title}“ lässt sich nicht übernehmen: Sie muss älter sein als dieser Auftrag, eröffnet am {day}; eine Zeile ist vom {found}. Den früheren Auftrag wählen.',
  'copied from the survey of {day}': 'übernommen aus der Begutachtung vom {day}',
  'Cannot copy the survey of ‘{title}’: a job of the same piano is needed, serial number {found} was found and not {needed}. Choose another job, or correct the serial number.':
    'Die Begutachtung von „{title}“ lässt sich nicht übernehmen: Ein Auftrag desselben Instruments ist nötig, gefunden wurde die Seriennummer {found} statt {needed}. Einen anderen Auftrag wählen oder die Seriennummer berichtigen.',
  "Cannot keep ‘{what}’: a note from {first} to {last} is needed, {found} was found. Check the note, or the piano's compass.":
    '„{what}“ wird nicht gespeichert: Ein Ton von {first} bis {last} ist nötig, gefunden wurde {found}. Den Ton oder den Umfang des Instruments prüfen.',
  "Cannot keep ‘{what}’: a section of this piano is needed ({sections}), '{found}' was found. Choose one, or the whole piano.":
    '„{what}“ wird nicht gespeichert: Ein Abschnitt dieses Instruments ist nötig ({sections}), gefunden wurde „{found}“. Einen davon wählen oder das ganze Instrument.',
  'none is described': 'keiner ist beschrieben',
  'Cannot tie that photo to ‘{what}’: a photo of this job is needed, none of that name was found. Add the photo first.':
    'Das Foto lässt sich nicht mit „{what}“ verbinden: Ein Foto dieses Auftrags ist nötig, keines dieses Namens wurde gefunden. Zuerst das Foto aufnehmen.',
  'Cannot correct this line of ‘{what}’: it is not in the survey any more. Look at the survey again, then note it anew.':
    'Diese Zeile zu „{what}“ lässt sich nicht berichtigen: Sie steht nicht mehr in der Begutachtung. Die Begutachtung noch einmal ansehen und neu eintragen.',

  // The decision.
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
  'common practice, no source': 'gängige Praxis, ohne Quelle',
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

  // The estimate.
  'Cannot make this estimate: a last day of validity from {today} on is needed, {found} was found. Choose a later day, or leave it out.':
    'Der Kostenvoranschlag wird nicht erstellt: Gültig bis frühestens {today} ist nötig, gefunden wurde {found}. Einen späteren Tag wählen oder weglassen.',
  'This version is in {currency}; version {earlier} was in {before}.':
    'Diese Fassung ist in {currency}; Fassung {earlier} war in {before}.',
  'Version {version} was accepted by {name} on {day}; that holds for it alone, and this version needs an answer of its own.':
    'Fassung {version} hat {name} am {day} angenommen; das gilt nur für sie, diese Fassung braucht eine eigene Antwort.',
  "Cannot keep this answer: a version of this job's estimate is needed, and none was made yet, none of that id was found. Choose a version.":
    'Die Antwort wird nicht gespeichert: Eine Fassung des Kostenvoranschlags ist nötig, und noch gibt es keine. Eine Fassung wählen.',
  "Cannot keep this answer: a version of this job's estimate is needed ({versions}), none of that id was found. Choose a version.":
    'Die Antwort wird nicht gespeichert: Eine Fassung des Kostenvoranschlags ist nötig ({versions}), diese wurde nicht gefunden. Eine Fassung wählen.',
  'Cannot keep this answer: version {latest} is the last, and an answer to version {found} was found. Answer version {latest}, or say that the older one is meant.':
    'Die Antwort wird nicht gespeichert: Fassung {latest} ist die letzte, die Antwort gilt Fassung {found}. Fassung {latest} beantworten oder sagen, dass die ältere gemeint ist.',
  'Cannot keep this answer: conditional lines can only be agreed with an estimate that is accepted, {count} were found with one that is declined. Leave them out.':
    'Die Antwort wird nicht gespeichert: Bedingte Zeilen lassen sich nur mit einem angenommenen Kostenvoranschlag vereinbaren, bei diesem abgelehnten wurden {count} gefunden. Sie weglassen.',
  'The estimate was valid until {until}; it was accepted on {day}.':
    'Der Kostenvoranschlag galt bis {until}; angenommen wurde er am {day}.',
  'This stands in place of the answer of {day}: {answer} by {name}.':
    'Dies steht anstelle der Antwort vom {day}: {answer} von {name}.',
  'This answers version {version}; version {latest} was made after it.':
    'Dies beantwortet Fassung {version}; Fassung {latest} kam danach.',
  "Cannot keep this answer: conditional lines of version {version} are needed ({lines}), '{found}' was found. Choose among them.":
    'Die Antwort wird nicht gespeichert: Bedingte Zeilen von Fassung {version} sind nötig ({lines}), gefunden wurde „{found}“. Aus ihnen wählen.',
  'it has none': 'sie hat keine',
  'Cannot keep this answer: each conditional line is needed once, one was found twice. Leave it out once.':
    'Die Antwort wird nicht gespeichert: Jede bedingte Zeile ist einmal nötig, eine steht zweimal da. Sie einmal weglassen.',
  "Cannot keep this answer: a line of this job's change order is needed, none of that id was found among {count}. Look at the change order again.":
    'Die Antwort wird nicht gespeichert: Eine Zeile des Nachtragsangebots ist nötig, unter {count} wurde sie nicht gefunden. Das Nachtragsangebot noch einmal ansehen.',
  'This was agreed before anybody priced it: tell the customer the price before the work is done.':
    'Dies wurde vereinbart, bevor es einen Preis hatte: Den Preis nennen, bevor die Arbeit gemacht wird.',
  "Cannot note this time: a step of the work is needed ({steps}), '{found}' was found. Choose one, or add it to the estimate as a line of labour first.":
    'Die Zeit wird nicht notiert: Ein Arbeitsschritt ist nötig ({steps}), gefunden wurde „{found}“. Einen wählen oder ihn zuerst als Arbeitszeile in den Kostenvoranschlag aufnehmen.',
  'This step was said to be finished before; the time is added to it.':
    'Dieser Schritt galt schon als beendet; die Zeit kommt dazu.',
  'Mend: {thing} ({place})': 'Ausbessern: {thing} ({place})',
  '{thing} ({place}): damage that could not be seen at the visit':
    '{thing} ({place}): Schaden, der beim Besuch nicht zu sehen war',
  'it could not be seen at the visit': 'beim Besuch nicht zu sehen',
  'Mend anew: {thing} ({place})': 'Neu ausbessern: {thing} ({place})',
  'the earlier repair does not hold: {what}': 'die frühere Reparatur hält nicht: {what}',
  'nobody could tell at the visit whether the earlier repair holds':
    'beim Besuch war nicht zu sagen, ob die frühere Reparatur hält',
  'Mend: {thing} ({place}): {what}': 'Ausbessern: {thing} ({place}): {what}',
  'seen at the visit ({gravity}); {when}': 'beim Besuch gesehen ({gravity}); {when}',
  'Tuning pins': 'Stimmwirbel',
  'one a string': 'einer je Saite',
  'Wound strings, made to order': 'Umsponnene Saiten, nach Maß',
  'strings described as wound': 'als umsponnen beschriebene Saiten',
  'the stringing is not all described, so that the wound strings cannot be counted':
    'der Bezug ist nicht ganz beschrieben, die umsponnenen Saiten lassen sich nicht zählen',
  'Stringing felt, braid and punchings': 'Filz, Filzborte und Filzscheiben',
  set: 'Satz',
  'one set a piano': 'ein Satz je Instrument',
  'Plain wire': 'Blanker Draht',
  'no note has both wire diameter and speaking length yet':
    'noch kein Ton hat Drahtdurchmesser und klingende Länge',
  'the stringing is not all described': 'der Bezug ist nicht ganz beschrieben',
  'diameters and lengths of {strings} plain strings{unread, plural, =0 {} other {; # of them not read and taken as the mean}}, with ends, coils and {waste} % waste (our own starting figures)':
    'Durchmesser und Längen von {strings} blanken Saiten{unread, plural, =0 {} other {; # davon nicht gemessen und als Mittel genommen}}, mit Enden, Windungen und {waste} % Verschnitt (eigene Anfangswerte)',
  '{jobs, plural, one {# finished job} other {# finished jobs}} of this shop: {middle} ({low} to {high}) minutes a {per, select, string {string} note {note} other {job}}':
    '{jobs, plural, one {# beendeter Auftrag} other {# beendete Aufträge}} dieser Werkstatt: {middle} ({low} bis {high}) Minuten je {per, select, string {Saite} note {Ton} other {Auftrag}}',
  '{minutes} minutes ({source})': '{minutes} Minuten ({source})',
  '{fixed} minutes and {more} a {per, select, string {string} other {note}}, {count} of them ({source})':
    '{fixed} Minuten und {more} je {per, select, string {Saite} other {Ton}}, davon {count} ({source})',
  'our own starting figure': 'eigener Anfangswert',
  'Look the piano over, survey its structure, write the report':
    'Instrument ansehen, Tragwerk begutachten, Bericht schreiben',
  'Record strings, pins, felts and bearing before the strip':
    'Saiten, Wirbel, Filze und Stegdruck vor dem Absaiten aufnehmen',
  'Let the tension down and take off the old strings': 'Entspannen und alte Saiten abnehmen',
  'Clean plate, soundboard and terminations while the strings are off':
    'Gussplatte, Resonanzboden und Auflagen bei abgenommenen Saiten reinigen',
  'Order pins, wire and bass strings, and check them in':
    'Wirbel, Draht und Basssaiten bestellen und beim Eingang prüfen',
  'Ready the pin holes, try test pins, drive the pins':
    'Wirbellöcher vorbereiten, Probewirbel setzen, Wirbel einschlagen',
  'Fit new felts, braid and punchings': 'Neue Filze, Filzborte und Filzscheiben einlegen',
  'Put on the new strings': 'Neue Saiten aufziehen',
  'Chip to pitch and raise, three passes': 'Zupfstimmen und hochziehen, drei Durchgänge',
  'Tune and let settle, four visits': 'Stimmen und setzen lassen, vier Besuche',
  'Check, write the record and hand the piano over': 'Prüfen, Protokoll schreiben, Instrument übergeben',
  'The compass is not described: {notes} notes are assumed ({source}).':
    'Der Umfang ist nicht beschrieben: {notes} Töne sind angenommen ({source}).',
  'The stringing of {open} of {notes} notes is not described: {strings} strings are assumed for them ({source}).':
    'Der Bezug von {open} der {notes} Töne ist nicht beschrieben: {strings} Saiten sind dafür angenommen ({source}).',

  // Pins and torque.
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
