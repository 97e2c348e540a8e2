import type { Catalogue } from '../words/index.ts';

export const german: Catalogue = {
  'Cannot compute a sound as every partial must lie below half the sample rate of {rate} Hz: found {frequency} Hz':
    'Der Klang lässt sich nicht berechnen: Jeder Teilton muss unter der halben Abtastrate von {rate} Hz liegen; gefunden: {frequency} Hz.',
};
