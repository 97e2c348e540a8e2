import { type Quantity, quantity } from './quantity.ts';

/*
 * Every quantity the project uses, in SI, with the units the trade reads and writes.
 * `millimetres(1.05)` makes a quantity; `inMillimetres(d)` reads it back. Nobody writes `/ 1000` elsewhere.
 *
 * Exact factors: 1 in = 0.0254 m, 1 lb = 0.45359237 kg, g = 9.80665 m/s² by definition
 * (international yard and pound agreement, 1959; standard gravity, CGPM 1901).
 */

const METRES_PER_INCH = 0.0254;
const KILOGRAMS_PER_POUND = 0.45359237;
const STANDARD_GRAVITY = 9.80665;
const NEWTONS_PER_POUND_FORCE = KILOGRAMS_PER_POUND * STANDARD_GRAVITY;
const NEWTON_METRES_PER_INCH_POUND = NEWTONS_PER_POUND_FORCE * METRES_PER_INCH;
const PASCALS_PER_KSI = (1000 * NEWTONS_PER_POUND_FORCE) / METRES_PER_INCH ** 2;

// Length
export type Metres = Quantity<'length'>;
export const metres = (value: number): Metres => quantity('length', value);
export const millimetres = (value: number): Metres => metres(value / 1000);
export const micrometres = (value: number): Metres => metres(value / 1e6);
export const inches = (value: number): Metres => metres(value * METRES_PER_INCH);
/** A mil is a thousandth of an inch, the unit in which American wire is spoken of. */
export const mils = (value: number): Metres => metres((value * METRES_PER_INCH) / 1000);
export const inMetres = (length: Metres): number => length;
export const inMillimetres = (length: Metres): number => length * 1000;
export const inMicrometres = (length: Metres): number => length * 1e6;
export const inInches = (length: Metres): number => length / METRES_PER_INCH;
export const inMils = (length: Metres): number => (length / METRES_PER_INCH) * 1000;

// Mass and density
export type Kilograms = Quantity<'mass'>;
export const kilograms = (value: number): Kilograms => quantity('mass', value);
export const inKilograms = (mass: Kilograms): number => mass;
export type KilogramsPerMetre = Quantity<'mass per length'>;
export const kilogramsPerMetre = (value: number): KilogramsPerMetre => quantity('mass per length', value);
export type KilogramsPerCubicMetre = Quantity<'density'>;
export const kilogramsPerCubicMetre = (value: number): KilogramsPerCubicMetre => quantity('density', value);

// Force
export type Newtons = Quantity<'force'>;
export const newtons = (value: number): Newtons => quantity('force', value);
export const kilonewtons = (value: number): Newtons => newtons(value * 1000);
export const kilogramsForce = (value: number): Newtons => newtons(value * STANDARD_GRAVITY);
export const poundsForce = (value: number): Newtons => newtons(value * NEWTONS_PER_POUND_FORCE);
export const inNewtons = (force: Newtons): number => force;
export const inKilonewtons = (force: Newtons): number => force / 1000;
export const inKilogramsForce = (force: Newtons): number => force / STANDARD_GRAVITY;
export const inPoundsForce = (force: Newtons): number => force / NEWTONS_PER_POUND_FORCE;

// Stress
export type Pascals = Quantity<'stress'>;
export const pascals = (value: number): Pascals => quantity('stress', value);
export const megapascals = (value: number): Pascals => pascals(value * 1e6);
export const gigapascals = (value: number): Pascals => pascals(value * 1e9);
/** A ksi is a thousand pounds-force per square inch. */
export const ksi = (value: number): Pascals => pascals(value * PASCALS_PER_KSI);
export const inPascals = (stress: Pascals): number => stress;
export const inMegapascals = (stress: Pascals): number => stress / 1e6;
export const inGigapascals = (stress: Pascals): number => stress / 1e9;
export const inKsi = (stress: Pascals): number => stress / PASCALS_PER_KSI;

// Resistance to bending: Young's modulus times second moment of area, E · I
export type NewtonSquareMetres = Quantity<'flexural rigidity'>;
export const newtonSquareMetres = (value: number): NewtonSquareMetres => quantity('flexural rigidity', value);

// Turning moment
export type NewtonMetres = Quantity<'torque'>;
export const newtonMetres = (value: number): NewtonMetres => quantity('torque', value);
export const inchPounds = (value: number): NewtonMetres => newtonMetres(value * NEWTON_METRES_PER_INCH_POUND);
export const kilogramForceCentimetres = (value: number): NewtonMetres =>
  newtonMetres(value * STANDARD_GRAVITY * 0.01);
export const inNewtonMetres = (torque: NewtonMetres): number => torque;
export const inInchPounds = (torque: NewtonMetres): number => torque / NEWTON_METRES_PER_INCH_POUND;
export const inKilogramForceCentimetres = (torque: NewtonMetres): number =>
  torque / (STANDARD_GRAVITY * 0.01);

// Frequency, pitch offset, angle, temperature
export type Hertz = Quantity<'frequency'>;
export const hertz = (value: number): Hertz => quantity('frequency', value);
export const inHertz = (frequency: Hertz): number => frequency;
/** A pitch offset, 1200 · log₂ of a frequency ratio. Never money: see `MinorUnits` for that. */
export type Cents = Quantity<'pitch offset'>;
export const cents = (value: number): Cents => quantity('pitch offset', value);
export const inCents = (offset: Cents): number => offset;
export type Radians = Quantity<'angle'>;
export const radians = (value: number): Radians => quantity('angle', value);
export const degrees = (value: number): Radians => radians((value * Math.PI) / 180);
export const inRadians = (angle: Radians): number => angle;
export const inDegrees = (angle: Radians): number => (angle * 180) / Math.PI;
export type Kelvins = Quantity<'temperature difference'>;
export const kelvins = (value: number): Kelvins => quantity('temperature difference', value);

// How hard a string is to set moving: force per velocity
export type NewtonSecondsPerMetre = Quantity<'mechanical impedance'>;
export const newtonSecondsPerMetre = (value: number): NewtonSecondsPerMetre =>
  quantity('mechanical impedance', value);
