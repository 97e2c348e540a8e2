import type { Catalogue } from '@becket/core';

/** Stringing, in German. */
export const german: Catalogue = {
  'section by section, from the bass': 'Abschnitt für Abschnitt, vom Bass her',
  'section by section, from the treble': 'Abschnitt für Abschnitt, vom Diskant her',
  'the section with the least on it first': 'zuerst der Abschnitt, auf dem am wenigsten ist',
  '{name} differs from its order. Send it back, or take it by name under Order › Orders.':
    '{name} weicht von der Bestellung ab. Zurückschicken oder unter Bestellen › Bestellungen namentlich hinnehmen.',
  '{name} is here but not measured. Measure it under Order › Orders first.':
    '{name} ist da, aber nicht gemessen. Zuerst unter Bestellen › Bestellungen messen.',
  '{name} has not come yet.': '{name} ist noch nicht gekommen.',
  'Cannot note this wire: a bare string is needed, {note} string {string} carries one that {by} noted. Take that back, or note what went wrong with it.':
    'Dieser Draht lässt sich nicht notieren: Gebraucht wird eine leere Saite, {note} Saite {string} trägt schon einen, den {by} notiert hat. Das zurücknehmen oder notieren, was damit schiefging.',
  'Cannot note this string: one that may go on is needed. {sentence}':
    'Diese Saite lässt sich nicht notieren: Gebraucht wird eine, die aufgezogen werden darf. {sentence}',
  'Cannot note that this wire came off: a string that carries one is needed, {note} string {string} is bare. Choose another string, or note it without its coming off.':
    'Dass dieser Draht abging, lässt sich nicht notieren: Gebraucht wird eine Saite, die einen trägt, {note} Saite {string} ist leer. Eine andere Saite wählen oder es ohne Abgehen notieren.',
};
