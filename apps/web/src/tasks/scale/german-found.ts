import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  'Working out the uncertainties …': 'Die Unsicherheiten werden berechnet …',
  'Every figure carries its standard uncertainty.': 'Jede Zahl trägt ihre Standardunsicherheit.',
  'The uncertainties cannot be worked out: readings of one note contradict each other. See the values in question in Record.':
    'Die Unsicherheiten lassen sich nicht berechnen: Messwerte eines Tons widersprechen einander. Siehe die fraglichen Werte unter „Aufnehmen“.',
  'Scale as found': 'Vorgefundene Mensur',
  'No string can be computed yet: a note needs its stringing, its wire and its speaking length. {link}':
    'Noch lässt sich keine Saite berechnen: Ein Ton braucht seinen Bezug, seinen Draht und seine klingende Länge. {link}',
  'Enter readings in Record.': 'Messwerte unter „Aufnehmen“ eintragen.',
  'Load by section': 'Last nach Abschnitten',
  'Load by bridge': 'Last nach Stegen',
  'All together {load} ({also}){known, select, yes {, ± {uncertainty},} other {}} over {strings} strings{missing, plural, =0 {} one {, without # note that cannot be computed yet} other {, without # notes that cannot be computed yet}}.':
    'Alles zusammen {load} ({also}){known, select, yes {, ± {uncertainty},} other {}} an {strings} Saiten{missing, plural, =0 {} one {, ohne # Ton, der sich noch nicht berechnen lässt} other {, ohne # Töne, die sich noch nicht berechnen lassen}}.',
  'Not computed yet': 'Noch nicht berechnet',
  'What stands out': 'Was auffällt',
  'Nothing that can be computed lies beyond the shop’s limits.':
    'Nichts, was sich berechnen lässt, liegt außerhalb der Grenzen der Werkstatt.',
  'See {note}': '{note} ansehen',
  'Limits are the shop’s own and start from {source}; they are not physics.':
    'Die Grenzen sind die der Werkstatt (Ausgangswerte: {source}); sie sind keine Physik.',
  'also as': 'auch als',
  'tension of one string (N)': 'Zugkraft einer Saite (N)',
  'tension of one string (lbf)': 'Zugkraft einer Saite (lbf)',
  'At the pitch of equal temperament; every string of a unison is taken to be alike.':
    'In gleichstufiger Stimmung; alle Saiten eines Chors gelten als gleich.',
  'tension as a share of the break load (%)': 'Zugkraft als Anteil an der Bruchlast (%)',
  'Break load by the table {tables}.': 'Bruchlast nach der Tabelle {tables}.',
  '{notes} lie outside the table: their figures extend it.':
    'Außerhalb der Tabelle: {notes}. Ihre Zahlen setzen sie fort.',
  '{share} % of the break load': '{share} % der Bruchlast',
  'inharmonicity B, logarithmic': 'Inharmonizität B, logarithmisch',
  'B as in f = n·f₁·√(1 + B·n²).': 'B wie in f = n·f₁·√(1 + B·n²).',
  'Plain strings by the core formula.': 'Blanke Saiten nach der Kernformel.',
  'Wound strings from their exact modes, fitted over partials 1 to 8.':
    'Umsponnene Saiten aus ihren genauen Eigenschwingungen, angepasst an die Teiltöne 1 bis 8.',
  Compare: 'Vergleichen',
  Hear: 'Hören',
  'Loops and cuts': 'Schlaufen und Zuschnitt',
  Propose: 'Vorschlagen',
  yes: 'ja',
  no: 'nein',
  '{core} core, wound {windings}': 'Kerndraht {core}, umsponnen {windings}',
  'as found, in whole sizes': 'vorgefunden, in ganzen Stärken',
};
