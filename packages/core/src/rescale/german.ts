import type { Catalogue } from '../words/index.ts';

export const german: Catalogue = {
  'The instrument counts as historic. Leave its scale as it is unless owner and conservator agree: sizes that are changed cannot be told from the old ones later.':
    'Das Instrument gilt als historisch. Die Mensur lassen, wie sie ist, außer Eigentümer und Restaurator stimmen zu: Geänderte Stärken sind später nicht von den alten zu unterscheiden.',
  'The instrument was made in {year} and counts as historic{said, select, yes {} other { (before {limit})}}. Leave its scale as it is unless owner and conservator agree: sizes that are changed cannot be told from the old ones later.':
    'Das Instrument wurde {year} gebaut und gilt als historisch{said, select, yes {} other { (vor {limit})}}. Die Mensur lassen, wie sie ist, außer Eigentümer und Restaurator stimmen zu: Geänderte Stärken sind später nicht von den alten zu unterscheiden.',
  'The age of the instrument is not known, so it cannot be said whether it is historic (before {limit}). Find that out before its scale is changed.':
    'Das Alter des Instruments ist nicht bekannt; ob es historisch ist (vor {limit}), lässt sich nicht sagen. Das klären, bevor die Mensur geändert wird.',
  'The scale is about as smooth as this answer: changing {notes, plural, one {# note} other {# notes}} takes away {gained, select, some {{gain}} other {none}} of its bends of tension and B, less than the {least} that makes it worth while. Leave it as it is.':
    'Die Mensur ist etwa so glatt wie dieser Vorschlag: {notes, plural, one {# geänderter Ton nimmt} other {# geänderte Töne nehmen}} {gained, select, some {{gain}} other {nichts}} von den Knicken in Zugkraft und B weg, weniger als die {least}, ab denen es sich lohnt. Lassen, wie sie ist.',
  'The load of {name} would rise by {rise}, from {found} to {load} kN. What plate, bridge and soundboard can bear is not known here: keep the load as it was found, or ask whoever knows the structure.':
    'Die Last würde um {rise} steigen, von {found} auf {load} kN ({name}). Was Gussplatte, Steg und Resonanzboden tragen können, ist hier nicht bekannt: die vorgefundene Last beibehalten oder jemanden fragen, der den Aufbau kennt.',
  'the lowest tension': 'die kleinste Zugkraft',
  'the highest tension': 'die größte Zugkraft',
  'the lowest break share': 'der kleinste Anteil an der Bruchlast',
  'the highest break share': 'der größte Anteil an der Bruchlast',
  'the largest diameter over the core': 'der größte Durchmesser im Verhältnis zum Kerndraht',
  'minimum run of plain sizes': 'Mindestzahl gleicher blanker Stärken',
  'minimum run of cores': 'Mindestzahl gleicher Kerndrähte',
  'plain sizes never grow': 'blanke Stärken nehmen nie zu',
  'cores never grow': 'Kerndrähte nehmen nie zu',
  'note {key}': 'Ton {key}',
  'notes {first} to {last}': 'die Töne {first} bis {last}',
  'Nothing is offered for note {key}: it may be neither plain nor wound with the wires and bare ends given. Allow one of them there, or add wires.':
    'Für Ton {key} steht nichts zur Wahl: Mit den angegebenen Drähten und blanken Enden darf er weder blank noch umsponnen sein. Eines davon dort zulassen oder Drähte hinzufügen.',
  'No string fits note {key}: {limits} {count, plural, one {leaves} other {leave}} none. Widen one of them there, or offer more sizes.':
    'Keine Saite passt auf Ton {key}. {count, plural, one {Die Grenze lässt} other {Die Grenzen lassen}} keine übrig: {limits}. Dort eine Grenze weiten oder mehr Stärken zur Wahl stellen.',
  'The string pinned at note {key} breaks {limits}. Widen the limit there, or pin another string.':
    'Die bei Ton {key} festgelegte Saite überschreitet Grenzen: {limits}. Dort die Grenze weiten oder eine andere Saite festlegen.',
  'No scale goes through {where}: {rules} clashes with what fits there{pin, select, yes {, with what is pinned} other {}}. Widen a limit there, or ease the rule.':
    'Keine Mensur führt durch {where}, denn {rules} verträgt sich nicht mit dem, was dort passt{pin, select, yes { und festgelegt ist} other {}}. Dort eine Grenze weiten oder die Regel lockern.',
  'No scale goes through {where}: the rules of runs and of sizes that never grow clash together with what fits there{pin, select, yes {, with what is pinned} other {}}. Widen a limit there, or ease the rule.':
    'Keine Mensur führt durch {where}: Die Regeln über Mindestzahlen und über nie zunehmende Stärken vertragen sich zusammen nicht mit dem, was dort passt{pin, select, yes { und festgelegt ist} other {}}. Dort eine Grenze weiten oder die Regel lockern.',
  'No scale goes through {where}: what fits there would put plain strings below wound ones{pin, select, yes {, with what is pinned} other {}}. Widen a limit there, or ease the rule.':
    'Keine Mensur führt durch {where}: Was dort passt{pin, select, yes { und festgelegt ist} other {}}, brächte blanke Saiten unter umsponnene. Dort eine Grenze weiten oder die Regel lockern.',
  "the rule '{rule}'": 'die Regel „{rule}“',
  '{one} or {other}': '{one} oder {other}',
  'The load of {name} cannot be kept: the lightest scale has {lightest}, {highest} is allowed. Raise the limit, or lower the lowest tensions.':
    'Die Lastgrenze ist nicht einzuhalten ({name}): Die leichteste Mensur hat {lightest}, erlaubt sind {highest}. Die Grenze anheben oder die kleinsten Zugkräfte senken.',
  'all strings': 'alle Saiten',
  "the {of, select, section {section} other {bridge}} '{name}'":
    '{of, select, section {Abschnitt} other {Steg}} „{name}“',
  'No scale {proof, select, proven {keeps} other {was found that keeps}} these load limits together, though each can be kept alone: {limits} ({where}). Raise one of them, or lower the lowest tensions there.':
    '{proof, select, proven {Keine Mensur hält} other {Es wurde keine Mensur gefunden, die}} diese Lastgrenzen zugleich {proof, select, proven {ein} other {einhält}}, obwohl jede für sich einzuhalten ist: {limits} ({where}). Eine davon anheben oder dort die kleinsten Zugkräfte senken.',
  '{name} at most {highest}': '{name} höchstens {highest}',
};
