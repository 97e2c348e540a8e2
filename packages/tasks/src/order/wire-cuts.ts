import { type CutLength, loopPlan, type Metres } from '@becket/core';
import type { CutPolicy } from '../cut/cut-policy.ts';
import type { NewPinOf } from '../cut/new-pins.ts';
import { wireCutLength } from '../cut/wire-cut-length.ts';
import type { OrderedLength, OrderString } from './order-strings.ts';

/** One plain wire to cut: two strings of one size, or one that is tied. */
export interface WireCut {
  readonly strings: readonly OrderString[];
  readonly joined: 'looped' | 'tied';
  readonly diameter: Metres;
  readonly cut: CutLength;
}

export interface WireCuts {
  /** Section by section, bass to treble. */
  readonly wires: readonly WireCut[];
  /** Plain strings of which the diameter or the speaking length is unknown: no wire is counted for them. */
  readonly uncounted: readonly OrderString[];
}

/**
 * The plain wires to cut, by the plan with the fewest tied wires.
 *
 * A wire serves two neighbouring strings of one size and one section. A string that cannot be counted breaks the run beside
 * it, so that its neighbours may come out as tied here and be looped in the end: that errs towards more wire.
 *
 * @param newPinOf  diameter of a string's new pin, where it is known
 */
export function wireCuts(
  strings: readonly OrderString[],
  policy: CutPolicy,
  newPinOf: NewPinOf = () => undefined,
): WireCuts {
  const plain = strings.filter(({ winding }) => winding === 'plain');
  const wires = runsOf(plain).flatMap((run): WireCut[] =>
    loopPlan(run.map(({ key, string, diameter }) => ({ key, string, size: diameter.value }))).wires.map(
      (wire) => {
        const own = wire.strings.map((index) => run[index]!);
        const diameter = own[0]!.diameter.value;
        const cut = wireCutLength(own, diameter, policy, newPinOf);
        return { strings: own, joined: wire.joined, diameter, cut };
      },
    ),
  );
  return { wires, uncounted: plain.filter((string) => !isCountable(string)) };
}

type CountableString = OrderString & {
  readonly diameter: OrderedLength;
  readonly speaking: OrderedLength;
};

const isCountable = (string: OrderString): string is CountableString =>
  string.diameter !== undefined && string.speaking !== undefined;

/** Strings that lie side by side in one section and can all be counted. */
function runsOf(plain: readonly OrderString[]): CountableString[][] {
  const runs: CountableString[][] = [];
  let before: OrderString | undefined;
  for (const string of plain) {
    const isBeside =
      before !== undefined &&
      isCountable(before) &&
      before.section === string.section &&
      string.key - before.key <= 1;
    if (isCountable(string)) {
      const run = runs.at(-1);
      if (isBeside && run !== undefined) run.push(string);
      else runs.push([string]);
    }
    before = string;
  }
  return runs;
}
