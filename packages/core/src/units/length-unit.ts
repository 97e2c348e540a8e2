/** The two ways a length is read in this trade. */
export type LengthUnit = 'mm' | 'in';

/**
 * The one that stands beside it.
 * @example otherUnit('mm')  // = in
 */
export const otherUnit = (unit: LengthUnit): LengthUnit => (unit === 'mm' ? 'in' : 'mm');

/**
 * How finely a length deserves to be told: a micrometer reads a diameter, a rule a length; what is thin or small is told to
 * the hundredth of a millimetre where it has one.
 */
export type LengthKind = 'diameter' | 'length' | 'thin';
