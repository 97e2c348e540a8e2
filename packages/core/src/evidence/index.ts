// Values from readings
export {
  medianOf,
  ORIGINS,
  type Origin,
  originOfValue,
  type ReadingAccuracy,
  robustScatter,
  type ValueFromReadings,
  valueFromReadings,
} from './value-from-readings.ts';
