import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  'The job behind this paper:': 'Der Auftrag zu diesem Blatt:',
  Piano: 'Instrument',
  'not described yet': 'noch nicht beschrieben',
  'maker unknown': 'Hersteller unbekannt',
  'Form and length': 'Bauart und Länge',
  'Form and height': 'Bauart und Höhe',
  grand: 'Flügel',
  vertical: 'Klavier',
  unknown: 'unbekannt',
  'Serial number': 'Seriennummer',
  Year: 'Baujahr',
  Compass: 'Umfang',
  '{notes} notes, {first} to {last} (keys {firstKey} to {lastKey})':
    '{notes} Töne, {first} bis {last} (Tasten {firstKey} bis {lastKey})',
  'Pitch it is strung for': 'Stimmhöhe des Bezugs',
  'section {section}': 'Abschnitt {section}',
  'string {number}': 'Saite {number}',
  'whole piano': 'ganzes Instrument',
  'whole section': 'ganzer Abschnitt',
  'nothing said of what it shows': 'nichts dazu gesagt, was es zeigt',
  'This photo was not where the paper was made, or is damaged there. Make the paper again where it is.':
    'Dieses Foto war dort, wo das Blatt gemacht wurde, nicht vorhanden oder ist dort beschädigt. Das Blatt dort noch einmal machen, wo es ist.',
  'This photo cannot be printed: a whole JPEG is needed, something else is kept under its name.':
    'Dieses Foto ist nicht zu drucken: Gebraucht wird ein ganzes JPEG, unter seinem Namen ist etwas anderes gespeichert.',
  'kept {day} by {name}; digest {digest}': 'gespeichert am {day} von {name}; Prüfsumme {digest}',
  'no scale': 'kein Maßstab',
  'scale bar: {length}, measured on the piano': 'Maßstab: {length}, am Instrument gemessen',
  '≈ {length}, u = {uncertainty}, off the scale bar':
    '≈ {length}, u = {uncertainty}, aus dem Maßstab im Bild',
  'A length off the scale bar holds only in the plane of the bar, seen from the front.':
    'Eine Länge aus dem Maßstab im Bild gilt nur in dessen Ebene, von vorn gesehen.',
  'The scale bars disagree by {percent} %: measure on the piano instead.':
    'Die Maßstäbe im Bild weichen um {percent} % voneinander ab: besser am Instrument messen.',
  'page {page} of {pages}': 'Seite {page} von {pages}',
  'As-found record not sealed: it may still change.':
    'Bestandsaufnahme nicht versiegelt: Sie kann sich noch ändern.',
  'As-found record sealed {day} by {name}, digest {digest}.':
    'Bestandsaufnahme versiegelt am {day} von {name}, Prüfsumme {digest}.',
  '{count} amended since.': 'Seither {count} nachgetragen.',
  'THE SEAL DOES NOT MATCH.': 'DAS SIEGEL STIMMT NICHT.',
  'Not sealed': 'Nicht versiegelt',
  'This record is not sealed. It may still change, and the strings should not come off yet.':
    'Diese Aufnahme ist nicht versiegelt. Sie kann sich noch ändern, und die Saiten sollen noch nicht herunter.',
  'The entries under the seal were not checked when this paper was made.':
    'Die Einträge unter dem Siegel wurden nicht geprüft, als dieses Blatt gemacht wurde.',
  'The entries under the seal were checked when this paper was made: all are here and unchanged.':
    'Die Einträge unter dem Siegel wurden geprüft, als dieses Blatt gemacht wurde: Alle sind da und unverändert.',
  'CAREFUL: when this paper was made, the entries under the seal did not match it. Compare with an older copy.':
    'VORSICHT: Als dieses Blatt gemacht wurde, stimmten die Einträge unter dem Siegel nicht mit ihm überein. Mit einer älteren Ausfertigung vergleichen.',
  'Sealed on {moment}, by {name}': 'Versiegelt am {moment}, von {name}',
  'The seal covers {count, plural, one {{entries} entry} other {{entries} entries}}; {gaps, plural, one {# gap was} other {# gaps were}} accepted by name; {amendments, plural, =0 {nothing was amended since} one {# amendment since} other {# amendments since}}.':
    'Das Siegel umfasst {count, plural, one {{entries} Eintrag} other {{entries} Einträge}}; {gaps, plural, one {# Lücke wurde} other {# Lücken wurden}} namentlich hingenommen; {amendments, plural, =0 {seither wurde nichts nachgetragen} one {# Nachtrag seither} other {# Nachträge seither}}.',
  'Digest (SHA-256): {digest}': 'Prüfsumme (SHA-256): {digest}',
};
