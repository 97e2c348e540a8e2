// Values from readings
export { type ValueFromReadings, valueFromReadings } from './value-from-readings.ts';
