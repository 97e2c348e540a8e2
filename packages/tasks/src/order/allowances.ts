import { english, type Language, type Message, message } from '@becket/core';
import { type AllowanceKept, type BassAllowances, STARTING_BASS_ALLOWANCES as bass } from '@becket/journal';
import type { TaskContext } from '../context.ts';
import { type OrderPolicy, STARTING_ORDER_POLICY as start } from './order-policy.ts';
import {
  type ReceivedTolerances,
  STARTING_RECEIVED_TOLERANCES as tolerances,
} from './received-tolerances.ts';
import { addToShop, readShop, type Shop } from './shop.ts';
import { betweenSources } from './sources-in-words.ts';

export const allowanceGroups = {
  wire: message('Plain wire'),
  cut: message('Each wire'),
  unread: message('Taken where nothing was read'),
  pins: message('Tuning pins'),
  soft: message('Felts, bushings and bridge pins'),
  bass: message('Bass strings to be ordered'),
  received: message('Bass strings that come: how far off is still right'),
} as const satisfies Record<string, Message>;
export type AllowanceGroup = keyof typeof allowanceGroups;

/** One figure that a shop may set for itself. */
export interface Allowance {
  readonly group: AllowanceGroup;
  readonly words: Message;
  /** A share is typed in percent, a length in millimetres or inches; a count is whole. */
  readonly is: 'share' | 'count' | 'length';
  readonly starting: number;
  readonly source: string;
  /** More than this is a slip. */
  readonly most: number;
}

/** The figures by name. The name is what the journal keeps, with its unit in it. */
export const allowances = {
  'wire-spoilage-share': {
    group: 'wire',
    words: message('for spoilage'),
    is: 'share',
    starting: start.wire.spoilageShare,
    source: start.wire.source,
    most: 1,
  },
  'wire-spares': {
    group: 'wire',
    words: message('spare wires of each size, as long as the longest'),
    is: 'count',
    starting: start.wire.spareWires,
    source: start.wire.source,
    most: 50,
  },
  coils: {
    group: 'cut',
    words: message('coils on each pin'),
    is: 'count',
    starting: start.cut.coils,
    source: start.cutSource,
    most: 8,
  },
  becket_m: {
    group: 'cut',
    words: message('for the eye of each pin'),
    is: 'length',
    starting: start.cut.becket_m,
    source: start.cutSource,
    most: 0.1,
  },
  waste_m: {
    group: 'cut',
    words: message('cut off at each pin'),
    is: 'length',
    starting: start.cut.waste_m,
    source: start.cutSource,
    most: 0.5,
  },
  tie_m: {
    group: 'cut',
    words: message('for the loop of a tied wire'),
    is: 'length',
    starting: start.cut.tie_m,
    source: start.cutSource,
    most: 0.5,
  },
  frontLength_m: {
    group: 'unread',
    words: message('front length'),
    is: 'length',
    starting: start.cut.frontLength_m,
    source: start.source,
    most: 1,
  },
  backLength_m: {
    group: 'unread',
    words: message('back length'),
    is: 'length',
    starting: start.cut.backLength_m,
    source: start.source,
    most: 1,
  },
  hitchPinDiameter_m: {
    group: 'unread',
    words: message('hitch pin diameter'),
    is: 'length',
    starting: start.cut.hitchPinDiameter_m,
    source: start.source,
    most: 0.02,
  },
  pinDiameter_m: {
    group: 'unread',
    words: message('tuning pin diameter'),
    is: 'length',
    starting: start.cut.pinDiameter_m,
    source: start.source,
    most: 0.01,
  },
  'pin-spare-share': {
    group: 'pins',
    words: message('spares'),
    is: 'share',
    starting: start.pins.spareShare,
    source: start.pins.source,
    most: 1,
  },
  'pin-least-spares': {
    group: 'pins',
    words: message('spares of each size at the least'),
    is: 'count',
    starting: start.pins.leastSpares,
    source: start.pins.source,
    most: 100,
  },
  'test-pins': {
    group: 'pins',
    words: message('test pins of each size that was not driven yet'),
    is: 'count',
    starting: start.testPins,
    source: start.testPinsSource,
    most: 20,
  },
  'soft-spare-share': {
    group: 'soft',
    words: message('spare'),
    is: 'share',
    starting: start.softShare,
    source: start.source,
    most: 1,
  },
  'bass-coils': {
    group: 'bass',
    words: message('coils on each pin'),
    is: 'count',
    starting: bass.coils,
    source: message('common practice, no source'),
    most: 8,
  },
  'bass-becket_m': {
    group: 'bass',
    words: message('for the eye of each pin'),
    is: 'length',
    starting: bass.becket_m,
    source: start.source,
    most: 0.1,
  },
  'bass-waste_m': {
    group: 'bass',
    words: message('cut off at each pin'),
    is: 'length',
    starting: bass.waste_m,
    source: start.source,
    most: 0.5,
  },
  'bass-length-tolerance_m': {
    group: 'bass',
    words: message('by which lengths that belong together may differ'),
    is: 'length',
    starting: bass.lengthTolerance_m,
    source: start.source,
    most: 0.05,
  },
  'bass-unison-tolerance_m': {
    group: 'bass',
    words: message('by which the strings of one note may differ in thickness'),
    is: 'length',
    starting: bass.unisonTolerance_m,
    source: message('common practice, no source'),
    most: 0.002,
  },
  'received-core-diameter_m': {
    group: 'received',
    words: message('core'),
    is: 'length',
    starting: tolerances.tolerance_m['core-diameter'],
    source: tolerances.source,
    most: 0.001,
  },
  'received-inner-layer-diameter_m': {
    group: 'received',
    words: message('over the inner layer'),
    is: 'length',
    starting: tolerances.tolerance_m['inner-layer-diameter'],
    source: tolerances.source,
    most: 0.002,
  },
  'received-over-all-diameter_m': {
    group: 'received',
    words: message('over all'),
    is: 'length',
    starting: tolerances.tolerance_m['over-all-diameter'],
    source: tolerances.source,
    most: 0.002,
  },
  'received-winding-length_m': {
    group: 'received',
    words: message('winding length'),
    is: 'length',
    starting: tolerances.tolerance_m['winding-length'],
    source: tolerances.source,
    most: 0.1,
  },
  'received-loop-to-winding_m': {
    group: 'received',
    words: message('loop to winding'),
    is: 'length',
    starting: tolerances.tolerance_m['loop-to-winding'],
    source: tolerances.source,
    most: 0.1,
  },
} as const satisfies Record<string, Allowance>;
export type AllowanceName = keyof typeof allowances;
export const allowanceNames = Object.keys(allowances) as AllowanceName[];

type Kept = ReadonlyMap<string, Pick<AllowanceKept, 'value' | 'source'>>;

/** What more is bought than is strung, by this shop's figures and the starting ones for the rest. */
export function orderPolicyOf(kept: Kept): OrderPolicy {
  const value = (name: AllowanceName) => kept.get(name)?.value ?? allowances[name].starting;
  const source = (...names: AllowanceName[]) => sourcesOf(kept, names);
  return {
    ...start,
    source: source(
      'frontLength_m',
      'backLength_m',
      'hitchPinDiameter_m',
      'pinDiameter_m',
      'soft-spare-share',
    ),
    wire: {
      source: source('wire-spoilage-share', 'wire-spares'),
      spoilageShare: value('wire-spoilage-share'),
      spareWires: value('wire-spares'),
    },
    pins: {
      source: source('pin-spare-share', 'pin-least-spares'),
      spareShare: value('pin-spare-share'),
      leastSpares: value('pin-least-spares'),
    },
    testPins: value('test-pins'),
    testPinsSource: source('test-pins'),
    softShare: value('soft-spare-share'),
    cutSource: source('coils', 'becket_m', 'waste_m', 'tie_m'),
    cut: {
      coils: value('coils'),
      becket_m: value('becket_m'),
      waste_m: value('waste_m'),
      tie_m: value('tie_m'),
      hitchPinDiameter_m: value('hitchPinDiameter_m'),
      pinDiameter_m: value('pinDiameter_m'),
      frontLength_m: value('frontLength_m'),
      backLength_m: value('backLength_m'),
    },
  };
}

/** What a bass string gets beyond what was measured, by this shop's figures and the starting ones for the rest. */
export function bassAllowancesOf(kept: Kept): BassAllowances {
  const value = (name: AllowanceName) => kept.get(name)?.value ?? allowances[name].starting;
  return {
    sources: eachSourceOf(kept, ['bass-coils', 'bass-becket_m', 'bass-waste_m', 'pinDiameter_m']),
    coils: value('bass-coils'),
    becket_m: value('bass-becket_m'),
    waste_m: value('bass-waste_m'),
    pinDiameter_m: value('pinDiameter_m'),
    toleranceSources: eachSourceOf(kept, ['bass-length-tolerance_m', 'bass-unison-tolerance_m']),
    lengthTolerance_m: value('bass-length-tolerance_m'),
    unisonTolerance_m: value('bass-unison-tolerance_m'),
  };
}

/** By how much a bass string may differ from its order, by this shop's figures and the starting ones for the rest. */
export function receivedTolerancesOf(kept: Kept): ReceivedTolerances {
  const names = allowanceNames.filter((name) => allowances[name].group === 'received');
  return {
    source: sourcesOf(kept, names),
    tolerance_m: Object.fromEntries(
      names.map((name) => [
        name.replace(/^received-(.*)_m$/, '$1'),
        kept.get(name)?.value ?? allowances[name].starting,
      ]),
    ) as ReceivedTolerances['tolerance_m'],
  };
}

/** Where some figures come from, each source once. */
const eachSourceOf = (kept: Kept, names: readonly AllowanceName[]): string[] => [
  ...new Set(names.map((name) => kept.get(name)?.source ?? allowances[name].source)),
];

const sourcesOf = (kept: Kept, names: readonly AllowanceName[]): string =>
  eachSourceOf(kept, names).join(betweenSources);

export interface AllowanceToSet {
  readonly name: string;
  /** A share of 1, a whole count, or metres. */
  readonly value: number;
  /** Where it comes from. */
  readonly source: string;
}

/** Throws: RangeError with one sentence when there is no such figure, it is out of its range, or nobody says where it is from. */
export function requireAllowance({ name, value, source }: AllowanceToSet, { say }: Language = english): void {
  const known: Allowance | undefined = allowances[name as AllowanceName];
  if (known === undefined)
    throw new RangeError(
      say('Cannot set this figure: one of {names} is needed, {found} was found.', {
        names: allowanceNames.join(', '),
        found: name,
      }),
    );
  const isIn = Number.isFinite(value) && value >= 0 && value <= known.most;
  if (!isIn || (known.is === 'count' && !Number.isInteger(value)))
    throw new RangeError(
      say(
        'Cannot set this figure: {kind, select, count {a whole number from 0 to {most}} share {a share from 0 to {most} %} other {a length from 0 to {most} mm}} is needed, {found} was found. Type it again.',
        { kind: known.is, most: shown(known, known.most), found: shown(known, value) },
      ),
    );
  if (source.trim() === '')
    throw new RangeError(
      say(
        'Cannot set this figure: where it comes from is needed, nothing was found. Say whose experience or which source it is.',
      ),
    );
}

const shown = ({ is }: Allowance, value: number): string =>
  String(is === 'count' ? value : Number((value * (is === 'share' ? 100 : 1000)).toPrecision(6)));

/** Keeps a figure of the shop's own. It holds for every job from now on. Throws as `requireAllowance` does. */
export async function setAllowance(context: TaskContext, wish: AllowanceToSet): Promise<Shop> {
  requireAllowance(wish, context.language);
  const { name, value, source } = wish;
  return addToShop(context, [{ kind: 'allowance-set', v: 1, name, value, source: source.trim() }]);
}

/**
 * Takes back the figure that was set last: the one before it holds again, or the starting one.
 * Throws: RangeError when the shop has set none of that name.
 */
export async function takeBackAllowance(
  context: TaskContext,
  { name, reason }: { readonly name: string; readonly reason: string },
): Promise<Shop> {
  const { say } = context.language ?? english;
  const entry = (await readShop(context)).allowances.get(name)?.entry;
  if (entry === undefined)
    throw new RangeError(
      say('Cannot take this figure back: one that the shop has set is needed, {name} is as it started.', {
        name,
      }),
    );
  return addToShop(context, [{ kind: 'withdrawn', v: 1, entry, reason }]);
}
