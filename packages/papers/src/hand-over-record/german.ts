import type { Catalogue } from '@becket/core';

/** The hand-over record, in German. */
export const german: Catalogue = {
  'Hand-over record': 'Übergabeprotokoll',
  'How this piano was left after it was restrung, for its owner and for the next technician. What is not known is said to be unknown.':
    'Wie dieses Instrument nach dem Neubeziehen verlassen wurde, für den Besitzer und für den nächsten Techniker. Was nicht bekannt ist, steht als unbekannt da.',
  'Digest of the strings': 'Prüfsumme der Saiten',
  'Handed over': 'Übergeben',
  'on {day} to {name}': 'am {day} an {name}',
  'Answered for by': 'Dafür steht ein',
  'nobody yet': 'noch niemand',
  'A draft': 'Ein Entwurf',
  'This piano has not been handed over. What stands here is as the job is now, and may change.':
    'Dieses Instrument ist nicht übergeben. Was hier steht, ist der jetzige Stand des Auftrags und kann sich ändern.',
  'Changed since the hand-over': 'Seit der Übergabe geändert',
  'What was done': 'Was getan wurde',
  'Nothing was recorded.': 'Nichts wurde eingetragen.',
  'Cautions and care': 'Hinweise und Pflege',
  'No caution was given yet.': 'Noch wurde kein Hinweis gegeben.',
  'Please mind': 'Bitte beachten',
  'Air to keep it in': 'Luft, in der es stehen soll',
  'To be tuned on': 'Zu stimmen am',
  'nothing said': 'nichts gesagt',
  Also: 'Außerdem',
  '[a remark] Note': 'Notiz',
  'New strings stretch: the piano goes flat several times in its first year, and needs a tuning each time.':
    'Neue Saiten dehnen sich: Das Instrument sinkt im ersten Jahr mehrmals und braucht jedes Mal eine Stimmung.',
  'The strings pull with many tonnes together. Leave pins, strings and plate to a technician.':
    'Die Saiten ziehen zusammen mit vielen Tonnen. Wirbel, Saiten und Gussplatte bitte einem Techniker überlassen.',
  'Dry and damp air move the pitch, and can damage the soundboard and the block: keep both away from the piano.':
    'Trockene und feuchte Luft verschieben die Tonhöhe und können Resonanzboden und Stimmstock schaden: Beides vom Instrument fernhalten.',
  'Still open': 'Noch offen',
  'Nothing that the record asks for is open.': 'Nichts, wonach das Protokoll fragt, ist offen.',
  'Where it deviates from the chosen scale': 'Wo es von der gewählten Mensur abweicht',
  'No scale was chosen: there is nothing to compare with.':
    'Es wurde keine Mensur gewählt: Es gibt nichts zum Vergleichen.',
  'Unknown: the new wire was measured at no note.': 'Unbekannt: Der neue Draht wurde an keinem Ton gemessen.',
  'None at the {measured, plural, one {# note} other {# notes}} whose new wire was measured.':
    'Keine an {measured, plural, one {dem einen Ton} other {den # Tönen}}, deren neuer Draht gemessen wurde.',
  '[a deviation] what': 'was',
  because: 'weil',
  'no reason given': 'kein Grund genannt',
  'Left alone': 'Belassen',
  'Nothing said yet.': 'Noch nichts gesagt.',
  'Nothing was named.': 'Nichts wurde genannt.',
  '[left alone] what': 'was',
  day: 'Tag',
  '[hand-over] handed over by': 'übergeben von',
  '[hand-over] taken by': 'übernommen von',
  'The strings that are on': 'Die Saiten, die aufgezogen sind',
  'The piano is not described: none of its strings is known.':
    'Das Instrument ist nicht beschrieben: Keine seiner Saiten ist bekannt.',
  'in no section': 'in keinem Abschnitt',
  'Wire: the plain wire, or the core of a wound string. Measured: read on the new wire. As chosen, as found: not measured on the new wire.':
    'Draht: der blanke Draht oder der Kerndraht einer umsponnenen Saite. Gemessen: am neuen Draht. Wie gewählt, wie vorgefunden: nicht am neuen Draht gemessen.',
  '[number of] strings': 'Saiten',
  wire: 'Draht',
  '[of a size] from': 'woher',
  '[of a size] measured': 'gemessen',
  '[of a size] as chosen': 'wie gewählt',
  '[of a size] as found': 'wie vorgefunden',
  plain: 'blank',
  'Torque of the tuning pins, as strung': 'Drehmoment der Wirbel mit dem neuen Bezug',
  'Unknown: no pin torque was read on the new strings.':
    'Unbekannt: Mit den neuen Saiten wurde kein Wirbeldrehmoment gemessen.',
  'Grip: what the block alone holds, the pull of the string taken out.':
    'Haltemoment: was der Stimmstock allein hält, ohne den Zug der Saite.',
  'An interval of the mean needs three pins with a grip.':
    'Ein Bereich des Mittels braucht drei Wirbel mit bekanntem Haltemoment.',
  'Interval of the mean: {percent} %; it needs three pins with a grip.':
    'Bereich des Mittels: {percent} %; er braucht drei Wirbel mit bekanntem Haltemoment.',
  pins: 'Wirbel',
  '[of pins] read': 'gemessen',
  'mean grip': 'mittleres Haltemoment',
  'interval, {unit}': 'Bereich, {unit}',
  'lowest, {unit}': 'niedrigstes, {unit}',
  'no grip can be told': 'kein Haltemoment bestimmbar',
  'as read: {torques}': 'wie gemessen: {torques}',
  '[of pins] too few': 'zu wenige',
  '{low} to {high}': '{low} bis {high}',
  '{torque} at {pin}': '{torque} bei {pin}',
  'Bearing, as strung': 'Stegdruck mit dem neuen Bezug',
  'Unknown: no bearing was read on the new strings.':
    'Unbekannt: Mit den neuen Saiten wurde kein Stegdruck gemessen.',
  'angle, degrees': 'Winkel, Grad',
  'rise, {unit}, span not said': 'Überhöhung, {unit}, Spanne nicht genannt',
  'rise, {unit}, over {span}': 'Überhöhung, {unit}, über {span}',
  '[bearing] what': 'was',
  mean: 'Mittel',
  'lowest to highest': 'niedrigster bis höchster',
  'Pitch as it was left': 'Tonhöhe, wie sie verlassen wurde',
  'Unknown: no pitch was read on the new strings.':
    'Unbekannt: Mit den neuen Saiten wurde keine Tonhöhe gemessen.',
  'left at, cents': 'danach, Cent',
  '[a pass] in': 'in',
  'read apart from a pass, cents': 'außerhalb der Durchgänge gemessen, Cent',
  'pass {pass}, {day}': 'Durchgang {pass}, {day}',
  'Photos of the new work': 'Fotos der neuen Arbeit',
  'No photo of the new work was kept.': 'Kein Foto der neuen Arbeit wurde aufbewahrt.',
  'Sizes are measured on the new wire where it says so; elsewhere they are those that were chosen, or found.':
    'Stärken sind am neuen Draht gemessen, wo es dabeisteht; sonst sind es die gewählten oder vorgefundenen.',
};
