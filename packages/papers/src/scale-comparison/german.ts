import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  'How hard does each string pull?': 'Wie stark zieht jede Saite?',
  'Tension of one string against key number, as found and as proposed. A level run is an even one; steps belong where one string becomes two or two become three.':
    'Zugkraft einer Saite über der Tastennummer, vorgefunden und vorgeschlagen. Ein ebener Verlauf ist ein gleichmäßiger; Stufen gehören dorthin, wo aus einer Saite zwei oder aus zwei drei werden.',
  'How near is each string to breaking?': 'Wie nah ist jede Saite am Reißen?',
  'Tension as a share of the break load against key number, as found and as proposed.':
    'Zugkraft als Anteil an der Bruchlast über der Tastennummer, vorgefunden und vorgeschlagen.',
  'share of the break load, %': 'Anteil an der Bruchlast, %',
  'How inharmonic is each string?': 'Wie inharmonisch ist jede Saite?',
  'Inharmonicity B against key number on a logarithmic scale, as found and as proposed.':
    'Inharmonizität B über der Tastennummer, logarithmisch geteilt, vorgefunden und vorgeschlagen.',
  '[a change] before': 'alt',
  '[a change] after': 'neu',
  'Notes that get another size': 'Töne mit anderer Drahtstärke',
  'Diameters in {unit}, in brackets in {other}. Before is what was read, after what is strung; N is of one string, % of the break load.':
    'Durchmesser in {unit}, in Klammern in {other}. Alt ist, was gemessen wurde, neu, was aufgezogen wird; N gilt für eine Saite, % für die Bruchlast.',
  '% of break load': '% der Bruchlast',
  'What plate and bridges bear': 'Was Gussplatte und Stege tragen',
  'Loads are of the notes that both scales have; bearing of those at which an angle or a rise was read under load. A proposal is taken to keep the angle.':
    'Die Lasten gelten für die Töne, die beide Mensuren haben; der Stegdruck für die, an denen unter Last ein Winkel oder eine Höhe gemessen wurde. Angenommen ist, dass ein Vorschlag den Winkel behält.',
  '[the load] of': 'wovon',
  uncertainty: 'Unsicherheit',
  'bearing, before': 'Stegdruck alt',
  'bearing, after': 'Stegdruck neu',
  '{force} N ({notes} read)': '{force} N ({notes} gemessen)',
  'bridge {bridge}': 'Steg {bridge}',
  'Major thirds over the break, beats a second': 'Große Terzen über den Übergang, Schwebungen je Sekunde',
  'Tuned by the stretch of each scale’s own inharmonicity. A row that rises evenly is heard as even.':
    'Gestimmt mit der Spreizung aus der eigenen Inharmonizität jeder Mensur. Eine Reihe, die gleichmäßig steigt, klingt gleichmäßig.',
  'Tuned by equal temperament, as too few notes are known for a stretch.':
    'Gleichstufig gestimmt, weil für eine Spreizung zu wenige Töne bekannt sind.',
  notes: 'Töne',
  'Plain wire it takes': 'Blanker Draht, den das braucht',
  'No note gets another size of wire than it had: “{name}” is the scale that was found, in new wire.':
    'Kein Ton bekommt eine andere Drahtstärke als bisher: „{name}“ ist die vorgefundene Mensur in neuem Draht.',
  '{count, plural, one {# note gets} other {# notes get}} another size of wire than before, of {all} that can be compared.':
    '{count, plural, one {# Ton bekommt} other {# Töne bekommen}} eine andere Drahtstärke als bisher, von {all}, die sich vergleichen lassen.',
  'From one note to the next the pull of a string bends by {after} on average; as it was found, by {before}. The less it bends, the more alike neighbours feel and sound.':
    'Von einem Ton zum nächsten weicht die Zugkraft einer Saite im Mittel um {after} vom glatten Verlauf ab; vorgefunden um {before}. Je weniger, desto ähnlicher spielen und klingen Nachbarn.',
  'The string nearest to breaking stands at {after} of what new wire is sure to bear; as it was found, at {before}.':
    'Die Saite, die dem Reißen am nächsten ist, steht bei {after} dessen, was neuer Draht sicher trägt; vorgefunden bei {before}.',
  'Where the wound strings meet the plain ones, thirds played upwards beat at speeds that jump by up to {after} beats a second from one to the next; as it was found, by up to {before}.':
    'Wo umsponnene und blanke Saiten aneinanderstoßen, springt das Tempo der Schwebungen aufwärts gespielter Terzen von einer zur nächsten um bis zu {after} je Sekunde; vorgefunden um bis zu {before}.',
  'All these strings together pull {is} instead of {was}: the plate and the case bear as much as before.':
    'Alle diese Saiten zusammen ziehen mit {is} statt {was}: Gussplatte und Gehäuse tragen so viel wie bisher.',
  'All these strings together pull {is} instead of {was}: the plate and the case bear {size} more than before.':
    'Alle diese Saiten zusammen ziehen mit {is} statt {was}: Gussplatte und Gehäuse tragen {size} mehr als bisher.',
  'All these strings together pull {is} instead of {was}: the plate and the case bear {size} less than before.':
    'Alle diese Saiten zusammen ziehen mit {is} statt {was}: Gussplatte und Gehäuse tragen {size} weniger als bisher.',
  'Lengths and old wire are readings; everything else is calculated from them.':
    'Längen und alter Draht sind gemessen; alles andere ist daraus berechnet.',
  'Scale comparison': 'Mensurvergleich',
  'Nothing to compare yet': 'Noch nichts zu vergleichen',
  'No other scale than the one that was found has been proposed.':
    'Außer der vorgefundenen ist keine Mensur vorgeschlagen.',
  'No string of the scale as found can be computed: a note needs its stringing, its wire and its speaking length.':
    'Keine Saite der vorgefundenen Mensur lässt sich berechnen: Ein Ton braucht seinen Bezug, seinen Draht und seine klingende Länge.',
  'The scale of a piano is the size and length of each of its strings. The lengths stay as the maker gave them; this paper shows what other sizes of wire would change.':
    'Die Mensur eines Instruments ist die Stärke und Länge jeder seiner Saiten. Die Längen bleiben, wie der Hersteller sie angelegt hat; dieses Blatt zeigt, was andere Drahtstärken ändern würden.',
  Compared: 'Verglichen',
  Proof: 'Nachweis',
  'none: it was made or changed by hand, or kept without what was proved of it':
    'keiner: von Hand gemacht oder geändert, oder ohne den Nachweis gespeichert',
  'Proved: by the weights and limits it was computed with, no other choice of sizes is better.':
    'Bewiesen: Nach den Gewichten und Grenzen, mit denen sie berechnet wurde, ist keine andere Wahl der Stärken besser.',
  'Not proved to be the best: a better one could lower its sum by {share} % at most.':
    'Nicht bewiesen, dass es nichts Besseres gibt: Eine bessere könnte ihre Summe um höchstens {share} % senken.',
  'as found, with “{name}”': 'vorgefunden, mit „{name}“',
  'Choose again': 'Noch einmal wählen',
  'In plain words': 'In einfachen Worten',
  'When to leave a scale alone': 'Wann eine Mensur bleiben soll',
  'An instrument of historic worth keeps its scale unless owner and conservator agree: sizes that are changed cannot be told from the old ones later. A scale that is even already gains little. What plate, bridges and soundboard can bear is not known from this paper: where a load would rise, ask whoever knows the structure.':
    'Ein Instrument von historischem Wert behält seine Mensur, wenn nicht Eigentümer und Restaurator etwas anderes vereinbaren: Geänderte Stärken sind später von den alten nicht zu unterscheiden. Eine Mensur, die schon gleichmäßig ist, gewinnt wenig. Was Gussplatte, Stege und Resonanzboden tragen können, sagt dieses Blatt nicht: Wo eine Last steigen würde, fragen Sie jemanden, der sich mit der Konstruktion auskennt.',
  'Nothing here is decided by the figures alone. New strings sound new whichever scale is strung.':
    'Die Zahlen allein entscheiden hier nichts. Neue Saiten klingen neu, nach welcher Mensur auch bezogen wird.',
  'What spoke against “{name}” when it was computed': 'Was beim Berechnen gegen „{name}“ sprach',
  'Chosen for stringing': 'Zum Beziehen gewählt',
  'nothing chosen yet': 'noch nichts gewählt',
  '{scale}, because “{reason}” (scale digest {digest})':
    '{scale}, weil „{reason}“ (Prüfsumme der Mensur {digest})',
  'this scale': 'diese Mensur',
  'Breaks of the scale': 'Mensurbrüche',
  'between {lower} and {upper}': 'zwischen {lower} und {upper}',
  'String by string': 'Saite für Saite',
  'Tension at A4 = {pitch} Hz and equal temperament. Break load by the table {tables}.':
    'Zugkraft bei A4 = {pitch} Hz und gleichstufiger Stimmung. Bruchlast nach der Tabelle {tables}.',
  'B as in f = n·f₁·√(1 + B·n²); wound strings from their exact modes.':
    'B wie in f = n·f₁·√(1 + B·n²); umsponnene Saiten aus ihren genauen Eigenschwingungen.',
  'Loads, beats and wire': 'Lasten, Schwebungen und Draht',
  'What changes': 'Was sich ändert',
  strings: 'Saiten',
};
