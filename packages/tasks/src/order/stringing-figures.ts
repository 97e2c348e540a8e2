import { english, inMillimetres, type Language, metres } from '@becket/core';
import type { Job } from '@becket/journal';
import type { StringingFigures } from '@becket/papers';
import { newPinDiameters } from '../cut/new-pins.ts';
import { listedSizeName } from './item-words.ts';
import { type OrderPolicy, STARTING_ORDER_POLICY } from './order-policy.ts';
import { type OrderedLength, type OrderString, orderStrings } from './order-strings.ts';
import { sourcesInWords } from './sources-in-words.ts';
import { wireCuts } from './wire-cuts.ts';

/** What a piano is strung by: its wires with their cut lengths, by the scale that wire is bought for. */
export function stringingFigures(
  job: Job,
  policy: OrderPolicy = STARTING_ORDER_POLICY,
  language: Language = english,
): StringingFigures {
  const { say, fixed, plain } = language;
  const ordered = orderStrings(job, policy.cut, language);
  const { wires, uncounted } = wireCuts(ordered.strings, policy.cut, newPinDiameters(job));
  const { coils, becket_m, waste_m, tie_m } = policy.cut;
  const mm = (length: number) => `${fixed(inMillimetres(metres(length)), 0)} mm`;
  return {
    scale: ordered.scale,
    wires: wires.map(({ strings, joined, diameter, cut }) => ({
      joined,
      strings,
      diameter,
      size: listedSizeName(diameter, language),
      cut,
      remarks: notReadHere(strings, language),
    })),
    wound: ordered.strings.filter(({ winding }) => winding === 'wound'),
    uncounted: uncounted.map((string) => ({
      ...string,
      needs:
        string.diameter === undefined
          ? say('its diameter is not known')
          : say('its speaking length is not known'),
    })),
    undescribed: ordered.undescribed,
    allowances: say(
      'Each pin: {coils} coils, {becket} becket, {waste} cut off; a tied wire {tie} for its loop ({source}).',
      {
        coils: plain(coils),
        becket: mm(becket_m),
        waste: mm(waste_m),
        tie: mm(tie_m),
        source: sourcesInWords(policy.cutSource, language),
      },
    ),
  };
}

/** What the length of a wire rests on that was not read at the notes of its strings: 'front, back: line between its neighbours'. */
function notReadHere(strings: readonly OrderString[], { say }: Language): string[] {
  const parts = ({
    front,
    speaking,
    back,
  }: OrderString): readonly (readonly [string, OrderedLength | undefined])[] => [
    [say('front'), front],
    [say('speaking'), speaking],
    [say('back'), back],
  ];
  const names = new Map<Exclude<OrderedLength['from'], 'as read' | 'chosen scale'>, Set<string>>();
  for (const [name, length] of strings.flatMap(parts))
    if (length !== undefined && length.from !== 'as read' && length.from !== 'chosen scale')
      names.set(length.from, (names.get(length.from) ?? new Set()).add(name));
  return [
    ...(strings.every(({ isInScale }) => isInScale)
      ? []
      : [say('size of the old wire: not in the chosen scale')]),
    ...[...names].map(([from, own]) => `${[...own].join(', ')}: ${say(from)}`),
  ];
}
