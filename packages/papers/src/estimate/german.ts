import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  Estimate: 'Kostenvoranschlag',
  Version: 'Fassung',
  '{version}, of {day}': '{version}, vom {day}',
  'Valid until': 'Gültig bis',
  'Time it takes': 'Dauer',
  'about {count, plural, one {{days} working day} other {{days} working days}}':
    'etwa {count, plural, one {{days} Arbeitstag} other {{days} Arbeitstage}}',
  'no day is set': 'kein Tag festgelegt',
  '{day}, which has passed: please ask whether it still holds':
    '{day}, schon vergangen: Bitte fragen Sie, ob er noch gilt',
  '{price}, tax included': '{price}, einschließlich Steuer',
  'That is the work as planned, {time} of it labour.':
    'Das ist die geplante Arbeit, davon {time} Arbeitszeit.',
  'That is the work as planned.': 'Das ist die geplante Arbeit.',
  'Some work is only done if something is found that could not be seen yet. With it, the whole comes to between {low} and {high}.':
    'Manche Arbeit wird nur getan, wenn sich etwas zeigt, was noch nicht zu sehen war. Mit ihr kommt das Ganze auf {low} bis {high}.',
  'The work as planned': 'Die geplante Arbeit',
  'What it comes to': 'Was es zusammen kostet',
  'Only if it is found': 'Nur, wenn es sich zeigt',
  'Some things show only once the strings are off. What follows is not part of the sum as planned; it is done only if it is found, and only with your agreement.':
    'Manches zeigt sich erst, wenn die Saiten herunter sind. Das Folgende gehört nicht zur geplanten Summe; es wird nur getan, wenn es sich zeigt, und nur mit Ihrem Einverständnis.',
  'The prices of the lines are with tax.': 'Die Preise der Zeilen sind mit Steuer.',
  'The prices of the lines are without tax.': 'Die Preise der Zeilen sind ohne Steuer.',
  'Each line is rounded once, half a unit away from zero; tax is worked out on the sum of all lines of one rate and rounded once.':
    'Jede Zeile wird einmal gerundet, eine halbe Einheit von null weg; die Steuer wird auf die Summe aller Zeilen eines Satzes berechnet und einmal gerundet.',
  'What an estimate binds either side to, and which taxes are due, follows the law of the place.':
    'Woran ein Kostenvoranschlag beide Seiten bindet und welche Steuern anfallen, folgt dem Recht des Ortes.',
  Remarks: 'Bemerkungen',
  'If something else comes to light once the strings are off, you will be asked before anything is done about it, with its own price.':
    'Zeigt sich etwas anderes, wenn die Saiten herunter sind, werden Sie gefragt, bevor daran etwas getan wird, mit einem eigenen Preis.',
  'No estimate was made yet.': 'Es wurde noch kein Kostenvoranschlag gemacht.',
  'No estimate was made yet': 'Noch kein Kostenvoranschlag',
  'Make one under Appraise, then print this paper again.':
    'Unter Begutachten einen machen, dann dieses Blatt noch einmal drucken.',
  'Version {version}, made on {day} by {name}. Sums are exact to the last digit.':
    'Fassung {version}, gemacht am {day} von {name}. Summen sind bis auf die letzte Stelle genau.',
  // Lines and sums
  what: 'was',
  '[of material or work] quantity': 'Menge',
  '[price of one] each': 'Einzelpreis',
  tax: 'Steuer',
  Labour: 'Arbeit',
  'Labour, sum': 'Arbeit, Summe',
  Materials: 'Material',
  'Materials, sum': 'Material, Summe',
  '[lines of an estimate] Other': 'Sonstiges',
  '[lines of an estimate] Other, sum': 'Sonstiges, Summe',
  'If found: {what}': 'Wenn es sich zeigt: {what}',
  'Sum without tax': 'Summe ohne Steuer',
  'Total, tax included': 'Gesamt, einschließlich Steuer',
  'Tax within it at {rate}': 'Darin Steuer zu {rate}',
  'Tax at {rate}': 'Steuer zu {rate}',
  'as planned, {currency}': 'wie geplant, {currency}',
  'if all of it is found, {currency}': 'wenn sich alles zeigt, {currency}',
  // The answer
  'Your answer': 'Ihre Antwort',
  'Version {version} was {answer, select, accepted {accepted} other {declined}} by {name} on {day}':
    'Fassung {version} wurde am {day} von {name} {answer, select, accepted {angenommen} other {abgelehnt}}',
  'Agreed is {price}, tax included.': 'Vereinbart sind {price}, einschließlich Steuer.',
  'Agreed is {price}, tax included; with what was agreed in advance up to {high}.':
    'Vereinbart sind {price}, einschließlich Steuer; mit dem, was im Voraus vereinbart ist, bis zu {high}.',
  'Nothing of the work that depends on what is found was agreed in advance: it is asked for first.':
    'Von der Arbeit, die davon abhängt, was sich zeigt, ist nichts im Voraus vereinbart: Es wird zuerst gefragt.',
  'Agreed in advance, if it is found: {work}.': 'Im Voraus vereinbart, wenn es sich zeigt: {work}.',
  'The rest is asked for first.': 'Nach dem Übrigen wird zuerst gefragt.',
  '“{note}”': '„{note}“',
  'The work is not begun.': 'Die Arbeit wird nicht begonnen.',
  'Please tick what you agree to, sign and send one copy back. Nothing is begun before that.':
    'Bitte kreuzen Sie an, womit Sie einverstanden sind, unterschreiben Sie und senden Sie eine Ausfertigung zurück. Vorher wird nichts begonnen.',
  'I accept version {version} of this estimate: {price}, tax included.':
    'Ich nehme Fassung {version} dieses Kostenvoranschlags an: {price}, einschließlich Steuer.',
  'If found ({found}), this may be done without asking again: {what} ({price}).':
    'Wenn es sich zeigt ({found}), darf das ohne weitere Nachfrage getan werden: {what} ({price}).',
  'I do not accept it.': 'Ich nehme ihn nicht an.',
  '{price} with tax': '{price} mit Steuer',
  '{price} without tax': '{price} ohne Steuer',
  'Earlier versions': 'Frühere Fassungen',
  'not answered': 'nicht beantwortet',
  '{answer, select, accepted {accepted} other {declined}} by {name} on {day}; that holds for it alone':
    'am {day} von {name} {answer, select, accepted {angenommen} other {abgelehnt}}; das gilt nur für diese Fassung',
  'Version {version} of {day} by {name}: {price}, tax included; {said}.':
    'Fassung {version} vom {day} von {name}: {price}, einschließlich Steuer; {said}.',
};
