import type { Job, ReadingQuantityName, StandingReading } from '@becket/journal';
import type { AppraisalFigures } from './appraisal-figures.ts';

/** Pitch, air and pins in plain sentences; what was not measured is said too. */
export function whatWeMeasured(job: Job, { torque }: AppraisalFigures): string[] {
  return [pitch(job), air(job), pins(torque)];
}

const asFound = ({ readings }: Job, quantity: ReadingQuantityName): StandingReading[] =>
  readings.filter((one) => one.quantity === quantity && one.stage === 'as found');

function pitch(job: Job): string {
  const offsets = asFound(job, 'pitch-offset').map(({ value_si }) => value_si);
  if (offsets.length === 0) return 'How far the piano has gone from its pitch was not measured yet.';
  const where = offsets.length === 1 ? 'Measured at one note' : `Measured at ${offsets.length} notes`;
  return `${where}, the piano stands ${offsetsInWords(offsets)} (a semitone is the step from one key to the next). New strings bring it back to pitch; they stretch, and need several tunings until they stay there.`;
}

function offsetsInWords(offsets: readonly number[]): string {
  const [lowest, highest] = [Math.round(Math.min(...offsets)), Math.round(Math.max(...offsets))];
  if (lowest === 0 && highest === 0) return 'at its pitch, to a hundredth of a semitone';
  const hundredths = 'hundredths of a semitone';
  if (lowest < 0 && highest > 0)
    return `between ${-lowest} ${hundredths} below its pitch and ${highest} above`;
  const side = highest > 0 ? 'above' : 'below';
  const [near, far] = [Math.abs(lowest), Math.abs(highest)].sort((a, b) => a - b);
  return `${near === far ? `${near}` : `${near} to ${far}`} ${hundredths} ${side} its pitch`;
}

function air(job: Job): string {
  const humidity = asFound(job, 'relative-humidity').at(-1);
  if (humidity === undefined) return 'The dampness of the air was not measured at the visit.';
  const temperature = asFound(job, 'temperature').at(-1);
  const warmth = temperature === undefined ? '' : ` and ${Math.round(temperature.value_si)} °C`;
  return `The air was at ${Math.round(humidity.value_si)} % relative humidity${warmth} at the visit. Wood swells in damp and shrinks in dry air, and what we found can differ a little in another season.`;
}

function pins(torque: AppraisalFigures['torque']): string {
  if (torque === undefined || torque.pins.length === 0)
    return 'How firmly the tuning pins are held was not measured yet.';
  const all = torque.field.pins.length;
  const tried = `We tried ${torque.pins.length}${all === 0 ? '' : ` of ${all}`} tuning pins, the steel pins that the strings are wound on.`;
  const gripped = torque.pins.filter(({ isLow }) => isLow !== undefined);
  if (gripped.length === 0) return `${tried} How firmly they are held cannot be told from that yet.`;
  const low = gripped.filter(({ isLow }) => isLow === true).length;
  const result =
    low === 0
      ? 'All whose hold could be worked out are held firmly.'
      : low === gripped.length
        ? 'None is held as firmly as we like to see.'
        : `Of the ${gripped.length} whose hold could be worked out, ${low} ${low === 1 ? 'is' : 'are'} held less firmly than we like to see.`;
  return `${tried} ${result} New strings usually get new pins that are a little thicker, so that they are held well again; whether the block allows it is tried out with a few pins first.`;
}
