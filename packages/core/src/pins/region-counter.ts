import type { TriedRegion } from './field-regions.ts';

export interface Scored {
  readonly score: number;
  readonly region: TriedRegion | undefined;
}

/**
 * Marked pins of a region are counted as differences of running sums, thousands of regions a thousand times over: hence flat
 * arrays, one place for each stretch of neighbours.
 */
export interface RegionCounter {
  /** Pins one row after the other, row 0 being all of them; each row starts with a place for its sum of nothing. */
  readonly pinAt: Int32Array;
  readonly sums: Int32Array;
  /** Where the stretch starts and ends in `sums`, and the region it belongs to. */
  readonly starts: Int32Array;
  readonly ends: Int32Array;
  readonly ofRegion: Int32Array;
  readonly regions: readonly TriedRegion[];
  readonly sizes: Int32Array;
  readonly prices: Float64Array;
}

const ROW_START = -1;

export function regionCounter(
  pins: readonly { readonly string: number | undefined }[],
  regions: readonly TriedRegion[],
): RegionCounter {
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

/** The region in which marked pins gather most clearly for its price; none when nothing is worth its price. */
export function bestRegion(counter: RegionCounter, isMarked: Uint8Array, gathering: Gathering): Scored {
  const { pinAt, sums, starts, ends, ofRegion, sizes, prices } = counter;
  for (let place = 0; place < pinAt.length; place += 1) {
    const pin = pinAt[place]!;
    sums[place] = pin === ROW_START ? 0 : sums[place - 1]! + isMarked[pin]!;
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
export interface Gathering {
  readonly table: Float64Array;
  readonly width: number;
}

export function gatheringTable(read: number, low: number): Gathering {
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
