import { inInches, inMillimetres, type LengthUnit, type Metres, metres } from '../units/index.ts';
import { english, type Language } from '../words/index.ts';

/** The unit in which a sentence tells its lengths. */
export type SentenceUnit = LengthUnit;

/** How a sentence tells a string length, and a diameter. */
export interface SpokenLength {
  readonly length: (length: number) => string;
  readonly diameter: (diameter: number) => string;
}

/**
 * Lengths as sentences tell them: a rule is read to 0.1 mm or 0.005 in, a micrometer to 0.001 mm or 0.0001 in, and one
 * more digit would claim too much. Common practice, no source.
 *
 * @param unit      of every length in the sentence
 * @param language  whose decimal mark is used
 * @example spokenLengths('mm').length(0.115)  // = 115.0 mm
 * @example spokenLengths('in').length(0.0254)  // = 1.000 in
 * @example spokenLengths('in').diameter(0.001016)  // = 0.0400 in
 */
export function spokenLengths(unit: SentenceUnit, { fixed }: Language = english): SpokenLength {
  const told = (length: Metres, digits: readonly [mm: number, inch: number]): string =>
    unit === 'mm'
      ? `${fixed(inMillimetres(length), digits[0])} mm`
      : `${fixed(inInches(length), digits[1])} in`;
  return {
    length: (length) => told(metres(length), [1, 3]),
    diameter: (diameter) => told(metres(diameter), [3, 4]),
  };
}
