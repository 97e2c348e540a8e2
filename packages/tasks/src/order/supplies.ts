import { english, grouped, inKilograms, type Language, message, metres, wireMass } from '@becket/core';
import { type Job, type StockItem, stockItemId } from '@becket/journal';
import { newPinDiameters } from '../cut/new-pins.ts';
import { noteRuns } from '../note-runs.ts';
import { type OrderPolicy, STARTING_ORDER_POLICY } from './order-policy.ts';
import { type OrderedFrom, type OrderString, orderStrings } from './order-strings.ts';
import { pinSupplies } from './pin-supplies.ts';
import { softSupplies } from './soft-supplies.ts';
import { sourcesInWords } from './sources-in-words.ts';
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
export function suppliesOf(
  job: Job,
  policy: OrderPolicy = STARTING_ORDER_POLICY,
  language: Language = english,
): Supplies {
  const { say } = language;
  const { scale, isChosen, problem, strings, undescribed } = orderStrings(job, policy.cut, language);
  const { wires, uncounted } = wireCuts(strings, policy.cut, newPinDiameters(job));
  const wound = strings.filter(({ winding }) => winding === 'wound');
  return {
    scale,
    isChosenScale: isChosen,
    scaleProblem: problem,
    lines: [
      ...wireSupplies(wires, policy, language),
      ...pinSupplies(job, policy, language),
      ...(wound.length === 0 ? [] : [bassSet(wound, language)]),
      ...softSupplies(job, { strings, wires, share: policy.softShare }, language),
      ...policy.sundries.map(({ name, unit, quantity }): SupplyLine => {
        const item: StockItem = { kind: 'other', name, unit };
        return {
          ...lineOf(item, 'sundries', language),
          needed: quantity,
          extra: [],
          total: quantity,
          because: say("the shop's list of sundries ({source})", {
            source: sourcesInWords(policy.source, language),
          }),
          assumed: [],
          from: [],
        };
      }),
    ],
    notCounted: [
      ...notInScale(strings, language),
      // Before anything is described there is nothing to leave out: say so, or the list passes for the whole need.
      ...(strings.length === 0 && undescribed.length === 0
        ? [
            say(
              'Neither compass nor stringing of this piano is described yet: no wire, pin or string can be counted. Describe it in Record.',
            ),
          ]
        : []),
      ...(undescribed.length === 0
        ? []
        : [
            say('The stringing of {notes} is not described: their wire and pins are not counted.', {
              notes: spokenNotes(undescribed, language),
            }),
          ]),
      ...(uncounted.length === 0
        ? []
        : [
            say('Wire is not counted for {notes}: {count} strings without a diameter or a speaking length.', {
              notes: spokenNotes([...new Set(uncounted.map(({ note }) => note))], language),
              count: uncounted.length,
            }),
          ]),
    ],
    policy,
  };
}

/** Plain notes that the chosen scale does not have: the old sizes stand in for them, beside the new ones. */
function notInScale(strings: readonly OrderString[], language: Language): string[] {
  const keys = strings.flatMap(({ key, winding, isInScale }) =>
    winding === 'plain' && !isInScale ? [key] : [],
  );
  return keys.length === 0
    ? []
    : [
        language.say(
          'The chosen scale does not have {notes}: their wire is counted in the sizes that the old wire speaks for. Read what they lack, and choose a scale that has them, before wire is bought.',
          { notes: noteRuns(keys, language) },
        ),
      ];
}

/** Wire by size, thick to thin. */
function wireSupplies(wires: readonly WireCut[], policy: OrderPolicy, language: Language): SupplyLine[] {
  const bySize = grouped(wires, ({ diameter }) => stockItemId({ kind: 'wire', diameter_m: diameter }));
  return [...bySize.values()]
    .map((own) => wireLine(own, policy, language))
    .sort((a, b) => (a.id < b.id ? 1 : a.id > b.id ? -1 : 0));
}

function wireLine(
  wires: readonly WireCut[],
  { wire: allowance }: OrderPolicy,
  language: Language,
): SupplyLine {
  const { say, fixed } = language;
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
    {
      name: say('spoilage {percent} %', { percent: Math.round(100 * allowance.spoilageShare) }),
      quantity: grams(beyond),
    },
    {
      name: say('spare: {count} of the longest wire', { count: allowance.spareWires }),
      quantity: grams(allowance.spareWires * longest),
    },
  ].filter(({ quantity }) => quantity > 0);
  const tied = wires.filter(({ joined }) => joined === 'tied').length;
  const strings = wires.flatMap((wire) => wire.strings);
  return {
    ...lineOf({ kind: 'wire', diameter_m: diameter }, 'plain wire', language),
    needed,
    extra,
    total: needed + extra.reduce((sum, { quantity }) => sum + quantity, 0),
    because: say('{wires} wires for {strings} strings, {tied} of them tied: {length} m to cut', {
      wires: wires.length,
      strings: strings.length,
      tied,
      length: fixed(cut, 2),
    }),
    assumed: assumptions(strings, language),
    from: strings.map(({ key, string, entries }) => ({ key, string, entries })),
    wire: {
      cuts: [...cuts, ...spares],
      beyond,
      total: metres(cut + beyond + allowance.spareWires * longest),
    },
  };
}

const told = {
  'as read': message('taken as read, which is no size yet'),
  'line through the section': message('taken from the line through the section'),
  'line between its neighbours': message('taken from the line between its neighbours'),
  'starting figure': message('taken as our starting figure'),
} as const satisfies Partial<Record<OrderedFrom, string>>;

/** Figures that stand in for readings, with how many strings lean on each. */
function assumptions(strings: readonly OrderString[], { say }: Language): string[] {
  const count = (
    name: string,
    fromOf: (string: OrderString) => OrderedFrom | undefined,
    standIns: (keyof typeof told)[],
  ) =>
    standIns.flatMap((from) => {
      const own = strings.filter((string) => fromOf(string) === from).length;
      return own === 0
        ? []
        : [
            say('{quantity} of {count} of {all} strings {taken}.', {
              quantity: name,
              count: own,
              all: strings.length,
              taken: say(told[from]),
            }),
          ];
    });
  return [
    ...count(say('Diameter'), ({ diameter }) => diameter?.from, ['as read']),
    ...count(say('Speaking length'), ({ speaking }) => speaking?.from, ['line through the section']),
    ...count(say('Front length'), ({ front }) => front.from, [
      'line between its neighbours',
      'starting figure',
    ]),
    ...count(say('Back length'), ({ back }) => back.from, ['line between its neighbours', 'starting figure']),
  ];
}

function bassSet(wound: readonly OrderString[], { say }: Language): SupplyLine {
  return {
    id: 'bass strings',
    group: 'bass strings',
    what: say('Wound strings, made to order'),
    item: undefined,
    unit: 'piece',
    needed: wound.length,
    extra: [],
    total: wound.length,
    because: say('strings of {notes} notes; ordered on the bass string order, after its checks', {
      notes: new Set(wound.map(({ key }) => key)).size,
    }),
    assumed: [],
    from: wound.map(({ key, string, entries }) => ({ key, string, entries })),
  };
}

/** 'C4, D4 and 3 more' */
export function spokenNotes(notes: readonly string[], { say }: Language = english): string {
  const some = notes.slice(0, 8).join(', ');
  return notes.length <= 8 ? some : say('{names} and {count} more', { names: some, count: notes.length - 8 });
}
