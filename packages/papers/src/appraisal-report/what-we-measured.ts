import type { Language } from '@becket/core';
import type { Job, ReadingQuantityName, StandingReading } from '@becket/journal';
import type { AppraisalFigures } from './appraisal-figures.ts';

/** Pitch, air and pins in plain sentences; what was not measured is said too. */
export function whatWeMeasured(job: Job, { torque }: AppraisalFigures, language: Language): string[] {
  return [pitch(job, language), air(job, language), pins(torque, language)];
}

const asFound = ({ readings }: Job, quantity: ReadingQuantityName): StandingReading[] =>
  readings.filter((one) => one.quantity === quantity && one.stage === 'as found');

function pitch(job: Job, language: Language): string {
  const { say } = language;
  const offsets = asFound(job, 'pitch-offset').map(({ value_si }) => value_si);
  if (offsets.length === 0) return say('How far the piano has gone from its pitch was not measured yet.');
  return say(
    'Measured at {count, plural, one {one note} other {# notes}}, the piano stands {offset} (a semitone is the step from one key to the next). New strings bring it back to pitch; they stretch, and need several tunings until they stay there.',
    { count: offsets.length, offset: offsetsInWords(offsets, language) },
  );
}

function offsetsInWords(offsets: readonly number[], { say }: Language): string {
  const [lowest, highest] = [Math.round(Math.min(...offsets)), Math.round(Math.max(...offsets))];
  if (lowest === 0 && highest === 0) return say('at its pitch, to a hundredth of a semitone');
  if (lowest < 0 && highest > 0)
    return say('between {below} hundredths of a semitone below its pitch and {above} above', {
      below: String(-lowest),
      above: String(highest),
    });
  const [near, far] = [Math.abs(lowest), Math.abs(highest)].sort((a, b) => a - b);
  const hundredths =
    near === far ? String(near) : say('{near} to {far}', { near: String(near), far: String(far) });
  return highest > 0
    ? say('{hundredths} hundredths of a semitone above its pitch', { hundredths })
    : say('{hundredths} hundredths of a semitone below its pitch', { hundredths });
}

function air(job: Job, { say }: Language): string {
  const humidity = asFound(job, 'relative-humidity').at(-1);
  if (humidity === undefined) return say('The dampness of the air was not measured at the visit.');
  const temperature = asFound(job, 'temperature').at(-1);
  const percent = String(Math.round(humidity.value_si));
  const measured =
    temperature === undefined
      ? say('The air was at {percent} % relative humidity at the visit.', { percent })
      : say('The air was at {percent} % relative humidity and {warmth} °C at the visit.', {
          percent,
          warmth: String(Math.round(temperature.value_si)),
        });
  const season = say(
    'Wood swells in damp and shrinks in dry air, and what we found can differ a little in another season.',
  );
  return `${measured} ${season}`;
}

function pins(torque: AppraisalFigures['torque'], { say }: Language): string {
  if (torque === undefined || torque.pins.length === 0)
    return say('How firmly the tuning pins are held was not measured yet.');
  const all = torque.field.pins.length;
  const count = String(torque.pins.length);
  const tried =
    all === 0
      ? say('We tried {count} tuning pins, the steel pins that the strings are wound on.', { count })
      : say('We tried {count} of {all} tuning pins, the steel pins that the strings are wound on.', {
          count,
          all: String(all),
        });
  const gripped = torque.pins.filter(({ isLow }) => isLow !== undefined);
  if (gripped.length === 0)
    return `${tried} ${say('How firmly they are held cannot be told from that yet.')}`;
  const low = gripped.filter(({ isLow }) => isLow === true).length;
  const result =
    low === 0
      ? say('All whose hold could be worked out are held firmly.')
      : low === gripped.length
        ? say('None is held as firmly as we like to see.')
        : say(
            'Of the {gripped} whose hold could be worked out, {low, plural, one {# is} other {# are}} held less firmly than we like to see.',
            { gripped: String(gripped.length), low },
          );
  const next = say(
    'New strings usually get new pins that are a little thicker, so that they are held well again; whether the block allows it is tried out with a few pins first.',
  );
  return `${tried} ${result} ${next}`;
}
