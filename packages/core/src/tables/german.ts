import type { Catalogue } from '../words/index.ts';

export const german: Catalogue = {
  'ASTM A228 minimum': 'Mindestwert ASTM A228',
  'ASTM A228 maximum': 'Höchstwert ASTM A228',
  'This is the most that the standard allows, not what a wire can be relied on to bear.':
    'Das ist das Höchste, was die Norm zulässt, und nicht das, was ein Draht verlässlich trägt.',
  'EN 10270-1 SM minimum': 'Mindestwert EN 10270-1 SM',
  'EN 10270-1 SH/DH minimum': 'Mindestwert EN 10270-1 SH/DH',
  'handbook law 2211/d^0.145 (music wire)': 'Handbuchformel 2211/d^0,145 (Klaviersaitendraht)',
  'handbook law 2060/d^0.163 (music wire)': 'Handbuchformel 2060/d^0,163 (Klaviersaitendraht)',
  'metric size numbers': 'metrische Nummern',
  'US size numbers': 'US-Nummern',
  'Sound new piano wire usually tests above this figure; rusted, kinked or fatigued wire can break below it.':
    'Guter neuer Klaviersaitendraht liegt bei Zugversuchen meist über diesem Wert; verrosteter, geknickter oder ermüdeter Draht kann darunter reißen.',
  '{from} to {to} mm': '{from} bis {to} mm',
};
