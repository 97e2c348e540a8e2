import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  'with the wire gone only its neighbours can say what size it was.':
    'Ist der Draht weg, können nur noch seine Nachbarn sagen, welche Stärke er hatte.',
  'the bridge pins may still tell it later, but not where the old string ran.':
    'Die Stegstifte zeigen sie vielleicht auch später noch, aber nicht, wo die alte Saite lief.',
  'the bass string order cannot be made without it.':
    'Ohne diese Angabe lässt sich die Basssaitenbestellung nicht aufstellen.',
  'the winding of the new string would start in the wrong place.':
    'Die Umspinnung der neuen Saite begänne an der falschen Stelle.',
  'the winding of the new string would end in the wrong place.':
    'Die Umspinnung der neuen Saite endete an der falschen Stelle.',
  'the cut list then rests on an assumed length.':
    'Die Zuschnittliste beruht dann auf einer angenommenen Länge.',
  'the next pin size cannot be chosen from it.':
    'Die nächste Wirbelstärke lässt sich dann nicht danach wählen.',
  'once the bar is loosened nobody can say how far it bent the strings.':
    'Ist der Stab gelöst, kann niemand mehr sagen, wie weit er die Saiten abgelenkt hat.',
  'the new strings may not lie where the hammers strike.':
    'Die neuen Saiten liegen vielleicht nicht dort, wo die Hämmer anschlagen.',
  'the maker of the bass strings would have to guess where the winding starts.':
    'Wo die Umspinnung beginnt, müsste der Hersteller der Basssaiten raten.',
  'the maker of the bass strings would have to guess where the winding ends.':
    'Wo die Umspinnung endet, müsste der Hersteller der Basssaiten raten.',
  'which pin a wire lay on cannot be seen once it is off.':
    'Auf welchem Stift ein Draht lag, ist nach dem Abnehmen nicht mehr zu sehen.',
  'a size that is stamped there says what the maker meant, and goes with a new bridge cap.':
    'Eine eingeschlagene Nummer sagt, was der Hersteller wollte, und verschwindet mit einem neuen Stegdoppel.',
  'the length of the new pins has to be found by trial.':
    'Die Länge der neuen Wirbel muss durch Probieren gefunden werden.',
  'how far new pins are driven has to be guessed once the old ones are out.':
    'Wie weit neue Wirbel eingeschlagen werden, muss geraten werden, wenn die alten heraus sind.',
  'the cut list then rests on an assumed number of coils.':
    'Die Schnittliste geht dann von einer angenommenen Zahl von Windungen aus.',
  'The relative humidity is not recorded: pitch, crown and torque move with it, and cannot be compared with later ones.':
    'Die relative Luftfeuchte ist nicht aufgenommen: Stimmhöhe, Wölbung und Drehmoment ändern sich mit ihr und lassen sich später nicht vergleichen.',
  'The temperature is not recorded: pitch moves with it, and cannot be compared with a later one.':
    'Die Temperatur ist nicht aufgenommen: Die Stimmhöhe ändert sich mit ihr und lässt sich später nicht vergleichen.',
  'At what pitch the piano stood is not recorded: how far the new strings raise it cannot be said later.':
    'Auf welcher Stimmhöhe das Instrument stand, ist nicht aufgenommen: Wie weit die neuen Saiten es anheben, lässt sich später nicht mehr sagen.',
  'The crown of the soundboard under load is not recorded: without strings only the unloaded one is left.':
    'Die Wölbung des Resonanzbodens unter Last ist nicht aufgenommen: Ohne Saiten bleibt nur die unbelastete.',
  'new bridge pins would have to be set out by guess.':
    'Neue Stegstifte müssten nach Gefühl angerissen werden.',
  'which strings shared a wire cannot be seen once they are off.':
    'Welche Saiten sich einen Draht teilten, ist nach dem Absaiten nicht mehr zu sehen.',
  'the bearing under load cannot be measured without strings.':
    'Der Stegdruck unter Last lässt sich ohne Saiten nicht messen.',
  'thickness, colour and place have to be guessed.': 'Dicke, Farbe und Lage müssen geraten werden.',
  'where they were and how thick has to be guessed.':
    'Wo sie lagen und wie dick sie waren, muss geraten werden.',
  'which damper stood where has to be found out one by one.':
    'Welcher Dämpfer wo stand, muss einzeln herausgefunden werden.',
  'the place of a movable piece has to be guessed.': 'Der Platz eines losen Teils muss geraten werden.',
  'it cannot be had later.': 'Später ist das nicht mehr zu bekommen.',
  'the piano': 'das Instrument',
  'The piano is not described: its compass is needed before anything can be checked.':
    'Das Instrument ist nicht beschrieben: Sein Umfang wird gebraucht, bevor sich etwas prüfen lässt.',
  'the sections': 'die Abschnitte',
  'No section is described: where the struts and the breaks are decides how the record is read.':
    'Kein Abschnitt ist beschrieben: Wo Spreizen und Übergänge liegen, entscheidet darüber, wie die Bestandsaufnahme zu lesen ist.',
  stringing: 'Bezug',
  'How {note} is strung is not described: strings to the note, plain or wound.':
    'Wie {note} bezogen ist, ist nicht beschrieben: Saiten je Ton, blank oder umsponnen.',
  'The {label} of {note} is not recorded{looked, select, yes { (somebody looked and could not read it)} other {}}: {cost}':
    '{note}, {label}: nicht aufgenommen{looked, select, yes { (jemand hat nachgesehen und konnte es nicht ablesen)} other {}}. {cost}',
  "Of the {label} {left} of {of} strings are not noted in the section '{section}'{looked, select, yes { (somebody looked and could not tell)} other {}}: {cost}":
    'Abschnitt „{section}“, {label}: {left} von {of} Saiten nicht notiert{looked, select, yes { (jemand hat nachgesehen und konnte es nicht sagen)} other {}}. {cost}',
  "Nothing is noted of the {label} in the section '{section}'{looked, select, yes { (somebody looked and could not tell)} other {}}: {cost}":
    'Abschnitt „{section}“, {label}: nichts notiert{looked, select, yes { (jemand hat nachgesehen und konnte es nicht sagen)} other {}}. {cost}',
  "No reading of {label} is recorded in the section '{section}' ({note} and up): {cost}":
    'Abschnitt „{section}“ (ab {note}), {label}: kein Messwert aufgenommen. {cost}',
  'somebody looked and could not read it': 'angesehen und nicht abzulesen',
  'somebody looked and could not tell': 'angesehen und nicht zu sagen',
  '{left} of {of} strings not noted': '{left} von {of} Saiten nicht notiert',
  'loop style and twist': 'Ösenform und Drall',
  'The loop style and the twist of the winding are not noted of {note}{more, plural, =0 {} other { and # more}} {where}: the maker of the bass strings has to be told, or will guess.':
    'Ösenform und Drall der Umspinnung sind nicht notiert für {note}{more, plural, =0 {} one { und # weiteren Ton} other { und # weitere Töne}} {where}: Dem Saitenmacher muss es gesagt werden, sonst rät er.',
  'in the part of the compass that is in no section':
    'in dem Teil des Umfangs, der in keinem Abschnitt liegt',
  "in the section '{section}'": 'im Abschnitt „{section}“',
};
