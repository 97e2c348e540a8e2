import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  'No wire is cut here for {count, plural, one {# plain note} other {# plain notes}} that cannot be computed yet. Beside them a string may come out tied that shares a wire in the end.':
    'Für {count, plural, one {# blanken Ton, der} other {# blanke Töne, die}} noch nicht berechnet werden {count, plural, one {kann} other {können}}, wird hier kein Draht zugeschnitten. Daneben kann eine Saite einzeln stehen, die am Ende einen Draht teilt.',
  'string {string}': 'Saite {string}',
  '{wire} tied': '{wire} einzeln mit Öse',
  '{one} with {other}': '{one} mit {other}',
  'No plain string can be computed yet: enter sections, wires and speaking lengths in Record.':
    'Noch lässt sich keine blanke Saite berechnen: Abschnitte, Drähte und klingende Längen unter „Aufnehmen“ eintragen.',
  '{wires, plural, one {# plain wire} other {# plain wires}}, of which {tied}: the fewest with these sizes, as a loop joins two neighbours of one size within a section.':
    '{wires, plural, one {# blanker Draht} other {# blanke Drähte}}, davon {tied}: weniger geht mit diesen Stärken nicht, denn eine Schlaufe verbindet zwei Nachbarn gleicher Stärke in einem Abschnitt.',
  '{count} tied': '{count} einzeln mit Öse',
  'As the worn wire was read, until the sizes it most probably had are worked out …':
    'So wie der abgenutzte Draht gemessen wurde, bis seine wahrscheinlichsten Stärken berechnet sind …',
  'What was found, in the sizes that its wire most probably had.':
    'Das Vorgefundene, in den Stärken, die sein Draht am wahrscheinlichsten hatte.',
  'Cut length = front + speaking + back lengths, {coils} coils and becket on each pin, half a turn round the hitch pin or {tie} for a tied loop, and {waste} waste at each pin ({source}). Cut the first wire of a size, string it, and correct before cutting the rest. Cut ends spring: hold both sides and wear glasses.':
    'Zuschnitt = Vorderlänge + klingende Länge + Hinterlänge, {coils} Windungen und Knick im Wirbelauge an jedem Wirbel, eine halbe Umdrehung um den Anhangstift oder {tie} für eine Öse, und {waste} Abfall an jedem Wirbel ({source}). Den ersten Draht einer Stärke zuschneiden, aufziehen und berichtigen, bevor die übrigen zugeschnitten werden. Abgeschnittene Enden schnellen weg: beide Seiten festhalten und Schutzbrille tragen.',
  '{section}: {wires, plural, one {# wire} other {# wires}}, {tied} tied':
    '{section}: {wires, plural, one {# Draht} other {# Drähte}}, {tied} einzeln mit Öse',
  'Loops of {section}, drawn': 'Schlaufen von {section}, gezeichnet',
  'A change that moves by one note saves a tied string:':
    'Ein Wechsel, der um einen Ton rückt, spart eine einzelne Saite:',
  'Take it into a draft': 'In einen Entwurf übernehmen',
  'Cut list of {section}': 'Zuschnittliste von {section}',
  '[on both pins] coils': 'Windungen',
  '[on both pins] beckets': 'Wirbelauge',
  '[part of a wire] hitch or tie': 'Anhang oder Öse',
  'Lengths in {unit}': 'Längen in {unit}',
  'rests on': 'beruht auf',
  'Loops on the plan of the piano': 'Schlaufen auf dem Plan des Instruments',
  'Loops on the plan, {section}': 'Schlaufen auf dem Plan, {section}',
  'Show on the plan': 'Auf dem Plan zeigen',
  'Tap the plan to see which strings share a wire.':
    'Auf den Plan tippen, um zu sehen, welche Saiten sich einen Draht teilen.',
  '{label}: note': '{label}: Ton',
  'one wire, two strings': 'ein Draht, zwei Saiten',
  'tied: its own ring': 'einzeln: eigene Öse',
  'the size changes; colours take turns': 'die Stärke wechselt; die Farben wechseln sich ab',
  'a change inside a loop, which costs a tied string':
    'ein Wechsel in einer Schlaufe, der eine einzelne Saite kostet',
  'Lengths and slants as on the plan, bridge to hitch pin included. Choose a section to see its strings apart.':
    'Längen und Schrägen wie auf dem Plan, mit der Strecke vom Steg zum Anhangstift. Einen Abschnitt wählen, um seine Saiten einzeln zu sehen.',
  'Lengths and slants are to scale; the room between strings is widened.':
    'Längen und Schrägen sind maßstäblich; der Raum zwischen den Saiten ist geweitet.',
  'No back length is read in {sections}: 60 mm are drawn.':
    'Keine Hinterlänge gemessen in {sections}: Gezeichnet sind 60 mm.',
};
