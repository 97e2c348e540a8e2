import {
  english,
  inMillimetres,
  type Language,
  type Metres,
  metres,
  type NewtonMetres,
  newtonMetres,
  type PinSizeAdvice,
  type PinSizePolicy,
  predictedGrip,
  type TestPinLaw,
} from '@becket/core';
import type { PinMeasured } from './measured-pins.ts';
import type { PinLimitsKnown } from './pin-limits.ts';

/** A size that could go in, and what stands against it. */
export interface PinCandidate {
  readonly label: string;
  readonly diameter: Metres;
  /** Step from the middle of the group. */
  readonly larger: Metres;
  readonly isAdvised: boolean;
  /** In sentences; empty when nothing known stands against it. */
  readonly against: readonly string[];
  /** What is not known and would have to be. */
  readonly unknown: readonly string[];
  /** Undefined without a law of test pins, or without a pin of the group that has grip and diameter. */
  readonly expected: ExpectedGrips | undefined;
}

export interface ExpectedGrips {
  readonly pins: readonly {
    readonly key: number;
    readonly string: number | undefined;
    readonly name: string;
    readonly grip: NewtonMetres;
    readonly low: NewtonMetres;
    readonly high: NewtonMetres;
    readonly chanceBelowFirm: number;
    readonly isBeyondTrials: boolean;
  }[];
  /** Mean over the pins of the chance to come to lie below the firm figure: the share to expect. */
  readonly shareBelowFirm: number;
  readonly level: number;
}

/** What a choice rests on. */
export interface KnownForChoice {
  readonly policy: PinSizePolicy;
  readonly law: TestPinLaw | undefined;
  readonly limits: PinLimitsKnown;
  readonly leastClearance: Metres;
}

/** As many sizes above the one found are looked at. */
const SIZES_LOOKED_AT = 4;

/** The sizes above the one found, each with what stands against it and the grips to expect. */
export function candidatesOf(
  {
    size,
    pins,
    median,
    advice,
  }: {
    readonly size: PinSizePolicy['sizes'][number];
    readonly pins: readonly PinMeasured[];
    readonly median: Metres;
    readonly advice: PinSizeAdvice | undefined;
  },
  known: KnownForChoice,
  language: Language = english,
): PinCandidate[] {
  const above = known.policy.sizes.filter(({ diameter_m }) => diameter_m > size.diameter_m);
  return above.slice(0, SIZES_LOOKED_AT).map(({ label, diameter_m }) => ({
    label,
    diameter: metres(diameter_m),
    larger: metres(diameter_m - median),
    isAdvised: advice?.kind === 'size up' && advice.to.label === label,
    ...limitsOn(metres(diameter_m), known, language),
    expected: expectedAt(metres(diameter_m), pins, known),
  }));
}

function limitsOn(
  diameter: Metres,
  { limits, leastClearance }: KnownForChoice,
  { say, fixed }: Language,
): Pick<PinCandidate, 'against' | 'unknown'> {
  const against: string[] = [];
  const unknown: string[] = [];
  const { largestDiameter, plateHoleDiameter } = limits;
  const millimetresText = (value: number) => `${fixed(inMillimetres(metres(value)), 2)} mm`;
  if (largestDiameter !== undefined && diameter > largestDiameter)
    against.push(
      say('It is larger than the largest pin allowed here, {largest}.', {
        largest: millimetresText(largestDiameter),
      }),
    );
  if (plateHoleDiameter === undefined) unknown.push(say('the smallest plate hole'));
  else if (plateHoleDiameter - diameter < leastClearance)
    against.push(
      say('It leaves {left} in the smallest plate hole, {asked} are asked for.', {
        left: millimetresText(plateHoleDiameter - diameter),
        asked: millimetresText(leastClearance),
      }),
    );
  return { against, unknown };
}

function expectedAt(
  diameter: Metres,
  pins: readonly PinMeasured[],
  { law, policy }: KnownForChoice,
): ExpectedGrips | undefined {
  if (law === undefined) return undefined;
  const firm = newtonMetres(policy.firmTorque_n_m);
  const expected = pins.flatMap((pin): ExpectedGrips['pins'][number][] => {
    const grip = pin.torque?.grip?.grip;
    if (grip === undefined || diameter < pin.diameter) return [];
    const predicted = predictedGrip(law, { grip, larger: metres(diameter - pin.diameter) });
    return [
      {
        key: pin.key,
        string: pin.string,
        name: pin.name,
        grip: predicted.grip,
        low: predicted.interval.low,
        high: predicted.interval.high,
        chanceBelowFirm: predicted.chanceBelow(firm),
        isBeyondTrials: predicted.isBeyondTrials,
      },
    ];
  });
  if (expected.length === 0) return undefined;
  return {
    pins: expected,
    shareBelowFirm: expected.reduce((sum, one) => sum + one.chanceBelowFirm, 0) / expected.length,
    level: law.level,
  };
}
