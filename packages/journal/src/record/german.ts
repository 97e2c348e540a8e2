import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  'the diameter over a winding is not larger than what it is wound on':
    'der Durchmesser über einer Lage ist nicht größer als das, worauf sie gewickelt ist',
  'the two bare ends are together as long as the speaking length':
    'die beiden blanken Enden sind zusammen so lang wie die klingende Länge',
  '{note}: the {name} is {why, select, unknown {unknown} other {not read}}. Read it, or let the maker decide by name.':
    '{note}, {name}: {why, select, unknown {unbekannt} other {nicht gemessen}}. Messen oder mit Namen dem Saitenmacher überlassen.',
  '{note}: nobody has said how many strings it has. Describe its stringing.':
    '{note}: Niemand hat gesagt, wie viele Saiten der Ton hat. Den Bezug beschreiben.',
  '{note}: the loop style is not stated. Say it under what was seen, or let the maker decide by name.':
    '{note}: Die Ösenform ist nicht angegeben. Bei den Beobachtungen eintragen oder mit Namen dem Saitenmacher überlassen.',
  '{note}: the {name} of string 1 reads {from} mm and that of string {string} {to} mm. The strings of one note are alike: measure both again.':
    '{note}, {name}: Saite 1 misst {from} mm, Saite {string} {to} mm. Die Saiten eines Tons sind gleich: beide noch einmal messen.',
  '{note}: at pitch the core bears {share} % of its break load by {table}, above {highest} % (common practice). Look at its core and its winding again.':
    '{note}: In Stimmung trägt der Kerndraht {share} % seiner Bruchlast nach {table}, mehr als {highest} % (gängige Praxis). Kerndraht und Umspinnung noch einmal ansehen.',
  'the scale as found; no scale has been chosen yet':
    'die vorgefundene Mensur; noch ist keine Mensur gewählt',
  'the scale as found, which was chosen': 'die vorgefundene Mensur, die gewählt wurde',
  'the chosen scale “{name}”': 'die gewählte Mensur „{name}“',
  'The strings have changed since the order to {supplier} was drafted on {on}: a reading, a size, an allowance or the chosen scale is another now. Compare the paper that was sent with this one, and tell the maker.':
    'Die Saiten haben sich geändert, seit die Bestellung an {supplier} am {on} entworfen wurde: Ein Messwert, eine Stärke, eine Zugabe oder die gewählte Mensur ist jetzt anders. Das abgeschickte Blatt mit diesem vergleichen und dem Saitenmacher Bescheid geben.',
  'common practice, no source': 'gängige Praxis, ohne Quelle',
  '{note} string {string}': '{note} Saite {string}',
  '{one} and {other}': '{one} und {other}',
  'A wire is noted on {strings}, but the note is not described with that many strings.':
    'Für {strings} ist ein Draht notiert, aber der Ton ist nicht mit so vielen Saiten beschrieben.',
  'One wire is noted on {strings}, which lie in two sections: a strut stands between them.':
    'Für {strings} ist ein gemeinsamer Draht notiert, doch sie liegen in zwei Abschnitten: Dazwischen steht eine Spreize.',
  "One wire is noted on {strings}, which are not neighbours: look again, or note it as a predecessor's repair.":
    'Für {strings} ist ein gemeinsamer Draht notiert, doch sie sind keine Nachbarn: noch einmal nachsehen oder als Reparatur eines Vorgängers notieren.',
  '{strings} are noted as one wire, but read {one} and {other}: one wire has one size.':
    '{strings} sind als ein Draht notiert, messen aber {one} und {other}: Ein Draht hat eine Stärke.',
  'Hitch pin {pin} is noted for {strings} and for {others}.':
    'Anhangstift {pin} ist für {strings} und für {others} notiert.',
  "The section '{section}' has {count} strings, an odd count, and no tied wire is noted: one at least must be tied.":
    'Der Abschnitt „{section}“ hat {count} Saiten, eine ungerade Zahl, und keine einzeln mit Öse ist notiert: Mindestens eine muss es sein.',
  "In the section '{section}' no wire is noted for {unsaid} of {count} strings: {strings}{more, select, yes { and more} other {}}.":
    'Im Abschnitt „{section}“ ist für {unsaid} von {count} Saiten kein Draht notiert: {strings}{more, select, yes { und weitere} other {}}.',
  "In the section '{section}' the wire of {strings} goes to hitch pin {pin} and the wire of {others} to hitch pin {otherPin}: they cross. Look again, or note it as a predecessor's repair.":
    'Im Abschnitt „{section}“ geht der Draht von {strings} zum Anhangstift {pin} und der Draht von {others} zum Anhangstift {otherPin}: Sie kreuzen sich. Noch einmal nachsehen oder als Reparatur eines Vorgängers notieren.',
  "In the section '{section}' hitch pins from {low} to {high} are noted, but no wire for {some}{more, select, yes { and more} other {}}: an empty pin, or a wire that is not noted yet.":
    'Im Abschnitt „{section}“ sind Anhangstifte von {low} bis {high} notiert, aber kein Draht für {some}{more, select, yes { und weitere} other {}}: ein leerer Stift oder ein noch nicht notierter Draht.',
  'Cannot show this scale: a proposal of this job is needed, none of id {which} was found. It may have been withdrawn; choose another.':
    'Diese Mensur lässt sich nicht zeigen: Nötig ist ein Vorschlag dieses Auftrags, einer mit der Kennung {which} wurde nicht gefunden. Vielleicht wurde er zurückgenommen; einen anderen wählen.',
  'a withdrawn proposal': 'ein zurückgenommener Vorschlag',
  'The scale chosen on {on} has been withdrawn: choose again before anything is ordered from it.':
    'Die am {on} gewählte Mensur wurde zurückgenommen: neu wählen, bevor danach bestellt wird.',
  'The scale “{name}” has changed since it was chosen on {on}: a reading of it is another now. Look at it again and choose it again before ordering.':
    'Die Mensur „{name}“ hat sich geändert, seit sie am {on} gewählt wurde: Ein Messwert darin ist jetzt anders. Vor dem Bestellen noch einmal ansehen und neu wählen.',
  'all strings': 'alle Saiten',
};
