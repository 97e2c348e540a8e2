import fc from 'fast-check';
import { kilogramsPerMetre, metres, millimetres, newtonSquareMetres, newtons } from '../../units/index.ts';
import type { SteppedString, StringEnds } from '../stepped-string.ts';
import type { WindingLayer, WoundString } from '../wound-string.ts';

/** None, or from half a millimetre to 60 mm. */
const bareEnd = fc.oneof(
  { arbitrary: fc.constant(0), weight: 1 },
  { arbitrary: fc.double({ min: 0.5, max: 60, noNaN: true }), weight: 6 },
);

/** A wound string as a bass section may have it: one or two layers, bare ends of 0 to 60 mm that need not be alike. */
export const randomWoundString: fc.Arbitrary<WoundString> = fc
  .record({
    length: fc.double({ min: 0.5, max: 2, noNaN: true }),
    core: fc.double({ min: 0.7, max: 1.7, noNaN: true }),
    layers: fc.array(
      fc.record({
        wire: fc.double({ min: 0.15, max: 1.6, noNaN: true }),
        bareFront: bareEnd,
        bareBack: bareEnd,
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

/** One to five stretches whose mass and stiffness differ as much as core and winding do, or more. */
export const randomSteppedString: fc.Arbitrary<SteppedString> = fc
  .record({
    segments: fc.array(
      fc.record({
        length: fc.double({ min: 0.002, max: 1, noNaN: true }),
        density: fc.double({ min: -3, max: -0.5, noNaN: true }),
        rigidity: fc.double({ min: -4, max: -0.5, noNaN: true }),
      }),
      { minLength: 1, maxLength: 5 },
    ),
    tension: fc.double({ min: 200, max: 2000, noNaN: true }),
    ends: fc.constantFrom<StringEnds>('pinned', 'clamped'),
  })
  .map(({ segments, tension, ends }) => ({
    segments: segments.map(({ length, density, rigidity }) => ({
      length: metres(length),
      linearDensity: kilogramsPerMetre(10 ** density),
      flexuralRigidity: newtonSquareMetres(10 ** rigidity),
    })),
    tension: newtons(tension),
    ends,
  }));
