import {
  inInchPounds,
  type Metres,
  metres,
  type NewtonMetres,
  newtonMetres,
  type PinSizePolicy,
  predictedGrip,
  type TestPinLaw,
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
): SuggestedRemedy[] {
  const firm = newtonMetres(policy.firmTorque_n_m);
  const veryLoose = newtonMetres(policy.veryLooseTorque_n_m);
  const measured = groups.flatMap((group) => group.pins.map((pin) => ({ pin, group })));
  const withLaw =
    law === undefined
      ? []
      : measured.flatMap(({ pin, group }) => remedyByLaw(pin, group, { law, firm, veryLoose, limits }));
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
        because: `Its grip is ${torqueText(pin.grip.grip)}, very loose (under ${torqueText(veryLoose)}): look at the hole and at the block around it first.`,
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
  }: {
    readonly law: TestPinLaw;
    readonly firm: NewtonMetres;
    readonly veryLoose: NewtonMetres;
    readonly limits: PinLimitsKnown;
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
  const why = `At ${advised.label} its grip is expected at ${torqueText(expected)}, under ${torqueText(firm)}`;
  const next = group.candidates.find(
    (one) => one.diameter > advised.diameter && one.against.length === 0 && at(one.diameter) >= firm,
  );
  if (next !== undefined)
    return [
      {
        ...base,
        remedy: 'larger pin',
        diameter: next.diameter,
        because: `${why}; at ${next.label} at ${torqueText(at(next.diameter))}.`,
      },
    ];
  const isVeryLoose = grip < veryLoose;
  const why2 =
    limits.largestDiameter === undefined
      ? 'no size looked at reaches it'
      : 'no size within the limits reaches it';
  return [
    {
      ...base,
      remedy: isVeryLoose ? 'plug' : 'bushing',
      diameter: undefined,
      because: `${why}, and ${why2}.`,
    },
  ];
}

const torqueText = (torque: NewtonMetres): string =>
  `${torque.toFixed(1)} N·m (${inInchPounds(torque).toFixed(0)} in·lbf)`;
