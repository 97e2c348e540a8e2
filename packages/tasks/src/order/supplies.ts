import { inKilograms, metres, wireMass } from '@becket/core';
import { type Job, type StockItem, stockItemId } from '@becket/journal';
import { type OrderPolicy, STARTING_ORDER_POLICY } from './order-policy.ts';
import { type OrderedFrom, type OrderString, orderStrings } from './order-strings.ts';
import { pinSupplies } from './pin-supplies.ts';
import { softSupplies } from './soft-supplies.ts';
import { newPinDiameters } from './stringing-figures.ts';
import { lineOf, type SupplyLine } from './supply-line.ts';
import { type WireCut, wireCuts } from './wire-cuts.ts';

export interface Supplies {
  /** Which scale this is bought for, in words. */
  readonly scale: string;
  readonly isChosenScale: boolean;
  /** Why that scale should be looked at again before anything is bought. */
  readonly scaleProblem: string | undefined;
  readonly lines: readonly SupplyLine[];
  /** What cannot be counted yet, one sentence each. */
  readonly notCounted: readonly string[];
  readonly policy: OrderPolicy;
}

/**
 * Everything a restringing of this piano asks for, counted from its scale, its loop plan, its pins and its soft parts.
 *
 * Nothing is left out in silence: what is unknown is a line without a quantity or a sentence of `notCounted`. Stock and
 * suppliers are another question, see `coverFromStock`.
 */
export function suppliesOf(job: Job, policy: OrderPolicy = STARTING_ORDER_POLICY): Supplies {
  const { scale, isChosen, problem, strings, undescribed } = orderStrings(job, policy.cut);
  const { wires, uncounted } = wireCuts(strings, policy.cut, newPinDiameters(job));
  const wound = strings.filter(({ winding }) => winding === 'wound');
  return {
    scale,
    isChosenScale: isChosen,
    scaleProblem: problem,
    lines: [
      ...wireSupplies(wires, policy),
      ...pinSupplies(job, policy),
      ...(wound.length === 0 ? [] : [bassSet(wound)]),
      ...softSupplies(job, { strings, wires, share: policy.softShare }),
      ...policy.sundries.map(({ name, unit, quantity }): SupplyLine => {
        const item: StockItem = { kind: 'other', name, unit };
        return {
          ...lineOf(item, 'sundries'),
          needed: quantity,
          extra: [],
          total: quantity,
          because: `the shop's list of sundries (${policy.source})`,
          assumed: [],
          from: [],
        };
      }),
    ],
    notCounted: [
      ...(undescribed.length === 0
        ? []
        : [
            `The stringing of ${spokenNotes(undescribed)} is not described: their wire and pins are not counted.`,
          ]),
      ...(uncounted.length === 0
        ? []
        : [
            `Wire is not counted for ${spokenNotes([...new Set(uncounted.map(({ note }) => note))])}: ${uncounted.length} strings without a diameter or a speaking length.`,
          ]),
    ],
    policy,
  };
}

/** Wire by size, thick to thin. */
function wireSupplies(wires: readonly WireCut[], policy: OrderPolicy): SupplyLine[] {
  const bySize = new Map<string, WireCut[]>();
  for (const wire of wires) {
    const id = stockItemId({ kind: 'wire', diameter_m: wire.diameter });
    const known = bySize.get(id);
    if (known === undefined) bySize.set(id, [wire]);
    else known.push(wire);
  }
  return [...bySize.values()]
    .map((own) => wireLine(own, policy))
    .sort((a, b) => (a.id < b.id ? 1 : a.id > b.id ? -1 : 0));
}

function wireLine(wires: readonly WireCut[], { wire: allowance }: OrderPolicy): SupplyLine {
  const { diameter } = wires[0]!;
  const cuts = wires.map(({ cut }) => cut.total);
  const cut = cuts.reduce<number>((sum, length) => sum + length, 0);
  const longest = Math.max(...cuts);
  const beyond = metres(allowance.spoilageShare * cut);
  const spares = Array.from({ length: allowance.spareWires }, () => metres(longest));
  // Each part up to the next gram, so that the whole is the sum of what is shown.
  const grams = (length: number): number =>
    Math.ceil(1000 * inKilograms(wireMass({ diameter, length: metres(length) })));
  const needed = grams(cut);
  const extra = [
    { name: `spoilage ${Math.round(100 * allowance.spoilageShare)} %`, quantity: grams(beyond) },
    {
      name: `spare: ${allowance.spareWires} of the longest wire`,
      quantity: grams(allowance.spareWires * longest),
    },
  ].filter(({ quantity }) => quantity > 0);
  const tied = wires.filter(({ joined }) => joined === 'tied').length;
  const strings = wires.flatMap((wire) => wire.strings);
  return {
    ...lineOf({ kind: 'wire', diameter_m: diameter }, 'plain wire'),
    needed,
    extra,
    total: needed + extra.reduce((sum, { quantity }) => sum + quantity, 0),
    because: `${wires.length} wires for ${strings.length} strings, ${tied} of them tied: ${cut.toFixed(2)} m to cut`,
    assumed: assumptions(strings),
    from: strings.map(({ key, string, entries }) => ({ key, string, entries })),
    wire: {
      cuts: [...cuts, ...spares],
      beyond,
      total: metres(cut + beyond + allowance.spareWires * longest),
    },
  };
}

const told: Readonly<Partial<Record<OrderedFrom, string>>> = {
  'as read': 'taken as read, which is no size yet',
  'line through the section': 'taken from the line through the section',
  'mean of the section': 'taken as the mean of the section',
  'starting figure': 'taken as our starting figure',
};

/** Figures that stand in for readings, with how many strings lean on each. */
function assumptions(strings: readonly OrderString[]): string[] {
  const count = (
    name: string,
    fromOf: (string: OrderString) => OrderedFrom | undefined,
    standIns: OrderedFrom[],
  ) =>
    standIns.flatMap((from) => {
      const own = strings.filter((string) => fromOf(string) === from).length;
      return own === 0 ? [] : [`${name} of ${own} of ${strings.length} strings ${told[from]}.`];
    });
  return [
    ...count('Diameter', ({ diameter }) => diameter?.from, ['as read']),
    ...count('Speaking length', ({ speaking }) => speaking?.from, ['line through the section']),
    ...count('Front length', ({ front }) => front.from, ['mean of the section', 'starting figure']),
    ...count('Back length', ({ back }) => back.from, ['mean of the section', 'starting figure']),
  ];
}

function bassSet(wound: readonly OrderString[]): SupplyLine {
  return {
    id: 'bass strings',
    group: 'bass strings',
    what: 'Wound strings, made to order',
    item: undefined,
    unit: 'piece',
    needed: wound.length,
    extra: [],
    total: wound.length,
    because: `strings of ${new Set(wound.map(({ key }) => key)).size} notes; ordered on the bass string order, after its checks`,
    assumed: [],
    from: wound.map(({ key, string, entries }) => ({ key, string, entries })),
  };
}

/** 'C4, D4 and 3 more' */
export function spokenNotes(notes: readonly string[]): string {
  const some = notes.slice(0, 8).join(', ');
  return notes.length <= 8 ? some : `${some} and ${notes.length - 8} more`;
}
