import { type Kilograms, type Metres, metres, requirePositive } from '../units/index.ts';
import { english, type Language } from '../words/index.ts';
import { wireLength } from './wire-quantity.ts';

/** How a supplier sells wire: a coil by its mass, a coil by its length, or straight pieces of one length. */
export type WireAsSold =
  | { readonly by: 'coil mass'; readonly mass: Kilograms }
  | { readonly by: 'coil length'; readonly length: Metres }
  | { readonly by: 'piece'; readonly length: Metres };

/** Coils or pieces to buy, and how the wires come out of them. */
export interface CoilsToBuy {
  readonly count: number;
  /** Wire on one coil, or the length of one piece. */
  readonly lengthOfOne: Metres;
  /** No plan could do with fewer: the sum of the cuts over the length of one, rounded up. */
  readonly least: number;
  /** What is left over of all of them after the cuts. */
  readonly left: Metres;
}

/**
 * Coils or pieces from which every wire can be cut whole: wire is never joined, so the end of a coil that is too short for
 * the next wire is waste.
 *
 * The longest wire is cut first, from the first coil that still has room (first fit decreasing).
 *
 * @param order.diameter  of the size [m], > 0
 * @param order.cuts      each wire to cut, spares among them [m], > 0
 * @param order.sold      how it is sold
 * @param order.beyond    further length that only has to be there, in any pieces, for spoilage [m]
 *
 * Error: at most 11/9 of the fewest coils plus 6/9; `least` says how far off it can be.
 * Throws: RangeError when an input is outside its range, or a wire is longer than a whole coil or piece.
 * Source: G. Dósa, "The tight bound of first fit decreasing bin-packing algorithm is FFD(I) ≤ 11/9 OPT(I) + 6/9", ESCAPE 2007
 * (from memory).
 * @example  coilsToBuy({ diameter: millimetres(1), cuts: [metres(3), metres(3), metres(2)], sold: { by: 'piece', length: metres(5) } }).count  // = 2
 */
export function coilsToBuy(
  order: {
    readonly diameter: Metres;
    readonly cuts: readonly Metres[];
    readonly sold: WireAsSold;
    readonly beyond?: Metres | undefined;
  },
  { say, fixed }: Language = english,
): CoilsToBuy {
  const task = 'the coils to buy';
  const { sold, diameter, cuts } = order;
  const lengthOfOne =
    sold.by === 'coil mass'
      ? wireLength({ diameter, mass: requirePositive(sold.mass, 'the mass of a coil', task) as Kilograms })
      : metres(requirePositive(sold.length, 'the length as sold', task));
  const rooms: number[] = [];
  let sum = 0;
  for (const cut of [...cuts].sort((a, b) => b - a)) {
    sum += requirePositive(cut, 'a cut length', task);
    if (cut > lengthOfOne) {
      throw new RangeError(
        say(
          'Cannot compute the coils to buy as a wire of {cut} m does not come out of one of {length} m. Choose a longer coil or piece for this size.',
          { cut: fixed(cut, 3), length: fixed(lengthOfOne, 3) },
        ),
      );
    }
    const fit = rooms.findIndex((room) => room >= cut);
    if (fit === -1) rooms.push(lengthOfOne - cut);
    else rooms[fit]! -= cut;
  }
  const beyond = order.beyond ?? 0;
  let left = rooms.reduce((total, room) => total + room, 0);
  let count = rooms.length;
  while (left < beyond) {
    count += 1;
    left += lengthOfOne;
  }
  // A hair of rounding must not ask for one more coil than divides evenly.
  const least = Math.ceil((sum + beyond) / lengthOfOne - 1e-9);
  return { count, lengthOfOne, least, left: metres(left) };
}
