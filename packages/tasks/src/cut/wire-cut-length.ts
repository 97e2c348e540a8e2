import { type CutLength, cutLength, type Metres, metres } from '@becket/core';
import type { CutPolicy } from './cut-policy.ts';
import type { NewPinOf } from './new-pins.ts';

/** One string as its wire is cut for it. */
export interface StringToCut {
  readonly key: number;
  /** 1, 2 or 3, counted from the bass side. */
  readonly string: number;
  readonly front: Metres;
  readonly speaking: Metres;
  readonly back: Metres;
  readonly hitchPin: Metres;
}

/** How long the wire of these strings, one or two, is cut. The thicker of its two pins counts. */
export function wireCutLength(
  strings: readonly StringToCut[],
  wireDiameter: Metres,
  policy: CutPolicy,
  newPinOf: NewPinOf,
): CutLength {
  return cutLength({
    strings: strings.map(({ front, speaking, back }) => ({ front, speaking, back })),
    pinDiameter: metres(Math.max(...strings.map((one) => newPinOf(one) ?? policy.pinDiameter_m))),
    wireDiameter,
    hitchPinDiameter: strings[0]!.hitchPin,
    coils: policy.coils,
    becket: metres(policy.becket_m),
    waste: metres(policy.waste_m),
    tie: metres(policy.tie_m),
  });
}
