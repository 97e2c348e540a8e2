import {
  FEWEST_TEST_PINS,
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
  map: PinTorqueMap,
  measured: readonly PinMeasured[],
): {
  readonly tried: readonly TestPinTried[];
  readonly law: TestPinLaw | undefined;
  readonly sentence: string;
} {
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
      name: key === undefined ? 'a hole nobody named' : pinName({ key, string }),
      diameter,
      length: pin.pinLength_m === undefined ? undefined : metres(pin.pinLength_m),
      torque: newtonMetres(pin.torque_n_m),
      feel: pin.feel,
      note: pin.note,
      gripBefore,
      diameterBefore,
      leftOutBecause:
        key === undefined
          ? 'nobody said in which hole it was'
          : gripBefore === undefined
            ? 'its hole has no grip as found'
            : diameterBefore === undefined
              ? 'the pin as found was not measured'
              : diameter <= diameterBefore
                ? 'it is not larger than the pin as found'
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
  return { tried, law, sentence: lawSentence(law, steps.length, tried.length) };
}

function lawSentence(law: TestPinLaw | undefined, counting: number, tried: number): string {
  if (law === undefined)
    return `${FEWEST_TEST_PINS} test pins in holes with a grip and a diameter as found are needed to say what a larger pin gains: ${counting} of ${tried} ${counting === 1 ? 'counts' : 'count'}.`;
  // Per tenth of a millimetre: a size is about that.
  const per = (slope: number) => (slope * 1e-4).toFixed(2);
  const [low, high] = law.interval_n;
  const doubt =
    low <= 0 ? ' The interval reaches to no gain at all: fit more test pins before you rely on it.' : '';
  return `A pin larger by 0.1 mm gains ${per(law.gripPerDiameter_n)} N·m of grip (${per(low)} to ${per(high)} at ${Math.round(100 * law.level)} %), from ${law.count} test pins.${doubt}`;
}
