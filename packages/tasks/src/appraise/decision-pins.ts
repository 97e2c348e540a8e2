import { inInchPounds, type NewtonMetres, newtonMetres } from '@becket/core';
import type { Ulid } from '@becket/journal';
import type { DecisionReason } from './decision-reason.ts';
import { DECISION_LIMITS, DECISION_SOURCE } from './decision-rules.ts';
import type { PinChoice } from './pin-choice.ts';
import type { PinTorque } from './pin-torque.ts';

/** Reasons that torque, pattern and pin sizes give. None where no pin has a grip: that is unknown, not good. */
export function pinReasons(choice: PinChoice): DecisionReason[] {
  const { map, policy } = choice;
  const gripped = map.pins.filter(({ grip }) => grip !== undefined);
  if (gripped.length === 0) return [];
  const veryLoose = gripped.filter((pin) => pin.grip!.grip < policy.veryLooseTorque_n_m);
  return [
    ...looseReasons(gripped, veryLoose, newtonMetres(policy.veryLooseTorque_n_m)),
    ...holdingReasons(gripped),
    ...patternReasons(choice, gripped),
    ...sizeReasons(choice),
    ...belowFirmReasons(choice, gripped),
    ...firmReasons(choice, gripped),
  ];
}

function looseReasons(
  gripped: readonly PinTorque[],
  veryLoose: readonly PinTorque[],
  limit: NewtonMetres,
): DecisionReason[] {
  if (veryLoose.length === 0) return [];
  const share = veryLoose.length / gripped.length;
  const isStop = share >= DECISION_LIMITS.veryLooseShareToStop;
  return [
    {
      about: 'pin block',
      verdict: isStop ? 'stop' : 'go with conditions',
      sentence: `The block itself is in question: ${veryLoose.length} of ${gripped.length} pins have a grip under ${torqueText(limit)}, ${namesOf(veryLoose)}.`,
      figure: `${Math.round(100 * share)} %`,
      entries: entriesOf(veryLoose),
      condition: 'The pin block is examined with the strings off before pins are ordered.',
      deferTo: 'a specialist for pin blocks',
      source: DECISION_SOURCE,
    },
  ];
}

function holdingReasons(gripped: readonly PinTorque[]): DecisionReason[] {
  const failing = gripped.filter(({ holdingRatio }) => holdingRatio !== undefined && holdingRatio < 1);
  if (failing.length === 0) return [];
  const ratio = Math.min(...failing.map(({ holdingRatio }) => holdingRatio!));
  return [
    {
      about: 'pins',
      verdict: 'go with conditions',
      sentence: `${failing.length} ${failing.length === 1 ? 'pin grips' : 'pins grip'} less than the string pulls by the figures, ${namesOf(failing)}.`,
      figure: `holding ratio ${ratio.toFixed(2)}`,
      entries: entriesOf(failing),
      condition: 'These pins are read again in both directions, and get a remedy of their own.',
      deferTo: undefined,
      source: 'statics; see the torque map',
    },
  ];
}

function patternReasons({ map: { pattern } }: PinChoice, gripped: readonly PinTorque[]): DecisionReason[] {
  if (pattern.region === undefined) return [];
  const pins = pattern.region.pins.map((index) => gripped[index]!);
  return [
    {
      about: 'pin block',
      verdict: 'go with conditions',
      sentence: `${pattern.looksLike} ${pattern.oftenMeans}`,
      figure: `chance ${(100 * pattern.chance!).toFixed(1)} %`,
      entries: entriesOf(pins.filter(({ isLow }) => isLow === true)),
      condition: `The block is looked at with the strings off ${pattern.region.where}.`,
      deferTo: undefined,
      source: DECISION_SOURCE,
    },
  ];
}

function sizeReasons({ groups }: PinChoice): DecisionReason[] {
  return groups.flatMap(({ advice, asFound, pins, candidates }): DecisionReason[] => {
    const entries = pins.flatMap((pin) => pin.entries);
    const base = {
      about: 'pins' as const,
      figure: undefined,
      entries,
      deferTo: undefined,
      source: DECISION_SOURCE,
    };
    if (advice?.kind === 'no larger size')
      return [
        {
          ...base,
          verdict: 'go with conditions',
          sentence: advice.sentence,
          condition: `What goes in for the ${asFound} pins is settled first: bushings, plugs or another block.`,
        },
      ];
    const against = candidates.find(({ isAdvised }) => isAdvised)?.against ?? [];
    if (against.length === 0) return [];
    return [
      {
        ...base,
        verdict: 'go with conditions',
        sentence: `The size advised for the ${asFound} pins does not fit: ${against.join(' ')}`,
        condition: `A size that block and plate allow is chosen for the ${asFound} pins.`,
      },
    ];
  });
}

/** Pins that hold but are not firm: the rule goes up further, and test pins say whether that is enough. */
function belowFirmReasons({ map, policy, law }: PinChoice, gripped: readonly PinTorque[]): DecisionReason[] {
  const low = gripped.filter(({ isLow }) => isLow === true);
  if (low.length === 0) return [];
  const lowest = newtonMetres(Math.min(...low.map(({ grip }) => grip!.grip)));
  return [
    {
      about: 'pins',
      verdict: law === undefined ? 'go with conditions' : 'go',
      sentence: `${low.length} of ${gripped.length} pins with a grip hold less than ${torqueText(map.lowBelow)} (${map.lowBelowFrom}): the rule goes up ${policy.sizesUpWhenLoose} ${policy.sizesUpWhenLoose === 1 ? 'size' : 'sizes'} there. The lowest has ${torqueText(lowest)}.`,
      figure: torqueText(lowest),
      entries: entriesOf(low),
      condition:
        law === undefined
          ? 'Test pins in the worst and in the best place show that the larger size holds, before the set is bought.'
          : undefined,
      deferTo: undefined,
      source: policy.source,
    },
  ];
}

function firmReasons({ map }: PinChoice, gripped: readonly PinTorque[]): DecisionReason[] {
  if (gripped.some(({ isLow }) => isLow === true)) return [];
  const lowest = newtonMetres(Math.min(...gripped.map(({ grip }) => grip!.grip)));
  return [
    {
      about: 'pin block',
      verdict: 'go',
      sentence: `Each of the ${gripped.length} pins with a grip has ${torqueText(map.lowBelow)} or more, by ${map.lowBelowFrom}.`,
      figure: torqueText(lowest),
      entries: entriesOf(gripped),
      condition: undefined,
      deferTo: undefined,
      source: map.lowBelowFrom,
    },
  ];
}

const entriesOf = (pins: readonly PinTorque[]): Ulid[] =>
  pins.flatMap(({ readings }) => readings.map(({ entry }) => entry));

/** The first few by name, and how many more. */
function namesOf(pins: readonly PinTorque[]): string {
  const names = pins.slice(0, 4).map(({ name }) => name);
  return pins.length > 4 ? `${names.join(', ')} and ${pins.length - 4} more` : names.join(', ');
}

const torqueText = (torque: NewtonMetres): string =>
  `${torque.toFixed(1)} N·m (${inInchPounds(torque).toFixed(0)} in·lbf)`;
