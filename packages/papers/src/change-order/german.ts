import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  'Change order': 'Nachtragsangebot',
  'What came to light only once the strings were off, and what it would take. Nothing of it is agreed until you have said so in writing.':
    'Was sich erst zeigte, als die Saiten herunter waren, und was dafür nötig wäre. Nichts davon ist vereinbart, bevor Sie es schriftlich gesagt haben.',
  'Nothing was noted as found after the strip so far.':
    'Bisher wurde nichts notiert, was sich nach dem Absaiten gezeigt hat.',
  'Prices and days as the shop noted them beside each line.':
    'Preise und Tage, wie die Werkstatt sie zu jeder Zeile notiert hat.',
  Customer: 'Kunde',
  'As-found record': 'Bestandsaufnahme',
  'In short': 'Kurz gefasst',
  'Line by line': 'Zeile für Zeile',
  '[number of a line] no.': 'Nr.',
  'what was found': 'was sich zeigte',
  'how grave': 'wie schwer',
  price: 'Preis',
  'working days': 'Arbeitstage',
  'your decision': 'Ihre Entscheidung',
  'keep an eye on it': 'im Auge behalten',
  'mend before stringing': 'vor dem Beziehen beheben',
  'stop the work': 'Arbeit anhalten',
  'not said yet': 'noch nicht angegeben',
  'yes / no': 'ja / nein',
  'not priced yet': 'noch ohne Preis',
  '{answer, select, agreed {agreed} other {declined}} by {name}, {day}':
    '{answer, select, agreed {vereinbart} other {abgelehnt}} von {name}, {day}',
  '{count, plural, one {# line is} other {# lines are}} not priced yet':
    '{count, plural, one {# Zeile hat} other {# Zeilen haben}} noch keinen Preis',
  '{count, plural, one {# line is} other {# lines are}} not priced yet and not in this sum':
    '{count, plural, one {# Zeile hat noch keinen Preis und ist} other {# Zeilen haben noch keinen Preis und sind}} nicht in dieser Summe',
  '{count, plural, one {{days} working day} other {{days} working days}}':
    '{count, plural, one {{days} Arbeitstag} other {{days} Arbeitstage}}',
  'for {count, plural, one {# line} other {# lines}} the days are not said yet and not among these':
    'für {count, plural, one {# Zeile} other {# Zeilen}} sind die Tage noch nicht angegeben und hier nicht dabei',
  'working days not said yet': 'Arbeitstage noch nicht angegeben',
  'not sealed: it cannot be shown what was known before the strip':
    'nicht versiegelt: Es ist nicht zu belegen, was vor dem Absaiten bekannt war',
  'sealed on {day} by {name}, digest {digest}': 'versiegelt am {day} von {name}, Prüfsumme {digest}',
  'CAREFUL: the entries under the seal do not match it; compare with an older copy.':
    'VORSICHT: Die Einträge unter dem Siegel stimmen nicht mit ihm überein; mit einer älteren Ausfertigung vergleichen.',
  '[lines] Agreed': 'Vereinbart',
  '[lines] Declined': 'Abgelehnt',
  'Still to be decided': 'Noch zu entscheiden',
  '[a sum] Together': 'Zusammen',
  '{totals} ({count, plural, one {# line} other {# lines}})':
    '{totals} ({count, plural, one {# Zeile} other {# Zeilen}})',
  Tax: 'Steuer',
  'The record does not say whether the prices include it: ______________':
    'Die Aufzeichnung sagt nicht, ob die Preise sie enthalten: ______________',
  'The work stops here': 'Hier hält die Arbeit an',
  '{count, plural, one {Line {numbers} has} other {Lines {numbers} have}} to be settled before anything else is done to this piano.':
    '{count, plural, one {Zeile {numbers} muss} other {Die Zeilen {numbers} müssen}} geklärt sein, bevor an diesem Instrument etwas anderes getan wird.',
  'Whether plate, block and frame will bear new strings is for the maker’s data and a licensed or specialist trade to judge; local rules come first.':
    'Ob Gussplatte, Stimmstock und Rahmen neue Saiten tragen, ist nach den Angaben des Herstellers und von zugelassenen oder spezialisierten Fachleuten zu beurteilen; örtliche Vorschriften gehen vor.',
  'Every line has its answer; there is nothing left to decide.':
    'Jede Zeile hat ihre Antwort; es ist nichts mehr zu entscheiden.',
  'Your decision': 'Ihre Entscheidung',
  'I agree to every line that is priced and not yet decided; not to those without a price.':
    'Ich bin mit jeder Zeile einverstanden, die einen Preis hat und noch nicht entschieden ist; nicht mit denen ohne Preis.',
  'I agree to every line that is priced and not yet decided.':
    'Ich bin mit jeder Zeile einverstanden, die einen Preis hat und noch nicht entschieden ist.',
  'I agree only to the lines where “yes” is marked above.':
    'Ich bin nur mit den Zeilen einverstanden, bei denen oben „ja“ angekreuzt ist.',
  'Tell me the price of the lines without one before you do anything about them.':
    'Nennen Sie mir den Preis der Zeilen, die noch keinen haben, bevor Sie daran etwas tun.',
  'I agree to none of it. I have read what may follow from leaving it.':
    'Ich bin mit nichts davon einverstanden. Ich habe gelesen, was folgen kann, wenn es so bleibt.',
  name: 'Name',
  day: 'Tag',
  signature: 'Unterschrift',
  Where: 'Wo',
  'How grave': 'Wie schwer',
  'What to do about it': 'Was zu tun ist',
  'Not seen before': 'Warum nicht früher gesehen',
  Price: 'Preis',
  'Working days it adds': 'Zusätzliche Arbeitstage',
  Noted: 'Notiert',
  '{day} by {name}': '{day} von {name}',
  Answer: 'Antwort',
  '{answer}: “{note}”': '{answer}: „{note}“',
  Photo: 'Foto',
  'one was named, and taken out of the job since':
    'eines war genannt und wurde seither aus dem Auftrag genommen',
  '{amount} smallest units of {currency}': '{amount} kleinste Einheiten von {currency}',
};
