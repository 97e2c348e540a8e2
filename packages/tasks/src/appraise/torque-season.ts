import { english, type Language } from '@becket/core';
import type { TorqueRead } from './torque-readings.ts';

/** The air in which torque was read, and what to bear in mind. */
export interface TorqueSeason {
  readonly lowest_percent: number | undefined;
  readonly highest_percent: number | undefined;
  /** Readings without a humidity of their own or of their day. */
  readonly withoutHumidity: number;
  readonly firstDay: string | undefined;
  readonly lastDay: string | undefined;
  readonly cautions: readonly string[];
}

/** Relative humidity outside this moves grip noticeably over a season. Common practice, no source. */
export const COMMON_DRY_PERCENT = 35;
export const COMMON_DAMP_PERCENT = 60;
/** Readings in air this far apart are not alike. Common practice, no source. */
const APART_PERCENT = 15;

/**
 * What the air says about torque readings. Grip falls in dry air and rises in damp air as the block shrinks and swells; by how
 * much differs from block to block, so no figure is worked out. Common practice, no source.
 */
export function torqueSeason(
  readings: readonly TorqueRead[],
  { say, fixed }: Language = english,
): TorqueSeason {
  const humidities = readings.flatMap(({ relativeHumidity }) => relativeHumidity?.percent ?? []);
  const days = readings.map(({ at }) => at.slice(0, 10)).sort();
  const [lowest, highest] =
    humidities.length === 0 ? [undefined, undefined] : [Math.min(...humidities), Math.max(...humidities)];
  const cautions: string[] = [];
  if (lowest !== undefined && lowest < COMMON_DRY_PERCENT)
    cautions.push(
      say(
        'Torque was read in dry air, {percent} % relative humidity: pins often hold better in the damp season. Read again before a block is given up.',
        { percent: fixed(lowest, 0) },
      ),
    );
  if (highest !== undefined && highest > COMMON_DAMP_PERCENT)
    cautions.push(
      say(
        'Torque was read in damp air, {percent} % relative humidity: pins often hold less in the dry season. Allow for it before a block is called firm.',
        { percent: fixed(highest, 0) },
      ),
    );
  if (lowest !== undefined && highest !== undefined && highest - lowest > APART_PERCENT)
    cautions.push(
      say('Readings were taken in air from {low} to {high} % relative humidity: they are not quite alike.', {
        low: fixed(lowest, 0),
        high: fixed(highest, 0),
      }),
    );
  return {
    lowest_percent: lowest,
    highest_percent: highest,
    withoutHumidity: readings.length - humidities.length,
    firstDay: days[0],
    lastDay: days.at(-1),
    cautions,
  };
}
