import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  'Bass string plan, 1:1': 'Basssaitenplan, 1:1',
  'No wound string can be drawn yet, from {scale}.':
    'Noch lässt sich keine umsponnene Saite zeichnen, nach: {scale}.',
  '{strings, plural, one {# wound string} other {# wound strings}} at true length on {sheets, plural, one {# sheet} other {# sheets}}, from {scale}.':
    '{strings, plural, one {# umsponnene Saite} other {# umsponnene Saiten}} in wahrer Länge auf {sheets, plural, one {# Blatt} other {# Blättern}}, nach: {scale}.',
  'Print at 100 %, without fitting to the page. Measure both rulers on every sheet before anything is laid on it: 100 mm and 4 in.':
    'Mit 100 % drucken, nicht an die Seite anpassen. Auf jedem Blatt beide Maßstäbe nachmessen, bevor etwas daraufgelegt wird: 100 mm und 4 in.',
  'Sheets of one group join by their letters: lay each pair of dashed lines on the pair with the same letter and number. Neighbours overlap by {overlap} mm.':
    'Die Blätter einer Gruppe werden nach ihren Buchstaben aneinandergelegt: jedes Paar gestrichelter Linien auf das Paar mit demselben Buchstaben und derselben Zahl. Nachbarn überlappen um {overlap} mm.',
  'Thin line: core, from the inside of the hitch loop at 0 to the front termination. Thick line: winding. The short mark in the bare part is the bridge pin. Thickness is not to scale.':
    'Dünne Linie: Kerndraht, von der Innenseite der Öse bei 0 bis zur vorderen Auflage. Dicke Linie: Umspinnung. Die kurze Marke im blanken Teil ist der Stegstift. Die Dicke ist nicht maßstäblich.',
  'Digest of the strings: {digest}; the bass string order has it in full.':
    'Prüfsumme der Saiten: {digest}; die Basssaitenbestellung nennt sie ganz.',
  'Not on this plan': 'Nicht auf diesem Plan',
  '{notes}: loop to winding, winding length or the way to the front termination is missing.':
    '{notes}: Es fehlt das Maß von der Öse bis zur Umspinnung, die Länge der Umspinnung oder der Weg bis zur vorderen Auflage.',
  'Strings {group} of {groups}, sheet {sheet} of {sheets}':
    'Saiten {group} von {groups}, Blatt {sheet} von {sheets}',
  'check: 100 mm': 'Kontrolle: 100 mm',
  'check: 4 in': 'Kontrolle: 4 in',
  'Strings at true length from {from} to {to} mm from the hitch loop.':
    'Saiten in wahrer Länge, von {from} bis {to} mm ab der Öse.',
};
