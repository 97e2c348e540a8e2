import fc from 'fast-check';
import { metres, millimetres } from '../../units/index.ts';
import type { WindingLayer, WoundString } from '../wound-string.ts';

/** A wound string as a bass section may have it: one or two layers, bare ends of 0 to 60 mm that need not be alike. */
export const randomWoundString: fc.Arbitrary<WoundString> = fc
  .record({
    length: fc.double({ min: 0.5, max: 2, noNaN: true }),
    core: fc.double({ min: 0.7, max: 1.7, noNaN: true }),
    layers: fc.array(
      fc.record({
        wire: fc.double({ min: 0.15, max: 1.6, noNaN: true }),
        bareFront: fc.double({ min: 0, max: 60, noNaN: true }),
        bareBack: fc.double({ min: 0, max: 60, noNaN: true }),
      }),
      { minLength: 1, maxLength: 2 },
    ),
  })
  .map(({ length, core, layers }) => ({
    kind: 'wound',
    speakingLength: metres(length),
    coreDiameter: millimetres(core),
    layers: layers.map(
      ({ wire, bareFront, bareBack }): WindingLayer => ({
        wireDiameter: millimetres(wire),
        bareFront: millimetres(bareFront),
        bareBack: millimetres(bareBack),
      }),
    ),
  }));
