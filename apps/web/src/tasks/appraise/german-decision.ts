import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  'Rules: {source}. It advises; you decide. Plate and structure are for specialists, the maker’s data and local rules.':
    'Regeln: {source}. Sie raten; Sie entscheiden. Gussplatte und Tragwerk sind Sache von Fachleuten, der Angaben des Herstellers und der örtlichen Vorschriften.',
  'Reasons for {verdict}': 'Gründe für: {verdict}',
  Cautions: 'Vorsicht',
  'The decision that stands': 'Die geltende Entscheidung',
  'What was noted then spoke for: {advised}.': 'Das damals Notierte sprach für: {advised}.',
  '? What is noted now speaks for {verdict}: look at it again.':
    '? Das jetzt Notierte spricht für: {verdict}. Sehen Sie es noch einmal an.',
  'Go on to the estimate.': 'Weiter zum Kostenvoranschlag.',
  'Still unknown, and what would settle it': 'Noch unbekannt, und was es klären würde',
  'First:': 'Zuerst:',
  Decide: 'Entscheiden',
  'The job is a': 'Der Auftrag bekommt',
  'What would have to be done first, one a line': 'Was vorher zu tun wäre, eines je Zeile',
  'Conditions, one a line': 'Bedingungen, eine je Zeile',
  'Why, in a sentence': 'Warum, in einem Satz',
  'Keep the decision': 'Entscheidung speichern',
  '{mark} What is noted speaks for: {verdict}': '{mark} Das Notierte spricht für: {verdict}',
  '{mark} Decided: {verdict} {when}': '{mark} Entschieden: {verdict} {when}',
  '{about}; rests on {entries, plural, =0 {nothing noted} one {# entry} other {# entries}}{judge, select, none {} other {; to be judged by {judge}}}':
    '{about}; beruht auf: {entries, plural, =0 {nichts notiert} one {# Eintrag} other {# Einträge}}{judge, select, none {} other {; zu beurteilen durch: {judge}}}',
};
