import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  'A string under tension that breaks or slips can blind. Wear eye protection, keep faces out of the line of the wire, and bring the whole piano up evenly.':
    'Eine gespannte Saite, die reißt oder abrutscht, kann das Augenlicht kosten. Augenschutz tragen, mit dem Gesicht aus der Richtung des Drahts bleiben und das ganze Instrument gleichmäßig hochziehen.',
  'Stringing on the screen': 'Beziehen am Bildschirm',
  'what goes on next, and ticking it off': 'was als Nächstes aufgezogen wird, und Abhaken',
  'torque spot checks on the way, and mishaps': 'Stichproben des Drehmoments unterwegs, und Missgeschicke',
  'The sheets above are worked out from the {scale} that was chosen, or else as it was found. Pins are logged as they go in under {pins}, and torque after stringing under {torque}.':
    'Die Blätter oben sind aus der gewählten {scale} gerechnet, sonst aus der vorgefundenen. Wirbel werden beim Einschlagen unter {pins} notiert, das Drehmoment nach dem Beziehen unter {torque}.',
  '[of the piano] scale': 'Mensur',
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
