import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  'Loop plan and cut list': 'Schlaufenplan und Zuschnittliste',
  '{count, plural, one {# wire} other {# wires}}: {looped} looped round a hitch pin for two strings each, {tied} tied.':
    '{count, plural, one {# Draht} other {# Drähte}}: {looped} mit Schlaufe um einen Anhangstift für je zwei Saiten, {tied} einzeln mit Öse.',
  Scale: 'Mensur',
  'Added to each wire': 'Zugabe je Draht',
  'No wire can be cut for': 'Kein Draht zuzuschneiden für',
  'Each wire': 'Jeder Draht',
  'Wire by size, without spares': 'Draht nach Stärke, ohne Ersatz',
  '[of wire] size': 'Stärke',
  '[of wire] all sizes': 'alle Stärken',
  '[part of a wire] front': 'vorn',
  '[part of a wire] speaking': 'klingend',
  '[part of a wire] back': 'hinten',
  '[part of a wire] coils': 'Windung.',
  '[part of a wire] beckets': 'Auge',
  '[part of a wire] hitch': 'Anhang',
  '[part of a wire] tie': 'Öse',
  '[part of a wire] waste': 'Abfall',
  '[of a wire] strings': 'Saiten',
  '[of a wire] made as': 'gemacht',
  '[of wire, in a narrow column] diameter, {unit}': 'Ø, {unit}',
  '[of a wire] parts, {unit}': 'Teile, {unit}',
  '[of a length] taken, not read': 'angenommen, nicht gemessen',
  'A length without a remark was read at its own note. “none”: the wire has no such part.':
    'Eine Länge ohne Bemerkung wurde an ihrem eigenen Ton gemessen. „keine“: Der Draht hat keinen solchen Teil. Auge: Draht im Wirbelauge; Anhang: um den Anhangstift.',
};
