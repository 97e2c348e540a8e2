import type { Catalogue } from '../words/index.ts';

export const german: Catalogue = {
  'at {note}': 'bei {note}',
  'on {count} notes, {first} to {last}': 'bei {count} Tönen, {first} bis {last}',
  'limit {allowed}, {source}': 'Grenze {allowed}, {source}',
  '{load} ({name}, {strings} strings)': '{load} ({name}, {strings, plural, one {# Saite} other {# Saiten}})',
  'Over the break from {lower} to {upper}': 'Beim Wechsel von {lower} zu {upper}',
  'Within {section}, from {lower, select, plain {plain to wound} other {wound to plain}} strings':
    'In {section}, von {lower, select, plain {blanken zu umsponnenen} other {umsponnenen zu blanken}} Saiten',
  "Within {section}, from the bridge '{lower}' to '{upper}'":
    'In {section}, vom Steg „{lower}“ zum Steg „{upper}“',
  'Within {section}, from {lower} to {upper} strings a note':
    'In {section}, von {lower} zu {upper} Saiten je Ton',
  'A wire under tension stores enough energy to injure: wear eye protection and keep your face out of its line.':
    'Gespannter Draht speichert genug Energie, um zu verletzen: Schutzbrille tragen und das Gesicht aus seiner Flucht halten.',
  'Never cut a string under tension; let it down at the pin first.':
    'Nie eine Saite unter Spannung durchschneiden; erst am Wirbel entspannen.',
  'Take the load off evenly over the whole plate: a plate relieved on one side only can crack.':
    'Die Last gleichmäßig über die ganze Gussplatte wegnehmen: Eine nur einseitig entlastete Platte kann reißen.',
  'Stop when the plate creaks, a bolt moves or a crack opens, and have it looked at before going on.':
    'Aufhören, wenn die Platte knackt, sich eine Schraube bewegt oder ein Riss aufgeht, und vor dem Weiterarbeiten nachsehen lassen.',
  "The maker's instructions, local codes and a licensed or specialist trade come before this plan.":
    'Angaben des Herstellers, örtliche Vorschriften und zugelassene Fachbetriebe gehen diesem Plan vor.',
  'Break share is {side, select, over {over the ceiling} other {under the floor}} {where}: {share}{notes, plural, =1 {} other {{side, select, over {, highest} other {, lowest}} at {worst}}} by {table} ({limit}).':
    'Der Anteil an der Bruchlast liegt {where} {side, select, over {über der Obergrenze} other {unter der Untergrenze}}: {share} nach {table}{notes, plural, =1 {} other {, am {side, select, over {höchsten} other {niedrigsten}} bei {worst}}} ({limit}).',
  'The wire {where} lies outside the sizes of {table}: its break share is an extension of that table and not a figure from it.':
    'Der Draht {where} liegt außerhalb der Stärken von {table}: Sein Anteil an der Bruchlast setzt diese Tabelle fort und ist kein Wert aus ihr.',
  'string tension': 'Zugkraft der Saite',
  'inharmonicity B': 'Inharmonizität B',
  'the impedance of the unison': 'Impedanz des Chors',
  '{place}, {lower} to {upper}, {name} goes from {from} to {to}: a step of {step} ({limit}).':
    '{place}, {lower} zu {upper}: {name} von {from} auf {to}, ein Sprung von {step} ({limit}).',
  'Within {section}, {lower} to {upper}, string tension goes from {from} to {to}: a step of {step} ({limit}).':
    'In {section}, {lower} zu {upper}: Zugkraft der Saite von {from} auf {to}, ein Sprung von {step} ({limit}).',
  'The tenor is foreshortened: from {highest} down to {lowest} the speaking length grows by {growth} a note ({limit}); at {lowest} break share is {share} by {table} and B is {times} times the least of the plain strings.':
    'Der Tenor ist verkürzt: Von {highest} abwärts bis {lowest} wächst die klingende Länge je Ton um {growth} ({limit}); bei {lowest} beträgt der Anteil an der Bruchlast {share} nach {table}, und B ist das {times}-Fache des kleinsten Werts der blanken Saiten.',
  'The strings of {note} pull unevenly: {tensions} from left to right, a spread of {spread} ({limit}).':
    'Die Saiten von {note} ziehen ungleich: {tensions} von links nach rechts, ein Unterschied von {spread} ({limit}).',
  '{upper} has {few} strings and {lower} below it has {more}: check the count.':
    '{upper} hat {few, plural, one {# Saite} other {# Saiten}}, {lower} darunter {more}: Anzahl prüfen.',
  'Beside the strut between {lower} and {upper} pull {below} and {above}.':
    'Beiderseits der Spreize zwischen {lower} und {upper} ziehen {below} und {above}.',
  'Over the strut between {lower} and {upper} the load of a note goes from {from} (mean of {countBelow}) to {to} (mean of {countAbove}): a step of {step} ({limit}).':
    'Über die Spreize zwischen {lower} und {upper} geht die Last eines Tons von {from} (Mittel aus {countBelow}) auf {to} (Mittel aus {countAbove}): ein Sprung von {step} ({limit}).',
  "On the bridge '{bridge}' pull {load}, {share} of the whole.":
    'Auf dem Steg „{bridge}“ ziehen {load}, {share} des Ganzen.',
  '{compass, select, whole {All {strings} strings together pull} other {The {notes} notes that can be computed have {strings} strings, which together pull}} {load}{judged, select, high {, over {limit}} low {, under {limit}} other {}}.':
    '{compass, select, whole {Alle {strings} Saiten zusammen ziehen mit} other {Die {notes} berechenbaren Töne haben {strings} Saiten; zusammen ziehen sie mit}} {load}{judged, select, high {, zu viel: {limit}} low {, zu wenig: {limit}} other {}}.',
  'It is so near the limit that the readings cannot tell: measure again.':
    'Das liegt so nah an der Grenze, dass die Messwerte nicht entscheiden: noch einmal messen.',
  'core formula': 'Formel nach dem Kerndraht',
  'exact modes, fitted over partials 1-8': 'genaue Eigenschwingungen, angepasst an die Teiltöne 1 bis 8',
  'common practice': 'gängige Praxis',
  'highest share of the break load': 'höchster Anteil an der Bruchlast',
  'lowest share of the break load of plain strings': 'niedrigster Anteil an der Bruchlast blanker Saiten',
  'lowest share of the break load of wound strings': 'niedrigster Anteil an der Bruchlast umsponnener Saiten',
  'largest step of string tension between the notes beside a break':
    'größter Sprung der Zugkraft zwischen den Tönen beiderseits eines Mensurbruchs',
  'largest step of string tension between neighbours in a section':
    'größter Sprung der Zugkraft zwischen Nachbarn in einem Abschnitt',
  'largest step of B between the notes beside a break':
    'größter Sprung von B zwischen den Tönen beiderseits eines Mensurbruchs',
  'largest step of the impedance of the whole unison between the notes beside a break':
    'größter Sprung der Impedanz des ganzen Chors zwischen den Tönen beiderseits eines Mensurbruchs',
  'least growth of the speaking length from note to note at the low end of the plain strings':
    'kleinster Zuwachs der klingenden Länge von Ton zu Ton am unteren Ende der blanken Saiten',
  'plain notes from the lowest up that are looked at for a foreshortened tenor':
    'blanke Töne vom tiefsten aufwärts, an denen ein verkürzter Tenor gesucht wird',
  'largest spread of string tension within one unison':
    'größter Unterschied der Zugkraft innerhalb eines Chors',
  'largest step of the load of a note from one side of a strut to the other':
    'größter Sprung der Last eines Tons von einer Seite einer Spreize zur anderen',
  'notes on each side of a strut whose load is compared':
    'Töne auf jeder Seite einer Spreize, deren Last verglichen wird',
  'highest load of all strings together': 'höchste Last aller Saiten zusammen',
  'lowest load of all strings of a whole compass together':
    'niedrigste Last aller Saiten eines ganzen Umfangs zusammen',
};
