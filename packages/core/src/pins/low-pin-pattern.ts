import { type NewtonMetres, requireWithin } from '../units/index.ts';
import { english, type Language, type Message, message } from '../words/index.ts';
import { type FieldRegion, regionsOfField, type TriedRegion } from './field-regions.ts';
import { bestRegion, gatheringTable, regionCounter, type Scored } from './region-counter.ts';
import { torqueText } from './torque-text.ts';

/** A pin of the field that was read. Pins are handed in in the order in which they lie: by key, then by string. */
export interface PinInField {
  readonly key: number;
  /** Counted from the bass side of its unison; undefined where nobody said which string it was. */
  readonly string: number | undefined;
  readonly isLow: boolean;
  /** Where every pin has one, the lowest of all are looked at as well: in a loose block a zone can be looser still. */
  readonly grip?: NewtonMetres;
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
  /** Where it is the lowest pins that gather, rather than all low ones: the grip they are under. */
  readonly below: NewtonMetres | undefined;
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
export const MEANING_OF_PATTERNS: Readonly<Record<LowPinPatternKind, Message>> = {
  'cannot tell': message('Read more pins, spread over the field, before anything is made of it.'),
  none: message(
    'Nothing in these readings speaks against the block; pins that were not read may still be loose.',
  ),
  everywhere: message(
    'Often a block that has dried out or worn as a whole, holes drilled wide, or a block treated with oil; also a season with dry air.',
  ),
  'one section': message(
    'Often earlier work on that section (pins changed, holes reamed, liquid put in), or a block joint beside it.',
  ),
  'along the flange': message(
    'Often a block that does not fit its plate flange, so that pins lean there, or splits that start at the plate screws beside the struts.',
  ),
  'a line inside the field': message(
    'Often layers that part or a crack that runs along these holes. It can go on where no pin was read.',
  ),
  scattered: message(
    'Often single worn holes or earlier repairs; a block that is sound between them can then be kept with larger pins, bushings or plugs.',
  ),
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
 * same pins shuffled over the same places. All regions are tried in every shuffle, so that looking at many is paid for. Where
 * grips are given the lowest quarter and the lowest eighth of the pins are tried beside the low ones, as far as they are low.
 *
 * @param pins              in the order in which they lie
 * @param options.sections  first and last key of each, in order
 * @param options.random    numbers in [0, 1), seeded
 * @param language          of its words
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
  language: Language = english,
): LowPinPattern {
  const { say } = language;
  requireWithin(shuffles, 99, 1e5, 'the number of shuffles', 'the pattern of low pins');
  const read = pins.length;
  const low = pins.filter((pin) => pin.isLow).length;
  const plain = (kind: LowPinPatternKind, looksLike: string, howSure: string): LowPinPattern => ({
    kind,
    read,
    low,
    region: undefined,
    below: undefined,
    chance: undefined,
    looksLike,
    oftenMeans: say(MEANING_OF_PATTERNS[kind]),
    howSure,
  });
  const count = say('{low} of {read} pins read are low.', { low, read });
  if (low === 0 && read > 0)
    return plain('none', say('No pin that was read is low.'), say('As far as the pins read go.'));
  if (read < FEWEST_READ)
    return plain(
      'cannot tell',
      read === 0 ? say('No pin has a grip yet.') : count,
      say('{count} pins are needed to speak of a pattern.', { count: FEWEST_READ }),
    );

  const { region, cut, chance } = clearestRegion(pins, { low, sections, random, shuffles });
  if (region === undefined || cut === undefined || chance > NAMED_BELOW) {
    if (low >= SHARE_EVERYWHERE * read)
      return plain('everywhere', count, say('Low pins are the rule, and no place among them stands out.'));
    return {
      ...plain(
        'scattered',
        say('{low} of {read} pins read are low, and they gather nowhere in particular.', { low, read }),
        say(
          'Chance alone gathers as many low pins in one place in {share} of shuffles; a small zone can still hide among few readings.',
          { share: percent(chance, language) },
        ),
      ),
      chance,
    };
  }
  const inside = region.pins.reduce((sum, pin) => sum + cut.isMarked[pin]!, 0);
  const { whereIn, ...told } = region;
  const where = whereIn(language);
  const counts = { where, inside, there: region.pins.length, elsewhere: read - region.pins.length };
  return {
    kind: region.kind,
    read,
    low,
    region: { ...told, where },
    below: cut.below,
    chance,
    looksLike:
      cut.below === undefined
        ? say('Low pins gather {where}: {inside} of {there} there, {outside} of {elsewhere} elsewhere.', {
            ...counts,
            outside: low - inside,
          })
        : say(
            'The lowest pins gather {where}: {inside} of {there} there are under {torque}, {outside} of {elsewhere} elsewhere.',
            { ...counts, torque: torqueText(cut.below, language), outside: cut.marked - inside },
          ),
    oftenMeans: say(MEANING_OF_PATTERNS[region.kind]),
    howSure: say(
      'Chance alone does this in {share} of shuffles: {sure, select, clear {clear} other {likely, not certain}}. What it comes from is for the eye: look at the block there.',
      { share: percent(chance, language), sure: chance <= 0.01 ? 'clear' : 'likely' },
    ),
  };
}

/** One way of saying which pins are low. */
interface Cut {
  readonly isMarked: Uint8Array;
  readonly marked: number;
  readonly below: NewtonMetres | undefined;
}

/** Shares of the pins read that count as the lowest of them. Our own figures. */
const LOWEST_SHARES = [1 / 4, 1 / 8] as const;

function cutsOf(pins: readonly PinInField[], low: number): Cut[] {
  const asLow: Cut = {
    isMarked: Uint8Array.from(pins, (pin) => (pin.isLow ? 1 : 0)),
    marked: low,
    below: undefined,
  };
  const grips = pins.flatMap(({ grip }) => grip ?? []);
  if (grips.length < pins.length) return [asLow];
  const sorted = [...grips].sort((a, b) => a - b);
  const lowest = LOWEST_SHARES.flatMap((share): Cut[] => {
    const below = sorted[Math.round(share * pins.length)]!;
    const isMarked = Uint8Array.from(grips, (grip) => (grip < below ? 1 : 0));
    const marked = isMarked.reduce((sum, one) => sum + one, 0);
    // Among firm pins the lowest are nothing to speak of.
    return marked < 2 || marked >= low ? [] : [{ isMarked, marked, below }];
  });
  return [asLow, ...lowest];
}

function clearestRegion(
  pins: readonly PinInField[],
  {
    low,
    sections,
    random,
    shuffles,
  }: { readonly low: number } & Required<Parameters<typeof lowPinPattern>[1]>,
): { readonly region: TriedRegion | undefined; readonly cut: Cut | undefined; readonly chance: number } {
  const counter = regionCounter(pins, regionsOfField(pins, sections));
  const cuts = cutsOf(pins, low).map((cut) => ({
    ...cut,
    gathering: gatheringTable(pins.length, cut.marked),
  }));
  let best: Scored = { score: 0, region: undefined };
  let bestCut: Cut | undefined;
  for (const cut of cuts) {
    const own = bestRegion(counter, cut.isMarked, cut.gathering);
    if (own.score <= best.score) continue;
    best = own;
    bestCut = cut;
  }
  const order = Int32Array.from(pins, (_, index) => index);
  const shuffled = new Uint8Array(pins.length);
  const scoreOfShuffle = (): number => {
    shuffle(order, random);
    let score = 0;
    for (const { isMarked, gathering } of cuts) {
      for (let place = 0; place < order.length; place += 1) shuffled[place] = isMarked[order[place]!]!;
      score = Math.max(score, bestRegion(counter, shuffled, gathering).score);
    }
    return score;
  };
  let asClear = 0;
  let turns = 0;
  // Once too many shuffles look as clear no further ones can name a pattern.
  while (turns < shuffles && 1 + asClear <= NAMED_BELOW * (1 + shuffles)) {
    if (scoreOfShuffle() >= best.score - 1e-9) asClear += 1;
    turns += 1;
  }
  const chance = turns === shuffles ? (1 + asClear) / (1 + shuffles) : asClear / turns;
  return { region: best.region, cut: bestCut, chance };
}

function shuffle(values: Int32Array, random: () => number): void {
  for (let place = values.length - 1; place > 0; place -= 1) {
    const other = Math.floor(random() * (place + 1));
    const kept = values[place]!;
    values[place] = values[other]!;
    values[other] = kept;
  }
}

const percent = (share: number, { fixed }: Language): string =>
  share < 0.01 ? `${fixed(100 * share, 1)} %` : `${Math.round(100 * share)} %`;
