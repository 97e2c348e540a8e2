import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  accepted: 'angenommen',
  declined: 'abgelehnt',
  agreed: 'vereinbart',
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
};
