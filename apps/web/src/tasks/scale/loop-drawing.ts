import type { LoopedString, SectionLoops } from '@becket/tasks';

/** Room of one string on the note line [px]: so that a loop can be told from its neighbour on a phone. */
export const STRING_WIDTH = 14;
const edge = 20;
export const baseline = 58;

export interface DrawnWire {
  readonly path: string;
  readonly joined: 'looped' | 'tied';
  /** Sizes take turns, so that a change can be seen. */
  readonly isOther: boolean;
}

export interface DrawnSection {
  readonly width: number;
  readonly wires: readonly DrawnWire[];
  /** Where each string stands. */
  readonly strings: readonly { readonly x: number; readonly isFirstOfNote: boolean; readonly key: number }[];
  /** Where the size changes, with the size above it. */
  readonly changes: readonly { readonly x: number; readonly diameter_m: number }[];
}

/** A section of the loop plan as lines: a loop joins two strings below the note line, a tie hangs by itself. */
export function drawnSection({
  strings,
  plan,
}: {
  readonly strings: readonly Omit<LoopedString, 'backLength'>[];
  readonly plan: SectionLoops['plan'];
}): DrawnSection {
  const xOf = (index: number) => edge + index * STRING_WIDTH;
  let turn = 0;
  const turns = strings.map(({ size }, index) => {
    if (index > 0 && size !== strings[index - 1]!.size) turn += 1;
    return turn;
  });
  return {
    width: 2 * edge + Math.max(0, strings.length - 1) * STRING_WIDTH,
    wires: plan.wires.map(({ joined, strings: [one, other] }) => {
      const [x, isOther] = [xOf(one), turns[one]! % 2 === 1];
      if (other === undefined)
        return { joined, isOther, path: `M${x} ${baseline}v18m-4 0a4 4 0 1 0 8 0a4 4 0 1 0 -8 0` };
      const reach = (xOf(other) - x) / 2;
      return {
        joined,
        isOther,
        path: `M${x} ${baseline}v14a${reach} ${reach} 0 0 0 ${2 * reach} 0v-14`,
      };
    }),
    strings: strings.map(({ key }, index) => ({
      x: xOf(index),
      isFirstOfNote: strings[index - 1]?.key !== key,
      key,
    })),
    changes: strings.flatMap(({ diameter }, index) =>
      index === 0 || turns[index] !== turns[index - 1]
        ? [{ x: index === 0 ? xOf(0) - 7 : xOf(index) - STRING_WIDTH / 2, diameter_m: diameter }]
        : [],
    ),
  };
}
