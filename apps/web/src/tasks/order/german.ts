import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  // Allowances and tolerances
  'Allowances and tolerances': 'Zugaben und Toleranzen',
  'What is bought beyond what is strung, and how far off a string that comes may be. These figures are the shop’s and hold for every job.':
    'Was über das Aufgezogene hinaus gekauft wird, und wie weit eine gelieferte Saite abweichen darf. Diese Werte gehören der Werkstatt und gelten für jeden Auftrag.',
  'From: {source}': 'Woher: {source}',
  'From: {source}. Set by {by}, {day}; it started as {starting}.':
    'Woher: {source}. Gesetzt von {by}, {day}; anfangs {starting}.',
  Change: 'Ändern',
  'Change: {figure}': 'Ändern: {figure}',
  'Take back': 'Zurücknehmen',
  'Take back: {figure}': 'Zurücknehmen: {figure}',
  'Keep this figure': 'Diesen Wert behalten',
  Figure: 'Wert',
  'Figure, {unit}': 'Wert, {unit}',
  'Where it comes from': 'Woher er stammt',
  'Your own experience, a maker, a book: it is printed beside the figure.':
    'Eigene Erfahrung, ein Hersteller, ein Buch: es wird neben dem Wert gedruckt.',
  'Counting …': 'Wird gezählt …',
  unknown: 'unbekannt',
  'What this job needs by it': 'Was dieser Auftrag damit braucht',
  'No quantity of this job changes.': 'Keine Menge dieses Auftrags ändert sich.',
  "Cannot set this figure: {kind, select, length {a length in mm or in} share {a number of percent} other {a whole number}} is needed, {found, select, none {nothing} other {'{found}'}} was found. Type it again.":
    "Dieser Wert kann nicht gesetzt werden: {kind, select, length {eine Länge in mm oder in} share {eine Zahl in Prozent} other {eine ganze Zahl}} wird gebraucht, {found, select, none {nichts} other {'{found}'}} stand da. Geben Sie ihn noch einmal ein.",
};
