import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  // Papers
  Papers: 'Papiere',
  '{words} as a paper': '{words} als Papier',
  'Paper size': 'Papierformat',
  'Look at it': 'Ansehen',
  'Look at {words}': '{words} ansehen',
  '{words} is being made on this device …': '{words} wird auf diesem Gerät erstellt …',
  '{file} is among your downloads.': '{file} liegt bei Ihren Downloads.',
  'Stopped: {words} was not made.': 'Angehalten: {words} wurde nicht erstellt.',
  Stop: 'Anhalten',
  'Opening …': 'Wird geöffnet …',
  'The code to scan on a paper names the address of this page, {address}, which only this computer can open. Before you print a paper that others scan, open Becket by the address it has in the network of the shop.':
    'Der Code auf einem Papier nennt die Adresse dieser Seite, {address}, die nur dieser Rechner öffnen kann. Öffnen Sie Becket unter der Adresse, die es im Netz der Werkstatt hat, bevor Sie ein Papier drucken, das andere scannen.',
  // A paper over the whole screen
  '← Back': '← Zurück',
  'Open it to print': 'Zum Drucken öffnen',
  'Share it': 'Teilen',
  'Save it': 'Speichern',
  Smaller: 'Kleiner',
  Larger: 'Größer',
  'Cannot share {file} from here. Save it, and send it from your files.':
    '{file} lässt sich von hier nicht teilen. Speichern Sie es, und senden Sie es aus Ihren Dateien.',
  'This browser cannot show the pages here. Open it to print, or save it.':
    'Dieser Browser kann die Seiten hier nicht zeigen. Öffnen Sie das Papier zum Drucken, oder speichern Sie es.',
};
