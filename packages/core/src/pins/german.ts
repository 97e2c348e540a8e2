import type { Catalogue } from '../words/index.ts';

export const german: Catalogue = {
  'in the section {section}': 'im Abschnitt {section}',
  'in the {width, plural, =1 {last note} other {last # notes}} at the ends of the sections, beside the struts':
    '{width, plural, =1 {im letzten Ton} other {in den letzten # Tönen}} an den Enden der Abschnitte, neben den Spreizen',
  'beside the strut between {lower} and {upper}': 'neben der Spreize zwischen {lower} und {upper}',
  'at {note}': 'bei {note}',
  'from {first} to {last}': 'von {first} bis {last}',
  'in the row of string {row} {span}': 'in der Reihe der Saite {row} {span}',
  'Read more pins, spread over the field, before anything is made of it.':
    'Weitere Wirbel messen, über das Feld verteilt, bevor etwas daraus geschlossen wird.',
  'Nothing in these readings speaks against the block; pins that were not read may still be loose.':
    'Nichts an diesen Messwerten spricht gegen den Stimmstock; nicht gemessene Wirbel können trotzdem locker sein.',
  'Often a block that has dried out or worn as a whole, holes drilled wide, or a block treated with oil; also a season with dry air.':
    'Oft ein im Ganzen ausgetrockneter oder abgenutzter Stimmstock, weit gebohrte Löcher oder ein mit Öl behandelter Stimmstock; auch eine Zeit mit trockener Luft.',
  'Often earlier work on that section (pins changed, holes reamed, liquid put in), or a block joint beside it.':
    'Oft frühere Arbeiten an diesem Abschnitt (Wirbel gewechselt, Löcher aufgerieben, Flüssigkeit eingebracht) oder eine Stoßfuge des Stimmstocks daneben.',
  'Often a block that does not fit its plate flange, so that pins lean there, or splits that start at the plate screws beside the struts.':
    'Oft ein Stimmstock, der nicht an der Plattenkante anliegt, sodass sich die Wirbel dort neigen, oder Risse, die von den Plattenschrauben neben den Spreizen ausgehen.',
  'Often layers that part or a crack that runs along these holes. It can go on where no pin was read.':
    'Oft Lagen, die sich lösen, oder ein Riss entlang dieser Löcher. Er kann dort weitergehen, wo kein Wirbel gemessen wurde.',
  'Often single worn holes or earlier repairs; a block that is sound between them can then be kept with larger pins, bushings or plugs.':
    'Oft einzelne ausgeleierte Löcher oder frühere Reparaturen; ein dazwischen gesunder Stimmstock kann dann mit stärkeren Wirbeln, Büchsen oder Dübeln erhalten werden.',
  '{low} of {read} pins read are low.': '{low} von {read} gemessenen Wirbeln sind schwach.',
  'No pin that was read is low.': 'Kein gemessener Wirbel ist schwach.',
  'As far as the pins read go.': 'So weit die gemessenen Wirbel reichen.',
  'No pin has a grip yet.': 'Noch kein Wirbel hat ein Haltemoment.',
  '{count} pins are needed to speak of a pattern.':
    'Um von einem Muster zu sprechen, braucht es {count} Wirbel.',
  'Low pins are the rule, and no place among them stands out.':
    'Schwache Wirbel sind die Regel, und keine Stelle sticht heraus.',
  '{low} of {read} pins read are low, and they gather nowhere in particular.':
    '{low} von {read} gemessenen Wirbeln sind schwach, und sie häufen sich nirgends.',
  'Chance alone gathers as many low pins in one place in {share} of shuffles; a small zone can still hide among few readings.':
    'Der bloße Zufall häuft ebenso viele schwache Wirbel an einer Stelle bei {share} der Mischungen; eine kleine Zone kann sich unter wenigen Messwerten noch verbergen.',
  'Low pins gather {where}: {inside} of {there} there, {outside} of {elsewhere} elsewhere.':
    'Schwache Wirbel häufen sich {where}: dort {inside} von {there}, sonst {outside} von {elsewhere}.',
  'The lowest pins gather {where}: {inside} of {there} there are under {torque}, {outside} of {elsewhere} elsewhere.':
    'Die schwächsten Wirbel häufen sich {where}: dort liegen {inside} von {there} unter {torque}, sonst {outside} von {elsewhere}.',
  'Chance alone does this in {share} of shuffles: {sure, select, clear {clear} other {likely, not certain}}. What it comes from is for the eye: look at the block there.':
    'Der bloße Zufall bringt das bei {share} der Mischungen hervor: {sure, select, clear {eindeutig} other {wahrscheinlich, nicht sicher}}. Woher es kommt, zeigt nur das Auge: den Stimmstock dort ansehen.',
  '{size} does not reach the block.': '{size} reicht nicht bis in den Stimmstock.',
  '{size} sits {depth} in the block, {gap} above the bottom of the hole.':
    '{size} sitzt {depth} tief im Stimmstock, {gap} über dem Grund des Lochs.',
  '{size} is too long: it would sit {depth} in a hole of {hole}, and {least} are to be left under it.':
    '{size} ist zu lang: Der Wirbel säße {depth} tief in einem Loch von {hole}, und darunter sollen {least} frei bleiben.',
  'common practice': 'gängige Praxis',
  'common practice, from memory': 'gängige Praxis, aus dem Gedächtnis',
  'The block itself is in question: the lowest of {readings, plural, one {# reading} other {# readings}} is {lowest}, under {limit} ({source}). Have it examined before a pin size is chosen.':
    'Der Stimmstock selbst ist fraglich: Der niedrigste von {readings, plural, one {# Messwert} other {# Messwerten}} ist {lowest}, unter {limit} ({source}). Untersuchen lassen, bevor eine Wirbelstärke gewählt wird.',
  "Go up {sizes, plural, one {# size} other {# sizes}} from {from}: the lowest of {readings, plural, one {# reading} other {# readings}} is {lowest}, {side, select, firm {at or above} other {under}} {limit} ({source}); but the shop's list has no such size.":
    'Von {from} {sizes, plural, one {# Stärke} other {# Stärken}} höher gehen: Der niedrigste von {readings, plural, one {# Messwert} other {# Messwerten}} ist {lowest}, {side, select, firm {nicht unter} other {unter}} {limit} ({source}); die Liste der Werkstatt hat jedoch keine solche Stärke.',
  'Go up {sizes, plural, one {# size} other {# sizes}} from {from} to {to}: the lowest of {readings, plural, one {# reading} other {# readings}} is {lowest}, {side, select, firm {at or above} other {under}} {limit} ({source}). Fit test pins in the worst and the best place first.':
    'Von {from} {sizes, plural, one {# Stärke} other {# Stärken}} höher gehen auf {to}: Der niedrigste von {readings, plural, one {# Messwert} other {# Messwerten}} ist {lowest}, {side, select, firm {nicht unter} other {unter}} {limit} ({source}). Zuerst Probewirbel an der schlechtesten und an der besten Stelle einsetzen.',
  'assumed: wrench ±6 %, hand 5 %, friction ±10 % of the pull (common practice, no source)':
    'angenommen: Schlüssel ±6 %, Hand 5 %, Reibung ±10 % des Zugs (gängige Praxis, ohne Quelle)',
};
