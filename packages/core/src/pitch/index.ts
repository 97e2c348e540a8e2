export { equalTemperedFrequency } from './equal-temperament.ts';
