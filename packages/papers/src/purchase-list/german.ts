import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  'Purchase list': 'Einkaufsliste',
  'Nothing is to be bought: what the job needs is covered, or nothing could be counted yet.':
    'Nichts ist zu kaufen: Was der Auftrag braucht, ist gedeckt, oder es ließ sich noch nichts zählen.',
  'What the job needs beyond the stock, counted from {scale}.':
    'Was der Auftrag über das Lager hinaus braucht, gezählt nach: {scale}.',
  'Needed on': 'Gebraucht am',
  '{total} {currency}, to be ordered by {day}': '{total} {currency}, zu bestellen bis {day}',
  'No scale has been chosen': 'Keine Mensur gewählt',
  'Sizes are those that the old wire speaks for. Choose the scale to be strung before wire is bought.':
    'Die Stärken sind die, für die der alte Draht spricht. Erst die Mensur wählen, nach der bezogen wird, dann Draht kaufen.',
  'The scale has changed': 'Die Mensur hat sich geändert',
  'Not counted yet': 'Noch nicht gezählt',
  'To buy, but in no price list': 'Zu kaufen, aber in keiner Preisliste',
  'Not known yet': 'Noch nicht bekannt',
  'Covered by the stock or on order': 'Durch Lager oder Bestellung gedeckt',
  'Wire and pins by size': 'Draht und Wirbel nach Stärke',
  'Orders so far': 'Bisherige Bestellungen',
  'Quantities are counted from the scale, the loop plan, the pins and the soft parts of this job; prices are those of the lists kept.':
    'Die Mengen sind nach Mensur, Schlaufenplan, Wirbeln und Filzen dieses Auftrags gezählt; die Preise stammen aus den gespeicherten Listen.',
  article: 'Artikel',
  '[a quantity] needed': 'Bedarf',
  '[a quantity] covered': 'gedeckt',
  '[so many packs] buy': 'Kauf',
  '[packs] of': 'zu je',
  '[price] each': 'je',
  '[price] total': 'zusammen',
  'order by': 'bestellen bis',
  'no day': 'kein Tag',
  'on the shelf': 'im Lager',
  'to buy': 'zu kaufen',
  'counted from': 'gezählt nach',
};
