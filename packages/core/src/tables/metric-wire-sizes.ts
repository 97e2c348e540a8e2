import { millimetres } from '../units/index.ts';
import { message } from '../words/index.ts';
import { sizeLattice } from './size-lattice.ts';

/*
 * Piano wire by the size numbers of the metric (German) trade.
 *
 * Source: posting by K. Jones to the technicians' mailing list pianotech, 12 June 2003 (136827.html); sizes 14 and 20
 * confirmed by K. R. Bean, CAUT list, 30 January 2009 (000917.html). From 12 to 22 the step is 0.025 mm a half size. The
 * list leaves out 22½ and 25½; so does this one. Size 14 here is 0.825 mm against 0.838 mm in the American numbering.
 */

const SOURCE = 'pianotech list 12 June 2003';

const fineSizes = Array.from({ length: 21 }, (_, index) => ({
  sizeNumber: 12 + index / 2,
  diameter: millimetres((725 + 25 * index) / 1000),
  source: SOURCE,
}));

const THICK_SIZES: readonly (readonly [number, number])[] = [
  [23, 1.3],
  [23.5, 1.35],
  [24, 1.4],
  [24.5, 1.45],
  [25, 1.5],
  [26, 1.6],
];

/** Metric size numbers 12 to 26, 0.725 to 1.6 mm. */
export const METRIC_WIRE_SIZES = sizeLattice(message('metric size numbers'), [
  ...fineSizes,
  ...THICK_SIZES.map(([sizeNumber, diameter]) => ({
    sizeNumber,
    diameter: millimetres(diameter),
    source: SOURCE,
  })),
]);
