import { requireWithin } from '../units/index.ts';
import { type FieldRegion, regionsOfField } from './field-regions.ts';

/** A pin of the field that was read. Pins are handed in in the order in which they lie: by key, then by string. */
export interface PinInField {
  readonly key: number;
  /** Counted from the bass side of its unison; undefined where nobody said which string it was. */
  readonly string: number | undefined;
  readonly isLow: boolean;
}

export type LowPinPatternKind =
  | 'cannot tell'
  | 'none'
  | 'everywhere'
  | 'one section'
  | 'along the flange'
  | 'a line inside the field'
  | 'scattered';

export interface LowPinPattern {
  readonly kind: LowPinPatternKind;
  readonly read: number;
  readonly low: number;
  /** The part of the field in which low pins gather; undefined where they do not. */
  readonly region: FieldRegion | undefined;
  /**
   * How often low pins that lie where they lie by chance alone would gather as clearly as this in any part of the field
   * that was looked at; undefined where nothing was tried.
   */
  readonly chance: number | undefined;
  /** 'Low pins gather in C4 to F4 (5 of 6; 3 of 34 elsewhere).' */
  readonly looksLike: string;
  /** Common practice, no source. */
  readonly oftenMeans: string;
  readonly howSure: string;
}

/** With fewer pins nothing can be told of a pattern. Our own figure. */
const FEWEST_READ = 8;
/** From this share on the low pins are the rule and not a pattern. Our own figure. */
const SHARE_EVERYWHERE = 0.8;
/** Below this chance a gathering is named. */
const NAMED_BELOW = 0.05;

/** What each pattern often comes from. Common practice, no source; no more than a hint where to look. */
export const MEANING_OF_PATTERNS: Readonly<Record<LowPinPatternKind, string>> = {
  'cannot tell': 'Read more pins, spread over the field, before anything is made of it.',
  none: 'Nothing in these readings speaks against the block; pins that were not read may still be loose.',
  everywhere:
    'Often a block that has dried out or worn as a whole, holes drilled wide, or a block treated with oil; also a season with dry air.',
  'one section':
    'Often earlier work on that section (pins changed, holes reamed, liquid put in), or a block joint beside it.',
  'along the flange':
    'Often a block that does not fit its plate flange, so that pins lean there, or splits that start at the plate screws beside the struts.',
  'a line inside the field':
    'Often layers that part or a crack that runs along these holes. It can go on where no pin was read.',
  scattered:
    'Often single worn holes or earlier repairs; a block that is sound between them can then be kept with larger pins, bushings or plugs.',
};

/**
 * Where low pins gather: in one section, along the flange (at the ends of sections, beside the struts), along a line inside
 * the field, or nowhere.
 *
 *     Λ(region) = k·ln(k/n) + (n−k)·ln(1−k/n) + k′·ln(k′/n′) + (n′−k′)·ln(1−k′/n′) − (the same for all pins in one)
 *     score = max over kinds of region of ( max Λ − ln(number of regions of the kind) )
 *
 * k of n pins in the region are low and k′ of n′ outside; Λ counts only where the share inside is the larger. The kind with
 * the best score is named when chance alone seldom does as well: p = (1 + shuffles that score as high)/(1 + shuffles), with the
 * same low pins shuffled over the same places. All regions are tried in every shuffle, so that looking at many is paid for.
 *
 * @param pins              in the order in which they lie
 * @param options.sections  first and last key of each, in order
 * @param options.random    numbers in [0, 1), seeded
 *
 * Holds for: one row of notes; where the pins stand in rows, a row is taken to be the same string of each unison.
 * Error: false alarms one in twenty by construction; both kinds of error are measured by `npm run bench pins`.
 * Throws: RangeError when shuffles are not 99 or more.
 * Source: scan statistic after M. Kulldorff, "A spatial scan statistic", 1997, for the Bernoulli model; shuffling stops early
 * after J. Besag, P. Clifford, "Sequential Monte Carlo p-values", 1991; both from memory. The
 * price ln(number) of a kind of region is our own.
 */
export function lowPinPattern(
  pins: readonly PinInField[],
  {
    sections,
    random,
    shuffles = 999,
  }: {
    readonly sections: readonly {
      readonly section: string;
      readonly firstKey: number;
      readonly lastKey: number;
    }[];
    readonly random: () => number;
    readonly shuffles?: number;
  },
): LowPinPattern {
  requireWithin(shuffles, 99, 1e5, 'the number of shuffles', 'the pattern of low pins');
  const read = pins.length;
  const isLow = Uint8Array.from(pins, (pin) => (pin.isLow ? 1 : 0));
  const low = isLow.reduce((sum, one) => sum + one, 0);
  const plain = (kind: LowPinPatternKind, looksLike: string, howSure: string): LowPinPattern => ({
    kind,
    read,
    low,
    region: undefined,
    chance: undefined,
    looksLike,
    oftenMeans: MEANING_OF_PATTERNS[kind],
    howSure,
  });
  const count = `${low} of ${read} pins read are low`;
  if (low === 0 && read > 0)
    return plain('none', 'No pin that was read is low.', 'As far as the pins read go.');
  if (read < FEWEST_READ)
    return plain(
      'cannot tell',
      read === 0 ? 'No pin has a grip yet.' : `${count}.`,
      `${FEWEST_READ} pins are needed to speak of a pattern.`,
    );
  if (low >= SHARE_EVERYWHERE * read)
    return plain('everywhere', `${count}.`, 'Where low pins are the rule, no place among them stands out.');

  const regions = counterOf(pins, regionsOfField(pins, sections));
  const table = gatheringTable(read, low);
  const best = bestRegion(regions, isLow, table);
  const shuffled = isLow.slice();
  let asClear = 0;
  let turns = 0;
  // Once too many shuffles look as clear no further ones can name a pattern.
  while (turns < shuffles && 1 + asClear <= NAMED_BELOW * (1 + shuffles)) {
    shuffle(shuffled, random);
    if (bestRegion(regions, shuffled, table).score >= best.score - 1e-9) asClear += 1;
    turns += 1;
  }
  const chance = turns === shuffles ? (1 + asClear) / (1 + shuffles) : asClear / turns;
  if (best.region === undefined || chance > NAMED_BELOW)
    return {
      ...plain('scattered', `${count}, and they gather nowhere in particular.`, ''),
      chance,
      howSure: `Chance alone gathers as many low pins in one place in ${percent(chance)} of shuffles; a small zone can still hide among few readings.`,
    };
  const { region } = best;
  const inside = region.pins.reduce((sum, pin) => sum + isLow[pin]!, 0);
  return {
    kind: region.kind,
    read,
    low,
    region,
    chance,
    looksLike: `Low pins gather ${region.where}: ${inside} of ${region.pins.length} there, ${low - inside} of ${read - region.pins.length} elsewhere.`,
    oftenMeans: MEANING_OF_PATTERNS[region.kind],
    howSure: `Chance alone does this in ${percent(chance)} of shuffles: ${chance <= 0.01 ? 'clear' : 'likely, not certain'}. What it comes from is for the eye: look at the block there.`,
  };
}

interface Scored {
  readonly score: number;
  readonly region: FieldRegion | undefined;
}

/**
 * Low pins of a region are counted as differences of running sums, thousands of regions a thousand times over: hence flat
 * arrays, one place for each stretch of neighbours.
 */
interface Counter {
  /** Pins one row after the other, row 0 being all of them; each row starts with a place for its sum of nothing. */
  readonly pinAt: Int32Array;
  readonly sums: Int32Array;
  /** Where the stretch starts and ends in `sums`, and the region it belongs to. */
  readonly starts: Int32Array;
  readonly ends: Int32Array;
  readonly ofRegion: Int32Array;
  readonly regions: readonly FieldRegion[];
  readonly sizes: Int32Array;
  readonly prices: Float64Array;
}

const ROW_START = -1;

function counterOf(pins: readonly PinInField[], regions: readonly FieldRegion[]): Counter {
  const pinAt: number[] = [];
  const placeIn = [undefined, 1, 2, 3].map((row) => {
    pinAt.push(ROW_START);
    const places = new Map<number, number>();
    pins.forEach(({ string }, index) => {
      if (row !== undefined && string !== row) return;
      places.set(index, pinAt.length);
      pinAt.push(index);
    });
    return places;
  });
  const [starts, ends, ofRegion]: [number[], number[], number[]] = [[], [], []];
  regions.forEach((region, index) => {
    for (const pin of region.pins) {
      const place = placeIn[region.row ?? 0]!.get(pin)!;
      if (ofRegion.at(-1) === index && ends.at(-1) === place - 1) ends[ends.length - 1] = place;
      else {
        starts.push(place - 1);
        ends.push(place);
        ofRegion.push(index);
      }
    }
  });
  return {
    pinAt: Int32Array.from(pinAt),
    sums: new Int32Array(pinAt.length),
    starts: Int32Array.from(starts),
    ends: Int32Array.from(ends),
    ofRegion: Int32Array.from(ofRegion),
    regions,
    sizes: Int32Array.from(regions, (region) => region.pins.length),
    prices: Float64Array.from(regions, ({ price }) => price),
  };
}

function bestRegion(counter: Counter, isLow: Uint8Array, gathering: Gathering): Scored {
  const { pinAt, sums, starts, ends, ofRegion, sizes, prices } = counter;
  for (let place = 0; place < pinAt.length; place += 1) {
    const pin = pinAt[place]!;
    sums[place] = pin === ROW_START ? 0 : sums[place - 1]! + isLow[pin]!;
  }
  let score = 0;
  let best = -1;
  for (let stretch = 0; stretch < starts.length; ) {
    const region = ofRegion[stretch]!;
    let inside = 0;
    for (; ofRegion[stretch] === region; stretch += 1)
      inside += sums[ends[stretch]!]! - sums[starts[stretch]!]!;
    const own = gathering.table[sizes[region]! * gathering.width + inside]! - prices[region]!;
    if (own > score) {
      score = own;
      best = region;
    }
  }
  return { score, region: counter.regions[best] };
}

/** Λ for every n and k: looked up a million times. */
interface Gathering {
  readonly table: Float64Array;
  readonly width: number;
}

function gatheringTable(read: number, low: number): Gathering {
  const width = low + 1;
  const table = new Float64Array((read + 1) * width);
  for (let size = 1; size < read; size += 1) {
    for (let inside = 0; inside <= Math.min(size, low); inside += 1) {
      const [outside, rest] = [low - inside, read - size];
      if (outside > rest || inside / size <= outside / rest) continue;
      table[size * width + inside] =
        logLikelihood(inside, size) + logLikelihood(outside, rest) - logLikelihood(low, read);
    }
  }
  return { table, width };
}

function logLikelihood(low: number, count: number): number {
  const part = (some: number) => (some === 0 ? 0 : some * Math.log(some / count));
  return part(low) + part(count - low);
}

function shuffle(values: Uint8Array, random: () => number): void {
  for (let place = values.length - 1; place > 0; place -= 1) {
    const other = Math.floor(random() * (place + 1));
    const kept = values[place]!;
    values[place] = values[other]!;
    values[other] = kept;
  }
}

const percent = (share: number): string =>
  share < 0.01 ? `${(100 * share).toFixed(1)} %` : `${Math.round(100 * share)} %`;
