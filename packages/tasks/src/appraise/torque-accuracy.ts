import type { TorqueAccuracy } from '@becket/core';
import { instrumentUncertainty, type Job, unitsForDimension } from '@becket/journal';
import type { TorqueRead } from './torque-readings.ts';

/** What the readings of one pin are worth, and who says so. */
export interface AccuracyOfPin {
  readonly accuracy: TorqueAccuracy;
  readonly wrenchFrom: 'stated of the wrench' | 'assumed';
  readonly handFrom: 'stated with the readings' | 'assumed';
}

/**
 * The assumed accuracy, with what is stated in its place: the limit of the wrench where every reading names one that is
 * described with how far it may be off, and the scatter of the hand where every reading states its uncertainty. The largest
 * counts, as a share of the reading.
 */
export function accuracyOfPin(
  readings: readonly TorqueRead[],
  instruments: Job['instruments'],
  assumed: TorqueAccuracy,
): AccuracyOfPin {
  const ofWrench = readings.map(({ instrument, torque }) => {
    const described = instrument === undefined ? undefined : instruments.get(instrument);
    if (described?.stated === undefined || !unitsForDimension('torque').includes(described.unit))
      return undefined;
    return torque > 0 ? instrumentUncertainty(described) / torque : undefined;
  });
  const ofHand = readings.map(({ uncertainty, torque }) =>
    uncertainty === undefined || torque <= 0 ? undefined : uncertainty / torque,
  );
  const wrench = largestOfAll(ofWrench);
  const hand = largestOfAll(ofHand);
  return {
    accuracy: {
      ...assumed,
      // A standard uncertainty of u is that of a limit of ±u·√3.
      ...(wrench === undefined ? {} : { wrenchLimit: wrench * Math.sqrt(3) }),
      ...(hand === undefined ? {} : { handScatter: hand }),
    },
    wrenchFrom: wrench === undefined ? 'assumed' : 'stated of the wrench',
    handFrom: hand === undefined ? 'assumed' : 'stated with the readings',
  };
}

/** Undefined as soon as one of them is. */
function largestOfAll(values: readonly (number | undefined)[]): number | undefined {
  const known = values.filter((value) => value !== undefined);
  return known.length < values.length || known.length === 0 ? undefined : Math.max(...known);
}
