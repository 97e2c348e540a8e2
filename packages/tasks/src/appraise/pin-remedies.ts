import {
  english,
  type Language,
  type Metres,
  metres,
  type NewtonMetres,
  newtonMetres,
  type PinSizePolicy,
  predictedGrip,
  type TestPinLaw,
  torqueText,
} from '@becket/core';
import type { pinRemedies } from '@becket/journal';
import type { PinMeasured } from './measured-pins.ts';
import type { PinGroup } from './pin-groups.ts';
import type { PinLimitsKnown } from './pin-limits.ts';
import type { PinTorqueMap } from './pin-torque-map.ts';

export type PinRemedy = (typeof pinRemedies)[number];

/** What one pin may need; the person decides. */
export interface SuggestedRemedy {
  readonly key: number;
  readonly string: number | undefined;
  readonly name: string;
  readonly remedy: Exclude<PinRemedy, 'as the rest'>;
  /** For a larger pin. */
  readonly diameter: Metres | undefined;
  readonly because: string;
}

/**
 * Pins that the size of their group would not mend.
 *
 * With a law of test pins: a pin expected below the firm figure at the size of its group gets the next size that is expected to
 * reach it and that the limits allow; where none does, a bushing, or a plug when it is very loose now. Without a law only very
 * loose pins are named, each for a plug. Common practice, no source.
 */
export function suggestedRemedies(
  groups: readonly PinGroup[],
  {
    map,
    policy,
    law,
    limits,
  }: {
    readonly map: PinTorqueMap;
    readonly policy: PinSizePolicy;
    readonly law: TestPinLaw | undefined;
    readonly limits: PinLimitsKnown;
  },
  language: Language = english,
): SuggestedRemedy[] {
  const { say } = language;
  const firm = newtonMetres(policy.firmTorque_n_m);
  const veryLoose = newtonMetres(policy.veryLooseTorque_n_m);
  const measured = groups.flatMap((group) => group.pins.map((pin) => ({ pin, group })));
  const withLaw =
    law === undefined
      ? []
      : measured.flatMap(({ pin, group }) =>
          remedyByLaw(pin, group, { law, firm, veryLoose, limits, language }),
        );
  const named = new Set(withLaw.map(({ name }) => name));
  const loose = map.pins.flatMap((pin): SuggestedRemedy[] => {
    if (named.has(pin.name) || pin.grip === undefined || pin.grip.grip >= veryLoose) return [];
    // With a law and a size for its group this pin was looked at already.
    const isMended = ({ pin: one, group }: (typeof measured)[number]) =>
      one.name === pin.name && group.candidates.some(({ isAdvised }) => isAdvised);
    if (law !== undefined && measured.some(isMended)) return [];
    return [
      {
        key: pin.key,
        string: pin.string,
        name: pin.name,
        remedy: 'plug',
        diameter: undefined,
        because: say(
          'Its grip is {grip}, very loose (under {limit}): look at the hole and at the block around it first.',
          { grip: torqueText(pin.grip.grip, language), limit: torqueText(veryLoose, language) },
        ),
      },
    ];
  });
  return [...withLaw, ...loose].sort((a, b) => a.key - b.key || (a.string ?? 0) - (b.string ?? 0));
}

function remedyByLaw(
  pin: PinMeasured,
  group: PinGroup,
  {
    law,
    firm,
    veryLoose,
    limits,
    language,
  }: {
    readonly law: TestPinLaw;
    readonly firm: NewtonMetres;
    readonly veryLoose: NewtonMetres;
    readonly limits: PinLimitsKnown;
    readonly language: Language;
  },
): SuggestedRemedy[] {
  const grip = pin.torque?.grip?.grip;
  const advised = group.candidates.find(({ isAdvised }) => isAdvised);
  if (grip === undefined || advised === undefined) return [];
  const at = (diameter: Metres) =>
    predictedGrip(law, { grip, larger: metres(Math.max(0, diameter - pin.diameter)) }).grip;
  const expected = at(advised.diameter);
  if (expected >= firm) return [];
  const base = { key: pin.key, string: pin.string, name: pin.name };
  const { say } = language;
  const figures = {
    size: advised.label,
    grip: torqueText(expected, language),
    firm: torqueText(firm, language),
  };
  const next = group.candidates.find(
    (one) => one.diameter > advised.diameter && one.against.length === 0 && at(one.diameter) >= firm,
  );
  if (next !== undefined)
    return [
      {
        ...base,
        remedy: 'larger pin',
        diameter: next.diameter,
        because: say('At {size} its grip is expected at {grip}, under {firm}; at {larger} at {largerGrip}.', {
          ...figures,
          larger: next.label,
          largerGrip: torqueText(at(next.diameter), language),
        }),
      },
    ];
  const isVeryLoose = grip < veryLoose;
  return [
    {
      ...base,
      remedy: isVeryLoose ? 'plug' : 'bushing',
      diameter: undefined,
      because:
        limits.largestDiameter === undefined
          ? say(
              'At {size} its grip is expected at {grip}, under {firm}, and no size looked at reaches it.',
              figures,
            )
          : say(
              'At {size} its grip is expected at {grip}, under {firm}, and no size within the limits reaches it.',
              figures,
            ),
    },
  ];
}
