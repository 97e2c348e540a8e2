import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  'A string under tension that breaks or slips can blind. Wear eye protection, keep faces out of the line of the wire, and bring the whole piano up evenly.':
    'Eine gespannte Saite, die reißt oder abrutscht, kann das Augenlicht kosten. Augenschutz tragen, mit dem Gesicht aus der Richtung des Drahts bleiben und das ganze Instrument gleichmäßig hochziehen.',
  'What goes on next': 'Was als Nächstes aufgezogen wird',
  '[of a piano] Bass strings': 'Basssaiten',
  Sheets: 'Blätter',
  'By {scale}. {on} of {count} wires are on.':
    'Grundlage: {scale}. {on} von {count} Drähten sind aufgezogen.',
  'Which wire goes on next': 'Welcher Draht als Nächstes kommt',
  'No wire can be planned yet: sections, the strings of each note, and sizes and lengths are needed. {link}':
    'Noch lässt sich kein Draht planen: Gebraucht werden die Abschnitte, die Saiten jedes Tons, Stärken und Längen. {link}',
  'Describe them in Record.': 'Unter „Aufnehmen“ beschreiben.',
  '● Every wire is on. Go on to Settle.': '● Jeder Draht ist aufgezogen. Weiter mit „Setzen lassen“.',
  'Nothing is left that may go on now; what is held back stands in the list.':
    'Jetzt ist nichts mehr übrig, was aufgezogen werden darf; was noch warten muss, steht in der Liste.',
  'The wire noted last is read back here.': 'Hier steht der zuletzt notierte Draht zum Gegenlesen.',
  'On: {strings}': 'Aufgezogen: {strings}',
  '▲ On, but not in the plan: {strings}. The plan may have changed since.':
    '▲ Aufgezogen, aber nicht im Plan: {strings}. Der Plan kann sich seither geändert haben.',
  'Pins are logged as they go in under {pins}, torque after stringing under {torque}.':
    'Wirbel werden beim Einschlagen unter {pins} notiert, das Drehmoment nach dem Beziehen unter {torque}.',
  '[of a wire] Cut': 'Zuschnitt',
  '[of a wire] How it lies': 'Wie er liegt',
  'New pins': 'Neue Wirbel',
  'not chosen': 'nicht gewählt',
  'Once more: a wire came off here.': 'Noch einmal: Hier ging ein Draht ab.',
  'Its length rests on what was not read here: {remarks}.':
    'Seine Länge beruht auf Maßen, die nicht hier gemessen wurden: {remarks}.',
  'It is on': 'Ist aufgezogen',
  'Leave it out for now': 'Vorerst auslassen',
  'Another size went on': 'Eine andere Stärke wurde aufgezogen',
  'Diameter of the wire ({unit})': 'Durchmesser des Drahts ({unit})',
  'This one is on': 'Diese ist aufgezogen',
  'Cannot keep this size: a diameter from {low} to {high} is needed, ‘{found}’ was found. Read it off the coil or the micrometer.':
    'Diese Stärke lässt sich nicht speichern: Gebraucht wird ein Durchmesser von {low} bis {high}, gefunden wurde „{found}“. Vom Ring oder von der Messschraube ablesen.',
  'a wound string, from the set': 'eine umsponnene Saite aus dem Satz',
  'one wire round the hitch pin': 'ein Draht um den Anhangstift',
  'tied, with its own loop': 'einzeln, mit eigener Öse',
  '[a wire is] on': 'aufgezogen',
  '[a wire is] to do': 'noch zu tun',
  '[a wire is] on in part': 'zum Teil aufgezogen',
  'Wires by section': 'Drähte nach Abschnitt',
  '{on} of {count}': '{on} von {count}',
  '{day}, {by}': '{day}, {by}',
  '{size} went on': '{size} wurde aufgezogen',
  'once more': 'noch einmal',
  'one of these strings carries a wire that is not of this plan':
    'eine dieser Saiten trägt einen Draht, der nicht zu diesem Plan gehört',
  'Next: {strings}': 'Als Nächstes: {strings}',
  '[this wire] Next': 'Als Nächstes',
  'Something went wrong with a wire': 'Mit einem Draht ging etwas schief',
  'Went wrong: {count}': 'Schiefgegangen: {count}',
  'What went wrong while stringing': 'Was beim Beziehen schiefging',
  kinked: 'geknickt',
  'wrong wire': 'falscher Draht',
  'came off': 'ging ab',
  'stays on': 'bleibt drauf',
  'came off: it is strung again': 'ging ab: er wird neu aufgezogen',
  'Pin torque': 'Wirbeldrehmoment',
  'Bass strings: which may go on': 'Basssaiten: welche aufgezogen werden dürfen',
  'No bass set is ordered in this job, so nothing is known here of wound strings that go on. Measure them against the order or the scale before they do.':
    'In diesem Auftrag ist kein Basssatz bestellt; von umsponnenen Saiten, die aufgezogen werden, ist hier also nichts bekannt. Messen Sie sie vorher an der Bestellung oder der Mensur nach.',
  '● Every ordered string is here, measured, and as ordered or taken by name.':
    '● Jede bestellte Saite ist da, gemessen und wie bestellt oder namentlich hingenommen.',
  '▲ {ready} of {count} ordered strings may go on.':
    '▲ {ready} von {count} bestellten Saiten {ready, plural, one {darf} other {dürfen}} aufgezogen werden.',
  'What came and what was measured of it is noted under {orders}.':
    'Was gekommen ist und was daran gemessen wurde, wird unter {orders} notiert.',
  'Order › Orders': 'Bestellen › Bestellungen',
  '▲ Differs from the order: do not string': '▲ Weicht von der Bestellung ab: nicht aufziehen',
  '○ Here, not measured yet: do not string': '○ Da, noch nicht gemessen: nicht aufziehen',
  '○ Not here yet': '○ Noch nicht da',
  '◆ Differs, and taken by name: may go on': '◆ Weicht ab, namentlich hingenommen: darf aufgezogen werden',
  '● As ordered: may go on': '● Wie bestellt: darf aufgezogen werden',
};
