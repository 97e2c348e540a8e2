import { mils } from '../units/index.ts';
import { message } from '../words/index.ts';
import { sizeLattice } from './size-lattice.ts';

/*
 * Piano wire by American size numbers.
 *
 *     d = (5 + 2 · n) mils        n = 12, 12½ … 23
 *
 * Source: table of sizes in the encyclopedia article "Piano wire" (wikipedia.org, stored copy); the same figures in a
 * posting by K. Jones to the technicians' mailing list pianotech, 12 June 2003 (136827.html). Size 22½ is not in either
 * and follows the rule.
 * Above 23 sources disagree: that posting goes on by the rule to 24 and 25, music wire gauge (from memory) takes the next
 * preferred diameters of the A228 table. Both are listed. For 26 the rule is continued here for comparison only.
 */

const LISTED = 'pianotech list 12 June 2003';
const GAUGE = 'music wire gauge, from memory';
const RULE = 'rule (5 + 2n) mils continued';

const ruleSizes = Array.from({ length: 23 }, (_, index) => {
  const sizeNumber = 12 + index / 2;
  return { sizeNumber, diameter: mils(5 + 2 * sizeNumber), source: sizeNumber === 22.5 ? RULE : LISTED };
});

/** American size numbers 12 to 26; 24, 25 and 26 are disputed and stand once for each claim. */
export const US_WIRE_SIZES = sizeLattice(message('US size numbers'), [
  ...ruleSizes,
  { sizeNumber: 24, diameter: mils(53), source: LISTED },
  { sizeNumber: 24, diameter: mils(55), source: GAUGE },
  { sizeNumber: 25, diameter: mils(55), source: LISTED },
  { sizeNumber: 25, diameter: mils(59), source: GAUGE },
  { sizeNumber: 26, diameter: mils(57), source: RULE },
  { sizeNumber: 26, diameter: mils(63), source: GAUGE },
]);
