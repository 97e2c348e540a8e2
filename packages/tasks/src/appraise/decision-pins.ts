import { english, type Language, type NewtonMetres, newtonMetres, torqueText } from '@becket/core';
import type { Ulid } from '@becket/journal';
import type { DecisionReason } from './decision-reason.ts';
import { DECISION_LIMITS, DECISION_SOURCE } from './decision-rules.ts';
import type { PinChoice } from './pin-choice.ts';
import type { PinTorque } from './pin-torque.ts';

/** Reasons that torque, pattern and pin sizes give. None where no pin has a grip: that is unknown, not good. */
export function pinReasons(choice: PinChoice, language: Language = english): DecisionReason[] {
  const { map, policy } = choice;
  const gripped = map.pins.filter(({ grip }) => grip !== undefined);
  if (gripped.length === 0) return [];
  const veryLoose = gripped.filter((pin) => pin.grip!.grip < policy.veryLooseTorque_n_m);
  return [
    ...looseReasons({ gripped, veryLoose, limit: newtonMetres(policy.veryLooseTorque_n_m) }, language),
    ...holdingReasons(gripped, language),
    ...patternReasons(choice, gripped, language),
    ...sizeReasons(choice, language),
    ...belowFirmReasons(choice, gripped, language),
    ...firmReasons(choice, gripped, language),
  ];
}

function looseReasons(
  {
    gripped,
    veryLoose,
    limit,
  }: {
    readonly gripped: readonly PinTorque[];
    readonly veryLoose: readonly PinTorque[];
    readonly limit: NewtonMetres;
  },
  language: Language,
): DecisionReason[] {
  const { say } = language;
  if (veryLoose.length === 0) return [];
  const share = veryLoose.length / gripped.length;
  const isStop = share >= DECISION_LIMITS.veryLooseShareToStop;
  return [
    {
      about: 'pin block',
      verdict: isStop ? 'stop' : 'go with conditions',
      sentence: say(
        'The block itself is in question: {count} of {all} pins have a grip under {limit}, {names}.',
        {
          count: veryLoose.length,
          all: gripped.length,
          limit: torqueText(limit, language),
          names: namesOf(veryLoose, language),
        },
      ),
      figure: `${Math.round(100 * share)} %`,
      entries: entriesOf(veryLoose),
      condition: say('The pin block is examined with the strings off before pins are ordered.'),
      deferTo: say('a specialist for pin blocks'),
      source: say(DECISION_SOURCE),
    },
  ];
}

function holdingReasons(gripped: readonly PinTorque[], language: Language): DecisionReason[] {
  const { say, fixed } = language;
  const failing = gripped.filter(({ holdingRatio }) => holdingRatio !== undefined && holdingRatio < 1);
  if (failing.length === 0) return [];
  const ratio = Math.min(...failing.map(({ holdingRatio }) => holdingRatio!));
  return [
    {
      about: 'pins',
      verdict: 'go with conditions',
      sentence: say(
        '{count, plural, one {# pin grips} other {# pins grip}} less than the string pulls by the figures, {names}.',
        { count: failing.length, names: namesOf(failing, language) },
      ),
      figure: say('holding ratio {ratio}', { ratio: fixed(ratio, 2) }),
      entries: entriesOf(failing),
      condition: say('These pins are read again in both directions, and get a remedy of their own.'),
      deferTo: undefined,
      source: say('statics; see the torque map'),
    },
  ];
}

function patternReasons(
  { map: { pattern } }: PinChoice,
  gripped: readonly PinTorque[],
  { say, fixed }: Language,
): DecisionReason[] {
  if (pattern.region === undefined) return [];
  const pins = pattern.region.pins.map((index) => gripped[index]!);
  return [
    {
      about: 'pin block',
      verdict: 'go with conditions',
      sentence: `${pattern.looksLike} ${pattern.oftenMeans}`,
      figure: say('chance {percent} %', { percent: fixed(100 * pattern.chance!, 1) }),
      entries: entriesOf(pins.filter(({ isLow }) => isLow === true)),
      condition: say('The block is looked at with the strings off {where}.', { where: pattern.region.where }),
      deferTo: undefined,
      source: say(DECISION_SOURCE),
    },
  ];
}

function sizeReasons({ groups }: PinChoice, { say }: Language): DecisionReason[] {
  return groups.flatMap(({ advice, asFound, pins, candidates }): DecisionReason[] => {
    const entries = pins.flatMap((pin) => pin.entries);
    const base = {
      about: 'pins' as const,
      figure: undefined,
      entries,
      deferTo: undefined,
      source: say(DECISION_SOURCE),
    };
    if (advice?.kind === 'no larger size')
      return [
        {
          ...base,
          verdict: 'go with conditions',
          sentence: advice.sentence,
          condition: say(
            'What goes in for the {size} pins is settled first: bushings, plugs or another block.',
            { size: asFound },
          ),
        },
      ];
    const against = candidates.find(({ isAdvised }) => isAdvised)?.against ?? [];
    if (against.length === 0) return [];
    return [
      {
        ...base,
        verdict: 'go with conditions',
        sentence: say('The size advised for the {size} pins does not fit: {reasons}', {
          size: asFound,
          reasons: against.join(' '),
        }),
        condition: say('A size that block and plate allow is chosen for the {size} pins.', { size: asFound }),
      },
    ];
  });
}

/** Pins that hold but are not firm: the rule goes up further, and test pins say whether that is enough. */
function belowFirmReasons(
  { map, policy, law }: PinChoice,
  gripped: readonly PinTorque[],
  language: Language,
): DecisionReason[] {
  const { say } = language;
  const low = gripped.filter(({ isLow }) => isLow === true);
  if (low.length === 0) return [];
  const lowest = newtonMetres(Math.min(...low.map(({ grip }) => grip!.grip)));
  return [
    {
      about: 'pins',
      verdict: law === undefined ? 'go with conditions' : 'go',
      sentence: say(
        '{count} of {all} pins with a grip hold less than {limit} ({from}): the rule goes up {sizes, plural, one {# size} other {# sizes}} there. The lowest has {lowest}.',
        {
          count: low.length,
          all: gripped.length,
          limit: torqueText(map.lowBelow, language),
          from: map.lowBelowFrom,
          sizes: policy.sizesUpWhenLoose,
          lowest: torqueText(lowest, language),
        },
      ),
      figure: torqueText(lowest, language),
      entries: entriesOf(low),
      condition:
        law === undefined
          ? say(
              'Test pins in the worst and in the best place show that the larger size holds, before the set is bought.',
            )
          : undefined,
      deferTo: undefined,
      source: policy.source,
    },
  ];
}

function firmReasons(
  { map }: PinChoice,
  gripped: readonly PinTorque[],
  language: Language,
): DecisionReason[] {
  if (gripped.some(({ isLow }) => isLow === true)) return [];
  const lowest = newtonMetres(Math.min(...gripped.map(({ grip }) => grip!.grip)));
  return [
    {
      about: 'pin block',
      verdict: 'go',
      sentence: language.say('Each of the {count} pins with a grip has {limit} or more, by {from}.', {
        count: gripped.length,
        limit: torqueText(map.lowBelow, language),
        from: map.lowBelowFrom,
      }),
      figure: torqueText(lowest, language),
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
function namesOf(pins: readonly PinTorque[], { say }: Language): string {
  const names = pins.slice(0, 4).map(({ name }) => name);
  if (pins.length <= 4) return names.join(', ');
  return say('{names} and {count} more', { names: names.join(', '), count: pins.length - 4 });
}
