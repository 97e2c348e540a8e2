import type { Catalogue } from '../words/index.ts';

export const german: Catalogue = {
  'Cannot fill the lengths of {first} to {last} as {needed} notes must be read for a line: found {found}. Read more of them.':
    'Die Längen von {first} bis {last} lassen sich nicht ergänzen: Für eine Linie müssen {needed} Töne gemessen sein, gefunden: {found}. Weitere messen.',
  '{note}: a speaking length of {length} is {off} {side, select, more {more} other {less}} than the rest of its section suggests, {expected} ({low} to {high}). Measure it again.':
    '{note}: Eine klingende Länge von {length} ist {off} {side, select, more {mehr} other {weniger}}, als der übrige Abschnitt erwarten lässt, nämlich {expected} ({low} bis {high}). Noch einmal messen.',
  'wire diameter': 'Drahtdurchmesser',
  'core diameter': 'Kerndurchmesser',
  'over-all diameter': 'Außendurchmesser',
  'diameter over the inner layer': 'Durchmesser über der inneren Lage',
  'speaking length': 'klingende Länge',
  'winding length': 'Länge der Umspinnung',
  'pin diameter': 'Wirbeldurchmesser',
  'front length': 'Vorderlänge',
  'back length': 'Hinterlänge',
  'bare end at the front': 'blankes Ende vorn',
  'bare end at the bridge': 'blankes Ende am Steg',
  'loop to winding start': 'Öse bis Beginn der Umspinnung',
  'pin length': 'Wirbellänge',
  'pin height above the plate': 'Wirbelhöhe über der Gussplatte',
  'hitch pin diameter': 'Durchmesser des Anhangstifts',
  'pin torque': 'Drehmoment des Wirbels',
  core: 'Kerndraht',
  '{note}: {typed} is not possible as {label}: {low} to {high} {unit} is. {suggestion, select, none {Is it so?} other {{suggestion}?}}':
    '{note}: {label} {typed} ist nicht möglich, nur {low} bis {high} {unit}. {suggestion, select, none {Stimmt das?} other {{suggestion}?}}',
  '{note}: {typed} is far from the {label} of its neighbours, about {middle} {unit}. {suggestion, select, none {Is it so?} other {{suggestion}?}}':
    '{note}: {label} {typed} liegt weit weg von den Nachbarn, etwa {middle} {unit}. {suggestion, select, none {Stimmt das?} other {{suggestion}?}}',
  '{note}: the {label} of {typed} is exactly that of {other}. Is it so, or was it entered twice?':
    '{note}: {label} {typed} ist genau wie bei {other}. Stimmt das, oder wurde es zweimal eingegeben?',
  '{note}: the {label} of {typed} is exactly that of the last {count} notes. Is it so, or was it entered twice?':
    '{note}: {label} {typed} ist genau wie bei den letzten {count} Tönen. Stimmt das, oder wurde es zweimal eingegeben?',
  '{note}: the {label} of {typed} is more than that towards the bass, about {beside}; it does not usually grow towards the treble. Is it so?':
    '{note}: {label} {typed} ist mehr als zum Bass hin, etwa {beside}; zum Diskant hin nimmt das gewöhnlich nicht zu. Stimmt das?',
  '{note}: the {label} of {typed} is less than that towards the treble, about {beside}; it does not usually grow towards the treble. Is it so?':
    '{note}: {label} {typed} ist weniger als zum Diskant hin, etwa {beside}; zum Diskant hin nimmt das gewöhnlich nicht zu. Stimmt das?',
  '{note}: the {label} of {typed} differs from {string, select, unknown {the reading of the note} other {string {string} of the same unison}}, {unlike}. Is it so?':
    '{note}: {label} {typed} ist anders als {string, select, unknown {der Messwert des Tons} other {bei Saite {string} desselben Chors}}, {unlike}. Stimmt das?',
  'Measure {note} next{at, select, unworn { where nothing wore the wire (at the coil or under the felt)} other {}}: {why, select, doubt {its readings leave a doubt} other {it has no reading}}, {fits} fits; of {now} notes expected wrong about {after} will be left.':
    'Als Nächstes {note} messen{at, select, unworn {, wo nichts den Draht abgenutzt hat (an der Windung oder unter dem Filz)} other {}}: {why, select, doubt {Die Messwerte lassen Zweifel} other {Es gibt keinen Messwert}}, {fits} passt; von {now} voraussichtlich falschen Tönen bleiben etwa {after}.',
  'The stamp {label} belongs to {own}, not to {lattice}.':
    'Der Stempel {label} gehört zur Liste „{own}“, nicht zu „{lattice}“.',
  'The stamp {label} is no size of {lattice}.': 'Der Stempel {label} steht nicht in der Liste „{lattice}“.',
  'The stamp {label} has more than one diameter in {lattice}: measure it.':
    'Der Stempel {label} hat in der Liste „{lattice}“ mehr als einen Durchmesser: nachmessen.',
  '{note}: loop to winding {loopToWinding} and winding {winding} make {end}, which lies {beyond} beyond the front termination at {termination} from the hitch pin (back length {back}, speaking length {speaking}){near, select, yes {, or within the tolerance of a rule at it} other {}}. A winding ends before it: measure again.':
    '{note}: Öse bis Umspinnung {loopToWinding} und Umspinnung {winding} ergeben {end}; das liegt {beyond} hinter der vorderen Auflage bei {termination} ab dem Anhangstift (Hinterlänge {back}, klingende Länge {speaking}){near, select, yes { oder, soweit ein Maßstab das zeigt, genau auf ihr} other {}}. Eine Umspinnung endet davor: noch einmal messen.',
  '{note}: bare front {front}, winding {winding} and bare back {back} make {sum}, but the speaking length is {speaking}: {off} {side, select, more {too much} other {missing}}. Measure again.':
    '{note}: vorn blank {front}, Umspinnung {winding} und am Steg blank {back} ergeben {sum}, die klingende Länge ist aber {speaking}: {off} {side, select, more {zu viel} other {fehlen}}. Noch einmal messen.',
  '{note}: back length {back} and bare back {bare} put the start of the winding {start} from the hitch pin, but loop to winding is {loopToWinding}. Measure again.':
    '{note}: Hinterlänge {back} und am Steg blank {bare} ergeben den Beginn der Umspinnung {start} ab dem Anhangstift, Öse bis Umspinnung ist aber {loopToWinding}. Noch einmal messen.',
  '{note}: the {outerName} of {outer} is not more than the {innerName} of {inner} beneath it. Measure again.':
    '{note}: {outerName} {outer} ist nicht mehr als {innerName} {inner} darunter. Noch einmal messen.',
  '{note}: the {label} of {length} is more than the {lengthBefore} of {noteBefore} towards the bass. It does not usually grow towards the treble: measure {doubtful} again first.':
    '{note}: {label} {length} ist mehr als {lengthBefore} bei {noteBefore} zum Bass hin. Zum Diskant hin nimmt das gewöhnlich nicht zu: zuerst {doubtful} noch einmal messen.',
  "{note}: the winding ends {distance} from the front termination, where the line of the section's windings suggests {expected}. Measure the bare front again.":
    '{note}: Die Umspinnung endet {distance} vor der vorderen Auflage, nach der Linie der Umspinnungen im Abschnitt wären {expected} zu erwarten. Die vorn blanke Länge noch einmal messen.',
};
