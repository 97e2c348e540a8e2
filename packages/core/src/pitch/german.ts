import type { Catalogue } from '../words/index.ts';

export const german: Catalogue = {
  'minor third': 'kleine Terz',
  'major third': 'große Terz',
  fourth: 'Quarte',
  fifth: 'Quinte',
  'minor sixth': 'kleine Sexte',
  'major sixth': 'große Sexte',
  octave: 'Oktave',
  'major tenth': 'große Dezime',
  twelfth: 'Duodezime',
  'double octave': 'Doppeloktave',
  'major seventeenth': 'große Septdezime',
};
