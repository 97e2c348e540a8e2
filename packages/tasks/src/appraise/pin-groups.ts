import {
  english,
  type Language,
  type Metres,
  newtonMetres,
  type PinSizeAdvice,
  type PinSizePolicy,
  pinSizeAdvice,
  pinSizeGroups,
} from '@becket/core';
import type { PinMeasured } from './measured-pins.ts';
import { candidatesOf, type KnownForChoice, type PinCandidate } from './pin-candidates.ts';
import type { PinTorqueMap } from './pin-torque-map.ts';

/** The pins of one size as found, with its own step. */
export interface PinGroup {
  readonly asFound: string;
  readonly pins: readonly PinMeasured[];
  readonly median: Metres;
  readonly smallest: Metres;
  readonly largest: Metres;
  /** Pins whose size is less than nine in ten sure, and pins of no listed size. */
  readonly doubtful: number;
  readonly unlisted: number;
  /** Undefined when no torque speaks for it. */
  readonly advice: PinSizeAdvice | undefined;
  /** What the advice rests on, in one sentence. */
  readonly adviceRestsOn: string;
  readonly candidates: readonly PinCandidate[];
}

/** Pins by their size as found, small to large, each size with its own step. */
export function pinGroups(
  measured: readonly PinMeasured[],
  map: PinTorqueMap,
  known: KnownForChoice,
  language: Language = english,
): PinGroup[] {
  return pinSizeGroups(measured, known.policy.sizes).map(
    ({ size, pins, median, smallest, largest, doubtful, unlisted }) => {
      const { advice, restsOn } = adviceFor(
        { asFound: size.label, pins, map, policy: known.policy },
        language,
      );
      return {
        asFound: size.label,
        pins,
        median,
        smallest,
        largest,
        doubtful,
        unlisted,
        advice,
        adviceRestsOn: restsOn,
        candidates: candidatesOf({ size, pins, median, advice }, known, language),
      };
    },
  );
}

function adviceFor(
  {
    asFound,
    pins,
    map,
    policy,
  }: {
    readonly asFound: string;
    readonly pins: readonly PinMeasured[];
    readonly map: PinTorqueMap;
    readonly policy: PinSizePolicy;
  },
  language: Language,
): { readonly advice: PinSizeAdvice | undefined; readonly restsOn: string } {
  const { say } = language;
  const ofGroup = pins.flatMap(({ torque }) => torque?.grip?.grip ?? []);
  const ofBlock = map.pins.flatMap(({ grip }) => grip?.grip ?? []);
  const grips = ofGroup.length > 0 ? ofGroup : ofBlock;
  if (grips.length === 0)
    return {
      advice: undefined,
      restsOn: say('No pin has a grip yet: read torque first, some of it in every section.'),
    };
  return {
    advice: pinSizeAdvice(
      {
        // The rule asks for a torque above 0; a pin that its string can turn has none.
        readings: grips.map((grip) => newtonMetres(Math.max(grip, 0.01))),
        asFound,
        policy,
      },
      language,
    ),
    restsOn:
      ofGroup.length > 0
        ? say(
            'Grip of {count, plural, one {# pin} other {# pins}} of this size, the pull of the string taken out.',
            { count: ofGroup.length },
          )
        : say('No pin of this size was read for torque: grip of the {count} that were, of other sizes.', {
            count: grips.length,
          }),
  };
}
