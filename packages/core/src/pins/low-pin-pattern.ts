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
 * Source: scan statistic after M. Kulldorff, "A spatial scan statistic", 1997, for the Bernoulli model; from memory. The
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
  for (let turn = 0; turn < shuffles; turn += 1) {
    shuffle(shuffled, random);
    if (bestRegion(regions, shuffled, table).score >= best.score - 1e-9) asClear += 1;
  }
  const chance = (1 + asClear) / (1 + shuffles);
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

/** Low pins of a region are counted as differences of running sums, thousands of regions a thousand times over. */
interface Counter {
  /** For each row (0: all pins), which pins it runs over. */
  readonly rows: readonly (readonly number[])[];
  readonly sums: readonly Int32Array[];
  readonly regions: readonly {
    readonly region: FieldRegion;
    readonly row: number;
    /** Start and end of each stretch of neighbours, one after the other. */
    readonly stretches: readonly number[];
  }[];
}

function counterOf(pins: readonly PinInField[], regions: readonly FieldRegion[]): Counter {
  const rows = [undefined, 1, 2, 3].map((row) =>
    pins.flatMap(({ string }, index) => (row === undefined || string === row ? [index] : [])),
  );
  const placeIn = rows.map((row) => new Map(row.map((pin, place) => [pin, place])));
  return {
    rows,
    sums: rows.map((row) => new Int32Array(row.length + 1)),
    regions: regions.map((region) => {
      const row = region.row ?? 0;
      const stretches: number[] = [];
      for (const pin of region.pins) {
        const place = placeIn[row]!.get(pin)!;
        if (stretches.at(-1) === place) stretches[stretches.length - 1] = place + 1;
        else stretches.push(place, place + 1);
      }
      return { region, row, stretches };
    }),
  };
}

function bestRegion(
  { rows, sums, regions }: Counter,
  isLow: Uint8Array,
  gathering: readonly Float64Array[],
): Scored {
  rows.forEach((row, index) => {
    const sum = sums[index]!;
    row.forEach((pin, place) => {
      sum[place + 1] = sum[place]! + isLow[pin]!;
    });
  });
  let score = 0;
  let best: FieldRegion | undefined;
  for (const { region, row, stretches } of regions) {
    const sum = sums[row]!;
    let inside = 0;
    for (let index = 0; index < stretches.length; index += 2)
      inside += sum[stretches[index + 1]!]! - sum[stretches[index]!]!;
    const own = gathering[region.pins.length]![inside]! - region.price;
    if (own > score) {
      score = own;
      best = region;
    }
  }
  return { score, region: best };
}

/** Λ for every n and k: looked up a million times. */
function gatheringTable(read: number, low: number): Float64Array[] {
  return Array.from({ length: read + 1 }, (_, size) => {
    const row = new Float64Array(Math.min(size, low) + 1);
    for (let inside = 0; inside < row.length; inside += 1) {
      const [outside, rest] = [low - inside, read - size];
      if (size === 0 || rest === 0 || outside > rest || inside / size <= outside / rest) continue;
      row[inside] = logLikelihood(inside, size) + logLikelihood(outside, rest) - logLikelihood(low, read);
    }
    return row;
  });
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
