import type { Catalogue } from '@becket/core';

/** The messages of this folder in German. */
export const german: Catalogue = {
  'No plain wire can be counted for it yet.': 'Dafür lässt sich noch kein blanker Draht zählen.',
  'Plain wire: {mass} in {sizes, plural, one {# size} other {# sizes}}, spoilage and spares included.':
    'Blanker Draht: {mass} in {sizes, plural, one {# Stärke} other {# Stärken}}, mit Verschnitt und Ersatz.',
  'Wound strings: {wound} to be made, {otherwise, plural, =0 {all as they were found} other {# of them otherwise than they were found}}. What their maker asks is not known here.':
    'Umsponnene Saiten: {wound} anzufertigen, {otherwise, plural, =0 {alle wie vorgefunden} other {# davon anders als vorgefunden}}. Was ihr Hersteller verlangt, ist hier nicht bekannt.',
  'No price list is kept yet, so no price of wire is told.':
    'Noch keine Preisliste gespeichert, darum wird kein Drahtpreis genannt.',
  'The shelf and what is on order cover all of it.': 'Lager und Bestelltes decken alles.',
  '{sizes, plural, one {# size} other {# sizes}} to buy, in no price list.':
    '{sizes, plural, one {# Stärke} other {# Stärken}} zu kaufen, in keiner Preisliste.',
  'Wire to buy beside what the shelf has: {price} in whole coils{unlisted, plural, =0 {} one {, and # size that stands in no price list} other {, and # sizes that stand in no price list}}.':
    'Draht zu kaufen neben dem, was das Lager hat: {price} in ganzen Ringen{unlisted, plural, =0 {} one {, dazu # Stärke, die in keiner Preisliste steht} other {, dazu # Stärken, die in keiner Preisliste stehen}}.',
  'how it is strung is not described': 'der Bezug ist nicht beschrieben',
  'no {quantity}': '{quantity} fehlt',
  'a needed value was answered with none or does not apply':
    'ein nötiger Wert wurde mit „keine“ oder „trifft nicht zu“ beantwortet',
  '{quantity} from neighbours': '{quantity} von den Nachbarn',
  'tuning pin': 'Stimmwirbel',
  '{quantity} taken as {length} mm': '{quantity} mit {length} mm angenommen',
  'Move the change at {from} to {to}: {count, plural, one {one tied string} other {# tied strings}} fewer.':
    'Den Wechsel bei {from} nach {to} verschieben: {count, plural, one {eine einzelne Saite} other {# einzelne Saiten}} weniger.',
  'the highest break share of {share}': 'den höchsten Anteil an der Bruchlast von {share}',
  'the lowest break share of {share} for plain strings':
    'den niedrigsten Anteil an der Bruchlast von {share} für blanke Saiten',
  'the lowest break share of {share} for wound strings':
    'den niedrigsten Anteil an der Bruchlast von {share} für umsponnene Saiten',
  'What was found does not keep {limit} at {notes}: length and pitch decide that far more than size, so nothing worse than what was found is offered there.':
    'Das Vorgefundene hält {limit} nicht ein bei {notes}: Länge und Tonhöhe entscheiden das weit mehr als die Drahtstärke, darum wird dort nichts Schlechteres als das Vorgefundene angeboten.',
  'as it was, tidied': 'wie vorgefunden, geordnet',
  'as smooth as it goes': 'so glatt wie möglich',
  'between, {number} of {count}': 'dazwischen, {number} von {count}',
  'as strung': 'wie bezogen',
  'Cannot keep this proposal: a name is needed to find it by, none was given. Give it one.':
    'Der Vorschlag wird nicht gespeichert: Ein Name ist nötig, um ihn zu finden, keiner wurde genannt. Einen Namen eingeben.',
  'Cannot keep this proposal: a name that no other scale of this job has is needed, “{name}” was found. Give it another.':
    'Der Vorschlag wird nicht gespeichert: Ein Name, den keine andere Mensur dieses Auftrags hat, ist nötig, gefunden wurde „{name}“. Einen anderen eingeben.',
  'Cannot keep this choice: the reason is needed for whoever asks later, none was given. Say it in a few words.':
    'Die Wahl wird nicht gespeichert: Der Grund ist nötig für alle, die später fragen, keiner wurde genannt. In wenigen Worten sagen.',
  'Readings have changed since “{name}” was made on {day}: its figures follow them, but its sizes were not weighed again.':
    'Messwerte haben sich geändert, seit „{name}“ am {day} entstand: Die Zahlen folgen ihnen, die Drahtstärken wurden nicht neu abgewogen.',
  'Cannot keep this proposal: a note of this piano is needed, {note} was found. Leave it out, or describe the piano first.':
    'Der Vorschlag wird nicht gespeichert: Ein Ton dieses Instruments ist nötig, gefunden wurde {note}. Ihn weglassen oder zuerst das Instrument beschreiben.',
  'Cannot keep this proposal: a speaking length and a stringing are needed for every note in it, {note} lacks one. Enter them in Record, or leave the note out.':
    'Der Vorschlag wird nicht gespeichert: Klingende Länge und Bezug sind für jeden Ton darin nötig, bei {note} fehlt eines. Unter „Aufnehmen“ eintragen oder den Ton weglassen.',
  'Cannot keep this proposal: something of the speaking length must be wound, at {note} the bare ends take all of it. Shorten them.':
    'Der Vorschlag wird nicht gespeichert: Ein Teil der klingenden Länge muss umsponnen sein, bei {note} nehmen die blanken Enden alles ein. Die blanken Enden kürzen.',
};
