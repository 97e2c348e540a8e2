import { requireKey } from '../units/index.ts';

/**
 * Which partials an octave is tuned by, region by region.
 *
 * At each anchor, the octave whose LOWER note is `lowerKey` is tuned so that partial `lowerPartial` of the lower note
 * coincides with partial `lowerPartial / 2` of the upper one (6 means 6:3, 4 means 4:2, 2 means 2:1). Below the first
 * anchor and above the last one the nearest anchor holds; between two anchors the widths of both kinds are mixed in
 * proportion to the distance, so that no single octave jumps from one kind to the next.
 */
export interface OctaveRule {
  readonly name: string;
  readonly anchors: readonly OctaveAnchor[];
  readonly source: string;
}

export interface OctaveAnchor {
  readonly lowerKey: number;
  readonly lowerPartial: number;
}

/**
 * The rule used unless another is given: 6:3 up to C2, 4:2 from C3 to C4, 2:1 from C5 up.
 *
 * That 6:3 belongs to the bass, 4:2 to the middle and 2:1 to the treble is common practice; the four keys are our own
 * choice within it. A tuner who likes another course of the curve hands in another rule.
 */
export const usualOctaveRule: OctaveRule = {
  name: '6:3 to C2, 4:2 from C3 to C4, 2:1 from C5',
  anchors: [
    { lowerKey: 16, lowerPartial: 6 },
    { lowerKey: 28, lowerPartial: 4 },
    { lowerKey: 40, lowerPartial: 4 },
    { lowerKey: 52, lowerPartial: 2 },
  ],
  source: 'common practice, no source, for the kinds of octave; the keys are our own choice',
};

/** One kind of octave and its part in the whole; the parts of one octave add up to 1. */
export interface OctaveShare {
  readonly lowerPartial: number;
  readonly share: number;
}

/**
 * Kinds of octave that are mixed for the octave above a key, with their shares.
 *
 * Throws: RangeError when an anchor has no even whole partial, or the anchors do not rise from key to key.
 * Source: the rule itself.
 * @example octaveShares(34, usualOctaveRule)[0].lowerPartial  // = 4
 * @example octaveShares(22, usualOctaveRule)[0].share  // = 0.5
 */
export function octaveShares(lowerKey: number, rule: OctaveRule): OctaveShare[] {
  requireOctaveRule(rule);
  const { anchors } = rule;
  const above = anchors.findIndex((anchor) => anchor.lowerKey >= lowerKey);
  if (above === 0) return [{ lowerPartial: anchors[0]!.lowerPartial, share: 1 }];
  if (above === -1) return [{ lowerPartial: anchors.at(-1)!.lowerPartial, share: 1 }];

  const low = anchors[above - 1]!;
  const high = anchors[above]!;
  if (low.lowerPartial === high.lowerPartial) return [{ lowerPartial: low.lowerPartial, share: 1 }];
  const way = (lowerKey - low.lowerKey) / (high.lowerKey - low.lowerKey);
  const shares = [
    { lowerPartial: low.lowerPartial, share: 1 - way },
    { lowerPartial: high.lowerPartial, share: way },
  ];
  return shares.filter(({ share }) => share > 0);
}

function requireOctaveRule({ name, anchors }: OctaveRule): void {
  const task = `the octave rule '${name}'`;
  if (anchors.length === 0)
    throw new RangeError(`Cannot use ${task} as at least one anchor is needed: found none`);
  anchors.forEach(({ lowerKey, lowerPartial }, index) => {
    requireKey(lowerKey, task);
    if (!(Number.isInteger(lowerPartial) && lowerPartial >= 2 && lowerPartial % 2 === 0)) {
      throw new RangeError(
        `Cannot use ${task} as the lower partial of an octave must be even, 2 or more: current value is ${lowerPartial}`,
      );
    }
    const before = anchors[index - 1];
    if (before !== undefined && before.lowerKey >= lowerKey) {
      throw new RangeError(
        `Cannot use ${task} as its anchors must rise from key to key: found key ${lowerKey} after key ${before.lowerKey}`,
      );
    }
  });
}
