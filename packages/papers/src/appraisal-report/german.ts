import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  // The paper
  'Appraisal report': 'Befundbericht',
  'What we looked at, what we found, what it means for your piano, and what we suggest.':
    'Was wir angesehen haben, was wir gefunden haben, was es für Ihr Instrument bedeutet und was wir vorschlagen.',
  For: 'Für',
  'Asked for': 'Gefragt ist',
  'not named': 'nicht genannt',
  Job: 'Auftrag',
  'Looked at': 'Angesehen',
  'What we looked at': 'Was wir angesehen haben',
  'What we found': 'Was wir gefunden haben',
  'What we measured': 'Was wir gemessen haben',
  'What we could not see': 'Was wir nicht sehen konnten',
  'What we suggest': 'Was wir vorschlagen',
  'What happens next': 'Wie es weitergeht',
  'What was seen and measured at the visit; the figures are in the technical annex.':
    'Was beim Besuch zu sehen war und gemessen wurde; die Zahlen stehen im technischen Anhang.',
  'not yet': 'noch nicht',
  '{day}, by {people}': '{day}, von {people}',
  '{from} to {to}, by {people}': '{from} bis {to}, von {people}',
  'Until then, please': 'Bis dahin bitte',
  'Do not turn the tuning pins, and do not loosen screws of the iron frame: the strings pull with many tonnes, and what comes loose can hurt.':
    'Drehen Sie keine Stimmwirbel und lösen Sie keine Schrauben der Gussplatte: Die Saiten ziehen mit vielen Tonnen, und was sich löst, kann verletzen.',
  'Keep the piano away from heaters, sun and damp, and have it moved only by people who move pianos for a living.':
    'Halten Sie das Instrument von Heizung, Sonne und Feuchte fern und lassen Sie es nur von Leuten bewegen, die beruflich Klaviere transportieren.',
  'This report says what a technician could see and measure on a strung piano. Whether iron frame, block and case will bear the work is, in doubt, for a specialist to judge; local rules come first.':
    'Dieser Bericht sagt, was an einem bezogenen Instrument zu sehen und zu messen war. Ob Gussplatte, Stimmstock und Gehäuse die Arbeit tragen, beurteilt im Zweifel eine Fachkraft; örtliche Vorschriften gehen vor.',
  // What the parts are for
  'the wooden rails that carry the movement of the strings to the soundboard':
    'die Holzleisten, die die Bewegung der Saiten auf den Resonanzboden übertragen',
  'the large thin board that turns the movement of the strings into sound':
    'die große dünne Platte, die aus der Bewegung der Saiten Klang macht',
  'the bars glued beneath the soundboard, which keep it strong and slightly arched':
    'die Leisten unter dem Resonanzboden, die ihn fest und leicht gewölbt halten',
  'the block of hardwood that grips the tuning pins, and so keeps the piano in tune':
    'der Block aus Hartholz, der die Stimmwirbel hält und damit die Stimmung',
  'the cast-iron frame that bears the pull of all strings, many tonnes together':
    'der Rahmen aus Gusseisen, der den Zug aller Saiten trägt, zusammen viele Tonnen',
  'the metal parts at which the sounding length of a string begins and ends':
    'die Metallteile, an denen die klingende Länge einer Saite beginnt und endet',
  'the felts that silence strings, and parts of strings, that should not sound':
    'die Filze, die Saiten und Teile von Saiten stumm halten, die nicht klingen sollen',
  'keys and hammers; noted here and no part of this work':
    'Tasten und Hämmer; hier nur notiert und kein Teil dieser Arbeit',
  // What faults mean
  'Where the wood around the small pins of a bridge is cracked, strings sit loosely: they buzz, and they do not stay in tune.':
    'Wo das Holz um die kleinen Stifte eines Steges gerissen ist, sitzen Saiten lose: Sie schnarren und halten die Stimmung nicht.',
  'The cap is the thin layer on top of the bridge that the strings rest on; once worn or split it no longer passes on their movement cleanly.':
    'Das Doppel ist die dünne Schicht oben auf dem Steg, auf der die Saiten liegen; ist sie abgenutzt oder gespalten, gibt sie ihre Bewegung nicht mehr sauber weiter.',
  'A bridge that comes away from the soundboard passes on less and less of the sound, and the pull of the strings can open the gap further.':
    'Ein Steg, der sich vom Resonanzboden löst, gibt immer weniger Klang weiter, und der Zug der Saiten kann den Spalt weiter öffnen.',
  'Loose bridge pins let strings move sideways: they buzz and lose power.':
    'Lose Stegstifte lassen Saiten seitlich wandern: Sie schnarren und verlieren Kraft.',
  'A crack in the soundboard is often harmless as long as its edges are held; one that moves can rattle, and can grow with the seasons.':
    'Ein Riss im Resonanzboden ist oft harmlos, solange seine Ränder gehalten sind; einer, der sich bewegt, kann klirren und mit den Jahreszeiten wachsen.',
  'The slight arch of the board lets the strings press on it; where it has gone flat the sound is weaker and shorter.':
    'Durch die leichte Wölbung des Bodens drücken die Saiten auf ihn; wo er flach geworden ist, ist der Klang schwächer und kürzer.',
  'An earlier repair that gives way can rattle, and has to be done anew.':
    'Eine frühere Reparatur, die nachgibt, kann klirren und muss neu gemacht werden.',
  'Where a rib has come away, the board is no longer held there: it can rattle, and lose its arch.':
    'Wo sich eine Rippe gelöst hat, ist der Boden nicht mehr gehalten: Er kann klirren und seine Wölbung verlieren.',
  'A cracked rib no longer holds the board in its shape.':
    'Eine gerissene Rippe hält den Boden nicht mehr in seiner Form.',
  'Around a crack the tuning pins lose their grip, and the piano does not stay in tune.':
    'Um einen Riss herum verlieren die Stimmwirbel ihren Halt, und das Instrument hält die Stimmung nicht.',
  'The block is glued up from layers; where they come apart the tuning pins lose their grip, and the block may have to be replaced.':
    'Der Stimmstock ist aus Lagen verleimt; wo sie auseinandergehen, verlieren die Stimmwirbel ihren Halt, und der Stimmstock muss vielleicht ersetzt werden.',
  'The block has to lie close against the edge of the iron frame; a gap lets it give way under the pull of the strings.':
    'Der Stimmstock muss dicht an der Kante der Gussplatte anliegen; durch einen Spalt gibt er unter dem Zug der Saiten nach.',
  'Liquid was once put into the pin holes to tighten the pins; it can make them grip unevenly, and new pins may not hold.':
    'In die Wirbellöcher wurde einmal eine Flüssigkeit gegeben, damit die Wirbel fester sitzen; davon können sie ungleich halten, und neue Wirbel halten vielleicht nicht.',
  'The iron frame bears the pull of all strings. A cracked frame must not be strung until a specialist has judged it: it can break, and hurt people.':
    'Die Gussplatte trägt den Zug aller Saiten. Eine gerissene Gussplatte darf nicht bezogen werden, bevor eine Fachkraft sie beurteilt hat: Sie kann brechen und Menschen verletzen.',
  'Bolts that are loose or missing let the iron frame move under the pull of the strings.':
    'Durch lose oder fehlende Schrauben bewegt sich die Gussplatte unter dem Zug der Saiten.',
  'A worn or bent guide (agraffe) makes its strings buzz; one that breaks lets them go.':
    'Eine abgenutzte oder verbogene Führung (Agraffe) lässt ihre Saiten schnarren; eine, die bricht, lässt sie los.',
  'A worn bar makes its strings buzz or whistle, and can break them.':
    'Ein abgenutzter Druckstab lässt seine Saiten schnarren oder pfeifen und kann sie brechen lassen.',
  'The far ends of the strings hang on these pins; a loose or bent one can let its string go.':
    'An diesen Stiften hängen die hinteren Enden der Saiten; ein loser oder verbogener kann seine Saite loslassen.',
  'Worn dampers let notes ring on after the key is let go.':
    'Abgenutzte Dämpfer lassen Töne nachklingen, wenn die Taste schon losgelassen ist.',
  'Worn felt lets parts of the strings sound that should be silent.':
    'Abgenutzter Filz lässt Teile der Saiten klingen, die stumm sein sollen.',
  'Keys and hammers are noted only; they are no part of this work.':
    'Tasten und Hämmer sind nur notiert; sie sind kein Teil dieser Arbeit.',
  'Slight so far': 'Bisher leicht',
  'Plain to see': 'Deutlich zu sehen',
  Serious: 'Ernst',
  'Nothing needs to be done about it now': 'Im Moment ist nichts daran zu tun',
  'It is best mended while the strings are off':
    'Es wird am besten behoben, solange die Saiten herunter sind',
  'It has to be mended before new strings go on': 'Es muss behoben werden, bevor neue Saiten aufkommen',
  'It has to be settled before the work can begin': 'Es muss geklärt sein, bevor die Arbeit beginnen kann',
  'The earlier repair holds': 'Die frühere Reparatur hält',
  'The earlier repair does not hold': 'Die frühere Reparatur hält nicht',
  'Whether the earlier repair holds cannot be told yet':
    'Ob die frühere Reparatur hält, ist noch nicht zu sagen',
  // What was found
  '[of a piano] part': 'Teil',
  'what it is for': 'wozu es da ist',
  'what came of it': 'was sich ergab',
  'not looked at yet': 'noch nicht angesehen',
  '{count, plural, one {# thing found} other {# things found}}':
    '{count, plural, one {# Befund} other {# Befunde}}',
  '{count, plural, one {# point} other {# points}} sound':
    '{count, plural, one {# Punkt} other {# Punkte}} in Ordnung',
  '{count, plural, one {# point} other {# points}} could not be seen':
    '{count, plural, one {# Punkt} other {# Punkte}} nicht zu sehen',
  '{count, plural, one {# point} other {# points}} not looked at':
    '{count, plural, one {# Punkt} other {# Punkte}} nicht angesehen',
  'does not apply to this piano': 'trifft auf dieses Instrument nicht zu',
  'The piano was not surveyed yet.': 'Das Instrument wurde noch nicht begutachtet.',
  'Nothing was found that needs a word.': 'Es wurde nichts gefunden, was zu erwähnen wäre.',
  '{count, plural, one {Photo} other {Photos}} {numbers}.':
    '{count, plural, one {Foto} other {Fotos}} {numbers}.',
  'about {length}': 'etwa {length}',
  'Since the survey of {day}': 'Seit der Begutachtung vom {day}',
  'Nothing that was looked at both times has changed.':
    'Nichts, was beide Male angesehen wurde, hat sich verändert.',
  '{part}, not looked at: {things}.': '{part}, nicht angesehen: {things}.',
  'Not looked at at all: {parts}.': 'Gar nicht angesehen: {parts}.',
  'Every point of the survey could be looked at.':
    'Jeder Punkt der Begutachtung war zu sehen und wurde angesehen.',
  'A strung piano hides some of its parts. These points are open; some of them show only once the strings are off.':
    'Ein bezogenes Instrument verdeckt manche seiner Teile. Diese Punkte sind offen; einige zeigen sich erst, wenn die Saiten herunter sind.',
  'Photo {number}: {title}': 'Foto {number}: {title}',
  'The photos': 'Die Fotos',
  'No longer with the job: {count, plural, one {photo} other {photos}} {numbers}.':
    'Nicht mehr beim Auftrag: {count, plural, one {Foto} other {Fotos}} {numbers}.',
  // What was measured
  'How far the piano has gone from its pitch was not measured yet.':
    'Wie weit das Instrument von seiner Stimmhöhe entfernt ist, wurde noch nicht gemessen.',
  'Measured at {count, plural, one {one note} other {# notes}}, the piano stands {offset} (a semitone is the step from one key to the next). New strings bring it back to pitch; they stretch, and need several tunings until they stay there.':
    'An {count, plural, one {einem Ton} other {# Tönen}} gemessen, steht das Instrument {offset} (ein Halbton ist der Schritt von einer Taste zur nächsten). Neue Saiten bringen es wieder auf Stimmhöhe; sie dehnen sich und brauchen mehrere Stimmungen, bis sie dort bleiben.',
  'at its pitch, to a hundredth of a semitone': 'auf seiner Stimmhöhe, auf ein Hundertstel Halbton genau',
  'between {below} hundredths of a semitone below its pitch and {above} above':
    'zwischen {below} Hundertstel Halbton unter seiner Stimmhöhe und {above} darüber',
  '{near} to {far}': '{near} bis {far}',
  '{hundredths} hundredths of a semitone above its pitch':
    '{hundredths} Hundertstel Halbton über seiner Stimmhöhe',
  '{hundredths} hundredths of a semitone below its pitch':
    '{hundredths} Hundertstel Halbton unter seiner Stimmhöhe',
  'The dampness of the air was not measured at the visit.':
    'Die Luftfeuchte wurde beim Besuch nicht gemessen.',
  'The air was at {percent} % relative humidity at the visit.':
    'Die relative Luftfeuchte war beim Besuch {percent} %.',
  'The air was at {percent} % relative humidity and {warmth} °C at the visit.':
    'Die Luft hatte beim Besuch {percent} % relative Feuchte und {warmth} °C.',
  'Wood swells in damp and shrinks in dry air, and what we found can differ a little in another season.':
    'Holz quillt in feuchter und schwindet in trockener Luft; was wir gefunden haben, kann in einer anderen Jahreszeit etwas anders sein.',
  'How firmly the tuning pins are held was not measured yet.':
    'Wie fest die Stimmwirbel sitzen, wurde noch nicht gemessen.',
  'We tried {count} tuning pins, the steel pins that the strings are wound on.':
    'Wir haben {count} Stimmwirbel geprüft, die Stahlstifte, auf die die Saiten gewickelt sind.',
  'We tried {count} of {all} tuning pins, the steel pins that the strings are wound on.':
    'Wir haben {count} von {all} Stimmwirbeln geprüft, den Stahlstiften, auf die die Saiten gewickelt sind.',
  'How firmly they are held cannot be told from that yet.':
    'Wie fest sie sitzen, ist daraus noch nicht zu sagen.',
  'All whose hold could be worked out are held firmly.': 'Alle, deren Halt zu bestimmen war, sitzen fest.',
  'None is held as firmly as we like to see.': 'Keiner sitzt so fest, wie wir es gern sehen.',
  'Of the {gripped} whose hold could be worked out, {low, plural, one {# is} other {# are}} held less firmly than we like to see.':
    'Von den {gripped}, deren Halt zu bestimmen war, {low, plural, one {hält #} other {halten #}} nicht so fest, wie wir es gern sehen.',
  'New strings usually get new pins that are a little thicker, so that they are held well again; whether the block allows it is tried out with a few pins first.':
    'Neue Saiten bekommen meist neue, etwas dickere Wirbel, damit sie wieder gut halten; ob der Stimmstock das erlaubt, wird zuerst mit einigen Wirbeln ausprobiert.',
  // What is suggested
  'We suggest to go ahead with new strings': 'Wir schlagen vor, das Instrument neu zu beziehen',
  'We suggest new strings, on conditions': 'Wir schlagen neue Saiten vor, unter Bedingungen',
  'We advise against new strings as things stand': 'Wir raten nach heutigem Stand von neuen Saiten ab',
  'Nothing is decided yet': 'Es ist noch nichts entschieden',
  '{seen, plural, =0 {Nothing was found that needs a word} one {# thing was found, {grave, plural, =0 {none of them serious} other {# of them serious}}} other {# things were found, {grave, plural, =0 {none of them serious} other {# of them serious}}}}; {unseen, plural, =0 {nothing was hidden from sight} one {# point could not be seen} other {# points could not be seen}}.':
    '{seen, plural, =0 {Es wurde nichts gefunden, was zu erwähnen wäre} one {# Befund, {grave, plural, =0 {nicht ernst} other {ernst}}} other {# Befunde, {grave, plural, =0 {keiner davon ernst} other {# davon ernst}}}}; {unseen, plural, =0 {nichts war verdeckt} one {# Punkt war nicht zu sehen} other {# Punkte waren nicht zu sehen}}.',
  'What the work would cost is not worked out yet.': 'Was die Arbeit kosten würde, ist noch nicht berechnet.',
  'The work would cost {price}, tax included (estimate, version {version}).':
    'Die Arbeit würde {price} kosten, einschließlich Steuer (Kostenvoranschlag, Fassung {version}).',
  'The work would cost between {low} and {high}, depending on what is found, tax included (estimate, version {version}).':
    'Die Arbeit würde zwischen {low} und {high} kosten, je nachdem, was sich zeigt, einschließlich Steuer (Kostenvoranschlag, Fassung {version}).',
  'Nothing is decided yet. This report says what is known so far.':
    'Es ist noch nichts entschieden. Dieser Bericht sagt, was bisher bekannt ist.',
  'The condition is:': 'Die Bedingung ist:',
  'The conditions are:': 'Die Bedingungen sind:',
  'Decided on {day} by {name}.': 'Entschieden am {day} von {name}.',
  'We settle what is still open.': 'Wir klären, was noch offen ist.',
  'You hear from us what we suggest, and what it would cost.':
    'Sie hören von uns, was wir vorschlagen und was es kosten würde.',
  'Nothing is done to the piano.': 'Am Instrument wird nichts getan.',
  'We gladly explain what would have to change, and what else can be done with it.':
    'Wir erklären gern, was sich ändern müsste und was sonst damit zu tun ist.',
  'You receive an estimate.': 'Sie erhalten einen Kostenvoranschlag.',
  'Once you have accepted it, we agree on a day.':
    'Wenn Sie ihn angenommen haben, vereinbaren wir einen Tag.',
  'You have accepted the estimate; we agree on a day.':
    'Sie haben den Kostenvoranschlag angenommen; wir vereinbaren einen Tag.',
  'You have declined the estimate; nothing is done unless we agree on another.':
    'Sie haben den Kostenvoranschlag abgelehnt; es wird nichts getan, solange wir uns nicht auf einen anderen einigen.',
  'You answer the estimate that goes with this report.':
    'Sie antworten auf den Kostenvoranschlag zu diesem Bericht.',
  'Before a string comes off, everything about the old ones is measured and kept, so that it can always be looked up.':
    'Bevor eine Saite herunterkommt, wird alles an den alten gemessen und aufbewahrt, sodass es immer nachzulesen ist.',
  'Once the strings are off we look again. If something new comes to light, you are asked first, with its price.':
    'Sind die Saiten herunter, sehen wir noch einmal nach. Zeigt sich etwas Neues, werden Sie zuerst gefragt, mit dem Preis dazu.',
  'The new strings go on and are brought up to pitch evenly.':
    'Die neuen Saiten kommen auf und werden gleichmäßig auf Stimmhöhe gebracht.',
  'New strings stretch: the piano needs several tunings, the last of them some months later.':
    'Neue Saiten dehnen sich: Das Instrument braucht mehrere Stimmungen, die letzte davon einige Monate später.',
  'You receive a record of the work, for whoever looks after the piano next.':
    'Sie erhalten ein Protokoll der Arbeit, für alle, die das Instrument später betreuen.',
};
