import {
  english,
  FEWEST_TEST_PINS,
  type Language,
  type Metres,
  metres,
  type NewtonMetres,
  newtonMetres,
  type TestPinLaw,
  testPinLaw,
} from '@becket/core';
import type { Job, Ulid } from '@becket/journal';
import type { PinMeasured } from './measured-pins.ts';
import { pinName } from './pin-field.ts';
import type { PinTorqueMap } from './pin-torque-map.ts';
import type { PinFeel } from './torque-readings.ts';

/** A test pin, and what it is worth to the law. */
export interface TestPinTried {
  readonly entry: Ulid;
  readonly key: number | undefined;
  readonly string: number | undefined;
  readonly name: string;
  readonly diameter: Metres;
  readonly length: Metres | undefined;
  readonly torque: NewtonMetres;
  readonly feel: PinFeel | undefined;
  readonly note: string | undefined;
  readonly gripBefore: NewtonMetres | undefined;
  readonly diameterBefore: Metres | undefined;
  /** Undefined when it counts. */
  readonly leftOutBecause: string | undefined;
}

/** The test pins of a job and the law they speak for. */
export function testPinsOf(
  job: Job,
  { map, measured }: { readonly map: PinTorqueMap; readonly measured: readonly PinMeasured[] },
  language: Language = english,
): {
  readonly tried: readonly TestPinTried[];
  readonly law: TestPinLaw | undefined;
  readonly sentence: string;
} {
  const { say } = language;
  const tried = job.testPins.map((pin): TestPinTried => {
    const { key, string } = pin.place;
    const isThere = (one: { readonly key: number; readonly string: number | undefined }) =>
      one.key === key && (one.string ?? string) === string;
    const gripBefore = map.pins.find((one) => isThere(one) && one.grip !== undefined)?.grip?.grip;
    const diameterBefore = measured.find(isThere)?.diameter;
    const diameter = metres(pin.pinDiameter_m);
    return {
      entry: pin.entry,
      key,
      string,
      name: key === undefined ? say('a hole nobody named') : pinName({ key, string }, language),
      diameter,
      length: pin.pinLength_m === undefined ? undefined : metres(pin.pinLength_m),
      torque: newtonMetres(pin.torque_n_m),
      feel: pin.feel,
      note: pin.note,
      gripBefore,
      diameterBefore,
      leftOutBecause:
        key === undefined
          ? say('nobody said in which hole it was')
          : gripBefore === undefined
            ? say('its hole has no grip as found')
            : diameterBefore === undefined
              ? say('the pin as found was not measured')
              : diameter <= diameterBefore
                ? say('it is not larger than the pin as found')
                : undefined,
    };
  });
  const steps = tried
    .filter((pin) => pin.leftOutBecause === undefined)
    .map(({ diameter, diameterBefore, torque, gripBefore }) => ({
      larger: metres(diameter - diameterBefore!),
      gripGained: newtonMetres(torque - gripBefore!),
    }));
  const law = testPinLaw(steps);
  return {
    tried,
    law,
    sentence: lawSentence(law, { counting: steps.length, tried: tried.length }, language),
  };
}

function lawSentence(
  law: TestPinLaw | undefined,
  { counting, tried }: { readonly counting: number; readonly tried: number },
  { say, fixed }: Language,
): string {
  if (law === undefined)
    return say(
      '{fewest} test pins in holes with a grip and a diameter as found are needed to say what a larger pin gains: {counting} of {tried} {counting, plural, one {counts} other {count}}.',
      { fewest: FEWEST_TEST_PINS, counting, tried },
    );
  // Per tenth of a millimetre: a size is about that.
  const per = (slope: number) => fixed(slope * 1e-4, 2);
  const [low, high] = law.interval_n;
  return [
    say(
      'A pin larger by 0.1 mm gains {gain} N·m of grip ({low} to {high} at {level} %), from {count} test pins.',
      {
        gain: per(law.gripPerDiameter_n),
        low: per(low),
        high: per(high),
        level: Math.round(100 * law.level),
        count: law.count,
      },
    ),
    ...(low <= 0
      ? [say('The interval reaches to no gain at all: fit more test pins before you rely on it.')]
      : []),
  ].join(' ');
}
