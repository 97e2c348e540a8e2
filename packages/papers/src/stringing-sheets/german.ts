import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  'Stringing sheets': 'Bezugsblätter',
  'Before a wire goes on': 'Bevor ein Draht aufgezogen wird',
  'Wear eye protection and gloves when wire is cut, coiled and pulled; keep the face out of the line of a string under tension.':
    'Beim Schneiden, Wickeln und Spannen von Draht Schutzbrille und Handschuhe tragen; das Gesicht aus der Linie einer gespannten Saite halten.',
  'Bring tension up evenly: some of every section in each round, never one section to pitch alone.':
    'Gleichmäßig hochziehen: in jedem Durchgang von jedem Abschnitt etwas, nie einen Abschnitt allein auf Tonhöhe.',
  'Compare the size on the coil, by micrometer, with the size on the sheet before the first cut of each size.':
    'Vor dem ersten Schnitt jeder Stärke den Draht vom Ring mit der Messschraube prüfen und mit dem Blatt vergleichen.',
  'Wound strings, from the set as received': 'Umsponnene Saiten, aus dem gelieferten Satz',
  '[string is on the piano] on': 'auf',
  'strings, bass side first': 'Saiten, Bassseite zuerst',
  wire: 'Draht',
  '{note}: {count, plural, one {# string} other {# strings}}':
    '{note}: {count, plural, one {# Saite} other {# Saiten}}',
  'Nobody has described the stringing of {notes}: these are on no sheet.':
    'Den Bezug von {notes} hat niemand beschrieben: Diese Töne stehen auf keinem Blatt.',
  'Not on these sheets': 'Nicht auf diesen Blättern',
  'In no section': 'Ohne Abschnitt',
  'Section {section}': 'Abschnitt {section}',
  '[length of a wire] cut': 'Zuschnitt',
  '[of a wire, in a narrow column] looped': 'Schlaufe',
  '[of a wire, in a narrow column] tied': 'einzeln',
};
