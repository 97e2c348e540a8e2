import { type CutLength, cutLength, type Metres, metres } from '@becket/core';
import type { CutPolicy } from './cut-policy.ts';
import type { NewPinOf } from './new-pins.ts';

/** A length with whatever else is known of it: where it comes from. */
interface Known {
  readonly value: Metres;
}

/** One string as its wire is cut for it. */
export interface StringToCut {
  readonly key: number;
  /** 1, 2 or 3, counted from the bass side. */
  readonly string: number;
  readonly front: Known;
  readonly speaking: Known;
  readonly back: Known;
  readonly hitchPin: Known;
}

/** How long the wire of these strings, one or two, is cut. The thicker of its two pins counts. */
export function wireCutLength(
  strings: readonly StringToCut[],
  wireDiameter: Metres,
  policy: CutPolicy,
  newPinOf: NewPinOf,
): CutLength {
  return cutLength({
    strings: strings.map(({ front, speaking, back }) => ({
      front: front.value,
      speaking: speaking.value,
      back: back.value,
    })),
    pinDiameter: metres(Math.max(...strings.map((one) => newPinOf(one) ?? policy.pinDiameter_m))),
    wireDiameter,
    hitchPinDiameter: strings[0]!.hitchPin.value,
    coils: policy.coils,
    becket: metres(policy.becket_m),
    waste: metres(policy.waste_m),
    tie: metres(policy.tie_m),
  });
}
